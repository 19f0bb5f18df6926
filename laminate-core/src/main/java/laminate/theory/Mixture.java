package laminate.theory;

import java.util.List;

/**
 * How fibre, resin and voids share mass and volume: thickness, density and fibre content of a layer.
 *
 * <p>Symbols: w areal mass of dry fibre (kg/m²), ψ fibre mass fraction, Vf fibre and Vv void volume fraction of the
 * whole, ρf and ρr density of fibre and cured resin (kg/m³). Vm = 1 − Vf − Vv. Where ψ is given, voids thicken the
 * layer; where Vf or the thickness is given, they displace resin. Source of all unless named: conservation of mass
 * and volume.
 */
public final class Mixture {
    private Mixture() {}

    /**
     * Something of a mass with a property, such as one layer with its fibre mass fraction or one fibre with its
     * density.
     *
     * @param mass mass or areal mass of fibre, not negative; only the proportions count
     * @param value the property, positive
     */
    public record Part(double mass, double value) {
        /**
         * Checks the part.
         *
         * @param mass mass or areal mass of fibre, not negative; only the proportions count
         * @param value the property, positive
         * @throws IllegalArgumentException if the mass is negative or the property not positive
         */
        public Part {
            if (!(mass >= 0) || Double.isInfinite(mass)) {
                throw new IllegalArgumentException("mass must not be negative, was " + mass);
            }
            Require.positive("value", value);
        }
    }

    /**
     * Thickness from fibre mass fraction, t = [w/ρf + w (1 − ψ)/(ψ ρr)]/(1 − Vv). With ρf = 2560, ρr = 1200 and no
     * voids it is the formula of ISO 12215-5:2008, t = (w/3.072)(2.56/ψ − 1.36) in mm with w in kg/m² (from memory).
     *
     * @param w areal mass of dry fibre (kg/m²)
     * @param psi fibre mass fraction ψ, above 0 and up to 1
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @param Vv void fraction of the whole, below 1
     * @return thickness (m)
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double thickness(double w, double psi, double rhoF, double rhoR, double Vv) {
        return Require.positive("w", w) * specificVolume(psi, rhoF, rhoR) / psi / (1 - voids(Vv));
    }

    /**
     * Thickness from fibre volume fraction, t = w/(ρf Vf), whatever the voids.
     *
     * @param w areal mass of dry fibre (kg/m²)
     * @param Vf fibre volume fraction, above 0 and up to 1
     * @param rhoF density of the fibre (kg/m³)
     * @return thickness (m)
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double thickness(double w, double Vf, double rhoF) {
        return Require.positive("w", w) / (Require.positive("rhoF", rhoF) * Require.positiveShare("Vf", Vf));
    }

    /**
     * Fibre volume fraction from fibre mass fraction, Vf = (1 − Vv)(ψ/ρf)/(ψ/ρf + (1 − ψ)/ρr).
     *
     * @param psi fibre mass fraction ψ, above 0 and up to 1
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @param Vv void fraction of the whole, below 1
     * @return Vf
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double fibreVolumeFraction(double psi, double rhoF, double rhoR, double Vv) {
        return (1 - voids(Vv)) * (psi / rhoF) / specificVolume(psi, rhoF, rhoR);
    }

    /**
     * Fibre volume fraction from a moulded thickness, Vf = w/(ρf t). ASTM D3171, method II (from memory).
     *
     * @param w areal mass of dry fibre of all layers (kg/m²)
     * @param rhoF density of the fibre (kg/m³)
     * @param t measured thickness (m)
     * @return Vf, up to 1
     * @throws IllegalArgumentException if an argument cannot be, or the fibre alone is thicker than t
     */
    public static double fibreVolumeFractionOfThickness(double w, double rhoF, double t) {
        double solid = Require.positive("w", w) / Require.positive("rhoF", rhoF);
        if (!(Require.positive("t", t) >= solid)) {
            throw new IllegalArgumentException(
                    "thickness must be at least that of the solid fibre, " + solid + " m, was " + t);
        }
        return solid / t;
    }

