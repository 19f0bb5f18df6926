package laminate.print.order;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.order.Order;
import laminate.order.cut.Offcut;
import laminate.order.cut.Placement;
import laminate.order.cut.Pull;
import laminate.order.cut.RollPlan;
import laminate.order.cut.Sheet;
import laminate.order.cut.SheetPlan;
import laminate.order.pieces.MaterialCut;

/**
 * Draws a roll, or all sheets of a core, to scale 1:10 as SVG: the width across the page, the length down it; pieces with
 * their numbers, offcuts dashed, cuts across the roll as lines; beside it what each pull comes off.
 */
public final class CuttingSvg {
    private static final double MILLIMETRES = 1000;
    private static final double SCALE = 10;
    private static final double MARGIN = 60;
    private static final double GAP = 40;
    /** Room to the right, for text like "pull 12, 1200 mm, cut length 3". */
    private static final double LABELS = 480;

    private CuttingSvg() {}

    /**
     * The name of the file that a drawing is best kept in.
     *
     * @param cut how a material is cut
     * @return letters, digits and hyphens, with the ending
     */
    public static String fileName(MaterialCut cut) {
        String thickness = cut.thickness().isPresent()
                ? "-" + number(cut.thickness().getAsDouble() * MILLIMETRES).replace('.', '-') + "mm"
                : "";
        return cut.material().replaceAll("[^A-Za-z0-9-]", "-") + thickness + ".svg";
    }

    /**
     * Draws how a material is cut, and tells beside it which roll or sheet each pull comes off.
     *
     * @param cut the plan
     * @param order what is bought for it
     * @param out takes the drawing
     * @throws IOException if that fails
     */
    public static void print(MaterialCut cut, Order order, Appendable out) throws IOException {
        RollPlaces places = RollPlaces.of(order, cut);
        if (cut.roll().isPresent()) {
            RollPlan plan = cut.roll().get();
            String title = String.format(
                    Locale.ROOT,
                    "%s: %.2f m off %s %.2f m wide, %.0f %% into pieces, 1:10",
                    cut.material(),
                    plan.length(),
                    plan.length() > plan.rollLength().orElse(plan.length()) ? "rolls, end to end," : "a roll",
                    plan.width(),
                    plan.yieldFraction() * 100);
            open(title, plan.width() * MILLIMETRES, plan.length() * MILLIMETRES, out);
            draw(plan, places, out);
        } else {
            SheetPlan plan = cut.sheets().orElseThrow();
            int count = plan.sheets().size();
            String title = String.format(
                    Locale.ROOT,
                    "%s: %d of %.2f m by %.2f m, %.0f %% into pieces, 1:10",
                    cut.material(),
                    count,
                    plan.width(),
                    plan.length(),
                    plan.yieldFraction() * 100);
            double height = count * (plan.length() * MILLIMETRES + GAP) - GAP;
            open(title, plan.width() * MILLIMETRES, height, out);
            draw(plan, places, out);
        }
        out.append("</svg>\n");
    }

    private static void open(String title, double width, double height, Appendable out) throws IOException {
        double wide = width + 2 * MARGIN + LABELS;
        double high = height + 2 * MARGIN;
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(wide / SCALE) + "mm\" height=\""
                + number(high / SCALE) + "mm\" viewBox=\"" + number(-MARGIN) + " " + number(-MARGIN) + " "
                + number(wide) + " " + number(high) + "\" font-family=\"sans-serif\" font-size=\"28\">\n");
        out.append("<title>" + escaped(title) + "</title>\n");
        out.append("<text x=\"0\" y=\"-18\">" + escaped(title) + "</text>\n");
    }

    private static void draw(RollPlan plan, RollPlaces places, Appendable out) throws IOException {
        rectangle(0, 0, plan.width(), plan.length(), 0, "fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"4\"", out);
        offcuts(plan.offcuts(), 0, out);
        for (Pull pull : plan.pulls()) {
            pieces(pull.placements(), 0, out);
        }
        int number = 1;
        for (Pull pull : plan.pulls()) {
            String length = Math.round(pull.length() * MILLIMETRES) + " mm";
            beside(plan.width(), pull.from() * MILLIMETRES, "pull", number, length, places, out);
            number++;
            String y = number((pull.from() + pull.length()) * MILLIMETRES);
            out.append("<line x1=\"-30\" y1=\"" + y + "\" x2=\"" + number(plan.width() * MILLIMETRES + 30) + "\" y2=\""
                    + y + "\" stroke=\"#c00000\" stroke-width=\"4\"/>\n");
        }
    }

    private static void draw(SheetPlan plan, RollPlaces places, Appendable out) throws IOException {
        double top = 0;
        int number = 1;
        for (Sheet sheet : plan.sheets()) {
            rectangle(
                    0,
                    0,
                    plan.width(),
                    plan.length(),
                    top,
                    "fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"4\"",
                    out);
            offcuts(sheet.offcuts(), top, out);
            pieces(sheet.placements(), top, out);
            beside(plan.width(), top, "sheet", number, "", places, out);
            number++;
            top += plan.length() * MILLIMETRES + GAP;
        }
    }

    /** The number of a pull or sheet, its length and what it comes off, to the right of its upper end. */
    private static void beside(
            double width, double top, String what, int number, String length, RollPlaces places, Appendable out)
            throws IOException {
        String text = Stream.of(what + " " + number, length, places.name(number))
                .filter(word -> !word.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        out.append("<text x=\"" + number(width * MILLIMETRES + MARGIN / 2) + "\" y=\"" + number(top + 34) + "\">"
                + escaped(text) + "</text>\n");
    }

    private static void offcuts(List<Offcut> offcuts, double top, Appendable out) throws IOException {
        for (Offcut free : offcuts) {
            rectangle(
                    free.x(),
                    free.y(),
                    free.width(),
                    free.length(),
                    top,
                    "fill=\"#f2f2f2\" stroke=\"#808080\" stroke-width=\"2\" stroke-dasharray=\"12 8\"",
                    out);
        }
    }

    private static void pieces(List<Placement> placements, double top, Appendable out) throws IOException {
        for (Placement placed : placements) {
            rectangle(
                    placed.x(),
                    placed.y(),
                    placed.across(),
                    placed.along(),
                    top,
                    "fill=\"#dce9f5\" stroke=\"#1f4e79\" stroke-width=\"3\"",
                    out);
            double x = (placed.x() + placed.across() / 2) * MILLIMETRES;
            double y = top + (placed.y() + placed.along() / 2) * MILLIMETRES + 10;
            out.append("<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" text-anchor=\"middle\">"
                    + escaped(String.join(" ", label(placed))) + "</text>\n");
        }
    }

    private static List<String> label(Placement placed) {
        List<String> label = new ArrayList<>(List.of(placed.piece().name()));
        if (placed.turned()) {
            label.add("turned");
        }
        return label;
    }

    private static void rectangle(
            double x, double y, double width, double height, double top, String style, Appendable out)
            throws IOException {
        out.append("<rect x=\"" + number(x * MILLIMETRES) + "\" y=\"" + number(top + y * MILLIMETRES) + "\" width=\""
                + number(width * MILLIMETRES) + "\" height=\"" + number(height * MILLIMETRES) + "\" " + style + "/>\n");
    }

    /** To a hundredth of a millimetre. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }

    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
            }
        });
        return escaped.toString();
    }
}
