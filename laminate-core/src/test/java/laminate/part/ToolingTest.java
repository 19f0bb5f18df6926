package laminate.part;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.process.Process;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moulds and set-up of a part, and how it is infused. */
class ToolingTest {

    private static final Zone ZONE = zone(1, hand(mat(0.3)));

    private static Tooling mould(Process process, String price) {
        return new Tooling(
                Optional.of(process), Optional.of(Money.parse(price)), OptionalInt.of(300), 3600, Optional.empty());
    }

    private static Tooling of(OptionalInt life, double setUp, String price) {
        Optional<Money> money = price.isEmpty() ? Optional.empty() : Optional.of(Money.parse(price));
        return new Tooling(Optional.empty(), money, life, setUp, Optional.empty());
    }

    @Test
    void theProcessOfItsOwnGoesBeforeAny() {
        Tooling infused = mould(Process.INFUSION, "1400 GBP");
        Tooling any = of(OptionalInt.empty(), 60, "900 GBP");
        Part part = part(ZONE).withTooling(List.of(any, infused));
        assertThat(part.toolingFor(Process.INFUSION)).isEqualTo(infused);
        assertThat(part.toolingFor(Process.HAND_LAY_UP)).isEqualTo(any);
        assertThat(part(ZONE).withTooling(List.of(infused)).toolingFor(Process.VACUUM_BAG))
                .isEqualTo(Tooling.NONE);
    }

    @Test
    void aProcessHasOneToolingAtMost() {
        List<Tooling> twice = List.of(mould(Process.INFUSION, "1400 GBP"), mould(Process.INFUSION, "900 GBP"));
        assertThatThrownBy(() -> part(ZONE).withTooling(twice)).hasMessage("tooling for infusion is stated twice");
        List<Tooling> any = List.of(of(OptionalInt.empty(), 60, ""), of(OptionalInt.empty(), 90, ""));
        assertThatThrownBy(() -> part(ZONE).withTooling(any)).hasMessage("tooling for any process is stated twice");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void setUpTakesNoLessThanNoTime(double seconds) {
        assertThatThrownBy(() -> of(OptionalInt.empty(), seconds, ""))
                .hasMessageContaining("zero or more, not " + seconds);
    }

    @Test
    void aLifeIsOfAMouldWithAPrice() {
        assertThatThrownBy(() -> of(OptionalInt.of(0), 0, "900 GBP")).hasMessageContaining("one part or more, not 0");
        assertThatThrownBy(() -> of(OptionalInt.of(300), 0, "")).hasMessageContaining("a life of 300 parts");
        assertThatThrownBy(() -> planned(0, Optional.of(part(ZONE)))).hasMessageContaining("a plan is of one part or");
        assertThatThrownBy(() -> planned(50, Optional.empty())).hasMessageContaining("a plan of 50 parts says nothing");
        assertThat(planned(50, Optional.of(part(ZONE))).hasMould()).isTrue();
    }

    @Test
    void mouldsInHandAreCountedFromNone() {
        Tooling tooling = of(OptionalInt.empty(), 0, "900 GBP");
        assertThat(tooling.inHand()).isZero();
        assertThat(tooling.withInHand(2).named("tray").inHand()).isEqualTo(2);
        assertThatThrownBy(() -> tooling.withInHand(-1)).hasMessage("there cannot be -1 moulds in hand");
    }

    private static Tooling planned(int pulls, Optional<Part> mould) {
        return new Tooling(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                0,
                Optional.empty(),
                OptionalInt.of(pulls),
                mould);
    }

    @Test
    void theMouldIsThatOfTheProcessWhichAsksMostOfIt() {
        Tooling infused = mould(Process.INFUSION, "1400 GBP");
        Tooling bag = mould(Process.VACUUM_BAG, "900 GBP");
        Tooling any = of(OptionalInt.empty(), 60, "");
        Part skinByHand = part(zone(1, hand(mat(0.3)), ReinforcementLayer.of(mat(0.3), INFUSED)), ZONE);
        assertThat(skinByHand.withTooling(List.of(any, bag, infused)).toolingInUse())
                .isEqualTo(infused);
        assertThat(skinByHand.withTooling(List.of(any, bag)).toolingInUse()).isEqualTo(any);
        assertThat(part(ZONE).withTooling(List.of(bag, infused)).toolingInUse()).isEqualTo(Tooling.NONE);
    }

    @Test
    void plansStayWithPartAndZoneWhateverElseIsExchanged() {
        InfusionPlan plan = InfusionPlan.of(InfusionPath.line(1), 95e3, Preform.of(PermeabilitySource.Given.of(1e-10)));
        Part planned = part(ZONE.withInfusion(plan))
                .withInfusion(plan)
                .withTooling(List.of(mould(Process.INFUSION, "1400 GBP")));
        Part exchanged = planned.withLimits(Limits.NONE).withPanels(List.of()).withBeams(List.of());
        assertThat(exchanged).isEqualTo(planned);
        assertThat(exchanged.infusion()).contains(plan);
        Zone zone = planned.zones().get(0);
        assertThat(zone.infusion()).contains(plan);
        assertThat(zone.withLayers(zone.layers()).withLimits(Limits.NONE).with(zone.contents()))
                .isEqualTo(zone);
        assertThat(planned.withZones(List.of(ZONE)).zones()).containsExactly(ZONE);
    }
}
