package laminate.theory;

import java.util.Objects;

/**
 * Forces and moments per unit width of a laminate.
 *
 * @param force N = ∫ σ dz: Nx, Ny, Nxy (N/m)
 * @param moment M = ∫ σ z dz: Mx, My, Mxy (N·m/m)
 */
public record Resultants(Vector3 force, Vector3 moment) {
    /**
     * Checks that both are there.
     *
     * @param force N = ∫ σ dz: Nx, Ny, Nxy (N/m)
     * @param moment M = ∫ σ z dz: Mx, My, Mxy (N·m/m)
     */
    public Resultants {
        Objects.requireNonNull(force, "force");
        Objects.requireNonNull(moment, "moment");
    }
}
