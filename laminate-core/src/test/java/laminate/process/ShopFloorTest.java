package laminate.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hands, scales and hours of a workshop. */
class ShopFloorTest {

    private static Mixing mixing(double share, double resinStep, double agentStep, double stroke, double largest) {
        return new Mixing(
                Figure.stated(share),
                resinStep,
                agentStep,
                OptionalDouble.of(stroke),
                OptionalDouble.of(largest),
                Figure.stated(60));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsReadPouredAndMixedIsAboveNothing(double value) {
        assertThatThrownBy(() -> mixing(0.7, value, 1e-4, 1e-5, 1))
                .hasMessageContaining("resin scale reads must be above");
        assertThatThrownBy(() -> mixing(0.7, 5e-3, value, 1e-5, 1))
                .hasMessageContaining("agent scale reads must be above");
        assertThatThrownBy(() -> mixing(0.7, 5e-3, 1e-4, value, 1)).hasMessageContaining("a pump stroke must be above");
        assertThatThrownBy(() -> mixing(0.7, 5e-3, 1e-4, 1e-5, value))
                .hasMessageContaining("the largest mix must be above");
        assertThatThrownBy(() -> new WorkingDay(LocalTime.NOON, value))
                .hasMessageContaining("a working day must be above 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.1, -0.7})
    void theUsableShareIsAShare(double share) {
        assertThatThrownBy(() -> mixing(share, 5e-3, 1e-4, 1e-5, 1))
                .hasMessage("the usable share must be above 0 and at most 1, not " + share);
    }

    @Test
    void whatIsBeyondADayOrBelowNothingIsRefused() {
        assertThatThrownBy(() -> new WorkingDay(LocalTime.NOON, 86_401))
                .hasMessageContaining("at most 86400 s long, not 86401");
        assertThatThrownBy(() -> ShopFloor.USUAL.withCrew(0)).hasMessage("a crew is 1 to 100, not 0");
        assertThatThrownBy(() -> ShopFloor.USUAL.withCrew(101)).hasMessage("a crew is 1 to 100, not 101");
        assertThatThrownBy(() -> new ShopFloor(1, Mixing.USUAL, WorkingDay.USUAL, Optional.of(Figure.stated(0))))
                .hasMessageContaining("a styrene limit must be above zero, not 0.0 kg/m³");
        assertThatThrownBy(() -> new Mixing(
                        Figure.stated(0.7), 1, 1, OptionalDouble.empty(), OptionalDouble.empty(), Figure.stated(-1)))
                .hasMessageContaining("mixing time must be zero or more, not -1.0 s");
    }

    /** 60 % of 20 min less one of mixing are 11 min. */
    @Test
    void mixingAndTheLastOfTheGelTimeAreNoTimeToLay() {
        Mixing own = mixing(0.6, 0.01, 0.001, 1e-5, 1.5);
        assertThat(own.usableTime(20 * 60)).isCloseTo(11 * 60, within(1e-9));
        assertThat(own.gelTimeFor(11 * 60)).isCloseTo(20 * 60, within(1e-9));
        assertThat(own.usableTime(90)).isZero();
    }

    @Test
    void everyCopyKeepsTheRest() {
        Mixing own = mixing(0.6, 0.01, 0.001, 1e-5, 1.5);
        WorkingDay day = new WorkingDay(LocalTime.of(7, 30), 6 * 3600);
        ShopFloor floor = ShopFloor.USUAL.withCrew(3).with(own).with(day);
        assertThat(floor).isEqualTo(new ShopFloor(3, own, day, Optional.empty()));
        Workshop workshop = Workshop.USUAL.withShopFloor(floor).withTemperature(291.15);
        assertThat(workshop.withLabour(Labour.USUAL)
                        .withStrength(StrengthBasis.LIBRARY)
                        .shopFloor())
                .isEqualTo(floor);
        assertThat(workshop.withShopFloor(ShopFloor.USUAL).temperature()).hasValue(291.15);
        assertThatThrownBy(() -> Workshop.USUAL.withTemperature(-1)).hasMessageContaining("above 0 K, not -1.0");
    }
}
