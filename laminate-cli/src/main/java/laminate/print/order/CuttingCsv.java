package laminate.print.order;

import java.util.List;
import java.util.OptionalDouble;
import laminate.order.cut.Placement;
import laminate.order.cut.Sheet;
import laminate.order.pieces.CutPiece;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.MaterialCut;
import laminate.print.CsvWriter;
import laminate.print.Measures;

/** The tables of an order that are about cutting. */
final class CuttingCsv {
    private final Measures measures;
    private final CsvWriter csv;

    CuttingCsv(Measures measures, CsvWriter csv) {
        this.measures = measures;
        this.csv = csv;
    }

    static List<String> headings(OrderCsv.Which which, String length) {
        return which == OrderCsv.Which.PIECES
                ? List.of(
                        "piece",
                        "part",
                        "zone",
                        "layer",
                        "material",
                        "thickness_" + length,
                        "warp_deg",
                        "across_" + length,
                        "along_" + length,
                        "count")
                : List.of(
                        "material",
                        "thickness_" + length,
                        "sheet",
                        "piece",
                        "x_" + length,
                        "y_" + length,
                        "across_" + length,
                        "along_" + length,
                        "turned");
    }

    void print(Cutting cutting, OrderCsv.Which which) {
        if (which == OrderCsv.Which.PIECES) {
            cutting.pieces().forEach(this::piece);
        } else {
            cutting.materials().forEach(this::places);
        }
    }

    private void piece(CutPiece piece) {
        csv.text(piece.number())
                .text(piece.part())
                .text(piece.zone())
                .number(piece.layer())
                .text(piece.material())
                .number(piece.thickness(), measures.length())
                .number(piece.angle())
                .number(piece.width(), measures.length())
                .number(piece.length(), measures.length())
                .number(piece.count())
                .end();
    }

    private void places(MaterialCut cut) {
        cut.roll()
                .ifPresent(
                        plan -> plan.placements().forEach(placed -> place(cut.material(), cut.thickness(), 1, placed)));
        cut.sheets().ifPresent(plan -> {
            int number = 1;
            for (Sheet sheet : plan.sheets()) {
                for (Placement placed : sheet.placements()) {
                    place(cut.material(), cut.thickness(), number, placed);
                }
                number++;
            }
        });
    }

    private void place(String material, OptionalDouble thickness, int sheet, Placement placed) {
        csv.text(material)
                .number(thickness, measures.length())
                .number(sheet)
                .text(placed.piece().name())
                .number(placed.x(), measures.length())
                .number(placed.y(), measures.length())
                .number(placed.across(), measures.length())
                .number(placed.along(), measures.length())
                .text(placed.turned() ? "yes" : "no")
                .end();
    }
}
