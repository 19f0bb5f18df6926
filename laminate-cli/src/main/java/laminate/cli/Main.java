package laminate.cli;

import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import laminate.library.MaterialLibrary;
import laminate.material.Materials;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;

/**
 * The command line: hands the arguments to a command, and its outcome to the shell.
 *
 * <p>Results go to standard output, complaints to standard error, both in UTF-8 whatever the locale, since a file of
 * results is read on other machines too.
 */
public final class Main {

    private static final int LINE_WIDTH = 80;

    private static final String PROGRAM = "laminate";

    private static final List<String> NAMES = List.of(
            EstimateCommand.NAME,
            CheckCommand.NAME,
            CompareCommand.NAME,
            MixCommand.NAME,
            JobSheetCommand.NAME,
            InfuseCommand.NAME,
            OrderCommand.NAME,
            QuoteCommand.NAME,
            MaterialsCommand.NAME,
            NewCommand.NAME);

    /** What nearly every part is made of: read in another thread while the command line is made out. */
    private static final List<String> USUAL = List.of("e-glass");

    private Main() {}

    /**
     * Runs the program and ends the process with its exit code.
     *
     * @param args the arguments of the command line
     */
    public static void main(String[] args) {
        leaveOutConverters();
        StandardOutput stream = new StandardOutput();
        PrintWriter out = utf8(stream);
        PrintWriter err = utf8(new FileOutputStream(FileDescriptor.err));
        int exitCode = run(out, err, Ansi.AUTO, args);
        out.flush();
        if (stream.failure().isPresent()) {
            err.println("laminate: standard output cannot be written: "
                    + stream.failure().get());
            exitCode = ExitCode.UNUSABLE_INPUT;
        }
        err.flush();
        System.exit(exitCode);
    }

    /**
     * Keeps picocli from loading types of options that no command has, such as those of dates and databases: java.lang and
     * java.nio are enough. It would take a tenth of the time of a small job.
     */
    private static void leaveOutConverters() {
        System.setProperty("picocli.converters.excludes", "java\\.[^ln].*");
    }

    /**
     * Runs the program within this process, without colours.
     *
     * @param out takes the results
     * @param err takes the complaints
     * @param args the arguments of the command line
     * @return the exit code: 0 done, 1 the input cannot be used, 2 wrong usage, 3 a requirement that the input itself
     *     sets is not met
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(out, err, Ansi.OFF, args);
    }

    private static int run(PrintWriter out, PrintWriter err, Ansi ansi, String... args) {
        String asked = args.length == 0 ? "" : args[0];
        Materials library = new MaterialLibrary();
        if (readsParts(asked)) {
            library.expect(USUAL);
        }
        Optional<Command> command = command(asked, library);
        return command.isPresent()
                ? execute(command.get().alone(PROGRAM), out, err, ansi, Arrays.copyOfRange(args, 1, args.length))
                : execute(wholeProgram(library), out, err, ansi, args);
    }

    private static boolean readsParts(String name) {
        return NAMES.contains(name) && !name.equals(MaterialsCommand.NAME) && !name.equals(NewCommand.NAME);
    }

    private static int execute(CommandLine line, PrintWriter out, PrintWriter err, Ansi ansi, String... args) {
        Complaints complaints = new Complaints();
        return line.setOut(out)
                .setErr(err)
                .setColorScheme(Help.defaultColorScheme(ansi))
                .setUsageHelpWidth(LINE_WIDTH)
                .setParameterExceptionHandler(complaints)
                .setExecutionExceptionHandler(complaints)
                .execute(args);
    }

    /** The command of a name: it alone is made ready where it is asked for. */
    private static Optional<Command> command(String name, Materials library) {
        return Optional.ofNullable(
                switch (name) {
                    case EstimateCommand.NAME -> new EstimateCommand(library);
                    case CheckCommand.NAME -> new CheckCommand(library);
                    case CompareCommand.NAME -> new CompareCommand(library);
                    case MixCommand.NAME -> new MixCommand(library);
                    case JobSheetCommand.NAME -> new JobSheetCommand(library);
                    case InfuseCommand.NAME -> new InfuseCommand(library);
                    case OrderCommand.NAME -> new OrderCommand(library);
                    case QuoteCommand.NAME -> new QuoteCommand(library);
                    case MaterialsCommand.NAME -> new MaterialsCommand();
                    case NewCommand.NAME -> new NewCommand();
                    default -> null;
                });
    }

    private static CommandLine wholeProgram(Materials library) {
        CommandLine program = new Program().line();
        for (String name : NAMES) {
            command(name, library).ifPresent(command -> program.addSubcommand(command.line()));
        }
        return program;
    }

    /** The program itself: without a command there is nothing to do. */
    private static final class Program extends Command {
        Program() {
            super(
                    PROGRAM,
                    "Composite laminate schedules: thickness, weight, stiffness, strength, resin, mixes, cost and price.",
                    "laminate new lid.yaml",
                    "laminate estimate lid.yaml",
                    "laminate check lid.yaml",
                    "laminate compare lid.yaml",
                    "laminate mix lid.yaml --temperature 22C",
                    "laminate quote lid.yaml --count 1,10",
                    "laminate estimate --help");
            spec().usageMessage().commandListHeading("%nCommands:%n");
        }

        @Override
        public Integer call() {
            throw new ParameterException(spec().commandLine(), "Which command? None is given.");
        }
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)));
    }
}
