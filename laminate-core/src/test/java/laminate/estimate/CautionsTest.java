package laminate.estimate;

import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.CUMENE;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.FLAX;
import static laminate.testing.TestMaterials.FLOWCOAT;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PAINT;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.POLYSTYRENE;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.VINYLESTER;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.single;
import static laminate.testing.TestMaterials.stitched;
import static laminate.testing.TestMaterials.waxed;
import static laminate.testing.TestMaterials.with;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.coated;
import static laminate.testing.TestParts.coating;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.layUp;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.staged;
import static laminate.testing.TestParts.turned;
import static laminate.testing.TestParts.workshopAt;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.material.FibrePly;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Bed;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every caution with a case that calls for it and a near miss that does not. */
class CautionsTest {
    private static final ReinforcementLayer MAT = hand(mat(0.3));

    @ParameterizedTest
    @CsvSource({"0.39, true", "0.40, false", "0.50, false", "0.60, false", "0.61, true"})
    void gelcoatFilm(double millimetres, boolean fires) {
        check(coated(List.of(gelcoat(millimetres / 1000)), MAT), "is outside 0.4 to 0.6 mm", fires);
    }

    /** Two coats of 0.25 mm are one film of 0.5; the mass of 0.48 kg/m² is 0.4 mm wet; cured films count cured. */
    @Test
    void gelcoatFilmIsThatOfAllCoatsHoweverItIsStated() {
        Coating thin = gelcoat(0.00025);
        check(coated(List.of(thin), MAT), "film of 0.25 mm", true);
        check(coated(List.of(new Coating(GELCOAT, thin.dose(), thin.film(), 2)), MAT), "film of", false);
        check(coated(List.of(coating(GELCOAT, new Film(Film.Basis.AREAL_WEIGHT, 0.48))), MAT), "film of", false);
        check(coated(List.of(coating(GELCOAT, new Film(Film.Basis.AREAL_WEIGHT, 0.479))), MAT), "film of", true);
        check(coated(List.of(coating(GELCOAT, new Film(Film.Basis.CURED, 0.0004))), MAT), "film of", false);
        check(coated(List.of(coating(GELCOAT, new Film(Film.Basis.CURED, 0.00039))), MAT), "film of", true);
    }

    @Test
    void aToolingGelcoatStatesItsOwnThickestFilm() {
        Resin tooling = with(GELCOAT, Property.STAGE_THICKNESS, 0.0008);
        check(coated(List.of(coating(tooling, new Film(Film.Basis.WET, 0.0008))), MAT), "is outside", false);
        check(
                coated(List.of(coating(tooling, new Film(Film.Basis.WET, 0.00081))), MAT),
                "is outside 0.4 to 0.8 mm",
                true);
    }

    @Test
    void otherCoatingsMayBeOfAnyFilm() {
        check(coated(List.of(coating(FLOWCOAT, new Film(Film.Basis.WET, 0.0002))), MAT), "is outside", false);
    }

    @ParameterizedTest
    @CsvSource({"0.450, false", "0.600, true"})
    void firstMatBehindGelcoat(double arealMass, boolean fires) {
        String text = "the first mat behind gelcoat";
        check(coated(List.of(gelcoat(0.0005)), hand(mat(arealMass))), text, fires);
        check(coated(List.of(), hand(mat(arealMass))), text, false);
        check(coated(List.of(gelcoat(0.0005)), MAT, hand(mat(arealMass))), text, false);
        check(coated(List.of(gelcoat(0.0005)), hand(roving(arealMass))), text, false);
        check(coated(List.of(coating(FLOWCOAT, new Film(Film.Basis.WET, 0.0005))), hand(mat(arealMass))), text, false);
    }

    @Test
    void emulsionMatInEpoxy() {
        Reinforcement emulsion = mat(0.3, Reinforcement.Binder.EMULSION);
        check(zone(1, ReinforcementLayer.of(emulsion, HAND_EPOXY)), "is bound by emulsion", true);
        check(zone(1, ReinforcementLayer.of(mat(0.3), HAND_EPOXY)), "is bound by emulsion", false);
        check(zone(1, hand(emulsion)), "is bound by emulsion", false);
    }

    @Test
    void rovingOnRoving() {
        Layer roving = hand(roving(0.6));
        check(zone(1, roving, roving), "lie roving on roving", true);
        check(zone(1, roving, MAT, roving), "lie roving on roving", false);
        check(zone(1, MAT, roving), "lie roving on roving", false);
        ReinforcementLayer dry = ReinforcementLayer.of(roving(0.6), INFUSED);
        check(zone(1, dry, dry), "lie roving on roving", false);
    }

