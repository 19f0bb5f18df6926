package laminate.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.check.LimitCheck.Verdict;
import laminate.estimate.Caution;
import laminate.estimate.Estimator;
import laminate.file.Job;
import laminate.file.PartFile;
import laminate.material.Material;
import laminate.material.Materials;
import laminate.part.ReserveKind;
import org.assertj.core.data.Percentage;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts as they are written in a file, whose cores and bulking mats tell what a lamina cannot. */
class CheckedFileTest {
    private static final Materials NOTHING = new Materials() {
        @Override
        public Optional<Material> find(String id) {
            return Optional.empty();
        }

        @Override
        public List<String> ids() {
            return List.of();
        }
    };

    private static final String MATERIALS = """
            materials:
              - {material: comb, kind: core, name: Comb, type: honeycomb, open-cell: false, density: 48 kg/m³, E1: 1 MPa,
                 E2: 1 MPa, G12: 0.1 MPa, nu12: 0.3, Ez: 138 MPa, G13: 45 MPa, G23: 24 MPa, alpha: 3e-5 1/K,
                 compressive-strength: 2 MPa, shear-strength: 0.7 MPa, CELLuptake-hand: 200 g/m²}
              - {material: bulk, kind: bulker, name: Bulk, areal-weight: 60 g/m², thickness: 2 mm, density: 600 kg/m³, E: 1 GPa,
                 nu: 0.3, alpha: 60e-6 1/K}
              - {material: resin, kind: resin, name: Resin, family: polyester, use: laminating, waxed: false,
                 density-liquid: 1100 kg/m³, density-cured: 1200 kg/m³, E: 3 GPa, nu: 0.35, alpha: 60e-6 1/K,
                 styrene-content: 40 %, cure: [{agent: peroxide, amount: 1.5 %, from: 1 %, to: 3 %}]}
              - {material: paste, kind: resin, name: Paste, family: polyester, use: bonding paste, waxed: false,
                 density-liquid: 1200 kg/m³, density-cured: 1300 kg/m³, E: 2 GPa, nu: 0.35, alpha: 60e-6 1/K,
                 cure: [{agent: peroxide, amount: 1.5 %, from: 1 %, to: 3 %}]}
              - {material: peroxide, kind: catalyst, name: Peroxide, density: 1100 kg/m³}
            """;

    @TempDir
    private Path folder;

    private PartCheck check(String cell, String zone) throws IOException {
        Files.writeString(folder.resolve("own.yaml"), MATERIALS.replace("CELL", cell));
        Path file = folder.resolve("part.yaml");
        Files.writeString(
                file, "part: Hatch\nprocess: hand lay-up\nresin: resin\nmaterials: [own.yaml]\nzones:\n" + zone);
        return PartCheck.of(PartFile.read(file, NOTHING).estimate(), CheckOptions.USUAL);
    }

    private static String face(String thickness) {
        return "      - {lamina: {E1: 70 GPa, E2: 70 GPa, G12: 26.923 GPa, nu12: 0.3, density: 2700 kg/m³, Xt: 200 MPa,"
                + " Xc: 200 MPa, Yt: 200 MPa, Yc: 200 MPa, S: 120 MPa}, thickness: " + thickness + "}\n";
    }

    private static String deck(String limits) {
        return "  - name: deck\n    area: 1 m²\n    load-cases: [{name: bend, Mx: 100 N·m/m}]\n" + limits
                + "    layers:\n" + face("0.5 mm") + "      - {core: comb, thickness: 20 mm}\n" + face("0.5 mm");
    }

    private static LoadCaseCheck bend(PartCheck check) {
        return check.zones().get(0).loadCases().get(0);
    }

