package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.provider.Arguments;

/** Pages of every width and system of units, and what holds of each text on them. */
public final class Pages {
    private Pages() {}

    /** From the narrowest to a wide one. */
    public static Stream<Arguments> all() {
        return Stream.of(40, 60, 80, 120, 300)
                .flatMap(width -> Stream.of(UnitSystem.values()).map(system -> Arguments.of(width, system)));
    }

    /** No line is wider than the page, nothing in it can steer a terminal, and no figure is none. */
    public static void assertReadable(String text, int width) {
        assertThat(text.lines())
                .allSatisfy(line -> assertThat(Columns.of(line)).as(line).isLessThanOrEqualTo(width))
                .noneMatch(line -> line.endsWith(" "));
        assertThat(text.codePoints().filter(c -> c != '\n' && Character.isISOControl(c)))
                .isEmpty();
        assertThat(text).doesNotContain("\u202E", "\u2028", "NaN", "Infinity");
    }
}
