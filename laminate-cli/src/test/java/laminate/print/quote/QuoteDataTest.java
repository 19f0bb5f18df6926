package laminate.print.quote;

import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import laminate.print.StrictCsv;
import laminate.print.StrictJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** JSON, CSV and workbooks of quotes, read back. */
class QuoteDataTest {
    private static final List<String> CONTRACT = List.of(
            "count",
            "materials",
            "consumables",
            "items",
            "labour",
            "rejects",
            "overhead",
            "mould_share",
            "contingency",
            "margin",
            "discount",
            "net",
            "tax",
            "gross",
            "unit_net",
            "hours");
    private static final Pattern CELL = Pattern.compile("<c ([^>/]*)>(.*?)</c>");
    private static final Pattern SHEET = Pattern.compile("<sheet name=\"([^\"]*)\"");
    private static final Pattern STRING = Pattern.compile("<si><t[^>]*>(.*?)</t></si>", Pattern.DOTALL);

    @Test
    void theKeysOfTheContractComeFirstAndInTheirOrder() throws IOException {
        Map<String, Object> all = json(List.of(TestQuotes.lid()));
        assertThat(list(all, "prices").get(0).keySet()).containsExactlyElementsOf(CONTRACT);
        for (Map<String, Object> price : list(list(all, "parts").get(0), "prices")) {
            assertThat(List.copyOf(price.keySet()).subList(0, CONTRACT.size())).isEqualTo(CONTRACT);
            assertThat(price.get("hours")).isInstanceOf(Double.class);
            for (PriceLine line : PriceLine.values()) {
                assertThat(price.get(line.key())).asString().matches("[0-9]+\\.[0-9]{2}");
            }
        }
    }

    @Test
    void theLinesAddUpToTheLastPenny() throws IOException {
        for (QuotedPart part : List.of(TestQuotes.lid(), TestQuotes.untaxed(), TestQuotes.hostile())) {
            for (Map<String, Object> price : list(json(List.of(part)), "prices")) {
                BigDecimal net = sum(
                                price,
                                "materials",
                                "consumables",
                                "items",
                                "labour",
                                "rejects",
                                "overhead",
                                "mould_share",
                                "contingency",
                                "margin")
                        .subtract(sum(price, "discount"));
                assertThat(net).isEqualTo(sum(price, "net"));
                assertThat(sum(price, "net", "tax")).isEqualTo(sum(price, "gross"));
                double each = sum(price, "net").doubleValue() / (double) price.get("count");
                assertThat(sum(price, "unit_net").doubleValue()).isBetween(each - 0.005001, each + 0.005001);
            }
        }
    }

    /** What is asked for one of several is their net by their number, and no sum of what was rounded before. */
    @Test
    void severalPartsAreSummedLineByLine() throws IOException {
        Map<String, Object> all = json(List.of(TestQuotes.lid(), TestQuotes.hostile()));
        List<Map<String, Object>> lid = list(list(all, "parts").get(0), "prices");
        List<Map<String, Object>> other = list(list(all, "parts").get(1), "prices");
        List<Map<String, Object>> totals = list(all, "prices");
        assertThat(totals).hasSize(4);
        for (int i = 0; i < totals.size(); i++) {
            Map<String, Object> total = totals.get(i);
            for (PriceLine line : EnumSet.complementOf(EnumSet.of(PriceLine.UNIT_NET))) {
                assertThat(sum(total, line.key()))
                        .isEqualTo(sum(lid.get(i), line.key()).add(sum(other.get(i), line.key())));
            }
            int count = (int) (double) total.get("count");
            assertThat(sum(total, "unit_net"))
                    .isEqualTo(sum(total, "net").divide(BigDecimal.valueOf(count), 2, RoundingMode.HALF_UP));
        }
    }

    @Test
    void partsInDifferentNumbersHaveNoTotal() throws IOException {
        assertThat(json(List.of(TestQuotes.lid(), TestQuotes.untaxed()))).containsOnlyKeys("parts");
    }

    @Test
    void theMouldIsToldWithWhatItIsMadeOn() throws IOException {
        Map<String, Object> price = list(
                        list(json(List.of(TestQuotes.lid())), "parts").get(0), "prices")
                .get(0);
        Map<String, Object> mould = list(price, "moulds").get(0);
        assertThat(mould)
                .containsEntry("name", "Mould")
                .containsEntry("life", 120.0)
                .doesNotContainKey("planned_pulls");
        assertThat(list(mould, "made_on"))
                .singleElement()
                .satisfies(
                        plug -> assertThat(plug).containsEntry("name", "Plug").containsEntry("life", 3.0));
        assertThat(mould.get("share")).isEqualTo(price.get("mould_share"));
    }

