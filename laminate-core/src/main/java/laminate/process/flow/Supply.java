package laminate.process.flow;

import java.util.List;
import laminate.theory.Require;

/**
 * Hoses one after the other between pot and feed, and how large a section of laminate they serve.
 *
 * @param hoses in any order, all passed by the same resin
 * @param section what the resin spreads over behind the hoses: width times thickness for a feed line (m²), the thickness
 *     for a disc (m), mesh and laminate together
 */
public record Supply(List<Hose> hoses, double section) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the section is not positive
     */
    public Supply {
        hoses = List.copyOf(hoses);
        Require.positive("section", section);
    }

    /**
     * Hoses that serve a feed line.
     *
     * @param hoses the hoses
     * @param width length of the feed line, across the flow (m)
     * @param thickness of laminate and mesh (m)
     * @return the supply
     * @throws IllegalArgumentException if a length is not positive
     */
    public static Supply toLine(List<Hose> hoses, double width, double thickness) {
        return new Supply(hoses, Require.positive("width", width) * Require.positive("thickness", thickness));
    }

    /**
     * Hoses that serve a whole disc, from its middle or from its rim.
     *
     * @param hoses the hoses
     * @param thickness of laminate and mesh (m)
     * @return the supply
     * @throws IllegalArgumentException if the thickness is not positive
     */
    public static Supply toDisc(List<Hose> hoses, double thickness) {
        return new Supply(hoses, thickness);
    }

    /**
     * Resistance of the hoses in terms of the laminate, Σ 128 L/(π d⁴) times the section: it adds to the laminate's own
     * ∫ ds/(K b) with b the width of the front, 1 for a line and 2πr for a disc.
     *
     * @return for a feed line ∫ ds/K (1/m), for a disc ∫ ds/(2πr K) (1/m²)
     */
    public double resistance() {
        double sum = 0;
        for (Hose hose : hoses) {
            sum += hose.resistance();
        }
        return Require.finite("resistance of the hoses", sum * section);
    }
}
