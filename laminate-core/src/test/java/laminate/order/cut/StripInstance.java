package laminate.order.cut;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A published instance: pieces that fill a strip of the width exactly to the optimum.
 *
 * @param name name of the instance
 * @param width width of the strip
 * @param optimum the length that the pieces fill without waste
 * @param pieces the pieces
 */
record StripInstance(String name, double width, double optimum, List<Piece> pieces) {
    private static final String FILE = "/reference/strip-packing.csv";

    /** All instances of the file, with pieces that turn in that way. */
    static List<StripInstance> all(Turn turn) {
        Map<String, StripInstance> all = new LinkedHashMap<>();
        for (String line : lines()) {
            if (!line.startsWith("#") && !line.startsWith("instance,")) {
                add(all, line.split(","), turn);
            }
        }
        return List.copyOf(all.values());
    }

    private static void add(Map<String, StripInstance> all, String[] row, Turn turn) {
        StripInstance instance = all.computeIfAbsent(
                row[0],
                name -> new StripInstance(
                        name, Double.parseDouble(row[1]), Double.parseDouble(row[2]), new ArrayList<>()));
        String number = row[0] + " no " + (instance.pieces.size() + 1);
        instance.pieces.add(new Piece(number, Double.parseDouble(row[3]), Double.parseDouble(row[4]), turn));
    }

    private static List<String> lines() {
        try (InputStream file = StripInstance.class.getResourceAsStream(FILE)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
