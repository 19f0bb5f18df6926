package laminate.estimate;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.coated;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.Workshop;
import org.junit.jupiter.api.Test;

/** Measured values set against their plan. */
class ComparisonsTest {
    /** The sheet of one mat of 300 g/m² at 30 %, without voids (m). */
    private static final double MAT_THICKNESS = 0.3 / 2560 + 0.7 / 1200;

    @Test
    void measuredIsSetAgainstThePlan() {
        Measured zoneReadings = new Measured(OptionalDouble.of(2.0), List.of(0.0011, 0.0012, 0.0013));
        Zone zone = new Zone(
                "lid",
                2,
                2,
                List.of(gelcoat(0.0005)),
                List.of(hand(mat(0.3))),
                Optional.empty(),
                ContentSet.TRADE,
                zoneReadings);
        Measured whole = new Measured(OptionalDouble.of(7.4), List.of(0.0014));
        Part part = new Part("lid", 5, List.of(zone), List.of(new Item("hinge", 1, 0.1, Optional.empty())), whole);
        PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(part);
        double gelcoat = 0.6 * (1 - (0.286 * 0.35 - 0.0529));
        assertThat(estimate.comparisons())
                .extracting(Comparison::what)
                .containsExactly("mass", "mean thickness", "mass of lid", "thickness of lid");
        Comparison mass = estimate.comparisons().get(0);
        assertThat(mass.planned().planned()).isCloseTo(4 * (1 + gelcoat) + 0.1, within(1e-13));
        assertThat(mass.difference()).isCloseTo(7.4 - 4 * (1 + gelcoat) - 0.1, within(1e-13));
        assertThat(mass.isMass()).isTrue();
        assertThat(mass.isInside()).isFalse();
        Comparison thickness = estimate.comparisons().get(3);
        assertThat(thickness.measured()).isCloseTo(0.0012, within(1e-16));
        assertThat(thickness.planned().planned()).isCloseTo(MAT_THICKNESS / 0.97 + gelcoat / 1250, within(1e-15));
        assertThat(thickness.isMass()).isFalse();
        assertThat(thickness.isInside()).isTrue();
        assertThat(estimate.comparisons().get(2).planned().planned()).isCloseTo(2 * (1 + gelcoat), within(1e-13));
        assertThat(estimate.comparisons().get(1).planned()).isEqualTo(estimate.meanThicknessWithCoatings());
        assertThat(estimate.meanThickness().planned()).isCloseTo(MAT_THICKNESS / 0.97, within(1e-15));
        assertThat(estimate.area()).isEqualTo(4);
    }

    @Test
    void nothingMeasuredNothingCompared() {
        assertThat(estimate(Workshop.USUAL, zone(1, hand(mat(0.3)))).comparisons())
                .isEmpty();
    }

    /** 10 m² of one mat of 300 g/m² at 30 % is 3 kg of fibre and 7 kg of resin; 1 kg more of resin makes 3 in 11. */
    @Test
    void aWeighedPartTellsOfItsFibreContent() {
        PartEstimate estimate = estimate(Workshop.USUAL, zone(10, hand(mat(0.3))));

        assertThat(estimate.fibreMassFractionAt(10).orElseThrow()).isCloseTo(0.3, within(1e-15));
        assertThat(estimate.fibreMassFractionAt(11).orElseThrow()).isCloseTo(3.0 / 11, within(1e-15));
        assertThat(estimate.fibreMassFractionAt(9).orElseThrow()).isCloseTo(3.0 / 9, within(1e-15));
        assertThat(estimate.fibreMassFractionAt(2.9)).isEmpty();
    }

    @Test
    void aWeighedPartWithGelcoatAndSeveralMouldingsTellsThatOfItsLaminate() {
        Part part = times(4, part(coated(List.of(gelcoat(0.0005)), hand(mat(0.3)))));
        PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(part);
        double area = estimate.area();

        double heavier = estimate.massEach().planned() + 0.2 * area;

        assertThat(estimate.fibreMassFractionAt(heavier).orElseThrow()).isCloseTo(0.3 / 1.2, within(1e-14));
    }

    private static PartEstimate estimate(Workshop workshop, Zone... zones) {
        return new Estimator(workshop).estimate(part(zones));
    }
}
