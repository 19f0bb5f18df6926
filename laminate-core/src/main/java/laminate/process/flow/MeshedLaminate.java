package laminate.process.flow;

import laminate.theory.Require;

/**
 * A laminate under flow mesh: resin runs ahead in the mesh, 1, and soaks down into the laminate, 2.
 *
 * <p><b>As one bed</b>, with permeability and porosity averaged over the thickness: within 1.6 % of a control-volume
 * simulation in length and depth, in three stacks.
 *
 * <p><b>Lag.</b> Behind the front of the mesh the wetted depth η of the laminate grows from 0 to h2. In a wave that keeps
 * its shape, mass balance and Darcy's law give for the pressure there p = μ u φ2 η √(B + 2η/3)/√(K1 h1 Kz) and for the
 * slope dη/dy = √A √(B + 2η/3), y the distance behind the front and u its speed, with A = Kz/(K1 h1) and B = φ1 h1/φ2.
 * Derived; the idea of a front region that keeps its shape is that of Hsiao and others 2000 (their equation was not
 * seen). Against the simulation the lag is 2 to 23 % long, so on the safe side; the time of the mesh front within 1.5 %.
 *
 * @param mesh the mesh: h1, K1, φ1
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
        Require.positive("permeability through the thickness", throughPermeability);
        Flow.porosity(porosity);
    }

    /**
     * A property of two layers that act side by side, x = (x1 h1 + x2 h2)/(h1 + h2).
     *
     * @param h1 thickness of one (m)
     * @param x1 its permeability or porosity
     * @param h2 thickness of the other (m)
     * @param x2 its permeability or porosity
     * @return that of both
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double uniform(double h1, double x1, double h2, double x2) {
        double sum = Require.positive("thickness", h1) * Require.positive("property", x1)
                + Require.positive("thickness", h2) * Require.positive("property", x2);
        return Require.finite("property", sum / (h1 + h2));
    }

    /**
     * How far behind the front of the mesh the laminate is wet to a depth, y = (3/√A) [√(B + 2η/3) − √B], which is √(6 η
     * K1 h1/Kz) where the mesh itself holds next to nothing.
     *
     * @param A Kz/(K1 h1) (1/m)
     * @param B φ1 h1/φ2 (m), may be 0
     * @param depth η (m)
     * @return y (m)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double lag(double A, double B, double depth) {
        Require.positive("A", A);
        Require.notNegative("B", B);
        double rise = 2 * Require.notNegative("depth", depth) / 3;
        double roots = Math.sqrt(B + rise) + Math.sqrt(B);
        return rise == 0 ? 0 : Require.finite("lag", 3 / Math.sqrt(A) * rise / roots);
    }

    /**
     * Mesh and laminate as one even bed.
     *
     * @param length along the flow (m)
     * @return the segment, with K = ΣKh/Σh and φ = Σφh/Σh
     * @throws IllegalArgumentException if the length is not positive
     */
    public FlowSegment segment(double length) {
        return new FlowSegment(
                length,
                uniform(mesh.thickness(), mesh.permeability(), thickness, permeability),
                uniform(mesh.thickness(), mesh.porosity(), thickness, porosity));
    }

    /**
     * How far the front at the laminate's far face lags behind that in the mesh, once it keeps its shape.
     *
     * @return lag d (m)
     */
    public double lag() {
        return lag(exchange(), storage(), thickness);
    }

    /**
     * When the front in the mesh reaches a length. Up to the lag d the laminate at the feed is not wet through, t = φ2 μ
     * η²/(2 Kz ΔP) with η the depth that lags by L; from there on t = td + [C (L − d) + μ S (L − d)²/(2 H)]/ΔP, with td
     * that of η = h2, C = μ φ2 h2 √(A (B + 2 h2/3))/Kz, S = φ1 h1 + φ2 h2 and H = K1 h1 + K2 h2.
     *
     * @param length L (m)
     * @param mu viscosity μ (Pa·s)
     * @param dP driving pressure ΔP (Pa)
     * @return t (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public double meshFrontTime(double length, double mu, double dP) {
        double beyond = Require.notNegative("length", length) - lag();
        if (beyond <= 0) {
            return depthTime(depthThatLags(length), mu, dP);
        }
        double h2 = thickness;
        double C = mu * porosity * h2 * Math.sqrt(exchange() * (storage() + 2 * h2 / 3)) / throughPermeability;
        double S = mesh.porosity() * mesh.thickness() + porosity * h2;
        double H = mesh.permeability() * mesh.thickness() + permeability * h2;
        return Require.finite("time", depthTime(h2, mu, dP) + (C * beyond + mu * S * beyond * beyond / (2 * H)) / dP);
    }

    private double depthTime(double depth, double mu, double dP) {
        return Darcy.throughThicknessTime(porosity, mu, depth, throughPermeability, dP);
    }

    /** The reverse of {@link #lag(double, double, double)}: η = y √A √B + y² A/6. */
    private double depthThatLags(double y) {
        double A = exchange();
        return y * Math.sqrt(A * storage()) + y * y * A / 6;
    }

    /** A (1/m). */
    private double exchange() {
        return throughPermeability / (mesh.permeability() * mesh.thickness());
    }

    /** B (m). */
    private double storage() {
        return mesh.porosity() * mesh.thickness() / porosity;
    }
}
