package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.part.Item;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.quote.SetQuote;
import laminate.quote.ToolUse;
import laminate.unit.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Projects: several parts of one yard, with the moulds and plugs that they share. */
class ProjectFileTest {

    private static final String PROJECT = """
            project: Lockers
            workshop: workshop.yaml
            prices: prices.yaml
            mouldings:
              - {part: lid.yaml, count: 2, made-on: lid mould}
              - {part: hatch.yaml, made-on: lid mould}
            tooling:
              - {name: lid mould, part: mould.yaml, life: 4, made-on: lid plug, set-up: 0.5 h, set-up-price: 7 GBP}
              - {name: lid plug, part: plug.yaml, life: 3, in-hand: 1}
            """;

    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void putTheYard() {
        bench = new Bench(folder);
        bench.put("prices.yaml", Bench.PRICE_OF_MAT);
        bench.put("workshop.yaml", """
                consumables: 0 %
                labour: {rate: 25 GBP/h, operations: {mould preparation: 0 h/m², lay-up: 0 h/m², making: 2 h}}
                pricing: {rejects: 20 %, overhead: {rate: 100 %, on: labour}, margin: 50 %}
                """);
        putPart("lid", "Lid", "1 m²", "count: 9\n");
        putPart("hatch", "Hatch", "2 m²", "count: 3\n");
        putPart("mould", "Mould", "3 m²", "");
        putPart("plug", "Plug", "4 m²", "");
    }

    private void putPart(String file, String name, String area, String more) {
        bench.put(file + ".yaml", """
                part: %s
                process: hand lay-up
                resin: polyester-ortho
                zones: [{name: all of it, area: %s, layers: [mat-300]}]
                """.formatted(name, area) + more);
    }

    private Project read(String text) {
        return read(text, Overrides.NONE);
    }

    private Project read(String text, Overrides overrides) {
        return ProjectFile.read(bench.put("lockers.yaml", text), Bench.STOCK, overrides);
    }

    private List<String> complaints(String text) {
        return bench.complaints(() -> read(text));
    }

    private static Tooling tooling(Job job) {
        return job.part().tooling().get(0);
    }

    private static List<String> namesAndCounts(List<Job> jobs) {
        return jobs.stream()
                .map(job -> job.part().count() + " " + job.part().name())
                .toList();
    }

    @Test
    void mouldingsAreMadeOnTheToolsThatTheProjectNames() {
        Project project = read(PROJECT);

        assertThat(project.name()).isEqualTo("Lockers");
        assertThat(namesAndCounts(project.mouldings())).containsExactly("2 Lid", "3 Hatch");
        Tooling mould = tooling(project.mouldings().get(0));
        assertThat(mould.process()).isEmpty();
        assertThat(mould.name()).contains("lid mould");
        assertThat(mould.life()).isEqualTo(OptionalInt.of(4));
        assertThat(mould.setUpTime()).isEqualTo(1800);
        assertThat(mould.setUpPrice()).contains(Money.parse("7 GBP"));
        Tooling plug = mould.mould().orElseThrow().tooling().get(0);
        assertThat(plug.name()).contains("lid plug");
        assertThat(plug.mould().map(Part::name)).contains("Plug");
        assertThat(tooling(project.mouldings().get(1)).mould().orElseThrow())
                .isSameAs(mould.mould().orElseThrow());
    }

