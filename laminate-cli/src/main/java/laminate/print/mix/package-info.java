/**
 * Printers of plans of mixes, {@link laminate.print.mix.MixReport} for readers, {@link laminate.print.mix.MixJson} for
 * programs, {@link laminate.print.mix.MixCsv} for spreadsheets, and of the sheets for the crew: {@link
 * laminate.print.mix.JobSheetText} and {@link laminate.print.mix.JobSheetMarkdown}.
 */
package laminate.print.mix;
