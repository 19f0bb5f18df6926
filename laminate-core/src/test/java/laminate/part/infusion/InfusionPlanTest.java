package laminate.part.infusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan of an infusion may state, and what is refused with the value in the message. */
class InfusionPlanTest {

    private static final Preform PREFORM = Preform.of(PermeabilitySource.Given.of(1e-10));
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static Segment segment(double length) {
        return new Segment(length, NONE, NONE);
    }

    private static Preform inSegments(Segment... segments) {
        return new Preform(
                NONE, Optional.of(new PermeabilitySource.Typical()), NONE, NONE, Optional.empty(), List.of(segments));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void sizesPressuresAndTimesAreAboveNothing(double value) {
        assertThatThrownBy(() -> InfusionPath.line(value))
                .hasMessage("flow length must be above zero, not " + value + " m");
        assertThatThrownBy(() -> InfusionPath.centre(value, 1)).hasMessageContaining("feed radius must be above zero");
        assertThatThrownBy(() -> InfusionPlan.of(InfusionPath.line(1), value, PREFORM))
                .hasMessage("driving pressure must be above zero, not " + value + " Pa");
        assertThatThrownBy(() -> ResinViscosity.constant(value))
                .hasMessage("viscosity must be above zero, not " + value + " Pa·s");
        assertThatThrownBy(() -> new ResinViscosity(NONE, of(value))).hasMessageContaining("time of a viscosity");
        assertThatThrownBy(() -> PermeabilitySource.Given.of(value))
                .hasMessage("permeability must be above zero, not " + value + " m²");
        assertThatThrownBy(() -> PREFORM.withThroughPermeability(value)).hasMessageContaining("through the thickness");
        assertThatThrownBy(() -> StripTest.of(value, 474)).hasMessageContaining("length of a strip test");
        assertThatThrownBy(() -> StripTest.of(0.3, value)).hasMessageContaining("time of a strip test");
        assertThatThrownBy(() -> new StripTest(0.3, 474, of(value), NONE, NONE))
                .hasMessageContaining("viscosity of a strip");
        assertThatThrownBy(() -> new StripTest(0.3, 474, NONE, of(value), NONE))
                .hasMessageContaining("driving pressure of a");
        assertThatThrownBy(() -> segment(value)).hasMessageContaining("length of a segment");
        assertThatThrownBy(() -> new Segment(1, of(value), NONE)).hasMessageContaining("permeability of a segment");
        assertThatThrownBy(() -> new LeakTest(value, 600)).hasMessageContaining("drop of a leak test");
        assertThatThrownBy(() -> new LeakTest(1000, value)).hasMessageContaining("time of a leak test");
        assertThatThrownBy(() -> new BedCompaction(0.07, of(value))).hasMessageContaining("least pressure");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.5, Double.NaN})
    void sharesLieBetweenNothingAndAll(double value) {
        assertThatThrownBy(() -> PREFORM.withPorosity(value))
                .hasMessage("porosity must be above 0 and below 1, not " + value);
        assertThatThrownBy(() -> new PermeabilitySource.Given(1e-10, of(value)))
                .hasMessageContaining("fibre volume fraction");
        assertThatThrownBy(() -> new StripTest(0.3, 474, NONE, NONE, of(value)))
                .hasMessageContaining("porosity of a strip");
        assertThatThrownBy(() -> new Segment(1, NONE, of(value))).hasMessageContaining("porosity of a segment");
        assertThatThrownBy(() -> new BedCompaction(value, NONE)).hasMessageContaining("compaction exponent");
    }

    @Test
    void theVentLiesAFlowLengthFromTheFeed() {
        assertThat(InfusionPath.line(1).ventRadius()).isEmpty();
        assertThat(InfusionPath.centre(0.02, 0.5).ventRadius().orElseThrow()).isCloseTo(0.52, within(1e-15));
        assertThat(InfusionPath.rim(0.5, 0.5).ventRadius()).hasValue(0);
        assertThat(InfusionPath.rim(0.5, 0.4).ventRadius().orElseThrow()).isCloseTo(0.1, within(1e-15));
        // Half, a fifth and three tenths add up to a hair more than one.
        assertThat(InfusionPath.rim(1, 0.5 + 0.2 + 0.3 + 1e-15).ventRadius()).hasValue(0);
    }

