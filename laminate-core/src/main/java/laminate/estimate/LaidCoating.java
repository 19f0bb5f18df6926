package laminate.estimate;

import laminate.material.Resin;
import laminate.part.Coating;
import laminate.part.Film;
import laminate.process.Range;
import laminate.process.Workshop;

/**
 * A coating as it lies on the part.
 *
 * <p>What is applied, mixed with its agent, loses styrene or solvent before it is part of the moulding: in the part =
 * applied (1 − f). The catalyst is in neither.
 *
 * @param coating the coating as planned
 * @param applied liquid applied per area, with its hardener if it has one (kg/m²)
 * @param massPerArea mass per area in the part with its scatter (kg/m²)
 */
public record LaidCoating(Coating coating, double applied, Range massPerArea) {

    /**
     * Scatter of a film applied by hand: 0.4 to 0.6 mm about 0.5 mm, as trade technical pages print.
     */
    private static final double FILM_SCATTER = 0.2;

    static LaidCoating of(Coating coating, Workshop workshop) {
        Resin material = coating.material();
        double evaporated = workshop.coatingEvaporation(material);
        Film film = coating.film();
        double applied = coating.coats()
                * switch (film.basis()) {
                    case WET -> film.value() * material.densityLiquid();
                    case AREAL_WEIGHT -> film.value();
                    case CURED -> film.value() * material.densityCured() / (1 - evaporated);
                };
        double inPart = applied * (1 - evaporated);
        return new LaidCoating(
                coating, applied, new Range(inPart, inPart * (1 - FILM_SCATTER), inPart * (1 + FILM_SCATTER)));
    }

    /**
     * Cured thickness of all coats.
     *
     * @return thickness with its scatter (m)
     */
    public Range thickness() {
        return massPerArea.times(1 / coating.material().densityCured());
    }
}
