package laminate.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import laminate.estimate.Estimator;
import laminate.estimate.OperationTime;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.part.LaminaLayer;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.Mixing;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.Workshop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the plan of every part. */
class PlanInvariantsTest {
    private static final Workshop TWENTY = PlanParts.workshop(20, 2);

    static Stream<Part> parts() {
        return PlanParts.random(40);
    }

    /** All stages of a pot sum to what the estimate says is to be mixed of it. */
    @ParameterizedTest
    @MethodSource("parts")
    void needsSumToTheEstimate(Part part) {
        PartEstimate estimate = new Estimator(TWENTY).estimate(part);
        Map<String, Double> wanted = new TreeMap<>();
        for (ResinQuantity quantity : estimate.quantities().resins()) {
            wanted.merge(
                    pot(quantity.resin().id(), quantity.dose().ratio()), quantity.toMix() / part.count(), Double::sum);
        }

        MixPlan plan = new MixPlanner(TWENTY).plan(estimate);

        Map<String, Double> planned = new TreeMap<>();
        Map<String, Double> mixed = new TreeMap<>();
        for (Stage stage : plan.stages()) {
            double layers =
                    stage.layers().stream().mapToDouble(StageLayer::resin).sum();
            double resins =
                    stage.resins().stream().mapToDouble(StageResin::need).sum();
            assertThat(layers).isCloseTo(resins, within(1e-12 * resins));
            for (StageResin resin : stage.resins()) {
                String pot = pot(resin.resin().id(), resin.dose().ratio());
                planned.merge(pot, resin.need(), Double::sum);
                mixed.merge(pot, resin.mixes().stream().mapToDouble(Mix::needed).sum(), Double::sum);
            }
        }
        assertSame(planned, wanted);
        assertThat(plan.fits()).isTrue();
        assertSame(mixed, wanted);
    }

    /** Every layer is laid once, and each zone keeps its order. */
    @ParameterizedTest
    @MethodSource("parts")
    void everyLayerIsLaidOnceInItsOrder(Part part) {
        Map<String, List<Integer>> laid = new HashMap<>();
        for (Stage stage : PlanParts.plan(part, TWENTY).stages()) {
            for (StageLayer layer : stage.layers()) {
                if (!stage.kind().isCoat()) {
                    laid.computeIfAbsent(layer.zone(), zone -> new ArrayList<>())
                            .add(layer.number());
                }
            }
        }
        for (Zone zone : part.zones()) {
            List<Integer> expected = new ArrayList<>();
            for (int i = 0; i < zone.layers().size(); i++) {
                if (!(zone.layers().get(i) instanceof LaminaLayer)) {
                    expected.add(i + 1);
                }
            }
            assertThat(laid.get(zone.name())).as(zone.name()).isEqualTo(expected);
        }
    }

    /** The clock takes as long as the estimate's hours by the crew, with mixing. */
    @ParameterizedTest
    @MethodSource("parts")
    void timesSumToTheEstimate(Part part) {
        PartEstimate estimate = new Estimator(TWENTY).estimate(part);
        Set<String> planned =
                Set.of(Operation.GELCOAT, Operation.LAY_UP, Operation.DRY_LAY_UP, Operation.CORE, Operation.BAGGING);
        double hands = 0;
        double flow = 0;
        for (OperationTime time : estimate.operations()) {
            hands += planned.contains(time.operation().name()) ? time.time() / part.count() : 0;
            flow += time.operation().name().equals(Operation.INFUSION) ? time.time() / part.count() : 0;
        }
        double sum = 0;
        for (Stage stage : new MixPlanner(TWENTY).plan(estimate).stages()) {
            int stirred = stage.kind() == Stage.Kind.INFUSION
                    ? stirredBefore(stage)
                    : stage.mixes().size();
            sum += stage.dryTime() + stage.wetTime() + stage.bagTime() - 120.0 * stirred;
        }
        assertThat(sum).isCloseTo(hands / 2 + flow, within(1e-6));
    }

    /** The mixes of beds, and the first that is drawn in; the others are stirred while it runs. */
    private static int stirredBefore(Stage stage) {
        int beds = 0;
        for (StageResin resin : stage.resins()) {
            boolean bed = resin.resin().id().equals(PlanParts.PASTE.id());
            beds += bed ? resin.mixes().size() : 0;
        }
        return beds + 1;
    }

