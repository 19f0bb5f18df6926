/**
 * Printers of infusions: {@link laminate.print.infuse.InfuseReport} for readers, {@link laminate.print.infuse.InfuseJson}
 * for programs, {@link laminate.print.infuse.InfuseCsv} for spreadsheets.
 */
package laminate.print.infuse;
