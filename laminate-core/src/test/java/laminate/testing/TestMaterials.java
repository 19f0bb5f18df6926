package laminate.testing;

import java.util.List;
import java.util.Optional;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.MaterialKind;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;

/** Plain materials for tests, with round figures that are easy to reckon with by hand. */
public final class TestMaterials {
    public static final Agent MEKP = agent("mekp", MaterialKind.CATALYST, 1170);
    public static final Agent CUMENE = agent("cumene-peroxide", MaterialKind.CATALYST, 1060);
    public static final Agent AMINE = agent("amine-hardener", MaterialKind.HARDENER, 960);
    public static final Agent ISOCYANATE = agent("isocyanate", MaterialKind.HARDENER, 1120);

    public static final Fibre E_GLASS =
            fibre("e-glass", Fibre.Type.GLASS, 2560, 72.4e9, 72.4e9, 29.67e9, 5.3e-6, 5.3e-6);
    public static final Fibre CARBON = fibre("carbon", Fibre.Type.CARBON, 1780, 235e9, 15e9, 15e9, -0.5e-6, 10e-6);
    public static final Fibre ARAMID = fibre("aramid", Fibre.Type.ARAMID, 1440, 125e9, 5e9, 3e9, -4e-6, 60e-6);
    public static final Fibre FLAX = fibre("flax", Fibre.Type.NATURAL, 1480, 55e9, 8e9, 3e9, 0, 70e-6);

    public static final Resin POLYESTER = new Resin(
            "polyester-ortho",
            "Orthophthalic polyester",
            Resin.Family.POLYESTER,
            Resin.Use.LAMINATING,
            false,
            matrix(1110, 1200, 3.3e9, 0.36)
                    .with(Property.STYRENE_CONTENT, 0.42)
                    .with(Property.STAGE_THICKNESS, 0.006)
                    .with(Property.VISCOSITY, 0.5),
            List.of(cure(MEKP, 0.01, 0.015, 0.03), cure(CUMENE, 0.01, 0.015, 0.02)),
            List.of());

    public static final Resin VINYLESTER = new Resin(
            "vinylester",
            "Vinylester",
            Resin.Family.VINYLESTER,
            Resin.Use.INFUSION,
            false,
            matrix(1040, 1140, 3.4e9, 0.35).with(Property.STYRENE_CONTENT, 0.45).with(Property.VISCOSITY, 0.4),
            List.of(cure(MEKP, 0.01, 0.015, 0.025), cure(CUMENE, 0.01, 0.015, 0.02)),
            List.of());

    public static final Resin EPOXY = new Resin(
            "epoxy-laminating",
            "Laminating epoxy",
            Resin.Family.EPOXY,
            Resin.Use.LAMINATING,
            false,
            matrix(1120, 1150, 3.2e9, 0.35).with(Property.VISCOSITY, 0.4001),
            List.of(cure(AMINE, 0.29, 0.30, 0.31)),
            List.of());

    public static final Resin GELCOAT = coating("gelcoat-iso", Resin.Family.POLYESTER, Resin.Use.GELCOAT, false)
            .build(
                    matrix(1200, 1250, 3.4e9, 0.36).with(Property.STYRENE_CONTENT, 0.35),
                    cure(MEKP, 0.012, 0.018, 0.02));

    public static final Resin FLOWCOAT = coating("flowcoat", Resin.Family.POLYESTER, Resin.Use.FLOWCOAT, true)
            .build(matrix(1150, 1220, 3.3e9, 0.36).with(Property.STYRENE_CONTENT, 0.38), cure(MEKP, 0.01, 0.02, 0.025));

    public static final Resin PAINT = coating("paint-2k", Resin.Family.POLYURETHANE, Resin.Use.PAINT, false)
            .build(matrix(1050, 1300, 2e9, 0.36).with(Property.SHRINKAGE, 0.5), cure(ISOCYANATE, 0.4, 0.5, 0.6));

    public static final Resin PASTE = coating("bonding-paste", Resin.Family.POLYESTER, Resin.Use.BONDING_PASTE, false)
            .build(matrix(1150, 1220, 3e9, 0.36).with(Property.STYRENE_CONTENT, 0.30), cure(MEKP, 0.01, 0.015, 0.025));

    public static final Core PVC = core("pvc-80", Core.Type.PVC_CROSS_LINKED, false, 80, Optional.of(0.40));
    public static final Core POLYSTYRENE = core("ps-30", Core.Type.PS, false, 30, Optional.empty());
    public static final Core HONEYCOMB = core("honeycomb-48", Core.Type.HONEYCOMB, true, 48, Optional.of(0.3));

    public static final Bulker BULKING_MAT = new Bulker(
            "bulking-mat-3",
            "Bulking mat, 3 mm",
            Figures.none()
                    .with(Property.AREAL_WEIGHT, 0.105)
                    .with(Property.THICKNESS, 0.003)
                    .with(Property.DENSITY, 620)
                    .with(Property.E, 0.8e9)
                    .with(Property.NU, 0.3)
                    .with(Property.ALPHA, 60e-6));

    private TestMaterials() {}

    /** A powder-bound mat of E-glass (kg/m²). */
    public static Reinforcement mat(double arealMass) {
        return mat(arealMass, Reinforcement.Binder.POWDER);
    }

    public static Reinforcement mat(double arealMass, Reinforcement.Binder binder) {
        return new Reinforcement(
                id("mat", arealMass),
                "Chopped strand mat",
                Form.MAT,
                List.of(FibrePly.of(E_GLASS, Form.MAT, 0, arealMass)),
                Optional.of(binder),
                weight(arealMass),
                Optional.empty());
    }

