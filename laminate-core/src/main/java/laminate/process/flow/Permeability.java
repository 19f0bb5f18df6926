package laminate.process.flow;

/** How permeability changes with fibre content, by Kozeny and Carman. */
public final class Permeability {
    private Permeability() {}

    /**
     * Permeability at another fibre content, K2 = K1 ((1 − V2)/(1 − V1))³ (V1/V2)².
     *
     * @param K1 permeability at V1 (m²)
     * @param V1 fibre volume fraction it was measured at
     * @param V2 fibre volume fraction wanted
     * @return K2 (m²)
     */
    public static double scaled(double K1, double V1, double V2) {
        throw new UnsupportedOperationException();
    }
}
