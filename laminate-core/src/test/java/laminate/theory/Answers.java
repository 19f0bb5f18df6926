package laminate.theory;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.testing.ReferenceCase;
import org.junit.jupiter.params.provider.Arguments;

/** Numbers of the library under the names that a reference case gives them. */
final class Answers {
    private final Map<String, Double> byName = new LinkedHashMap<>();

    /** Every expected number of some cases, with its case and with what the library answers to that case. */
    static Stream<Arguments> toExpected(
            List<ReferenceCase> cases, Map<String, Function<ReferenceCase, Answers>> solutions) {
        return cases.stream().flatMap(c -> {
            Answers answers = solutions.get(c.id()).apply(c);
            return c.expected().stream().map(expected -> Arguments.of(c, expected, answers));
        });
    }

    Answers put(String name, double value) {
        if (byName.put(name, value) != null) {
            throw new IllegalStateException("answered twice: " + name);
        }
        return this;
    }

    /** Adds m11 … m66 as prefix11 … prefix66, all nine. */
    Answers put(String prefix, Matrix3 m) {
        String[] index = {"1", "2", "6"};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                put(prefix + index[i] + index[j], m.get(i, j));
            }
        }
        return this;
    }

    Answers put(String x, String y, String xy, Vector3 v) {
        return put(x, v.x()).put(y, v.y()).put(xy, v.xy());
    }

    double get(String name) {
        if (!byName.containsKey(name)) {
            throw new AssertionError("the reference case asks for " + name + ", answered are " + byName.keySet());
        }
        return byName.get(name);
    }
}
