package laminate.process.flow;

/**
 * A bed that lets resin through better one way than across it.
 *
 * @param along K1, permeability the better way (m²)
 * @param across K2, permeability square to it in the plane (m²)
 */
public record Anisotropy(double along, double across) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public Anisotropy {
        Flow.permeability(along);
        Flow.permeability(across);
    }
}
