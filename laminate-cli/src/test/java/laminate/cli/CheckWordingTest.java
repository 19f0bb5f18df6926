package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a check tells a reader who takes it at its word. */
class CheckWordingTest {
    private static final String PLY = "E1: 181 GPa, E2: 10.3 GPa, G12: 7.17 GPa, nu12: 0.28, density: 1600 kg/m³, "
            + "alpha1: 0.02e-6 1/K, alpha2: 22.5e-6 1/K";
    private static final String STRENGTHS = ", Xt: 1500 MPa, Xc: 1500 MPa, Yt: 40 MPa, Yc: 246 MPa, S: 68 MPa";

    @TempDir
    private Path folder;

    @Test
    void whatIsToldToMendAMissMendsIt() throws IOException {
        Run miss = checked(lid("6 mm"));
        Matcher told = Pattern.compile("thickness of the core × \\S+, from 6.00 mm\\s+to (\\S+ mm)")
                .matcher(miss.out());
        assertThat(miss.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(told.find()).isTrue();
        assertThat(checked(lid(told.group(1))).exitCode()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void aMissByLittleIsSeenToBeOne() throws IOException {
        Matcher found = Pattern.compile("deflection +at most (\\S+) mm +(\\S+) mm +not met")
                .matcher(checked(lid("6 mm").replace("1/300 span", "2.2 mm")).out());
        assertThat(found.find()).isTrue();
        String justBelow = Double.toString(0.9999 * Double.parseDouble(found.group(2)));
        Matcher near = Pattern.compile("deflection +at most (\\S+) mm +(\\S+) mm +not met")
                .matcher(checked(lid("6 mm").replace("1/300 span", justBelow + " mm"))
                        .out());
        assertThat(near.find()).isTrue();
        assertThat(near.group(1)).isNotEqualTo(near.group(2));
    }

    @Test
    void aCoreThatFailsLeavesNoFacesHoldingOn() throws IOException {
        assertThat(checked(lid("6 mm").replace("area: 1 m²", "area: 1 m², load-cases: [{name: shear, Qx: 1 N/mm}]"))
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("times the load, that of the core, without which its faces no longer act together")
                .doesNotContain("hold on", "holds on");
    }

    @Test
    void aPlyOfUnknownStrengthIsSaidToHoldOnUnjudged() throws IOException {
        assertThat(checked(strip("", STRENGTHS, "Nx: 1 N/mm")).out().replaceAll("\\s+", " "))
                .contains("after which 1 lamina (of unknown strength) holds on");
    }

    @Test
    void temperatureAloneIsNotToldAsTimesALoad() throws IOException {
        assertThat(checked(strip(STRENGTHS, STRENGTHS, "temperature-change: -400 K"))
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("first failure before any load, by temperature and moisture alone, 1 lamina")
                .doesNotContain("at 0 times");
        assertThat(checked(strip(STRENGTHS, STRENGTHS, "temperature-change: -10 K"))
                        .out())
                .contains("none that can be judged, by temperature and moisture alone");
    }

    @Test
    void saltWaterIsToldFromFresh() throws IOException {
        String tank = lid("6 mm").replace("pressure: 4 kPa", "head: 400 mm, water: salt");
        assertThat(checked(tank).out()).contains("of liquid, 1025 kg/m³");
    }

    @Test
    void everyCriterionThatIsPrintedStatesItsSource() throws IOException {
        String text = checked(strip(STRENGTHS, STRENGTHS, "Nx: 1 N/mm")).out();
        assertThat(text.substring(text.indexOf("Where criteria come from")))
                .contains("max stress", "max strain", "Tsai-Hill", "Tsai-Wu", "Hashin", "from memory")
                .doesNotContain("core shear");
        Run json = laminate("check", folder.resolve("part.yaml"), "--format", "json");
        assertThat(json.out())
                .containsSubsequence("\"criteria\": [", "\"criterion\": \"hashin\"", "\"source\": \"Z. Hashin", "]");
        assertThat(checked(lid("6 mm")).out())
                .contains("core shear  common practice")
                .doesNotContain("Z. Hashin");
    }

    private static String lid(String core) {
        return """
                part: Lid
                process: hand lay-up
                resin: polyester-ortho
                zones: [{name: top, area: 1 m², layers: [mat-450, {core: pvc-80, thickness: CORE}, mat-450]}]
                panels: [{name: lid, zone: top, length: 600 mm, width: 400 mm, edges: simply supported, pressure: 4 kPa}]
                limits: {deflection: 1/300 span}
                """.replace("CORE", core);
    }

    private static String strip(String first, String second, String load) {
        return """
                part: Strip
                zones:
                  - name: strip
                    area: 1 m²
                    layers:
                      - {lamina: {PLY FIRST}, thickness: 1 mm}
                      - {lamina: {PLY SECOND}, thickness: 1 mm, angle: 90}
                    load-cases: [{name: one, LOAD}]
                """.replace("PLY", PLY)
                .replace(" FIRST", first)
                .replace(" SECOND", second)
                .replace("LOAD", load);
    }

    private Run checked(String text) throws IOException {
        return laminate("check", Files.writeString(folder.resolve("part.yaml"), text));
    }
}
