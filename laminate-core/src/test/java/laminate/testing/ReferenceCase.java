package laminate.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * One worked case of the literature: inputs, expected numbers, where they come from and how sure they are.
 *
 * @param id its name in the file
 * @param tier A strong, B inputs or formulas published, C plausibility only
 * @param source the book or manual
 * @param status whether it was seen in print or remembered and re-derived
 * @param inputs inputs as in the file
 * @param expected expected numbers
 * @param tables tables of expected numbers
 */
public record ReferenceCase(
        String id,
        String tier,
        String source,
        String status,
        Map<String, Object> inputs,
        List<Expected> expected,
        List<Table> tables) {

    /** Values of the file carry 7 digits. */
    private static final double SEVEN_DIGITS = 1e-6;

    /** The cases of a resource whose id starts with one of the prefixes. */
    public static List<ReferenceCase> load(String resource, String... prefixes) {
        List<ReferenceCase> cases = new ArrayList<>();
        for (Map<String, Object> map : maps(Json.resource(resource).get("cases"))) {
            if (List.of(prefixes).stream().anyMatch(((String) map.get("id"))::startsWith)) {
                cases.add(of(map));
            }
        }
        return cases;
    }

    /** The case of that id. */
    public static ReferenceCase byId(List<ReferenceCase> cases, String id) {
        return cases.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private static ReferenceCase of(Map<String, Object> map) {
        return new ReferenceCase(
                (String) map.get("id"),
                (String) map.get("tier"),
                (String) map.get("source"),
                (String) map.get("status"),
                map(map.get("inputs")),
                maps(map.get("expected")).stream().map(Expected::of).toList(),
                maps(map.getOrDefault("tables", List.of())).stream()
                        .map(Table::of)
                        .toList());
    }

    /** An object of the file. */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> map(Object json) {
        return (Map<String, Object>) json;
    }

    /** A list of objects of the file. */
    @SuppressWarnings("unchecked")
    public static List<Map<String, Object>> maps(Object json) {
        return (List<Map<String, Object>>) json;
    }

    /** A list of numbers of the file. */
    @SuppressWarnings("unchecked")
    public static List<Double> numbers(Object json) {
        return (List<Double>) json;
    }

    /** A number of the inputs. */
    public double input(String name) {
        return (Double) inputs.get(name);
    }

    @Override
    public String toString() {
        return id;
    }

    /** One expected number: computed independently, and where known as printed or as remembered. */
    public record Expected(
            String name,
            double value,
            Optional<String> printed,
            Optional<String> remembered,
            double relativeTolerance) {

        private static Expected of(Map<String, Object> map) {
            return new Expected(
                    (String) map.get("name"),
                    (Double) map.get("value"),
                    Optional.ofNullable((String) map.get("printed")),
                    Optional.ofNullable((String) map.get("remembered")),
                    (Double) map.getOrDefault("rel_tol_vs_printed", 0.0));
        }

        /** Exact zeros must be exact; others agree to the digits of the value and of the print. */
        public void check(double actual) {
            checkValue(name, actual, value);
            printed.ifPresent(text -> Printed.parse(text).check(name, actual, relativeTolerance));
            remembered.ifPresent(text -> Printed.parse(text).check(name, actual, relativeTolerance));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** Compares with a value of the file. */
    public static void checkValue(String name, double actual, double value) {
        assertThat(Math.abs(actual - value))
                .as("%s: %s against %s", name, actual, value)
                .isLessThanOrEqualTo(SEVEN_DIGITS * Math.abs(value));
    }

    /** The row numbers of the first table, each with this case, as arguments of a test. */
    public Stream<Arguments> rowsOfTheFirstTable() {
        return IntStream.range(0, tables.get(0).rows().size()).mapToObj(row -> Arguments.of(row, this));
    }

    /** A table of expected numbers. */
    public record Table(String name, List<String> columns, List<List<Object>> rows) {
        @SuppressWarnings("unchecked")
        private static Table of(Map<String, Object> map) {
            return new Table(
                    (String) map.get("name"), (List<String>) map.get("columns"), (List<List<Object>>) map.get("rows"));
        }

        /** A cell by row and column name. */
        public Object cell(int row, String column) {
            return rows.get(row).get(columns.indexOf(column));
        }

        /** A number by row and column name. */
        public double number(int row, String column) {
            return (Double) cell(row, column);
        }
    }
}
