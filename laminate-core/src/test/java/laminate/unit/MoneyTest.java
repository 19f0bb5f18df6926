package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MoneyTest {
    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource({
        "9.00 GBP, 9.00 GBP",
        "9 GBP, 9.00 GBP",
        "9.5GBP, 9.50 GBP",
        "-0.01 EUR, -0.01 EUR",
        "120 JPY, 120 JPY",
        "1.234 BHD, 1.234 BHD"
    })
    void readsAnAmountAndPrintsIt(String text, String printed) {
        assertThat(Money.parse(text)).hasToString(printed);
        assertThat(Money.parse(printed)).isEqualTo(Money.parse(text));
    }

    @ParameterizedTest(name = "{0} {1} = {2}")
    @CsvSource({
        "0.005, GBP, 0.01",
        "0.0049, GBP, 0.00",
        "-0.005, GBP, -0.01",
        "2.675, GBP, 2.68",
        "2.5, JPY, 3",
        "1.0005, BHD, 1.001",
    })
    void roundsHalfUpToTheCoinsOfTheCurrency(BigDecimal amount, String currency, BigDecimal rounded) {
        assertThat(new Money(amount, currency).amount()).isEqualTo(rounded);
    }

    @Test
    void addsExactly() {
        Money sum = Money.zero("GBP");
        for (int i = 0; i < 1000; i++) {
            sum = sum.plus(Money.parse("0.10 GBP"));
        }
        assertThat(sum).hasToString("100.00 GBP");
    }

    @Test
    void doesNotMixCurrencies() {
        assertThatThrownBy(() -> Money.parse("9.00 GBP").plus(Money.parse("1 EUR")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "amounts of one currency can be added, not 9.00 GBP and 1.00 EUR; there is no exchange rate");
    }

    /** 1.15 as a double lies just below 1.15; the decimal that was meant decides the penny. */
    @Test
    void multipliesByTheDecimalThatWasMeant() {
        assertThat(Money.parse("0.10 GBP").times(1.15)).hasToString("0.12 GBP");
        assertThat(Money.parse("0.10 GBP").times(new BigDecimal("1.15"))).hasToString("0.12 GBP");
        assertThat(Money.parse("9.00 GBP").times(2)).hasToString("18.00 GBP");
        assertThatThrownBy(() -> Money.zero("GBP").times(Double.NaN)).hasMessage("a finite number is wanted, not NaN");
    }

    /** A sixth of 0.03 is half a penny; to multiply by 0.1666… would lose it. */
    @ParameterizedTest(name = "{0} / {1} = {2}")
    @CsvSource({"0.03 GBP, 6, 0.01 GBP", "100.00 GBP, 3, 33.33 GBP", "-0.01 GBP, 2, -0.01 GBP", "5 JPY, 2, 3 JPY"})
    void dividesAndRoundsOnce(String amount, int shares, String share) {
        assertThat(Money.parse(amount).dividedBy(shares)).hasToString(share);
    }

    @Test
    void isSharedAmongOneOrMore() {
        assertThatThrownBy(() -> Money.parse("9 GBP").dividedBy(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("9.00 GBP can be shared among one or more, not 0");
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "9         | 1 | \"9\" has no currency; write it like 9 GBP",
                "£9.00     | 0 | \"£9.00\" begins with a currency sign; write the amount, then the ISO 4217 code, like 9.00 GBP",
                "9 GPB     | 2 | \"GPB\" is not a currency; write an ISO 4217 code such as GBP, EUR or USD; did you mean GBP?",
                "9 gbp     | 2 | \"gbp\" is not a currency; write an ISO 4217 code such as GBP, EUR or USD; did you mean GBP?",
                "9 pounds  | 2 | \"pounds\" is not a currency; write an ISO 4217 code such as GBP, EUR or USD",
                "9 XAU     | 2 | XAU is no currency to pay in; write one such as GBP, EUR or USD",
                "9.005 GBP | 0 | \"9.005 GBP\" is finer than the coins of GBP; write it like 9.01 GBP",
                "9 GBP/kg  | 6 | \"9 GBP/kg\" is a price per something; write an amount like 9.00 GBP",
                "9e2 GBP   | 0 | \"9e2 GBP\" has an exponent; write money in full, like 9.00 GBP",
                "1,200 GBP | 1 | \"1,200 GBP\" has a comma; write a decimal point, as in 0.45, and no thousands separators",
                "1234567890123456789 GBP | 0 | \"1234567890123456789\" is too long for an amount of money; at most 18 characters are read",
            })
    void refusesWithAReason(String text, int offset, String message) {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> Money.parse(text));

        assertThat(refused).hasMessage(message);
        assertThat(refused.offset()).isEqualTo(offset);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource({
        "3.10 GBP/kg, 3.10, KG, 3.10 GBP/kg",
        "0.0345 EUR/m², 0.0345, M2, 0.0345 EUR/m²",
        "5 USD/m2, 5, M2, 5 USD/m²",
        "5 USD/m^2, 5, M2, 5 USD/m²",
        "1.2 GBP / m, 1.2, M, 1.2 GBP/m",
        "8 GBP/l, 8, LITRE, 8 GBP/l",
        "8 GBP/L, 8, LITRE, 8 GBP/l",
        "2.15 USD/lb, 2.15, POUND, 2.15 USD/lb",
        "3 USD/ft2, 3, FT2, 3 USD/ft²",
        "5 USD/yd², 5, YD2, 5 USD/yd²",
        "0.40 USD/ft, 0.40, FOOT, 0.40 USD/ft",
        "6 USD/yd, 6, YARD, 6 USD/yd",
        "38 USD/US gal, 38, US_GALLON, 38 USD/US gal",
        "28 GBP/h, 28, HOUR, 28 GBP/h",
        "9.00 GBP/piece, 9.00, PIECE, 9.00 GBP/piece",
        "118 GBP/roll, 118, ROLL, 118 GBP/roll",
        "0 GBP/kg, 0, KG, 0 GBP/kg",
    })
    void readsAPrice(String text, BigDecimal amount, PriceBasis basis, String printed) {
        UnitPrice price = UnitPrice.parse(text);

        assertThat(price.amount()).isEqualTo(amount);
        assertThat(price.basis()).isEqualTo(basis);
        assertThat(price).hasToString(printed);
        assertThat(UnitPrice.parse(printed)).isEqualTo(price);
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "3.10 GBP  | 8 | \"3.10 GBP\" does not say per what; write it like 3.10 GBP/kg; accepted: per kg, m², m, l, lb, ft², yd², ft, yd, US gal, h, piece or roll",
                "3.10 GBP/ | 9 | \"3.10 GBP/\" does not say per what; write it like 3.10 GBP/kg; accepted: per kg, m², m, l, lb, ft², yd², ft, yd, US gal, h, piece or roll",
                "3 GBP/oz  | 6 | unknown basis \"oz\" of a price; accepted: per kg, m², m, l, lb, ft², yd², ft, yd, US gal, h, piece or roll",
                "3.10      | 4 | \"3.10\" has no currency; write it like 3.10 GBP/kg",
                "€3.10/kg  | 0 | \"€3.10/kg\" begins with a currency sign; write the amount, then the ISO 4217 code, like 3.10 GBP/kg",
                "-3 GBP/kg | 0 | \"-3 GBP/kg\" is negative; write a price of zero or more",
            })
    void refusesAPriceWithAReason(String text, int offset, String message) {
        QuantityException refused = catchThrowableOfType(QuantityException.class, () -> UnitPrice.parse(text));

        assertThat(refused).hasMessage(message);
        assertThat(refused.offset()).isEqualTo(offset);
    }

    /** 12.345 kg at 3.10 GBP/kg are 38.2695 GBP; 0.5 m² at 0.01 are half a penny, rounded up. */
    @Test
    void costsPriceTimesQuantityRoundedOnce() {
        assertThat(UnitPrice.parse("3.10 GBP/kg").cost(12.345)).hasToString("38.27 GBP");
        assertThat(UnitPrice.parse("0.01 GBP/m²").cost(0.5)).hasToString("0.01 GBP");
        assertThat(UnitPrice.parse("0.0345 GBP/kg").cost(1000)).hasToString("34.50 GBP");
        assertThatThrownBy(() -> UnitPrice.parse("3 GBP/kg").cost(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource(PriceBasis.class)
    void everySpellingOfABasisIsRead(PriceBasis basis) {
        assertThat(basis.spellings()).first().isEqualTo(basis.symbol());
        assertThat(basis.spellings()).allSatisfy(spelling -> {
            assertThat(PriceBasis.find(spelling)).contains(basis);
            assertThat(UnitPrice.parse("2 GBP/" + spelling).basis()).isEqualTo(basis);
        });
        assertThat(basis).hasToString(basis.symbol());
    }

    @Test
    void aPriceIsCheckedWhenMade() {
        assertThatThrownBy(() -> new UnitPrice(new BigDecimal("-1"), "GBP", PriceBasis.KG))
                .hasMessage("a price is not negative; -1 is");
        assertThatThrownBy(() -> new UnitPrice(BigDecimal.ONE, "GBP", null))
                .hasMessage(
                        "a price is per kg, m², m, l, lb, ft², yd², ft, yd, US gal, h, piece or roll; 1 is per nothing");
        assertThatThrownBy(() -> new UnitPrice(BigDecimal.ONE, "pound", PriceBasis.KG))
                .hasMessageStartingWith("\"pound\" is not a currency");
    }

    /** Rounded lines sum to the rounded total, in whatever order. */
    @Test
    void linesSumToTheTotal() {
        Random random = new Random(99);
        Money forwards = Money.zero("EUR");
        BigDecimal total = BigDecimal.ZERO;
        for (int i = 0; i < 500; i++) {
            Money line = UnitPrice.parse("7.77 EUR/kg").cost(random.nextDouble() * 100);
            forwards = forwards.plus(line);
            total = total.add(line.amount());
        }
        assertThat(forwards.amount()).isEqualTo(total);
    }
}
