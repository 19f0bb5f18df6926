package laminate.print.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import laminate.order.cut.Piece;
import laminate.order.cut.Placement;
import laminate.order.cut.RollPlanner;
import laminate.order.cut.Turn;
import laminate.order.pieces.MaterialCut;
import laminate.print.Golden;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class CuttingSvgTest {

    private static Document draw(MaterialCut cut) throws Exception {
        StringBuilder drawn = new StringBuilder();
        CuttingSvg.print(cut, TestOrders.cut().order(), drawn);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(drawn.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document drawing, String name) {
        return IntStream.range(0, drawing.getElementsByTagName(name).getLength())
                .mapToObj(i -> (Element) drawing.getElementsByTagName(name).item(i))
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** A page is a tenth of the roll with its margins, and its units are millimetres of the roll. */
    @Test
    void everyPieceIsDrawnToScale() throws Exception {
        MaterialCut cut = TestOrders.cut().cutting().materials().get(0);
        Document drawing = draw(cut);
        Element root = drawing.getDocumentElement();
        String[] view = root.getAttribute("viewBox").split(" ");
        assertThat(Double.parseDouble(root.getAttribute("width").replace("mm", "")) * 10)
                .isCloseTo(Double.parseDouble(view[2]), within(0.1));
        List<Placement> placed = cut.roll().orElseThrow().placements();
        List<Element> rectangles = elements(drawing, "rect");
        assertThat(rectangles).hasSizeGreaterThan(placed.size());
        assertThat(number(rectangles.get(0), "width")).isCloseTo(1270, within(0.01));
        for (Placement piece : placed) {
            assertThat(rectangles)
                    .anyMatch(drawn -> Math.abs(number(drawn, "x") - piece.x() * 1000) < 0.01
                            && Math.abs(number(drawn, "y") - piece.y() * 1000) < 0.01
                            && Math.abs(number(drawn, "width") - piece.across() * 1000) < 0.01
                            && Math.abs(number(drawn, "height") - piece.along() * 1000) < 0.01);
            assertThat(elements(drawing, "text"))
                    .anyMatch(text ->
                            text.getTextContent().startsWith(piece.piece().name()));
        }
    }

    @Test
    void sheetsAreDrawnBelowEachOther() throws Exception {
        MaterialCut cut = TestOrders.cut()
                .cutting()
                .find("pvc-80", OptionalDouble.of(0.01))
                .orElseThrow();
        Document drawing = draw(cut);
        long sheets = elements(drawing, "rect").stream()
                .filter(drawn -> drawn.getAttribute("stroke").equals("#000000"))
                .count();
        assertThat(sheets).isEqualTo(cut.sheets().orElseThrow().sheets().size());
        assertThat(elements(drawing, "text"))
                .extracting(Element::getTextContent)
                .contains("sheet 1");
        assertThat(CuttingSvg.fileName(cut)).isEqualTo("pvc-80-10mm.svg");
    }

    /** Three strips of 2 m off rolls of 3 m are drawn one behind the other. */
    @Test
    void pullsOfSeveralRollsAreDrawnEndToEnd() throws Exception {
        List<Piece> strips = List.of(
                new Piece("1", 0.9, 2, Turn.NONE),
                new Piece("2", 0.9, 2, Turn.NONE),
                new Piece("3", 0.9, 2, Turn.NONE));
        MaterialCut cut = new MaterialCut(
                "roving-600",
                OptionalDouble.empty(),
                5.4,
                Optional.of(RollPlanner.of(1).withRollLength(3).plan(strips)),
                Optional.empty());
        assertThat(elements(draw(cut), "title").get(0).getTextContent())
                .isEqualTo("roving-600: 6.00 m off rolls, end to end, 1.00 m wide, 90 % into pieces, 1:10");
        assertThat(elements(draw(cut), "line")).hasSize(3);
        assertThat(elements(draw(cut), "text"))
                .extracting(Element::getTextContent)
                .contains("pull 1, 2000 mm", "pull 2, 2000 mm", "pull 3, 2000 mm");
    }

    @Test
    void namesCannotBreakTheDrawing() throws Exception {
        Piece piece = new Piece("<script>&\"1\"", 0.5, 0.5, Turn.NONE);
        MaterialCut cut = new MaterialCut(
                "../<b>",
                OptionalDouble.empty(),
                1,
                Optional.of(RollPlanner.of(1).plan(List.of(piece))),
                Optional.empty());
        assertThat(elements(draw(cut), "text"))
                .anyMatch(text -> text.getTextContent().equals("<script>&\"1\""));
        assertThat(CuttingSvg.fileName(cut)).isEqualTo("----b-.svg");
    }

    @Test
    void drawsWhatWasAccepted() throws Exception {
        StringBuilder drawn = new StringBuilder();
        OrderSheet sheet = TestOrders.cut();
        CuttingSvg.print(sheet.cutting().materials().get(0), sheet.order(), drawn);
        Golden.check("order-cut-mat-300.svg", drawn.toString());
    }
}
