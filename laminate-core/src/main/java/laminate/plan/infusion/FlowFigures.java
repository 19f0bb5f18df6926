package laminate.plan.infusion;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;

/**
 * What a fill time is reckoned from, each figure with its source.
 *
 * @param laminate the name of the zone whose laminate it is: of several under one plan the one that fills last
 * @param drivingPressure Δp (Pa)
 * @param viscosity μ₀, as the feed is opened (Pa·s)
 * @param viscosityTime τ, the time in which viscosity grows by the factor e (s), empty where it stays
 * @param density ρ of the liquid resin (kg/m³)
 * @param thickness h of the infused layers, without cores (m)
 * @param porosity φ = 1 − V<sub>f</sub> of the infused layers; that of the whole way where it has segments
 * @param permeability K of the infused layers along the flow (m²); that of the whole way where it has segments
 * @param permeabilityFactor the factor by which K may be larger or smaller where it comes from memory, empty elsewhere
 * @param effectivePermeability K of infused layers and flow mesh together (m²), K itself without a mesh
 * @param effectivePorosity φ of infused layers and flow mesh together, φ itself without a mesh
 */
public record FlowFigures(
        String laminate,
        Figure drivingPressure,
        Figure viscosity,
        Optional<Figure> viscosityTime,
        Figure density,
        Figure thickness,
        Figure porosity,
        Figure permeability,
        OptionalDouble permeabilityFactor,
        double effectivePermeability,
        double effectivePorosity) {

    /** Checks that nothing is missing. */
    public FlowFigures {
        Objects.requireNonNull(laminate, "laminate");
        Objects.requireNonNull(drivingPressure, "drivingPressure");
        Objects.requireNonNull(viscosity, "viscosity");
        Objects.requireNonNull(viscosityTime, "viscosityTime");
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(porosity, "porosity");
        Objects.requireNonNull(permeability, "permeability");
        Objects.requireNonNull(permeabilityFactor, "permeabilityFactor");
    }

    /**
     * Whether the permeability is an order of magnitude from memory, which every result has to say.
     *
     * @return true if nobody measured it
     */
    public boolean isPermeabilityFromMemory() {
        return permeabilityFactor.isPresent();
    }
}
