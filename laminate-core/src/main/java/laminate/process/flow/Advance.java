package laminate.process.flow;

/** The front against time at the viscosity of the start, without an end to the last bed. */
interface Advance {
    /** Time to a position (s); infinite where the resin never gets. */
    double time(double position);

    /** Position at a time, finite (m). */
    double position(double time);

    /** The position that is never passed (m); infinite if there is none. */
    double end();

    /** What hoses take while the front stands at a position (Pa). */
    double hoseLoss(double position);
}
