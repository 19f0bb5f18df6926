package laminate.order.cut;

/**
 * What is cut from, in grid steps.
 *
 * @param width size across
 * @param length size along; {@link Skyline#WALL} for a roll
 * @param across whether each stretch is pulled at the length of its first piece and cut straight across
 */
record Stock(long width, long length, boolean across) {
    static Stock roll(long width, Cuts cuts) {
        return new Stock(width, Skyline.WALL, cuts == Cuts.ACROSS);
    }

    static Stock sheets(long width, long length) {
        return new Stock(width, length, false);
    }

    /** Whether a piece can lie on it, turned by a quarter or not. */
    boolean fits(Sizes sizes, int item, boolean turned) {
        return sizes.across(item, turned) <= width && sizes.along(item, turned) <= length;
    }
}
