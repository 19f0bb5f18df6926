package laminate.process;

/**
 * Resin that fills the openings of cores, tubes and meshes, from their geometry.
 *
 * <p>Mass is volume times the density ρ of the resin: the liquid one for what is drawn from the pot, the cured one for
 * what stays in the part.
 */
public final class ResinUptake {

    private ResinUptake() {}

    /**
     * Resin in the grooves of one core face.
     *
     * <p>Grooves one way: m = ρ w d/s. Both ways, where crossings count once: m = ρ (2 w d/s − w² d/s²).
     *
     * @param density ρ (kg/m³)
     * @param grooves width w, depth d, pitch s (m), one way or both
     * @return resin per area of one grooved face (kg/m²)
     */
    public static double grooves(double density, Grooves grooves) {
        double w = grooves.width();
        double s = grooves.pitch();
        double oneWay = w * grooves.depth() / s;
        double crossings = w * w * grooves.depth() / (s * s);
        return density * (grooves.ways() == 1 ? oneWay : 2 * oneWay - crossings);
    }

    /**
     * Resin in holes through a core, on a square grid: m = ρ (π/4) d² t/s².
     *
     * @param density ρ (kg/m³)
     * @param diameter d (m)
     * @param pitch s (m)
     * @param thickness t of the core (m)
     * @return resin per area (kg/m²)
     */
    public static double perforations(double density, double diameter, double pitch, double thickness) {
        return density * Math.PI / 4 * diameter * diameter * thickness / (pitch * pitch);
    }

    /**
     * Resin in the cells that a saw has opened on one face of a closed-cell foam: m = ρ ε d/2, for spherical cells of
     * equal size cut at random.
     *
     * @param density ρ (kg/m³)
     * @param porosity ε, share of the foam's volume that is gas
     * @param cell d, diameter of a cell (m)
     * @return resin per area of one face (kg/m²)
     */
    public static double foamFace(double density, double porosity, double cell) {
        return density * porosity * cell / 2;
    }

    /**
     * Resin that stays in a hose or spiral tube: m = ρ (π/4) d² L; a spiral counts at its full bore.
     *
     * @param density ρ (kg/m³)
     * @param bore d (m)
     * @param length L (m)
     * @return resin (kg)
     */
    public static double tube(double density, double bore, double length) {
        return density * Math.PI / 4 * bore * bore * length;
    }

    /**
     * Resin that stays in a flow mesh: m = ρ t ε.
     *
     * @param density ρ (kg/m³)
     * @param thickness t under vacuum (m)
     * @param porosity ε, share of the mesh's volume that is open
     * @return resin per area (kg/m²)
     */
    public static double mesh(double density, double thickness, double porosity) {
        return density * thickness * porosity;
    }
}
