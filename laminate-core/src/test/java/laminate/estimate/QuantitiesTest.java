package laminate.estimate;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.CUMENE;
import static laminate.testing.TestMaterials.FLOWCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PAINT;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.coated;
import static laminate.testing.TestParts.coating;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.staged;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.trimmed;
import static laminate.testing.TestParts.withLoss;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.material.Figure;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;

/** Masses to mix and to buy reckoned by hand for small parts. */
class QuantitiesTest {
    private static final double HAND_SHARE = 0.286 * 0.42 - 0.0529;

    /** Mat of 0.3 kg/m² on 10 m²: 7 kg of resin, 8 % of it left in the pot, styrene gone from what is applied. */
    @Test
    void resinByHand() {
        Quantities quantities =
                estimate(Workshop.USUAL, zone(10, hand(mat(0.3)))).quantities();
        ResinQuantity resin = quantities.resins().get(0);
        assertThat(resin.use().use()).isEqualTo("laminate");
        assertThat(resin.inPart()).isCloseTo(7, within(1e-13));
        assertThat(resin.lost()).isCloseTo(0.56, within(1e-13));
        assertThat(resin.evaporated()).isCloseTo(7 * HAND_SHARE / (1 - HAND_SHARE), within(1e-13));
        assertThat(quantities.resinToMix()).isCloseTo(resin.mixed(), within(1e-13));
        assertThat(quantities.agent()).isCloseTo(0.015 * resin.mixed(), within(1e-14));
        assertThat(quantities.agentVolume()).isCloseTo(0.015 * resin.mixed() / 1170, within(1e-17));
    }

    /** The matrix holds the hardener: 100 to 30, so 1/1.3 of what is mixed is resin; nothing evaporates. */
    @Test
    void twoPartResin() {
        Quantities quantities = estimate(withoutLosses(), zone(10, ReinforcementLayer.of(mat(0.3), HAND_EPOXY)))
                .quantities();
        assertThat(quantities.resinInPart()).isCloseTo(7, within(1e-13));
        assertThat(quantities.resinToMix()).isCloseTo(7 / 1.3, within(1e-13));
        assertThat(quantities.agent()).isCloseTo(7 * 0.3 / 1.3, within(1e-13));
        assertThat(material(quantities, "epoxy-laminating").inPart()).isCloseTo(7 / 1.3, within(1e-13));
        assertThat(material(quantities, "amine-hardener").inPart()).isCloseTo(7 * 0.3 / 1.3, within(1e-13));
        assertThat(material(quantities, "amine-hardener").kind()).isEqualTo("hardener");
        assertThat(material(quantities, "amine-hardener").volume().orElseThrow())
                .isCloseTo(7 * 0.3 / 1.3 / 960, within(1e-15));
    }

    /** A peroxide is neither in the part nor in what is mixed. */
    @Test
    void peroxideIsALineOfItsOwn() {
        Quantities quantities =
                estimate(withoutLosses(), zone(10, hand(mat(0.3)))).quantities();
        assertThat(material(quantities, "mekp").inPart()).isZero();
        assertThat(material(quantities, "mekp").kind()).isEqualTo("catalyst");
        assertThat(material(quantities, "polyester-ortho").inPart()).isCloseTo(7, within(1e-13));
        assertThat(material(quantities, "polyester-ortho").volume().orElseThrow())
                .isCloseTo(7 / (1 - HAND_SHARE) / 1110, within(1e-15));
    }

