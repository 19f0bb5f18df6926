package laminate.check;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.part.DeflectionLimit;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Limits;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.process.Workshop;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelLoad;

/** Parts of one or two zones whose answers a hand can work out. */
final class CheckedParts {
    static final double DENSITY = 1500;
    /** Isotropic, weaker in compression; its shear never decides. */
    static final MatStrength MAT_STRENGTH = new MatStrength(200e6, 150e6, 140e6);

    static final Lamina PLATE = Lamina.isotropic(70e9, 0.3).withStrength(MAT_STRENGTH);
    /** Faces and core of the sandwich beam SAN-03. */
    static final Lamina FACE = Lamina.isotropic(20e9, 0.3).withStrength(MAT_STRENGTH);

    static final CoreStrength CORE_STRENGTH = new CoreStrength(0.8e6, 0.8e6, 1.1e6, OptionalDouble.empty());
    static final Lamina CORE =
            Lamina.isotropic(75e6, 0.3393).withTransverseShear(28e6, 28e6).withStrength(CORE_STRENGTH);

    private CheckedParts() {}

    static Layer layer(Lamina lamina, double thickness, double angle) {
        return new LaminaLayer(lamina, DENSITY, thickness, angle, "");
    }

    static Zone solid(double thickness) {
        return Zone.of("solid", 1, List.of(layer(PLATE, thickness, 0)));
    }

    static Zone sandwich() {
        return Zone.of("sandwich", 1, List.of(layer(FACE, 0.002, 0), layer(CORE, 0.020, 0), layer(FACE, 0.002, 0)));
    }

    static Part part(Zone... zones) {
        return Part.of("part", Arrays.asList(zones));
    }

    static PanelPlan panel(String zone, double size, Edge edge, double pressure) {
        return PanelPlan.of("panel", zone, size, size, Edges.all(edge), new PanelLoad.Uniform(pressure));
    }

    static PartCheck check(Part part) {
        return check(part, CheckOptions.USUAL);
    }

    static PartCheck check(Part part, CheckOptions options) {
        return PartCheck.of(new Estimator(Workshop.USUAL).estimate(part), options);
    }

    static Limits deflection(double most) {
        return new Limits(
                Optional.of(DeflectionLimit.of(most)), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Limits reserve(ReserveKind kind, double least) {
        return new Limits(Optional.empty(), Map.of(kind, least), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static double factor(List<Reserve> reserves, ReserveKind kind) {
        return reserves.stream()
                .filter(reserve -> reserve.kind() == kind)
                .findFirst()
                .orElseThrow()
                .factor();
    }
}