    /** SAN-04: a face of 0.5 mm over cells of 10 mm dimples at 384.6 MPa; its stress is M/(t d). */
    @Test
    void aThinFaceDimplesIntoTheCells() throws IOException {
        double stress = 100 / (0.0005 * 0.0205);
        List<Reserve> reserves = bend(check("cell-size: 10 mm, ", deck(""))).reserves();
        assertThat(CheckedParts.factor(reserves, ReserveKind.DIMPLING))
                .isCloseTo(384.6154e6 / stress, Percentage.withPercentage(0.1));
        double wrinkling = 0.5 * Math.cbrt(70e9 * 138e6 * 45e6);
        assertThat(CheckedParts.factor(reserves, ReserveKind.WRINKLING))
                .as("Ez of the core itself, G13 along the stress")
                .isCloseTo(wrinkling / stress, Percentage.withPercentage(0.1));
    }

    @Test
    void cellsOfUnknownSizeLeaveDimplingOpen() throws IOException {
        String limits = "    limits: {reserve-factor: {dimpling: 2, wrinkling: 2}}\n";
        PartCheck open = check("", deck(limits));
        assertThat(open.limits()).extracting(LimitCheck::verdict).containsExactly(Verdict.NOT_JUDGED, Verdict.MET);
        assertThat(open.limits().get(0).reserveKind()).contains(ReserveKind.DIMPLING);
        assertThat(open.limitsMet()).isFalse();
        assertThat(check("cell-size: 10 mm, ", deck(limits)).limitsMet()).isTrue();
    }

    @Test
    void aMissedDimplingIsMendedByAThickerFace() throws IOException {
        PartCheck check = check("cell-size: 10 mm, ", deck("    limits: {reserve-factor: {dimpling: 80}}\n"));
        Remedy thicker = check.limits().get(0).remedies().stream()
                .filter(remedy -> remedy.lever() == Remedy.Lever.FACE_THICKNESS)
                .findFirst()
                .orElseThrow();
        String thick = String.format(Locale.ROOT, "%.9f mm", 0.5 * thicker.factor());
        String mended = deck("").replace(face("0.5 mm"), face(thick));
        assertThat(CheckedParts.factor(bend(check("cell-size: 10 mm, ", mended)).reserves(), ReserveKind.DIMPLING))
                .isBetween(80 * (1 - 1e-6), 80 * 1.001);
    }

    @Test
    void aBulkingMatWithoutStrengthIsNamed() throws IOException {
        String zone = "  - name: hull\n    area: 1 m²\n    load-cases: [{name: bend, Mx: 100 N·m/m}]\n    layers:\n"
                + face("1 mm") + "      - {bulker: bulk}\n" + face("1 mm");
        PartCheck check = check("", zone);
        assertThat(check.zones().get(0).notJudged())
                .extracting(NotJudged::ply, NotJudged::material)
                .containsExactly(Tuple.tuple(1, "bulk"));
        assertThat(check.cautions()).extracting(Caution::text).anyMatch(text -> text.contains("2 bulk"));
        double wrinkling = 0.5 * Math.cbrt(70e9 * 1e9 * (1e9 / 2.6));
        double reserve = CheckedParts.factor(bend(check).reserves(), ReserveKind.WRINKLING);
        assertThat(reserve).isCloseTo(wrinkling / (100 / (0.001 * 0.003)), Percentage.withPercentage(5));
    }

    /** Its failure would be the last, so the last ply is open; the first of the others is not. */
    @Test
    void aCoreWithoutStrengthLeavesTheLastPlyOpen() throws IOException {
        String zone = "  - name: hull\n    area: 1 m²\n    load-cases: [{name: bend, Mx: 1 N·m/m}]\n    layers:\n"
                + face("1 mm") + "      - {bulker: bulk}\n" + face("1 mm")
                + "    limits: {reserve-factor: {first-ply: 2, last-ply: 2}}\n";
        assertThat(check("", zone).limits())
                .extracting(limit -> limit.reserveKind().orElseThrow(), LimitCheck::verdict)
                .containsExactlyInAnyOrder(
                        Tuple.tuple(ReserveKind.FIRST_PLY, Verdict.MET),
                        Tuple.tuple(ReserveKind.LAST_PLY, Verdict.NOT_JUDGED));
    }

