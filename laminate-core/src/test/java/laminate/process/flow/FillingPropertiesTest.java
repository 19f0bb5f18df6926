package laminate.process.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any filling, and the closed forms as its limits. */
class FillingPropertiesTest {
    private static final double EXACT = 1e-12;
    private static final double MU = 0.2;
    private static final Drive DRIVE = new Drive(95e3, 1100);
    private static final FlowSegment BED = new FlowSegment(0.8, 1e-10, 0.5);
    private static final RisingViscosity CONSTANT = RisingViscosity.constant(MU);
    private static final FlowMesh MESH = new FlowMesh(0.001, 3e-9, 0.85);
    private static final SoftBag WOVEN = new SoftBag(0.5, 0.07, 2000, 1e-10, 0.004, Optional.empty());

    private static double time(FlowPath path, Drive drive, RisingViscosity viscosity) {
        return Filling.of(path, drive, viscosity).fillTime().orElseThrow();
    }

    private static double time(FlowPath path) {
        return time(path, DRIVE, CONSTANT);
    }

    private static FlowPath path(Feed feed, FlowSegment... beds) {
        return new FlowPath(feed, List.of(beds), 0, Optional.empty());
    }

    private static void same(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(EXACT * Math.abs(expected)));
    }

    static Stream<Feed> feeds() {
        return Stream.of(Feed.LINE, new Feed.Centre(0.02), new Feed.Rim(0.8), new Feed.Rim(1.1));
    }

    @ParameterizedTest
    @MethodSource("feeds")
    void timeGoesWithViscosityAndAgainstPermeabilityAndPressure(Feed feed) {
        FlowSegment[] beds = {BED.withLength(0.3), new FlowSegment(0.5, 3e-10, 0.6)};
        FlowSegment[] open = {new FlowSegment(0.3, 2.5e-10, 0.5), new FlowSegment(0.5, 7.5e-10, 0.6)};
        double base = time(path(feed, beds));
        same(time(path(feed, beds), DRIVE, RisingViscosity.constant(3 * MU)), 3 * base);
        same(time(path(feed, open)), base / 2.5);
        same(time(path(feed, beds), new Drive(2 * 95e3, 1100), CONSTANT), base / 2);
    }

    @Test
    void timeGoesWithTheSquareOfEveryLength() {
        same(time(path(Feed.LINE, BED.withLength(2.4))), 9 * time(path(Feed.LINE, BED)));
        same(time(path(new Feed.Centre(0.06), BED.withLength(2.4))), 9 * time(path(new Feed.Centre(0.02), BED)));
        same(time(path(new Feed.Rim(3), BED.withLength(2.4))), 9 * time(path(new Feed.Rim(1), BED)));
        Filling soft = Filling.softBag(WOVEN, 1.5, 95e3, CONSTANT);
        same(soft.fillTime().orElseThrow(), 9 * soft.timeAt(0.5).orElseThrow());
    }

    /** With a slope and hoses too: a bed cut in two is the same bed. */
    @ParameterizedTest
    @MethodSource("feeds")
    void aBedCutInTwoFillsAlike(Feed feed) {
        Supply supply = Supply.toLine(List.of(new Hose(0.01, 2)), 0.6, 0.004);
        FlowPath whole = path(feed, BED).withRise(0.5).withSupply(supply);
        FlowPath cut = path(feed, BED.withLength(0.3), BED.withLength(0.5))
                .withRise(0.5)
                .withSupply(supply);
        same(time(cut), time(whole));
        Filling a = Filling.of(whole, DRIVE, CONSTANT);
        Filling b = Filling.of(cut, DRIVE, CONSTANT);
        for (double share : new double[] {0.1, 0.375, 0.6}) {
            double t = share * time(whole);
            assertThat(b.positionAt(t)).isCloseTo(a.positionAt(t), within(1e-11));
            assertThat(b.hoseLoss(share)).isCloseTo(a.hoseLoss(share), within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-3, 0.01, 0.3, 0.8})
    void closedFormsAreThePlainCases(double L) {
        same(time(path(Feed.LINE, BED.withLength(L))), Darcy.lineTime(0.5, MU, L, 1e-10, 95e3));
        // The radius of the front is itself rounded, by some 1e-16 of 0.8 m.
        double rounding = EXACT + 2e-16 / L;
        double rim = Darcy.rimTime(0.5, MU, 0.8, 0.8 - L, 1e-10, 95e3);
        assertThat(time(path(new Feed.Rim(0.8), BED.withLength(L))) / rim).isCloseTo(1, within(rounding));
        double centre = Darcy.centreTime(0.5, MU, 0.02 + L, 0.02, 1e-10, 95e3);
        assertThat(time(path(new Feed.Centre(0.02), BED.withLength(L))) / centre)
                .isCloseTo(1, within(rounding));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, -0.3, -1e-3, 1e-9, 1e-3, 0.3, 1})
    void aSlopeIsThatOfItsClosedForm(double rise) {
        double gamma = 1100 * Drive.GRAVITY * rise / 1.0;
        double closed = Darcy.riseTime(0.5, MU, 1, 1e-10, 95e3, gamma).orElseThrow();
        same(time(path(Feed.LINE, BED.withLength(1)).withRise(rise)), closed);
        assertThat(closed > Darcy.lineTime(0.5, MU, 1, 1e-10, 95e3)).isEqualTo(rise > 0);
    }

    /** Both ways of reckoning the logarithm of the slope agree where one takes over from the other. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.1})
    void theSlopeHasNoStep(double share) {
        double below = Darcy.riseTime(0.5, MU, 1, 1e-10, 1e5, share * 1e5 * (1 - 1e-12))
                .orElseThrow();
        double above = Darcy.riseTime(0.5, MU, 1, 1e-10, 1e5, share * 1e5 * (1 + 1e-12))
                .orElseThrow();
        assertThat(above / below).isCloseTo(1, within(1e-11));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.1})
    void theDiscHasNoStep(double share) {
        double below = disc(share * (1 - 1e-12));
        assertThat(disc(share * (1 + 1e-12)) / below).isCloseTo(1, within(1e-11));
    }

    private static double disc(double share) {
        return share < 0
                ? Darcy.rimTime(0.5, MU, 1, 1 + share, 1e-10, 95e3)
                : Darcy.centreTime(0.5, MU, 1 + share, 1, 1e-10, 95e3);
    }

    @Test
    void noRiseIsALevelPath() {
        same(time(path(Feed.LINE, BED).withRise(0)), time(path(Feed.LINE, BED)));
        assertThat(Darcy.riseTime(0.5, MU, 0.8, 1e-10, 95e3, 0)).hasValue(Darcy.lineTime(0.5, MU, 0.8, 1e-10, 95e3));
    }

    /** 95 kPa hold 8.807 m of resin of 1100 kg/m³: a path up to there never fills, and the front stops there. */
    @Test
    void resinStopsWhereItsWeightHoldsIt() {
        double top = 95e3 / (1100 * Drive.GRAVITY);
        Filling up = Filling.of(path(Feed.LINE, BED.withLength(10)).withRise(10), DRIVE, CONSTANT);
        assertThat(up.fillTime()).isEmpty();
        assertThat(up.timeAt(9)).isEmpty();
        for (double near : new double[] {8, 8.8, top - 1e-3, top - 1e-6}) {
            double closed = Darcy.riseTime(0.5, MU, near, 1e-10, 95e3, 1100 * Drive.GRAVITY)
                    .orElseThrow();
            assertThat(up.timeAt(near).orElseThrow() / closed).isCloseTo(1, within(1e-10));
        }
        assertThat(up.greatestLength().orElseThrow()).isCloseTo(top, within(1e-12));
        assertThat(up.positionAt(1e9)).isCloseTo(top, within(1e-6)).isLessThanOrEqualTo(top);
        assertThat(Darcy.riseTime(0.5, MU, 10, 1e-10, 95e3, 1100 * Drive.GRAVITY))
                .isEmpty();
    }

    @Test
    void aRimThatClosesAtItsMiddle() {
        double closed = 0.5 * MU * 0.8 * 0.8 / (4 * 1e-10 * 95e3);
        same(Darcy.rimTime(0.5, MU, 0.8, 0, 1e-10, 95e3), closed);
        same(time(path(new Feed.Rim(0.8), BED)), closed);
        assertThat(Darcy.rimTime(0.5, MU, 0.8, 1e-9, 1e-10, 95e3)).isCloseTo(closed, within(1e-9 * closed));
        Filling filling = Filling.of(path(new Feed.Rim(0.8), BED), DRIVE, CONSTANT);
        assertThat(filling.greatestLength()).hasValue(0.8);
        assertThat(filling.positionAt(2 * closed)).isEqualTo(0.8);
        assertThat(filling.reach(2 * closed)).isEqualTo(0.8);
    }

    /** Far from its middle a disc is as good as straight, from outside and from inside. */
    @Test
    void aWideDiscIsALine() {
        double line = Darcy.lineTime(0.5, MU, 0.8, 1e-10, 95e3);
        assertThat(time(path(new Feed.Centre(1e6), BED))).isCloseTo(line, within(1e-5 * line));
        assertThat(time(path(new Feed.Rim(1e6), BED))).isCloseTo(line, within(1e-5 * line));
    }

    @Test
    void aSlowRiseOfViscosityIsNone() {
        RisingViscosity slow = RisingViscosity.rising(MU, 1e15);
        double level = time(path(Feed.LINE, BED));
        assertThat(time(path(Feed.LINE, BED), DRIVE, slow)).isCloseTo(level, within(1e-9 * level));
    }

    @Test
    void aResinThatSetsNeverPassesItsGreatestLength() {
        RisingViscosity rising = RisingViscosity.rising(MU, 2000);
        double greatest = Darcy.greatestLineLength(0.5, MU, 2000, 1e-10, 95e3);
        Filling filling = Filling.of(path(Feed.LINE, BED), DRIVE, rising);
        assertThat(greatest).isLessThan(0.8);
        assertThat(filling.fillTime()).isEmpty();
        assertThat(filling.greatestLength().orElseThrow()).isCloseTo(greatest, within(1e-12));
        assertThat(filling.positionAt(1e6)).isCloseTo(greatest, within(1e-12));
        assertThat(Darcy.risingViscosityTime(2000, 2000)).isEmpty();
    }

    @Test
    void reachGoesOnBeyondTheVent() {
        Filling filling = Filling.of(path(Feed.LINE, BED), DRIVE, CONSTANT);
        double t = 4 * filling.fillTime().orElseThrow();
        assertThat(filling.positionAt(t)).isEqualTo(0.8);
        assertThat(filling.reach(t)).isCloseTo(1.6, within(1e-12));
        assertThat(filling.greatestLength()).isEmpty();
        assertThat(filling.reach(0)).isZero();
        assertThat(filling.front(List.of(0.0, t))).containsExactly(new FrontPoint(0, 0), new FrontPoint(t, 0.8));
    }

    /** At the feed the hoses take all; on the way they share with the bed as resistances do. */
    @Test
    void hosesTakeTheirShareOfThePressure() {
        Supply supply = Supply.toLine(List.of(new Hose(0.008, 3)), 0.6, 0.005);
        Filling filling = Filling.of(path(Feed.LINE, BED).withSupply(supply), DRIVE, CONSTANT);
        double loss = filling.hoseLoss(0.5);
        double throughHose = Hose.flowRate(0.008, 3, MU, loss);
        double throughBed = 0.6 * 0.005 * 1e-10 / MU * (95e3 - loss) / 0.5;
        same(throughHose, throughBed);
        assertThat(filling.hoseLoss(0)).isEqualTo(95e3);
        assertThat(time(path(Feed.LINE, BED).withSupply(supply))).isGreaterThan(time(path(Feed.LINE, BED)));
        assertThat(Filling.of(path(Feed.LINE, BED), DRIVE, CONSTANT).hoseLoss(0.5))
                .isZero();
        assertThat(Filling.softBag(WOVEN, 1, 95e3, CONSTANT).hoseLoss(0.5)).isZero();
    }

    /** A disc through a hose: Q = 2π h K (ΔP − loss)/(μ ln(r/r0)). */
    @Test
    void hosesOfADisc() {
        Supply supply = Supply.toDisc(List.of(new Hose(0.008, 3), new Hose(0.006, 1)), 0.005);
        Filling filling = Filling.of(path(new Feed.Centre(0.02), BED).withSupply(supply), DRIVE, CONSTANT);
        double loss = filling.hoseLoss(0.4);
        double throughHose = loss / (MU * (Hose.resistance(0.008, 3) + Hose.resistance(0.006, 1)));
        same(throughHose, 2 * Math.PI * 0.005 * 1e-10 * (95e3 - loss) / (MU * Math.log(0.42 / 0.02)));
    }

    @Test
    void aBedThatDoesNotGiveWayIsRigid() {
        assertThat(new SoftBag(0.5, 0, 2000, 1e-10, 0.004, Optional.of(MESH)).shareOfRigidTime(95e3))
                .isCloseTo(1, within(1e-8));
        double slightly = new SoftBag(0.5, 1e-6, 2000, 1e-10, 0.004, Optional.empty()).shareOfRigidTime(95e3);
        assertThat(slightly).isBetween(1 - 1e-5, 1.0);
    }

    @Test
    void theSofterTheFaster() {
        double before = 1;
        for (double b : new double[] {0.01, 0.05, 0.1, 0.2, 0.3}) {
            double share = new SoftBag(0.4, b, 2000, 1e-10, 0.004, Optional.empty()).shareOfRigidTime(95e3);
            assertThat(share).isLessThan(before);
            before = share;
        }
    }

    /** Under a mesh that carries nearly all, the swelling bed only takes more resin: it slows the front. */
    @Test
    void aSoftBedUnderAGoodMeshFillsLater() {
        FlowMesh highway = new FlowMesh(0.001, 1e-6, 0.85);
        assertThat(new SoftBag(0.5, 0.07, 2000, 1e-10, 0.004, Optional.of(highway)).shareOfRigidTime(95e3))
                .isGreaterThan(1);
    }

    @Test
    void thicknessCountsOnlyAgainstAMesh() {
        SoftBag thick = new SoftBag(0.5, 0.07, 2000, 1e-10, 0.04, Optional.empty());
        same(thick.shareOfRigidTime(95e3), WOVEN.shareOfRigidTime(95e3));
    }

    @Test
    void fibreContentBehindTheFrontFollowsTheCompaction() {
        assertThat(WOVEN.fibreVolumeFractionAt(0, 95e3)).isEqualTo(0.5);
        same(WOVEN.fibreVolumeFractionAt(95e3, 95e3), 0.5 * Math.pow(2.0 / 97, 0.07));
        assertThat(WOVEN.fibreVolumeFractionAt(40e3, 95e3)).isBetween(0.38, 0.5);
    }

    /** The soft bed with rising viscosity is the soft bed at the viscosity of the start, in transformed time. */
    @Test
    void risingViscosityUnderASoftBag() {
        RisingViscosity rising = RisingViscosity.rising(MU, 7200);
        double t0 = Filling.softBag(WOVEN, 1, 95e3, CONSTANT).fillTime().orElseThrow();
        Filling filling = Filling.softBag(WOVEN, 1, 95e3, rising);
        same(filling.fillTime().orElseThrow(), -7200 * Math.log(1 - t0 / 7200));
        assertThat(filling.positionAt(filling.timeAt(0.6).orElseThrow())).isCloseTo(0.6, within(1e-12));
        same(filling.greatestLength().orElseThrow(), Math.sqrt(7200 / t0));
        assertThat(filling.length()).isEqualTo(1);
    }

    @Test
    void underMeshTheFrontHasNoStepAtTheLag() {
        MeshedLaminate stack = new MeshedLaminate(MESH, 0.004, 1e-10, 1e-12, 0.5);
        double d = stack.lag();
        double wetThrough = Darcy.throughThicknessTime(0.5, MU, 0.004, 1e-12, 95e3);
        same(stack.meshFrontTime(d, MU, 95e3), wetThrough);
        assertThat(stack.meshFrontTime(d * (1 + 1e-9), MU, 95e3)).isCloseTo(wetThrough, within(1e-6));
        assertThat(stack.meshFrontTime(0, MU, 95e3)).isZero();
        assertThat(stack.meshFrontTime(d / 2, MU, 95e3)).isBetween(0.0, wetThrough);
    }

    /** A mesh that holds nothing: √(6 K1 h1 h2/Kz); and the front at half the lag has wet the depth that lags so. */
    @Test
    void theLagOfAnEmptyMesh() {
        double A = 1e-12 / (3e-9 * 0.001);
        same(MeshedLaminate.lag(A, 0, 0.004), Math.sqrt(6 * 3e-9 * 0.001 * 0.004 / 1e-12));
        MeshedLaminate stack = new MeshedLaminate(MESH, 0.004, 1e-10, 1e-12, 0.5);
        double depth = 0.0015;
        double behind = MeshedLaminate.lag(A, 0.85 * 0.001 / 0.5, depth);
        same(stack.meshFrontTime(behind, MU, 95e3), Darcy.throughThicknessTime(0.5, MU, depth, 1e-12, 95e3));
        assertThat(MeshedLaminate.lag(A, 0.001, 0)).isZero();
    }

    @Test
    void anisotropyTurnsBackAndForth() {
        Anisotropy bed = new Anisotropy(2e-10, 5e-11);
        same(bed.axisAlong(bed.equivalentRadius(0.37)), 0.37);
        Anisotropy turned = new Anisotropy(5e-11, 2e-10);
        same(turned.effective(), bed.effective());
        same(turned.equivalentRadius(bed.axisAcross(0.37)), bed.equivalentRadius(0.37));
        same(new Anisotropy(1e-10, 1e-10).equivalentRadius(0.37), 0.37);
    }

    @Test
    void permeabilityScalesThereAndBack() {
        same(Permeability.scaled(Permeability.scaled(1e-10, 0.45, 0.55), 0.55, 0.45), 1e-10);
        double step = 1e-6;
        double slope = Math.log(Permeability.scaled(1, 0.5, 0.5 * (1 + step))) / Math.log1p(step);
        assertThat(slope).isCloseTo(Permeability.sensitivity(0.5), within(1e-5));
    }

    @Test
    void compactionGivesBackItsOwnPoints() {
        Compaction bed = new Compaction(0.5, 1e5, Compaction.exponent(0.5, 1e5, 0.45, 3e4));
        same(bed.at(1e5), 0.5);
        same(bed.at(3e4), 0.45);
    }

    @Test
    void aStripGivesBackItsPermeability() {
        double t = Darcy.lineTime(0.55, 0.3, 0.4, 2.5e-10, 90e3);
        same(Darcy.stripPermeability(0.55, 0.3, 0.4, 90e3, t), 2.5e-10);
        same(Darcy.lineLength(0.55, 0.3, t, 2.5e-10, 90e3), 0.4);
    }

    @Test
    void viscosityRises() {
        RisingViscosity rising = RisingViscosity.rising(0.2, 600);
        same(rising.at(600), 0.2 * Math.E);
        assertThat(rising.at(0)).isEqualTo(0.2);
        assertThat(CONSTANT.at(1e6)).isEqualTo(MU);
        same(rising.timeAtInitial(rising.time(500).orElseThrow()), 500);
        assertThat(rising.time(600)).isEmpty();
        assertThat(CONSTANT.time(500)).hasValue(500);
        assertThat(CONSTANT.timeAtInitial(500)).isEqualTo(500);
    }
}
