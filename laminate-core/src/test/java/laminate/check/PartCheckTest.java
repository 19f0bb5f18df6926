package laminate.check;

import static laminate.check.CheckedParts.CORE;
import static laminate.check.CheckedParts.FACE;
import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.deflection;
import static laminate.check.CheckedParts.layer;
import static laminate.check.CheckedParts.panel;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.reserve;
import static laminate.check.CheckedParts.sandwich;
import static laminate.check.CheckedParts.solid;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.check.LimitCheck.Verdict;
import laminate.estimate.Caution;
import laminate.part.DeflectionLimit;
import laminate.part.Layer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.Equivalence;
import laminate.theory.Lamina;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.MatStrength;
import laminate.theory.PlyStrength;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.PlyDiscount;
import laminate.theory.failure.ProgressiveFailure;
import laminate.theory.panel.Edge;
import org.assertj.core.data.Percentage;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

class PartCheckTest {
    /** Carbon in epoxy as of many textbooks: moduli, strengths, expansion. */
    private static final Lamina CARBON = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28)
            .withExpansion(0.02e-6, 22.5e-6)
            .withStrength(PlyStrength.of(1500e6, 1500e6, 40e6, 246e6, 68e6));

    private static final LoadCase PULL = new LoadCase("pull", LaminateLoad.NONE.with(Term.NX, 100e3));

    private static Zone crossPly() {
        return Zone.of("cross", 1, List.of(layer(CARBON, 0.001, 0), layer(CARBON, 0.002, 90), layer(CARBON, 0.001, 0)));
    }

    private static LoadCaseCheck only(PartCheck check) {
        return check.zones().get(0).loadCases().get(0);
    }

    @Test
    void aPartThatAsksNothingIsEmptyAndKeepsItsLimits() {
        PartCheck check = check(part(solid(0.004)));
        assertThat(check.isEmpty()).isTrue();
        assertThat(check.limitsMet()).isTrue();
        assertThat(check.limits()).isEmpty();
        assertThat(check.zones()).hasSize(1);
    }

    /** Zones are compared in such a check, and strengths with them. */
    @Test
    void whatACheckIsNotIsSaidEvenWhereNothingIsAsked() {
        assertThat(check(part(solid(0.004))).cautions())
                .extracting(Caution::text)
                .anyMatch(text -> text.contains("not a class approval"))
                .anyMatch(text -> text.startsWith("Strengths are those of sound, dry, new laminate"));
    }

    /** A shear force that is nothing but rounding beside the pull. */
    @Test
    void aPointHasNoFactorForWhatDoesNotLoadIt() {
        LaminateLoad pull = LaminateLoad.NONE.with(Term.NX, 100e3);
        assertThat(shearedCore(pull.withShear(1e-9, 0))).isZero();
        assertThat(shearedCore(pull.withShear(1, 0))).isEqualTo(3);
    }

    private static long shearedCore(LaminateLoad load) {
        Zone zone = sandwich().withLoadCases(List.of(new LoadCase("case", load)));
        return only(check(part(zone))).laminate().points().stream()
                .filter(point -> point.reserves().containsKey(Criterion.CORE_SHEAR))
                .count();
    }

    @Test
    void aCoreTooThinForTheFormulaOfWrinklingIsSaid() {
        String said = "thinner than twice the depth";
        double depth = 0.91 * 0.002 * Math.cbrt(20e9 / (1 - 0.3 * 0.3) * 75e6 / (28e6 * 28e6));
        assertThat(depth).isBetween(0.02, 0.03);
        assertThat(check(part(sandwich())).cautions())
                .anyMatch(caution -> caution.text().contains(said));
        Zone thick = Zone.of("thick", 1, List.of(layer(FACE, 0.002, 0), layer(CORE, 0.07, 0), layer(FACE, 0.002, 0)));
        assertThat(check(part(thick)).cautions())
                .noneMatch(caution -> caution.text().contains(said));
    }

    @Test
    void aCoreGivenAsALaminaIsSaidToLackAModulus() {
        String said = "no modulus through the thickness";
        assertThat(check(part(sandwich())).cautions())
                .anyMatch(caution -> caution.text().contains(said));
        assertThat(check(part(solid(0.004))).cautions())
                .noneMatch(caution -> caution.text().contains(said));
    }

    @Test
    void anythingAskedIsSomething() {
        assertThat(check(part(solid(0.004)).withLimits(reserve(ReserveKind.FIRST_PLY, 2)))
                        .isEmpty())
                .as("a limit that nothing is held against")
                .isTrue();
        assertThat(check(part(solid(0.004).withLoadCases(List.of(PULL)))).isEmpty())
                .isFalse();
        assertThat(check(part(solid(0.004)).withPanels(List.of(panel("solid", 1, Edge.CLAMPED, 1))))
                        .isEmpty())
                .isFalse();
    }

    /** Nx over the thickness, one direction: R = X t/N. */
    @Test
    void onePlyPulledAlongItsFibres() {
        Zone zone = Zone.of("strip", 1, List.of(layer(CARBON, 0.002, 0))).withLoadCases(List.of(PULL));
        LoadCaseCheck pull = only(check(part(zone)));
        for (Criterion criterion : List.of(
                Criterion.MAX_STRESS, Criterion.MAX_STRAIN, Criterion.TSAI_HILL, Criterion.TSAI_WU, Criterion.HASHIN)) {
            assertThat(pull.laminate().points().get(1).reserves().get(criterion).value())
                    .isCloseTo(30, Percentage.withPercentage(1e-9));
        }
        assertThat(CheckedParts.factor(pull.reserves(), ReserveKind.FIRST_PLY))
                .isCloseTo(30, Percentage.withPercentage(1e-9));
        assertThat(pull.reserves())
                .extracting(Reserve::kind)
                .containsExactly(ReserveKind.FIRST_PLY, ReserveKind.LAST_PLY);
        assertThat(pull.limits()).isEmpty();
    }

    /** Cooling pulls the plies across their fibres, so less load is left for the first of them; the last is not minded. */
    @Test
    void residualStressCountsUnlessItIsLeftOut() {
        LaminateLoad cooled = PULL.load().withTemperatureChange(-100);
        Part part = part(crossPly().withLoadCases(List.of(new LoadCase("cooled", cooled))));
        Part bare = part(crossPly().withLoadCases(List.of(PULL)));
        double with = CheckedParts.factor(only(check(part)).reserves(), ReserveKind.FIRST_PLY);
        LoadCaseCheck left = only(check(part, CheckOptions.USUAL.withoutResidualStress()));
        assertThat(with).isLessThan(0.8 * CheckedParts.factor(only(check(bare)).reserves(), ReserveKind.FIRST_PLY));
        assertThat(left.reserves()).isEqualTo(only(check(bare)).reserves());
        assertThat(left.laminate()).isEqualTo(only(check(bare)).laminate());
        assertThat(left.progressive()).isEqualTo(only(check(bare)).progressive());
    }

    @Test
    void theCriterionThatIsChosenDecides() {
        LaminateLoad load = LaminateLoad.NONE.with(Term.NX, 100e3).with(Term.NXY, 40e3);
        Part part = part(crossPly().withLoadCases(List.of(new LoadCase("both", load))));
        for (Criterion criterion : List.of(Criterion.MAX_STRESS, Criterion.TSAI_HILL, Criterion.HASHIN)) {
            LoadCaseCheck found = only(check(part, CheckOptions.USUAL.with(criterion)));
            double least = found.laminate().points().stream()
                    .mapToDouble(point -> point.reserves().get(criterion).value())
                    .min()
                    .orElseThrow();
            assertThat(CheckedParts.factor(found.reserves(), ReserveKind.FIRST_PLY))
                    .isEqualTo(least);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CheckOptions.USUAL.with(Criterion.CORE_SHEAR))
                .withMessageContaining("core_shear");
    }

    @Test
    void aFailureSurfaceIsTracedWhereWanted() {
        CheckOptions options = CheckOptions.USUAL.with(new SurfaceTerms(Term.NX, Term.NXY, 24));
        LoadCaseCheck pull = only(check(part(crossPly().withLoadCases(List.of(PULL))), options));
        double first = CheckedParts.factor(pull.reserves(), ReserveKind.FIRST_PLY);
        assertThat(pull.surface().orElseThrow().points()).hasSize(24);
        assertThat(pull.surface().orElseThrow().points().get(0).x())
                .isCloseTo(first * 100e3, Percentage.withPercentage(1e-6));
        assertThat(only(check(part(crossPly().withLoadCases(List.of(PULL))))).surface())
                .isEmpty();
    }

    @Test
    void plyWithoutStrengthLeavesALimitOpen() {
        Lamina unknown = Lamina.of(40e9, 10e9, 4e9, 0.3);
        Zone zone = Zone.of("strip", 1, List.of(layer(CARBON, 0.001, 0), layer(unknown, 0.001, 0)))
                .withLoadCases(List.of(PULL));
        PartCheck check = check(part(zone).withLimits(reserve(ReserveKind.FIRST_PLY, 1.5)));
        assertThat(check.zones().get(0).notJudged())
                .containsExactly(new NotJudged(1, "lamina", "the lamina states no strengths"));
        assertThat(check.limits()).hasSize(1);
        assertThat(check.limits().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(check.limits().get(0).found()).isPresent();
        assertThat(check.limitsMet()).isFalse();
        assertThat(check.cautions()).extracting(Caution::text).anyMatch(text -> text.contains("2 lamina (the lamina"));
        PartCheck failing = check(part(zone).withLimits(reserve(ReserveKind.FIRST_PLY, 1e3)));
        assertThat(failing.limits().get(0).verdict()).isEqualTo(Verdict.NOT_MET);
    }

    @Test
    void aLimitHandedDownIsNotSpokenOfWhereItIsBesideThePoint() {
        Limits core = reserve(ReserveKind.CORE_SHEAR, 2);
        assertThat(check(part(crossPly().withLoadCases(List.of(PULL))).withLimits(core))
                        .limits())
                .isEmpty();
        List<LimitCheck> own = check(
                        part(crossPly().withLoadCases(List.of(PULL)).withLimits(core)))
                .limits();
        assertThat(own).hasSize(1);
        assertThat(own.get(0).found()).isEmpty();
        assertThat(own.get(0).isMet()).isTrue();
        Limits indentation = reserve(ReserveKind.INDENTATION, 2);
        List<LimitCheck> wrong = check(
                        part(crossPly().withLoadCases(List.of(PULL)).withLimits(indentation)))
                .limits();
        assertThat(wrong.get(0).verdict()).as("a load case cannot indent").isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void theNearestLimitWins() {
        Part part = part(solid(0.004).withLimits(deflection(0.001)))
                .withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 1000)))
                .withLimits(deflection(1));
        assertThat(check(part).limits()).extracting(LimitCheck::asked).containsExactly(0.001);
    }

    @Test
    void aShareOfTheSpanIsOfTheShorterSide() {
        Limits share = new Limits(
                Optional.of(DeflectionLimit.ofSpan(100)), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
        Part part = part(solid(0.004))
                .withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 1000)))
                .withLimits(share);
        LimitCheck limit = check(part).limits().get(0);
        assertThat(limit.asked()).isCloseTo(0.004, Percentage.withPercentage(1e-9));
        assertThat(limit.found()).hasValue(check(part).panels().get(0).governingDeflection());
    }

    @Test
    void massIsOfTheThingThatIsAskedForIt() {
        Limits mass = new Limits(Optional.empty(), Map.of(), OptionalDouble.empty(), OptionalDouble.of(10));
        var plan = panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 1000);
        Part part = part(solid(0.004).withLimits(mass))
                .withPanels(List.of(new PanelPlan(
                        plan.name(),
                        plan.zone(),
                        plan.length(),
                        plan.width(),
                        plan.edges(),
                        plan.inPlane(),
                        plan.loads(),
                        mass)))
                .withLimits(mass);
        assertThat(check(part).limits())
                .extracting(
                        limit -> limit.where().kind(), limit -> limit.found().getAsDouble())
                .containsExactlyInAnyOrder(
                        Tuple.tuple(Subject.Kind.PART, 6.0),
                        Tuple.tuple(Subject.Kind.ZONE, 6.0),
                        Tuple.tuple(Subject.Kind.PANEL, 1500 * 0.004 * 0.4 * 0.4));
    }

    @Test
    void limitsStandWorstFirst() {
        Lamina unknown = Lamina.of(40e9, 10e9, 4e9, 0.3);
        Part part = part(
                        sandwich().withLoadCases(List.of(new LoadCase("bend", LaminateLoad.NONE.with(Term.MX, 400)))),
                        Zone.of("open", 1, List.of(layer(unknown, 0.004, 0))).withLoadCases(List.of(PULL)))
                .withLimits(new Limits(
                        Optional.empty(),
                        Map.of(ReserveKind.FIRST_PLY, 100.0, ReserveKind.WRINKLING, 10.0, ReserveKind.CRUSHING, 1.0),
                        OptionalDouble.of(0.004),
                        OptionalDouble.empty()));
        List<LimitCheck> limits = check(part).limits();
        assertThat(limits).extracting(LimitCheck::verdict).isSorted().contains(Verdict.values());
        assertThat(limits.get(0).margin()).isLessThan(limits.get(1).margin());
        assertThat(limits.get(0).reserveKind()).contains(ReserveKind.FIRST_PLY);
    }

    @Test
    void aLoadThatCannotBeReckonedSaysWhere() {
        LoadCase hot = new LoadCase("hot", LaminateLoad.NONE.withTemperatureChange(40));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(part(solid(0.004).withLoadCases(List.of(hot)))))
                .withMessageStartingWith("zone solid, load case hot: ");
    }

    @Test
    void cautionsTellWhatTheCheckIsNot() {
        Part part =
                part(solid(0.004), crossPly()).withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 20e3)));
        List<String> texts = check(part).cautions().stream().map(Caution::text).toList();
        assertThat(texts).anyMatch(text -> text.contains("not a class approval") && text.contains("licensed practice"));
        assertThat(texts)
                .anyMatch(text -> text.startsWith("panel panel: small-deflection theory gives more than half"));
        assertThat(texts).anyMatch(text -> text.startsWith("zone cross: shear moduli across the thickness"));
        Part calm = part(solid(0.004)).withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 100)));
        assertThat(check(calm).cautions())
                .extracting(Caution::text)
                .noneMatch(text -> text.contains("small-deflection"));
    }

    @Test
    void largeDeflectionIsReckonedWhereWanted() {
        Part calm = part(solid(0.004)).withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 100)));
        PanelCheck wanted =
                check(calm, CheckOptions.USUAL.withLargeDeflection()).panels().get(0);
        assertThat(wanted.large().orElseThrow().deflection())
                .isCloseTo(wanted.bending().deflection(), Percentage.withPercentage(0.1));
        assertThat(wanted.governingDeflection()).isEqualTo(wanted.bending().deflection());
    }

    @Test
    void thicknessIsAskedOfEveryZone() {
        Limits thick = new Limits(Optional.empty(), Map.of(), OptionalDouble.of(0.01), OptionalDouble.empty());
        List<LimitCheck> limits =
                check(part(solid(0.004), sandwich()).withLimits(thick)).limits();
        assertThat(limits).extracting(limit -> limit.where().name()).containsExactly("solid", "sandwich");
        assertThat(limits).extracting(LimitCheck::isMet).containsExactly(false, true);
    }

    @Test
    void twoZonesAreCompared() {
        Zone thin = Zone.of("thin", 1, List.of(layer(CheckedParts.PLATE, 0.003, 0)));
        ZoneComparison half =
                ZoneComparison.of(check(part(solid(0.006), thin)).estimate(), "solid", "thin", CheckOptions.USUAL);
        assertThat(half.bending().x()).isCloseTo(1.0 / 8, Percentage.withPercentage(1e-9));
        assertThat(half.membrane().xy()).isCloseTo(1.0 / 2, Percentage.withPercentage(1e-9));
        assertThat(half.strength().bendingX().orElseThrow()).isCloseTo(1.0 / 4, Percentage.withPercentage(1e-9));
        assertThat(half.strength().tensionY().orElseThrow()).isCloseTo(1.0 / 2, Percentage.withPercentage(1e-9));
        assertThat(half.mass()).isCloseTo(0.5, Percentage.withPercentage(1e-9));
        assertThat(half.thickness()).isCloseTo(0.5, Percentage.withPercentage(1e-9));
        assertThat(half.thicknessFactorAtEqual(Equivalence.Stiffness.BENDING_Y))
                .isCloseTo(2, Percentage.withPercentage(1e-9));
        assertThat(half.core()).isEmpty();
    }

    @Test
    void aCoreIsFoundThatReplacesASolidLaminate() {
        var stiffness = Equivalence.Stiffness.BENDING_X;
        Zone sheet = Zone.of("sheet", 1, List.of(layer(FACE, 0.012, 0)));
        ZoneComparison comparison =
                ZoneComparison.of(check(part(sheet, sandwich())).estimate(), "sheet", "sandwich", CheckOptions.USUAL);
        assertThat(comparison.core()).hasValue(1);
        double core = comparison.coreThicknessAtEqual(stiffness).orElseThrow();
        Zone made = Zone.of("made", 1, List.of(layer(FACE, 0.002, 0), layer(CORE, core, 0), layer(FACE, 0.002, 0)));
        ZoneComparison equal =
                ZoneComparison.of(check(part(sheet, made)).estimate(), "sheet", "made", CheckOptions.USUAL);
        assertThat(equal.bending().x()).isCloseTo(1, Percentage.withPercentage(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        ZoneComparison.of(check(part(sheet, made)).estimate(), "sheet", "absent", CheckOptions.USUAL))
                .withMessageContaining("absent");
    }

    /** Local failures are judged by the mechanical load alone, as a reserve factor multiplies it alone. */
    @Test
    void coolingDoesNotWrinkleAFace() {
        Zone zone = Zone.of(
                "cooled",
                1,
                List.of(
                        layer(FACE.withExpansion(20e-6, 20e-6), 0.002, 0),
                        layer(CORE.withExpansion(60e-6, 60e-6), 0.02, 0),
                        layer(FACE.withExpansion(20e-6, 20e-6), 0.002, 0)));
        LaminateLoad bent = LaminateLoad.NONE.with(Term.MX, 400);
        List<Double> wrinkling = List.of(bent, bent.withTemperatureChange(-60)).stream()
                .map(load -> only(check(part(zone.withLoadCases(List.of(new LoadCase("bend", load)))))))
                .map(loadCase -> CheckedParts.factor(loadCase.reserves(), ReserveKind.WRINKLING))
                .toList();
        assertThat(wrinkling.get(1)).isCloseTo(wrinkling.get(0), Percentage.withPercentage(1e-9));
    }

    @Test
    void theDiscountThatIsChosenIsUsed() {
        LaminateLoad shear = LaminateLoad.NONE.with(Term.NX, 100e3);
        Part part = part(crossPly().withLoadCases(List.of(new LoadCase("pull", shear))));
        LoadCaseCheck whole = only(check(part, CheckOptions.USUAL.with(PlyDiscount.WHOLE_PLY)));
        LoadCaseCheck byMode = only(check(part));
        assertThat(whole.progressive().steps())
                .isNotEqualTo(byMode.progressive().steps());
        assertThat(whole.progressive())
                .isEqualTo(ProgressiveFailure.of(
                        check(part).zones().get(0).zone().laminate(), shear, Criterion.TSAI_WU, PlyDiscount.WHOLE_PLY));
    }

    /** What rounding alone loads has no reserve factor: pure bending does not crimp, and what is not pressed does not buckle. */
    @Test
    void pureBendingDoesNotCrimp() {
        Zone zone = Zone.of("uneven", 1, List.of(layer(FACE, 0.003, 0), layer(CORE, 0.02, 0), layer(FACE, 0.002, 0)))
                .withLoadCases(List.of(new LoadCase(
                        "bend", LaminateLoad.NONE.with(Term.MX, 417.3).with(Term.MY, 31.7))));
        assertThat(only(check(part(zone))).reserves())
                .extracting(Reserve::kind)
                .containsExactlyInAnyOrder(
                        ReserveKind.FIRST_PLY, ReserveKind.LAST_PLY, ReserveKind.CRUSHING, ReserveKind.WRINKLING);
    }

    @Test
    void aSurfaceTakesThePlaceOfWhatIsHeldInItsTerms() {
        LaminateLoad held = LaminateLoad.NONE.with(Term.EPS_X, 0.001).with(Term.NXY, 10e3);
        CheckOptions options = CheckOptions.USUAL.with(new SurfaceTerms(Term.NX, Term.NY, 8));
        LoadCaseCheck found = only(check(part(crossPly().withLoadCases(List.of(new LoadCase("held", held)))), options));
        assertThat(found.surface().orElseThrow().points()).hasSize(8);
    }

    @Test
    void theLimitsOfAPanelStandWorstFirst() {
        Limits two = new Limits(
                Optional.of(DeflectionLimit.of(1)),
                Map.of(ReserveKind.FIRST_PLY, 1e4),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        PanelCheck found = check(part(solid(0.004))
                        .withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 1000)))
                        .withLimits(two))
                .panels()
                .get(0);
        assertThat(found.limits()).extracting(LimitCheck::verdict).containsExactly(Verdict.NOT_MET, Verdict.MET);
    }

    /** One side breaks at a sixth of the stress in tension: that sense of the moment counts. */
    @Test
    void bendingStrengthIsThatOfTheWeakerSense() {
        Lamina strong = Lamina.isotropic(20e9, 0.3).withStrength(new MatStrength(300e6, 300e6, 170e6));
        Lamina brittle = Lamina.isotropic(20e9, 0.3).withStrength(new MatStrength(50e6, 300e6, 80e6));
        Zone even = Zone.of("even", 1, List.of(layer(strong, 0.002, 0), layer(strong, 0.002, 0)));
        for (List<Layer> layers : List.of(
                List.of(layer(strong, 0.002, 0), layer(brittle, 0.002, 0)),
                List.of(layer(brittle, 0.002, 0), layer(strong, 0.002, 0)))) {
            ZoneComparison found = ZoneComparison.of(
                    check(part(even, Zone.of("uneven", 1, layers))).estimate(), "even", "uneven", CheckOptions.USUAL);
            assertThat(found.strength().bendingX().orElseThrow()).isCloseTo(1.0 / 6, Percentage.withPercentage(1e-6));
        }
    }
}