    /** Nothing evaporates under an infusion bag; peel ply, mesh, lines, bucket and catch pot hold resin. */
    @Test
    void resinByInfusion() {
        Part part = times(
                3,
                part(zone(
                        2, ReinforcementLayer.of(roving(0.6), INFUSED), ReinforcementLayer.of(roving(0.6), INFUSED))));
        ResinQuantity resin = new Estimator(Workshop.USUAL)
                .estimate(part)
                .quantities()
                .resins()
                .get(0);
        double fibre = 2 * 0.6 / 2560;
        double inPart = 6 * (fibre / 0.5 * 0.99 - fibre) * 1140;
        assertThat(resin.inPart()).isCloseTo(inPart, within(1e-12));
        assertThat(resin.evaporated()).isZero();
        double lines = Math.PI / 4 * 0.01 * 0.01 * 3 * 1100;
        assertThat(resin.lost()).isCloseTo(0.05 * inPart + 6 * (0.15 + 0.88) + 3 * (lines + 0.4), within(1e-12));
        assertThat(resin.loss().pots()).isCloseTo(0.05 * inPart, within(1e-12));
        assertThat(resin.loss().bag()).isCloseTo(6 * (0.15 + 0.88), within(1e-12));
        assertThat(resin.loss().lines()).isCloseTo(3 * (lines + 0.4), within(1e-12));
        assertThat(resin.loss().trimmed()).isZero();
    }

    /** A bag is fitted once for each resin and stage of a zone, however many layers are under it; a core is under it too. */
    @Test
    void bagsAreFittedOnceForEachStage() {
        Workshop bagOnly = onlyLoss(Loss.BAG, 0.15);
        ReinforcementLayer skin = ReinforcementLayer.of(mat(0.3), BAG);
        assertThat(lost(bagOnly, zone(2, skin, skin, CoreLayer.of(PVC, 0.01, BAG), skin)))
                .isCloseTo(0.3, within(1e-13));
        assertThat(lost(bagOnly, zone(2, staged(mat(0.3), BAG, "a"), staged(mat(0.3), BAG, "b"))))
                .isCloseTo(0.6, within(1e-13));
        assertThat(lost(bagOnly, trimmed(zone(2, skin), new Trim(5, 0.1))))
                .isCloseTo(0.15 * 2.5 + 0.7 * 0.5 * 0.64 / 0.36 * 0.3 / 0.7, within(1e-13));
    }

    private static double lost(Workshop workshop, Zone zone) {
        return estimate(workshop, zone).quantities().resins().stream()
                .mapToDouble(ResinQuantity::lost)
                .sum();
    }

    private static Workshop onlyLoss(Loss loss, double value) {
        Map<Loss, Figure> own = new EnumMap<>(withoutLosses().losses().get(Process.HAND_LAY_UP));
        own.put(loss, Figure.stated(value));
        Map<Process, Map<Loss, Figure>> all = new EnumMap<>(Process.class);
        for (Process process : Process.values()) {
            all.put(process, own);
        }
        return Workshop.USUAL.withLosses(all);
    }

    /** Lines are filled once for a resin whatever the zones it runs to; gelcoat and paste never run through them. */
    @Test
    void linesAreFilledOnceAMoulding() {
        Workshop linesOnly = onlyLoss(Loss.LINES, 0.2);
        CoreLayer bedded = new CoreLayer(PVC, 0.01, 0, CoreFinish.PLAIN, INFUSED, Optional.of(bed()), "");
        Zone zone = coated(List.of(gelcoat(0.0005)), ReinforcementLayer.of(mat(0.3), INFUSED), bedded);
        Quantities quantities =
                new Estimator(linesOnly).estimate(times(4, part(zone, zone))).quantities();
        assertThat(quantities.resins()).extracting(ResinQuantity::lost).containsExactly(0.0, 0.8, 0.0);
        assertThat(quantities.resins())
                .extracting(r -> r.use().use())
                .containsExactly("gelcoat", "laminate", "bonding");
    }

    /** A stage of the name that pastes have is still drawn through lines. */
    @Test
    void aStageMayBeCalledBonding() {
        Quantities quantities = estimate(onlyLoss(Loss.BUCKET, 0.4), zone(1, staged(mat(0.3), INFUSED, "bonding")))
                .quantities();
        assertThat(quantities.resins().get(0).lost()).isEqualTo(0.4);
    }

