package laminate.theory.panel;

/** A straight course of a load along one coordinate; zero outside. */
record Ramp(double from, double to, double atFrom, double atTo) {
    static Ramp even(double from, double to) {
        return new Ramp(from, to, 1, 1);
    }

    double at(double x) {
        return atFrom + (atTo - atFrom) * (x - from) / (to - from);
    }
}
