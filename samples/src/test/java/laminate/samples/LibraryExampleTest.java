package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;

/** The library example of README.md: what stands there is what is compiled and run here. */
class LibraryExampleTest {

    @Test
    void estimatesWithoutAFile() {
        List<Layer> layers = List.of(new LaminaLayer(Lamina.of(8e9, 8e9, 3e9, 0.33), 1500, 0.004, 0, ""));
        // begin of the example
        Estimator estimator = new Estimator(Workshop.USUAL);
        PartEstimate estimate = estimator.estimate(Part.of("lid", List.of(Zone.of("lid", 0.62, layers))));
        double kilograms = estimate.mass().planned();
        double ex = estimate.zones().get(0).laminate().inPlane().Ex();
        // end of the example
        assertThat(kilograms).isCloseTo(0.62 * 1500 * 0.004, within(1e-12));
        assertThat(ex).isCloseTo(8e9, within(1.0));
    }

    @Test
    void isWhatTheReadmeShows() throws IOException {
        Path source = Program.ROOT.resolve("samples/src/test/java/laminate/samples/LibraryExampleTest.java");
        String text = Files.readString(source);
        String example =
                text.substring(text.indexOf("// begin of the example\n"), text.indexOf("// end of the example"));
        String code =
                example.substring(example.indexOf('\n') + 1).stripTrailing().stripIndent();

        assertThat(Files.readString(Program.ROOT.resolve("README.md"))).contains("```java\n" + code + "\n```");
    }
}