    /** A combination begins with roving and ends in mat; turned, it ends in roving. */
    @Test
    void rovingOnRovingLooksAtTheFacesThatMeet() {
        check(zone(1, hand(combination(0.6, 0.3)), hand(roving(0.6))), "roving on roving", false);
        check(zone(1, turned(combination(0.6, 0.3), HAND, 0), hand(roving(0.6))), "roving on roving", true);
        check(zone(1, hand(roving(0.6)), hand(combination(0.6, 0.3))), "roving on roving", true);
        check(zone(1, hand(roving(0.6)), turned(combination(0.6, 0.3), HAND, 0)), "roving on roving", false);
    }

    @Test
    void coreOnRoving() {
        Layer roving = hand(roving(0.6));
        check(zone(1, roving, core(HAND, Optional.empty())), "without mat or bed", true);
        check(zone(1, roving, MAT, core(HAND, Optional.empty())), "without mat or bed", false);
        check(zone(1, roving, core(HAND, Optional.of(bed()))), "without mat or bed", false);
        check(
                zone(1, ReinforcementLayer.of(roving(0.6), INFUSED), core(INFUSED, Optional.empty())),
                "without mat or bed",
                false);
        check(zone(1, core(HAND, Optional.empty()), roving), "without mat or bed", false);
    }

    @Test
    void styreneOnPolystyrene() {
        String text = "styrene dissolves polystyrene foam";
        Layer epoxied = ReinforcementLayer.of(mat(0.3), HAND_EPOXY);
        CoreLayer inEpoxy = CoreLayer.of(POLYSTYRENE, 0.02, HAND_EPOXY);
        check(zone(1, epoxied, inEpoxy, epoxied), text, false);
        check(zone(1, MAT, inEpoxy, epoxied), text, true);
        check(zone(1, epoxied, inEpoxy, MAT), text, true);
        check(zone(1, epoxied, CoreLayer.of(POLYSTYRENE, 0.02, HAND), epoxied), text, true);
        check(zone(1, MAT, CoreLayer.of(PVC, 0.02, HAND), MAT), text, false);
        CoreLayer bedded = new CoreLayer(POLYSTYRENE, 0.02, 0, CoreFinish.PLAIN, HAND_EPOXY, Optional.of(bed()), "");
        check(zone(1, epoxied, bedded, epoxied), text, true);
    }

    @Test
    void epoxyOverGelcoat() {
        String text = "epoxy does not hold reliably on polyester";
        Layer epoxied = ReinforcementLayer.of(mat(0.3), HAND_EPOXY);
        check(coated(List.of(gelcoat(0.0005)), epoxied), text, true);
        check(coated(List.of(gelcoat(0.0005)), MAT), text, false);
        check(coated(List.of(gelcoat(0.0005)), MAT, epoxied), text, false);
        check(zone(1, epoxied, MAT), text, false);
    }

    @Test
    void plainCoreBetweenInfusedSkins() {
        String text = "no resin passes it to the skin beyond";
        Layer skin = ReinforcementLayer.of(mat(0.3), INFUSED);
        CoreLayer plain = CoreLayer.of(PVC, 0.01, INFUSED);
        CoreFinish holes = CoreFinish.of(CoreFinish.Kind.PERFORATED);
        check(zone(1, skin, plain, skin), text, true);
        check(zone(1, skin, new CoreLayer(PVC, 0.01, 0, holes, INFUSED, Optional.empty(), ""), skin), text, false);
        check(zone(1, MAT, plain, skin), text, false);
        check(zone(1, skin, plain), text, false);
        check(zone(1, MAT, CoreLayer.of(PVC, 0.01, HAND), MAT), text, false);
    }

    @Test
    void polyesterOverEpoxy() {
        String text = "bond badly to epoxy";
        Layer epoxied = ReinforcementLayer.of(mat(0.3), HAND_EPOXY);
        check(zone(1, epoxied, MAT), text, true);
        check(zone(1, MAT, epoxied), text, false);
        check(coated(List.of(gelcoat(0.0005)), epoxied), text, false);
        check(coated(List.of(coating(FLOWCOAT, new Film(Film.Basis.WET, 0.0005))), epoxied), text, true);
        check(coated(List.of(coating(PAINT, new Film(Film.Basis.WET, 0.0001))), epoxied), text, false);
        check(
                zone(1, epoxied, new CoreLayer(PVC, 0.01, 0, CoreFinish.PLAIN, HAND_EPOXY, Optional.of(bed()), "")),
                text,
                true);
    }

