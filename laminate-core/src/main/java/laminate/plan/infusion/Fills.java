package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.infusion.FeedKind;
import laminate.process.flow.Darcy;
import laminate.process.flow.Filling;
import laminate.process.flow.FrontPoint;
import laminate.process.flow.MeshedLaminate;

/** What a model of the flow answers: how the front runs, how far it gets, what the hose takes. */
final class Fills {
    /** Into how many steps of time, or of the way, the front is told. */
    private static final int STEPS = 10;

    /** How closely the size of a rim is found: far closer than any permeability is known. */
    private static final double CLOSE = 1e-9;

    private static final double SQUARE = Math.sqrt(2);

    private final FlowModel model;
    private final Scatter scatter;

    Fills(FlowModel model, Scatter scatter) {
        this.model = model;
        this.scatter = scatter;
    }

    Fill fill() {
        Filling filling = model.filling(1);
        Optional<MeshedLaminate> meshed = model.meshed();
        return new Fill(
                filling.fillTime(),
                model.filling(scatter.most()).fillTime(),
                model.filling(scatter.least()).fillTime(),
                meshed.isPresent() ? OptionalDouble.of(meshed.get().lag()) : OptionalDouble.empty(),
                meshTime(meshed),
                throughTime(),
                front(filling));
    }

    /** Of a straight front on the level through one rigid bed that is longer than the lag. */
    private OptionalDouble meshTime(Optional<MeshedLaminate> meshed) {
        double length = model.plan().path().flowLength();
        boolean holds = model.plan().path().feed() == FeedKind.LINE
                && model.plan().path().rise() == 0
                && model.bed().dry().size() == 1
                && !model.isSoft()
                && meshed.isPresent()
                && meshed.get().lag() < length;
        if (!holds) {
            return OptionalDouble.empty();
        }
        double atStart = meshed.get()
                .meshFrontTime(length, model.viscosity().initial(), model.plan().drivingPressure());
        return model.viscosity().time(atStart);
    }

    private OptionalDouble throughTime() {
        OptionalDouble through = model.plan().preform().throughPermeability();
        if (through.isEmpty()) {
            return OptionalDouble.empty();
        }
        return model.viscosity()
                .time(Darcy.throughThicknessTime(
                        model.bed().dry().get(0).porosity(),
                        model.viscosity().initial(),
                        model.bed().thickness(),
                        through.getAsDouble(),
                        model.plan().drivingPressure()));
    }

    private List<FrontPoint> front(Filling filling) {
        return filling.fillTime().isPresent()
                ? atTimes(filling, filling.fillTime().getAsDouble())
                : atPositions(filling);
    }

    private List<FrontPoint> atTimes(Filling filling, double end) {
        List<FrontPoint> front = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            double time = end * step / STEPS;
            front.add(new FrontPoint(time, step == 0 ? 0 : model.position(filling.positionAt(time))));
        }
        front.add(new FrontPoint(end, model.plan().path().flowLength()));
        return front;
    }

    /** As far as it gets. */
    private List<FrontPoint> atPositions(Filling filling) {
        List<FrontPoint> front = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            double position = filling.length() * step / STEPS;
            OptionalDouble time = filling.timeAt(position);
            if (time.isPresent()) {
                front.add(new FrontPoint(time.getAsDouble(), step == 0 ? 0 : model.position(position)));
            }
        }
        return front;
    }

    Reach reach(double within) {
        double greatest = greatest(1, within);
        return new Reach(within, greatest, spacing(greatest), spacing(greatest(scatter.least(), within)));
    }

    private double greatest(double factor, double within) {
        return model.plan().path().feed() == FeedKind.RIM
                ? model.plan().path().flowLength() * scale(factor, within)
                : model.position(model.filling(factor).reach(within));
    }

    private double spacing(double flowLength) {
        double radius = model.plan().path().feedRadius().orElse(0);
        return switch (model.plan().path().feed()) {
            case LINE -> 2 * flowLength;
            case CENTRE -> SQUARE * (radius + flowLength);
            case RIM -> 2 * radius * flowLength / model.plan().path().flowLength();
        };
    }

    /** By how much a rim may be larger, in the same shape, to be full within a time: the root, by halving. */
    private double scale(double factor, double within) {
        double low = 0;
        double high = 1;
        while (fills(factor, high, within)) {
            low = high;
            high *= 2;
        }
        while (high - low > CLOSE * high) {
            double middle = (low + high) / 2;
            if (fills(factor, middle, within)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean fills(double factor, double scale, double within) {
        OptionalDouble time = model.scaled(factor, scale).fillTime();
        return time.isPresent() && time.getAsDouble() <= within;
    }

    /** Empty without a hose, and where it never fills so that there is nothing to compare. */
    Optional<HoseLoss> hose() {
        Filling filling = model.filling(1);
        if (model.plan().lines().hose().isEmpty() || filling.fillTime().isEmpty()) {
            return Optional.empty();
        }
        double half = filling.length() / 2;
        double pressure = filling.hoseLoss(half);
        double viscosity = model.viscosity().at(filling.timeAt(half).orElseThrow());
        double resistance = model.plan().lines().hose().get().resistance();
        double without = model.withoutHose().fillTime().orElseThrow();
        double delay = Math.max(0, filling.fillTime().getAsDouble() - without);
        return Optional.of(new HoseLoss(pressure / (viscosity * resistance), pressure, delay));
    }
}
