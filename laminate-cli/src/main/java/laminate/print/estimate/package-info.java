/**
 * Printers of estimates: {@link laminate.print.estimate.EstimateReport} for readers, {@link
 * laminate.print.estimate.EstimateJson} for programs, {@link laminate.print.estimate.EstimateCsv} for spreadsheets.
 */
package laminate.print.estimate;
