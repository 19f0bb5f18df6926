package laminate.theory;

import java.util.LinkedHashMap;
import java.util.Map;

/** Numbers of the library under the names that a reference case gives them. */
final class Answers {
    private final Map<String, Double> byName = new LinkedHashMap<>();

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
