package laminate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it. */
final class Version implements IVersionProvider {

    private static final String RESOURCE = "version.properties";

    /** Made by the command line when {@code --version} is asked for. */
    Version() {}

    @Override
    public String[] getVersion() {
        return new String[] {"laminate " + read()};
    }

    private static String read() {
        try (InputStream in = Version.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program is incomplete: " + RESOURCE + " is not in its jar.");
            }
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
