/**
 * How a price is built up, line by line: from what a batch costs directly, and its share of moulds, to what a customer is told.
 *
 * <p>The build-up runs direct cost, rejects, overhead, share of moulds, contingency, margin, discount, net, tax, gross. A
 * line is rounded once, half up to the currency's coins, and every later line is reckoned on the rounded lines above it, so
 * that whoever holds the page can add it up and reckon it again. Margin and mark-up are accountants' identities; rates are
 * the yard's own.
 */
package laminate.quote.price;
