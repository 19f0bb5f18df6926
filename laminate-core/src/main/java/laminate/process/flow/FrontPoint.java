package laminate.process.flow;

/**
 * Where the front stands at a time.
 *
 * @param time since the resin entered the feed (s)
 * @param position distance from the feed along the flow (m)
 */
public record FrontPoint(double time, double position) {}
