package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The packaged program: it starts by itself and carries its licence. */
class PackagedProgramTest {

    private static final Path JAR = Path.of(System.getProperty("laminate.jar"));

    @Test
    void startsWithNothingButAJavaRuntime() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        JAR.toString(),
                        "--version")
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(output).matches("laminate \\S+\\R");
        assertThat(process.waitFor()).isZero();
    }

    @Test
    void carriesTheLicenceOnceAndNoForeignSignatureOrModule() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> names = jar.stream().map(ZipEntry::getName).toList();

            assertThat(names).doesNotHaveDuplicates().contains("META-INF/NOTICE");
            assertThat(names).noneMatch(name -> name.endsWith("module-info.class") || name.endsWith(".SF"));
            assertThat(new String(
                            jar.getInputStream(jar.getEntry("META-INF/LICENSE")).readAllBytes(),
                            StandardCharsets.UTF_8))
                    .containsOnlyOnce("TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION")
                    .contains("Version 2.0, January 2004");
        }
    }
}
