package laminate.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.process.FibreContent;

/**
 * What holds for a layer by where it stands.
 *
 * @param terms process, resin and agents
 * @param content the fibre content that the zone states for all its layers
 * @param stage the name of the stage, empty text outside of any
 * @param schedules the schedules that this is inside of, outermost first
 */
record Surroundings(Terms terms, Optional<Located<FibreContent>> content, String stage, List<String> schedules) {

    Surroundings inStage(String name, Terms inner) {
        return new Surroundings(inner, content, name, schedules);
    }

    Surroundings inSchedule(String name) {
        List<String> deeper = new ArrayList<>(schedules);
        deeper.add(name);
        return new Surroundings(terms, content, stage, deeper);
    }
}
