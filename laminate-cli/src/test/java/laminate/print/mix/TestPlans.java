package laminate.print.mix;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.estimate.Caution;
import laminate.material.Status;
import laminate.plan.Bond;
import laminate.plan.ClockTime;
import laminate.plan.DoseTable;
import laminate.plan.FreshAir;
import laminate.plan.InfusingTime;
import laminate.plan.Mix;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.plan.StageResin;
import laminate.plan.Suggestion;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.TestMaterials;
import laminate.process.Dose;
import laminate.process.Process;

/** Plans whose every number is set here, so that a print can be held against what was put in. */
final class TestPlans {
    private static final Dose MEKP = Dose.usual(TestMaterials.POLYESTER, TestMaterials.MEKP);
    private static final Dose HARDENER = Dose.usual(TestMaterials.EPOXY, TestMaterials.HARDENER);

    private TestPlans() {}

    /** Two stages on one day: three mixes of which two are alike, and a bond that is kept. */
    static MixPlan lid() {
        Stage gelcoat = stage(
                1,
                "gelcoat",
                Stage.Kind.MOULD_COAT,
                List.of(layer("lid", 1, "gelcoat-iso", OptionalDouble.empty())),
                List.of(resin("gelcoat", List.of(mix(1, 0.636, 0.640, 0.0115, OptionalInt.empty())))),
                1,
                Optional.empty());
        Stage laminate = stage(
                2,
                "laminate",
                Stage.Kind.LAMINATE,
                List.of(
                        layer("lid", 1, "mat-300", OptionalDouble.of(0)),
                        layer("lid", 2, "biaxial-600", OptionalDouble.of(45)),
                        layer("edge band", 1, "mat-450", OptionalDouble.of(0))),
                List.of(resin(
                        "laminate",
                        List.of(
                                mix(1, 1.2645, 1.265, 0.019, OptionalInt.empty()),
                                mix(2, 1.2645, 1.265, 0.019, OptionalInt.empty()),
                                mix(3, 0.3, 0.3, 0.0045, OptionalInt.empty())))),
                1,
                Optional.of(bond()));
        return plan("Bow locker lid", 4, List.of(gelcoat, laminate), List.of(doses()));
    }

