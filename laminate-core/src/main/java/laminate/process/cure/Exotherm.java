package laminate.process.cure;

import laminate.process.Range;
import laminate.theory.Require;

/**
 * How warm a wet stage may get: a caution, not a forecast.
 *
 * <p>The adiabatic rise is a ceiling that nothing reaches. The lumped rise lets a layer of even temperature give off its
 * heat at a steady rate over the release time while it cools at its faces; that holds for a Biot number below about
 * {@value #GREATEST_BIOT}. Above, the middle gets warmer than the lumped rise tells, and only the ceiling is sure.
 *
 * <p>The release time is that of a cup of neat resin, which its own heat hurries on. A thin laminate stays cooler, gives
 * its heat off over longer and stays cooler still: for it the lumped rise is on the high side.
 *
 * @param adiabaticRise rise without any cooling (K)
 * @param lumpedRise peak of the rise with cooling at the faces (K)
 * @param biot Biot number of the layer
 */
public record Exotherm(double adiabaticRise, double lumpedRise, double biot) {
    /** Greatest Biot number for which a layer may be taken as of one temperature (standard, from memory). */
    public static final double GREATEST_BIOT = 0.3;

    /**
     * Time from gel to peak of neat polyester (s), 10 to 21 min over two resins: Polymers 16 (2024) 2391.
     */
    public static final Range RELEASE_TIME = new Range(900, 600, 1260);

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is below zero or not finite, or the lumped rise exceeds the ceiling
     */
    public Exotherm {
        Require.notNegative("adiabatic rise", adiabaticRise);
        Require.notNegative("lumped rise", lumpedRise);
        Require.notNegative("Biot number", biot);
        if (lumpedRise > adiabaticRise) {
            throw new IllegalArgumentException(
                    "a rise of " + lumpedRise + " K is above the adiabatic one of " + adiabaticRise + " K");
        }
    }

    /**
     * The exotherm of a wet stage.
     *
     * @param stage what is laid
     * @return its rises of temperature
     */
    public static Exotherm of(WetStage stage) {
        double adiabatic = adiabaticRise(
                stage.fibreMassFraction(), stage.heatOfCure(), stage.resinSpecificHeat(), stage.fibreSpecificHeat());
        double cooling = coolingTime(
                stage.density(), stage.specificHeat(), stage.thickness(), stage.faces(), stage.heatTransfer());
        double lumped = lumpedRise(adiabatic, cooling, stage.releaseTime());
        return new Exotherm(adiabatic, lumped, biot(stage));
    }

    /**
     * Whether the lumped rise may be relied on.
     *
     * @return true if the Biot number is below {@value #GREATEST_BIOT}
     */
    public boolean isEven() {
        return biot < GREATEST_BIOT;
    }

    /**
     * Rise of temperature without cooling: ΔT = (1 − ψ) H/((1 − ψ) c<sub>r</sub> + ψ c<sub>f</sub>).
     *
     * @param fibreMassFraction ψ
     * @param heatOfCure H (J/kg of resin)
     * @param resinSpecificHeat c<sub>r</sub> (J/(kg·K))
     * @param fibreSpecificHeat c<sub>f</sub> (J/(kg·K))
     * @return ΔT (K)
     * @throws IllegalArgumentException if the fraction is not from 0 to 1, or another value is not above zero
     */
    public static double adiabaticRise(
            double fibreMassFraction, double heatOfCure, double resinSpecificHeat, double fibreSpecificHeat) {
        double heat = (1 - fibreMassFraction) * Require.positive("heat of cure", heatOfCure);
        return heat / WetStage.specificHeat(fibreMassFraction, resinSpecificHeat, fibreSpecificHeat);
    }

    /**
     * Time constant with which a layer cools through its faces: τ<sub>c</sub> = ρ c h/(n h<sub>c</sub>).
     *
     * @param density ρ (kg/m³)
     * @param specificHeat c (J/(kg·K))
     * @param thickness h (m)
     * @param faces n, the faces that cool: 1 on a mould that keeps the heat in, 2 where both faces give it off
     * @param heatTransfer h<sub>c</sub> (W/(m²·K))
     * @return τ<sub>c</sub> (s)
     * @throws IllegalArgumentException if a value is not above zero, or the faces are not 1 or 2
     */
    public static double coolingTime(
            double density, double specificHeat, double thickness, int faces, double heatTransfer) {
        return Require.positive("density", density)
                * Require.positive("specific heat", specificHeat)
                * Require.positive("thickness", thickness)
                / (WetStage.checkFaces(faces) * Require.positive("heat transfer", heatTransfer));
    }

    /**
     * Peak of the rise when heat is released at a steady rate over τ<sub>r</sub> while the layer cools:
     * ΔT = ΔT<sub>ad</sub> (τ<sub>c</sub>/τ<sub>r</sub>)(1 − e<sup>−τr/τc</sup>).
     *
     * @param adiabaticRise ΔT<sub>ad</sub> (K)
     * @param coolingTime τ<sub>c</sub> (s)
     * @param releaseTime τ<sub>r</sub> (s)
     * @return ΔT (K)
     * @throws IllegalArgumentException if the rise is below zero, or a time is not above zero
     */
    public static double lumpedRise(double adiabaticRise, double coolingTime, double releaseTime) {
        double ratio = Require.positive("release time", releaseTime) / Require.positive("cooling time", coolingTime);
        return Require.notNegative("adiabatic rise", adiabaticRise) * -Math.expm1(-ratio) / ratio;
    }

    /**
     * Biot number of a layer: Bi = h<sub>c</sub> L/λ, with L the distance from the warmest place to a cooled face, half
     * of the thickness with two faces and all of it with one.
     *
     * @param stage what is laid
     * @return Bi
     */
    public static double biot(WetStage stage) {
        return stage.heatTransfer() * stage.thickness() / stage.faces() / stage.conductivity();
    }
}