    public static Reinforcement roving(double arealMass) {
        return single("roving", Form.WOVEN_ROVING, E_GLASS, arealMass);
    }

    public static Reinforcement cloth(double arealMass) {
        return single("cloth", Form.WOVEN_CLOTH, E_GLASS, arealMass);
    }

    public static Reinforcement unidirectional(double arealMass) {
        return single("unidirectional", Form.UNIDIRECTIONAL, E_GLASS, arealMass);
    }

    public static Reinforcement tissue(double arealMass) {
        return single("tissue", Form.TISSUE, E_GLASS, arealMass);
    }

    public static Reinforcement biaxial(double arealMass) {
        return stitched(
                id("biaxial", arealMass),
                FibrePly.of(E_GLASS, Form.STITCHED, 0, arealMass / 2),
                FibrePly.of(E_GLASS, Form.STITCHED, 90, arealMass / 2));
    }

    /** A woven roving with a mat stitched to its inner face. */
    public static Reinforcement combination(double roving, double mat) {
        return stitched(
                id("combination", roving + mat),
                FibrePly.of(E_GLASS, Form.WOVEN_ROVING, 0, roving),
                FibrePly.of(E_GLASS, Form.MAT, 0, mat));
    }

    /** A cloth woven of carbon and aramid, half of each by mass. */
    public static Reinforcement hybridCloth(double arealMass) {
        return made(
                id("hybrid", arealMass),
                Form.WOVEN_CLOTH,
                FibrePly.of(CARBON, Form.WOVEN_CLOTH, 0, arealMass / 2),
                FibrePly.of(ARAMID, Form.WOVEN_CLOTH, 0, arealMass / 2));
    }

    public static Reinforcement stitched(String id, FibrePly... plies) {
        return made(id, Form.STITCHED, plies);
    }

    public static Reinforcement single(String word, Form form, Fibre fibre, double arealMass) {
        return made(id(word, arealMass), form, FibrePly.of(fibre, form, 0, arealMass));
    }

    private static Reinforcement made(String id, Form form, FibrePly... plies) {
        double total = List.of(plies).stream().mapToDouble(FibrePly::arealMass).sum();
        return new Reinforcement(id, id, form, List.of(plies), Optional.empty(), weight(total), Optional.empty());
    }

    private static Figures weight(double arealMass) {
        return Figures.none().with(Property.AREAL_WEIGHT, arealMass).with(Property.ROLL_WIDTH, 1.25);
    }

    private static String id(String word, double arealMass) {
        return word + "-" + Math.round(arealMass * 1000);
    }

    /** A fibre with a Poisson's ratio of 0.22. */
    public static Fibre fibre(
            String id,
            Fibre.Type type,
            double density,
            double e1,
            double e2,
            double g12,
            double alpha1,
            double alpha2) {
        return new Fibre(
                id,
                id,
                type,
                Figures.none()
                        .with(Property.DENSITY, density)
                        .with(Property.E1, e1)
                        .with(Property.E2, e2)
                        .with(Property.G12, g12)
                        .with(Property.NU12, 0.22)
                        .with(Property.ALPHA1, alpha1)
                        .with(Property.ALPHA2, alpha2)
                        .with(Property.TENSILE_STRENGTH, 2e9));
    }

    private static Agent agent(String id, MaterialKind kind, double density) {
        return new Agent(id, id, kind, Figures.none().with(Property.DENSITY, density));
    }

    /** What every resin must state. */
    public static Figures matrix(double liquid, double cured, double e, double nu) {
        return Figures.none()
                .with(Property.DENSITY_LIQUID, liquid)
                .with(Property.DENSITY_CURED, cured)
                .with(Property.E, e)
                .with(Property.NU, nu)
                .with(Property.ALPHA, 60e-6);
    }

    public static Resin.Cure cure(Agent agent, double from, double usual, double to) {
        return new Resin.Cure(agent.id(), Figure.stated(usual), Figure.stated(from), Figure.stated(to));
    }

    /** The same resin with one more figure. */
    public static Resin with(Resin resin, Property property, double value) {
        return new Resin(
                resin.id(),
                resin.name(),
                resin.family(),
                resin.use(),
                resin.waxed(),
                resin.figures().with(property, value),
                resin.cures(),
                resin.gelPoints());
    }

    /** The same resin with wax in it. */
    public static Resin waxed(Resin resin) {
        return new Resin(
                resin.id() + "-waxed",
                resin.name(),
                resin.family(),
                resin.use(),
                true,
                resin.figures(),
                resin.cures(),
                resin.gelPoints());
    }

    private static Unfinished coating(String id, Resin.Family family, Resin.Use use, boolean waxed) {
        return (figures, cure) -> new Resin(id, id, family, use, waxed, figures, List.of(cure), List.of());
    }

    private interface Unfinished {
        Resin build(Figures figures, Resin.Cure cure);
    }

    private static Core core(String id, Core.Type type, boolean openCell, double density, Optional<Double> infused) {
        Figures figures = Figures.none()
                .with(Property.DENSITY, density)
                .with(Property.E1, 55e6)
                .with(Property.E2, 50e6)
                .with(Property.G12, 20e6)
                .with(Property.NU12, 0.3)
                .with(Property.EZ, 90e6)
                .with(Property.G13, 27e6)
                .with(Property.G23, 25e6)
                .with(Property.ALPHA, 35e-6)
                .with(Property.COMPRESSIVE_STRENGTH, 1.4e6)
                .with(Property.SHEAR_STRENGTH, 1.15e6)
                .with(Property.UPTAKE_HAND, 0.25);
        return new Core(
                id,
                id,
                type,
                openCell,
                infused.map(u -> figures.with(Property.UPTAKE_INFUSION, u)).orElse(figures));
    }
}
