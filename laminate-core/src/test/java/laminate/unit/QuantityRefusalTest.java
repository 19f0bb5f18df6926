package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every refusal says what is wrong and what is accepted; the words are part of the interface to a student. */
class QuantityRefusalTest {
    private static final String LENGTHS = "accepted: µm, mil, mm, cm, m, in, ft or yd";

    private static QuantityException refusal(String text, Dimension wanted) {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Quantity.parse(text, wanted));
        assertThat(refused).as("refusal of " + text).isNotNull();
        return refused;
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "450     | LENGTH | 3 | a length needs its unit; write it like 450 mm",
                "450     | AREAL_MASS | 3 | an areal weight needs its unit; write it like 450 g/m²",
                "18      | TEMPERATURE | 2 | a temperature needs its unit; write it like 18 °C",
                "0.3     | FRACTION | 3 | a fraction needs its unit; write it like 30 %",
                "0.285   | FRACTION | 5 | a fraction needs its unit; write it like 28.5 %",
                "30      | FRACTION | 2 | a fraction needs its unit; write it like 30 %",
                "1       | FRACTION | 1 | a fraction needs its unit; write it like 1 %",
                "0       | FRACTION | 1 | a fraction needs its unit; write it like 0 %",
            })
    void aBareNumberIsShownWithAUnit(String text, Dimension wanted, int offset, String message) {
        assertThat(refusal(text, wanted)).hasMessage(message);
        assertThat(refusal(text, wanted).offset()).isEqualTo(offset);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "18 oz | AREAL_MASS | oz is the unit of a mass, not of an areal weight; accepted: g/m², kg/m², oz/yd² or oz/ft²; write oz/yd² for cloth or, for mats, oz/ft²",
                "5 oz  | VOLUME | oz is the unit of a mass, not of a volume; accepted: ml, l, m³, US fl oz or US gal; write US fl oz",
                "5 lb  | FORCE | lb is the unit of a mass, not of a force; accepted: N, kN or lbf; write lbf",
                "5 N   | MOMENT_PER_LENGTH | N is the unit of a force, not of a moment per length; accepted: N·m/m, N·mm/mm, kN·m/m or lb·in/in",
                "3 mm  | AREA | mm is the unit of a length, not of an area; accepted: cm², m², ft² or yd²",
                "3 g/m² | MASS | g/m² is the unit of an areal weight, not of a mass; accepted: g, kg, oz or lb",
            })
    void aUnitOfSomethingElseIsNamed(String text, Dimension wanted, String message) {
        assertThat(refusal(text, wanted)).hasMessage(message);
        assertThat(refusal(text, wanted).offset()).isEqualTo(2 + (text.startsWith("18") ? 1 : 0));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "450 xyz | LENGTH | unknown unit \"xyz\"; " + LENGTHS,
                "3 M     | LENGTH | unknown unit \"M\"; " + LENGTHS + "; did you mean m?",
                "3 microns | LENGTH | unknown unit \"microns\"; " + LENGTHS + "; did you mean µm?",
                "3 Kg    | MASS | unknown unit \"Kg\"; accepted: g, kg, oz or lb; did you mean kg?",
                "10 mPa  | PRESSURE | unknown unit \"mPa\"; accepted: Pa, kPa, MPa, GPa, N/mm², mbar, bar, psi, ksi or Msi; did you mean MPa?",
                "450 gsm | AREAL_MASS | unknown unit \"gsm\"; accepted: g/m², kg/m², oz/yd² or oz/ft²; did you mean g/m²?",
                "450 g / m2 | AREAL_MASS | unknown unit \"g / m2\"; accepted: g/m², kg/m², oz/yd² or oz/ft²; did you mean g/m²?",
                "2 gal   | VOLUME | unknown unit \"gal\"; accepted: ml, l, m³, US fl oz or US gal; did you mean US gal?",
                "5.3e-6/K | EXPANSION | unknown unit \"/K\"; accepted: 1/K, 1e-6/K, 1/°F or 1e-6/°F; did you mean 1/K?",
                "5.31/K  | EXPANSION | unknown unit \"/K\"; accepted: 1/K, 1e-6/K, 1/°F or 1e-6/°F; did you mean 1/K?",
                "0x10 mm | LENGTH | unknown unit \"x10 mm\"; " + LENGTHS,
                "450 mm mm | LENGTH | more text follows the unit mm: \"mm\"; write one number with one unit; "
                        + LENGTHS,
                "450 mm 3 m | LENGTH | more text follows the unit mm: \"3 m\"; write one number with one unit; "
                        + LENGTHS,
                "1 000 mm | LENGTH | a second number begins at \"000 mm\"; write one number with one unit, no spaces between digits; "
                        + LENGTHS,
            })
    void anUnknownUnitIsAnsweredWithTheKnownOnes(String text, Dimension wanted, String message) {
        assertThat(refusal(text, wanted)).hasMessage(message);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''      | 0 | nothing is written here; write a number with its unit, like 450 mm",
                "'  '    | 2 | nothing is written here; write a number with its unit, like 450 mm",
                "mm      | 0 | \"mm\" does not begin with a number; write it like 450 mm",
                "NaN mm  | 0 | \"NaN mm\" does not begin with a number; write it like 450 mm",
                ".nan    | 0 | \".nan\" does not begin with a number; write it like 450 mm",
                "-inf mm | 1 | \"-inf mm\" does not begin with a number; write it like 450 mm",
                "--3 mm  | 1 | \"--3 mm\" does not begin with a number; write it like 450 mm",
                "٣ mm    | 0 | \"٣ mm\" does not begin with a number; write it like 450 mm",
                "\u22123 mm | 0 | \"\u22123 mm\" has a typographic minus; write a plain hyphen, -",
                "010 mm  | 0 | \"010 mm\" begins with 0; write the number without the leading zero",
                "-00.5 mm | 1 | \"-00.5 mm\" begins with 0; write the number without the leading zero",
                ".5 mm   | 0 | \".5 mm\" begins with a point; write 0 before it",
                "5. mm   | 1 | \"5. mm\" has no digit after its point; write one or leave the point out",
                "1.2.3 mm | 3 | \"1.2.3 mm\" has a second point; write one decimal point",
                "0,45 mm | 1 | \"0,45 mm\" has a comma; write a decimal point, as in 0.45, and no thousands separators",
                "1,200.5 mm | 1 | \"1,200.5 mm\" has a comma; write a decimal point, as in 0.45, and no thousands separators",
                "1_0 mm  | 1 | \"1_0 mm\" has separators in its number; write the digits alone",
                "1e400 mm | 0 | \"1e400\" is beyond what can be computed with; check its exponent",
                "1e-400 mm | 0 | \"1e-400\" is beyond what can be computed with; check its exponent",
                "1e99999999999 mm | 0 | \"1e99999999999\" is beyond what can be computed with; check its exponent",
            })
    void aNumberIsWrittenPlainly(String text, int offset, String message) {
        assertThat(refusal(text, Dimension.LENGTH)).hasMessage(message);
        assertThat(refusal(text, Dimension.LENGTH).offset()).isEqualTo(offset);
    }

    @Test
    void impossibleValuesAreRefused() {
        assertThat(refusal(" -300 °C", Dimension.TEMPERATURE))
                .hasMessage("-300 °C is below absolute zero, which is -273.15 °C");
        assertThat(refusal(" -300 °C", Dimension.TEMPERATURE).offset()).isEqualTo(1);
        assertThat(refusal("1e308 GPa", Dimension.PRESSURE))
                .hasMessage("1.0E308 GPa is beyond what can be computed with; write a smaller number");
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "450     | \"450\" has no unit; write it like 450 mm or 450 g/m²",
                "450 gsm | unknown unit \"gsm\"; did you mean g/m²?",
                "3 wibble | unknown unit \"wibble\"",
                "3 mm x  | more text follows the unit mm: \"x\"; write one number with one unit",
                "mm      | \"mm\" does not begin with a number; write it like 450 mm or 450 g/m²",
            })
    void withoutAWantedDimensionAnyUnitWouldDo(String text, String message) {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Quantity.parse(text));

        assertThat(refused).hasMessage(message);
    }

    @Test
    void aMessageStaysOneShortLine() {
        String text = "x\n\u0007" + "y".repeat(100_000);

        assertThat(refusal(text, Dimension.MASS))
                .hasMessage(
                        "\"x\uFFFD\uFFFD" + "y".repeat(37) + "…\" does not begin with a number; write it like 1.5 kg");
        assertThat(refusal("3 " + "z".repeat(100_000), Dimension.MASS).getMessage())
                .hasSizeLessThan(120);
    }

    /** Random slips of good text are read as a finite number or refused with a message and a place in the text. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void noSlipEndsInAnythingElse(Dimension dimension) {
        Random random = new Random(4711 + dimension.ordinal());
        String letters = "0123456789.,eE+-_ /²³·°%µmgkNPasohzyd";
        for (int i = 0; i < 2000; i++) {
            String symbol = Unit.spellings(dimension)
                    .get(random.nextInt(Unit.spellings(dimension).size()));
            StringBuilder text = new StringBuilder("12.5 " + symbol);
            for (int slip = 0; slip < 1 + random.nextInt(3); slip++) {
                text.setCharAt(random.nextInt(text.length()), letters.charAt(random.nextInt(letters.length())));
            }
            assertReadOrRefused(text.toString(), dimension);
        }
    }

    private static void assertReadOrRefused(String text, Dimension dimension) {
        try {
            assertThat(Quantity.parse(text, dimension)).as(text).isFinite();
        } catch (QuantityException e) {
            assertThat(e.getMessage()).as(text).contains(" ").doesNotContain("null");
            assertThat(e.offset()).as(text).isBetween(0, text.length());
        }
    }
}
