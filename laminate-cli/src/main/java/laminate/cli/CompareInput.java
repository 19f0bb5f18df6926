package laminate.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.compare.Candidate;
import laminate.compare.CompareOptions;
import laminate.compare.Refusal;
import laminate.compare.SideBySide;
import laminate.file.InputException;
import laminate.file.Job;
import laminate.file.Overrides;
import laminate.material.Material;
import laminate.material.Materials;
import laminate.material.Resin;
import laminate.process.Process;
import laminate.quote.Terms;
import laminate.unit.Nearest;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/**
 * The ways that are to stand side by side: each moulding by each process, resin and schedule that is asked for. One alone is
 * taken by every process; where the options leave a single way, the part as its file states it stands before it.
 */
final class CompareInput {
    private static final String AS_STATED = "as stated";
    private static final String LIST = "'laminate materials --kind resin' lists them";

    private final PartInput parts;
    private final OptionSpec processes;
    private final OptionSpec resins;
    private final OptionSpec schedules;
    private final OptionSpec reference;

    /** A moulding of a part or project file. */
    private record Moulding(Path file, int index, Job stated) {}

    /** A way to ask for a moulding. */
    private record Way(String name, Moulding moulding, Overrides overrides) {}

    /** Schedules with those in their place, as they are written. */
    private record Replacement(String text, Map<String, String> schedules) {}

    /** Reads NAME=NAME, several with commas between. */
    private static Replacement schedules(String text) {
        Map<String, String> schedules = new LinkedHashMap<>();
        for (String pair : text.split(",", -1)) {
            List<String> names = List.of(pair.split("=", -1));
            if (names.size() != 2 || names.contains("")) {
                throw new TypeConversionException("'" + pair
                        + "' is not NAME=NAME, a schedule of the part and the one that" + " is laid in its place");
            }
            schedules.put(names.get(0).strip(), names.get(1).strip());
        }
        return new Replacement(text, schedules);
    }

    /** Declares files and options of a command. */
    CompareInput(Command command, Materials library) {
        parts = PartInput.withoutProcess(command, library);
        processes = command.listed(
                "--process",
                "PROCESS",
                PartInput.PROCESSES,
                "hand-lay-up, vacuum-bag or infusion for every layer; several with commas, or repeated. For one part alone"
                        + " all three, if not given.");
        resins = command.listed(
                "--resin",
                "RESIN",
                text -> text.strip(),
                "Resin in place of the part's own, by its id; several with commas, or repeated.");
        schedules = command.repeated(
                "--schedule",
                "NAME=NAME",
                CompareInput::schedules,
                "Schedule of the part with the one that is laid in its place; several at once with commas; repeated, each"
                        + " is a way of its own.");
        reference = command.option(
                "--reference", "NAME", String.class, "The way that differences are to, by its name in the results.");
    }

    PartInput parts() {
        return parts;
    }

    /**
     * Compares all ways. One that cannot be read or made stands with its reason, unless none can be.
     *
     * @throws UnusableInputException if a file cannot be used as it stands, or no way can be made
     */
    SideBySide compare(CompareOptions options) {
        List<Moulding> stated = stated();
        Command.all(schedules, Replacement.class).forEach(this::check);
        List<Candidate> candidates = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        for (Way way : ways(stated)) {
            try {
                Job job = read(way);
                candidates.add(new Candidate(
                        way.name(),
                        job.part(),
                        job.workshop(),
                        job.prices(),
                        job.terms().orElse(Terms.AT_COST)));
            } catch (InputException | IllegalArgumentException e) {
                refusals.add(new Refusal(way.name(), e.getMessage().replace('\n', ' ')));
            }
        }
        return compare(first(candidates, refusals), refusals, options);
    }

    private static SideBySide compare(List<Candidate> candidates, List<Refusal> refusals, CompareOptions options) {
        try {
            return SideBySide.of(candidates, options).withRefusals(refusals);
        } catch (IllegalArgumentException e) {
            throw new UnusableInputException(e.getMessage());
        }
    }

    private Job read(Way way) {
        Moulding moulding = way.moulding();
        return parts.read(moulding.file(), way.overrides()).mouldings().get(moulding.index());
    }

    /** Every moulding as its file states it: what is wrong in one file is complained of before any way is tried. */
    private List<Moulding> stated() {
        List<List<Job>> jobs = parts.eachFile(
                work -> work.mouldings().stream().map(this::checked).toList());
        List<Moulding> stated = new ArrayList<>();
        Set<Path> files = new LinkedHashSet<>();
        for (int f = 0; f < jobs.size(); f++) {
            Path file = parts.parts().get(f);
            for (int i = 0; i < jobs.get(f).size() && !files.contains(file); i++) {
                stated.add(new Moulding(file, i, jobs.get(f).get(i)));
            }
            files.add(file);
        }
        return stated;
    }

