package laminate.process.flow;

import laminate.theory.Require;

/** Where the resin enters, and so how the front grows or shrinks on its way. */
public sealed interface Feed {

    /** From a line along one edge; the front stays as long as the line. */
    Feed LINE = new Line();

    /**
     * Width of the front at a position, against that of a strip: constant for a line, 2πr for a disc.
     *
     * @param position distance from the feed along the flow (m)
     * @return per metre of feed line, 1; for a disc the circumference (m)
     */
    double front(double position);

    /**
     * The longest way there is.
     *
     * @return length (m); infinite but for a rim, where it is the radius
     */
    double longest();

    /** From a line along one edge. */
    record Line() implements Feed {
        @Override
        public double front(double position) {
            return 1;
        }

        @Override
        public double longest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * From a round feed in the middle, outwards.
     *
     * @param radius r0 of the feed (m); the vent lies at r0 + flow length
     */
    record Centre(double radius) implements Feed {
        /**
         * Checks the radius.
         *
         * @throws IllegalArgumentException if it is not positive
         */
        public Centre {
            Require.positive("radius of the feed", radius);
        }

        @Override
        public double front(double position) {
            return 2 * Math.PI * (radius + position);
        }

        @Override
        public double longest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * From a rim all round, inwards.
     *
     * @param radius R of the rim (m); the vent lies at R − flow length, which may be the very middle
     */
    record Rim(double radius) implements Feed {
        /**
         * Checks the radius.
         *
         * @throws IllegalArgumentException if it is not positive
         */
        public Rim {
            Require.positive("radius of the rim", radius);
        }

        @Override
        public double front(double position) {
            return 2 * Math.PI * Math.max(0, radius - position);
        }

        @Override
        public double longest() {
            return radius;
        }
    }
}
