package laminate.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.Random;
import laminate.process.WorkingDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How long a batch takes by the clock. */
class MouldTimeTest {

    private static final double HOUR = 3600;

    private static MouldTime time(double setUp, double work, double cure, int pulls, double day) {
        return new MouldTime(
                setUp * HOUR, work * HOUR, cure * HOUR, pulls, new WorkingDay(LocalTime.of(8, 0), day * HOUR));
    }

    /** Hours; a day of eight. The first: laid till noon, cured at four at night, the next begun in the morning. */
    @ParameterizedTest
    @CsvSource({
        "0, 4, 16, 1, 20, 1",
        "0, 4, 16, 3, 68, 3",
        "0, 4, 2, 2, 28, 2", // begun at two in the afternoon, two hours are left for the next morning
        "0, 10, 0, 2, 52, 3",
        "0, 8, 16, 2, 48, 2", // cured as the next day begins
        "6, 4, 16, 1, 42, 2",
        "0, 0, 16, 2, 32, 2",
        "0, 24, 0, 1, 56, 3"
    })
    void workIsByDayAndCureByDayAndNight(double setUp, double work, double cure, int pulls, double hours, int days) {
        MouldTime time = time(setUp, work, cure, pulls, 8);

        assertThat(time.length()).isCloseTo(hours * HOUR, within(1e-6));
        assertThat(time.days()).isEqualTo(days);
    }

    /** Against a clock that goes on minute by minute. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void agreesWithAClock(long seed) {
        Random random = new Random(seed);
        int setUp = random.nextInt(700);
        int work = 1 + random.nextInt(900);
        int cure = random.nextInt(2000);
        int pulls = 1 + random.nextInt(6);
        int day = 60 * (1 + random.nextInt(24));

        int clock = afterWork(0, setUp, day);
        for (int pull = 0; pull < pulls; pull++) {
            clock = afterWork(clock, work, day) + cure;
        }
        assertThat(time(setUp / 60.0, work / 60.0, cure / 60.0, pulls, day / 60.0)
                        .length())
                .isCloseTo(clock * 60.0, within(1e-6));
    }

    private static int afterWork(int from, int minutes, int day) {
        int clock = from;
        for (int left = minutes; left > 0; clock++) {
            left -= clock % 1440 < day ? 1 : 0;
        }
        return clock;
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> time(-1, 1, 1, 1, 8)).hasMessageContaining("set-up takes zero or more");
        assertThatThrownBy(() -> time(0, Double.NaN, 1, 1, 8)).hasMessageContaining("work takes zero or more");
        assertThatThrownBy(() -> time(0, 1, Double.POSITIVE_INFINITY, 1, 8)).hasMessageContaining("cure takes");
        assertThatThrownBy(() -> time(0, 1, 1, 0, 8)).hasMessageContaining("one or more, not 0");
    }
}
