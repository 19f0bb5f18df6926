package laminate.process.cure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import laminate.material.Resin;

/**
 * The gel times of one dose.
 *
 * @param dose the dose (kg/kg)
 * @param points its points by rising temperature, at least one
 */
record GelRow(double dose, List<Resin.GelPoint> points) {

    GelRow {
        points = points.stream()
                .sorted(Comparator.comparingDouble(Resin.GelPoint::temperature))
                .toList();
    }

    /** Points in rows of equal dose; the points come by rising dose. */
    static List<GelRow> byDose(List<Resin.GelPoint> points) {
        List<GelRow> rows = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= points.size(); i++) {
            double dose = points.get(from).amount();
            if (i == points.size() || !Span.isSame(points.get(i).amount(), dose)) {
                rows.add(new GelRow(dose, points.subList(from, i)));
                from = i;
            }
        }
        return List.copyOf(rows);
    }

    boolean isAt(double other) {
        return Span.isSame(dose, other);
    }

    /** The temperatures that it reaches (K). */
    Span span() {
        return new Span(
                points.get(0).temperature(), points.get(points.size() - 1).temperature());
    }

    /** The gel time at a temperature within its span: ln t linear in 1/T. */
    Knot at(double temperature) {
        for (int i = 0; i < points.size(); i++) {
            Resin.GelPoint point = points.get(i);
            if (Span.isSame(point.temperature(), temperature)) {
                return Knot.of(point);
            }
            if (i > 0 && point.temperature() > temperature) {
                Resin.GelPoint before = points.get(i - 1);
                double weight = (1 / before.temperature() - 1 / temperature)
                        / (1 / before.temperature() - 1 / point.temperature());
                return Knot.of(before).towards(Knot.of(point), weight);
            }
        }
        throw new IllegalArgumentException(dose + " is not known at " + temperature + " K");
    }
}
