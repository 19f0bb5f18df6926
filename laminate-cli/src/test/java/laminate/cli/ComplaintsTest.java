package laminate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class ComplaintsTest {

    private final StringWriter err = new StringWriter();

    @Test
    void aUsersSlipIsAnsweredWithItsMessageAlone() {
        assertThat(failingWith(new UnusableInputException("part.yaml:3:7: unknown key 'arae'; did you mean 'area'?")))
                .isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(err.toString().lines()).containsExactly("part.yaml:3:7: unknown key 'arae'; did you mean 'area'?");
    }

    @Test
    void aFaultOfTheProgramComesWithItsStackTrace() {
        assertThat(failingWith(new IllegalStateException("thickness is NaN"))).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(err.toString())
                .startsWith("laminate: a fault of the program, not of your input.")
                .contains("java.lang.IllegalStateException: thickness is NaN", "at laminate.cli.ComplaintsTest");
    }

    private int failingWith(RuntimeException cause) {
        return new CommandLine(new Failing(cause))
                .setErr(new PrintWriter(err, true))
                .setExecutionExceptionHandler(new Complaints())
                .execute();
    }

    @Command(name = "failing")
    private record Failing(RuntimeException cause) implements Runnable {
        @Override
        public void run() {
            throw cause;
        }
    }
}
