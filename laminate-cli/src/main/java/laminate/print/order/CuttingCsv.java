package laminate.print.order;

import java.util.List;
import laminate.order.Order;
import laminate.order.cut.Placement;
import laminate.order.cut.Pull;
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

    void print(Cutting cutting, Order order, OrderCsv.Which which) {
        if (which == OrderCsv.Which.PIECES) {
            cutting.pieces().forEach(this::piece);
        } else {
            cutting.materials().forEach(cut -> places(cut, RollPlaces.of(order, cut)));
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

    private void places(MaterialCut cut, RollPlaces places) {
        cut.roll().ifPresent(plan -> {
            for (int number = 1; number <= plan.pulls().size(); number++) {
                Pull pull = plan.pulls().get(number - 1);
                double shift = places.from(number, plan.pulls()) - pull.from();
                for (Placement placed : pull.placements()) {
                    place(cut, places.number(number), placed, Math.max(0, placed.y() + shift));
                }
            }
        });
        cut.sheets().ifPresent(plan -> {
            for (int number = 1; number <= plan.sheets().size(); number++) {
                for (Placement placed : plan.sheets().get(number - 1).placements()) {
                    place(cut, number, placed, placed.y());
                }
            }
        });
    }

    /** A piece, along from the start of its roll or sheet (m). */
    private void place(MaterialCut cut, int sheet, Placement placed, double along) {
        csv.text(cut.material())
                .number(cut.thickness(), measures.length())
                .number(sheet)
                .text(placed.piece().name())
                .number(placed.x(), measures.length())
                .number(along, measures.length())
                .number(placed.across(), measures.length())
                .number(placed.along(), measures.length())
                .text(placed.turned() ? "yes" : "no")
                .end();
    }
}
