package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import laminate.unit.Dimension;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.Quantity;
import laminate.unit.Unit;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The patterns of the schemas take just what the program reads. */
class SchemaPatternsTest {

    private static final List<String> NUMBERS = List.of("1", "1 ", "+20.25 ", "1.5e2  ", "3E+1 ");

    private static String name(Dimension dimension) {
        return dimension.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Angles may be bare numbers and have a test of their own. */
    static Stream<Dimension> dimensions() {
        return Stream.of(Dimension.values())
                .filter(dimension -> dimension != Dimension.ANGLE)
                .filter(dimension -> SchemaFile.all().stream()
                        .anyMatch(file -> file.definitions().containsKey(name(dimension))));
    }

    private static boolean isRead(String text, Consumer<String> reader) {
        try {
            reader.accept(text);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static void assertAgreement(String text, Pattern pattern, Consumer<String> reader) {
        assertThat(pattern.matcher(text).find())
                .as("\"%s\" by %s", text, pattern)
                .isEqualTo(isRead(text, reader));
    }

    @Test
    void thereIsAPatternForTheDimensionsOfTheFiles() {
        assertThat(dimensions())
                .contains(Dimension.LENGTH, Dimension.AREA, Dimension.AREAL_MASS, Dimension.EXPANSION)
                .hasSizeGreaterThan(10);
    }

    @ParameterizedTest
    @MethodSource("dimensions")
    void takesEverySpellingOfItsDimension(Dimension dimension) {
        assertThat(Unit.spellings(dimension))
                .allSatisfy(
                        spelling -> assertThat("2.5 " + spelling).containsPattern(SchemaFile.pattern(name(dimension))));
    }

    @ParameterizedTest
    @MethodSource("dimensions")
    void takesOfAllSpellingsThoseThatAreRead(Dimension dimension) {
        Pattern pattern = SchemaFile.pattern(name(dimension));
        for (Dimension of : Dimension.values()) {
            for (String spelling : Unit.spellings(of)) {
                NUMBERS.forEach(
                        number -> assertAgreement(number + spelling, pattern, text -> Quantity.parse(text, dimension)));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"01", "1,5", "1.", ".5", "", "NaN", "0x1", "1 000", "1_000", "--1", "1e", "1:30"})
    void refusesNumbersThatAreNotRead(String number) {
        dimensions().forEach(dimension -> {
            String text = number + " " + Unit.spellings(dimension).get(0);
            assertThat(isRead(text, it -> Quantity.parse(it, dimension)))
                    .as(text)
                    .isFalse();
            assertThat(text).doesNotContainPattern(SchemaFile.pattern(name(dimension)));
        });
    }

    @ParameterizedTest
    @MethodSource("dimensions")
    void refusesABareNumberAndMoreThanOneQuantity(Dimension dimension) {
        String one = "1 " + Unit.spellings(dimension).get(0);

        assertThat(List.of("1", one + " " + one, one + ";", "about " + one, one + "\n"))
                .noneMatch(SchemaFile.pattern(name(dimension)).asMatchPredicate());
    }

    @Test
    void anAngleIsABareNumberOrDegrees() {
        List<?> ways = (List<?>) SchemaFile.definition("angle").get("anyOf");
        Pattern pattern = Pattern.compile((String) ((Map<?, ?>) ways.get(1)).get("pattern"));

        assertThat(Unit.spellings(Dimension.ANGLE)).isNotEmpty();
        for (Dimension of : Dimension.values()) {
            for (String spelling : Unit.spellings(of)) {
                NUMBERS.forEach(number ->
                        assertAgreement(number + spelling, pattern, text -> Quantity.parse(text, Dimension.ANGLE)));
            }
        }
        assertThat("-45").containsPattern(pattern);
    }

    @ParameterizedTest
    @CsvSource({
        "1/100 span, true",
        "1 / 62.5 span, true",
        "1/100  span, true",
        "1/100, false",
        "2/100 span, false",
        "span/100, false",
        "1/0 span, false",
        "1/-5 span, false",
        "1/100span, false",
        "1/ span, false",
        "0.01 span, false"
    })
    void aDeflectionMayBeAShareOfTheSpan(String text, boolean accepted) {
        List<?> ways = (List<?>) SchemaFile.definition("deflection-limit").get("anyOf");
        Pattern pattern = Pattern.compile((String) ((Map<?, ?>) ways.get(1)).get("pattern"));
        Complaints complaints = new Complaints();
        Node group = YamlTree.read("limits.yaml", "deflection: " + text + "\n", Keys.LIMITS, complaints)
                .orElseThrow();

        assertThat(pattern.matcher(text).find()).as(text).isEqualTo(accepted);
        assertThat(LimitsReader.limits().read(group, complaints).isPresent())
                .as(text)
                .isEqualTo(accepted);
    }

    @Test
    void aPriceIsByWhatAMaterialIsSoldBy() {
        Pattern pattern = SchemaFile.pattern("unit-price");
        Stream.of(PriceBasis.values())
                .filter(basis -> basis != PriceBasis.HOUR)
                .flatMap(basis -> basis.spellings().stream())
                .forEach(spelling -> assertThat("3.10 GBP/" + spelling).containsPattern(pattern));

        Stream.of(
                        "3.10 GBP/kg",
                        "3.10GBP / kg",
                        "+3 EUR/m2",
                        "-3 GBP/kg",
                        "3e2 GBP/kg",
                        "3.10 GBP",
                        "£3.10/kg",
                        "3 GBP/g")
                .forEach(text -> assertAgreement(text, pattern, UnitPrice::parse));
        assertThat("28 GBP/h").doesNotContainPattern(pattern).containsPattern(SchemaFile.pattern("hourly-rate"));
        assertThat("28 GBP/kg").doesNotContainPattern(SchemaFile.pattern("hourly-rate"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"9.00 GBP", "9GBP", "9", "9.00 GBP/kg", "9,00 GBP", "1e3 GBP", "GBP 9", "9 gbp"})
    void aSumOfMoneyIsAnAmountAndACurrency(String text) {
        assertAgreement(text, SchemaFile.pattern("money"), Money::parse);
    }
}
