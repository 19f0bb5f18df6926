package laminate.process;

import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.PAINT;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.VINYLESTER;
import static laminate.testing.TestMaterials.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import laminate.material.Figure;
import laminate.material.Property;
import org.junit.jupiter.api.Test;

/** Styrene and solvent that leave a resin. */
class EvaporationTest {
    private static final double HAND_SHARE = 0.286 * 0.42 - 0.0529;

    /** Below 33 % of styrene the factors no longer hold; what is lost follows what is held. */
    @Test
    void styreneFactorsScaleBelowTheirRange() {
        assertThat(Evaporation.byHand(with(POLYESTER, Property.STYRENE_CONTENT, 0.33)))
                .isCloseTo(0.286 * 0.33 - 0.0529, within(1e-15));
        assertThat(Evaporation.byHand(with(POLYESTER, Property.STYRENE_CONTENT, 0.11)))
                .isCloseTo((0.286 * 0.33 - 0.0529) / 3, within(1e-15));
        assertThat(Evaporation.byHand(EPOXY)).isZero();
        assertThat(Evaporation.bySpray(EPOXY)).isZero();
        assertThat(Evaporation.ofSolvent(EPOXY)).isZero();
        // A solid that shrinks without losing mass has no solvent to lose.
        assertThat(Evaporation.ofSolvent(with(PAINT, Property.SHRINKAGE, 0.05))).isZero();
    }

    /** Trade, unified factors: hand lay-up loses 5 to 8 % of resin at 35 to 45 % styrene, sprayed gelcoat 12 to 22 %. */
    @Test
    void styreneFactorsLieInTheirBand() {
        assertThat(Evaporation.byHand(with(POLYESTER, Property.STYRENE_CONTENT, 0.35)))
                .isCloseTo(0.047, within(0.001));
        assertThat(Evaporation.byHand(with(POLYESTER, Property.STYRENE_CONTENT, 0.45)))
                .isCloseTo(0.076, within(0.001));
        assertThat(Evaporation.bySpray(with(GELCOAT, Property.STYRENE_CONTENT, 0.40)))
                .isCloseTo(0.219, within(0.001));
    }

    @Test
    void theWorkshopsOwnEvaporationCountsForStyrenicResins() {
        Workshop usual = Workshop.USUAL;
        Workshop own = new Workshop(
                usual.temperature(),
                usual.contentRules(),
                usual.voids(),
                usual.losses(),
                false,
                Map.of(Process.HAND_LAY_UP, Figure.stated(0.04)),
                usual.labour(),
                usual.consumables(),
                usual.stiffness(),
                usual.strength());
        assertThat(own.evaporation(Process.HAND_LAY_UP, POLYESTER)).isEqualTo(0.04);
        assertThat(own.evaporation(Process.HAND_LAY_UP, EPOXY)).isZero();
        assertThat(own.evaporation(Process.VACUUM_BAG, POLYESTER)).isCloseTo(HAND_SHARE, within(1e-15));
        assertThat(own.evaporation(Process.INFUSION, VINYLESTER)).isZero();
    }
}
