package laminate.file;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.part.Layer;
import laminate.unit.Nearest;

/**
 * The schedules of a part by name. A schedule is read anew wherever it is used, as the resin and process of its layers are
 * those of the place; one that could not be read is passed over in silence the next time.
 */
final class Schedules {

    private final Map<String, Node.Entry> byName = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();
    private final Set<String> flawed = new HashSet<>();
    private final Map<String, String> inPlace = new HashMap<>();

    /** Takes the schedules in, unread. */
    static Reading<Schedules> reading() {
        return new ShapedReading<>(Node.Mapping.class) {
            @Override
            Optional<Schedules> readShaped(Node.Mapping all, Complaints complaints) {
                Schedules schedules = new Schedules();
                for (Node.Entry entry : all.entries().values()) {
                    Optional<String> name = Scalars.id().read(entry.key(), complaints);
                    if (name.isPresent()) {
                        schedules.byName.put(name.get(), entry);
                    }
                }
                boolean allAreNamed = schedules.byName.size() == all.entries().size();
                return allAreNamed ? Optional.of(schedules) : Optional.empty();
            }

            @Override
            String wanted() {
                return "a group of schedules by name is wanted, as in {shell: [mat-300]}";
            }
        };
    }

    /** Takes in which schedules stand to choice in the place of others, so that they are not missed where they lie. */
    Reading<Map<String, List<String>>> alternatives() {
        Reading<String> other = known().map(name -> {
            used.add(name);
            return name;
        });
        return Reading.mapOf(known(), Reading.oneOrList(other));
    }

    private Reading<String> known() {
        return (node, complaints) -> {
            Optional<String> name = Scalars.id().read(node, complaints);
            if (name.isPresent() && !has(name.get())) {
                complaints.at(node, unknown(name.get()));
                return Optional.empty();
            }
            return name;
        };
    }

    /** Lays the layers of other schedules in the place of some, as was asked from outside of the file. */
    void replace(Map<String, String> asked, Node part, Complaints complaints) {
        for (Map.Entry<String, String> one : asked.entrySet()) {
            for (String name : List.of(one.getKey(), one.getValue())) {
                if (!has(name)) {
                    complaints.at(part, "schedules asked for: " + unknown(name));
                }
                used.add(name);
            }
        }
        inPlace.putAll(asked);
    }

    boolean has(String name) {
        return byName.containsKey(name);
    }

    /** The layers of a schedule where it is used. */
    Reading<List<Layer>> use(Surroundings around, LayerReader layers) {
        return (node, complaints) -> {
            Optional<String> name = Scalars.id().read(node, complaints);
            return name.isEmpty() ? Optional.empty() : use(name.get(), node, around, layers, complaints);
        };
    }

    /** One that is laid in place of another may hold that other: inside of it, this is itself. */
    private String instead(String name, Surroundings around) {
        String other = inPlace.getOrDefault(name, name);
        return has(other) && !around.schedules().contains(other) ? other : name;
    }

    private Optional<List<Layer>> use(
            String written, Node node, Surroundings around, LayerReader layers, Complaints complaints) {
        used.add(written);
        String name = has(written) ? instead(written, around) : written;
        if (!has(name)) {
            complaints.at(node, unknown(name));
        } else if (around.schedules().contains(name)) {
            complaints.at(node, "the schedule " + name + " would hold itself; write its layers out");
            flawed.add(name);
        } else if (!flawed.contains(name)) {
            return read(name, around.inSchedule(name), layers, complaints);
        }
        return Optional.empty();
    }

    private Optional<List<Layer>> read(String name, Surroundings inside, LayerReader layers, Complaints complaints) {
        Optional<List<Layer>> read = layers.list(inside).read(byName.get(name).value(), complaints);
        if (read.isEmpty()) {
            flawed.add(name);
        }
        return read;
    }

    private String unknown(String name) {
        return Complaints.shown(name) + " is no schedule of this part; "
                + Nearest.of(name, byName.keySet()).map(Complaints::didYouMean).orElse("")
                + (byName.isEmpty()
                        ? "schedules: with their layers are wanted in the part file"
                        : "accepted: " + String.join(", ", byName.keySet()));
    }

    /** Complains of schedules that no zone uses: most likely one was forgotten. */
    void complainOfUnused(Complaints complaints) {
        for (String name : byName.keySet()) {
            if (!used.contains(name)) {
                complaints.at(
                        byName.get(name).key(),
                        "the schedule " + name + " is never used; use it by {schedule: " + name
                                + "}, name it under alternatives: as a choice to compare, or take it out");
            }
        }
    }
}
