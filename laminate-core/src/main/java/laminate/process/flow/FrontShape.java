package laminate.process.flow;

/** How the front of a {@link Feed} grows or shrinks on its way, and what that adds to the resistance. */
interface FrontShape {

    /** Width b of the front at a position: 1 for a line, the circumference for a disc (m). */
    double width(double position);

    /** ∫ ds/b between two positions: their distance for a line, ln(r2/r1)/2π for a disc; infinite at its middle. */
    double resistance(double from, double to);

    /** Where the middle of the disc lies to the left, beyond the feed; −∞ for none. */
    double middleBefore();

    /** Where the middle of the disc lies to the right, which is the longest way; ∞ for none. */
    double middleBehind();

    static FrontShape of(Feed feed) {
        if (feed instanceof Feed.Centre centre) {
            return new Growing(centre.radius());
        }
        return feed instanceof Feed.Rim rim ? new Shrinking(rim.radius()) : new Straight();
    }

    /** Of a line. */
    record Straight() implements FrontShape {
        @Override
        public double width(double position) {
            return 1;
        }

        @Override
        public double resistance(double from, double to) {
            return to - from;
        }

        @Override
        public double middleBefore() {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double middleBehind() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** From a centre, from radius r0 outwards. */
    record Growing(double radius) implements FrontShape {
        @Override
        public double width(double position) {
            return 2 * Math.PI * (radius + position);
        }

        @Override
        public double resistance(double from, double to) {
            return Math.log1p((to - from) / (radius + from)) / (2 * Math.PI);
        }

        @Override
        public double middleBefore() {
            return -radius;
        }

        @Override
        public double middleBehind() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** From a rim of radius R inwards. */
    record Shrinking(double radius) implements FrontShape {
        @Override
        public double width(double position) {
            return 2 * Math.PI * (radius - position);
        }

        @Override
        public double resistance(double from, double to) {
            return -Math.log1p((from - to) / (radius - from)) / (2 * Math.PI);
        }

        @Override
        public double middleBefore() {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double middleBehind() {
            return radius;
        }
    }
}
