/**
 * What to charge: parts and sets of parts are quoted in several numbers, with the moulds and plugs that they share. The price
 * itself is built up in {@link laminate.quote.price}.
 */
package laminate.quote;
