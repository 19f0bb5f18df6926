/**
 * Printers of orders: {@link laminate.print.order.OrderReport} for readers, {@link laminate.print.order.OrderJson} for
 * programs, {@link laminate.print.order.OrderCsv} for spreadsheets.
 */
package laminate.print.order;
