package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a print with the accepted one; {@code -Dgolden.update=true} accepts what is printed now. */
final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/laminate/print");

    private Golden() {}

    static void check(String name, String printed) {
        Path accepted = FOLDER.resolve(name);
        try {
            if (Boolean.getBoolean("golden.update")) {
                Files.writeString(accepted, printed, StandardCharsets.UTF_8);
            }
            assertThat(accepted).exists();
            assertThat(printed).isEqualTo(Files.readString(accepted, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
