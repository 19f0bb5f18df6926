package laminate.quote;

/**
 * How the time for a moulding falls as the same one is made again.
 *
 * <p>Wright's curve: with every doubling of the number made, the average time of all made so far falls to the same share r,
 * <pre>  T̄(n) = T̄(1)·n^b,  b = log₂ r</pre>
 * so that n of them take T(n) = T̄(1)·n^(1 + b) together (T. P. Wright, Factors affecting the cost of airplanes, Journal of
 * the Aeronautical Sciences 3 (1936) 122–128; the form is from memory). With r = 80 % the averages of 1, 2, 4, 8 are 100,
 * 80, 64, 51.2. The times of a workshop hold on the average of {@code countedOn} mouldings: of the first one where it is
 * stated for the first, of ten where they were taken over ten.
 *
 * @param rate r, above one half up to 1; 1 for no learning
 * @param countedOn the number of mouldings whose average time is the workshop's
 */
public record LearningCurve(double rate, int countedOn) {

    /** No learning: every moulding takes the workshop's time. */
    public static final LearningCurve NONE = new LearningCurve(1, 1);

    private static final double LEAST_RATE = 0.5;

    /**
     * Checks rate and number.
     *
     * @throws IllegalArgumentException if the rate is not above 50 % and up to 100 %, or the number below one
     */
    public LearningCurve {
        if (!(rate > LEAST_RATE && rate <= 1)) {
            throw new IllegalArgumentException(
                    "a learning rate is above 50 % and up to 100 %, not " + rate * 100 + " %; 100 % is no learning");
        }
        if (countedOn < 1) {
            throw new IllegalArgumentException(
                    "the times of a workshop hold on the average of one moulding or more, not of " + countedOn);
        }
    }

    /**
     * b, the slope of the curve on logarithmic scales.
     *
     * @return log₂ r, from −1 to 0
     */
    public double slope() {
        return Math.log(rate) / Math.log(2);
    }

    /**
     * Average time of the first n mouldings, as a multiple of the workshop's.
     *
     * @param n how many are made
     * @return (n/countedOn)^b
     * @throws IllegalArgumentException if n is below one
     */
    public double averageOf(int n) {
        if (n < 1) {
            throw new IllegalArgumentException("a batch is of one or more, not " + n);
        }
        return Math.pow((double) n / countedOn, slope());
    }

    /**
     * Time of the first n mouldings together, as a multiple of the workshop's for one.
     *
     * @param n how many are made
     * @return n times their average
     */
    public double totalOf(int n) {
        return n * averageOf(n);
    }
}