    @Test
    void aPanelAndItsLimitsComeFromTheFile() throws IOException {
        String panels = "panels:\n  - {name: hatch, zone: deck, length: 600 mm, width: 400 mm, edges: clamped,"
                + " head: 1 m, water: fresh, limits: {deflection: 1/200 span}}\n";
        PartCheck check = check("cell-size: 10 mm, ", deck("") + panels);
        assertThat(check.panels()).hasSize(1);
        LimitCheck limit = check.limits().get(0);
        assertThat(limit.where()).isEqualTo(new Subject(Subject.Kind.PANEL, "hatch", "deck"));
        assertThat(limit.asked()).isCloseTo(0.002, Percentage.withPercentage(1e-9));
        assertThat(check.panels().get(0).bending().deflection()).isPositive();
    }

    @Test
    void costPerAreaIsComparedWherePricesAreKnown() throws IOException {
        String core = "      - {core: comb, thickness: 20 mm}\n";
        String twice = deck("").replace("name: deck", "name: twice").replace(core, core + face("0.5 mm") + core);
        Files.writeString(folder.resolve("own.yaml"), MATERIALS.replace("CELL", ""));
        Path file = folder.resolve("part.yaml");
        Files.writeString(
                file,
                "part: Hatch\nprocess: hand lay-up\nresin: resin\nmaterials: [own.yaml]\nprices: prices.yaml\nzones:\n"
                        + deck("") + twice);
        Path prices = folder.resolve("prices.yaml");
        Files.writeString(
                prices,
                "currency: GBP\nprices:\n  - {material: comb, price: 40 GBP/m²}\n  - {material: resin, price: 4 GBP/kg}\n"
                        + "  - {material: peroxide, price: 9 GBP/kg}\n");
        assertThat(cost(file).orElseThrow()).isCloseTo(2, Percentage.withPercentage(0.01));
        Files.writeString(prices, "currency: GBP\nprices:\n  - {material: comb, price: 40 GBP/m²}\n");
        assertThat(cost(file)).as("resin has no price").isEmpty();
    }

    private static OptionalDouble cost(Path file) {
        Job job = PartFile.read(file, NOTHING);
        return ZoneComparison.of(job.estimate(), "deck", "twice", CheckOptions.USUAL)
                .cost(new Estimator(job.workshop(), job.prices()));
    }

    /** What is asked of a core does not hang on the plies, nor what is asked of plies on a core without strength. */
    @Test
    void aCoreWithoutStrengthLeavesOpenWhatIsAskedOfItAlone() throws IOException {
        String zone = "  - name: hull\n    area: 1 m²\n    load-cases: [{name: bend, Mx: 100 N·m/m}]\n"
                + "    limits: {reserve-factor: {first-ply: 1.1, core-shear: 2, dimpling: 2}}\n    layers:\n"
                + face("1 mm") + "      - {bulker: bulk}\n" + face("1 mm");
        assertThat(check("", zone).limits())
                .extracting(limit -> limit.reserveKind().orElseThrow(), LimitCheck::verdict)
                .containsExactlyInAnyOrder(
                        Tuple.tuple(ReserveKind.CORE_SHEAR, Verdict.NOT_JUDGED),
                        Tuple.tuple(ReserveKind.FIRST_PLY, Verdict.MET),
                        Tuple.tuple(ReserveKind.DIMPLING, Verdict.MET));
    }

    @Test
    void theBedOfACoreIsPartOfTheFace() throws IOException {
        String bedded = deck("").replace(
                        "{core: comb, thickness: 20 mm}",
                        "{core: comb, thickness: 20 mm, bed: paste, bed-thickness: 1 mm}");
        PartCheck check = check("", bedded);
        MakeUp makeUp = MakeUp.of(check.zones().get(0).zone());
        assertThat(makeUp.laminate().plies()).hasSize(4);
        assertThat(makeUp.cores()).containsOnlyKeys(2);
        assertThat(makeUp.cores().get(2)).isEqualTo(new CoreSupport(138e6, true, OptionalDouble.empty()));
    }
}
