package laminate.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Takes results to standard output or to a file. A file is written whole or not at all: beside it first, then moved
 * into its place, so that a reader never finds half of it and a failure leaves the old one.
 */
final class Output {

    /** What prints. */
    interface Print {
        /**
         * Prints.
         *
         * @param out takes the text
         * @throws IOException if that fails
         */
        void to(Appendable out) throws IOException;
    }

    /** What writes bytes. */
    interface Write {
        /**
         * Writes.
         *
         * @param out takes the bytes
         * @throws IOException if that fails
         */
        void to(OutputStream out) throws IOException;
    }

    private Output() {}

    /**
     * Prints to a file, or to standard output where none is given.
     *
     * @param file the file, empty for standard output
     * @param out standard output
     * @param print what prints
     * @throws UnusableInputException if the file cannot be written
     */
    static void write(Optional<Path> file, PrintWriter out, Print print) {
        if (file.isPresent()) {
            write(file.get(), bytes -> printTo(bytes, print));
            return;
        }
        try {
            print.to(out);
            out.flush();
        } catch (IOException e) {
            throw cannotBeWritten("standard output", e);
        }
    }

    /**
     * Writes bytes to a file.
     *
     * @param file the file
     * @param write what writes
     * @throws UnusableInputException if the file cannot be written
     */
    static void write(Path file, Write write) {
        try {
            writeFile(file, write);
        } catch (IOException e) {
            throw cannotBeWritten(file.toString(), e);
        }
    }

    private static UnusableInputException cannotBeWritten(String where, IOException why) {
        return new UnusableInputException(where + ": cannot be written: " + reason(why));
    }

    private static void printTo(OutputStream bytes, Print print) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8.newEncoder()));
        print.to(writer);
        writer.flush();
    }

    private static void writeFile(Path file, Write write) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            writeThrough(file, write);
            return;
        }
        // A link stays a link to the file that it names.
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path beside = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(beside)) {
                write.to(out);
            }
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** A device or pipe cannot be replaced. */
    private static void writeThrough(Path file, Write write) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a folder");
        }
        try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.WRITE)) {
            write.to(out);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        if (e instanceof AccessDeniedException) {
            return "permission is denied";
        }
        String why = e instanceof FileSystemException named ? named.getReason() : e.getMessage();
        return why == null ? e.getClass().getSimpleName() : why;
    }
}
