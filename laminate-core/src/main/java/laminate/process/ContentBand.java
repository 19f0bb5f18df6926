package laminate.process;

import laminate.material.Status;

/**
 * A fibre content to plan with, and how far a workshop that knows its trade strays from it.
 *
 * @param nominal the content to plan with
 * @param rich the content with most resin that must be reckoned with
 * @param lean the content with least resin
 * @param source the published source, or what stands in for one
 * @param status how the figures relate to that source
 */
public record ContentBand(FibreContent nominal, FibreContent rich, FibreContent lean, String source, Status status) {

    /**
     * Resin volume of a layer at the nominal content, and how far it may stray.
     *
     * @param fibreMass w (kg/m²)
     * @param fibreVolume V<sub>F</sub> (m³/m²)
     * @param resinDensity ρ<sub>r</sub> (kg/m³)
     * @param voids V<sub>v</sub>
     * @return V<sub>R</sub> with its scatter (m³/m²)
     */
    public Range resinVolume(double fibreMass, double fibreVolume, double resinDensity, double voids) {
        return new Range(
                nominal.resinVolume(fibreMass, fibreVolume, resinDensity, voids),
                lean.resinVolume(fibreMass, fibreVolume, resinDensity, voids),
                rich.resinVolume(fibreMass, fibreVolume, resinDensity, voids));
    }
}
