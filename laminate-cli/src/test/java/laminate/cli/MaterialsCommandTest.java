package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import laminate.library.MaterialLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MaterialsCommandTest {
    @TempDir
    private Path folder;

    @Test
    void listsEveryMaterialOnce() {
        String csv = laminate("materials", "--format", "csv").out();
        assertThat(csv.lines()
                        .skip(1)
                        .map(line -> line.substring(0, line.indexOf(',')))
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(new MaterialLibrary().ids());
        assertThat(laminate("materials").out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void filtersAreJoined() {
        assertThat(laminate(
                                "materials",
                                "--form",
                                "woven-roving",
                                "--fibre",
                                "e-glass",
                                "--find",
                                "600",
                                "--find",
                                "ROVING")
                        .out()
                        .lines()
                        .skip(2))
                .isNotEmpty()
                .allMatch(line -> line.startsWith("roving-600"));
        assertThat(laminate("materials", "--kind", "hardener").out().lines().skip(2))
                .isNotEmpty()
                .allMatch(line -> line.startsWith("hardener-") || line.startsWith("  "));
        assertThat(laminate("materials", "--find", "nothing like it").exitCode())
                .isEqualTo(ExitCode.DONE);
    }

    @Test
    void showsEveryFigureWithUnitSourceAndStatus() {
        Run run = laminate("materials", "polyester-ortho", "mat-450");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out())
                .contains(
                        "polyester-ortho\n===============\n",
                        "family  polyester\n",
                        "mat-450\n=======\n",
                        "binder  powder\n")
                .containsPattern("density-liquid +1110  kg/m³  memory +handbook typical, from")
                .containsPattern("mekp, usual +1.5  % +common practice")
                .containsPattern("gel time, 1.5 % mekp at +\\d+  min");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void printsJsonInSi() {
        assertThat(laminate("materials", "mekp", "--format", "json").out()).isEqualTo("""
                {
                  "materials": [
                    {
                      "material": "mekp",
                      "name": "Methyl ethyl ketone peroxide, 50 % type",
                      "kind": "catalyst",
                      "figures": [
                        {
                          "figure": "density",
                          "value": 1170,
                          "unit": "kg/m³",
                          "source": "handbook typical, from memory; 1150 to 1180",
                          "status": "memory"
                        }
                      ]
                    }
                  ]
                }
                """);
    }

    @Test
    void anOwnFileIsLaidOverTheLibrary() throws IOException {
        Path own = Files.writeString(folder.resolve("own.yaml"), """
                materials:
                  - {material: mekp, kind: catalyst, name: The club's peroxide, density: 1180 kg/m³}
                  - {material: mekp-club, kind: catalyst, name: Another, density: 1100 kg/m³}
                """);
        assertThat(laminate("materials", "--materials", own, "--kind", "catalyst")
                        .out())
                .contains("The club's peroxide", "mekp-club");
        assertThat(laminate("materials", "mekp", "--materials", own).out())
                .containsPattern("density +1180  kg/m³  user +stated by the user");
    }

    @Test
    void complaintsComeTogetherWithTheNearestNames() throws IOException {
        Run run = laminate("materials", "polyester-orto", "mat-450", "zzz");
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .containsExactly(
                        "laminate: 'polyester-orto' is not a known material; near it are polyester-ortho,"
                                + " polyester-iso, polyester-fibre",
                        "laminate: 'zzz' is not a known material; 'laminate materials' lists what there is");
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "materials: [{material: x}]\n");
        assertThat(laminate("materials", "--materials", bad).err()).contains("bad.yaml:1:");
    }

    @Test
    void ownFilesMayReferToEachOtherInAnyOrderAndTheLaterWins() throws IOException {
        Path first = Files.writeString(folder.resolve("first.yaml"), """
                materials:
                  - {material: club-mat, kind: reinforcement, name: First, form: mat, fibre: club-glass, areal-weight: 1 kg/m²}
                  - {material: rags, kind: consumable, name: Old rags, sold-by: kg}
                """);
        Path second = Files.writeString(folder.resolve("second.yaml"), """
                materials:
                  - {material: club-glass, kind: fibre, name: Glass, type: glass, density: 2500 kg/m³, E1: 70 GPa, E2: 70 GPa,
                     G12: 29 GPa, nu12: 0.2, alpha1: 5e-6 1/K, alpha2: 5e-6 1/K, tensile-strength: 2 GPa}
                  - {material: rags, kind: consumable, name: New rags, sold-by: kg}
                """);
        Run run = laminate("materials", "--materials", first, "--materials", second, "club-mat", "rags");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).contains("fibre  club-glass", "New rags").doesNotContain("Old rags");
    }

    @Test
    void anOwnFileIsNotOverwrittenByItsList() throws IOException {
        Path own = Files.writeString(
                folder.resolve("own.yaml"),
                "materials: [{material: rags, kind: consumable, name: Rags, sold-by: kg}]\n");
        Run run = laminate("materials", "--materials", own, "-o", own);
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.err()).startsWith("laminate: -o would overwrite the input file " + own);
        assertThat(own).content().startsWith("materials: ");
    }

    @Test
    void filtersAndNamesDoNotGoTogether() {
        assertThat(laminate("materials", "mat-450", "--kind", "core").exitCode())
                .isEqualTo(ExitCode.WRONG_USAGE);
    }
}
