/**
 * Printers of comparisons: {@link laminate.print.compare.CompareReport} for readers, {@link
 * laminate.print.compare.CompareJson} for programs, {@link laminate.print.compare.CompareCsv} for spreadsheets.
 */
package laminate.print.compare;