    /** A second day, strokes of a pump, a gel time that is not known, and a resin of which no mix fits. */
    static MixPlan keel() {
        Stage first = stage(
                1,
                "bulk, 1 of 2",
                Stage.Kind.LAMINATE,
                List.of(layer("keel", 1, "mat-450", OptionalDouble.of(0))),
                List.of(resin("laminate", List.of(mix(1, 1, 1, 0.015, OptionalInt.of(3)))), unknown(), unfit()),
                1,
                Optional.empty());
        Stage second = stage(
                2,
                "bulk, 2 of 2",
                Stage.Kind.INFUSION,
                List.of(layer("keel", 2, "mat-450", OptionalDouble.of(90))),
                List.of(resin("laminate", List.of(mix(1, 1, 1, 0.015, OptionalInt.of(3))))),
                2,
                Optional.of(bond()));
        MixPlan plan = plan("Keel", 1, List.of(first, second), List.of());
        return new MixPlan(
                plan.part(), 1, 293.15, true, 3, plan.stages(), plan.doses(), Optional.empty(), plan.cautions());
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else. */
    static MixPlan hostileNames() {
        String name = "=cmd|' /C calc'!A0, \"of\" 艇庫の蓋 " + "very-long-name-".repeat(9);
        Stage stage = stage(
                1,
                "@stage\u001B[31m\nnow",
                Stage.Kind.LAMINATE,
                List.of(layer(name, 1, "+mat|1", OptionalDouble.of(0))),
                List.of(resin(name, List.of(mix(1, 1, 1, 0.015, OptionalInt.of(3))))),
                1,
                Optional.of(bond()));
        return plan("@lid \u001B[31m | *bold* <b>\nline two\u2028\u202Eend", 1, List.of(stage), List.of(doses()));
    }

    static List<MixPlan> all() {
        return List.of(lid(), keel(), hostileNames());
    }

    static MouldingPlan sheet(MixPlan plan) {
        return new MouldingPlan(plan, Optional.empty());
    }

    private static MixPlan plan(String part, int mouldings, List<Stage> stages, List<DoseTable> doses) {
        FreshAir air = new FreshAir(2, 0.144, 3000, 426e-6, 0.1127, "an exposure limit", Status.PRINTED);
        return new MixPlan(
                part,
                mouldings,
                291.15,
                false,
                1,
                stages,
                doses,
                Optional.of(air),
                List.of(
                        new Caution(
                                Caution.Kind.SCHEDULE, "Time a cup first.", "common practice", Status.COMMON_PRACTICE),
                        new Caution(Caution.Kind.SAFETY, "Goggles on.", "common practice", Status.COMMON_PRACTICE)));
    }

    private static Stage stage(
            int number,
            String name,
            Stage.Kind kind,
            List<StageLayer> layers,
            List<StageResin> resins,
            int day,
            Optional<Bond> bond) {
        return new Stage(
                number,
                name,
                kind,
                kind == Stage.Kind.INFUSION ? Process.INFUSION : Process.HAND_LAY_UP,
                layers,
                0.00181,
                kind == Stage.Kind.INFUSION ? 3600 : 0,
                1500,
                number == 2 ? 600 : 0,
                kind == Stage.Kind.INFUSION
                        ? Optional.of(new InfusingTime(300, 900, List.of("keel"), List.of("rim")))
                        : Optional.empty(),
                new ClockTime(day, LocalTime.of(7 + number, 0)),
                new ClockTime(day, LocalTime.of(7 + number, 25)),
                Optional.of(new ClockTime(day, LocalTime.of(7 + number, 44, 59))),
                resins,
                bond,
                List.of(new Caution(
                        Caution.Kind.SCHEDULE, "It may warm by 71 K.", "reckoned", Status.COMMON_PRACTICE)));
    }

    private static StageLayer layer(String zone, int number, String material, OptionalDouble angle) {
        return new StageLayer(zone, number, material, 2, angle, number == 2, 0.775, 0.03, 0.00072, 0.7);
    }

    private static StageResin resin(String use, List<Mix> mixes) {
        double need = mixes.stream().mapToDouble(Mix::needed).sum();
        return new StageResin(
                TestMaterials.POLYESTER,
                MEKP,
                use,
                need,
                1380,
                OptionalDouble.of(1650),
                Optional.of(Status.MEMORY),
                "a table of gel times",
                mixes,
                Optional.empty(),
                List.of());
    }

    private static StageResin unknown() {
        Mix mix = new Mix(
                1,
                "epoxy",
                "hardener",
                0.5,
                0.5,
                0.00045,
                0.15,
                0.00015,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                600);
        return new StageResin(
                TestMaterials.EPOXY,
                HARDENER,
                "skin coat",
                0.5,
                600,
                OptionalDouble.empty(),
                Optional.empty(),
                "the resin states no gel time",
                List.of(mix),
                Optional.empty(),
                List.of());
    }

    private static StageResin unfit() {
        return new StageResin(
                TestMaterials.POLYESTER,
                MEKP,
                "bonding",
                2.5,
                3000,
                OptionalDouble.of(480),
                Optional.of(Status.MEMORY),
                "a table of gel times",
                List.of(),
                Optional.of("a layer takes longer than the usable time"),
                List.of(
                        new Suggestion(OptionalDouble.of(0.01), OptionalInt.empty(), 4),
                        new Suggestion(OptionalDouble.empty(), OptionalInt.of(3), 1)));
    }

    private static Mix mix(int number, double needed, double resin, double agent, OptionalInt strokes) {
        return new Mix(
                number,
                "polyester-ortho",
                "mekp",
                needed,
                resin,
                resin / 1110,
                agent,
                agent / 1170,
                strokes,
                OptionalDouble.of(1200),
                OptionalDouble.of(720),
                460);
    }

    private static Bond bond() {
        return new Bond(
                "gelcoat-iso",
                4644,
                Bond.Verdict.KEPT,
                86400,
                OptionalDouble.of(432000),
                "1.3 h after gelcoat-iso: it bonds unprepared",
                "common practice",
                Status.COMMON_PRACTICE);
    }

    private static DoseTable doses() {
        return new DoseTable(
                "polyester-ortho",
                "mekp",
                List.of(288.15, 293.15),
                List.of(
                        new DoseTable.Row(0.01, 8.55e-6, List.of(OptionalDouble.of(3150), OptionalDouble.of(1860))),
                        new DoseTable.Row(0.015, 12.8e-6, List.of(OptionalDouble.of(2220), OptionalDouble.empty()))),
                List.of(new DoseTable.Wanted(900, List.of(OptionalDouble.of(0.0133), OptionalDouble.empty()))),
                "a table of gel times",
                Status.MEMORY);
    }
}
