package laminate.process.flow;

import laminate.theory.Require;

/**
 * Permeability of parallel round fibres, by their packing (Gebart 1992, from memory).
 *
 * <p>For teaching, and within a tow: a fabric takes its resin between the tows, and real random tows are 6 to 10 times
 * less permeable across than the hexagonal value above V = 0.6 (<i>J. Compos. Mater.</i> 2017/18, doi
 * 10.1177/0021998317747954).
 */
public enum Gebart {
    /** Fibres at the corners of squares. */
    SQUARE(57, 16 / (9 * Math.PI * Math.sqrt(2)), Math.PI / 4),
    /** Fibres at the corners of equal triangles. */
    HEXAGONAL(53, 16 / (9 * Math.PI * Math.sqrt(6)), Math.PI / (2 * Math.sqrt(3)));

    private final double c;
    private final double c1;
    private final double densest;

    Gebart(double c, double c1, double densest) {
        this.c = c;
        this.c1 = c1;
        this.densest = densest;
    }

    /**
     * Along the fibres, K = (8 R²/c) (1 − V)³/V², c = 57 square, 53 hexagonal.
     *
     * @param R radius of a fibre (m)
     * @param V fibre volume fraction, up to where the fibres touch
     * @return K (m²)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public double along(double R, double V) {
        check(R, V);
        double room = 1 - V;
        return 8 * R * R / c * room * room * room / (V * V);
    }

    /**
     * Across the fibres, K = C1 (√(Vmax/V) − 1)^2.5 R²; C1 = 16/(9π√2) and Vmax = π/4 square, 16/(9π√6) and π/(2√3)
     * hexagonal.
     *
     * @param R radius of a fibre (m)
     * @param V fibre volume fraction, up to where the fibres touch and K is 0
     * @return K (m²)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public double across(double R, double V) {
        check(R, V);
        return c1 * Math.pow(Math.sqrt(densest / V) - 1, 2.5) * R * R;
    }

    /**
     * Where the fibres touch.
     *
     * @return Vmax
     */
    public double densest() {
        return densest;
    }

    private void check(double R, double V) {
        Require.positive("radius of a fibre", R);
        Flow.fibreFraction(V);
        if (V > densest) {
            throw new IllegalArgumentException(
                    "fibres of this packing touch at a fibre volume fraction of " + densest + ", was " + V);
        }
    }
}
