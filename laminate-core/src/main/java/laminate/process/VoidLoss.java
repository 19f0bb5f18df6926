package laminate.process;

/** What voids cost. */
public final class VoidLoss {
    /** Greatest void fraction that {@link #interlaminarShear} holds for. */
    public static final double GREATEST = 0.04;

    private static final double PER_VOID = 7;

    private VoidLoss() {}

    /**
     * Interlaminar shear strength that voids leave: 1 − 7 V<sub>v</sub>, 7 % lost for each per cent of voids, up to about
     * 4 % (Judd and Wright 1978, from memory).
     *
     * @param voids void fraction of the volume V<sub>v</sub>, 0 to 0.04
     * @return strength over that of a laminate without voids
     * @throws IllegalArgumentException if the fraction is outside that range
     */
    public static double interlaminarShear(double voids) {
        if (!(voids >= 0 && voids <= GREATEST)) {
            throw new IllegalArgumentException(
                    "the loss of shear strength is known for a void fraction of 0 to " + GREATEST + ", not " + voids);
        }
        return 1 - PER_VOID * voids;
    }
}
