package laminate.print.order;

import java.util.List;
import laminate.order.Order;
import laminate.order.TakenRoll;
import laminate.order.cut.Offcut;
import laminate.order.cut.Placement;
import laminate.order.cut.Pull;
import laminate.order.cut.RollPlan;
import laminate.order.cut.Sheet;
import laminate.order.cut.SheetPlan;
import laminate.order.pieces.CutPiece;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.MaterialCut;
import laminate.print.JsonWriter;

/** The pieces to cut, and where each lies on its roll or sheet: x across, y along from the start of the roll or sheet. */
final class CuttingJson {
    private CuttingJson() {}

    /** Writes {@code cutting}; an object is open. */
    static void print(Cutting cutting, Order order, JsonWriter json) {
        json.key("cutting").object().key("pieces").array();
        cutting.pieces().forEach(piece -> print(piece, json));
        json.end().key("materials").array();
        cutting.materials().forEach(cut -> print(cut, RollPlaces.of(order, cut).rolls(), json));
        json.end().key("remarks").array();
        cutting.remarks().forEach(json::text);
        json.end().end();
    }

    private static void print(CutPiece piece, JsonWriter json) {
        json.object()
                .field("piece", piece.number())
                .field("part", piece.part())
                .field("zone", piece.zone())
                .field("layer", piece.layer())
                .field("material", piece.material())
                .field("thickness_m", piece.thickness())
                .field("warp_deg", piece.angle())
                .field("width_m", piece.width())
                .field("length_m", piece.length())
                .field("count", piece.count())
                .end();
    }

    private static void print(MaterialCut cut, List<TakenRoll> rolls, JsonWriter json) {
        json.object().field("material", cut.material()).field("thickness_m", cut.thickness());
        cut.roll().ifPresent(plan -> print(plan, json));
        cut.sheets().ifPresent(plan -> print(plan, json));
        taken(rolls, json);
        json.field("area_m2", cut.area()).field("yield", cut.yieldFraction()).end();
    }

    /** The rolls or sheets taken from, in stock and bought, each with the numbers of its pulls or sheets from 1. */
    private static void taken(List<TakenRoll> rolls, JsonWriter json) {
        json.key("taken_from").array();
        for (TakenRoll roll : rolls) {
            json.object().field("pack", roll.name()).field("width_m", roll.width());
            if (Double.isFinite(roll.length())) {
                json.field("length_m", roll.length());
            }
            json.key("pulls").array();
            roll.pulls().forEach(json::number);
            json.end().end();
        }
        json.end();
    }

    private static void print(RollPlan plan, JsonWriter json) {
        json.field("roll_width_m", plan.width())
                .field("length_m", plan.length())
                .field("lower_bound_m", plan.lowerBound())
                .key("pulls")
                .array();
        for (Pull pull : plan.pulls()) {
            json.object().field("from_m", pull.from()).field("length_m", pull.length());
            placements(pull.placements(), json);
            json.end();
        }
        json.end();
        offcuts(plan.offcuts(), json);
    }

    private static void print(SheetPlan plan, JsonWriter json) {
        json.field("sheet_width_m", plan.width())
                .field("sheet_length_m", plan.length())
                .field("count", plan.sheets().size())
                .field("lower_bound", plan.lowerBound())
                .key("sheets")
                .array();
        for (Sheet sheet : plan.sheets()) {
            json.object();
            placements(sheet.placements(), json);
            offcuts(sheet.offcuts(), json);
            json.end();
        }
        json.end();
    }

    private static void placements(List<Placement> placements, JsonWriter json) {
        json.key("pieces").array();
        for (Placement placed : placements) {
            json.object()
                    .field("piece", placed.piece().name())
                    .field("x_m", placed.x())
                    .field("y_m", placed.y())
                    .field("across_m", placed.across())
                    .field("along_m", placed.along())
                    .key("turned")
                    .flag(placed.turned())
                    .end();
        }
        json.end();
    }

    private static void offcuts(List<Offcut> offcuts, JsonWriter json) {
        json.key("offcuts").array();
        for (Offcut offcut : offcuts) {
            json.object()
                    .field("x_m", offcut.x())
                    .field("y_m", offcut.y())
                    .field("across_m", offcut.width())
                    .field("along_m", offcut.length())
                    .end();
        }
        json.end();
    }
}
