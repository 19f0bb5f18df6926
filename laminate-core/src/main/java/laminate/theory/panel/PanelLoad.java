package laminate.theory.panel;

import java.util.List;
import java.util.Objects;
import laminate.theory.Require;

/** A load on a panel; several act together as a list. */
public sealed interface PanelLoad {
    /** Standard gravity (m/s²), 3rd General Conference on Weights and Measures, 1901. */
    double STANDARD_GRAVITY = 9.80665;

    /**
     * The same pressure everywhere.
     *
     * @param pressure positive on the mould face towards +z (Pa)
     */
    record Uniform(double pressure) implements PanelLoad {
        /**
         * Checks the pressure.
         *
         * @param pressure positive on the mould face towards +z (Pa)
         * @throws IllegalArgumentException if it is not finite
         */
        public Uniform {
            Require.finite("pressure", pressure);
        }
    }

    /** Which side of a panel under a head of liquid stands upright. */
    enum Upright {
        /** The width: the lowest edge is y = 0, depth falls along y. */
        WIDTH,
        /** The length: the lowest edge is x = 0, depth falls along x. */
        LENGTH,
        /** Neither: the panel lies flat and has the same depth everywhere. */
        NONE
    }

    /**
     * Pressure of a liquid at rest on the mould face, p = ρ g × depth; no load above the water line, which may cross
     * the panel.
     *
     * @param head depth of the lowest edge below the surface, or of the whole panel if it lies flat (m)
     * @param density of the liquid (kg/m³)
     * @param upright which side stands upright
     */
    record Head(double head, double density, Upright upright) implements PanelLoad {
        /**
         * Checks the head.
         *
         * @param head depth of the lowest edge below the surface, or of the whole panel if it lies flat (m)
         * @param density of the liquid (kg/m³)
         * @param upright which side stands upright
         * @throws IllegalArgumentException if head or density is not positive
         */
        public Head {
            Require.positive("head", head);
            Require.positive("density", density);
            Objects.requireNonNull(upright, "upright");
        }

        /**
         * The pressure at the lowest edge, ρ g × head.
         *
         * @return the pressure (Pa)
         */
        public double greatestPressure() {
            return density * STANDARD_GRAVITY * head;
        }
    }

    /**
     * A force spread evenly over a rectangle that lies within the panel.
     *
     * @param x centre of the rectangle along the length (m)
     * @param y centre of the rectangle along the width (m)
     * @param alongX size along the length (m)
     * @param alongY size along the width (m)
     * @param force total force, positive on the mould face towards +z (N)
     */
    record Patch(double x, double y, double alongX, double alongY, double force) implements PanelLoad {
        /**
         * Checks the patch; that it lies within the panel is checked where both are known.
         *
         * @param x centre of the rectangle along the length (m)
         * @param y centre of the rectangle along the width (m)
         * @param alongX size along the length (m)
         * @param alongY size along the width (m)
         * @param force total force, positive on the mould face towards +z (N)
         * @throws IllegalArgumentException if a size is not positive or a number not finite
         */
        public Patch {
            Require.finite("x of the patch", x);
            Require.finite("y of the patch", y);
            Require.positive("size of the patch along x", alongX);
            Require.positive("size of the patch along y", alongY);
            Require.finite("force", force);
        }
    }

    /**
     * Forces in the plane, the same all over the panel and in balance; tension positive. The panel is strained evenly
     * by them first, and its supports hold it in the plane from there on.
     *
     * @param Nx on the edges x = 0 and x = length, along x (N/m)
     * @param Ny on the edges y = 0 and y = width, along y (N/m)
     * @param Nxy shear on all edges (N/m)
     */
    record EdgeForces(double Nx, double Ny, double Nxy) implements PanelLoad {
        /**
         * Checks the forces.
         *
         * @param Nx on the edges x = 0 and x = length, along x (N/m)
         * @param Ny on the edges y = 0 and y = width, along y (N/m)
         * @param Nxy shear on all edges (N/m)
         * @throws IllegalArgumentException if one is not finite
         */
        public EdgeForces {
            Require.finite("Nx", Nx);
            Require.finite("Ny", Ny);
            Require.finite("Nxy", Nxy);
        }

        /** All forces in the plane among some loads together. */
        static EdgeForces sum(List<PanelLoad> loads) {
            EdgeForces sum = new EdgeForces(0, 0, 0);
            for (PanelLoad load : loads) {
                if (load instanceof EdgeForces n) {
                    sum = new EdgeForces(sum.Nx + n.Nx, sum.Ny + n.Ny, sum.Nxy + n.Nxy);
                }
            }
            return sum;
        }
    }
}