    /** Nothing is laid before what lies under it has gelled, nor outside the working day unless it is longer than that. */
    @ParameterizedTest
    @MethodSource("parts")
    void theClockIsKept(Part part) {
        MixPlan plan = PlanParts.plan(part, TWENTY);
        Map<String, Stage> under = new HashMap<>();
        ClockTime free = ClockTime.at(0);
        for (Stage stage : plan.stages()) {
            double length = stage.end().seconds() - stage.start().seconds();
            assertThat(length).isCloseTo(stage.dryTime() + stage.wetTime() + stage.bagTime(), within(1.0));
            assertThat(stage.start()).isGreaterThanOrEqualTo(free);
            free = stage.end();
            double sinceOpening = stage.start().time().toSecondOfDay() - 8 * 3600;
            assertThat(sinceOpening).isGreaterThanOrEqualTo(0);
            assertThat(sinceOpening == 0 || sinceOpening + length <= 8 * 3600 + 1)
                    .isTrue();
            for (StageLayer layer : stage.layers()) {
                Stage below = under.get(layer.zone());
                if (below != null && below != stage) {
                    assertThat(stage.start())
                            .isGreaterThanOrEqualTo(below.gelled().orElseThrow());
                    assertThat(stage.bond()).isPresent();
                }
                under.put(layer.zone(), stage);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void noWetStageIsThickerThanItsResinBears(Part part) {
        for (Stage stage : PlanParts.plan(part, TWENTY).stages()) {
            if (stage.kind() == Stage.Kind.LAMINATE && stage.process() == Process.HAND_LAY_UP) {
                double bearable = stage.resins().get(0).resin().stageThickness().orElse(Double.MAX_VALUE);
                assertThat(stage.thickness()).isLessThanOrEqualTo(bearable * (1 + 1e-9));
            }
        }
    }

    /** Planned at 12, 20 and 28 °C, and by one, two and four. */
    @ParameterizedTest
    @MethodSource("parts")
    void warmthTakesNoFewerMixesAndHandsNoMore(Part part) {
        List<Integer> cool = counts(part, 12, 2);
        List<Integer> mild = counts(part, 20, 2);
        List<Integer> warm = counts(part, 28, 2);
        List<Integer> alone = counts(part, 20, 1);
        List<Integer> four = counts(part, 20, 4);
        for (int i = 0; i < mild.size(); i++) {
            assertThat(cool.get(i)).isLessThanOrEqualTo(mild.get(i));
            assertThat(warm.get(i)).isGreaterThanOrEqualTo(mild.get(i));
            assertThat(alone.get(i)).isGreaterThanOrEqualTo(mild.get(i));
            assertThat(four.get(i)).isLessThanOrEqualTo(mild.get(i));
        }
    }

    /** Where coarse scales and warmth leave no plan, so many hands as suggested make one. */
    @ParameterizedTest
    @MethodSource("parts")
    void handsThatAreSuggestedFit(Part part) {
        Mixing coarse = PlanParts.mixing(0.005, 0.0005, OptionalDouble.empty(), OptionalDouble.empty());
        Workshop hot = PlanParts.with(PlanParts.workshop(29, 1), coarse);
        MixPlan plan = PlanParts.plan(part, hot);
        for (int i = 0; i < plan.stages().size(); i++) {
            for (int j = 0; j < plan.stages().get(i).resins().size(); j++) {
                for (Suggestion suggestion :
                        plan.stages().get(i).resins().get(j).suggestions()) {
                    if (suggestion.crew().isPresent()) {
                        int crew = suggestion.crew().getAsInt();
                        MixPlan again = PlanParts.plan(part, PlanParts.with(PlanParts.workshop(29, crew), coarse));
                        assertThat(again.stages().get(i).resins().get(j).mixes())
                                .hasSize(suggestion.mixes());
                    }
                }
            }
        }
    }

    private static List<Integer> counts(Part part, double celsius, int crew) {
        return PlanParts.plan(part, PlanParts.workshop(celsius, crew)).stages().stream()
                .flatMap(stage -> stage.resins().stream())
                .map(resin -> resin.fits() ? resin.mixes().size() : Integer.MAX_VALUE)
                .toList();
    }

    private static String pot(String resin, double dose) {
        return resin + " " + dose;
    }

    private static void assertSame(Map<String, Double> found, Map<String, Double> wanted) {
        for (Map.Entry<String, Double> pot : wanted.entrySet()) {
            assertThat(found.getOrDefault(pot.getKey(), 0.0))
                    .as(pot.getKey())
                    .isCloseTo(pot.getValue(), within(1e-12 * pot.getValue()));
        }
        assertThat(found.keySet()).isSubsetOf(wanted.keySet());
    }
}
