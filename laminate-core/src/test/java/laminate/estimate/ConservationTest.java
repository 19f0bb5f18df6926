package laminate.estimate;

import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.Evaporation;
import laminate.process.Loss;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Masses balance and scale, for seeded random parts of every sort. */
class ConservationTest {
    private static final Estimator ESTIMATOR = new Estimator(RandomParts.WORKSHOP);
    private static final double LAPS = 0.04;

    static Stream<Part> parts() {
        return RandomParts.take(150);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void zonesLapsAndItemsMakeUpTheMass(Part part) {
        PartEstimate estimate = ESTIMATOR.estimate(part);
        double expected = part.count()
                * part.items().stream()
                        .mapToDouble(item -> item.count() * item.mass())
                        .sum();
        for (ZoneEstimate zone : estimate.zones()) {
            double area = zone.zone().area() * zone.zone().count() * part.count();
            double laps = zone.layers().stream()
                    .filter(LaidLayer::isReinforced)
                    .mapToDouble(layer -> LAPS * layer.massPerArea().planned())
                    .sum();
            expected += (zone.massPerArea().planned() + laps) * area;
        }
        assertThat(estimate.quantities().mass()).isCloseTo(expected, relative(expected));
        assertThat(estimate.mass().planned()).isCloseTo(expected, relative(expected));
        assertThat(estimate.massEach().planned() * part.count()).isCloseTo(expected, relative(expected));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void aZoneWeighsWhatIsInItsLayersAndCoatings(Part part) {
        for (ZoneEstimate zone : ESTIMATOR.estimate(part).zones()) {
            double layers = zone.layers().stream()
                    .mapToDouble(l -> l.fibreMass()
                            + l.coreMass()
                            + l.bedMass()
                            + l.givenMass()
                            + l.resinMass().planned())
                    .sum();
            double coatings = zone.coatings().stream()
                    .mapToDouble(c ->
                            c.thickness().planned() * c.coating().material().densityCured())
                    .sum();
            assertThat(zone.massPerArea().planned()).isCloseTo(layers + coatings, relative(layers));
            assertThat(zone.laminate().thickness())
                    .isCloseTo(
                            zone.thickness().planned(),
                            relative(zone.thickness().planned()));
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void whatIsMixedIsInThePartOrLostOrEvaporated(Part part) {
        Quantities quantities = ESTIMATOR.estimate(part).quantities();
        for (ResinQuantity resin : quantities.resins()) {
            double whole = resin.inPart() + resin.lost() + resin.evaporated();
            double ratio = resin.dose().ratio();
            assertThat(resin.mixed()).isCloseTo(whole, relative(whole));
            assertThat(resin.agent()).isCloseTo(ratio * resin.toMix(), relative(whole));
            boolean hardener = resin.dose().agent().isHardener();
            assertThat(hardener ? resin.toMix() * (1 + ratio) : resin.toMix()).isCloseTo(whole, relative(whole));
            assertThat(resin.agentVolume() * resin.dose().agent().density()).isCloseTo(resin.agent(), relative(whole));
            assertThat(Math.min(resin.lost(), resin.evaporated())).isNotNegative();
        }
        assertThat(quantities.resinInPart())
                .isCloseTo(sum(quantities, false, ResinQuantity::inPart), within(1e-12 * quantities.mass()));
        assertThat(quantities.coating())
                .isCloseTo(sum(quantities, true, ResinQuantity::inPart), within(1e-12 * quantities.mass()));
        assertThat(quantities.resinToMix())
                .isCloseTo(sum(quantities, false, ResinQuantity::toMix), within(1e-12 * quantities.mass()));
        assertThat(quantities.agent())
                .isCloseTo(sum(quantities, false, ResinQuantity::agent), within(1e-12 * quantities.mass()));
    }

    private static double sum(Quantities quantities, boolean coatings, ToDoubleFunction<ResinQuantity> of) {
        return quantities.resins().stream()
                .filter(resin -> resin.use().isCoating() == coatings)
                .mapToDouble(of)
                .sum();
    }

    /** What the list of materials says is in the part, is. */
    @ParameterizedTest
    @MethodSource("parts")
    void materialsInThePartSumToItsMass(Part part) {
        Quantities quantities = ESTIMATOR.estimate(part).quantities();
        double inPart = quantities.materials().stream()
                .mapToDouble(MaterialQuantity::inPart)
                .sum();
        double expected = quantities.mass() - quantities.items() - quantities.given();
        assertThat(inPart).isCloseTo(expected, relative(quantities.mass()));
        assertThat(sumOf(quantities, "reinforcement")).isCloseTo(quantities.fibre(), relative(quantities.mass()));
        assertThat(sumOf(quantities, "core") + sumOf(quantities, "bulking mat"))
                .isCloseTo(quantities.core(), relative(quantities.mass()));
        assertThat(quantities.materials())
                .allSatisfy(material ->
                        assertThat(material.mass().orElseThrow()).isGreaterThanOrEqualTo(material.inPart()));
    }

    private static double sumOf(Quantities quantities, String kind) {
        return quantities.materials().stream()
                .filter(material -> material.kind().equals(kind))
                .mapToDouble(MaterialQuantity::inPart)
                .sum();
    }

    /** Per layer and per material the cutting list agrees: what is bought is what is cut, and the waste of 10 %. */
    @ParameterizedTest
    @MethodSource("parts")
    void cutsAndWasteMakeUpWhatIsBought(Part part) {
        Quantities quantities = ESTIMATOR.estimate(part).quantities();
        for (String material :
                quantities.cuts().stream().map(LayerCut::material).distinct().toList()) {
            double cut = quantities.cuts().stream()
                    .filter(layer -> layer.material().equals(material))
                    .mapToDouble(LayerCut::area)
                    .sum();
            double bought = quantities.materials().stream()
                    .filter(quantity -> quantity.material().equals(material))
                    .mapToDouble(quantity -> quantity.area().orElseThrow())
                    .sum();
            assertThat(bought).isCloseTo(material.equals("lamina") ? 0 : 1.10 * cut, relative(cut));
        }
    }

    /** What comes off the mould is the part without items, and the margin: its resin is a loss, its fibre is bought. */
    @ParameterizedTest
    @MethodSource("parts")
    void theMarginIsPulledAndTrimmed(Part part) {
        PartEstimate estimate = ESTIMATOR.estimate(part);
        double margin = estimate.zones().stream()
                .mapToDouble(zone -> zone.massPerArea().planned()
                        * zone.zone().trim().map(Trim::area).orElse(0.0)
                        * zone.zone().count()
                        * part.count())
                .sum();
        assertThat(estimate.quantities().trimmed()).isCloseTo(margin, relative(margin));
        double expected = estimate.quantities().mass() - estimate.quantities().items() + margin;
        assertThat(estimate.massAsPulled()).isCloseTo(expected, relative(expected));
    }

    /** Nothing but hoses and bucket, filled once a moulding, stands apart from the area. */
    @ParameterizedTest
    @MethodSource("parts")
    void twiceTheAreaTakesTwiceAsMuch(Part part) {
        Quantities one = ESTIMATOR.estimate(part).quantities();
        Quantities two = ESTIMATOR
                .estimate(withZones(part, ConservationTest::twiceTheArea))
                .quantities();
        assertThat(two.mass() - two.items()).isCloseTo(2 * (one.mass() - one.items()), relative(two.mass()));
        assertThat(two.trimmed()).isCloseTo(2 * one.trimmed(), relative(two.mass()));
        for (int i = 0; i < one.resins().size(); i++) {
            ResinQuantity small = one.resins().get(i);
            ResinQuantity large = two.resins().get(i);
            double lines = lines(small, part);
            assertThat(large.inPart()).isCloseTo(2 * small.inPart(), relative(large.mixed()));
            assertThat(large.evaporated()).isCloseTo(2 * small.evaporated(), relative(large.mixed()));
            assertThat(large.lost() - lines).isCloseTo(2 * (small.lost() - lines), relative(large.mixed()));
        }
    }

    private static double lines(ResinQuantity resin, Part part) {
        boolean drawn = resin.resin().use().isLaminating();
        double each = RandomParts.WORKSHOP
                        .loss(resin.use().process(), Loss.LINES)
                        .value()
                + RandomParts.WORKSHOP.loss(resin.use().process(), Loss.BUCKET).value();
        return drawn ? each * part.count() : 0;
    }

    @ParameterizedTest
    @MethodSource("parts")
    void everyMouldingTakesTheSame(Part part) {
        PartEstimate one = ESTIMATOR.estimate(times(1, part));
        PartEstimate five = ESTIMATOR.estimate(times(5, part));
        assertThat(five.mass().planned())
                .isCloseTo(5 * one.mass().planned(), relative(five.mass().planned()));
        assertThat(five.massEach().planned())
                .isCloseTo(one.massEach().planned(), relative(one.mass().planned()));
        for (int i = 0; i < one.quantities().materials().size(); i++) {
            double each = one.quantities().materials().get(i).mass().orElseThrow();
            assertThat(five.quantities().materials().get(i).mass().orElseThrow())
                    .isCloseTo(5 * each, relative(5 * each));
        }
        assertThat(five.time()).isCloseTo(5 * one.time(), relative(five.time()));
        assertThat(five.zones()).isEqualTo(one.zones());
    }

    @ParameterizedTest
    @MethodSource("parts")
    void aZoneInTwoHalvesChangesNothing(Part part) {
        List<Zone> halves = new ArrayList<>();
        part.zones().forEach(zone -> halves.addAll(Collections.nCopies(2, scaled(zone, 0.5))));
        Part split = new Part(part.name(), part.count(), halves, part.items(), part.measured());
        PartEstimate whole = ESTIMATOR.estimate(part);
        PartEstimate parted = ESTIMATOR.estimate(split);
        assertThat(parted.mass().planned())
                .isCloseTo(whole.mass().planned(), relative(whole.mass().planned()));
        assertThat(parted.fibreMassFraction()).isCloseTo(whole.fibreMassFraction(), within(1e-12));
        assertThat(parted.time()).isCloseTo(whole.time(), relative(whole.time()));
        for (int i = 0; i < whole.quantities().resins().size(); i++) {
            double mixed = whole.quantities().resins().get(i).mixed();
            assertThat(parted.quantities().resins().get(i).mixed()).isCloseTo(mixed, relative(mixed));
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theScatterHoldsThePlan(Part part) {
        PartEstimate estimate = ESTIMATOR.estimate(part);
        assertThat(estimate.mass().contains(estimate.mass().planned())).isTrue();
        for (ZoneEstimate zone : estimate.zones()) {
            assertThat(zone.thicknessWithCoatings()
                            .contains(zone.thicknessWithCoatings().planned()))
                    .isTrue();
            zone.layers().stream().filter(LaidLayer::isReinforced).forEach(layer -> {
                assertThat(layer.thickness().least())
                        .isLessThan(layer.thickness().planned());
                assertThat(layer.thickness().most())
                        .isGreaterThan(layer.thickness().planned());
            });
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void fractionsOfThePartLieAmongThoseOfItsLayers(Part part) {
        PartEstimate estimate = ESTIMATOR.estimate(part);
        List<LaidLayer> reinforced = estimate.zones().stream()
                .flatMap(zone -> zone.layers().stream())
                .filter(LaidLayer::isReinforced)
                .toList();
        checkAmong(estimate.fibreMassFraction(), reinforced, LaidLayer::fibreMassFraction);
        checkAmong(estimate.fibreVolumeFraction(), reinforced, LaidLayer::fibreVolumeFraction);
        checkAmong(estimate.voidFraction(), reinforced, LaidLayer::voids);
    }

    private static void checkAmong(double whole, List<LaidLayer> layers, ToDoubleFunction<LaidLayer> fraction) {
        double least = layers.stream().mapToDouble(fraction).min().orElse(0);
        double most = layers.stream().mapToDouble(fraction).max().orElse(0);
        assertThat(whole).isBetween(least * (1 - 1e-12), most * (1 + 1e-12));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theSameTwiceIsTheSame(Part part) {
        assertThat(ESTIMATOR.estimate(part)).isEqualTo(ESTIMATOR.estimate(part));
    }

    @Test
    void withoutLossesOnlyWhatEvaporatesIsMixedOnTop() {
        PartEstimate estimate =
                new Estimator(withoutLosses()).estimate(part(zone(2, hand(mat(0.45)), hand(roving(0.6)))));
        ResinQuantity resin = estimate.quantities().resins().get(0);
        double share = Evaporation.byHand(resin.resin());
        assertThat(resin.lost()).isZero();
        assertThat(resin.evaporated()).isCloseTo(resin.toMix() * share, within(1e-12));
        assertThat(resin.toMix()).isCloseTo(resin.inPart() / (1 - share), within(1e-12));
        // 0.286 · 0.42 − 0.0529
        assertThat(share).isCloseTo(0.06722, within(1e-12));
    }

    @Test
    void twoLightMatsAreOneHeavyOne() {
        ZoneEstimate heavy = ESTIMATOR.lay(zone(1, hand(mat(0.6))));
        ZoneEstimate light = ESTIMATOR.lay(zone(1, hand(mat(0.3)), hand(mat(0.3))));
        assertThat(light.thickness().planned()).isCloseTo(heavy.thickness().planned(), within(1e-16));
        assertThat(light.massPerArea().planned()).isCloseTo(heavy.massPerArea().planned(), within(1e-15));
        assertThat(light.laminate().membrane().get(0, 0))
                .isCloseTo(heavy.laminate().membrane().get(0, 0), within(1e-6));
    }

    @Test
    void theOrderOfLayersDoesNotChangeTheMass() {
        List<Layer> layers = List.of(hand(mat(0.3)), hand(roving(0.6)), hand(biaxial(0.6)), hand(mat(0.45)));
        List<Layer> reversed = new ArrayList<>(layers);
        Collections.reverse(reversed);
        ZoneEstimate one = ESTIMATOR.lay(Zone.of("panel", 1, layers));
        ZoneEstimate other = ESTIMATOR.lay(Zone.of("panel", 1, reversed));
        assertThat(other.massPerArea().planned()).isCloseTo(one.massPerArea().planned(), within(1e-14));
        assertThat(other.thickness().planned()).isCloseTo(one.thickness().planned(), within(1e-16));
    }

    @Test
    void aMirroredListHasNoCoupling() {
        ReinforcementLayer biaxial = hand(biaxial(0.6));
        List<Layer> half = List.of(hand(mat(0.3)), hand(roving(0.6)), biaxial);
        List<Layer> mirrored = new ArrayList<>(half);
        mirrored.add(new ReinforcementLayer(
                biaxial.reinforcement(), 0, true, biaxial.layUp(), biaxial.content(), biaxial.stage()));
        mirrored.add(half.get(1));
        mirrored.add(half.get(0));
        ZoneEstimate zone = ESTIMATOR.lay(Zone.of("panel", 1, mirrored));
        assertThat(zone.laminate().isCoupled()).isFalse();
        assertThat(zone.massPerArea().planned())
                .isCloseTo(
                        2
                                * ESTIMATOR
                                        .lay(Zone.of("panel", 1, half))
                                        .massPerArea()
                                        .planned(),
                        within(1e-14));
    }

    private static Part withZones(Part part, UnaryOperator<Zone> change) {
        return new Part(
                part.name(), part.count(), part.zones().stream().map(change).toList(), part.items(), part.measured());
    }

    private static Zone twiceTheArea(Zone zone) {
        return scaled(zone, 2);
    }

    private static Zone scaled(Zone zone, double factor) {
        return new Zone(
                zone.name(),
                zone.area() * factor,
                zone.count(),
                zone.coatings(),
                zone.layers(),
                zone.trim().map(trim -> new Trim(trim.edge() * factor, trim.width())),
                zone.contents(),
                zone.measured());
    }

    private static Offset<Double> relative(double of) {
        return within(1e-12 * Math.abs(of) + 1e-300);
    }
}
