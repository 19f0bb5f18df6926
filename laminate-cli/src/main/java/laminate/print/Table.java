package laminate.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows under headings with their units; the last rows may be sums.
 *
 * @param columns the columns
 * @param rows the rows, each with one cell a column; an empty text where there is nothing to say
 * @param totals how many of the last rows are sums
 */
public record Table(List<Column> columns, List<List<String>> rows, int totals) {

    /** How a column is laid out. */
    public enum Align {
        /** Words, which wrap where room is short. */
        LEFT,
        /** Numbers, which never wrap. */
        RIGHT
    }

    /**
     * A column.
     *
     * @param heading its heading
     * @param unit the unit of its numbers, empty text for none
     * @param align how it is laid out
     * @param group columns of one group stay together where a table is too wide for a page and is told in pieces; those
     *     of group 0 stand in every piece
     */
    public record Column(String heading, String unit, Align align, int group) {
        /** Makes the heading a text of one line. */
        public Column {
            heading = Lines.clean(heading);
        }

        /**
         * A column of words.
         *
         * @param heading its heading
         * @return the column
         */
        public static Column words(String heading) {
            return new Column(heading, "", Align.LEFT, 0);
        }

        /**
         * A column of numbers.
         *
         * @param heading its heading
         * @param unit the unit, empty text for none
         * @return the column
         */
        public static Column numbers(String heading, String unit) {
            return new Column(heading, unit, Align.RIGHT, 0);
        }

        /**
         * The same column in a group.
         *
         * @param number the number of the group, from 1 in the order of the columns; 0 for a column of every piece
         * @return the column
         */
        public Column in(int number) {
            return new Column(heading, unit, align, number);
        }
    }

    /**
     * Copies the rows, and makes each cell a text of one line.
     *
     * @throws IllegalArgumentException if a row has not one cell a column, or there are more sums than rows
     */
    public Table {
        columns = List.copyOf(columns);
        int width = columns.size();
        List<List<String>> clean = new ArrayList<>();
        for (List<String> row : rows) {
            clean.add(checked(row, width));
        }
        rows = List.copyOf(clean);
        if (totals < 0 || totals > rows.size()) {
            throw new IllegalArgumentException("a table of " + rows.size() + " rows cannot have " + totals + " sums");
        }
    }

    private static List<String> checked(List<String> row, int width) {
        if (row.size() != width) {
            throw new IllegalArgumentException("a row of " + width + " columns cannot have " + row.size() + " cells");
        }
        List<String> clean = new ArrayList<>();
        for (String cell : row) {
            clean.add(Lines.clean(cell));
        }
        return List.copyOf(clean);
    }

    /**
     * The columns of some groups, with those that stand in every piece.
     *
     * @param first the first group
     * @param last the last
     * @return a piece of this table
     */
    Table groups(int first, int last) {
        List<Integer> kept = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            int group = columns.get(c).group();
            if (group == 0 || group >= first && group <= last) {
                kept.add(c);
            }
        }
        return new Table(
                picked(columns, kept),
                rows.stream().map(row -> picked(row, kept)).toList(),
                totals);
    }

    private static <T> List<T> picked(List<T> all, List<Integer> places) {
        return places.stream().map(all::get).toList();
    }

    /** How many groups of columns there are. */
    int groups() {
        return columns.stream().mapToInt(Column::group).max().orElse(0);
    }

    /** Gathers the rows of a table. */
    public static final class Builder {
        private final List<Column> columns;
        private final List<List<String>> rows = new ArrayList<>();
        private int totals;

        /**
         * Starts a table.
         *
         * @param columns its columns
         */
        public Builder(Column... columns) {
            this(List.of(columns));
        }

        /**
         * Starts a table.
         *
         * @param columns its columns
         */
        public Builder(List<Column> columns) {
            this.columns = columns;
        }

        /**
         * Adds a row.
         *
         * @param cells one cell a column
         * @return this
         */
        public Builder row(String... cells) {
            return row(List.of(cells));
        }

        /**
         * Adds a row.
         *
         * @param cells one cell a column
         * @return this
         */
        public Builder row(List<String> cells) {
            if (totals > 0) {
                throw new IllegalStateException("sums stand last; no row can follow them");
            }
            rows.add(cells);
            return this;
        }

        /**
         * Adds a sum; no row may follow.
         *
         * @param cells one cell a column
         * @return this
         */
        public Builder total(String... cells) {
            return total(List.of(cells));
        }

        /**
         * Adds a sum; no row may follow.
         *
         * @param cells one cell a column
         * @return this
         */
        public Builder total(List<String> cells) {
            rows.add(cells);
            totals++;
            return this;
        }

        /**
         * The table.
         *
         * @return the table
         */
        public Table build() {
            return new Table(columns, rows, totals);
        }
    }
}
