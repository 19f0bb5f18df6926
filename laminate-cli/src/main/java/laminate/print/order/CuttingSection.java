package laminate.print.order;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import laminate.order.Order;
import laminate.order.cut.Offcut;
import laminate.order.cut.Placement;
import laminate.order.cut.Pull;
import laminate.order.cut.RollPlan;
import laminate.order.cut.Sheet;
import laminate.order.cut.SheetPlan;
import laminate.order.pieces.CutPiece;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.MaterialCut;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;

/** The cutting list in order of lay-up, and how the pieces lie on rolls and sheets. */
final class CuttingSection {
    private final Measures measures;

    CuttingSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, Cutting cutting, Order order) {
        if (cutting.pieces().isEmpty()) {
            return;
        }
        report.heading(2, "Cutting list, in order of lay-up");
        Map<String, List<CutPiece>> byPart = cutting.pieces().stream()
                .collect(Collectors.groupingBy(CutPiece::part, LinkedHashMap::new, Collectors.toList()));
        byPart.forEach((part, pieces) -> {
            if (byPart.size() > 1) {
                report.heading(3, part);
            }
            report.grid(pieces(pieces));
        });
        report.heading(2, "Rolls and sheets").grid(plans(cutting.materials()));
        report.heading(3, "Lengths to pull, sheets to cut").grid(pulls(cutting.materials(), order));
        report.heading(3, "Offcuts that can serve").grid(offcuts(cutting.materials()));
    }

    private Table pieces(List<CutPiece> pieces) {
        String unit = measures.length().symbol();
        Table.Builder table = new Table.Builder(
                Column.numbers("piece", ""),
                Column.words("zone"),
                Column.numbers("layer", ""),
                Column.words("material"),
                Column.numbers("warp", "°"),
                Column.numbers("across", unit),
                Column.numbers("along", unit),
                Column.numbers("times", ""));
        for (CutPiece piece : pieces) {
            table.row(
                    piece.number(),
                    piece.zone(),
                    Integer.toString(piece.layer()),
                    name(piece.material(), piece.thickness()),
                    Measures.plain(piece.angle()),
                    length(piece.width()),
                    length(piece.length()),
                    Integer.toString(piece.count()));
        }
        return table.build();
    }

    private String name(String material, OptionalDouble thickness) {
        return thickness.isPresent()
                ? material + ", " + OrderWords.set(thickness.getAsDouble(), measures.length())
                : material;
    }

    private String length(double metres) {
        return Measures.plain(Math.round(measures.length().fromSi(metres) * 10) / 10.0);
    }

    private Table plans(List<MaterialCut> cuts) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.words("cut from"),
                Column.numbers("takes", ""),
                Column.words(""),
                Column.numbers("no less than", ""),
                Column.numbers("into pieces", "%"));
        for (MaterialCut cut : cuts) {
            cut.roll()
                    .ifPresent(plan -> table.row(
                            name(cut.material(), cut.thickness()),
                            "roll " + OrderWords.set(plan.width(), measures.longLength()) + " wide",
                            Measures.number(plan.length(), measures.longLength()),
                            measures.longLength().symbol(),
                            Measures.number(plan.lowerBound(), measures.longLength()),
                            Measures.percent(cut.yieldFraction())));
            cut.sheets()
                    .ifPresent(plan -> table.row(
                            name(cut.material(), cut.thickness()),
                            size(plan.width(), plan.length()),
                            Integer.toString(plan.sheets().size()),
                            "sheets",
                            Integer.toString(plan.lowerBound()),
                            Measures.percent(cut.yieldFraction())));
        }
        return table.build();
    }

    private String size(double width, double length) {
        return length(width) + " × " + length(length) + " " + measures.length().symbol();
    }

    private Table pulls(List<MaterialCut> cuts, Order order) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.numbers("pull", ""),
                Column.numbers("length", measures.length().symbol()),
                Column.words("off"),
                Column.words("pieces"));
        for (MaterialCut cut : cuts) {
            RollPlaces places = RollPlaces.of(order, cut);
            cut.roll().ifPresent(plan -> addPulls(table, cut, plan, places));
            cut.sheets().ifPresent(plan -> addSheets(table, cut, plan, places));
        }
        return table.build();
    }

    /** Roll by roll, as they are pulled; the numbers are those of the drawing. */
    private void addPulls(Table.Builder table, MaterialCut cut, RollPlan plan, RollPlaces places) {
        IntStream.rangeClosed(1, plan.pulls().size())
                .boxed()
                .sorted(Comparator.comparingInt(places::number))
                .forEach(number -> {
                    Pull pull = plan.pulls().get(number - 1);
                    table.row(
                            cut.material(),
                            Integer.toString(number),
                            length(pull.length()),
                            places.name(number),
                            numbers(pull.placements()));
                });
    }

    private void addSheets(Table.Builder table, MaterialCut cut, SheetPlan plan, RollPlaces places) {
        int number = 1;
        for (Sheet sheet : plan.sheets()) {
            table.row(
                    name(cut.material(), cut.thickness()),
                    Integer.toString(number),
                    length(plan.length()),
                    places.name(number),
                    numbers(sheet.placements()));
            number++;
        }
    }

    /** The numbers of the pieces, each with how often it is there. */
    private static String numbers(List<Placement> placements) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        placements.forEach(placed -> counts.merge(placed.piece().name(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() == 1 ? entry.getKey() : entry.getValue() + " × " + entry.getKey())
                .collect(Collectors.joining(", "));
    }

    private Table offcuts(List<MaterialCut> cuts) {
        Table.Builder table = new Table.Builder(Column.words("material"), Column.words("across × along"));
        for (MaterialCut cut : cuts) {
            List<Offcut> free = cut.roll()
                    .map(RollPlan::offcuts)
                    .orElseGet(() -> cut.sheets().orElseThrow().sheets().stream()
                            .flatMap(sheet -> sheet.offcuts().stream())
                            .toList());
            if (!free.isEmpty()) {
                table.row(name(cut.material(), cut.thickness()), sizes(free));
            }
        }
        return table.build();
    }

    private String sizes(List<Offcut> offcuts) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        offcuts.forEach(offcut -> counts.merge(size(offcut.width(), offcut.length()), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() == 1 ? entry.getKey() : entry.getValue() + " of " + entry.getKey())
                .collect(Collectors.joining(", "));
    }
}
