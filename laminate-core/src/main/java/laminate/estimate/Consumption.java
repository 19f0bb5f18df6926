package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.ConsumableUse;
import laminate.process.Consumables;
import laminate.process.Process;
import laminate.unit.PriceBasis;

/** What the work uses up: a list of the workshop's own counted once, the usual lists once for each process. */
final class Consumption {
    private final WorkCount work;
    private final List<ResinQuantity> resins;
    private final Map<String, MaterialQuantity> byId = new LinkedHashMap<>();

    private Consumption(WorkCount work, List<ResinQuantity> resins) {
        this.work = work;
        this.resins = resins;
    }

    static List<MaterialQuantity> of(Consumables consumables, WorkCount work, List<ResinQuantity> resins) {
        Consumption consumption = new Consumption(work, resins);
        Optional<List<ConsumableUse>> own = consumables.own();
        if (own.isPresent()) {
            consumption.add(own.get(), work.partArea(), consumption.mixed());
        } else {
            for (Map.Entry<Process, Double> covered : work.areaByProcess().entrySet()) {
                Process process = covered.getKey();
                consumption.add(consumables.uses(process), covered.getValue(), consumption.mixedFor(process));
            }
        }
        return consumption.inWholePieces();
    }

    private List<MaterialQuantity> inWholePieces() {
        List<MaterialQuantity> all = new ArrayList<>();
        for (MaterialQuantity quantity : byId.values()) {
            all.add(quantity.inWholePieces());
        }
        return all;
    }

    private double mixed() {
        double sum = 0;
        for (ResinQuantity resin : resins) {
            sum += resin.mixed();
        }
        return sum;
    }

    private double mixedFor(Process process) {
        double sum = 0;
        for (ResinQuantity resin : resins) {
            sum += resin.use().process() == process ? resin.mixed() : 0;
        }
        return sum;
    }

    private void add(List<ConsumableUse> uses, double area, double mixed) {
        for (ConsumableUse use : uses) {
            double times = switch (use.basis()) {
                case AREA -> area;
                case RESIN -> mixed;
                case EDGE -> work.edge();
                case MOULDING -> work.mouldings();
            };
            double amount = use.amount().value() * times;
            if (amount > 0) {
                byId.merge(use.material(), quantity(use, amount), MaterialQuantity::plus);
            }
        }
    }

    private static MaterialQuantity quantity(ConsumableUse use, double amount) {
        return new MaterialQuantity(
                use.material(),
                "consumable",
                OptionalDouble.empty(),
                0,
                only(use, PriceBasis.KG, amount),
                only(use, PriceBasis.M2, amount),
                only(use, PriceBasis.M, amount),
                OptionalDouble.empty(),
                only(use, PriceBasis.LITRE, amount / 1000),
                only(use, PriceBasis.PIECE, amount));
    }

    private static OptionalDouble only(ConsumableUse use, PriceBasis measure, double amount) {
        return use.measure() == measure ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }
}
