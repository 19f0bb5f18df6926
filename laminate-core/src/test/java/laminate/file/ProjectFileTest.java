package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.quote.ToolUse;
import laminate.unit.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Projects: several parts of one yard, with the moulds and plugs that they share. */
class ProjectFileTest {

    private static final String PROJECT = """
            project: Lockers
            workshop: workshop.yaml
            prices: prices.yaml
            mouldings:
              - {part: lid.yaml, count: 2, made-on: lid mould}
              - {part: hatch.yaml, made-on: lid mould}
            tooling:
              - {name: lid mould, part: mould.yaml, life: 4, made-on: lid plug, set-up: 0.5 h, set-up-price: 7 GBP}
              - {name: lid plug, part: plug.yaml, life: 3, in-hand: 1}
            """;

    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void putTheYard() {
        bench = new Bench(folder);
        bench.put("prices.yaml", """
                currency: GBP
                prices:
                  - {material: mat-300, price: 10 GBP/kg}
                  - {material: polyester-ortho, price: 0 GBP/kg}
                  - {material: mekp, price: 0 GBP/kg}
                """);
        bench.put("workshop.yaml", """
                labour: {rate: 25 GBP/h, operations: {mould preparation: 0 h/m², lay-up: 0 h/m², making: 2 h}}
                pricing: {rejects: 20 %, overhead: {rate: 100 %, on: labour}, margin: 50 %}
                """);
        putPart("lid", "Lid", "1 m²", "count: 9\n");
        putPart("hatch", "Hatch", "2 m²", "count: 3\n");
        putPart("mould", "Mould", "3 m²", "");
        putPart("plug", "Plug", "4 m²", "");
    }

    private void putPart(String file, String name, String area, String more) {
        bench.put(file + ".yaml", """
                part: %s
                process: hand lay-up
                resin: polyester-ortho
                zones: [{name: all of it, area: %s, layers: [mat-300]}]
                """.formatted(name, area) + more);
    }

    private Project read(String text) {
        return read(text, Overrides.NONE);
    }

    private Project read(String text, Overrides overrides) {
        return ProjectFile.read(bench.put("lockers.yaml", text), Bench.STOCK, overrides);
    }

    private List<String> complaints(String text) {
        return bench.complaints(() -> read(text));
    }

    private static Tooling tooling(Job job) {
        return job.part().tooling().get(0);
    }

    private static List<String> namesAndCounts(List<Job> jobs) {
        return jobs.stream()
                .map(job -> job.part().count() + " " + job.part().name())
                .toList();
    }

    @Test
    void mouldingsAreMadeOnTheToolsThatTheProjectNames() {
        Project project = read(PROJECT);

        assertThat(project.name()).isEqualTo("Lockers");
        assertThat(namesAndCounts(project.mouldings())).containsExactly("2 Lid", "3 Hatch");
        Tooling mould = tooling(project.mouldings().get(0));
        assertThat(mould.process()).isEmpty();
        assertThat(mould.name()).contains("lid mould");
        assertThat(mould.life()).isEqualTo(OptionalInt.of(4));
        assertThat(mould.setUpTime()).isEqualTo(1800);
        assertThat(mould.setUpPrice()).contains(Money.parse("7 GBP"));
        Tooling plug = mould.mould().orElseThrow().tooling().get(0);
        assertThat(plug.name()).contains("lid plug");
        assertThat(plug.mould().map(Part::name)).contains("Plug");
        assertThat(tooling(project.mouldings().get(1)).mould().orElseThrow())
                .isSameAs(mould.mould().orElseThrow());
    }
}
