package laminate.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Loads the text of a file, or says why it cannot be had. */
final class SourceFile {

    /**
     * The largest file read (bytes). A part with 5,000 zones takes about 2 MB; more than 16 MiB is a file given by
     * mistake, and reading it on would only use up memory.
     */
    static final int LARGEST = 16 * 1024 * 1024;

    private static final int BYTE = 0xFF;

    private final Position whole;
    private final String wanted;
    private final Complaints complaints;

    private SourceFile(String name, Keys root, Complaints complaints) {
        this.whole = Position.wholeFile(name.isBlank() ? "." : name);
        this.wanted = root.aKind();
        this.complaints = complaints;
    }

    static Optional<SourceText> load(Path path, Keys root, Complaints complaints) {
        return new SourceFile(path.toString(), root, complaints).load(path);
    }

    private Optional<SourceText> load(Path path) {
        if (Files.isDirectory(path)) {
            return refuse("this is a directory; the name of " + wanted + " is wanted");
        }
        // Bounded reading instead of asking for the size: pipes and devices have none.
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            return bytes.length > LARGEST
                    ? refuse("the file is larger than 16 MiB; " + wanted + " is text of a few kB")
                    : decode(bytes);
        } catch (NoSuchFileException e) {
            return refuse("there is no such file; the name of " + wanted + " is wanted");
        } catch (AccessDeniedException e) {
            return refuse("the file may not be read; give yourself the right to read it");
        } catch (FileSystemException e) {
            return refuse("the file cannot be read (" + e.getReason() + "); " + wanted + " is wanted");
        } catch (IOException e) {
            return refuse(
                    "the file cannot be read (" + e.getMessage() + "); " + wanted + " on a readable disk is wanted");
        }
    }

    private Optional<SourceText> decode(byte[] bytes) {
        Optional<String> other = otherEncoding(bytes);
        if (other.isPresent()) {
            return refuse("the file is in " + other.get() + "; save it as UTF-8");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        SourceText source = new SourceText(whole.file(), text);
        if (result.isError()) {
            complainOfByte(source, bytes[in.position()]);
            return Optional.empty();
        }
        return Optional.of(source);
    }

    private void complainOfByte(SourceText readSoFar, byte wrong) {
        Position place = readSoFar.position(readSoFar.text().length());
        String meant = new String(new byte[] {wrong}, Charset.forName("windows-1252"));
        String hint = meant.isBlank() || meant.charAt(0) == '\uFFFD' ? "" : " (in Windows-1252 it is '" + meant + "')";
        complaints.at(
                place,
                String.format(
                        Locale.ROOT, "byte 0x%02X is not UTF-8 text%s; save the file as UTF-8", wrong & BYTE, hint));
    }

    /** UTF-16 and UTF-32 by their byte order mark, or by the zero byte that every Latin letter has in them. */
    private static Optional<String> otherEncoding(byte[] bytes) {
        int first = bytes.length > 0 ? bytes[0] & BYTE : -1;
        int second = bytes.length > 1 ? bytes[1] & BYTE : -1;
        boolean marked = first == 0xFF && second == 0xFE || first == 0xFE && second == 0xFF;
        if (marked || first == 0 && second > 0 || first > 0 && second == 0) {
            return Optional.of(bytes.length > 3 && bytes[2] == 0 && bytes[3] == 0 ? "UTF-32" : "UTF-16");
        }
        return first == 0 && second == 0 ? Optional.of("UTF-32, or no text at all") : Optional.empty();
    }

    private Optional<SourceText> refuse(String message) {
        complaints.at(whole, message);
        return Optional.empty();
    }
}
