package laminate.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.material.Material;
import laminate.material.Materials;

/** A place for tests to put files and read them with a small stock of materials. */
final class Bench {

    private static final Path RESOURCES = Path.of("src/test/resources/laminate/file");

    /** The materials of {@code stock.yaml}. */
    static final Materials STOCK =
            Materials.of(MaterialFile.read(RESOURCES.resolve("stock.yaml"), Materials.of(List.of())));

    /** What only the mat costs, so that sums are easy to follow. */
    static final String PRICE_OF_MAT = """
            currency: GBP
            prices:
              - {material: mat-300, price: 10 GBP/kg}
              - {material: polyester-ortho, price: 0 GBP/kg}
              - {material: mekp, price: 0 GBP/kg}
            """;

    static final String WITHOUT_ZONES = """
            part: Bow locker lid
            process: hand lay-up
            resin: polyester-ortho
            """;

    private final Path folder;

    Bench(Path folder) {
        this.folder = folder;
    }

    static Path resource(String name) {
        return RESOURCES.resolve(name);
    }

    Path put(String name, String text) {
        try {
            return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Job read(String text) {
        return read(text, Overrides.NONE);
    }

    Job read(String text, Overrides overrides) {
        return PartFile.read(put("part.yaml", text), STOCK, overrides);
    }

    /** A part of one zone with these layers, as a flow list without its brackets. */
    Job layers(String layers) {
        return read(WITHOUT_ZONES + "zones: [{name: lid, area: 1 m², layers: [" + layers + "]}]\n");
    }

    /** The complaints about a part, each without its folder. */
    List<String> complaints(String text) {
        return complaints(() -> read(text));
    }

    List<String> complaints(Runnable reading) {
        try {
            reading.run();
            return List.of();
        } catch (InputException e) {
            return e.complaints().stream()
                    .map(complaint -> complaint.toString().replace(folder + "/", ""))
                    .toList();
        }
    }

    /** A stock that notes what is asked for. */
    static final class Watched implements Materials {
        final Set<String> loaded = new HashSet<>();

        @Override
        public Optional<Material> find(String id) {
            Optional<Material> found = STOCK.find(id);
            found.ifPresent(material -> loaded.add(material.id()));
            return found;
        }

        @Override
        public List<String> ids() {
            return STOCK.ids();
        }
    }
}
