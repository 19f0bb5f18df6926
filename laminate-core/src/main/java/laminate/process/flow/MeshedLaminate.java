package laminate.process.flow;

import laminate.theory.Require;

/**
 * A laminate under flow mesh.
 *
 * @param mesh the mesh, 1
 * @param thickness h2 of the laminate (m)
 * @param permeability K2 of the laminate along the flow (m²)
 * @param throughPermeability Kz of the laminate through its thickness (m²)
 * @param porosity φ2 of the laminate
 */
public record MeshedLaminate(
        FlowMesh mesh, double thickness, double permeability, double throughPermeability, double porosity) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public MeshedLaminate {
        Require.positive("thickness", thickness);
        Flow.permeability(permeability);
        Flow.permeability(throughPermeability);
        Flow.porosity(porosity);
    }

    /**
     * Mesh and laminate as one even bed.
     *
     * @param length along the flow (m)
     * @return the segment, with K = ΣKh/Σh and φ = Σφh/Σh
     */
    public FlowSegment segment(double length) {
        throw new UnsupportedOperationException();
    }

    /**
     * How far the front in the laminate's far face lags behind that in the mesh.
     *
     * @return lag (m)
     */
    public double lag() {
        throw new UnsupportedOperationException();
    }

    /**
     * When the front in the mesh reaches a length.
     *
     * @param length L (m)
     * @param mu viscosity (Pa·s)
     * @param dP driving pressure (Pa)
     * @return time (s)
     */
    public double meshFrontTime(double length, double mu, double dP) {
        throw new UnsupportedOperationException();
    }
}
