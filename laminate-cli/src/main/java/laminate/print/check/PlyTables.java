package laminate.print.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import laminate.check.LaminateCheck;
import laminate.check.PointCheck;
import laminate.estimate.ZoneEstimate;
import laminate.print.Measures;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.PlyPoint;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.ReserveFactor;
import laminate.unit.Unit;

/** What the plies of a zone carry: each where it is nearest to failure, or all three points of each. */
final class PlyTables {
    private static final int POINTS = PlyPoint.At.values().length;

    /** A shear across the thickness as small a part of the stresses in the plane as this one is still worth a number. */
    private static final double CORE_SHARE = 0.01;

    private final Measures measures;
    private final ZoneEstimate zone;
    private final PlyNames names;
    private final Criterion chosen;

    /** A column of numbers, of which those that are small beside the largest are nothing but rounding. */
    private record Numbers(Column column, Unit unit, ToDoubleFunction<PlyPoint> of, double largest) {
        String cell(PlyPoint point) {
            return Measures.beside(largest, of.applyAsDouble(point), unit);
        }
    }

    PlyTables(Measures measures, ZoneEstimate zone, Criterion chosen) {
        this.measures = measures;
        this.zone = zone;
        this.names = PlyNames.of(zone);
        this.chosen = chosen;
    }

    /** Stresses in the plies' own axes where each ply is nearest to failure, with the factor that decides. */
    Table worst(LaminateCheck check) {
        List<PointCheck> points = new ArrayList<>();
        for (int ply = 0; ply < names.materials().size(); ply++) {
            points.add(worst(check, ply));
        }
        List<Numbers> stresses = loaded(ownStresses(check), points);
        List<Column> columns = new ArrayList<>(place());
        stresses.forEach(stress -> columns.add(stress.column()));
        columns.add(Column.numbers("reserve factor", ""));
        columns.add(Column.words("fails by"));
        Table.Builder table = new Table.Builder(columns);
        for (PointCheck point : points) {
            List<String> row = new ArrayList<>(place(point.point()));
            stresses.forEach(stress -> row.add(stress.cell(point.point())));
            Optional<ReserveFactor> factor = deciding(point);
            row.add(factor.map(found -> Measures.reserve(found.value())).orElse(""));
            row.add(factor.map(found -> found.mode().text()).orElse(""));
            table.row(row);
        }
        return table.build();
    }

    /** Strain and stress along x and y at every point. */
    Table alongLaminate(LaminateCheck check) {
        List<Numbers> columns = new ArrayList<>();
        columns.add(new Numbers(
                Column.numbers("z", measures.length().symbol()),
                measures.length(),
                PlyPoint::z,
                zone.laminate().thickness()));
        columns.addAll(alike(
                check,
                "strain x;strain y;strain xy",
                Unit.PERCENT,
                List.of(
                        p -> p.strain().x(),
                        p -> p.strain().y(),
                        p -> p.strain().xy())));
        columns.addAll(alike(
                check,
                "stress x;stress y;shear xy",
                measures.stress(),
                List.of(
                        p -> p.stress().x(),
                        p -> p.stress().y(),
                        p -> p.stress().xy())));
        return everyPoint(check, columns);
    }

    /** Stress in the plies' own axes at every point. */
    Table alongPlies(LaminateCheck check) {
        return everyPoint(check, ownStresses(check));
    }

    private Table everyPoint(LaminateCheck check, List<Numbers> numbers) {
        Table.Builder table = new Table.Builder(
                Stream.concat(place().stream(), numbers.stream().map(Numbers::column))
                        .toList());
        for (PointCheck checked : check.points()) {
            PlyPoint point = checked.point();
            table.row(Stream.concat(place(point).stream(), numbers.stream().map(column -> column.cell(point)))
                    .toList());
        }
        return table.build();
    }

    /** A core fails by a shear across the thickness that is next to nothing beside the stresses of its faces. */
    private List<Numbers> ownStresses(LaminateCheck check) {
        List<ToDoubleFunction<PlyPoint>> across =
                List.of(p -> p.plyShear().xz(), p -> p.plyShear().yz());
        List<Numbers> columns = new ArrayList<>(alike(
                check,
                "stress 1;stress 2;shear 12",
                measures.stress(),
                List.of(
                        p -> p.plyStress().x(),
                        p -> p.plyStress().y(),
                        p -> p.plyStress().xy())));
        double largest =
                Math.max(largest(check, across), CORE_SHARE * columns.get(0).largest());
        columns.addAll(alike("shear 13;shear 23", measures.stress(), across, largest));
        return columns;
    }

