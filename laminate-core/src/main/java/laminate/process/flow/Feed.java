package laminate.process.flow;

import laminate.theory.Require;

/** Where the resin enters, and so how the front grows or shrinks on its way. */
public sealed interface Feed {

    /** From a line along one edge; the front stays as long as the line. */
    Feed LINE = new Line();

    /** From a line along one edge. */
    record Line() implements Feed {}

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
    }
}
