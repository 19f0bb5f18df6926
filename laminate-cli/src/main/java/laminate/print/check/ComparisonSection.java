package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import laminate.check.CheckOptions;
import laminate.check.ZoneComparison;
import laminate.estimate.ZoneEstimate;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.Equivalence.Stiffness;

/** What may replace the laminate of a zone: others as multiples of it, and how thick they would have to be. */
final class ComparisonSection {
    private final Measures measures;

    ComparisonSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, List<ComparedZone> zones, CheckOptions options) {
        if (zones.isEmpty()) {
            return;
        }
        ZoneEstimate reference = zones.get(0).comparison().reference();
        String name = reference.zone().name();
        report.heading(2, "What may replace " + name);
        report.paragraph("As multiples of zone " + name + ", which is "
                + Measures.text(reference.thickness().planned(), measures.length())
                + " thick. Strength is where the first ply fails, by " + CheckWords.criterion(options.criterion())
                + " for plies with directions. Mass is with coatings, cost that of materials by area.");
        report.grid(ratios(zones));
        report.heading(3, "To be just as stiff in bending along x").grid(atEqualStiffness(zones));
    }

    private static Table ratios(List<ComparedZone> zones) {
        Table.Builder table = builder("times that of the zone", zones);
        row(table, "thickness", zones, of(ZoneComparison::thickness));
        row(table, "mass", zones, of(ZoneComparison::mass));
        row(table, "cost", zones, ComparedZone::cost);
        row(table, "bending stiffness along x", zones, of(zone -> zone.bending().x()));
        row(table, "bending stiffness along y", zones, of(zone -> zone.bending().y()));
        row(table, "twisting stiffness", zones, of(zone -> zone.bending().xy()));
        row(
                table,
                "stretching stiffness along x",
                zones,
                of(zone -> zone.membrane().x()));
        row(
                table,
                "stretching stiffness along y",
                zones,
                of(zone -> zone.membrane().y()));
        row(
                table,
                "bending strength along x",
                zones,
                zone -> zone.comparison().strength().bendingX());
        row(
                table,
                "bending strength along y",
                zones,
                zone -> zone.comparison().strength().bendingY());
        row(
                table,
                "tensile strength along x",
                zones,
                zone -> zone.comparison().strength().tensionX());
        row(
                table,
                "tensile strength along y",
                zones,
                zone -> zone.comparison().strength().tensionY());
        return table.build();
    }

    private Table atEqualStiffness(List<ComparedZone> zones) {
        String length = " (" + measures.length().symbol() + ")";
        Table.Builder table = builder("what it takes", zones);
        row(table, "every layer, times", zones, of(ComparisonSection::factor));
        row(
                table,
                "thickness then" + length,
                zones,
                of(zone -> measures.length()
                        .fromSi(factor(zone) * zone.candidate().thickness().planned())));
        row(table, "mass then, times that of the zone", zones, of(zone -> factor(zone) * zone.mass()));
        row(table, "or thickness of its core alone" + length, zones, zone -> core(zone.comparison()), "none");
        return table.build();
    }

    private static double factor(ZoneComparison zone) {
        return zone.thicknessFactorAtEqual(Stiffness.BENDING_X);
    }

    private OptionalDouble core(ZoneComparison zone) {
        return zone.coreThicknessAtEqual(Stiffness.BENDING_X).stream()
                .map(measures.length()::fromSi)
                .findFirst();
    }

    private static Function<ComparedZone, OptionalDouble> of(Function<ZoneComparison, Double> ratio) {
        return zone -> OptionalDouble.of(ratio.apply(zone.comparison()));
    }

    private static Table.Builder builder(String heading, List<ComparedZone> zones) {
        List<Column> columns = new ArrayList<>(List.of(Column.words(heading)));
        zones.forEach(zone ->
                columns.add(Column.numbers(zone.comparison().candidate().zone().name(), "")));
        return new Table.Builder(columns);
    }

    /** Adds a row, unless nothing of it is known. */
    private static void row(
            Table.Builder table, String name, List<ComparedZone> zones, Function<ComparedZone, OptionalDouble> of) {
        row(table, name, zones, of, "not known");
    }

    private static void row(
            Table.Builder table,
            String name,
            List<ComparedZone> zones,
            Function<ComparedZone, OptionalDouble> of,
            String absent) {
        if (zones.stream().map(of).allMatch(OptionalDouble::isEmpty)) {
            return;
        }
        List<String> row = new ArrayList<>(List.of(name));
        zones.stream()
                .map(of)
                .map(ratio -> ratio.isPresent() ? Measures.number(ratio.getAsDouble()) : absent)
                .forEach(row::add);
        table.row(row);
    }
}
