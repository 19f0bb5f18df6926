package laminate.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The command line: hands the arguments to a command, and its outcome to the shell.
 *
 * <p>Results go to standard output, complaints to standard error, both in UTF-8 whatever the locale, since a file of
 * results is read on other machines too.
 */
@Command(
        name = "laminate",
        description = "Composite laminate schedules: thickness, weight, stiffness, resin and cost.",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT)
public final class Main implements Runnable {

    private static final int LINE_WIDTH = 80;

    @Spec
    private CommandSpec spec;

    private Main() {}

    /**
     * Runs the program and ends the process with its exit code.
     *
     * @param args the arguments of the command line
     */
    public static void main(String[] args) {
        PrintWriter out = utf8(FileDescriptor.out);
        PrintWriter err = utf8(FileDescriptor.err);
        int exitCode = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(exitCode);
    }

    /**
     * Runs the program within this process.
     *
     * @param out takes the results
     * @param err takes the complaints
     * @param args the arguments of the command line
     * @return the exit code: 0 done, 1 the input cannot be used, 2 wrong usage, 3 a requirement that the input itself
     *     sets is not met
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        Complaints complaints = new Complaints();
        return new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(LINE_WIDTH)
                .setParameterExceptionHandler(complaints)
                .setExecutionExceptionHandler(complaints)
                .execute(args);
    }

    /** Without a command there is nothing to do. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? None is given.");
    }

    private static PrintWriter utf8(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
    }
}
