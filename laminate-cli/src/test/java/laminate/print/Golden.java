package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Compares a print with the accepted one; {@code -Dgolden.update=true} accepts what is printed now. Numbers that are told
 * to fifteen digits may differ in the last ones, as Java machines do in their cosines.
 */
public final class Golden {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
    private static final double RELATIVE = 1e-9;
    private static final double ABSOLUTE = 1e-9;
    private static final Path FOLDER = Path.of("src/test/resources/laminate/print");

    private Golden() {}

    public static void check(String name, String printed) {
        Path accepted = FOLDER.resolve(name);
        try {
            if (Boolean.getBoolean("golden.update")) {
                Files.writeString(accepted, printed, StandardCharsets.UTF_8);
            }
            assertThat(accepted).exists();
            String wanted = Files.readString(accepted, StandardCharsets.UTF_8);
            if (name.endsWith(".txt") || name.endsWith(".md") || !alike(printed, wanted)) {
                assertThat(printed).isEqualTo(wanted);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean alike(String printed, String wanted) {
        if (!NUMBER.matcher(printed)
                .replaceAll("#")
                .equals(NUMBER.matcher(wanted).replaceAll("#"))) {
            return false;
        }
        double[] found = numbers(printed);
        double[] accepted = numbers(wanted);
        for (int i = 0; i < found.length; i++) {
            double size = Math.max(Math.abs(found[i]), Math.abs(accepted[i]));
            if (Math.abs(found[i] - accepted[i]) > ABSOLUTE + RELATIVE * size) {
                return false;
            }
        }
        return true;
    }

    private static double[] numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .mapToDouble(number -> Double.parseDouble(number.group()))
                .toArray();
    }
}