    @Test
    void aRadiusGoesWithARoundFeed() {
        assertThatThrownBy(() -> new InfusionPath(FeedKind.LINE, 1, of(0.02), 0))
                .hasMessageContaining("has no feed radius");
        assertThatThrownBy(() -> new InfusionPath(FeedKind.CENTRE, 1, NONE, 0))
                .hasMessageContaining("a centre feed needs");
        assertThatThrownBy(() -> new InfusionPath(FeedKind.RIM, 1, NONE, 0)).hasMessageContaining("a rim feed needs");
        assertThatThrownBy(() -> InfusionPath.rim(0.5, 0.6))
                .hasMessage("a flow length of 0.6 m is longer than the radius of the rim, 0.5 m");
        assertThatThrownBy(() -> new InfusionPath(FeedKind.LINE, 1, NONE, Double.NaN))
                .hasMessageContaining("rise must be finite");
    }

    @Test
    void segmentsAddUpToTheFlowLength() {
        InfusionPath path = InfusionPath.line(1);
        assertThat(InfusionPlan.of(path, 95e3, inSegments(segment(0.1), segment(0.2), segment(0.7)))
                        .preform()
                        .segments())
                .hasSize(3);
        assertThatThrownBy(() -> InfusionPlan.of(path, 95e3, inSegments(segment(0.4), segment(0.5))))
                .hasMessage("the segments are 0.9 m long together, the flow length is 1.0 m");
    }

    @Test
    void permeabilityIsToldOfTheWhole() {
        Segment known = new Segment(0.5, of(1e-10), NONE);
        assertThat(new Preform(NONE, Optional.empty(), NONE, NONE, Optional.empty(), List.of(known, known)).segments())
                .hasSize(2);
        assertThatThrownBy(() ->
                        new Preform(NONE, Optional.empty(), NONE, NONE, Optional.empty(), List.of(known, segment(0.5))))
                .hasMessageContaining("needs a permeability, or one for each of its 2 segments");
        assertThatThrownBy(() -> new Preform(NONE, Optional.empty(), NONE, NONE, Optional.empty(), List.of()))
                .hasMessageContaining("needs a permeability");
    }

    @Test
    void onlyFromACentreFeedDoesResinRunAcross() {
        Preform across = new Preform(
                NONE, Optional.of(new PermeabilitySource.Typical()), of(4e-11), NONE, Optional.empty(), List.of());
        assertThat(InfusionPlan.of(InfusionPath.centre(0.02, 0.5), 95e3, across).preform())
                .isEqualTo(across);
        assertThatThrownBy(() -> InfusionPlan.of(InfusionPath.line(1), 95e3, across))
                .hasMessageContaining("belongs to a centre feed, not to a line feed");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.01, Double.NaN})
    void theMarginIsAShareOfTheGelTime(double margin) {
        assertThatThrownBy(() -> new InfusionPlan(
                        InfusionPath.line(1),
                        95e3,
                        ResinViscosity.OF_THE_RESIN,
                        PREFORM,
                        Optional.empty(),
                        FeedLines.NOT_STATED,
                        of(margin),
                        Optional.empty()))
                .hasMessage("margin must be above 0 and at most 1, not " + margin);
    }

    @Test
    void everyCopyKeepsTheRest() {
        FlowMesh mesh = new FlowMesh(0.001, 3e-9, 0.8);
        FeedLines lines = new FeedLines(Optional.of(new Hose(0.01, 2)), Optional.empty(), of(0.2));
        assertThat(InfusionPlan.of(InfusionPath.line(1), 95e3, PREFORM)
                        .withMesh(mesh)
                        .withLines(lines)
                        .withViscosity(ResinViscosity.constant(0.2)))
                .isEqualTo(new InfusionPlan(
                        InfusionPath.line(1),
                        95e3,
                        ResinViscosity.constant(0.2),
                        PREFORM,
                        Optional.of(mesh),
                        lines,
                        NONE,
                        Optional.empty()));
    }

    @Test
    void aCatchPotHoldsNothingOrMore() {
        assertThatThrownBy(() -> new FeedLines(Optional.empty(), Optional.empty(), of(-0.1)))
                .hasMessageContaining("zero or more, not -0.1 kg");
    }
}
