package laminate.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says on standard error why a command did not do its work. A user's slip is answered in a line or two; a stack trace
 * means a fault of the program.
 *
 * <p>A class, and not two lambdas, because the archive that speeds up the start holds no lambda of an interface as old
 * as these.
 */
final class Complaints implements IParameterExceptionHandler, IExecutionExceptionHandler {

    /** Makes the one that a program needs. */
    Complaints() {}

    @Override
    public int handleParseException(ParameterException slip, String[] args) {
        CommandLine command = slip.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("laminate: " + slip.getMessage());
        UnmatchedArgumentException.printSuggestions(slip, err);
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.WRONG_USAGE;
    }

    @Override
    public int handleExecutionException(Exception cause, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (cause instanceof UnusableInputException) {
            err.println(cause.getMessage());
        } else {
            err.println("laminate: a fault of the program, not of your input. Please report what follows.");
            cause.printStackTrace(err);
        }
        return ExitCode.UNUSABLE_INPUT;
    }
}
