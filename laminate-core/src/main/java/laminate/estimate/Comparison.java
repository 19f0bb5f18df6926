package laminate.estimate;

import laminate.process.Range;

/**
 * A measured value against its plan.
 *
 * @param what what was measured, in words
 * @param planned the plan with its scatter (kg or m)
 * @param measured the measured value (kg or m)
 * @param isMass whether this is a mass (kg); otherwise it is a thickness (m)
 */
public record Comparison(String what, Range planned, double measured, boolean isMass) {

    /**
     * How far the measured value is from the plan.
     *
     * @return measured less planned (kg or m)
     */
    public double difference() {
        return measured - planned.planned();
    }

    /**
     * Whether the measured value lies within the scatter of the process.
     *
     * @return true if it does
     */
    public boolean isInside() {
        return planned.contains(measured);
    }
}
