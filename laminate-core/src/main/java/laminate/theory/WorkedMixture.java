package laminate.theory;

import java.util.List;
import laminate.theory.Worked.Term;

/** The formulas of {@link Mixture} that a layer is laid by, with their numbers. */
public final class WorkedMixture {
    private static final String CONSERVATION = "conservation of mass and volume";

    private WorkedMixture() {}

    /**
     * The resin that goes with the fibre, {@link Mixture#resinMass}.
     *
     * @param w areal mass of dry fibre (kg/m²)
     * @param psi fibre mass fraction ψ
     * @return the formula with its numbers; its result in kg/m²
     * @throws IllegalArgumentException as the formula
     */
    public static Worked resinMass(double w, double psi) {
        return new Worked(
                "resin",
                "m = w (1 − ψ)/ψ",
                List.of(arealMass(w), number("ψ", psi)),
                new Term("m", Mixture.resinMass(w, psi), "kg/m²"),
                "conservation of mass");
    }

    /**
     * The fibre volume fraction, {@link Mixture#fibreVolumeFraction}.
     *
     * @param psi fibre mass fraction ψ
     * @param rhoF density of the fibre (kg/m³)
     * @param rhoR density of the cured resin (kg/m³)
     * @param Vv void fraction of the whole
     * @return the formula with its numbers
     * @throws IllegalArgumentException as the formula
     */
    public static Worked fibreVolumeFraction(double psi, double rhoF, double rhoR, double Vv) {
        return new Worked(
                "fibre volume fraction",
                "Vf = (1 − Vv) (ψ/ρf)/(ψ/ρf + (1 − ψ)/ρr)",
                List.of(number("ψ", psi), density("ρf", rhoF), density("ρr", rhoR), number("Vv", Vv)),
                number("Vf", Mixture.fibreVolumeFraction(psi, rhoF, rhoR, Vv)),
                CONSERVATION);
    }

    /**
     * The thickness, {@link Mixture#thickness(double, double, double)}.
     *
     * @param w areal mass of dry fibre (kg/m²)
     * @param Vf fibre volume fraction
     * @param rhoF density of the fibre (kg/m³)
     * @return the formula with its numbers; its result in m
     * @throws IllegalArgumentException as the formula
     */
    public static Worked thickness(double w, double Vf, double rhoF) {
        return new Worked(
                "thickness",
                "t = w/(ρf Vf)",
                List.of(arealMass(w), density("ρf", rhoF), number("Vf", Vf)),
                new Term("t", Mixture.thickness(w, Vf, rhoF), "m"),
                CONSERVATION);
    }

    private static Term arealMass(double w) {
        return new Term("w", w, "kg/m²");
    }

    private static Term density(String symbol, double density) {
        return new Term(symbol, density, "kg/m³");
    }

    private static Term number(String symbol, double value) {
        return new Term(symbol, value, "1");
    }
}
