package laminate.theory.failure;

/** The load factor at which a mode is reached. */
record Crossing(double factor, Mode mode) {}
