package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.LeakTest;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.part.infusion.Segment;
import laminate.part.infusion.StripTest;
import laminate.process.Process;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans of infusion and tooling as the part file states them. */
class InfusionFileTest {

    private static final String HEAD = """
            part: Locker lid
            process: infusion
            resin: epoxy-laminating
            """;
    private static final String OF_HALF = "[{reinforcement: biaxial-600, fibre-volume-fraction: 50 %, times: 4}]";
    private static final String LINE = "feed: line, flow-length: 1 m, vacuum: 950 mbar";

    @TempDir
    private Path folder;

    private Part read(String text) {
        return new Bench(folder).read(text).part();
    }

    private InfusionPlan plan(String keys) {
        String zone = "zones: [{name: lid, area: 1 m², layers: " + OF_HALF + ", infusion: {" + keys + "}}]\n";
        return read(HEAD + zone).zones().get(0).infusion().orElseThrow();
    }

    private static PermeabilitySource known(double squareMetres) {
        return PermeabilitySource.Given.of(squareMetres);
    }

    @Test
    void theExampleIsReadAtThePartAndAtAZone() {
        String example = """
                infusion: {feed: line, flow-length: 1.0 m, vacuum: 950 mbar, viscosity: 0.2 Pa·s, permeability: 1e-10 m², \
                through-permeability: 1e-12 m², porosity: 50 %, mesh: {thickness: 1 mm, permeability: 3e-9 m², porosity: 80 %}}\
                """;
        Preform preform =
                Preform.of(known(1e-10)).withThroughPermeability(1e-12).withPorosity(0.5);
        InfusionPlan expected = InfusionPlan.of(InfusionPath.line(1), 95_000, preform)
                .withViscosity(ResinViscosity.constant(0.2))
                .withMesh(new FlowMesh(0.001, 3e-9, 0.8));

        Part whole = read(HEAD + "zones: [{name: lid, area: 1 m², layers: " + OF_HALF + "}]\n" + example + "\n");
        Part byZone = read(HEAD + "zones: [{name: lid, area: 1 m², layers: " + OF_HALF + ", " + example + "}]\n");

        assertThat(whole.infusion()).contains(expected);
        assertThat(whole.zones().get(0).infusion()).isEmpty();
        assertThat(byZone.infusion()).isEmpty();
        assertThat(byZone.zones().get(0).infusion()).contains(expected);
    }

    @Test
    void linesCompactionSegmentsAndLeakAreRead() {
        InfusionPlan plan = plan("""
                feed: line, flow-length: 1 m, driving-pressure: 95 kPa, rise: -30 cm, viscosity: 200 mPa·s,
                viscosity-time: 2 h, permeability: 1e-10 m², permeability-at: 45 %,
                compaction: {exponent: 0.07, least-pressure: 2 kPa},
                segments: [{length: 400 mm, permeability: 2e-10 m², porosity: 45 %}, {length: 0.6 m}],
                hose: {bore: 10 mm, length: 2 m}, spiral: {bore: 12 mm, length: 1.5 m}, catch-pot: 200 g, margin: 70 %,
                leak: {drop: 10 mbar, time: 10 min}
                """);
        assertThat(plan)
                .isEqualTo(new InfusionPlan(
                        new InfusionPath(FeedKind.LINE, 1, OptionalDouble.empty(), -0.3),
                        95_000,
                        new ResinViscosity(OptionalDouble.of(0.2), OptionalDouble.of(7200)),
                        new Preform(
                                OptionalDouble.empty(),
                                Optional.of(new PermeabilitySource.Given(1e-10, OptionalDouble.of(0.45))),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Optional.of(new BedCompaction(0.07, OptionalDouble.of(2000))),
                                List.of(
                                        new Segment(0.4, OptionalDouble.of(2e-10), OptionalDouble.of(0.45)),
                                        new Segment(0.6, OptionalDouble.empty(), OptionalDouble.empty()))),
                        Optional.empty(),
                        new FeedLines(
                                Optional.of(new Hose(0.01, 2)),
                                Optional.of(new Hose(0.012, 1.5)),
                                OptionalDouble.of(0.2)),
                        OptionalDouble.of(0.7),
                        Optional.of(new LeakTest(1000, 600))));
    }

    @Test
    void permeabilityComesFromAStripTestOrAsAnOrderOfMagnitude() {
        assertThat(plan(LINE + ", strip-test: {length: 300 mm, time: 474 s}")
                        .preform()
                        .permeability())
                .contains(new PermeabilitySource.Tested(StripTest.of(0.3, 474)));
        assertThat(plan(LINE + ", strip-test: {length: 1 ft, time: 8 min, viscosity: 0.1 Pa.s, vacuum: 0.9 bar,"
                                + " porosity: 48 %}")
                        .preform()
                        .permeability())
                .contains(new PermeabilitySource.Tested(new StripTest(
                        0.3048, 480, OptionalDouble.of(0.1), OptionalDouble.of(90_000), OptionalDouble.of(0.48))));
        assertThat(plan(LINE + ", permeability: typical").preform().permeability())
                .contains(new PermeabilitySource.Typical());
    }

