package laminate.process.flow;

import laminate.theory.Require;

/**
 * Flow mesh, the open net on top of the laminate in which the resin runs ahead.
 *
 * @param thickness h1 under vacuum (m)
 * @param permeability K1 in its plane (m²)
 * @param porosity φ1
 */
public record FlowMesh(double thickness, double permeability, double porosity) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if thickness or permeability is not positive, or the porosity not above 0 and up
     *     to 1
     */
    public FlowMesh {
        Require.positive("thickness of the mesh", thickness);
        Flow.permeability(permeability);
        Flow.porosity(porosity);
    }
}
