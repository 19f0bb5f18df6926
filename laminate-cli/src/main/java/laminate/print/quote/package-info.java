/**
 * Printers of quotes: {@link laminate.print.quote.CostSheet} tells the yard how a price is made, {@link
 * laminate.print.quote.Quotation} tells the customer what it is; {@link laminate.print.quote.QuoteJson} is for programs,
 * {@link laminate.print.quote.QuoteCsv} and {@link laminate.print.quote.QuoteWorkbook} are for the books.
 */
package laminate.print.quote;
