package laminate.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Mixing;

/**
 * Sizes the mixes of pots; where none fit, looks for the nearest dose, or the fewest hands, with which they do, and where
 * neither alone is enough for the fewest hands with the nearest dose.
 */
final class MixSizing {
    /** Doses are suggested in whole steps of 0.1 % of the resin. */
    private static final int STEPS = 1000;

    /** The ends of a range are reached but for rounding. */
    private static final double SLACK = 1e-6;

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
        if (suggestions.isEmpty() && !pot.dose().agent().isHardener()) {
            both(pot).ifPresent(suggestions::add);
        }
        return suggestions;
    }

    /** The dose nearest to the planned one with which mixes fit. A hardener's ratio is no way to change the speed. */
    private Optional<Suggestion> dose(PotNeed pot) {
        return dose(pot, crew, OptionalInt.empty());
    }

    private Optional<Suggestion> dose(PotNeed pot, int hands, OptionalInt told) {
        for (double ratio : dosesByNearness(pot)) {
            Dose dose = new Dose(pot.dose().agent(), ratio);
            int count = new PotSizing(pot.with(dose), temperature, hands, mixing).count();
            if (count > 0) {
                return Optional.of(new Suggestion(OptionalDouble.of(ratio), told, count));
            }
        }
        return Optional.empty();
    }

    private Optional<Suggestion> both(PotNeed pot) {
        for (int hands = crew + 1; hands <= MOST_HANDS; hands++) {
            Optional<Suggestion> found = dose(pot, hands, OptionalInt.of(hands));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The whole steps within the resin's range, those nearest to the planned dose first. */
    private static List<Double> dosesByNearness(PotNeed pot) {
        Resin.Cure cure = pot.resin().cureBy(pot.dose().agent().id()).orElseThrow();
        List<Double> doses = new ArrayList<>();
        long most = (long) Math.floor(cure.to().value() * STEPS + SLACK);
        for (long step = (long) Math.ceil(cure.from().value() * STEPS - SLACK); step <= most; step++) {
            doses.add((double) step / STEPS);
        }
        doses.sort(Comparator.comparing(dose -> Math.abs(dose - pot.dose().ratio())));
        return doses;
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
