package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Mixing;

/** Sizes the mixes of pots; where none fit, looks for the nearest dose, or the fewest hands, with which they do. */
final class MixSizing {
    /** Doses are suggested in whole steps of 0.1 % of the resin. */
    private static final int STEPS = 1000;

    /** More than so many do not get round one mould. */
    private static final int MOST_HANDS = 12;

    private final double temperature;
    private final int crew;
    private final Mixing mixing;

    MixSizing(double temperature, int crew, Mixing mixing) {
        this.temperature = temperature;
        this.crew = crew;
        this.mixing = mixing;
    }

    StageResin size(PotNeed pot) {
        PotSizing sizing = new PotSizing(pot, temperature, crew, mixing);
        int count = sizing.count();
        return new StageResin(
                pot.resin(),
                pot.dose(),
                pot.use(),
                pot.need(),
                sizing.workTime(),
                sizing.life().film(),
                sizing.life().status(),
                sizing.life().source(),
                count > 0 ? sizing.mixes(count) : List.of(),
                count > 0 ? Optional.empty() : Optional.of(sizing.problem()),
                count > 0 ? List.of() : suggestions(pot));
    }

    private List<Suggestion> suggestions(PotNeed pot) {
        List<Suggestion> suggestions = new ArrayList<>();
        if (!pot.dose().agent().isHardener()) {
            dose(pot).ifPresent(suggestions::add);
        }
        hands(pot).ifPresent(suggestions::add);
        return suggestions;
    }

    /** The dose nearest to the planned one with which mixes fit. A hardener's ratio is no way to change the speed. */
    private Optional<Suggestion> dose(PotNeed pot) {
        Resin.Cure cure = pot.resin().cureBy(pot.dose().agent().id()).orElseThrow();
        double planned = pot.dose().ratio() * STEPS;
        int below = (int) Math.ceil(planned - 1e-6) - 1;
        int above = (int) Math.floor(planned + 1e-6) + 1;
        double least = cure.from().value() * STEPS - 1e-6;
        double most = cure.to().value() * STEPS + 1e-6;
        while (below >= least || above <= most) {
            boolean goDown = below >= least && (above > most || planned - below <= above - planned);
            int step = goDown ? below-- : above++;
            Dose dose = new Dose(pot.dose().agent(), (double) step / STEPS);
            int count = new PotSizing(pot.with(dose), temperature, crew, mixing).count();
            if (count > 0) {
                return Optional.of(new Suggestion(OptionalDouble.of(dose.ratio()), OptionalInt.empty(), count));
            }
        }
        return Optional.empty();
    }

    private Optional<Suggestion> hands(PotNeed pot) {
        for (int hands = crew + 1; hands <= MOST_HANDS; hands++) {
            int count = new PotSizing(pot, temperature, hands, mixing).count();
            if (count > 0) {
                return Optional.of(new Suggestion(OptionalDouble.empty(), OptionalInt.of(hands), count));
            }
        }
        return Optional.empty();
    }
}
