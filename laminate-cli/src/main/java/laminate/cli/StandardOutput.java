package laminate.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * The program's standard output. A print writer hides failures; this stream remembers the first one, so that a full
 * disk is not taken for success. Whoever closes a pipe early ({@code | head}) has read enough: that is no failure.
 */
final class StandardOutput extends OutputStream {
    private final OutputStream out;
    private IOException failure;

    StandardOutput() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    StandardOutput(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        try {
            out.write(bytes, from, count);
        } catch (IOException e) {
            failure = failure == null ? e : failure;
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    /**
     * Why the output is not whole.
     *
     * @return the first failure, empty if there was none but a closed pipe
     */
    Optional<String> failure() {
        if (failure == null) {
            return Optional.empty();
        }
        String why = failure.getMessage() == null ? failure.toString() : failure.getMessage();
        return isClosedPipe(why) ? Optional.empty() : Optional.of(why);
    }

    private static boolean isClosedPipe(String why) {
        return why.toLowerCase(Locale.ROOT).contains("pipe");
    }
}
