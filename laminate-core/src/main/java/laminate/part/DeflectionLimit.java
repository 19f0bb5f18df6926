package laminate.part;

/**
 * The most that a panel or beam may deflect, as a length or as a share of its span.
 *
 * @param basis what the value is of
 * @param value a length (m), or a share of the span (1)
 */
public record DeflectionLimit(Basis basis, double value) {

    /** The ways to state a deflection. */
    public enum Basis {
        /** A length (m). */
        LENGTH,
        /** A share of the span: of the shorter side of a panel, of the span or reach of a beam. */
        SPAN
    }

    /**
     * Checks the limit.
     *
     * @throws IllegalArgumentException if the value is not above zero and finite, or a share is not below 1
     */
    public DeflectionLimit {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("a deflection that is allowed must be above zero, not " + value);
        }
        if (basis == Basis.SPAN && !(value < 1)) {
            throw new IllegalArgumentException(
                    "a deflection that is allowed must be below the span, not " + value + " of it");
        }
    }

    /**
     * A limit by length.
     *
     * @param deflection the most (m)
     * @return the limit
     * @throws IllegalArgumentException if it is not above zero and finite
     */
    public static DeflectionLimit of(double deflection) {
        return new DeflectionLimit(Basis.LENGTH, deflection);
    }

    /**
     * A limit by span, as 1/100 of it.
     *
     * @param parts how many such deflections make a span, above 1
     * @return the limit
     * @throws IllegalArgumentException if it is not above 1 and finite
     */
    public static DeflectionLimit ofSpan(double parts) {
        return new DeflectionLimit(Basis.SPAN, 1 / parts);
    }

    /**
     * What is allowed over a span.
     *
     * @param span the shorter side of a panel, the span or reach of a beam (m)
     * @return the most that it may deflect (m)
     */
    public double over(double span) {
        return basis == Basis.SPAN ? value * span : value;
    }
}
