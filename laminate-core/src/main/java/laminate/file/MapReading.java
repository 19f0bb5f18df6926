package laminate.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads a mapping whose keys are the user's own words, in the order of the file. */
class MapReading<K, V> extends ShapedReading<Node.Mapping, Map<K, V>> {

    private final Reading<K> key;
    private final Reading<V> value;

    MapReading(Reading<K> key, Reading<V> value) {
        super(Node.Mapping.class);
        this.key = key;
        this.value = value;
    }

    @Override
    Optional<Map<K, V>> readShaped(Node.Mapping mapping, Complaints complaints) {
        Map<K, V> values = new LinkedHashMap<>();
        for (Node.Entry entry : mapping.entries().values()) {
            Optional<K> name = key.read(entry.key(), complaints);
            Optional<V> held = value.read(entry.value(), complaints);
            if (name.isPresent() && held.isPresent() && values.put(name.get(), held.get()) != null) {
                complaints.at(
                        entry.key(),
                        Complaints.shown(entry.key().text()) + " is given before in other words; each may stand once");
            }
        }
        return values.size() == mapping.entries().size() ? Optional.of(values) : Optional.empty();
    }

    @Override
    String wanted() {
        return "a group of keys is wanted";
    }
}
