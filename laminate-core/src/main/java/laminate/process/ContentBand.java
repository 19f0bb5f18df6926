package laminate.process;

import java.util.Objects;
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
     * Checks that nothing is missing. Whether nominal lies between rich and lean is found where resin is reckoned, as
     * the three may be stated in different ways.
     *
     * @throws IllegalArgumentException if the source is blank
     */
    public ContentBand {
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(rich, "rich");
        Objects.requireNonNull(lean, "lean");
        Objects.requireNonNull(status, "status");
        if (source.isBlank()) {
            throw new IllegalArgumentException("a fibre content needs a source; " + nominal + " has none");
        }
    }

    /**
     * Resin volume of a layer at the nominal content, and how far it may stray.
     *
     * @param fibreMass w (kg/m²)
     * @param fibreVolume V<sub>F</sub> (m³/m²)
     * @param resinDensity ρ<sub>r</sub> (kg/m³)
     * @param voids V<sub>v</sub>
     * @return V<sub>R</sub> with its scatter (m³/m²)
     * @throws IllegalArgumentException as {@link FibreContent#resinVolume}, or if the nominal volume is not between the
     *     two others
     */
    public Range resinVolume(double fibreMass, double fibreVolume, double resinDensity, double voids) {
        return new Range(
                nominal.resinVolume(fibreMass, fibreVolume, resinDensity, voids),
                lean.resinVolume(fibreMass, fibreVolume, resinDensity, voids),
                rich.resinVolume(fibreMass, fibreVolume, resinDensity, voids));
    }
}
