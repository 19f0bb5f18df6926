package laminate.plan.infusion;

import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.StripTest;
import laminate.process.flow.Darcy;
import laminate.unit.Significant;

/** The permeability of a laminate by its plan. */
final class PermeabilityReading {

    /** What to write where no permeability is known. */
    static final String ASK = "fill a strip of the dry layers under the bag, time it, and write"
            + " strip-test: {length: 300 mm, time: 474 s}, or state permeability: 1e-10 m² where it was measured";

    private PermeabilityReading() {}

    static Figure of(PermeabilitySource permeability, InfusionPlan plan, InfusedLaminate laminate, double viscosity) {
        if (permeability instanceof PermeabilitySource.Given given) {
            return scaled(Figure.stated(given.value()), given.measuredAt(), laminate);
        }
        if (permeability instanceof PermeabilitySource.Tested tested) {
            return ofStrip(tested.test(), plan, laminate, viscosity);
        }
        return TypicalPermeability.of(laminate);
    }

    /** Viscosity is taken as constant over the test, which if it rises makes the permeability too small: the safe side. */
    private static Figure ofStrip(StripTest test, InfusionPlan plan, InfusedLaminate laminate, double viscosity) {
        double porosity = test.porosity().orElse(laminate.porosity().value());
        double permeability = Darcy.stripPermeability(
                porosity,
                test.viscosity().orElse(viscosity),
                test.length(),
                test.drivingPressure().orElse(plan.drivingPressure()),
                test.time());
        Figure figure = new Figure(
                permeability,
                "strip test of the plan: " + Significant.format(test.length() * 1000, 3) + " mm in "
                        + Significant.format(test.time(), 3) + " s",
                Status.USER);
        return scaled(figure, OptionalDouble.of(1 - porosity), laminate);
    }

    private static Figure scaled(Figure measured, OptionalDouble at, InfusedLaminate laminate) {
        double wanted = laminate.fibreVolumeFraction();
        double from = at.orElse(wanted);
        if (from == wanted) {
            return measured;
        }
        return new Figure(
                laminate.permeability(measured.value(), from),
                measured.source() + ", by Kozeny and Carman from " + percent(from) + " to " + percent(wanted)
                        + " fibre by volume",
                measured.status());
    }

    private static String percent(double fraction) {
        return Significant.format(fraction * 100, 3) + " %";
    }
}