    @ParameterizedTest
    @EnumSource(QuoteCsv.Which.class)
    void everyRowHasOneFieldAHeadingAndNoTextStartsAFormula(QuoteCsv.Which which) throws IOException {
        StringBuilder csv = new StringBuilder();
        new QuoteCsv(which).print(which.isOfProject() ? TestQuotes.hostileSet() : TestQuotes.several(), csv);
        List<List<String>> rows = StrictCsv.rows(csv.toString());
        assertThat(rows.get(0)).doesNotHaveDuplicates().allMatch(heading -> heading.matches("[a-z_]+"));
        assertThat(rows)
                .hasSizeGreaterThan(3)
                .allSatisfy(row -> assertThat(row)
                        .hasSameSizeAs(rows.get(0))
                        .noneMatch(field -> field.matches("(?s)[=+@\\t\\r].*|-[^0-9].*")));
        assertThat(rows.get(rows.size() - 1).get(0)).startsWith("'=HYPERLINK(");
    }

    static List<QuotedSet> workbooks() {
        return List.of(TestQuotes.several(), TestQuotes.hostileSet());
    }

    /** A sheet for each table that there is: those of a project for a project alone. */
    @ParameterizedTest
    @MethodSource("workbooks")
    void aWorkbookHoldsWhatTheCsvHoldsAndNoFormula(QuotedSet quoted, @TempDir Path folder) throws IOException {
        Path book = folder.resolve("quotes.xlsx");
        try (OutputStream out = Files.newOutputStream(book)) {
            new QuoteWorkbook().print(quoted, out);
        }
        Map<String, String> files = unzipped(book);
        List<String> strings = STRING.matcher(files.get("xl/sharedStrings.xml"))
                .results()
                .map(found -> found.group(1))
                .toList();
        List<QuoteCsv.Which> tables = Stream.of(QuoteCsv.Which.values())
                .filter(which -> quoted.project().isPresent() || !which.isOfProject())
                .toList();
        assertThat(SHEET.matcher(files.get("xl/workbook.xml")).results().map(found -> found.group(1)))
                .containsExactlyElementsOf(
                        tables.stream().map(QuoteTable::title).toList());
        for (QuoteCsv.Which which : tables) {
            String sheet = files.get("xl/worksheets/sheet" + (which.ordinal() + 1) + ".xml");
            assertThat(sheet).doesNotContain("<f>", "<f ");
            assertThat(cells(sheet, strings)).isEqualTo(expected(QuoteTable.of(which, quoted)));
        }
    }

    private static List<String> expected(QuoteTable table) {
        List<String> cells = new ArrayList<>(table.headings());
        for (List<QuoteTable.Cell> row : table.rows()) {
            for (QuoteTable.Cell cell : row) {
                if (cell instanceof QuoteTable.Number number) {
                    cells.add(number.value().stripTrailingZeros().toPlainString());
                } else if (cell instanceof QuoteTable.Text text && !text.text().isEmpty()) {
                    cells.add(text.text().replace('\u0007', ' '));
                }
            }
        }
        return cells;
    }

    private static List<String> cells(String sheet, List<String> strings) {
        List<String> cells = new ArrayList<>();
        for (MatchResult cell : CELL.matcher(sheet).results().toList()) {
            String value = cell.group(2).replaceAll("</?v>", "");
            if (value.isEmpty()) {
                continue;
            }
            String text = cell.group(1).contains("t=\"s\"")
                    ? unescaped(strings.get(Integer.parseInt(value)))
                    : new BigDecimal(value).stripTrailingZeros().toPlainString();
            if (!text.isEmpty()) {
                cells.add(text);
            }
        }
        return cells;
    }

    private static String unescaped(String xml) {
        return xml.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&apos;", "'")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    private static Map<String, String> unzipped(Path book) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(book.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                files.put(
                        entry.getName(), new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static BigDecimal sum(Map<String, Object> price, String... keys) {
        BigDecimal sum = new BigDecimal("0.00");
        for (String key : keys) {
            sum = sum.add(new BigDecimal((String) price.get(key)));
        }
        return sum;
    }

    private static Map<String, Object> json(List<QuotedPart> parts) throws IOException {
        StringBuilder json = new StringBuilder();
        new QuoteJson().print(QuotedSet.of(parts), json);
        return StrictJson.object(json.toString());
    }
}
