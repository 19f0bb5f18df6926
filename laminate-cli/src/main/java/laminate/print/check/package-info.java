/**
 * Printers of checks: {@link laminate.print.check.CheckReport} for readers, {@link laminate.print.check.CheckJson} for
 * programs, {@link laminate.print.check.CheckCsv} for spreadsheets.
 */
package laminate.print.check;
