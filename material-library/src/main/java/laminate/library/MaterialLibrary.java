package laminate.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import laminate.file.MaterialFile;
import laminate.material.Material;
import laminate.material.Materials;

/**
 * The materials that come with the program. A material is read when it is first asked for, since reading all of them
 * would take most of the time of a small job; then it is kept. May be used by several threads at once.
 */
public final class MaterialLibrary implements Materials {
    private final Map<String, FutureTask<Optional<Material>>> read = new ConcurrentHashMap<>();
    private final Set<String> expected = ConcurrentHashMap.newKeySet();

    /** A library that has read nothing yet. */
    public MaterialLibrary() {}

    @Override
    public Optional<Material> find(String id) {
        if (!isId(id)) {
            return Optional.empty();
        }
        FutureTask<Optional<Material>> task = task(id);
        task.run(); // does nothing where another thread has begun
        return done(task, id);
    }

    /** Begins to read in a thread of its own, so that another processor works while the caller goes on. */
    @Override
    public void expect(Collection<String> ids) {
        List<String> fresh = new ArrayList<>();
        for (String id : ids) {
            if (isId(id) && expected.add(id)) {
                fresh.add(id);
            }
        }
        if (!fresh.isEmpty()) {
            Thread ahead = new Thread(() -> readAhead(fresh), "material library");
            ahead.setDaemon(true);
            ahead.start();
        }
    }

    /** What cannot be read is told to whoever asks for it. */
    private void readAhead(List<String> ids) {
        for (String id : ids) {
            task(id).run();
        }
    }

    private FutureTask<Optional<Material>> task(String id) {
        FutureTask<Optional<Material>> known = read.get(id);
        if (known != null) {
            return known;
        }
        FutureTask<Optional<Material>> fresh = new FutureTask<>(() -> material(id));
        FutureTask<Optional<Material>> earlier = read.putIfAbsent(id, fresh);
        return earlier == null ? fresh : earlier;
    }

    private Optional<Material> material(String id) {
        Optional<Material> found = text(id + ".json")
                .map(text -> MaterialFile.read(id + ".json", text, this).get(0));
        if (found.isEmpty()) {
            read.remove(id);
        }
        return found;
    }

    private Optional<Material> done(FutureTask<Optional<Material>> task, String id) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return material(id);
        } catch (ExecutionException e) {
            throw new IllegalStateException(
                    "The material library is damaged: " + id + " cannot be read.", e.getCause());
        }
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
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-')) {
                return false;
            }
        }
        return !text.isEmpty();
    }

    private static Optional<String> text(String resource) {
        try (InputStream in = MaterialLibrary.class.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
