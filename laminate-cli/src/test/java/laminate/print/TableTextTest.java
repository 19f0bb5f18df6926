package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import laminate.print.Table.Column;
import org.junit.jupiter.api.Test;

class TableTextTest {
    private static final Table TABLE = new Table.Builder(
                    Column.words("material"), Column.numbers("in part", "kg"), Column.words("remark"))
            .row("mat-450-emulsion-bound", "1.50", "")
            .row("roving", "12.0", "wet it out slowly")
            .total("together", "13.5", "")
            .build();

    @Test
    void numbersStandRightUnderHeadingAndUnit() {
        assertThat(lines(80))
                .containsExactly(
                        "material                in part  remark",
                        "                             kg",
                        "--------------------------------------------------",
                        "mat-450-emulsion-bound     1.50",
                        "roving                     12.0  wet it out slowly",
                        "--------------------------------------------------",
                        "together                   13.5");
    }

    @Test
    void headingsWrapBeforeWordsAndWordsAtHyphens() {
        assertThat(lines(47))
                .containsExactly(
                        "                          in",
                        "material                part  remark",
                        "                          kg",
                        "-----------------------------------------------",
                        "mat-450-emulsion-bound  1.50",
                        "roving                  12.0  wet it out slowly",
                        "-----------------------------------------------",
                        "together                13.5");
        assertThat(lines(34))
                .containsExactly(
                        "                 in",
                        "material       part  remark",
                        "                 kg",
                        "----------------------------------",
                        "mat-450-       1.50",
                        "emulsion-",
                        "bound",
                        "roving         12.0  wet it out",
                        "                     slowly",
                        "----------------------------------",
                        "together       13.5");
    }

    @Test
    void aTableInGroupsIsToldInPiecesBeforeAWordIsBroken() {
        Table wide = new Table.Builder(
                        Column.words("line"),
                        Column.numbers("for 1", "GBP").in(1),
                        Column.numbers("for 10", "GBP").in(2),
                        Column.numbers("for 100", "GBP").in(3))
                .row("consumables", "1234.50", "12345.00", "123450.00")
                .build();

        assertThat(TableText.lines(wide, 39, Style.PLAIN)).anyMatch(line -> line.startsWith("consumables 1234.50"));
        assertThat(TableText.lines(wide, 36, Style.PLAIN))
                .contains("consumables  1234.50  12345.00", "consumables  123450.00")
                .noneMatch(line -> line.startsWith("es"));
    }

    @Test
    void aTableInGroupsThatCannotFitIsToldInPieces() {
        Table wide = new Table.Builder(
                        Column.words(""),
                        Column.numbers("by hand", "kg"),
                        Column.numbers("vacuum-bagged", "kg").in(1),
                        Column.numbers("", "%").in(1),
                        Column.numbers("infused", "kg").in(2),
                        Column.numbers("", "%").in(2))
                .row("mass", "4.60", "3.80", "-17.5", "3.43", "-25.5")
                .build();
        assertThat(TableText.lines(wide, 42, Style.PLAIN))
                .containsExactly(
                        "      by hand  vacuum-bagged",
                        "           kg             kg      %",
                        "-----------------------------------",
                        "mass     4.60           3.80  -17.5",
                        "",
                        "      by hand  infused",
                        "           kg       kg      %",
                        "-----------------------------",
                        "mass     4.60     3.43  -25.5");
    }

    @Test
    void aTableThatCannotFitIsToldRowByRow() {
        assertThat(lines(20))
                .containsExactly(
                        "material",
                        "mat-450-emulsion-",
                        "bound, in part 1.50",
                        "kg",
                        "material roving, in",
                        "part 12.0 kg, remark",
                        "wet it out slowly",
                        "material together,",
                        "in part 13.5 kg");
    }

    @Test
    void whatIsNoTableIsRefused() {
        List<Column> columns = List.of(Column.words("a"));
        assertThatThrownBy(() -> new Table(columns, List.of(List.of("x", "y")), 0))
                .hasMessage("a row of 1 columns cannot have 2 cells");
        assertThatThrownBy(() -> new Table(columns, List.of(), 1)).hasMessage("a table of 0 rows cannot have 1 sums");
    }

    @Test
    void widthIsCountedAsATerminalDoes() {
        assertThat(Lines.width("e\u0301té")).isEqualTo(3);
        assertThat(Lines.width("艇庫")).isEqualTo(4);
        assertThat(Lines.wrap("a-word-that-is-long and short", 8))
                .containsExactly("a-word-", "that-is-", "long and", "short");
        assertThat(Lines.wrap("", 8)).containsExactly("");
    }

    private static List<String> lines(int page) {
        return TableText.lines(TABLE, page, Style.PLAIN);
    }
}
