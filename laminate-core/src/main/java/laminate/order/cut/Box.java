package laminate.order.cut;

/**
 * A rectangle on the stock, in grid steps.
 *
 * @param x near edge
 * @param y near end
 * @param right far edge
 * @param end far end
 */
record Box(long x, long y, long right, long end) {
    double area() {
        return (double) (right - x) * (end - y);
    }
}
