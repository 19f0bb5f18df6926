package laminate.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import laminate.file.MaterialFile;
import laminate.material.Material;
import laminate.material.Materials;

/**
 * The materials that come with the program. A material is read when it is first asked for, since reading all of them
 * would take most of the time of a small job; then it is kept. May be used by several threads at once.
 */
public final class MaterialLibrary implements Materials {
    private final Map<String, Material> read = new ConcurrentHashMap<>();

    /** A library that has read nothing yet. */
    public MaterialLibrary() {}

    @Override
    public Optional<Material> find(String id) {
        Material known = read.get(id);
        if (known != null || !isId(id)) {
            return Optional.ofNullable(known);
        }
        // Read outside of the map, as a reinforcement asks for its fibres meanwhile; the first to be done wins.
        return text(id + ".yaml").map(text -> {
            Material fresh = MaterialFile.read(id + ".yaml", text, this).get(0);
            Material earlier = read.putIfAbsent(id, fresh);
            return earlier == null ? fresh : earlier;
        });
    }

    @Override
    public List<String> ids() {
        return text("ids.txt")
                .orElseThrow(() -> new IllegalStateException("The material library is incomplete: ids.txt is missing."))
                .lines()
                .toList();
    }

    /** Whether a text can be an id, and not a path out of the library. */
    private static boolean isId(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-');
    }

    private static Optional<String> text(String resource) {
        try (InputStream in = MaterialLibrary.class.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
