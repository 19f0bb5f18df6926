package laminate.print.quote;

import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.print.Pages;
import laminate.print.Report;
import laminate.print.ReportHtml;
import laminate.print.ReportText;
import laminate.print.StrictJson;
import laminate.print.Style;
import laminate.print.TextPrinter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A set of a project as it is told: its price is that of all its parts, and its moulds are paid for once. */
class QuotedSetTest {
    private static final QuotedSet LOCKERS = TestQuotes.lockers();

    @Test
    void theSetComesToWhatItsPartsComeTo() throws IOException {
        Map<String, Object> all = json(LOCKERS);
        List<Map<String, Object>> parts = list(all, "parts");
        assertThat(all).containsEntry("project", "Lockers");
        assertThat(parts.get(1)).containsEntry("part", "Locker hatch").containsEntry("in_a_set", 2.0);
        List<Map<String, Object>> prices = list(all, "prices");
        assertThat(prices).extracting(price -> price.get("count")).containsExactly(1.0, 10.0, 50.0);
        for (int i = 0; i < prices.size(); i++) {
            for (PriceLine line : PriceLine.values()) {
                BigDecimal sum = money(list(parts.get(0), "prices").get(i), line.key())
                        .add(money(list(parts.get(1), "prices").get(i), line.key()));
                if (line.compareTo(PriceLine.NET) <= 0) {
                    assertThat(money(prices.get(i), line.key())).isEqualTo(sum);
                }
            }
        }
    }

    /** A set has two hatches: neither their unit prices nor a sum of rounded ones is its price; so with its tax. */
    @Test
    void aSetCostsTheNetOfAllByTheNumberOfSets() throws IOException {
        for (Map<String, Object> price : list(json(LOCKERS), "prices")) {
            BigDecimal tax = money(price, "net").multiply(new BigDecimal("0.2")).setScale(2, RoundingMode.HALF_UP);
            assertThat(money(price, "tax")).isEqualTo(tax);
            assertThat(money(price, "gross")).isEqualTo(money(price, "net").add(tax));
            BigDecimal sets = BigDecimal.valueOf((double) price.get("count"));
            assertThat(money(price, "unit_net")).isEqualTo(money(price, "net").divide(sets, 2, RoundingMode.HALF_UP));
        }
    }

    /** Each moulding pays 12 GBP for setting up. 150 pulls and rejects ask for two moulds of 120 pulls; both come off one plug. */
    @Test
    void whatIsPaidForToolsIsToldOnceForAll() throws IOException {
        Map<String, Object> all = json(LOCKERS);
        List<Map<String, Object>> tooling = list(all, "tooling");
        assertThat(tooling).extracting(batch -> batch.get("count")).containsExactly(1.0, 10.0, 50.0);
        Map<String, Object> mould = list(tooling.get(2), "tools").get(0);
        assertThat(mould)
                .containsEntry("name", "Mould")
                .containsEntry("made", 2.0)
                .containsEntry("life", 120.0);
        assertThat((double) mould.get("pulls")).isBetween(157.89, 157.9);
        assertThat(list(mould, "shares"))
                .extracting(share -> share.get("by"))
                .containsExactly("Bow locker lid", "Locker hatch");
        assertThat(list(tooling.get(2), "tools").get(1))
                .containsEntry("name", "Plug")
                .containsEntry("pulls", 2.0);
        for (int i = 0; i < tooling.size(); i++) {
            Map<String, Object> first = list(tooling.get(i), "tools").get(0);
            BigDecimal shares = list(first, "shares").stream()
                    .map(share -> money(share, "share"))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(shares)
                    .isEqualTo(money(first, "paid"))
                    .isEqualTo(money(list(all, "prices").get(i), "mould_share").subtract(new BigDecimal("24.00")));
        }
    }

    @Test
    void aCustomerSeesTheMouldingsAndThePriceOfASetAlone() throws IOException {
        StringBuilder html = new StringBuilder();
        new ReportHtml("Quotation").print(List.of(new Quotation(TestQuotes.LETTER).of(LOCKERS)), html);
        String body = html.substring(html.indexOf("<body>"));
        for (BatchTotal total : BatchTotal.of(LOCKERS)) {
            assertThat(body)
                    .contains(Rates.amount(total.of(PriceLine.UNIT_NET)), Rates.amount(total.of(PriceLine.GROSS)));
        }
        for (QuotedPart part : LOCKERS.parts()) {
            assertThat(body).contains(part.name());
            part.quote()
                    .offers()
                    .forEach(offer -> assertThat(body)
                            .doesNotContain(">" + Rates.amount(offer.price().unitNet()) + "<"));
        }
        assertThat(body.toLowerCase())
                .contains("2 × locker hatch")
                .doesNotContain(
                        "margin", "overhead", "labour", "reject", "contingency", "hour", "mould", "plug", "cost");
    }

    /** All that is paid for moulds, as the books take it, is the share of moulds in the price. */
    @Test
    void whatIsPaidIsTheShareOfMoulds() {
        List<List<QuoteTable.Cell>> rows =
                QuoteTable.of(QuoteCsv.Which.TOOLING, LOCKERS).rows();
        for (BatchTotal total : BatchTotal.of(LOCKERS)) {
            BigDecimal paid = rows.stream()
                    .filter(row -> row.get(1).equals(QuoteTable.Number.of(total.count())))
                    .filter(row -> !row.get(11).equals(new QuoteTable.Text("Mould")))
                    .map(row -> ((QuoteTable.Number) row.get(13)).value())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(paid).isEqualTo(total.of(PriceLine.MOULD_SHARE).amount());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {ReportText.NARROWEST, 60, 80, 120, 300})
    void theCostSheetFitsEveryPage(int width) throws IOException {
        for (QuotedSet set : List.of(LOCKERS, TestQuotes.hostileSet())) {
            StringBuilder text = new StringBuilder();
            new TextPrinter<Report>(sheet -> sheet, width, Style.PLAIN).print(new CostSheet().of(set), text);
            Pages.assertReadable(text.toString(), width);
        }
    }

    @Test
    void aSetIsOfferedInItsNumbersOfSets() {
        assertThatThrownBy(() -> QuotedSet.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new QuotedSet(Optional.of("Set"), LOCKERS.parts(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Bow locker lid has 3 offers for 0 numbers of sets");
    }

    private static BigDecimal money(Map<String, Object> of, String key) {
        return new BigDecimal((String) of.get(key));
    }

    private static Map<String, Object> json(QuotedSet quoted) throws IOException {
        StringBuilder json = new StringBuilder();
        new QuoteJson().print(quoted, json);
        return StrictJson.object(json.toString());
    }
}
