package laminate.theory.sandwich;

import laminate.theory.Require;

/**
 * Bending stiffness of a sandwich beam in the parts of the board, for any two faces (Allen 1969, ch. 2, from memory):
 *
 * <pre>
 *   faces about their own axes   b (E1 t1³ + E2 t2³)/12
 *   faces by Steiner             b (E1 t1 e1² + E2 t2 e2²)
 *   core                         b Ec (c³/12 + c e0²)
 * </pre>
 *
 * <p>with e the distance of each middle from the neutral axis, the core counted. For equal faces this is
 * b Ef t³/6 + b Ef t d²/2 + b Ec c³/12. Moduli are along the beam, uniaxial for a narrow beam.
 *
 * @param facesOwnAxis the faces about their own middles (N·m²)
 * @param facesSteiner the faces by their distance from the neutral axis (N·m²)
 * @param core the core about the neutral axis (N·m²)
 */
public record BendingParts(double facesOwnAxis, double facesSteiner, double core) {
    /**
     * Checks the parts.
     *
     * @param facesOwnAxis the faces about their own middles (N·m²)
     * @param facesSteiner the faces by their distance from the neutral axis (N·m²)
     * @param core the core about the neutral axis (N·m²)
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public BendingParts {
        Require.notNegative("faces about their own axes", facesOwnAxis);
        Require.notNegative("faces by Steiner", facesSteiner);
        Require.notNegative("core", core);
    }

    /**
     * One homogeneous layer seen from the side.
     *
     * @param modulus E along the beam (Pa); may be 0
     * @param thickness t (m); may be 0
     */
    public record Layer(double modulus, double thickness) {
        /**
         * Checks the layer.
         *
         * @param modulus E along the beam (Pa); may be 0
         * @param thickness t (m); may be 0
         * @throws IllegalArgumentException if one is negative or not finite
         */
        public Layer {
            Require.notNegative("modulus", modulus);
            Require.notNegative("thickness", thickness);
        }

        private double stretching() {
            return modulus * thickness;
        }

        private double ownBending() {
            return modulus * thickness * thickness * thickness / 12;
        }
    }

    /**
     * The parts of a beam of three layers.
     *
     * @param width b (m)
     * @param lower the face towards −z
     * @param core the core
     * @param upper the face towards +z
     * @return the parts
     * @throws IllegalArgumentException if the width is not positive, or no layer has stiffness
     */
    public static BendingParts of(double width, Layer lower, Layer core, Layer upper) {
        Require.positive("width", width);
        double below = -(lower.thickness + core.thickness) / 2;
        double above = (upper.thickness + core.thickness) / 2;
        double all =
                Require.positive("stretching stiffness", lower.stretching() + core.stretching() + upper.stretching());
        double neutral = (lower.stretching() * below + upper.stretching() * above) / all;
        double steiner =
                lower.stretching() * Math.pow(below - neutral, 2) + upper.stretching() * Math.pow(above - neutral, 2);
        return new BendingParts(
                width * (lower.ownBending() + upper.ownBending()),
                width * steiner,
                width * (core.ownBending() + core.stretching() * neutral * neutral));
    }

    /**
     * All parts together.
     *
     * @return D = EI of the beam (N·m²)
     */
    public double total() {
        return facesOwnAxis + facesSteiner + core;
    }
}
