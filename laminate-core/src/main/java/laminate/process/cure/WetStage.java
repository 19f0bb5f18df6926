package laminate.process.cure;

import laminate.theory.Require;

/**
 * A wet stage as its heat sees it.
 *
 * @param thickness h (m)
 * @param density ρ (kg/m³)
 * @param fibreMassFraction ψ
 * @param heatOfCure H (J/kg of resin)
 * @param resinSpecificHeat c<sub>r</sub> (J/(kg·K))
 * @param fibreSpecificHeat c<sub>f</sub> (J/(kg·K))
 * @param conductivity λ through the thickness (W/(m·K))
 * @param faces the faces that cool, 1 or 2
 * @param heatTransfer from face to air, h<sub>c</sub> (W/(m²·K))
 * @param releaseTime time over which the heat is given off, τ<sub>r</sub> (s)
 */
public record WetStage(
        double thickness,
        double density,
        double fibreMassFraction,
        double heatOfCure,
        double resinSpecificHeat,
        double fibreSpecificHeat,
        double conductivity,
        int faces,
        double heatTransfer,
        double releaseTime) {

    /** Specific heat of resin (J/(kg·K)), handbook typical, from memory. */
    public static final double RESIN_SPECIFIC_HEAT = 1900;

    /** Specific heat of glass fibre (J/(kg·K)), handbook typical, from memory. */
    public static final double GLASS_SPECIFIC_HEAT = 800;

    /** Conductivity of resin and of glass laminate across the fibres (W/(m·K)), 0.2 to 0.3, handbook, from memory. */
    public static final double CONDUCTIVITY = 0.25;

    /** Heat transfer from a face to still air, convection and radiation (W/(m²·K)), handbook typical, from memory. */
    public static final double STILL_AIR = 8;

    /**
     * Checks the stage.
     *
     * @throws IllegalArgumentException if the fraction is not from 0 to below 1, the faces are not 1 or 2, or another
     *     value is not above zero
     */
    public WetStage {
        Require.positive("thickness", thickness);
        Require.positive("density", density);
        Require.share("fibre mass fraction", fibreMassFraction);
        Require.positive("heat of cure", heatOfCure);
        Require.positive("specific heat of resin", resinSpecificHeat);
        Require.positive("specific heat of fibre", fibreSpecificHeat);
        Require.positive("conductivity", conductivity);
        checkFaces(faces);
        Require.positive("heat transfer", heatTransfer);
        Require.positive("release time", releaseTime);
    }

    /**
     * A stage of glass and polyester or vinylester on a mould, cooling at its open face only: heat
     * {@link HeatOfCure#STYRENIC} released over {@link Exotherm#RELEASE_TIME}, the other figures those of this class.
     *
     * @param thickness h (m)
     * @param density ρ (kg/m³)
     * @param fibreMassFraction ψ, 0 for a thick coat or paste
     * @return the stage
     */
    public static WetStage onMould(double thickness, double density, double fibreMassFraction) {
        return new WetStage(
                thickness,
                density,
                fibreMassFraction,
                HeatOfCure.STYRENIC.planned(),
                RESIN_SPECIFIC_HEAT,
                GLASS_SPECIFIC_HEAT,
                CONDUCTIVITY,
                1,
                STILL_AIR,
                Exotherm.RELEASE_TIME.planned());
    }

    /**
     * Specific heat of resin and fibre together: c = (1 − ψ) c<sub>r</sub> + ψ c<sub>f</sub>.
     *
     * @return c (J/(kg·K))
     */
    public double specificHeat() {
        return specificHeat(fibreMassFraction, resinSpecificHeat, fibreSpecificHeat);
    }

    static double specificHeat(double fibreMassFraction, double resin, double fibre) {
        return (1 - Require.share("fibre mass fraction", fibreMassFraction))
                        * Require.positive("specific heat of resin", resin)
                + fibreMassFraction * Require.positive("specific heat of fibre", fibre);
    }

    static int checkFaces(int faces) {
        if (faces != 1 && faces != 2) {
            throw new IllegalArgumentException("a layer has 1 or 2 faces that cool, not " + faces);
        }
        return faces;
    }
}
