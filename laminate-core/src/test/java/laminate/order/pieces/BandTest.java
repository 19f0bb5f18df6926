package laminate.order.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandTest {
    /** By hand: a rectangle of 2 m by 1 m; at 45° it measures 3/√2 across and along. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 2",
        "90, 2, 1",
        "180, 1, 2",
        "-90, 2, 1",
        "45, 2.12132034356, 2.12132034356",
        "-45, 2.12132034356, 2.12132034356",
        // 2·sin 30° + cos 30°, 2·cos 30° + sin 30°
        "30, 1.86602540378, 2.23205080757"
    })
    void theWholeIsTheRectangleAboutIt(double degrees, double across, double along) {
        Band band = new Band(2, 1, degrees);
        assertThat(band.across()).isCloseTo(across, within(1e-10));
        assertThat(band.along(0, band.across())).isCloseTo(along, within(1e-10));
    }

    /** By hand: at 45° a strip at the corner of a square, t wide, is a triangle of base 2·t. */
    @Test
    void aStripAtACornerIsShort() {
        Band band = new Band(1, 1, 45);
        assertThat(band.along(0, 0.2)).isCloseTo(0.4, within(1e-12));
        assertThat(band.along(band.across() - 0.2, band.across())).isCloseTo(0.4, within(1e-12));
    }

    /** Whatever the rectangle: points of it in a strip reach as far as is said along it, and no farther. */
    @Test
    void aStripIsAsLongAsItsPointsReach() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            double length = 0.2 + 3 * random.nextDouble();
            double width = 0.2 + 2 * random.nextDouble();
            double degrees = random.nextInt(181) - 90;
            Band band = new Band(length, width, degrees);
            double from = 0.6 * random.nextDouble() * band.across();
            double to = from + (0.1 + 0.3 * random.nextDouble()) * band.across();
            double reach = reach(length, width, Math.toRadians(degrees), from, to, random);
            assertThat(band.along(from, to)).isBetween(reach - 1e-9, reach + 0.12 * (length + width));
        }
    }

    private static double reach(double length, double width, double angle, double from, double to, Random random) {
        double across = length * Math.abs(Math.sin(angle)) + width * Math.abs(Math.cos(angle));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 20_000; i++) {
            double x = (random.nextDouble() - 0.5) * length;
            double y = (random.nextDouble() - 0.5) * width;
            double v = y * Math.cos(angle) - x * Math.sin(angle) + across / 2;
            if (v >= from && v <= to) {
                double u = x * Math.cos(angle) + y * Math.sin(angle);
                least = Math.min(least, u);
                most = Math.max(most, u);
            }
        }
        return most - least;
    }
}
