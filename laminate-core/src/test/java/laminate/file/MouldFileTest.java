package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.quote.Quote;
import laminate.unit.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts whose moulds are parts of their own, and these whose plugs are. */
class MouldFileTest {

    private static final String LID = """
            part: Lid
            workshop: workshop.yaml
            prices: prices.yaml
            process: hand lay-up
            resin: polyester-ortho
            zones: [{name: lid, area: 10 m², layers: [mat-300]}]
            """;
    private static final String ON_MOULD = "tooling: [{part: mould.yaml, life: 2, planned-pulls: 10}]\n";

    @TempDir
    private Path folder;

    private Bench bench;

    /** A lid takes 3 kg of mat at 10 GBP and two hours at 25 GBP, a mould twice the mat, a plug a third of it. */
    @BeforeEach
    void putTheYard() {
        bench = new Bench(folder);
        bench.put("prices.yaml", Bench.PRICE_OF_MAT);
        bench.put("workshop.yaml", """
                loss: {hand lay-up: {reinforcement: 0 %, laps: 0 %}}
                consumables: 0 %
                labour:
                  rate: 25 GBP/h
                  operations: {mould preparation: 0 h/m², lay-up: 0 h/m², making: 2 h}
                pricing: {overhead: {rate: 100 %, on: labour}, contingency: 10 %, margin: 50 %}
                """);
        putMould("20 m²", "workshop: workshop.yaml\nprices: prices.yaml\ntooling: [{part: plug.yaml}]\n");
        bench.put("plug.yaml", LID.replace("Lid", "Plug").replace("10 m²", "3 m²"));
    }

    private void putMould(String area, String more) {
        bench.put("mould.yaml", """
                part: Mould
                count: 3
                process: hand lay-up
                resin: polyester-iso
                zones: [{name: mould, area: %s, layers: [{reinforcement: mat-300, resin: polyester-ortho}]}]
                """.formatted(area) + more);
    }

    private Part mouldOf(Job job) {
        return job.part().tooling().get(0).mould().orElseThrow();
    }

    private static Money firstMould(Job job) {
        return job.quote(List.of(1)).offers().get(0).build().moulds().get(0).cost(1);
    }

    private static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    @Test
    void mouldAndPlugAreReadAndReckonedAtWorksCost() {
        Job job = bench.read(LID + ON_MOULD);

        Tooling tooling = job.part().tooling().get(0);
        assertThat(tooling.life()).isEqualTo(OptionalInt.of(2));
        assertThat(tooling.plannedPulls()).isEqualTo(OptionalInt.of(10));
        assertThat(mouldOf(job).name()).isEqualTo("Mould");
        assertThat(mouldOf(job).tooling().get(0).mould().orElseThrow().name()).isEqualTo("Plug");
        assertThat(tooling.price()).isEmpty();
        assertThat(firstMould(job)).isEqualTo(gbp("269.00"));
    }

    /** Ten pulls take five moulds at 160 off one plug at 109: a pull bears 90.90. */
    @Test
    void aQuoteCountsAllPullsAndOnePlug() {
        Quote quote = bench.read(LID + ON_MOULD).quote(List.of(1, 4));

        assertThat(quote.offers())
                .extracting(offer -> offer.price().mouldShare())
                .containsExactly(gbp("90.90"), gbp("363.60"));
        assertThat(quote.offers().get(0).price().cost()).isEqualTo(gbp("242.99"));
        assertThat(quote.offers().get(0).price().net()).isEqualTo(gbp("485.98"));
    }

    @Test
    void aMouldTakesWorkshopAndPricesOfWhatIsMadeOnIt() {
        putMould("20 m²", "");
        assertThat(firstMould(bench.read(LID + ON_MOULD))).isEqualTo(gbp("160.00"));
    }

    @Test
    void aMouldIsMadeAsItsOwnFileSays() {
        Job job = bench.read(
                LID + ON_MOULD, Overrides.NONE.withProcess(Process.VACUUM_BAG).withResin("vinylester"));
        assertThat(mouldOf(job).zones().get(0).layers().get(0).isLaidBy(Process.HAND_LAY_UP))
                .isTrue();
    }

    @Test
    void aMouldOfAnotherWorkshopOrAtOtherPricesHasAPriceInstead() {
        bench.put("other.yaml", "temperature: 25 °C\n");
        putMould(
                "20 m²",
                "workshop: other.yaml\nprices: {currency: GBP, prices: [{material: mekp, price: 1 GBP/kg}]}\n");
        assertThat(bench.complaints(LID + ON_MOULD))
                .containsExactly(
                        "mould.yaml:6:11: workshop: this is another workshop than that of what is made on this; take it out, or"
                                + " state the price of the mould in place of its part file",
                        "mould.yaml:7:9: prices: this is another price list than that of what is made on this; take it out, or"
                                + " state the price of the mould in place of its part file");
    }

    @Test
    void whatIsMadeOnItselfIsRefusedWhereTheRingCloses() {
        bench.put(
                "plug.yaml",
                LID.replace("Lid", "Plug") + "tooling: [{part: ../" + folder.getFileName() + "/mould.yaml}]\n");
        assertThat(bench.complaints(LID + ON_MOULD))
                .containsExactly("plug.yaml:7:18: part: 'mould.yaml' would be made on itself, by way of plug.yaml; the"
                        + " part file of another mould or plug is wanted");
        putMould("20 m²", "tooling: [{part: part.yaml}]\n");
        assertThat(bench.complaints(LID + ON_MOULD))
                .containsExactly("mould.yaml:6:18: part: 'part.yaml' would be made on itself, by way of mould.yaml; the"
                        + " part file of another mould or plug is wanted");
    }

    @Test
    void slipsInTheFileOfAMouldAreToldWithThoseOfThePart() {
        putMould("20 kg", "");
        bench.put("workshop.yaml", "crew: 2\n");
        assertThat(bench.complaints(LID.replace("mat-300", "mat-30") + ON_MOULD))
                .hasSize(3)
                .anyMatch(told -> told.startsWith("mould.yaml:5:32: area: kg is the unit of a mass"))
                .anyMatch(told -> told.startsWith("part.yaml:6:43: layers, entry 1: 'mat-30' is not known"))
                .anyMatch(told -> told.startsWith("workshop.yaml:1:1: 'crew' is not a key of a workshop file"));
    }

    @Test
    void aMouldWithoutAPriceForAllIsReadButNotQuoted() {
        putMould("20 m²", "items: [{name: cradle, mass: 7 kg}]\n");
        Job job = bench.read(LID + ON_MOULD);

        assertThatThrownBy(() -> job.quote(List.of(1)))
                .hasMessageContaining("Mould: a quote needs a price")
                .hasMessageEndingWith("for cradle");
    }

    @Test
    void aQuoteNeedsPricing() {
        bench.put("workshop.yaml", "labour: {rate: 25 GBP/h, paid: 1.2}\n");
        Job job = bench.read(LID);

        assertThat(job.terms()).isEmpty();
        assertThatThrownBy(() -> job.quote(List.of(1))).hasMessageContaining("Lid: the workshop states no pricing");
    }
}
