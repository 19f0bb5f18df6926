package laminate.estimate;

import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestParts.layUp;
import static laminate.testing.TestParts.zone;

import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.StrengthBasis;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;
import laminate.theory.FibreProperties;
import laminate.theory.FibreStrength;
import laminate.theory.MatrixProperties;
import laminate.theory.MatrixStrength;
import laminate.theory.PlyStrength;
import laminate.theory.Strength;
import laminate.theory.StrengthMicromechanics;

/** Layers whose resin states its strength, for tests. */
final class StrongLayers {
    static final Workshop LIBRARY = Workshop.USUAL;
    static final Workshop ISO = Workshop.USUAL.withStrength(StrengthBasis.ISO_12215_5);
    static final Resin STRONG = strong(POLYESTER, Status.MEMORY);
    static final LayUp STRONG_HAND = layUp(Process.HAND_LAY_UP, STRONG);

    private StrongLayers() {}

    static Resin strong(Resin resin, Status status) {
        Figures figures = resin.figures()
                .with(Property.TENSILE_STRENGTH, new Figure(58e6, "a handbook", status))
                .with(Property.COMPRESSIVE_STRENGTH, new Figure(120e6, "a handbook", Status.MEMORY))
                .with(Property.ELONGATION, new Figure(0.02, "a handbook", Status.MEMORY));
        return new Resin(
                resin.id(),
                resin.name(),
                resin.family(),
                resin.use(),
                resin.waxed(),
                figures,
                resin.cures(),
                resin.gelPoints());
    }

    static LayUp strongEpoxy() {
        Resin epoxy = strong(EPOXY, Status.MEMORY);
        return new LayUp(Process.HAND_LAY_UP, epoxy, Dose.usual(epoxy, TestMaterials.AMINE));
    }

    static LaidLayer lay(Workshop workshop, Layer layer) {
        return new Estimator(workshop).lay(zone(1, layer)).layers().get(0);
    }

    static ReinforcementLayer strong(Reinforcement reinforcement) {
        return ReinforcementLayer.of(reinforcement, STRONG_HAND);
    }

    static Strength strength(LaidLayer laid) {
        return laid.plies().get(0).lamina().strength().orElseThrow();
    }

    static PlyStrength straight(LaidLayer laid) {
        return StrengthMicromechanics.straight(
                FibreProperties.of(72.4e9, 72.4e9, 29.67e9, 0.22),
                FibreStrength.inTension(2e9),
                MatrixProperties.of(3.3e9, 0.36),
                new MatrixStrength(58e6, 120e6, 0.02),
                laid.fibreVolumeFraction(),
                laid.voids());
    }
}
