/**
 * Printers of materials with the source of every figure: {@link laminate.print.materials.MaterialsReport} for readers,
 * {@link laminate.print.materials.MaterialsJson} for programs, {@link laminate.print.materials.MaterialsCsv} for
 * spreadsheets.
 */
package laminate.print.materials;