    @Test
    void segmentsThatTellAllNeedNoOther() {
        Preform preform = plan(LINE + ", segments: [{length: 40 cm, permeability: 100 µm²}, {length: 0.6 m,"
                        + " permeability: 1e-4 mm2}]")
                .preform();
        assertThat(preform.permeability()).isEmpty();
        assertThat(preform.segments())
                .extracting(segment -> segment.permeability().orElseThrow())
                .containsExactly(1e-10, 1e-10);
    }

    @ParameterizedTest
    @CsvSource({"centre, 20 mm, CENTRE, 1.02", "rim, 1 m, RIM, 0", "rim, 1.2 m, RIM, 0.2"})
    void aFeedThatIsRoundHasARadius(String word, String radius, FeedKind feed, double ventRadius) {
        InfusionPath path = plan("feed: " + word + ", feed-radius: " + radius
                        + ", flow-length: 1 m, vacuum: 13 psi, permeability: 1e-10 m²")
                .path();
        assertThat(path.feed()).isEqualTo(feed);
        assertThat(path.ventRadius().orElseThrow()).isCloseTo(ventRadius, within(1e-12));
    }

    @Test
    void pliesGivenDirectlyTakeThePorosityAsItIsStated() {
        Part part = read("""
                part: Strip
                zones:
                  - name: strip
                    area: 1 m²
                    layers: [{lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³}, thickness: 5 mm}]
                    infusion: {feed: line, flow-length: 1 m, vacuum: 950 mbar, permeability: 1e-10 m², porosity: 37 %}
                """);
        assertThat(part.zones().get(0).infusion().orElseThrow().preform().porosity())
                .hasValue(0.37);
    }

    @ParameterizedTest
    @CsvSource({"0.495, true", "0.505, true", "0.494, false", "0.506, false"})
    void porosityIsThatOfTheLayersToHalfAPercentagePoint(double porosity, boolean accepted) {
        String zone = "zones: [{name: lid, area: 1 m², layers: " + OF_HALF + ", infusion: {" + LINE
                + ", permeability: 1e-10 m², porosity: " + 100 * porosity + " %}}]\n";
        assertThat(new Bench(folder).complaints(HEAD + zone)).hasSize(accepted ? 0 : 1);
    }

    /** The hand-laid skin has a content of its own, which the resin of the infusion never meets. */
    @Test
    void porosityIsThatOfTheInfusedLayersAlone() {
        assertThat(plan(LINE + ", permeability: 1e-10 m², porosity: 50 %")
                        .preform()
                        .porosity())
                .hasValue(0.5);
        String layers = OF_HALF.replace("[{", "[{reinforcement: mat-300, process: hand lay-up}, {");
        assertThat(new Bench(folder)
                        .complaints(HEAD + "zones: [{name: lid, area: 1 m², layers: " + layers + ", infusion: {" + LINE
                                + ", permeability: 1e-10 m², porosity: 50 %}}]\n"))
                .isEmpty();
    }

    @Test
    void aPlanIsNotToBlameWhereOtherLayersWereAskedFor() {
        String zone = "zones: [{name: lid, area: 1 m², layers: [biaxial-600], infusion: {" + LINE
                + ", permeability: 1e-10 m²}}]\n";
        String schedules = "schedules: {a: [{reinforcement: biaxial-600, fibre-volume-fraction: 50 %}], b: [mat-300]}\n"
                + "alternatives: {a: b}\n";
        String scheduled = "zones: [{name: lid, area: 1 m², layers: [{schedule: a}], infusion: {" + LINE
                + ", permeability: 1e-10 m², porosity: 50 %}}]\n";

        Job byHand = new Bench(folder).read(HEAD + zone, Overrides.NONE.withProcess(Process.HAND_LAY_UP));
        Job ofMat =
                new Bench(folder).read(HEAD + schedules + scheduled, Overrides.NONE.withSchedules(Map.of("a", "b")));

        assertThat(byHand.part().zones().get(0).infusion()).isPresent();
        assertThat(ofMat.part().zones().get(0).layers().get(0).material()).isEqualTo("mat-300");
    }

    @Test
    void toolingIsReadAndFoundByItsProcess() {
        Part part = read(HEAD + """
                zones: [{name: lid, area: 1 m², layers: [mat-300]}]
                tooling:
                  - {process: infusion, price: 1400 GBP, life: 300, set-up: 6 h, set-up-price: 80 GBP}
                  - {price: 900 GBP, set-up: 30 min}
                """);
        Tooling infused = new Tooling(Optional.of(Process.INFUSION), gbp(1400), OptionalInt.of(300), 6 * 3600, gbp(80));
        Tooling other = new Tooling(Optional.empty(), gbp(900), OptionalInt.empty(), 1800, Optional.empty());
        assertThat(part.tooling()).containsExactly(infused, other);
        assertThat(part.toolingFor(Process.INFUSION)).isEqualTo(infused);
        assertThat(part.toolingFor(Process.VACUUM_BAG)).isEqualTo(other);
    }

    private static Optional<Money> gbp(int pounds) {
        return Optional.of(new Money(BigDecimal.valueOf(pounds), "GBP"));
    }
}
