package laminate.theory.panel;

/** Highest powers of the polynomials along x and y. */
record Orders(int x, int y) {
    /** Powers added along the longer side for each time that it exceeds the shorter one, and the most added. */
    private static final double PER_ASPECT = 1.5;

    private static final int MOST_ADDED = 16;

    /** An order along the shorter side, and more along the longer one, where more happens. */
    static Orders of(int order, Panel panel) {
        double aspect = Math.max(panel.length(), panel.width()) / panel.span();
        int more = order + (int) Math.min(MOST_ADDED, Math.round(PER_ASPECT * (aspect - 1)));
        return panel.length() > panel.width() ? new Orders(more, order) : new Orders(order, more);
    }
}
