package laminate.plan.infusion;

import java.util.Optional;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.infusion.ResinViscosity;
import laminate.process.LayUp;
import laminate.process.cure.Viscosity;
import laminate.process.flow.RisingViscosity;

/**
 * How thick an infusion's resin is.
 *
 * @param atStart μ₀ (Pa·s)
 * @param time τ, in which it grows by the factor e (s), empty where it stays
 * @param isRiseUnknown whether it grows, but how soon is not known, as its gel time is not
 */
record ViscosityReading(Figure atStart, Optional<Figure> time, boolean isRiseUnknown) {

    static ViscosityReading of(ResinViscosity stated, Optional<LayUp> layUp, GelReading gel) {
        Optional<Resin> resin = layUp.map(LayUp::resin);
        Figure atStart = stated.atStart().isPresent()
                ? Figure.stated(stated.atStart().getAsDouble())
                : resin.flatMap(each -> each.figures().find(Property.VISCOSITY))
                        .orElseThrow(() -> new IllegalArgumentException(resin.map(Resin::id)
                                        .map(id -> id + " states no viscosity")
                                        .orElse(
                                                "plies given directly name no resin, so that nothing tells its viscosity")
                                + "; add viscosity: to the infusion, such as 0.2 Pa·s"));
        Optional<Figure> time = time(stated, resin, gel);
        return new ViscosityReading(atStart, time, rises(resin) && time.isEmpty());
    }

    /** Styrenic resins stay near flat until close to gel, others thicken from the start. */
    private static Optional<Figure> time(ResinViscosity stated, Optional<Resin> resin, GelReading gel) {
        if (stated.riseTime().isPresent()) {
            return Optional.of(Figure.stated(stated.riseTime().getAsDouble()));
        }
        return gel.time()
                .filter(known -> rises(resin))
                .map(known -> new Figure(
                        Viscosity.riseTime(known.value()),
                        "steady rise to 1000 times the viscosity at gel, from memory; gel time of " + known.source(),
                        Status.MEMORY));
    }

    private static boolean rises(Optional<Resin> resin) {
        return resin.filter(each -> !each.family().isStyrenic()).isPresent();
    }

    RisingViscosity law() {
        return time.isPresent()
                ? RisingViscosity.rising(atStart.value(), time.get().value())
                : RisingViscosity.constant(atStart.value());
    }
}
