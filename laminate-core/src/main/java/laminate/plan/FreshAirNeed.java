package laminate.plan;

import java.util.Optional;
import laminate.material.Figure;
import laminate.process.ShopFloor;
import laminate.process.cure.Styrene;

/** The stage that asks for most fresh air: its styrene is given off from the first mix until the last has gelled. */
final class FreshAirNeed {
    private FreshAirNeed() {}

    static Optional<FreshAir> greater(Optional<FreshAir> known, Stage stage, StageWork work, ShopFloor floor) {
        ClockTime end = stage.gelled().orElse(stage.end());
        double time = end.seconds() - stage.start().seconds() - stage.dryTime();
        if (!stage.fits() || work.styrene() <= 0 || time <= 0) {
            return known;
        }
        Figure limit = floor.styreneLimit().orElse(Styrene.USUAL_LIMIT);
        double flow = Styrene.freshAir(work.styrene(), time, limit.value());
        if (known.isPresent() && known.get().flow() >= flow) {
            return known;
        }
        return Optional.of(new FreshAir(
                stage.number(), work.styrene(), time, limit.value(), flow, limit.source(), limit.status()));
    }
}
