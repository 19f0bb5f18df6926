package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import laminate.process.Operation;

/**
 * How a stage is infused: the infusions that are planned for its zones one after the other, then what no plan fills, evenly
 * and in its share of the labour. A plan that fills several stages of a zone is reckoned for all of its layers together, so
 * that each of the stages takes its whole time.
 */
final class StageFlow {
    private final List<Inflow> inflows;
    private final WorkTimes times;
    private final NeedShares shares;

    StageFlow(List<Inflow> inflows, WorkTimes times, NeedShares shares) {
        this.inflows = inflows;
        this.times = times;
        this.shares = shares;
    }

    /** How the resin of a stage is drawn, and what tells so. */
    record Infused(Draw draw, InfusingTime time) {}

    Infused of(List<StageGroup> stage) {
        Knots knots = new Knots();
        List<String> planned = new ArrayList<>();
        List<String> neverFull = new ArrayList<>();
        List<StageGroup> open = new ArrayList<>(stage);
        for (Inflow inflow : inflows) {
            List<StageGroup> filled =
                    stage.stream().filter(group -> isOf(group, inflow)).toList();
            if (inflow.fillTime().isEmpty()) {
                neverFull.addAll(zones(filled));
            } else if (!filled.isEmpty()) {
                knots.add(inflow, resin(filled));
                planned.addAll(zones(filled));
                open.removeAll(filled);
            }
        }
        double byPlan = knots.time;
        if (!open.isEmpty()) {
            knots.add(times.of(Operation.INFUSION, open), resin(open));
        }
        return new Infused(knots.draw(), new InfusingTime(byPlan, knots.time - byPlan, planned, neverFull));
    }

    private static boolean isOf(StageGroup group, Inflow inflow) {
        return inflow.zones().contains(group.first().shown().zone());
    }

    private static List<String> zones(List<StageGroup> groups) {
        return groups.stream().map(group -> group.first().shown().zone()).toList();
    }

    private double resin(List<StageGroup> groups) {
        double sum = 0;
        for (StageGroup group : groups) {
            for (WorkItem item : group.items()) {
                sum += shares.toMix(item.use(), item.resin());
            }
        }
        return sum;
    }

    /** A draw as it grows. */
    private static final class Knots {
        private final List<Double> resins = new ArrayList<>(List.of(0.0));
        private final List<Double> times = new ArrayList<>(List.of(0.0));
        private double resin;
        private double time;

        void add(Inflow inflow, double mass) {
            int steps = inflow.times().size();
            double each = mass / inflow.count();
            for (int one = 0; one < inflow.count(); one++) {
                for (int step = 1; step <= steps; step++) {
                    resins.add(resin + each * step / steps);
                    times.add(time + inflow.times().get(step - 1));
                }
                resin += each;
                time += inflow.fillTime().orElseThrow();
            }
        }

        void add(double duration, double mass) {
            resin += mass;
            time += duration;
            resins.add(resin);
            times.add(time);
        }

        /** What keeps nothing of the resin has no share to go by. */
        Draw draw() {
            if (!(resin > 0)) {
                return Draw.even(time);
            }
            double[] drawn = resins.stream().mapToDouble(mass -> mass / resin).toArray();
            drawn[drawn.length - 1] = 1;
            return new Draw(
                    drawn, times.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }
}
