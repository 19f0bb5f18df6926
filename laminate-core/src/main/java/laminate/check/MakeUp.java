package laminate.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.material.Core;
import laminate.material.Property;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.sandwich.LocalChecks;
import laminate.theory.sandwich.Sandwich;
import laminate.theory.sandwich.SandwichCore;

/**
 * A laminate with what its cores give the faces.
 *
 * @param laminate the plies
 * @param cores the plies that are core, by number
 */
record MakeUp(Laminate laminate, Map<Integer, CoreSupport> cores) {

    static MakeUp of(ZoneEstimate zone) {
        Map<Integer, CoreSupport> cores = new LinkedHashMap<>();
        int ply = 0;
        for (LaidLayer layer : zone.layers()) {
            int last = ply + layer.plies().size() - 1;
            if (layer.layer() instanceof CoreLayer core) {
                cores.put(last, support(core.core()));
            } else if (layer.layer() instanceof BulkerLayer bulker) {
                cores.put(last, foam(bulker.bulker().figures().value(Property.E)));
            } else if (layer.plies().get(0).isCore()) {
                cores.put(last, foam(layer.plies().get(0).lamina().E2()));
            }
            ply = last + 1;
        }
        return new MakeUp(zone.laminate(), cores);
    }

    private static CoreSupport support(Core core) {
        return new CoreSupport(
                core.figures().value(Property.EZ),
                core.type() == Core.Type.HONEYCOMB,
                core.figures().valueOf(Property.CELL_SIZE));
    }

    /** Bulking mat, and a core given directly, are taken as stiff through the thickness as across their direction 1. */
    private static CoreSupport foam(double modulus) {
        return new CoreSupport(modulus, false, OptionalDouble.empty());
    }

    /** How many cores are given by a lamina, which does not tell the modulus through the thickness. */
    static int bareCores(ZoneEstimate zone) {
        return (int) zone.layers().stream()
                .filter(layer -> !(layer.layer() instanceof CoreLayer) && !(layer.layer() instanceof BulkerLayer))
                .filter(layer -> layer.plies().get(0).isCore())
                .count();
    }

    boolean isCore(int ply) {
        return cores.containsKey(ply);
    }

    boolean isSandwich() {
        return !sandwiches().isEmpty();
    }

    MakeUp turnedBy(double degrees) {
        return new MakeUp(laminate.turnedBy(degrees), cores);
    }

    double thickness(boolean core) {
        return plies(ply -> isCore(ply) == core).stream()
                .mapToDouble(Ply::thickness)
                .sum();
    }

    private List<Ply> plies(IntPredicate which) {
        return IntStream.range(0, laminate.plies().size())
                .filter(which)
                .mapToObj(laminate.plies()::get)
                .toList();
    }

    /** Each core with the face on either side, mould face first. */
    List<Sandwich> sandwiches() {
        int count = laminate.plies().size();
        int[] ends = IntStream.rangeClosed(0, count)
                .filter(i -> i == 0 || i == count || isCore(i) != isCore(i - 1))
                .toArray();
        List<Sandwich> found = new ArrayList<>();
        for (int i = 1; i + 2 < ends.length; i++) {
            if (isCore(ends[i])) {
                found.add(new Sandwich(laminate, ends[i - 1], ends[i], ends[i + 1], ends[i + 2]));
            }
        }
        return found;
    }

    /** The local checks of a sandwich: moduli through the thickness as springs in a row, the widest cell counts. */
    LocalChecks localChecks(Sandwich sandwich) {
        Laminate core = sandwich.core();
        double compliance = 0;
        double cell = 0;
        for (int ply = sandwich.coreStart(); ply < sandwich.coreEnd(); ply++) {
            compliance += laminate.plies().get(ply).thickness() / cores.get(ply).Ez();
            cell = Math.max(cell, cores.get(ply).cellSize().orElse(0));
        }
        SandwichCore properties = SandwichCore.of(core, core.thickness() / compliance);
        return new LocalChecks(sandwich, cell > 0 ? properties.withCellSize(cell) : properties);
    }
}
