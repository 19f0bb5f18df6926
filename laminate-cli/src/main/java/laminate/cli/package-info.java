/**
 * The command line: one class a command. A command parses its options, calls the library and prints with
 * {@code laminate.print}; it computes nothing.
 */
package laminate.cli;