    /** Wax parts what is cured from what goes over it; wet in wet, within a stage, it does not. */
    @Test
    void waxUnderSomething() {
        String text = "holds wax, and something goes over it";
        LayUp waxy = layUp(Process.HAND_LAY_UP, waxed(POLYESTER));
        Layer first = staged(mat(0.3), waxy, "first");
        Layer second = staged(mat(0.3), waxy, "second");
        check(zone(1, first, second), text, true);
        check(zone(1, first, first), text, false);
        check(zone(1, staged(mat(0.3), HAND, "first"), second), text, false);
        Coating flowcoat = coating(FLOWCOAT, new Film(Film.Basis.WET, 0.0005));
        Coating paint = coating(PAINT, new Film(Film.Basis.WET, 0.0001));
        check(coated(List.of(flowcoat), MAT), text, false);
        check(coated(List.of(flowcoat, paint), MAT), text, true);
        check(coated(List.of(flowcoat), first), text, true);
        check(coated(List.of(coating(waxed(GELCOAT), new Film(Film.Basis.WET, 0.0005))), MAT), text, true);
    }

    /** Mat of 450 g/m² at 30 % and 3 % voids is 1.083 mm thick; the resin bears 6 mm. */
    @Test
    void stageThickerThanTheResinBears() {
        String text = "it can overheat, shrink and crack";
        Layer heavy = hand(mat(0.45));
        check(zone(1, repeated(5, heavy)), text, false);
        check(zone(1, repeated(6, heavy)), "6.5 mm of polyester-ortho laid in one stage; beyond 6.0 mm", true);
        List<Layer> staged = new ArrayList<>(Collections.nCopies(4, staged(mat(0.45), HAND, "first")));
        staged.addAll(Collections.nCopies(4, staged(mat(0.45), HAND, "second")));
        check(Zone.of("panel", 1, staged), text, false);
        staged.addAll(Collections.nCopies(2, staged(mat(0.45), HAND, "second")));
        check(Zone.of("panel", 1, staged), "6.5 mm of polyester-ortho in stage second", true);
    }

    @Test
    void aCoreOrAPlyGivenDirectlyPartsStages() {
        String text = "it can overheat";
        Layer heavy = hand(mat(0.45));
        List<Layer> skins = new ArrayList<>(Collections.nCopies(4, heavy));
        skins.add(core(HAND, Optional.empty()));
        skins.addAll(Collections.nCopies(4, heavy));
        check(Zone.of("panel", 1, skins), text, false);
        List<Layer> thick = new ArrayList<>(Collections.nCopies(6, heavy));
        thick.add(core(HAND, Optional.empty()));
        check(Zone.of("panel", 1, thick), text, true);
        thick.set(6, new LaminaLayer(Lamina.of(40e9, 9e9, 4e9, 0.28), 1900, 0.001, 0, ""));
        check(Zone.of("panel", 1, thick), text, true);
    }

    /** Of two resins in a stage the more delicate decides; a resin that states nothing bears all. */
    @Test
    void theMoreDelicateResinDecides() {
        LayUp delicate = layUp(Process.HAND_LAY_UP, with(VINYLESTER, Property.STAGE_THICKNESS, 0.002));
        check(
                zone(1, MAT, MAT, ReinforcementLayer.of(mat(0.3), delicate)),
                "2.2 mm of vinylester laid in one stage",
                true);
        check(
                zone(1, repeated(20, ReinforcementLayer.of(mat(0.45), layUp(Process.HAND_LAY_UP, VINYLESTER)))),
                "overheat",
                false);
    }

    @Test
    void betweenStages() {
        String text = "Between stages: lay the next within 24 h";
        check(zone(1, staged(mat(0.3), HAND, "a"), staged(mat(0.3), HAND, "b")), text, true);
        check(zone(1, staged(mat(0.3), HAND, "a"), staged(mat(0.3), HAND, "a")), text, false);
    }