    /** 0.5 mm wet of 1200 kg/m³ is 0.6 kg/m²; of it 0.286 · 0.35 − 0.0529 evaporates; 10 % is left in the pot. */
    @Test
    void gelcoatByWetFilm() {
        Quantities quantities = estimate(Workshop.USUAL, coated(List.of(gelcoat(0.0005)), hand(mat(0.3))))
                .quantities();
        ResinQuantity gelcoat = quantities.resins().get(0);
        double share = 0.286 * 0.35 - 0.0529;
        assertThat(gelcoat.use().use()).isEqualTo("gelcoat");
        assertThat(gelcoat.inPart()).isCloseTo(0.6 * (1 - share), within(1e-14));
        assertThat(gelcoat.evaporated()).isCloseTo(0.6 * share, within(1e-14));
        assertThat(gelcoat.lost()).isCloseTo(0.06 * (1 - share), within(1e-14));
        assertThat(quantities.coating()).isCloseTo(0.6 * (1 - share), within(1e-14));
        // Coatings stay out of the resin to mix.
        assertThat(quantities.resinToMix()).isCloseTo(quantities.resins().get(1).toMix(), within(1e-14));
        // Trade page: 1 kg of gelcoat to 1.6 m², waste included; ours is 0.66 kg/m².
        assertThat(gelcoat.mixed()).isCloseTo(1 / 1.6, within(0.04));
    }

    @Test
    void sprayedGelcoatLosesMoreStyrene() {
        Workshop usual = Workshop.USUAL;
        Workshop sprayed = new Workshop(
                usual.temperature(),
                usual.contentRules(),
                usual.voids(),
                usual.losses(),
                true,
                usual.evaporation(),
                usual.labour(),
                usual.consumables(),
                usual.stiffness(),
                usual.strength());
        ResinQuantity gelcoat = estimate(sprayed, coated(List.of(gelcoat(0.0005)), hand(mat(0.3))))
                .quantities()
                .resins()
                .get(0);
        assertThat(gelcoat.evaporated()).isCloseTo(0.6 * (1.036 * 0.35 - 0.195), within(1e-14));
    }

    /** Paint of 1050 kg/m³ that loses half its volume and cures to 1300: 1 − 1300 · 0.5/1050 of its mass is solvent. */
    @Test
    void paintLosesItsSolvent() {
        Zone painted = coated(List.of(coating(PAINT, new Film(Film.Basis.WET, 0.0001))), hand(mat(0.3)));
        ZoneEstimate zone = new Estimator(Workshop.USUAL).lay(painted);
        LaidCoating paint = zone.coatings().get(0);
        assertThat(paint.applied()).isCloseTo(0.105, within(1e-15));
        assertThat(paint.massPerArea().planned()).isCloseTo(0.065, within(1e-15));
        assertThat(paint.thickness().planned()).isCloseTo(0.00005, within(1e-18));
        Quantities quantities = estimate(withoutLosses(), painted).quantities();
        // Resins stand in the order that the zone lists them: coatings, then layers.
        ResinQuantity mixed = quantities.resins().get(0);
        assertThat(mixed.evaporated()).isCloseTo(0.040, within(1e-15));
        assertThat(mixed.toMix()).isCloseTo(0.105 / 1.5, within(1e-15));
    }

    /** A film stated as cured, or as mass applied, comes to the same as the wet film that makes it. */
    @Test
    void filmsAreStatedInThreeWays() {
        double share = 0.286 * 0.38 - 0.0529;
        double cured = 0.0005 * 1150 * (1 - share) / 1220;
        double applied = 0.0005 * 1150;
        for (Film film : List.of(
                new Film(Film.Basis.WET, 0.0005),
                new Film(Film.Basis.CURED, cured),
                new Film(Film.Basis.AREAL_WEIGHT, applied))) {
            LaidCoating laid = LaidCoating.of(coating(FLOWCOAT, film), Workshop.USUAL);
            assertThat(laid.applied()).isCloseTo(applied, within(1e-15));
            assertThat(laid.thickness().planned()).isCloseTo(cured, within(1e-18));
            assertThat(laid.thickness().least()).isCloseTo(0.8 * cured, within(1e-18));
            assertThat(laid.thickness().most()).isCloseTo(1.2 * cured, within(1e-18));
        }
    }

