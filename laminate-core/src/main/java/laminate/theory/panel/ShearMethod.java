package laminate.theory.panel;

/** Two ways to the shear forces of a state, which agree in the limit. */
enum ShearMethod {
    /**
     * Stiffness times shear strain. Best on a sandwich; on a thin panel the strain is the small difference of slope and
     * rotation.
     */
    STRAIN {
        @Override
        double[] shear(PanelState state, Section section, double[][][] fields) {
            double[] resultants = section.times(state.strain(fields));
            return new double[] {resultants[6], resultants[7]};
        }
    },
    /** Equilibrium of moments: Qx = Mx,x + Mxy,y, Qy = Mxy,x + My,y. Best on a thin panel. */
    EQUILIBRIUM {
        @Override
        double[] shear(PanelState state, Section section, double[][][] fields) {
            double[] byX = section.times(state.strainByX(fields));
            double[] byY = section.times(state.strainByY(fields));
            return new double[] {byX[3] + byY[5], byX[5] + byY[4]};
        }
    };

    /** Qx and Qy (N/m). */
    abstract double[] shear(PanelState state, Section section, double[][][] fields);
}