    /** Ply properties measured at 50 %: laid at 46 and 54 % they hold, at 44 and 56 % they do not. */
    @ParameterizedTest
    @CsvSource({"0.44, true", "0.46, false", "0.54, false", "0.56, true"})
    void measuredPlyAtAnotherContent(double vf, boolean fires) {
        Figures ply = Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.5)
                .with(Property.E1, 21e9)
                .with(Property.E2, 20e9)
                .with(Property.G12, 3.5e9)
                .with(Property.NU12, 0.13);
        Reinforcement plain = roving(0.6);
        Reinforcement measured = new Reinforcement(
                plain.id(),
                plain.name(),
                plain.form(),
                plain.plies(),
                plain.binder(),
                plain.figures(),
                Optional.of(ply));
        check(
                zone(1, hand(measured).with(FibreContent.ofVolumeFraction(vf))),
                "were measured at 50 % fibre by volume",
                fires);
    }

    @Test
    void twoPeroxides() {
        String text = "This part takes cumene-peroxide and mekp: never bring two peroxides together";
        LayUp cumene = new LayUp(Process.HAND_LAY_UP, POLYESTER, Dose.usual(POLYESTER, CUMENE));
        check(zone(1, MAT, ReinforcementLayer.of(mat(0.3), cumene)), text, true);
        check(zone(1, MAT, MAT), "two peroxides", false);
        check(zone(1, MAT, ReinforcementLayer.of(mat(0.3), HAND_EPOXY)), "two peroxides", false);
    }

    @Test
    void coldWorkshop() {
        String text = "The workshop is at 14 °C: polyester and vinylester do not cure";
        assertThat(texts(zone(1, MAT), workshopAt(287.15)))
                .anySatisfy(t -> assertThat(t).contains(text));
        assertThat(texts(zone(1, MAT), workshopAt(273.15 + 15)))
                .noneSatisfy(t -> assertThat(t).contains("The workshop is"));
        assertThat(texts(zone(1, ReinforcementLayer.of(mat(0.3), HAND_EPOXY)), workshopAt(287.15)))
                .noneSatisfy(t -> assertThat(t).contains("The workshop is"));
        check(zone(1, MAT), "The workshop is", false);
    }

    /** The test epoxy is of 400.1 mPa·s, the vinylester of 400. */
    @Test
    void resinTooThickToInfuse() {
        ReinforcementLayer thick = ReinforcementLayer.of(mat(0.3), layUp(Process.INFUSION, EPOXY));
        check(zone(1, thick), "epoxy-laminating is thicker than the 100 to 400 mPa·s", true);
        check(zone(1, ReinforcementLayer.of(mat(0.3), INFUSED)), "is thicker than", false);
        check(zone(1, ReinforcementLayer.of(mat(0.3), HAND_EPOXY)), "is thicker than", false);
    }

    @Test
    void flax() {
        Reinforcement flax = single("flax", Form.WOVEN_CLOTH, FLAX, 0.2);
        check(zone(1, ReinforcementLayer.of(flax, HAND_EPOXY)), "Flax holds 6 to 10 % water", true);
        check(zone(1, MAT), "Flax", false);
    }

    @Test
    void safetyFollowsWhatIsMixed() {
        Zone polyester = zone(1, MAT);
        Zone epoxy = zone(1, ReinforcementLayer.of(mat(0.3), HAND_EPOXY));
        Zone carbon = zone(1, ReinforcementLayer.of(single("carbon", Form.WOVEN_CLOTH, CARBON, 0.2), HAND_EPOXY));
        Zone given = zone(1, new LaminaLayer(Lamina.of(40e9, 9e9, 4e9, 0.28), 1900, 0.001, 0, ""));
        for (Zone zone : List.of(polyester, epoxy, carbon, given)) {
            check(zone, "Peroxide burns eyes", zone == polyester);
            check(zone, "Styrene harms hearing", zone == polyester);
            check(zone, "Epoxy and its hardener", zone == epoxy || zone == carbon);
            check(zone, "isocyanate", false);
            check(zone, "Mixed resin heats", zone != given);
            check(zone, "Dust from trimming", zone != given);
            check(zone, "Carbon dust conducts", zone == carbon);
            check(zone, "Estimates for planning and teaching", true);
        }
        check(coated(List.of(coating(PAINT, new Film(Film.Basis.WET, 0.0001))), MAT), "isocyanate", true);
    }

    private static Reinforcement quadriaxial() {
        return stitched(
                "quadriaxial",
                FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, 45, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, 90, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, -45, 0.2));
    }

    /** Two such rolls back to back: 0/45/90/-45 and 45/90/-45/0, so that the slanted plies do not mirror. */
    @Test
    void aMirroredRollOfFourDirectionsStaysCoupled() {
        String text = "panel: mirrored, quadriaxial lies other face down with its slanted plies exchanged";
        Layer roll = hand(quadriaxial());
        Zone zone = zone(1, MAT, roll, turned(quadriaxial(), HAND, 0), MAT);
        check(zone, text, true);
        var coupling = new Estimator(Workshop.USUAL).lay(zone).laminate().coupling();
        assertThat(texts(zone, Workshop.USUAL))
                .anyMatch(t -> t.contains(String.format(
                        Locale.ROOT, "B16 = %.0f N and B26 = %.0f N", coupling.get(0, 2), coupling.get(1, 2))));
        assertThat(Math.abs(coupling.get(0, 2))).isGreaterThan(100);
        check(zone(1, roll, turned(quadriaxial(), HAND, 0), MAT), text, false);
        check(zone(1, roll, roll), text, false);
        check(zone(1, roll), text, false);
    }

    /** Swung by 90°, ±45 is its own image; 0/90 is at once; a woven ply may be a quarter turn off; a mat has no angle. */
    @Test
    void aMirroredRollOfTwoDirectionsIsSymmetric() {
        Reinforcement slanted = stitched(
                "slanted",
                FibrePly.of(E_GLASS, Form.MAT, 10, 0.3),
                FibrePly.of(E_GLASS, Form.STITCHED, 45, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, -45, 0.2));
        check(zone(1, hand(slanted), turned(slanted, HAND, 90)), "mirrored", false);
        check(zone(1, hand(slanted), turned(slanted, HAND, 0)), "mirrored, slanted lies", true);
        check(zone(1, hand(biaxial(0.6)), turned(biaxial(0.6), HAND, 0)), "mirrored", false);
        Reinforcement woven = combination(0.6, 0.3);
        check(zone(1, hand(woven), turned(woven, HAND, 90)), "mirrored", false);
    }

    /** Exchanged plies whose couplings cancel each other leave nothing to mind. */
    @Test
    void exchangedPliesThatCancelCallForNothing() {
        Reinforcement slanted = stitched(
                "slanted",
                FibrePly.of(E_GLASS, Form.STITCHED, 30, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, 60, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, -60, 0.2),
                FibrePly.of(E_GLASS, Form.STITCHED, -30, 0.2));
        check(zone(1, hand(slanted), turned(slanted, HAND, 0)), "mirrored", true);
        Reinforcement uneven = stitched(
                "uneven", FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.2), FibrePly.of(E_GLASS, Form.STITCHED, 90, 0.2));
        check(zone(1, hand(uneven), turned(uneven, HAND, 90)), "mirrored", false);
    }

    /** Schedule before safety, each once, and each with a source; ours come first where two zones share one. */
    @Test
    void cautionsComeOnceAndInOrder() {
        Layer roving = hand(roving(0.6));
        List<Caution> cautions = cautions(Workshop.USUAL, zone(1, roving, roving, roving), zone(2, roving, roving));
        assertThat(cautions)
                .doesNotHaveDuplicates()
                .allSatisfy(c -> assertThat(c.source()).isNotBlank());
        assertThat(cautions.get(0).text())
                .isEqualTo(
                        "panel: roving-600 and roving-600 lie roving on roving; a mat between them bonds better and fills the weave.");
        assertThat(cautions.get(0).status()).isEqualTo(Status.COMMON_PRACTICE);
        assertThat(cautions).extracting(Caution::kind).isSorted();
        assertThat(cautions)
                .filteredOn(c -> c.text().contains("roving on roving"))
                .hasSize(1);
    }

    @Test
    void aGoodScheduleCallsForNothingButSafety() {
        List<Caution> cautions =
                cautions(workshopAt(293.15), coated(List.of(gelcoat(0.0005)), MAT, hand(roving(0.6)), hand(mat(0.45))));
        assertThat(cautions).extracting(Caution::kind).containsOnly(Caution.Kind.SAFETY);
    }

    private static CoreLayer core(LayUp layUp, Optional<Bed> bed) {
        return new CoreLayer(PVC, 0.010, 0, CoreFinish.PLAIN, layUp, bed, "");
    }

    private static Bed bed() {
        return new Bed(PASTE, Dose.usual(PASTE, MEKP), 0.001);
    }

    private static Layer[] repeated(int times, Layer layer) {
        return Collections.nCopies(times, layer).toArray(Layer[]::new);
    }

    private static void check(Zone zone, String text, boolean fires) {
        assertThat(texts(zone, Workshop.USUAL).stream().anyMatch(t -> t.contains(text)))
                .as("%s in %s", text, texts(zone, Workshop.USUAL))
                .isEqualTo(fires);
    }

    private static List<String> texts(Zone zone, Workshop workshop) {
        return cautions(workshop, zone).stream().map(Caution::text).toList();
    }

    private static List<Caution> cautions(Workshop workshop, Zone... zones) {
        return new Estimator(workshop).estimate(part(zones)).cautions();
    }
}
