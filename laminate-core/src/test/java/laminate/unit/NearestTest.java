package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KEYS = List.of(
            "name", "area", "layers", "coatings", "fibre-mass-fraction", "fibre-volume-fraction", "mat-450", "mat-300");

    @ParameterizedTest(name = "[{index}] {0} -> {1}")
    @CsvSource({
        "nmae, name",
        "Area, area",
        "layer, layers",
        "coating, coatings",
        "fiber-mass-fraction, fibre-mass-fraction",
        "fibre_volume_fraction, fibre-volume-fraction",
        "mat450, mat-450",
        "mat-301, mat-300",
        "name, name",
    })
    void findsWhatWasMeant(String word, String meant) {
        assertThat(Nearest.of(word, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"x", "roving-600", "zone", "''"})
    void isSilentWhereNothingIsNear(String word) {
        assertThat(Nearest.of(word, KEYS)).isEmpty();
    }

    @Test
    void caseBreaksTiesAndThenTheOrderGiven() {
        assertThat(Nearest.of("mPa", List.of("MPA", "MPa", "mPA"))).contains("MPa");
        assertThat(Nearest.of("ab", List.of("ac", "ad"))).contains("ac");
        assertThat(Nearest.of("ab", List.of())).isEmpty();
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({
        "'', '', 0",
        "abc, '', 3",
        "'', abc, 3",
        "abc, abc, 0",
        "abc, acb, 1",
        "abc, abxc, 1",
        "abc, ac, 1",
        "abc, axc, 1",
        "kitten, sitting, 3",
        "ca, abc, 3",
    })
    void distanceIsThatOfOptimalStringAlignment(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
    }

    @Test
    void distanceIsSymmetricAndNoLongerThanTheLongerWord() {
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            String a = word(random);
            String b = word(random);

            assertThat(Nearest.distance(a, b))
                    .isEqualTo(Nearest.distance(b, a))
                    .isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int length = random.nextInt(8); length > 0; length--) {
            word.append((char) ('a' + random.nextInt(3)));
        }
        return word.toString();
    }
}
