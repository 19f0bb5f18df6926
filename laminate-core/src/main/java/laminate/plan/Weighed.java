package laminate.plan;

import java.util.OptionalInt;

/**
 * A mix as the scales or the dispenser give it.
 *
 * @param resin resin (kg)
 * @param agent catalyst or hardener (kg)
 * @param strokes strokes of the dispenser, empty where the agent is weighed
 */
record Weighed(double resin, double agent, OptionalInt strokes) {}
