package laminate.check;

/**
 * A place on a panel.
 *
 * @param x along the length (m)
 * @param y along the width (m)
 */
record PanelPlace(double x, double y) {

    static PanelPlace of(Reserve reserve) {
        return new PanelPlace(reserve.x().orElseThrow(), reserve.y().orElseThrow());
    }
}