    private static List<Numbers> alike(
            LaminateCheck check, String headings, Unit unit, List<ToDoubleFunction<PlyPoint>> values) {
        return alike(headings, unit, values, largest(check, values));
    }

    private static double largest(LaminateCheck check, List<ToDoubleFunction<PlyPoint>> values) {
        return check.points().stream()
                .flatMapToDouble(point -> values.stream().mapToDouble(value -> value.applyAsDouble(point.point())))
                .map(Math::abs)
                .max()
                .orElse(0);
    }

    private static List<Numbers> alike(
            String headings, Unit unit, List<ToDoubleFunction<PlyPoint>> values, double largest) {
        List<Numbers> columns = new ArrayList<>();
        for (String heading : headings.split(";")) {
            columns.add(new Numbers(Column.numbers(heading, unit.symbol()), unit, values.get(columns.size()), largest));
        }
        return columns;
    }

    /** Only columns that say more than nothing. */
    private static List<Numbers> loaded(List<Numbers> columns, List<PointCheck> points) {
        return columns.stream()
                .filter(column -> points.stream()
                        .anyMatch(point -> !column.cell(point.point()).equals("0")))
                .toList();
    }

    private static List<Column> place() {
        return List.of(Column.words("ply"), Column.numbers("angle", "°"), Column.words("at"));
    }

    private List<String> place(PlyPoint point) {
        double angle = zone.laminate().plies().get(point.ply()).angleDegrees();
        return List.of(names.of(point.ply()), Measures.count(angle), CheckWords.side(point.at()));
    }

    /** Reserve factors by every criterion that arises: of every ply the least, or of every point. */
    Table byCriterion(LaminateCheck check, boolean everyPoint) {
        List<Criterion> arising = Arrays.stream(Criterion.values())
                .filter(criterion -> check.points().stream()
                        .anyMatch(point -> point.reserves().containsKey(criterion)))
                .toList();
        List<Column> columns = new ArrayList<>(List.of(Column.words("ply")));
        if (everyPoint) {
            columns.add(Column.words("at"));
        }
        arising.forEach(criterion -> columns.add(Column.numbers(CheckWords.criterion(criterion), "")));
        Table.Builder table = new Table.Builder(columns);
        int step = everyPoint ? 1 : POINTS;
        for (int i = 0; i < check.points().size() && !arising.isEmpty(); i += step) {
            List<PointCheck> points = check.points().subList(i, i + step);
            PlyPoint first = points.get(0).point();
            List<String> row = new ArrayList<>(List.of(names.of(first.ply())));
            if (everyPoint) {
                row.add(CheckWords.side(first.at()));
            }
            arising.forEach(criterion -> row.add(least(points, criterion)));
            table.row(row);
        }
        return table.build();
    }

    private static String least(Collection<PointCheck> points, Criterion criterion) {
        return points.stream()
                .flatMap(point -> Optional.ofNullable(point.reserves().get(criterion)).stream())
                .min(Comparator.comparingDouble(ReserveFactor::value))
                .map(least -> Measures.reserve(least.value()))
                .orElse("");
    }

    /** The point nearest to failure; of a ply that cannot be judged, the first of the most strained. */
    private PointCheck worst(LaminateCheck check, int ply) {
        return check.points().subList(POINTS * ply, POINTS * (ply + 1)).stream()
                .min(Comparator.comparingDouble(this::factor).thenComparingDouble(point -> -strain(point)))
                .orElseThrow();
    }

    private static double strain(PointCheck point) {
        return Math.abs(point.point().strain().x())
                + Math.abs(point.point().strain().y());
    }

    private double factor(PointCheck point) {
        return deciding(point).map(ReserveFactor::value).orElse(Double.MAX_VALUE);
    }

    /** The least factor of the criteria that decide for the material of the ply. */
    private Optional<ReserveFactor> deciding(PointCheck point) {
        return zone.laminate().plies().get(point.point().ply()).lamina().strength().stream()
                .flatMap(strength -> chosen.inFor(strength).stream())
                .flatMap(criterion -> Optional.ofNullable(point.reserves().get(criterion)).stream())
                .min(Comparator.comparingDouble(ReserveFactor::value));
    }
}
