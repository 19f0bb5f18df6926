package laminate.material;

/**
 * One ply in the make-up of a reinforcement.
 *
 * @param fibre the fibre
 * @param form how the fibres lie
 * @param angle direction of the fibres, or of the warp, from the roll direction (degrees)
 * @param arealMass mass of fibre, with its share of stitching and binder (kg/m²)
 * @param warpShare share of a woven ply's mass that runs with the warp; 1 for straight plies, 0.5 for random ones
 */
public record FibrePly(Fibre fibre, Form form, double angle, double arealMass, double warpShare) {

    /**
     * Checks the ply.
     *
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public FibrePly {
        if (!Double.isFinite(angle)) {
            throw new IllegalArgumentException("the angle of a ply must be finite, not " + angle);
        }
        if (!(arealMass > 0) || !Double.isFinite(arealMass)) {
            throw new IllegalArgumentException("the areal weight of a ply must be above zero, not " + arealMass);
        }
        if (!(warpShare >= 0 && warpShare <= 1)) {
            throw new IllegalArgumentException("the warp share must be from 0 to 1, not " + warpShare);
        }
    }

    /**
     * A ply whose fibres lie as the form says: straight, half and half, or random.
     *
     * @param fibre the fibre
     * @param form how the fibres lie
     * @param angle direction from the roll direction (degrees)
     * @param arealMass mass of fibre (kg/m²)
     * @return the ply
     */
    public static FibrePly of(Fibre fibre, Form form, double angle, double arealMass) {
        double warp = form.architecture() == Form.Architecture.STRAIGHT ? 1 : 0.5;
        return new FibrePly(fibre, form, angle, arealMass, warp);
    }

    /**
     * This ply with other fibre directions.
     *
     * @param newAngle the direction (degrees)
     * @return the ply
     */
    public FibrePly withAngle(double newAngle) {
        return new FibrePly(fibre, form, newAngle, arealMass, warpShare);
    }

    /**
     * This ply with its mass multiplied.
     *
     * @param factor what to multiply by
     * @return the ply
     */
    FibrePly scaledBy(double factor) {
        return new FibrePly(fibre, form, angle, arealMass * factor, warpShare);
    }
}
