package laminate.theory.panel;

import java.util.Objects;
import laminate.theory.Deformation;
import laminate.theory.Require;
import laminate.theory.Resultants;

/**
 * What a panel does at one point.
 *
 * @param x place along the length (m)
 * @param y place along the width (m)
 * @param deflection w, positive towards +z (m)
 * @param deformation strain of the mid-plane and curvature; they give the stress in every ply
 * @param resultants N (N/m) and M (N·m/m)
 * @param Qx shear force on a section across x (N/m)
 * @param Qy shear force on a section across y (N/m)
 */
public record PanelPoint(
        double x, double y, double deflection, Deformation deformation, Resultants resultants, double Qx, double Qy) {
    /**
     * Checks the numbers.
     *
     * @param x place along the length (m)
     * @param y place along the width (m)
     * @param deflection w, positive towards +z (m)
     * @param deformation strain of the mid-plane and curvature; they give the stress in every ply
     * @param resultants N (N/m) and M (N·m/m)
     * @param Qx shear force on a section across x (N/m)
     * @param Qy shear force on a section across y (N/m)
     * @throws IllegalArgumentException if one is not finite
     */
    public PanelPoint {
        Require.finite("x", x);
        Require.finite("y", y);
        Require.finite("deflection", deflection);
        Objects.requireNonNull(deformation, "deformation");
        Objects.requireNonNull(resultants, "resultants");
        Require.finite("Qx", Qx);
        Require.finite("Qy", Qy);
    }
}
