package laminate.cli;

import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import laminate.file.Job;
import laminate.file.Overrides;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageResin;
import laminate.plan.infusion.MouldingPlan;
import laminate.process.Mixing;
import laminate.process.ShopFloor;
import laminate.process.WorkingDay;
import laminate.process.Workshop;
import laminate.unit.Dimension;
import picocli.CommandLine.Model.OptionSpec;

/** Today's hands, temperature and hours, which win over those of the workshop. */
final class ShopOptions {
    private final Command command;
    private final OptionSpec temperature;
    private final OptionSpec hands;
    private final OptionSpec start;
    private final OptionSpec pumpStroke;

    /** Declares the options of a command. */
    ShopOptions(Command command) {
        this.command = command;
        command.spec()
                .usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(
                        ExitCode.meanings(
                                "the results are written",
                                "a file cannot be used, or a gel time is not known at the temperature or dose",
                                "no mix of a stage is used up in time by the hands, dose, temperature, scales and share of the gel"
                                        + " time that the files state or leave as usual; the results are written all the same"));
        temperature = temperature(command);
        hands = command.option(
                "--hands",
                "NUMBER",
                new WholeNumber(),
                "How many laminate together, 1 to " + ShopFloor.LARGEST_CREW + ".");
        start = command.option("--start", "TIME", new Clock(), "When work begins, as 08:00.");
        pumpStroke = command.option(
                "--pump-stroke",
                "VOLUME",
                new Amounts(Dimension.VOLUME),
                "What a stroke of the catalyst pump gives, as '5 ml': doses are told in strokes too.");
    }

    /** Declares the temperature alone. */
    static OptionSpec temperature(Command command) {
        return command.option(
                "--temperature",
                "TEMPERATURE",
                new Amounts(Dimension.TEMPERATURE),
                "Temperature of workshop and resin, as '22 °C' or 22C.");
    }

    void check() {
        int asked = crew().orElse(1);
        command.refuse(
                asked < 1 || asked > ShopFloor.LARGEST_CREW,
                "--hands must be 1 to " + ShopFloor.LARGEST_CREW + ", not " + asked
                        + ": it is how many laminate together on one moulding");
        double stroke = Command.given(pumpStroke, Double.class).orElse(1.0);
        command.refuse(!(stroke > 0), "--pump-stroke must be above zero");
    }

    private Optional<Integer> crew() {
        return Command.given(hands, Integer.class);
    }

    /** With the temperature and the hands that are asked for. */
    Overrides addTo(Overrides overrides) {
        Overrides asked = overrides;
        if (Command.given(temperature, Double.class).isPresent()) {
            asked = asked.withTemperature(
                    Command.given(temperature, Double.class).get());
        }
        return crew().isPresent() ? asked.withCrew(crew().get()) : asked;
    }

    /**
     * The plan of a job, whose resins all cure at the temperature and dose asked for.
     *
     * @throws IllegalArgumentException if one of them is known to gel at other temperatures or doses alone
     */
    MouldingPlan plan(Job job) {
        MouldingPlan plan = planAnyway(job);
        Set<String> refused = new LinkedHashSet<>();
        for (Stage stage : plan.mixes().stages()) {
            for (StageResin resin : stage.resins()) {
                if (resin.gelTime().isEmpty()) {
                    resin.problem().ifPresent(refused::add);
                }
            }
        }
        if (!refused.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", refused));
        }
        return plan;
    }

    /** The plan of a job, though no gel time be known. */
    MouldingPlan planAnyway(Job job) {
        return MouldingPlan.of(job.estimate(), workshop(job));
    }

    /**
     * What plans come to: whoever does not read them is told as well that one cannot be followed as it stands, but only
     * after they are written.
     */
    int verdict(List<MixPlan> plans) {
        int exitCode = ExitCode.DONE;
        for (MixPlan plan : plans) {
            if (!plan.fits()) {
                command.spec()
                        .commandLine()
                        .getErr()
                        .println(plan.part() + ": not every stage has mixes that fit; the plan says why");
                exitCode = ExitCode.REQUIREMENT_NOT_MET;
            }
        }
        return exitCode;
    }

    /** The workshop of a job with the hours and the pump that are asked for. */
    private Workshop workshop(Job job) {
        ShopFloor floor = job.workshop().shopFloor();
        Optional<LocalTime> begin = Command.given(start, LocalTime.class);
        if (begin.isPresent()) {
            floor = floor.with(new WorkingDay(begin.get(), floor.day().length()));
        }
        Optional<Double> stroke = Command.given(pumpStroke, Double.class);
        if (stroke.isPresent()) {
            floor = floor.with(pumping(floor.mixing(), stroke.get()));
        }
        return job.workshop().withShopFloor(floor);
    }

    private static Mixing pumping(Mixing mixing, double stroke) {
        return new Mixing(
                mixing.usableShare(),
                mixing.resinStep(),
                mixing.agentStep(),
                OptionalDouble.of(stroke),
                mixing.largestMix(),
                mixing.mixingTime());
    }
}
