package laminate.compare;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** The numbers of parts that cost curves are drawn at. */
final class Counts {
    private static final int LEAST = 100;
    private static final int MOULDS = 3;

    private Counts() {}

    /**
     * 1, 2, 5, 10 and so on to beyond the last that matters, and either side of every place where a curve turns or jumps.
     *
     * @param alternatives the alternatives
     * @param breakEvens where they overtake each other
     * @return numbers of parts, none where no alternative has a curve
     */
    static SortedSet<Integer> of(List<Alternative> alternatives, List<BreakEven> breakEvens) {
        SortedSet<Integer> counts = new TreeSet<>();
        if (alternatives.stream().noneMatch(way -> way.curve().isPresent())) {
            return counts;
        }
        for (BreakEven even : breakEvens) {
            addBothSides(even.parts(), counts);
            even.forGood().ifPresent(parts -> addBothSides(parts, counts));
        }
        for (Alternative way : alternatives) {
            addIfDrawn(way.estimate().part().count(), counts);
            way.curve().stream().flatMapToInt(curve -> curve.life().stream()).forEach(life -> {
                for (int mould = 1; mould <= MOULDS && (long) mould * life < CostCurve.MOST_PARTS; mould++) {
                    addBothSides(mould * life + 1, counts);
                }
            });
        }
        addSeries(Math.max(LEAST, counts.last()), counts);
        return counts;
    }

    private static void addBothSides(int parts, SortedSet<Integer> counts) {
        addIfDrawn(parts - 1, counts);
        addIfDrawn(parts, counts);
    }

    private static void addIfDrawn(int parts, SortedSet<Integer> counts) {
        if (parts <= CostCurve.MOST_PARTS) {
            counts.add(parts);
        }
    }

    /** One step of the series beyond the last. */
    private static void addSeries(int last, SortedSet<Integer> counts) {
        int[] steps = {1, 2, 5};
        int previous = 0;
        for (int decade = 1; decade <= CostCurve.MOST_PARTS; decade *= 10) {
            for (int step : steps) {
                if (previous <= last) {
                    addIfDrawn(step * decade, counts);
                }
                previous = step * decade;
            }
        }
    }
}
