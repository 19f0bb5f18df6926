package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                EstimateCommand.NAME,
                CheckCommand.NAME,
                CompareCommand.NAME,
                MixCommand.NAME,
                JobSheetCommand.NAME,
                InfuseCommand.NAME,
                OrderCommand.NAME,
                QuoteCommand.NAME,
                MaterialsCommand.NAME,
                NewCommand.NAME
            })
    void everyCommandExplainsItselfWithAnExample(String command) {
        for (String option : new String[] {"--help", "-h"}) {
            Run run = laminate(command, option);
            assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
            assertThat(run.err()).isEmpty();
            assertThat(run.out()).startsWith("Usage: laminate " + command).containsPattern("Examples?:\\R  laminate ");
            assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        }
        assertThat(laminate(command, "--version").out()).startsWith("laminate ");
        assertThat(laminate("--help").out()).contains("\n  " + command + " ");
    }

    @Test
    void anUnknownCommandIsAnsweredWithTheNearest() {
        Run run = laminate("estimat", "lid.yaml");
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.err()).contains("laminate estimate");
    }
}
