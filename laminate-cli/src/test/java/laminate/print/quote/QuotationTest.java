package laminate.print.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import laminate.print.ReportHtml;
import laminate.quote.Quote;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The quotation for a customer. */
class QuotationTest {

    private static String html(Letter letter, QuotedPart... parts) throws IOException {
        StringBuilder html = new StringBuilder();
        new ReportHtml("Quotation").print(List.of(new Quotation(letter).of(QuotedSet.of(List.of(parts)))), html);
        return html.toString();
    }

    /** The page is written as XML may be, but for what has no end tag: so a strict parser tells what a browser sees. */
    private static Document parsed(String html) throws Exception {
        String xml = html.replace("<!DOCTYPE html>\n", "").replaceAll("<meta ([^>]*)>", "<meta $1/>");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aCustomerSeesPricesAndTheYardsWordsAndNoCost() throws IOException {
        QuotedPart lid = TestQuotes.lid();
        String html = html(TestQuotes.LETTER, lid);
        assertThat(html)
                .contains("Workshop of the lake club", "Reed Bay School", "2026-03-02", "2026-04-01", "VAT 20 %")
                .contains("trimmed and drilled", "carriage", "half with the order", "2 × hinge, turn button")
                .contains("A discount of 2 % is in the prices.");
        for (Quote.Offer offer : lid.quote().offers()) {
            assertThat(html)
                    .contains(
                            Rates.amount(offer.price().unitNet()),
                            Rates.amount(offer.price().gross()));
            for (PriceLine line : PriceLine.values()) {
                if (line.compareTo(PriceLine.NET) < 0) {
                    assertThat(html).doesNotContain(">" + Rates.amount(line.of(offer.price())) + "<");
                }
            }
        }
        assertThat(body(html).toLowerCase())
                .doesNotContain("margin", "overhead", "labour", "reject", "contingency", "hour", "mould", "cost");
    }

    private static String body(String html) {
        return html.substring(html.indexOf("<body>"));
    }

    @Test
    void whatOthersWroteIsTextAndNeverAMark() throws Exception {
        Letter letter = new Letter(Optional.of("<img src=x onerror=alert(1)>"), TestQuotes.DAY, Optional.empty());
        Document page = parsed(html(letter, TestQuotes.hostile()));
        Set<String> names = new TreeSet<>();
        for (int i = 0; i < page.getElementsByTagName("*").getLength(); i++) {
            Element element = (Element) page.getElementsByTagName("*").item(i);
            names.add(element.getTagName());
            for (int a = 0; a < element.getAttributes().getLength(); a++) {
                assertThat(element.getAttributes().item(a).getNodeName())
                        .isIn("lang", "charset", "name", "content", "class", "scope");
            }
        }
        assertThat(names)
                .isSubsetOf(
                        "html", "head", "meta", "title", "style", "body", "h1", "h2", "p", "dl", "dt", "dd", "table",
                        "thead", "tbody", "tr", "th", "td", "span", "ul", "li");
        assertThat(page.getElementsByTagName("h2").item(0).getTextContent())
                .isEqualTo("=HYPERLINK(\"x\") <script>alert(1)</script> & 'lid' ");
        assertThat(page.getDocumentElement().getTextContent()).contains("<img src=x onerror=alert(1)>", "&amp;");
    }

    @Test
    void theCostSheetIsEscapedAlike() throws Exception {
        StringBuilder html = new StringBuilder();
        new ReportHtml("<sheet>").print(new CostSheet().of(TestQuotes.alone(TestQuotes.hostile())), html);
        Document page = parsed(html.toString());
        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(page.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("<sheet>");
        assertThat(page.getDocumentElement().getTextContent()).contains("+<i>VAT</i> 20 % of net");
    }

    @Test
    void aPagePrintsOnAnySheet() throws IOException {
        assertThat(html(TestQuotes.LETTER, TestQuotes.lid()))
                .contains("@page { margin:", "@media print", "table-header-group")
                .doesNotContainPattern("@page[^}]*size")
                .doesNotContain("http:", "https:", "<script", "<link");
    }

    @Test
    void whereNoTaxIsDueNoneIsMentioned() throws IOException {
        assertThat(body(html(TestQuotes.LETTER, TestQuotes.untaxed())))
                .doesNotContain("tax", "Included", "valid until");
    }

    @Test
    void theShortestOfSeveralOffersHolds() {
        Letter stated = new Letter(Optional.empty(), TestQuotes.DAY, Optional.of(LocalDate.of(2026, 3, 9)));
        assertThat(stated.validUntil(List.of(TestQuotes.lid()))).contains(LocalDate.of(2026, 3, 9));
        assertThat(TestQuotes.LETTER.validUntil(List.of(TestQuotes.lid(), TestQuotes.untaxed())))
                .contains(LocalDate.of(2026, 4, 1));
        assertThat(TestQuotes.LETTER.validUntil(List.of(TestQuotes.untaxed()))).isEmpty();
    }

    @Test
    void anOfferDoesNotEndBeforeItsDay() {
        assertThatThrownBy(() -> new Letter(Optional.empty(), TestQuotes.DAY, Optional.of(LocalDate.of(2026, 3, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2026-03-01");
    }
}
