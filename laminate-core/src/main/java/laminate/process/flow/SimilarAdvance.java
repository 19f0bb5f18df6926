package laminate.process.flow;

/**
 * A front that goes with the square root of time, L² = 2 λ t.
 *
 * @param lambda λ at the viscosity of the start (m²/s)
 */
record SimilarAdvance(double lambda) implements Advance {

    static SimilarAdvance of(SoftBag bed, double drivingPressure, double mu) {
        FlowSegment rigid = bed.rigid(1);
        double length = Darcy.lineLength(rigid.porosity(), mu, 1, rigid.permeability(), drivingPressure);
        return new SimilarAdvance(length * length / (2 * bed.shareOfRigidTime(drivingPressure)));
    }

    @Override
    public double time(double position) {
        return position * position / (2 * lambda);
    }

    @Override
    public double position(double time) {
        return Math.sqrt(2 * lambda * time);
    }

    @Override
    public double end() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double hoseLoss(double position) {
        return 0;
    }
}
