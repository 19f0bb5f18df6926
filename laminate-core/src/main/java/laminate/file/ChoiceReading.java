package laminate.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.unit.Nearest;

/** Reads a mapping that is one of several kinds. */
abstract class ChoiceReading<T> extends ShapedReading<Node.Mapping, T> {

    final List<Reading.Choice<T>> choices;

    private ChoiceReading(List<Reading.Choice<T>> choices) {
        super(Node.Mapping.class);
        this.choices = choices;
    }

    @Override
    final String wanted() {
        return "a group of keys is wanted";
    }

    final List<String> words() {
        return Reading.Choice.words(choices);
    }

    /** Its kind shows in which of several keys it holds. */
    static final class ByKey<T> extends ChoiceReading<T> {

        private final String kind;

        ByKey(String kind, List<Reading.Choice<T>> choices) {
            super(choices);
            this.kind = kind;
        }

        @Override
        Optional<T> readShaped(Node.Mapping mapping, Complaints complaints) {
            List<Reading.Choice<T>> held = new ArrayList<>();
            for (Reading.Choice<T> choice : choices) {
                if (mapping.entries().containsKey(choice.word())) {
                    held.add(choice);
                }
            }
            if (held.size() == 1) {
                return held.get(0).read(mapping, complaints);
            }
            complaints.at(mapping, held.isEmpty() ? noneOf(mapping) : together(held));
            return Optional.empty();
        }

        private String noneOf(Node.Mapping mapping) {
            Optional<String> meant = mapping.entries().keySet().stream()
                    .flatMap(key -> Nearest.of(key, words()).stream())
                    .findFirst();
            return "no key tells what " + kind + " this is; "
                    + meant.map(Complaints::didYouMean).orElse("") + "one of these is wanted: "
                    + String.join(", ", words());
        }

        private static String together(List<? extends Reading.Choice<?>> held) {
            return String.join(" and ", Reading.Choice.words(held)) + " stand together; only one of them is accepted";
        }
    }

    /** Its kind is told by the word after one key. */
    static final class ByWord<T> extends ChoiceReading<T> {

        private final String key;
        private final Reading<String> word;

        ByWord(String key, List<Reading.Choice<T>> choices) {
            super(choices);
            this.key = key;
            this.word = Scalars.word(words());
        }

        @Override
        Optional<T> readShaped(Node.Mapping mapping, Complaints complaints) {
            Node.Entry entry = mapping.entries().get(key);
            if (entry == null) {
                complaints.at(mapping, key + " is missing; add " + key + ": with one of " + String.join(", ", words()));
                return Optional.empty();
            }
            Optional<String> found = word.read(entry.value(), complaints);
            return found.isEmpty() ? Optional.empty() : choice(found.get()).read(mapping, complaints);
        }

        private Reading.Choice<T> choice(String found) {
            return choices.get(words().indexOf(found));
        }
    }
}
