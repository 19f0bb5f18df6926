package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    private static final String LID = """
            part: Lid
            process: hand lay-up
            resin: polyester-ortho
            zones:
              - {name: top, area: 1 m², layers: [mat-300, mat-450], load-cases: [{name: pull, Nx: 8 N/mm}]}
              - {name: rim, area: 0.2 m², layers: [mat-450, roving-600, mat-450]}
            panels:
              - {name: middle, zone: top, length: 300 mm, width: 200 mm, edges: clamped, pressure: 1 kPa}
            limits: {deflection: 1/50 span, reserve-factor: {first-ply: 1.5}}
            """;

    @TempDir
    private Path folder;

    private Path lid;
    private Path weak;

    @BeforeEach
    void writeTheParts() throws IOException {
        lid = write("lid.yaml", LID);
        weak = write(
                "weak.yaml", LID.replace("first-ply: 1.5", "first-ply: 100").replace("part: Lid", "part: Weak"));
    }

    @Test
    void limitsThatAreMetAreZero() {
        Run run = laminate("check", lid);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith("Lid\n===\nlimits           3 met\n");
    }

    @Test
    void aMissIsThreeAfterTheResultsAreWritten() {
        Path result = folder.resolve("result.txt");
        Run run = laminate("check", lid, weak, "-o", result);
        assertThat(run.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).containsExactly("Weak: 2 of 3 limits not met");
        assertThat(result).content().contains("Lid\n===", "Weak\n====", "What would mend it", "strength of the layers");
        assertThat(laminate("check", weak, "--format", "json").exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
    }

    @Test
    void aPartThatAsksNothingIsToldHowToAsk() throws IOException {
        Path idle = write("idle.yaml", """
                part: Idle
                process: hand lay-up
                resin: polyester-ortho
                zones: [{name: top, area: 1 m², layers: [mat-300]}, {name: rim, area: 1 m², layers: [mat-450]}]
                """);
        Run run = laminate("check", idle, lid);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("Idle: there is nothing to check.")
                .contains("load-cases:", "panels:", "limits:");
        String example = run.err()
                .substring(run.err().indexOf("  zones:"))
                .stripTrailing()
                .stripIndent();
        Path asking = write(
                "asking.yaml",
                "part: Asking\nprocess: hand lay-up\nresin: polyester-ortho\n"
                        + example.replace(
                                "name: lid\n",
                                "name: lid\n    area: 1 m²\n    layers: [{times: 12, layers: [mat-450]}]\n"));
        assertThat(laminate("check", asking).exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(laminate("check", idle, "--reference", "top").exitCode()).isEqualTo(ExitCode.DONE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json     | {", "csv      | part,of,name,zone,ply,", "markdown | # Lid", "text     | Lid"})
    void printsTheFormatAskedFor(String format, String start) {
        assertThat(laminate("check", lid, "--format", format).out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({"plies,part;of;name;zone;ply", "panels,part;panel", "beams,part;beam", "limits,part;of;name;zone;limit"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("check", lid, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void whatIsAskedForWins() throws IOException {
        Path warm = write("warm.yaml", LID.replace("Nx: 8 N/mm", "Nx: 8 N/mm, temperature-change: -60 K"));
        assertThat(laminate("check", lid, "--criterion", "hashin").out()).contains("criterion        Hashin for plies");
        assertThat(laminate("check", lid, "--criterion", "max-stress").out()).contains("criterion        max stress");
        assertThat(laminate("check", warm, "--no-residual-stress").out())
                .contains("residual stress  left out", "temperature change -60.0 K");
        assertThat(laminate("check", lid, "--large-deflection").out()).contains("large deflection  ");
        assertThat(laminate("check", lid, "--plies").out()).contains("Strain and stress along x and y");
        assertThat(laminate("check", lid, "--discount", "whole-ply").exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(laminate("check", lid, "--units", "us").out()).contains("pressure 0.145 psi", "ksi");
        assertThat(laminate("check", lid, "--width", 60).out().lines()).allMatch(line -> line.length() <= 60);
        assertThat(laminate("check", lid, "--process", "vacuum-bag").out())
                .isNotEqualTo(laminate("check", lid).out());
    }

    @Test
    void aReferenceIsComparedWithEveryOtherZone() throws IOException {
        Path prices = write("prices.yaml", """
                currency: GBP
                prices:
                  - {material: mat-300, price: 3 GBP/kg}
                  - {material: mat-450, price: 3 GBP/kg}
                  - {material: roving-600, price: 4 GBP/kg}
                  - {material: polyester-ortho, price: 4 GBP/kg}
                  - {material: mekp, price: 14 GBP/l}
                """);
        assertThat(laminate("check", lid, "--reference", "top", "--prices", prices)
                        .out())
                .contains("What may replace top", "bending stiffness along x", "\ncost ");
        assertThat(laminate("check", lid, "--reference", "top").out()).doesNotContain("\ncost ");
        Run unknown = laminate("check", lid, "--reference", "keel");
        assertThat(unknown.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(unknown.err()).contains("lid.yaml: ", "no zone is called keel; accepted: top, rim");
    }

    @Test
    void aSurfaceHasTheRaysAskedFor() {
        Run run = laminate(
                "check", lid, "--format", "csv", "--table", "surface", "--surface", "nx,curvature-x", "--rays", 12);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("part,zone,load_case,Nx_N_mm,curvature_x_1_m,ply,");
        assertThat(run.out().lines()).hasSize(13);
        assertThat(laminate("check", lid, "--format", "json", "--surface", "Nx,Ny")
                        .out()
                        .split("\"Nx_N_m\": "))
                .hasSize(1 + 1 + 360);
    }

    @Test
    void complaintsOfAllFilesComeTogetherAndNothingIsPrinted() throws IOException {
        Path typo = write("typo.yaml", LID.replace("edges: clamped", "edges: glued"));
        Run run = laminate("check", lid, typo, folder.resolve("none.yaml"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("typo.yaml:8:", "none.yaml: ").doesNotContain("lid.yaml:", "Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--table limits",
                "--format json --units us",
                "--format json --plies",
                "--format csv --plies",
                "--surface Nx,Ny",
                "--format csv --surface Nx,Ny",
                "--format csv --table surface",
                "--format csv --table comparison",
                "--format json --surface Nx",
                "--format json --surface Nx,Nx",
                "--format json --surface Nx,strain-x",
                "--format json --surface Nx,Qx",
                "--format json --surface Nx,Ny --rays 2",
                "--rays 10",
                "--criterion isotropic",
                "--discount some",
                "--width 39",
                "--bogus"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("check", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate check --help'.\n");
    }

    @Test
    void theHelpTellsTheExitCodes() {
        assertThat(laminate("check", "--help").out()).contains("Exit codes:", "  3   a limit is not met");
    }

    @Test
    void aFileIsNotOverwrittenByItsOwnCheck() {
        assertThat(laminate("check", lid, "-o", lid).exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(lid).hasContent(LID);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
