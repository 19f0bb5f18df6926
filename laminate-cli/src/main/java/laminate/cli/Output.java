package laminate.cli;

import java.io.BufferedWriter;
import java.io.IOException;
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
        try {
            if (file.isPresent()) {
                writeFile(file.get(), print);
            } else {
                print.to(out);
                out.flush();
            }
        } catch (IOException e) {
            String where = file.map(Path::toString).orElse("standard output");
            throw new UnusableInputException(where + ": cannot be written: " + reason(e));
        }
    }

    private static void writeFile(Path file, Print print) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            writeThrough(file, print);
            return;
        }
        // A link stays a link to the file that it names.
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path beside = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (Writer writer = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
                print.to(writer);
            }
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** A device or pipe cannot be replaced. */
    private static void writeThrough(Path file, Print print) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a folder");
        }
        try (BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.WRITE)) {
            print.to(writer);
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
