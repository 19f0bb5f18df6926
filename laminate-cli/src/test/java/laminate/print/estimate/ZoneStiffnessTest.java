package laminate.print.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import org.junit.jupiter.api.Test;

class ZoneStiffnessTest {

    /**
     * Two layers without Poisson effect, 2 mm of 10 GPa on 3 mm of 2 GPa, by the transformed section of strength of
     * materials: the neutral axis lies (20·1 + 6·3.5)/26 = 1.5769 mm up, and EI = 6.6667 + 6.6568 + 4.5 + 22.1893 N·m.
     */
    @Test
    void aStripOfTwoLayersBendsAboutItsNeutralAxis() {
        Laminate strip = Laminate.of(
                List.of(new Ply(Lamina.isotropic(10e9, 0), 0.002, 0), new Ply(Lamina.isotropic(2e9, 0), 0.003, 0)));

        ZoneStiffness stiffness = ZoneStiffness.of(strip).orElseThrow();

        assertThat(stiffness.beamX()).isCloseTo(40.0128, within(1e-4));
        assertThat(stiffness.beamY()).isCloseTo(40.0128, within(1e-4));
        assertThat(stiffness.bending().Ex() * Math.pow(0.005, 3) / 12).isCloseTo(stiffness.beamX(), within(1e-9));
        assertThat(strip.bending().m11()).as("D11, about the mid-plane").isCloseTo(62.1667, within(1e-4));
    }
}