    /**
     * Fibre mass fraction from fibre volume fraction, ψ = Vf ρf/(Vf ρf + (1 − Vf − Vv) ρr): voids displace resin.
     *
     * @param Vf fibre volume fraction, above 0
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @param Vv void fraction of the whole; Vf + Vv up to 1
     * @return ψ
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double fibreMassFraction(double Vf, double rhoF, double rhoR, double Vv) {
        double Vm = 1 - Require.positiveShare("Vf", Vf) - voids(Vv);
        if (Vm < 0) {
            throw new IllegalArgumentException("Vf + Vv must not be above 1, were Vf = " + Vf + ", Vv = " + Vv);
        }
        double fibre = Vf * Require.positive("rhoF", rhoF);
        return fibre / (fibre + Vm * Require.positive("rhoR", rhoR));
    }

    /**
     * Fibre mass fraction from resin to fibre by mass, ψ = 1/(1 + r).
     *
     * @param resinRatio kg of resin per kg of dry fibre, not negative
     * @return ψ
     * @throws IllegalArgumentException if the ratio cannot be
     */
    public static double fibreMassFractionOfRatio(double resinRatio) {
        if (!(resinRatio >= 0) || Double.isInfinite(resinRatio)) {
            throw new IllegalArgumentException("resin ratio must not be negative, was " + resinRatio);
        }
        return 1 / (1 + resinRatio);
    }

    /**
     * Areal mass of resin that goes with the fibre, w (1 − ψ)/ψ.
     *
     * @param w mass or areal mass of dry fibre (kg or kg/m²)
     * @param psi fibre mass fraction ψ, above 0 and up to 1
     * @return resin, in the unit of w
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double resinMass(double w, double psi) {
        return Require.positive("w", w) * (1 - Require.positiveShare("psi", psi)) / psi;
    }

    /**
     * Density of the laminate, ρ = (1 − Vv)/(ψ/ρf + (1 − ψ)/ρr).
     *
     * @param psi fibre mass fraction ψ, above 0 and up to 1
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @param Vv void fraction of the whole, below 1
     * @return density (kg/m³)
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double density(double psi, double rhoF, double rhoR, double Vv) {
        return (1 - voids(Vv)) / specificVolume(psi, rhoF, rhoR);
    }

    /**
     * Void fraction from a measured density, Vv = 1 − ρ (ψ/ρf + (1 − ψ)/ρr). Form of ASTM D2734 (from memory).
     *
     * <p>A small negative result is handed back as it is: it says that a density or ψ is off, and hiding it would hide
     * that. An error of 1 % in ρr moves the result by 0.6 to 0.7 per cent of the volume.
     *
     * @param rho measured density (kg/m³)
     * @param psi fibre mass fraction ψ, from burn-off, above 0 and up to 1
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @return Vv
     * @throws IllegalArgumentException if an argument cannot be
     */
    public static double voidFraction(double rho, double psi, double rhoF, double rhoR) {
        return 1 - Require.positive("rho", rho) * specificVolume(psi, rhoF, rhoR);
    }

    /**
     * Fibre mass fraction of several layers together, ψ = Σw / Σ(w/ψ).
     *
     * @param layers each with its mass of dry fibre and its ψ
     * @return ψ of the whole
     * @throws IllegalArgumentException if there is no fibre at all or a ψ is above 1
     */
    public static double combinedFibreMassFraction(List<Part> layers) {
        layers.forEach(layer -> Require.positiveShare("psi", layer.value()));
        return harmonicMean(layers);
    }

    /**
     * Density of a hybrid of several fibres, ρf = 1/Σ(mi/ρi) with mi the shares of mass.
     *
     * @param fibres each with its mass and its density (kg/m³)
     * @return density (kg/m³)
     * @throws IllegalArgumentException if there is no fibre at all
     */
    public static double hybridDensity(List<Part> fibres) {
        return harmonicMean(fibres);
    }

    private static double harmonicMean(List<Part> parts) {
        double mass = CompensatedSum.of(parts.size(), i -> parts.get(i).mass());
        Require.positive("mass of all parts", mass);
        return mass
                / CompensatedSum.of(
                        parts.size(), i -> parts.get(i).mass() / parts.get(i).value());
    }

    /** Volume of a unit mass without voids, ψ/ρf + (1 − ψ)/ρr (m³/kg). */
    private static double specificVolume(double psi, double rhoF, double rhoR) {
        Require.positiveShare("psi", psi);
        return psi / Require.positive("rhoF", rhoF) + (1 - psi) / Require.positive("rhoR", rhoR);
    }

    private static double voids(double Vv) {
        return Require.properShare("Vv", Vv);
    }
}