    /** Trade sheet: 3.3 kg of resin to a kg of 457 g/m² mat with liberal waste, 1.6 to a kg of heavy roving; ours is less. */
    @Test
    void resinToMixStaysBelowWhatALiberalTradeSheetAllows() {
        Quantities mat = estimate(Workshop.USUAL, zone(1, hand(mat(0.457)))).quantities();
        Quantities roving =
                estimate(Workshop.USUAL, zone(1, hand(roving(0.814)))).quantities();
        assertThat(mat.resinToMix() / mat.fibre()).isBetween(2.5, 3.3);
        assertThat(roving.resinToMix() / roving.fibre()).isBetween(1.1, 1.6);
    }

    /** A rule of thumb: 0.8 to 1.0 kg of resin on a square metre of each mat of 450 or roving of 600 g/m². */
    @Test
    void resinOfALayerIsThatOfTheRuleOfThumb() {
        double mat =
                estimate(withoutLosses(), zone(1, hand(mat(0.45)))).quantities().resinInPart();
        double roving = estimate(withoutLosses(), zone(1, hand(roving(0.6))))
                .quantities()
                .resinInPart();
        assertThat((mat + roving) / 2).isBetween(0.8, 1.0);
    }

    @Test
    void lapsStayInThePartAndMarginsDoNot() {
        Zone zone = trimmed(zone(10, hand(mat(0.3)), new BulkerLayer(BULKING_MAT, HAND, "")), new Trim(4, 0.05));
        Quantities quantities = estimate(withLoss(0.04, Loss.LAPS), zone).quantities();
        assertThat(quantities.fibre()).isCloseTo(3.12, within(1e-13));
        assertThat(quantities.laps()).isCloseTo(0.4, within(1e-13));
        assertThat(quantities.core()).isCloseTo(1.05, within(1e-13));
        assertThat(quantities.trimmed()).isCloseTo(0.2 * (1.0 + 1.86), within(1e-13));
        assertThat(quantities.mass()).isCloseTo(10 * 2.86 + 0.4, within(1e-12));
        LayerCut cut = quantities.cuts().get(0);
        assertThat(cut.area()).isCloseTo(10.6, within(1e-13));
        assertThat(cut.mass()).isCloseTo(3.18, within(1e-13));
        assertThat(cut.resin()).isCloseTo(7.42, within(1e-13));
        MaterialQuantity mat = quantities.materials().get(0);
        assertThat(mat.area().orElseThrow()).isCloseTo(11.66, within(1e-13));
        assertThat(mat.length().orElseThrow()).isCloseTo(11.66 / 1.25, within(1e-13));
        assertThat(mat.rollWidth()).hasValue(1.25);
        assertThat(mat.amount(PriceBasis.HOUR)).isEmpty();
        assertThat(quantities.materials().get(1).rollWidth()).isEmpty();
        assertThat(quantities.materials().get(1).length()).isEmpty();
    }

    /** Gelcoat covers the margin too: 0.2 m² of it is trimmed off, and 10 % of all that is applied stays in the pot. */
    @Test
    void coatingsCoverTheMarginToo() {
        Zone plain = coated(List.of(gelcoat(0.0005)), hand(mat(0.3)));
        Quantities quantities =
                estimate(Workshop.USUAL, trimmed(plain, new Trim(4, 0.05))).quantities();
        ResinQuantity gelcoat = quantities.resins().get(0);
        double share = 0.286 * 0.35 - 0.0529;
        double perArea = 0.6 * (1 - share);
        assertThat(gelcoat.inPart()).isCloseTo(perArea, within(1e-14));
        assertThat(gelcoat.loss().trimmed()).isCloseTo(perArea * 0.2, within(1e-14));
        assertThat(gelcoat.loss().pots()).isCloseTo(0.10 * perArea * 1.2, within(1e-14));
        assertThat(gelcoat.evaporated()).isCloseTo(0.6 * share * 1.2, within(1e-14));
        assertThat(quantities.trimmed()).isCloseTo(0.2 * (1 + perArea), within(1e-14));
    }

