package laminate.order.pieces;

/**
 * A strip of a layer.
 *
 * @param width size across the warp (m)
 * @param length size along the warp (m)
 */
record Strip(double width, double length) {
    double area() {
        return width * length;
    }
}
