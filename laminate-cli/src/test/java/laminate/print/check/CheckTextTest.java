package laminate.print.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.print.Pages;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CheckTextTest {
    private static final List<CheckedPart> PARTS = TestChecks.all();
    private static final CheckReport SI = new CheckReport(UnitSystem.SI, false);

    static Stream<Arguments> pages() {
        return Stream.of(40, 60, 80, 120, 300)
                .flatMap(width -> Stream.of(UnitSystem.values())
                        .flatMap(system ->
                                Stream.of(Arguments.of(width, system, true), Arguments.of(width, system, false))));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noLineIsWiderThanThePageOrCanSteerATerminal(int width, UnitSystem system, boolean plies) throws IOException {
        String text = print(new CheckReport(system, plies), width, PARTS);
        Pages.assertReadable(text, width);
    }

    @Test
    void whatIsWorstStandsFirst() throws IOException {
        String tank = print(SI, 80, List.of(TestChecks.sideTank()));
        assertThat(tank)
                .containsSubsequence(
                        "limits           4 not met, 10 met",
                        "Limits, worst first",
                        "the part",
                        "panel tank side           deflection",
                        "panel lid                 core-shear",
                        "What would mend it",
                        "\nPanel tank side",
                        "\nPanel lid\n",
                        "\nPanel lid, pushed\n",
                        "\nBeam test piece",
                        "\nZone strip, load case pull",
                        "\nZone strip, load case bent as held",
                        "\nWhat may replace strip",
                        "\nWhere strengths come from",
                        "\nWhere criteria come from",
                        "Tsai-Wu     S. W. Tsai and E. M. Wu",
                        "\nTo mind");
    }

    @Test
    void everyMissSaysWhatWouldMendItByWhichFactor() throws IOException {
        String tank = print(SI, 300, List.of(TestChecks.sideTank()));
        assertThat(tank)
                .contains(
                        "- the part, mass: mass × 0.118, from 5.92 kg to 0.700 kg.",
                        "- zone lid, thickness: thickness of the laminate × 1.82, from 11.0 mm to 20.0 mm.",
                        "- panel tank side, deflection: thickness of the laminate × ");
        assertThat(tank.lines().filter(line -> line.endsWith("  not met"))).hasSize(4);
    }

    /** A laminate of 4.000 mm that is to be 4.001 mm thick. */
    @Test
    void aMissIsShownToAsManyFiguresAsItTakes() throws IOException {
        assertThat(print(SI, 120, List.of(TestChecks.justMissed())))
                .contains("at least 4.001 mm  4.000 mm  not met")
                .contains("from 4.00 mm to 4.01 mm");
    }

    @Test
    void onlyWhatIsAskedForIsToldOfEveryPly() throws IOException {
        String shortly = print(SI, 120, List.of(TestChecks.sideTank()));
        String all = print(new CheckReport(UnitSystem.SI, true), 120, List.of(TestChecks.sideTank()));
        assertThat(shortly).doesNotContain("Strain and stress along x and y");
        assertThat(all).contains("Strain and stress along x and y", "Stress along and across the fibres");
        // Two load cases of two plies; three panels, of which one is of two plies; a beam.
        assertThat(all.lines().filter(line -> line.startsWith("2 lamina")).count())
                .isGreaterThan(2
                        * shortly.lines()
                                .filter(line -> line.startsWith("2 lamina"))
                                .count());
    }

    @Test
    void aPlyWithoutStrengthIsSaidNotToBeJudged() throws IOException {
        assertThat(print(SI, 120, List.of(TestChecks.notJudged())))
                .contains("limits           1 not judged", "Not judged, and so not met", "none that can be judged")
                .contains("1 lamina (the lamina states no strengths)");
        assertThat(print(SI, 120, List.of(TestChecks.unknownStrength())))
                .contains("limits           none set", "residual stress  left out");
    }

    private static String print(CheckReport report, int width, List<CheckedPart> parts) throws IOException {
        StringBuilder text = new StringBuilder();
        new TextPrinter<>(report::of, width, Style.PLAIN).print(parts, text);
        return text.toString();
    }
}
