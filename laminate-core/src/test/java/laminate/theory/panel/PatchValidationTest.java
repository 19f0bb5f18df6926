package laminate.theory.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import laminate.theory.Laminate;
import laminate.theory.TransverseShearStiffness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small patches, as a foot or a fitting, against Navier's double series. */
class PatchValidationTest {
    private static final int TERMS = 400;

    @ParameterizedTest
    @CsvSource({
        "0.6, 0.4, 0.3, 0.2, 0.05, 0.05",
        "0.6, 0.4, 0.17, 0.13, 0.03, 0.03",
        "1.2, 0.8, 0.9, 0.25, 0.08, 0.06",
        "1.2, 1.2, 0.6, 0.6, 0.12, 0.12",
        "0.4, 0.4, 0.06, 0.2, 0.06, 0.03"
    })
    void patchOnASandwichIsAsByNavier(double length, double width, double x, double y, double alongX, double alongY) {
        check(Panels.sandwich(), length, width, new PanelLoad.Patch(x, y, alongX, alongY, 900));
    }

    @ParameterizedTest
    @CsvSource({"0.6, 0.4, 0.3, 0.2, 0.05, 0.05", "0.6, 0.4, 0.17, 0.13, 0.03, 0.03"})
    void patchOnASolidPanelIsAsByNavier(double length, double width, double x, double y, double alongX, double alongY) {
        Laminate solid = Panels.plies(Panels.ROVING, 0.002, 0, 90, 90, 0);
        check(solid, length, width, new PanelLoad.Patch(x, y, alongX, alongY, 900));
    }

    private static void check(Laminate laminate, double length, double width, PanelLoad.Patch patch) {
        PanelResponse ours = PanelBending.of(Panel.of(laminate, length, width, Panels.SIMPLE), List.of(patch))
                .response();
        Navier series =
                Navier.patch(laminate, length, width, patch, TERMS, Optional.of(TransverseShearStiffness.of(laminate)));
        PanelPoint middle = series.at(patch.x(), patch.y());
        PanelPoint ourMiddle = ours.at(patch.x(), patch.y());
        assertThat(ours.convergence().reached()).isTrue();
        assertThat(ourMiddle.deflection()).isCloseTo(middle.deflection(), withinPercentage(0.03));
        assertThat(ourMiddle.resultants().moment().x())
                .isCloseTo(middle.resultants().moment().x(), withinPercentage(0.5));
        assertThat(ourMiddle.resultants().moment().y())
                .isCloseTo(middle.resultants().moment().y(), withinPercentage(0.5));
        double[] aside = {patch.x() + 0.7 * patch.alongX(), patch.y() + 0.3 * patch.alongY()};
        double shear = series.at(aside[0], aside[1]).Qx();
        assertThat(ours.at(aside[0], aside[1]).Qx()).isCloseTo(shear, withinPercentage(1.5));
        assertThat(ours.deflection(length / 2, width / 3))
                .isCloseTo(series.at(length / 2, width / 3).deflection(), offset(3e-4 * middle.deflection()));
    }

    /** The shear forces through the sides of a patch carry the whole of its force. */
    @Test
    void shearForcesAroundAPatchCarryItsForce() {
        PanelLoad.Patch patch = new PanelLoad.Patch(0.2, 0.15, 0.05, 0.05, 900);
        PanelResponse r = PanelBending.of(Panel.of(Panels.sandwich(), 0.6, 0.4, Panels.CLAMPED), List.of(patch))
                .response();
        Gauss line = Gauss.on(-0.025, 0.025, 12);
        double out = 0;
        for (int k = 0; k < line.size(); k++) {
            double s = line.point(k);
            double through = r.at(0.175, 0.15 + s).Qx()
                    - r.at(0.225, 0.15 + s).Qx()
                    + r.at(0.2 + s, 0.125).Qy()
                    - r.at(0.2 + s, 0.175).Qy();
            out += line.weight(k) * through;
        }
        assertThat(out).isCloseTo(900, withinPercentage(1));
    }

    /** Piecewise and over the whole panel the same where both settle: a patch of half the panel, laminate with every coupling. */
    @Test
    void piecesChangeNothingWhereOnePolynomialWillDo() {
        Panel panel = new Panel(Panels.unsymmetric(), 0.6, 0.4, Panels.CLAMPED, InPlane.HELD);
        List<PanelLoad> half = List.of(new PanelLoad.Patch(0.25, 0.2, 0.3, 0.2, 1000));
        Section section = new Section(panel.laminate(), TransverseShearStiffness.of(panel.laminate()));
        Basis whole = Basis.of(panel, Kinematics.FIRST_ORDER, new Orders(20, 20), true);
        double one = Ritz.solve(whole, section, half).deflection(0.25, 0.2);
        assertThat(PanelBending.of(panel, half).response().deflection(0.25, 0.2))
                .isCloseTo(one, withinPercentage(0.02));
    }

    /** A breakpoint at an edge is none, and a patch over the panel needs no pieces. */
    @Test
    void breakpointsLieWithinThePanel() {
        Panel panel = Panel.of(Panels.sandwich(), 0.6, 0.4, Panels.CLAMPED);
        assertThat(Mesh.of(panel, List.of(new PanelLoad.Patch(0.3, 0.2, 0.6, 0.4, 1)))
                        .isDivided())
                .isFalse();
        Mesh corner = Mesh.of(panel, List.of(new PanelLoad.Patch(0.05, 0.05, 0.1, 0.1, 1)));
        assertThat(corner.x()).startsWith(0, 0.1).endsWith(0.6).isSorted();
        assertThat(corner.y()).containsExactly(new double[] {0, 0.1, 0.24, 0.4}, offset(1e-12));
    }
}
