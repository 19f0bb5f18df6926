/**
 * What the printers of all results share: the document free of any format, and the writers of each format.
 *
 * <p>Each command has its printers in a package of its own below this one, as {@code laminate.print.estimate}: a class
 * that tells a result as a {@link laminate.print.Report}, one that writes it as JSON, one as comma-separated values. {@link
 * laminate.print.TextPrinter} and {@link laminate.print.MarkdownPrinter} render the same report, so that they cannot tell
 * different things. Nothing here computes more than a unit or a sum of what the result holds already, opens files or knows
 * of a command line.
 */
package laminate.print;
