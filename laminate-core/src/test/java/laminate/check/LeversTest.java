package laminate.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.check.Remedy.Lever;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LeversTest {
    private static final PlyStrength STRENGTH = new PlyStrength(
            1, 2, 3, 4, 5, OptionalDouble.of(6), Optional.of(new StrainLimits(0.1, 0.2, 0.3, 0.4, 0.5)));

    private static final MakeUp MAKE_UP = new MakeUp(
            Laminate.of(List.of(
                    new Ply(Lamina.of(40e9, 10e9, 4e9, 0.3).withStrength(STRENGTH), 0.001, 30),
                    new Ply(CheckedParts.CORE, 0.01, 0),
                    new Ply(CheckedParts.FACE, 0.002, 0))),
            Map.of(1, new CoreSupport(75e6, true, OptionalDouble.of(0.01))));

    @Test
    void everyStrengthOfAPlyIsRaised() {
        MakeUp pulled = Levers.pull(MAKE_UP, Lever.PLY_STRENGTH, 2);
        assertThat(pulled.laminate().plies().get(0).lamina().strength())
                .contains(new PlyStrength(
                        2, 4, 6, 8, 10, OptionalDouble.of(12), Optional.of(new StrainLimits(0.2, 0.4, 0.6, 0.8, 1))));
        assertThat(pulled.laminate().plies().get(1))
                .isEqualTo(MAKE_UP.laminate().plies().get(1));
        assertThat(pulled.laminate().plies().get(0).angleDegrees()).isEqualTo(30);
    }

    @Test
    void aThickerLaminateIsThickerEverywhere() {
        MakeUp pulled = Levers.pull(MAKE_UP, Lever.LAMINATE_THICKNESS, 2);
        assertThat(pulled.laminate().plies()).extracting(Ply::thickness).containsExactly(0.002, 0.02, 0.004);
    }

    @Test
    void aStifferCoreIsStifferThroughItsThicknessToo() {
        MakeUp pulled = Levers.pull(MAKE_UP, Lever.CORE_STIFFNESS, 3);
        assertThat(pulled.cores()).containsEntry(1, new CoreSupport(225e6, true, OptionalDouble.of(0.01)));
        assertThat(pulled.laminate().plies().get(1).lamina().G13()).isEqualTo(84e6);
    }

    /** A factor of 1 changes nothing, another one something, except the mass. */
    @ParameterizedTest
    @EnumSource(Lever.class)
    void everyLeverMovesSomething(Lever lever) {
        assertThat(Levers.pull(MAKE_UP, lever, 1)).isEqualTo(MAKE_UP);
        boolean moved = !Levers.pull(MAKE_UP, lever, 1.5).equals(MAKE_UP);
        assertThat(moved).isEqualTo(lever != Lever.MASS);
    }
}
