/**
 * Printers: one small class a format over the one result value of the library.
 *
 * <p>{@link laminate.print.EstimateJson} is for programs: SI numbers with the unit in the key. {@link
 * laminate.print.EstimateCsv} is for spreadsheets. {@link laminate.print.TextPrinter} and {@link
 * laminate.print.MarkdownPrinter} are for readers: both render the same {@link laminate.print.Report}, so that they
 * cannot tell different things. Nothing here computes more than a unit or a sum of what the result holds already, opens
 * files or knows of a command line.
 */
package laminate.print;
