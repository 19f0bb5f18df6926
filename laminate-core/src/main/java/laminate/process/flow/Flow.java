package laminate.process.flow;

import laminate.theory.Require;

/** Checks of arguments that the formulas of flow share. */
final class Flow {
    private Flow() {}

    /** Above 0, up to 1. */
    static double porosity(double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException("porosity must lie above 0 and up to 1, was " + value);
        }
        return value;
    }

    /** Above 0, below 1: a bed without fibre or without room has no permeability. */
    static double fibreFraction(double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException("fibre volume fraction must lie above 0 and below 1, was " + value);
        }
        return value;
    }

    static double viscosity(double value) {
        return Require.positive("viscosity", value);
    }

    static double drivingPressure(double value) {
        return Require.positive("driving pressure", value);
    }

    static double permeability(double value) {
        return Require.positive("permeability", value);
    }
}
