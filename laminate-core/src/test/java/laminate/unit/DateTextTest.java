package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DateTextTest {
    @Test
    void readsEveryDayOfFourYearsAsTheCalendarWritesIt() {
        for (LocalDate day = LocalDate.of(2023, 12, 1); day.getYear() < 2028; day = day.plusDays(1)) {
            assertThat(DateText.day(day.toString())).isEqualTo(day);
        }
    }

    @Test
    void readsEveryMinuteOfADay() {
        for (int minute = 0; minute < 24 * 60; minute++) {
            LocalTime time = LocalTime.of(minute / 60, minute % 60);
            assertThat(DateText.timeOfDay(time.toString())).isEqualTo(time);
        }
        assertThat(DateText.timeOfDay("8:05")).isEqualTo(LocalTime.of(8, 5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026",
                "2026-1-5",
                "2026-02-29",
                "2026-13-01",
                "2026-00-10",
                "2026/01/15",
                "2026-01-15T00:00",
                "+2026-01-1",
                "26-01-2015",
                "２０２６-01-15"
            })
    void refusesWhatIsNoDay(String text) {
        assertThatThrownBy(() -> DateText.day(text)).isInstanceOf(DateTimeException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "8", "800", "8:0", "24:00", "08:60", "-1:00", ":00", "008:00", "08:00:00"})
    void refusesWhatIsNoTimeOfDay(String text) {
        assertThatThrownBy(() -> DateText.timeOfDay(text)).isInstanceOf(DateTimeException.class);
    }
}
