package laminate.process.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the inputs of flow refuse, each with the value that is wrong. */
class FlowValuesTest {
    private static final FlowSegment BED = new FlowSegment(1, 1e-10, 0.5);
    private static final FlowMesh MESH = new FlowMesh(0.001, 3e-9, 0.85);
    private static final Filling FILLING =
            Filling.of(FlowPath.level(Feed.LINE, BED), new Drive(95e3, 1100), RisingViscosity.constant(0.2));

    private static Arguments refused(ThrowingCallable call, String message) {
        return Arguments.of(message, call);
    }

    private static SoftBag soft(double V, double b, double s0, double K, double h) {
        return new SoftBag(V, b, s0, K, h, Optional.of(MESH));
    }

    static Stream<Arguments> nonsense() {
        return Stream.of(
                refused(
                        () -> new FlowSegment(0, 1e-10, 0.5),
                        "length of the segment must be positive and finite, was 0.0"),
                refused(() -> new FlowSegment(1, Double.NaN, 0.5), "permeability must be positive and finite, was NaN"),
                refused(() -> new FlowSegment(1, 1e-10, 0), "porosity must lie above 0 and up to 1, was 0.0"),
                refused(() -> new FlowSegment(1, 1e-10, 1.1), "porosity must lie above 0 and up to 1, was 1.1"),
                refused(() -> new FlowMesh(0, 1e-9, 0.8), "thickness of the mesh must be positive and finite, was 0.0"),
                refused(() -> new FlowMesh(0.001, 1e-9, 2), "porosity must lie above 0 and up to 1, was 2.0"),
                refused(() -> new Feed.Centre(0), "radius of the feed must be positive and finite, was 0.0"),
                refused(() -> new Feed.Rim(-1), "radius of the rim must be positive and finite, was -1.0"),
                refused(() -> new Hose(0, 1), "bore must be positive and finite, was 0.0"),
                refused(() -> new Hose(0.01, 0), "length of the hose must be positive and finite, was 0.0"),
                refused(() -> Supply.toLine(List.of(), 0, 1), "width must be positive and finite, was 0.0"),
                refused(() -> Supply.toDisc(List.of(), 0), "section must be positive and finite, was 0.0"),
                refused(() -> new Drive(0, 1100), "driving pressure must be positive and finite, was 0.0"),
                refused(() -> new Drive(1e5, -1), "density must be positive and finite, was -1.0"),
                refused(() -> RisingViscosity.constant(0), "viscosity must be positive and finite, was 0.0"),
                refused(
                        () -> RisingViscosity.rising(1, 0),
                        "time constant of the viscosity must be positive and finite, was 0.0"),
                refused(() -> RisingViscosity.rising(1, 1).at(1e4), "viscosity must be a finite number, was Infinity"),
                refused(
                        () -> new FlowPath(Feed.LINE, List.of(), 0, Optional.empty()),
                        "a flow path has at least one segment"),
                refused(
                        () -> FlowPath.level(Feed.LINE, BED).withRise(-1.1),
                        "the rise must not be more than the flow length of 1.0 m, was -1.1 m"),
                refused(
                        () -> FlowPath.level(new Feed.Rim(0.9), BED),
                        "the flow length must not be more than the radius of the rim of 0.9 m, was 1.0 m"),
                refused(
                        () -> new Compaction(1, 1e5, 0.1),
                        "fibre volume fraction must lie above 0 and below 1, was 1.0"),
                refused(() -> new Compaction(0.5, 0, 0.1), "pressure must be positive and finite, was 0.0"),
                refused(() -> new Compaction(0.5, 1e5, 1), "compaction exponent must lie from 0 to below 1, was 1.0"),
                refused(
                        () -> new Compaction(0.6, 1e3, 0.2).at(1e5),
                        "fibre volume fraction must lie above 0 and below 1, was 1.50"),
                refused(
                        () -> Compaction.exponent(0.5, 1e5, 0.6, 1e5),
                        "an exponent needs two pressures, both were 100000.0 Pa"),
                refused(
                        () -> Compaction.exponent(0.5, 1e5, 0.6, 5e4),
                        "compaction exponent must lie from 0 to below 1, was -0.26"),
                refused(
                        () -> soft(0, 0.1, 2000, 1e-10, 0.004),
                        "fibre volume fraction must lie above 0 and below 1, was 0.0"),
                refused(
                        () -> soft(0.5, -0.1, 2000, 1e-10, 0.004),
                        "compaction exponent must lie from 0 to below 1, was -0.1"),
                refused(
                        () -> soft(0.5, 0.1, 0, 1e-10, 0.004),
                        "least pressure on the fibres must be positive and finite, was 0.0"),
                refused(() -> soft(0.5, 0.1, 2000, 0, 0.004), "permeability must be positive and finite, was 0.0"),
                refused(() -> soft(0.5, 0.1, 2000, 1e-10, 0), "thickness must be positive and finite, was 0.0"),
                refused(
                        () -> soft(0.5, 0.1, 2000, 1e-10, 0.004).shareOfRigidTime(0),
                        "driving pressure must be positive and finite, was 0.0"),
                refused(
                        () -> soft(0.5, 0.1, 2000, 1e-10, 0.004).fibreVolumeFractionAt(2, 1),
                        "pressure of the resin must lie from 0 to 1.0, was 2.0"),
                refused(
                        () -> Filling.softBag(soft(0.5, 0.1, 2000, 1e-10, 0.004), 0, 1e5, RisingViscosity.constant(1)),
                        "flow length must be positive and finite, was 0.0"),
                refused(
                        () -> new MeshedLaminate(MESH, 0.004, 1e-10, 0, 0.5),
                        "permeability through the thickness must be positive and finite, was 0.0"),
                refused(() -> new Anisotropy(1e-10, 0), "permeability must be positive and finite, was 0.0"),
                refused(
                        () -> Darcy.centreTime(0.5, 0.2, 0.01, 0.02, 1e-10, 1e5),
                        "the front lies outside the feed of radius 0.02 m, was 0.01"),
                refused(
                        () -> Darcy.rimTime(0.5, 0.2, 1, 1.1, 1e-10, 1e5),
                        "radius of the front must lie from 0 to 1.0, was 1.1"),
                refused(
                        () -> Darcy.lineTime(0.5, 0.2, -1, 1e-10, 1e5),
                        "length must not be negative or infinite, was -1.0"),
                refused(() -> Darcy.risingViscosityTime(-1, 1), "time must not be negative or infinite, was -1.0"),
                refused(
                        () -> Gebart.SQUARE.across(1e-5, 0.8),
                        "fibres of this packing touch at a fibre volume fraction of 0.785"),
                refused(() -> FILLING.timeAt(1.1), "a position lies from 0 at the feed to 1.0 m at the vent, was 1.1"),
                refused(
                        () -> FILLING.hoseLoss(-0.1),
                        "a position lies from 0 at the feed to 1.0 m at the vent, was -0.1"),
                refused(() -> FILLING.positionAt(-1), "time must not be negative or infinite, was -1.0"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nonsense")
    void refuses(String message, ThrowingCallable call) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @Test
    void fibresThatTouchLetNothingThrough() {
        assertThat(Gebart.HEXAGONAL.across(1e-5, Gebart.HEXAGONAL.densest())).isZero();
        assertThat(Gebart.SQUARE.densest()).isEqualTo(Math.PI / 4);
    }

    @Test
    void aPathKnowsItsLength() {
        FlowPath path = FlowPath.level(Feed.LINE, BED);
        assertThat(path.length()).isEqualTo(1);
        assertThat(path.withRise(0.5).rise()).isEqualTo(0.5);
        assertThat(new Hose(0.01, 2).resistance()).isEqualTo(Hose.resistance(0.01, 2));
    }
}