    private Job checked(Job job) {
        List<String> wrong = new ArrayList<>();
        for (String resin : distinct(resins, String.class)) {
            Optional<Material> found = job.materials().find(resin);
            if (found.isEmpty()) {
                wrong.add("no resin is called " + resin + "; "
                        + didYouMean(resin, job.materials().ids()) + LIST);
            } else if (!(found.get() instanceof Resin)) {
                wrong.add(resin + " is no resin; " + LIST);
            }
        }
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", wrong));
        }
        return job;
    }

    /** A schedule that no file has is a slip, not a way that cannot be. */
    private void check(Replacement replacement) {
        List<String> complaints = new ArrayList<>();
        for (Path file : parts.parts()) {
            try {
                parts.read(file, parts.overrides().withSchedules(replacement.schedules()));
                return;
            } catch (InputException e) {
                complaints.add(e.getMessage());
            }
        }
        throw new UnusableInputException(String.join(System.lineSeparator(), complaints));
    }

    private static String didYouMean(String text, Collection<String> names) {
        return Nearest.of(text, names)
                .map(near -> "did you mean " + near + "? ")
                .orElse("");
    }

    /** What is asked for twice is one way. */
    private static <T> List<T> distinct(OptionSpec option, Class<T> type) {
        return Command.all(option, type).stream().distinct().toList();
    }

    private List<Way> ways(List<Moulding> stated) {
        List<Way> ways = new ArrayList<>();
        boolean many = stated.size() > 1;
        for (Moulding moulding : stated) {
            ways.addAll(asked(many ? moulding.stated().part().name() : "", moulding, many));
        }
        if (ways.size() == 1) {
            ways.add(0, new Way(AS_STATED, ways.get(0).moulding(), parts.overrides()));
        }
        return distinct(ways);
    }

    /** Each moulding by each process, resin and schedule. */
    private List<Way> asked(String part, Moulding moulding, boolean many) {
        List<Way> ways = List.of(new Way(part, moulding, parts.overrides()));
        List<Process> wanted = distinct(processes, Process.class);
        boolean choiceIsLeft = !many
                && wanted.isEmpty()
                && Command.all(resins, String.class).isEmpty()
                && Command.all(schedules, Replacement.class).isEmpty();
        ways = by(choiceIsLeft ? List.of(Process.values()) : wanted, ways, CompareInput::byProcess);
        ways = by(distinct(resins, String.class), ways, CompareInput::byResin);
        return by(distinct(schedules, Replacement.class), ways, CompareInput::bySchedule);
    }

    /** Makes a way of a way. */
    private interface Change<T> {
        Way of(Way way, T choice);
    }

    private static <T> List<Way> by(List<T> choices, List<Way> ways, Change<T> change) {
        if (choices.isEmpty()) {
            return ways;
        }
        List<Way> changed = new ArrayList<>();
        for (Way way : ways) {
            for (T choice : choices) {
                changed.add(change.of(way, choice));
            }
        }
        return changed;
    }

    private static Way byProcess(Way way, Process process) {
        return named(way, process.word(), way.overrides().withProcess(process));
    }

    private static Way byResin(Way way, String resin) {
        return named(way, resin, way.overrides().withResin(resin));
    }

    private static Way bySchedule(Way way, Replacement replacement) {
        return named(way, replacement.text(), way.overrides().withSchedules(replacement.schedules()));
    }

    private static Way named(Way way, String more, Overrides overrides) {
        return new Way(way.name().isEmpty() ? more : way.name() + ", " + more, way.moulding(), overrides);
    }

    /** Ways of one name are told apart by their files. */
    private static List<Way> distinct(List<Way> ways) {
        Set<String> names = new LinkedHashSet<>();
        List<Way> distinct = new ArrayList<>();
        for (Way way : ways) {
            String name = names.contains(way.name())
                    ? way.name() + " (" + way.moulding().file() + ")"
                    : way.name();
            if (names.add(name)) {
                distinct.add(new Way(name, way.moulding(), way.overrides()));
            }
        }
        return distinct;
    }

    /** The way that differences are to stands first. */
    private List<Candidate> first(List<Candidate> candidates, List<Refusal> refusals) {
        String wanted = Command.given(reference, String.class).orElse("");
        if (wanted.isEmpty()) {
            return candidates;
        }
        List<Candidate> ordered = new ArrayList<>(candidates);
        for (Candidate candidate : candidates) {
            if (candidate.name().equals(wanted)) {
                ordered.remove(candidate);
                ordered.add(0, candidate);
                return ordered;
            }
        }
        List<String> names = new ArrayList<>();
        candidates.forEach(candidate -> names.add(candidate.name()));
        refusals.forEach(refusal -> names.add(refusal.name() + " (cannot be)"));
        throw new UnusableInputException("no way is called " + wanted + "; " + didYouMean(wanted, names) + "accepted: "
                + String.join(", ", names));
    }
}