    /** 5 a set ask for 6.25 pulls, as one in five is a reject; a mould lasts four, a plug three, and one plug is there. */
    @Test
    void jobsArePlugsMouldsAndMouldingsInTheNumbersToMake() {
        Project project = read(PROJECT);

        assertThat(namesAndCounts(project.jobs())).containsExactly("2 Mould", "2 Lid", "3 Hatch");
        assertThat(namesAndCounts(project.jobs(10))).containsExactly("5 Plug", "16 Mould", "20 Lid", "30 Hatch");
        assertThat(project.uses(10)).extracting(ToolUse::name).containsExactly("lid mould", "lid plug");
        assertThat(project.uses(10)).extracting(ToolUse::made).containsExactly(16, 6);
        assertThatThrownBy(() -> project.jobs(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> project.jobs(Integer.MAX_VALUE)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 200 pulls are planned: 50 moulds pay for themselves by them, but one set needs two, ten sets 16. */
    @Test
    void pullsThatArePlannedForLaterAreNotMadeForNow() {
        Project project = read(PROJECT.replace("life: 4,", "life: 4, planned-pulls: 200,"));

        assertThat(namesAndCounts(project.jobs())).containsExactly("2 Mould", "2 Lid", "3 Hatch");
        assertThat(namesAndCounts(project.jobs(10))).containsExactly("5 Plug", "16 Mould", "20 Lid", "30 Hatch");
        assertThat(project.uses(1)).extracting(ToolUse::made).containsExactly(50, 17);
        assertThat(project.uses(1)).extracting(ToolUse::toMake).containsExactly(2, 0);
    }

    /** 16 moulds are needed: with ten in hand the plug is pulled six times, and one of two plugs is there. */
    @Test
    void aPlugIsMadeForTheMouldsThatAreNotInHand() {
        assertThat(namesAndCounts(read(PROJECT.replace("life: 4,", "life: 4, in-hand: 10,"))
                        .jobs(10)))
                .containsExactly("1 Plug", "6 Mould", "20 Lid", "30 Hatch");
        String enough = PROJECT.replace("life: 4,", "life: 4, in-hand: 16,").replace("life: 3, in-hand: 1", "life: 3");
        assertThat(namesAndCounts(read(enough).jobs(10))).containsExactly("20 Lid", "30 Hatch");
    }

    @Test
    void whereNoPricingIsStatedThereAreNoRejects() {
        bench.put("workshop.yaml", "labour: {rate: 25 GBP/h}\n");
        assertThat(namesAndCounts(read(PROJECT).jobs(10))).containsExactly("4 Plug", "13 Mould", "20 Lid", "30 Hatch");
        assertThatThrownBy(() -> read(PROJECT).quote(List.of(1))).hasMessageContaining("states no pricing");
    }

    @Test
    void jobsAreMadeInTheYardOfTheProjectAndTellItsFiles() {
        Project project = read(PROJECT);

        assertThat(project.jobs(10)).allSatisfy(job -> {
            assertThat(job.workshop()).isEqualTo(project.workshop());
            assertThat(job.prices()).isEqualTo(project.prices()).isPresent();
            assertThat(job.terms()).isEqualTo(project.terms()).isPresent();
            assertThat(job.files()).isEqualTo(project.files());
        });
        assertThat(project.files())
                .extracting(file -> file.getFileName().toString())
                .containsExactlyInAnyOrder(
                        "lockers.yaml",
                        "workshop.yaml",
                        "prices.yaml",
                        "lid.yaml",
                        "hatch.yaml",
                        "mould.yaml",
                        "plug.yaml");
    }

    @Test
    void withoutMadeOnTheToolingOfThePartFilesHoldsAndOneFileIsOneMould() {
        bench.put("mould.yaml", "");
        putPart("mould", "Mould", "3 m²", "tooling: [{part: plug.yaml}]\n");
        putPart("lid", "Lid", "1 m²", "tooling: [{part: mould.yaml, life: 8}]\n");
        putPart(
                "hatch",
                "Hatch",
                "2 m²",
                "tooling: [{part: ../%s/mould.yaml, life: 8}]\n".formatted(folder.getFileName()));
        Project project = read("""
                project: Lockers
                mouldings: [{part: lid.yaml, count: 5}, {part: hatch.yaml, count: 5}]
                """);

        assertThat(tooling(project.mouldings().get(0)).mould().orElseThrow())
                .isSameAs(tooling(project.mouldings().get(1)).mould().orElseThrow());
        assertThat(namesAndCounts(project.jobs())).containsExactly("1 Plug", "2 Mould", "5 Lid", "5 Hatch");
    }

    /** What a project says of a mould holds for whoever names its part file. */
    @Test
    void aToolOfTheProjectStandsForItsPartFileWhereverThatIsNamed() {
        putPart("mould", "Mould", "3 m²", "tooling: [{part: not-there.yaml}]\n");
        putPart("lid", "Lid", "1 m²", "tooling: [{part: mould.yaml, life: 4}]\n");
        Project project = read(PROJECT.replace("count: 2, made-on: lid mould", "count: 2"));

        Tooling mould = tooling(project.mouldings().get(0));
        assertThat(mould.name()).contains("lid mould");
        assertThat(mould.setUpTime()).isZero();
        assertThat(mould.mould()).isEqualTo(tooling(project.mouldings().get(1)).mould());
        assertThat(namesAndCounts(project.jobs(10))).containsExactly("5 Plug", "16 Mould", "20 Lid", "30 Hatch");
    }

    @Test
    void madeOnStandsInPlaceOfTheToolingOfThePartFile() {
        putPart("lid", "Lid", "1 m²", "tooling: [{part: not-there.yaml}]\n");
        assertThat(namesAndCounts(read(PROJECT).mouldings())).containsExactly("2 Lid", "3 Hatch");
    }

    @Test
    void aBoughtMouldIsSharedByItsName() {
        Project project = read(
                PROJECT.replaceFirst("(?s)tooling:.*", "tooling: [{name: lid mould, price: 1400 GBP, life: 50}]\n"));

        assertThat(project.tools()).isEmpty();
        assertThat(namesAndCounts(project.jobs())).containsExactly("2 Lid", "3 Hatch");
        assertThat(project.uses(10)).singleElement().satisfies(use -> {
            assertThat(use.pulls()).isEqualTo(62.5);
            assertThat(use.made()).isEqualTo(2);
        });
    }

    /** 62.5 pulls take two moulds that last fifty each, one of which is there; one set takes one. */
    @Test
    void boughtMouldsAreBoughtForTheSetsAskedFor() {
        String bought = PROJECT.replaceFirst(
                "(?s)tooling:.*",
                "tooling: [{name: lid mould, price: 1400 GBP, life: 50, planned-pulls: 500, in-hand: 1}]\n");
        Item one = new Item("lid mould", 1, 0, Optional.of(Money.parse("1400 GBP")));

        assertThat(read(bought).toBuy(1)).isEmpty();
        assertThat(read(bought).toBuy(10)).containsExactly(one);
        assertThat(read(bought.replace(", in-hand: 1", "")).toBuy(1)).containsExactly(one);
        assertThat(read(PROJECT).toBuy(10)).isEmpty();
    }

    /** Nobody says how many there are of a mould that a part file states a price of. */
    @Test
    void aMouldThatAPartFileBuysIsTakenToBeThere() {
        putPart("hatch", "Hatch", "2 m²", "tooling: [{price: 90 GBP}]\n");
        Project project = read(PROJECT.replace("hatch.yaml, made-on: lid mould", "hatch.yaml"));

        assertThat(project.uses(1)).extracting(ToolUse::name).contains("mould");
        assertThat(project.toBuy(1)).isEmpty();
    }

    @Test
    void aSetIsQuotedWithTheMouldsThatItShares() {
        SetQuote quote = read(PROJECT).quote(List.of(1, 10));

        assertThat(quote.quotes()).extracting(each -> each.part().name()).containsExactly("Lid", "Hatch");
        assertThat(quote.quotes().get(1).offers())
                .extracting(offer -> offer.price().direct().count())
                .containsExactly(3, 30);
        SetQuote.ToolCost mould = quote.batches().get(1).tools().get(0);
        assertThat(mould.shares()).extracting(SetQuote.Share::by).containsExactly("Lid", "Hatch");
        assertThat(mould.borne()).isEqualTo(mould.all());
    }

    /** The example in the description of the package. */
    @Test
    void tenSetsAreEstimatedAndPriced() {
        Project lockers = ProjectFile.read(bench.put("lockers.yaml", PROJECT), Bench.STOCK, Overrides.NONE);
        double seconds = 0;
        for (Job job : lockers.jobs(10)) {
            seconds += job.estimate().time();
        }
        SetQuote sets = lockers.quote(List.of(10));
        Money lids = sets.quotes().get(0).offers().get(0).price().net();
        Money mould = sets.batches().get(0).tools().get(0).borne();

        assertThat(seconds).isEqualTo((5 + 16 + 20 + 30) * 2 * 3600);
        assertThat(lids.amount()).isGreaterThan(mould.amount()).isPositive();
    }

    @Test
    void oneMouldingByItselfIsQuotedAsItsPartFileIs() {
        String on = "tooling: [{part: mould.yaml, life: 4, planned-pulls: 30}]\n";
        putPart("lid", "Lid", "1 m²", "workshop: workshop.yaml\nprices: prices.yaml\n" + on);
        Job alone = PartFile.read(folder.resolve("lid.yaml"), Bench.STOCK);
        Project project = read("project: Lid\nmouldings: [{part: lid.yaml, count: 1}]\n");

        List<Integer> counts = List.of(1, 7, 40);
        assertThat(project.quote(counts).quotes()).containsExactly(alone.quote(counts));
    }

    @Test
    void materialsMayBeQuotedAsBought() {
        bench.put("prices.yaml", """
                currency: GBP
                prices:
                  - {material: mat-300, packs: [{pack: roll, amount: 40 kg, price: 400 GBP}]}
                  - {material: polyester-ortho, price: 0 GBP/kg}
                  - {material: mekp, price: 0 GBP/kg}
                """);
        assertThat(read(PROJECT)
                        .quoteAsBought(List.of(1))
                        .quotes()
                        .get(0)
                        .offers()
                        .get(0)
                        .price()
                        .direct()
                        .materials())
                .isEqualTo(Money.parse("400 GBP"));
    }

    @Test
    void theYardOfTheProjectStandsInPlaceOfThatOfThePartFiles() {
        putPart("lid", "Lid", "1 m²", "workshop: not-there.yaml\nprices: [neither]\n");
        putPart("mould", "Mould", "3 m²", "workshop: {temperature: 30 °C}\n");
        Project project = read(PROJECT.replace("workshop: workshop.yaml", "workshop: {temperature: 21 °C}"));

        assertThat(project.jobs(10))
                .allSatisfy(job -> assertThat(job.workshop().temperature()).hasValue(294.15));
        assertThat(project.prices()).isPresent();
    }

    @Test
    void withoutAYardOfItsOwnTheProjectIsMadeInThatOfItsFirstMoulding() {
        putPart("lid", "Lid", "1 m²", "workshop: workshop.yaml\nprices: prices.yaml\n");
        putPart("hatch", "Hatch", "2 m²", "workshop: ./workshop.yaml\n");
        Project project = read(PROJECT.replace("workshop: workshop.yaml\nprices: prices.yaml\n", ""));

        assertThat(project.terms()).isPresent();
        assertThat(project.jobs(10)).allSatisfy(job -> assertThat(job.prices()).isPresent());
    }

    @Test
    void partsOfTwoYardsAreNoProject() {
        bench.put("other.yaml", "temperature: 25 °C\n");
        putPart("lid", "Lid", "1 m²", "workshop: workshop.yaml\n");
        putPart("hatch", "Hatch", "2 m²", "workshop: other.yaml\n");
        assertThat(complaints(PROJECT.replace("workshop: workshop.yaml\n", "")))
                .containsExactly("hatch.yaml:5:11: workshop: this is another workshop than that of the project's first"
                        + " moulding; one yard makes a project: name one for all in the project file");
    }

    @Test
    void whatIsAskedForWinsButLeavesToolsAsTheyAreMade() {
        Path asked = bench.put("asked.yaml", "temperature: 25 °C\n");
        Overrides overrides =
                new Overrides(Optional.of(Process.VACUUM_BAG), Optional.of(asked), Optional.empty(), List.of());
        Project project = read(PROJECT, overrides.withCrew(3));

        assertThat(project.mouldings())
                .allSatisfy(job -> assertThat(isLaidBy(job, Process.VACUUM_BAG)).isTrue());
        assertThat(project.tools())
                .allSatisfy(
                        tool -> assertThat(isLaidBy(tool, Process.HAND_LAY_UP)).isTrue());
        assertThat(project.jobs(10)).allSatisfy(job -> {
            assertThat(job.workshop().temperature()).hasValue(298.15);
            assertThat(job.workshop().shopFloor().crew()).isEqualTo(3);
        });
    }

    private static boolean isLaidBy(Job job, Process process) {
        return job.part().zones().get(0).layers().get(0).isLaidBy(process);
    }

    @Test
    void materialsOfTheProjectLieUnderThoseOfAPart() {
        String heavy = "{material: mat-300, kind: reinforcement, name: A heavy one, form: mat, areal-weight: 320 g/m²,"
                + " fibre: e-glass}";
        bench.put("own.yaml", heavy);
        bench.put("heavier.yaml", heavy.replace("320", "340"));
        putPart("hatch", "Hatch", "2 m²", "materials: heavier.yaml\n");
        Project project = read("materials: [own.yaml]\n" + PROJECT);

        assertThat(project.jobs(10)).extracting(ProjectFileTest::arealMass).containsExactly(0.32, 0.32, 0.32, 0.34);
    }

    private static double arealMass(Job job) {
        ReinforcementLayer layer =
                (ReinforcementLayer) job.part().zones().get(0).layers().get(0);
        return layer.reinforcement().arealMass();
    }

    @Test
    void whoSharesAMouldStatesTheSameOfIt() {
        putPart("lid", "Lid", "1 m²", "tooling: [{part: mould.yaml, life: 5, planned-pulls: 50}]\n");
        assertThat(complaints(PROJECT.replace("count: 2, made-on: lid mould", "count: 2")))
                .containsExactly(
                        "lockers.yaml:8:5: tooling, entry 1: 'lid mould' is planned for another number of pulls in"
                                + " lid.yaml:5; what shares a mould states the same of it, or has made-on: in the project file",
                        "lockers.yaml:8:47: life: 'lid mould' has another life in lid.yaml:5; what shares a mould states"
                                + " the same of it, or has made-on: in the project file");
    }

    /** The mould for the other process may be worn otherwise: it is not in use. */
    @Test
    void toolingForAProcessThatIsNotUsedNeedNotAgree() {
        putPart(
                "lid",
                "Lid",
                "1 m²",
                "tooling: [{part: mould.yaml, life: 4}, {process: infusion, part: mould.yaml, life: 9}]\n");
        Project project = read(PROJECT.replace("count: 2, made-on: lid mould", "count: 2"));

        assertThat(project.uses(1)).extracting(ToolUse::made).containsExactly(2, 1);
    }

    @Test
    void slipsInAllFilesAreToldAtOnceAndOnce() {
        putPart("mould", "Mould", "3 kg", "");
        putPart("plug", "Plug", "4 kg", "");
        putPart("hatch", "Hatch", "2 m", "");
        bench.put("workshop.yaml", "crew: 2\n");
        List<String> complaints =
                complaints(PROJECT.replace("count: 2", "count: two") + "  - {name: jig, part: jig.yaml}\n");

        assertThat(complaints)
                .hasSize(6)
                .anyMatch(told -> told.startsWith("hatch.yaml:4:35: area: m is the unit of a length"))
                .anyMatch(told -> told.startsWith("lockers.yaml:5:29: count: 'two' is outside"))
                .anyMatch(told -> told.startsWith("lockers.yaml:10:23: part: there is no file jig.yaml"))
                .anyMatch(told -> told.startsWith("mould.yaml:4:35: area: kg is the unit of a mass"))
                .anyMatch(told -> told.startsWith("plug.yaml:4:35: area: kg is the unit of a mass"))
                .anyMatch(told -> told.startsWith("workshop.yaml:1:1: 'crew' is not a key of a workshop file"));
    }

    @Test
    void whatIsWrongWithAToolThatNothingIsMadeOnIsToldToo() {
        putPart("jig", "Jig", "4 kg", "");
        assertThat(complaints(PROJECT + "  - {name: jig, part: jig.yaml}\n"))
                .singleElement()
                .asString()
                .startsWith("jig.yaml:4:35: area: kg is the unit of a mass");
    }

    @Test
    void aRingThroughPartFilesAndTheProjectIsRefused() {
        putPart("plug", "Plug", "4 m²", "tooling: [{part: mould.yaml}]\n");
        assertThat(complaints(PROJECT))
                .containsExactly("plug.yaml:5:18: part: 'mould.yaml' would be made on itself, by way of plug.yaml; the"
                        + " part file of another mould or plug is wanted");
    }

    @Test
    void eitherKindOfFileIsReadByItsFirstKey() {
        Path lid = folder.resolve("lid.yaml");
        Work part = WorkFile.read(lid, Bench.STOCK, Overrides.NONE);
        assertThat(part).isEqualTo(PartFile.read(lid, Bench.STOCK));
        assertThat(part.jobs()).isEqualTo(part.mouldings()).containsExactly((Job) part);

        Work project = WorkFile.read(bench.put("lockers.yaml", PROJECT), Bench.STOCK, Overrides.NONE);
        assertThat(project).isEqualTo(read(PROJECT));
        assertThat(namesAndCounts(project.jobs())).containsExactly("2 Mould", "2 Lid", "3 Hatch");
        assertThat(bench.complaints(() -> WorkFile.read(folder.resolve("none.yaml"), Bench.STOCK, Overrides.NONE)))
                .containsExactly("none.yaml: there is no such file; the name of a part file is wanted");
    }

    @Test
    void aProjectOfTheLibrarysUserIsOfOneYard() {
        Job lid = PartFile.read(folder.resolve("lid.yaml"), Bench.STOCK);
        Job elsewhere = read(PROJECT).mouldings().get(1);

        assertThat(new Project("Lids", List.of(lid), List.of(), List.of()).prices())
                .isEmpty();
        assertThatThrownBy(() -> new Project("Two", List.of(lid, elsewhere), List.of(), List.of()))
                .hasMessageStartingWith("Two: Hatch is of another workshop");
        assertThatThrownBy(() -> new Project("None", List.of(), List.of(), List.of()))
                .hasMessage("None has no mouldings");
        assertThatThrownBy(() -> new Project(" ", List.of(lid), List.of(), List.of()))
                .hasMessage("a project needs a name");
    }

    /** Workshop, prices and mould are read once, so that a file more is a file more. */
    @Test
    void fiveHundredMouldingsAreReadFileByFile() {
        StringBuilder text =
                new StringBuilder("project: Many\nworkshop: workshop.yaml\nprices: prices.yaml\nmouldings:\n");
        for (int i = 0; i < 500; i++) {
            putPart("part-" + i, "Part " + i, "1 m²", "tooling: [{part: mould.yaml}]\n");
            text.append("  - {part: part-").append(i).append(".yaml}\n");
        }
        Project project = assertTimeout(Duration.ofSeconds(20), () -> read(text.toString()));

        assertThat(project.files()).hasSize(504);
        assertThat(namesAndCounts(project.jobs())).hasSize(501).startsWith("1 Mould", "1 Part 0");
    }
}
