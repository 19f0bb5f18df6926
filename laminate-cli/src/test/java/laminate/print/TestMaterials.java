package laminate.print;

import java.util.List;
import java.util.Optional;
import laminate.material.Agent;
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
import laminate.material.Resin.Cure;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Process;

/** Materials with round figures, made without any file. */
public final class TestMaterials {
    public static final Fibre GLASS = new Fibre(
            "e-glass",
            "E-glass fibre",
            Fibre.Type.GLASS,
            Figures.none()
                    .with(Property.DENSITY, 2560)
                    .with(Property.E1, 72e9)
                    .with(Property.E2, 72e9)
                    .with(Property.G12, 30e9)
                    .with(Property.NU12, 0.22)
                    .with(Property.ALPHA1, 5e-6)
                    .with(Property.ALPHA2, 5e-6)
                    .with(Property.TENSILE_STRENGTH, 2e9));

    public static final Agent MEKP = new Agent(
            "mekp", "Ketone peroxide", MaterialKind.CATALYST, Figures.none().with(Property.DENSITY, 1170));
    public static final Agent HARDENER = new Agent(
            "hardener-slow",
            "Amine hardener",
            MaterialKind.HARDENER,
            Figures.none().with(Property.DENSITY, 950));

    public static final Resin POLYESTER = resin(
            "polyester-ortho", Resin.Family.POLYESTER, Resin.Use.LAMINATING, 1110, 1200, 0.42, MEKP, 0.01, 0.015, 0.03);
    public static final Resin GELCOAT =
            resin("gelcoat-iso", Resin.Family.POLYESTER, Resin.Use.GELCOAT, 1240, 1330, 0.35, MEKP, 0.012, 0.018, 0.02);
    public static final Resin PASTE = resin(
            "bonding-paste",
            Resin.Family.POLYESTER,
            Resin.Use.BONDING_PASTE,
            1250,
            1300,
            0.34,
            MEKP,
            0.01,
            0.015,
            0.025);
    public static final Resin EPOXY =
            resin("epoxy-infusion", Resin.Family.EPOXY, Resin.Use.INFUSION, 1100, 1150, 0, HARDENER, 0.29, 0.3, 0.31);

    public static final Reinforcement MAT_300 = mat("mat-300", 0.3);
    public static final Reinforcement MAT_450 = mat("mat-450", 0.45);
    public static final Reinforcement BIAXIAL = new Reinforcement(
            "biaxial-600",
            "Stitched biaxial 0/90",
            Form.STITCHED,
            List.of(FibrePly.of(GLASS, Form.STITCHED, 0, 0.3), FibrePly.of(GLASS, Form.STITCHED, 90, 0.3)),
            Optional.empty(),
            Figures.none().with(Property.AREAL_WEIGHT, 0.6).with(Property.ROLL_WIDTH, 1.27),
            Optional.empty());

    public static final Core FOAM = new Core(
            "pvc-80",
            "Cross-linked PVC foam",
            Core.Type.PVC_CROSS_LINKED,
            false,
            Figures.none()
                    .with(Property.DENSITY, 80)
                    .with(Property.E1, 90e6)
                    .with(Property.E2, 90e6)
                    .with(Property.G12, 27e6)
                    .with(Property.NU12, 0.32)
                    .with(Property.EZ, 90e6)
                    .with(Property.G13, 27e6)
                    .with(Property.G23, 27e6)
                    .with(Property.ALPHA, 40e-6)
                    .with(Property.COMPRESSIVE_STRENGTH, 1.4e6)
                    .with(Property.SHEAR_STRENGTH, 1.15e6)
                    .with(Property.UPTAKE_HAND, 0.29)
                    .with(Property.UPTAKE_INFUSION, 0.43));

    public static final LayUp BY_HAND = new LayUp(Process.HAND_LAY_UP, POLYESTER, Dose.usual(POLYESTER, MEKP));
    public static final LayUp INFUSED = new LayUp(Process.INFUSION, EPOXY, Dose.usual(EPOXY, HARDENER));

    private TestMaterials() {}

    private static Reinforcement mat(String id, double arealMass) {
        return new Reinforcement(
                id,
                "Chopped strand mat",
                Form.MAT,
                List.of(FibrePly.of(GLASS, Form.MAT, 0, arealMass)),
                Optional.of(Reinforcement.Binder.POWDER),
                Figures.none().with(Property.AREAL_WEIGHT, arealMass).with(Property.ROLL_WIDTH, 1.27),
                Optional.empty());
    }

    private static Resin resin(
            String id,
            Resin.Family family,
            Resin.Use use,
            double liquid,
            double cured,
            double styrene,
            Agent agent,
            double from,
            double amount,
            double to) {
        Figures figures = Figures.none()
                .with(Property.DENSITY_LIQUID, liquid)
                .with(Property.DENSITY_CURED, cured)
                .with(Property.E, 3.3e9)
                .with(Property.NU, 0.36)
                .with(Property.ALPHA, 80e-6)
                .with(Property.STYRENE_CONTENT, styrene);
        Cure cure = new Cure(agent.id(), Figure.stated(amount), Figure.stated(from), Figure.stated(to));
        return new Resin(id, id, family, use, false, figures, List.of(cure), List.of());
    }
}
