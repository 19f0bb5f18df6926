package laminate.plan.infusion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.part.infusion.Segment;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.process.flow.Hose;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.theory.Lamina;

/** Plans, zones and parts to infuse. */
final class Plans {
    /** 950 mbar (Pa). */
    static final double PRESSURE = 95000;

    /** Vinylester with gel times, whose viscosity stays. */
    static final Resin RESIN = withGelTimes(TestMaterials.VINYLESTER);

    static final Resin EPOXY = withGelTimes(new Resin(
            "epoxy-infusion",
            "Infusion epoxy",
            Resin.Family.EPOXY,
            Resin.Use.INFUSION,
            false,
            TestMaterials.matrix(1105, 1140, 3.1e9, 0.35),
            TestMaterials.EPOXY.cures(),
            List.of()));

    static final LayUp LAY_UP = TestParts.layUp(Process.INFUSION, RESIN);
    static final Workshop WORKSHOP = Workshop.USUAL.withTemperature(293.15);

    private Plans() {}

    /** 60 min at 20 °C and the usual dose, a point each at 15 and 25 °C. */
    private static Resin withGelTimes(Resin resin) {
        Resin.Cure cure = resin.defaultCure();
        List<Resin.GelPoint> points = List.of(gel(cure, 288.15, 90), gel(cure, 293.15, 60), gel(cure, 298.15, 40));
        return new Resin(
                resin.id(),
                resin.name(),
                resin.family(),
                resin.use(),
                resin.waxed(),
                resin.figures().with(Property.VISCOSITY, new Figure(0.2, "of a list", Status.MEMORY)),
                resin.cures(),
                points);
    }

    private static Resin.GelPoint gel(Resin.Cure cure, double temperature, double minutes) {
        return new Resin.GelPoint(
                cure.agent(), cure.amount().value(), temperature, new Figure(minutes * 60, "cup test", Status.USER));
    }

    /** Plies given directly: nothing but the thickness comes from them. */
    static Layer given(double thickness) {
        return new LaminaLayer(Lamina.of(40e9, 9e9, 4e9, 0.28), 1900, thickness, 0, "");
    }

    /** Woven roving at 50 % fibre by volume. */
    static ReinforcementLayer roving() {
        return roving(LAY_UP);
    }

    static ReinforcementLayer roving(LayUp layUp) {
        return ReinforcementLayer.of(TestMaterials.roving(0.6), layUp).with(FibreContent.ofVolumeFraction(0.5));
    }

    static Preform preform(double permeability) {
        return Preform.of(PermeabilitySource.Given.of(permeability));
    }

    /** A metre on the level at 950 mbar and 1e-10 m². */
    static InfusionPlan metre() {
        return InfusionPlan.of(InfusionPath.line(1), PRESSURE, preform(1e-10));
    }

    static Preform with(Preform preform, BedCompaction compaction) {
        return new Preform(
                preform.porosity(),
                preform.permeability(),
                preform.crossPermeability(),
                preform.throughPermeability(),
                Optional.of(compaction),
                preform.segments());
    }

    static Preform with(Preform preform, Segment... segments) {
        return new Preform(
                preform.porosity(),
                preform.permeability(),
                preform.crossPermeability(),
                preform.throughPermeability(),
                preform.compaction(),
                List.of(segments));
    }

    static Preform withAcross(Preform preform, double across) {
        return new Preform(
                preform.porosity(),
                preform.permeability(),
                OptionalDouble.of(across),
                preform.throughPermeability(),
                preform.compaction(),
                preform.segments());
    }

    static InfusionPlan with(InfusionPlan plan, Preform preform) {
        return new InfusionPlan(
                plan.path(),
                plan.drivingPressure(),
                plan.viscosity(),
                preform,
                plan.mesh(),
                plan.lines(),
                plan.margin(),
                plan.leak());
    }

    static InfusionPlan with(InfusionPlan plan, InfusionPath path) {
        return new InfusionPlan(
                path,
                plan.drivingPressure(),
                plan.viscosity(),
                plan.preform(),
                plan.mesh(),
                plan.lines(),
                plan.margin(),
                plan.leak());
    }

    static InfusionPlan withMargin(InfusionPlan plan, double share) {
        return new InfusionPlan(
                plan.path(),
                plan.drivingPressure(),
                plan.viscosity(),
                plan.preform(),
                plan.mesh(),
                plan.lines(),
                OptionalDouble.of(share),
                plan.leak());
    }

    static FeedLines hose(double bore, double length) {
        return new FeedLines(Optional.of(new Hose(bore, length)), Optional.empty(), OptionalDouble.empty());
    }

    static ResinViscosity rising(double atStart, double time) {
        return new ResinViscosity(OptionalDouble.of(atStart), OptionalDouble.of(time));
    }

    static Zone zone(String name, double area, Layer... layers) {
        return Zone.of(name, area, List.of(layers));
    }

    /** The one infusion of a part of a square metre, planned as a whole. */
    static Infusion infused(InfusionPlan plan, Layer... layers) {
        return infused(WORKSHOP, plan, layers);
    }

    static Infusion infused(Workshop workshop, InfusionPlan plan, Layer... layers) {
        return all(workshop, Part.of("hatch", List.of(zone("lid", 1, layers))).withInfusion(plan))
                .infusions()
                .get(0);
    }

    static PartInfusion all(Workshop workshop, Part part) {
        return new Infuser(workshop).infuse(new Estimator(workshop).estimate(part));
    }
}
