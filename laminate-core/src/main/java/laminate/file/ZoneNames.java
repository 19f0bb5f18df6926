package laminate.file;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import laminate.unit.Nearest;

/** The names of a part's zones, by which panels and beams say what they are made of. */
final class ZoneNames {

    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> taken = new HashSet<>();
    private int nameless;

    /** Takes in the name of a zone, which has none until it is read. */
    Reading<String> ofZone() {
        nameless++;
        return new ScalarReading<>() {
            @Override
            String of(String text) {
                add(text.strip());
                return text.strip();
            }
        };
    }

    private void add(String name) {
        nameless--;
        if (!names.add(name)) {
            taken.add(name);
        }
    }

    /**
     * The name of a zone where it is referred to. An unknown one is passed over in silence where zones are without a name
     * that could be read, as that has been complained of.
     */
    Reading<String> known() {
        return new Known();
    }

    private final class Known implements Reading<String> {

        @Override
        public Optional<String> read(Node node, Complaints complaints) {
            Optional<String> name = Scalars.text().read(node, complaints);
            if (name.isEmpty()) {
                return name;
            }
            if (taken.contains(name.get())) {
                complaints.at(node, "more than one zone is called " + name.get() + "; give each a name of its own");
            } else if (names.contains(name.get())) {
                return name;
            } else if (!names.isEmpty() && nameless == 0) {
                complaints.at(node, unknown(name.get()));
            }
            return Optional.empty();
        }
    }

    private String unknown(String name) {
        return Complaints.shown(name) + " is no zone of this part; "
                + Nearest.of(name, names).map(Complaints::didYouMean).orElse("") + "accepted: "
                + String.join(", ", names);
    }
}
