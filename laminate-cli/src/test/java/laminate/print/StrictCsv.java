package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** Reads comma-separated values and refuses what RFC 4180 does not allow. */
public final class StrictCsv {
    private StrictCsv() {}

    /** Reads RFC 4180 to the letter: every line ends in CR LF, a quote stands only around a field. */
    public static List<List<String>> rows(String csv) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        int i = 0;
        while (i < csv.length()) {
            StringBuilder field = new StringBuilder();
            i = csv.charAt(i) == '"' ? readQuoted(csv, i + 1, field) : readBare(csv, i, field);
            row.add(field.toString());
            if (csv.charAt(i) == ',') {
                i++;
            } else {
                assertThat(csv.substring(i, i + 2)).isEqualTo("\r\n");
                rows.add(row);
                row = new ArrayList<>();
                i += 2;
            }
        }
        assertThat(row).isEmpty();
        return rows;
    }

    private static int readQuoted(String csv, int start, StringBuilder field) {
        int i = start;
        while (csv.charAt(i) != '"' || csv.charAt(i + 1) == '"') {
            i += csv.charAt(i) == '"' ? 1 : 0;
            field.append(csv.charAt(i++));
        }
        return i + 1;
    }

    private static int readBare(String csv, int start, StringBuilder field) {
        int i = start;
        while (csv.charAt(i) != ',' && csv.charAt(i) != '\r') {
            assertThat(csv.charAt(i)).isNotIn('"', '\n');
            field.append(csv.charAt(i++));
        }
        return i;
    }
}
