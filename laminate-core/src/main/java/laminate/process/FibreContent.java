package laminate.process;

import java.util.Locale;

/**
 * How much of a layer is fibre, stated in one of four ways.
 *
 * <p>Each fixes the resin in the layer. With V<sub>F</sub> the volume of fibre per area, w its mass per area:
 *
 * <ul>
 *   <li>mass fraction ψ: resin mass w (1 − ψ)/ψ; voids thicken the layer;
 *   <li>resin ratio r (kg resin per kg fibre): resin mass w r, that is ψ = 1/(1 + r);
 *   <li>volume fraction V<sub>f</sub>: t = V<sub>F</sub>/V<sub>f</sub>; voids displace resin;
 *   <li>moulded thickness t: voids displace resin.
 * </ul>
 *
 * In each case t = (V<sub>F</sub> + V<sub>R</sub>)/(1 − V<sub>v</sub>), with V<sub>R</sub> the volume of resin per
 * area.
 *
 * @param basis which of the four
 * @param value ψ, V<sub>f</sub> or r as a number, or t (m)
 */
public record FibreContent(Basis basis, double value) {

    /** The ways to state a fibre content. */
    public enum Basis {
        /** Mass of fibre per mass of fibre and resin. */
        MASS_FRACTION("fibre-mass-fraction"),
        /** Volume of fibre per volume of the layer. */
        VOLUME_FRACTION("fibre-volume-fraction"),
        /** Mass of resin per mass of fibre. */
        RESIN_RATIO("resin-ratio"),
        /** Thickness as moulded (m). */
        THICKNESS("thickness");

        private final String key;

        Basis(String key) {
            this.key = key;
        }

        /**
         * The key in files.
         *
         * @return the key
         */
        public String key() {
            return key;
        }

        private boolean isFraction() {
            return this == MASS_FRACTION || this == VOLUME_FRACTION;
        }
    }

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if it is not above zero and finite, or a fraction is not below one
     */
    public FibreContent {
        if (!(value > 0) || !Double.isFinite(value) || basis.isFraction() && value >= 1) {
            throw new IllegalArgumentException(basis.key() + " must be above 0"
                    + (basis.isFraction() ? " % and below 100 %, not " + percent(value) : ", not " + value));
        }
    }

    /**
     * A fibre mass fraction.
     *
     * @param psi ψ, between 0 and 1
     * @return the content
     */
    public static FibreContent ofMassFraction(double psi) {
        return new FibreContent(Basis.MASS_FRACTION, psi);
    }

    /**
     * A fibre volume fraction.
     *
     * @param vf V<sub>f</sub>, between 0 and 1
     * @return the content
     */
    public static FibreContent ofVolumeFraction(double vf) {
        return new FibreContent(Basis.VOLUME_FRACTION, vf);
    }

    /**
     * A resin ratio.
     *
     * @param ratio mass of resin per mass of fibre
     * @return the content
     */
    public static FibreContent ofResinRatio(double ratio) {
        return new FibreContent(Basis.RESIN_RATIO, ratio);
    }

    /**
     * A moulded thickness.
     *
     * @param thickness t (m)
     * @return the content
     */
    public static FibreContent ofThickness(double thickness) {
        return new FibreContent(Basis.THICKNESS, thickness);
    }

    /**
     * Volume of resin per area of a layer that has this content.
     *
     * @param fibreMass w (kg/m²)
     * @param fibreVolume V<sub>F</sub> = Σ w/ρ<sub>f</sub> (m³/m²)
     * @param resinDensity ρ<sub>r</sub>, cured (kg/m³)
     * @param voids V<sub>v</sub>
     * @return V<sub>R</sub> (m³/m²)
     * @throws IllegalArgumentException if no resin is left, a mass, volume or density is not above zero and finite, or
     *     the voids are not from 0 to below 1
     */
    public double resinVolume(double fibreMass, double fibreVolume, double resinDensity, double voids) {
        boolean filled = fibreMass > 0 && fibreVolume > 0 && resinDensity > 0 && voids >= 0 && voids < 1;
        if (!filled || !Double.isFinite(fibreMass + fibreVolume + resinDensity)) {
            throw new IllegalArgumentException("fibre and resin of a layer must be above zero and voids below 1, not "
                    + fibreMass + " kg/m², " + fibreVolume + " m³/m², " + resinDensity + " kg/m³, " + voids);
        }
        return switch (basis) {
            case MASS_FRACTION -> fibreMass * (1 - value) / value / resinDensity;
            case RESIN_RATIO -> fibreMass * value / resinDensity;
            case VOLUME_FRACTION -> room(fibreVolume / value, fibreVolume, voids);
            case THICKNESS -> room(value, fibreVolume, voids);
        };
    }

    /** What fibre and voids leave of a thickness. */
    private double room(double thickness, double fibreVolume, double voids) {
        double room = thickness * (1 - voids) - fibreVolume;
        if (!(room > 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s %s leaves no room for resin: the fibre alone is %.3f mm thick%s",
                    basis.key(),
                    shown(),
                    fibreVolume * 1000,
                    voids > 0 ? ", with " + percent(voids) + " voids" : ""));
        }
        return room;
    }

    private String shown() {
        return basis == Basis.THICKNESS ? String.format(Locale.ROOT, "%.3f mm", value * 1000) : percent(value);
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f %%", fraction * 100);
    }
}