    @Test
    void onePotForEachResinStageDoseAndProcess() {
        LayUp cumene = new LayUp(Process.HAND_LAY_UP, POLYESTER, Dose.usual(POLYESTER, CUMENE));
        LayUp faster = new LayUp(Process.HAND_LAY_UP, POLYESTER, Dose.of(POLYESTER, MEKP, 0.02));
        Quantities quantities = estimate(
                        Workshop.USUAL,
                        zone(
                                1,
                                staged(mat(0.3), HAND, "skin coat"),
                                hand(mat(0.3)),
                                ReinforcementLayer.of(mat(0.3), cumene)),
                        zone(2, hand(mat(0.3)), ReinforcementLayer.of(mat(0.3), faster)))
                .quantities();
        assertThat(quantities.resins())
                .extracting(r -> r.use().use() + " " + r.dose().agent().id() + " "
                        + r.dose().ratio())
                .containsExactly(
                        "skin coat mekp 0.015",
                        "laminate mekp 0.015",
                        "laminate cumene-peroxide 0.015",
                        "laminate mekp 0.02");
        // The same resin in several pots is bought once.
        assertThat(quantities.materials())
                .extracting(MaterialQuantity::material)
                .containsExactly("mat-300", "polyester-ortho", "mekp", "cumene-peroxide");
    }

    @Test
    void pasteOfABedIsBonding() {
        CoreLayer bedded = new CoreLayer(PVC, 0.01, 0, CoreFinish.PLAIN, HAND, Optional.of(bed()), "");
        Quantities quantities = estimate(Workshop.USUAL, zone(2, bedded)).quantities();
        ResinQuantity paste = quantities.resins().get(1);
        assertThat(paste.use().use()).isEqualTo("bonding");
        assertThat(paste.inPart()).isCloseTo(2.44, within(1e-14));
        assertThat(paste.lost()).isCloseTo(0.244, within(1e-14));
        assertThat(paste.evaporated()).isZero();
        assertThat(quantities.resinInPart()).isCloseTo(2.44 + 0.5, within(1e-14));
        assertThat(material(quantities, "bonding-paste").kind()).isEqualTo("bonding paste");
    }

    private static Bed bed() {
        return new Bed(PASTE, Dose.usual(PASTE, MEKP), 0.001);
    }

    @Test
    void anUnreinforcedPartHasNoFibreContent() {
        PartEstimate estimate = estimate(Workshop.USUAL, zone(1, CoreLayer.of(PVC, 0.01, HAND)));
        assertThat(estimate.fibreMassFraction()).isZero();
        assertThat(estimate.fibreVolumeFraction()).isZero();
        assertThat(estimate.voidFraction()).isZero();
    }

    @Test
    void aLayerThatCannotBeLaidIsNamed() {
        Workshop porous = Workshop.USUAL.withVoids(Map.of(Process.INFUSION, Figure.stated(0.49)));
        assertThatThrownBy(() -> estimate(
                        porous, zone(1, hand(mat(0.3)), ReinforcementLayer.of(roving(0.6), INFUSED), hand(mat(0.3)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("zone panel, layer 2: fibre-volume-fraction");
    }

    private static MaterialQuantity material(Quantities quantities, String id) {
        return quantities.materials().stream()
                .filter(m -> m.material().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PartEstimate estimate(Workshop workshop, Zone... zones) {
        return new Estimator(workshop).estimate(part(zones));
    }
}
