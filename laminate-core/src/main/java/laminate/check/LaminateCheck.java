package laminate.check;

import java.util.List;
import java.util.Objects;
import laminate.theory.LaminateResponse;

/**
 * What every ply of a laminate carries under a load, and how much of it is in reserve.
 *
 * @param response deformation, resultants and stresses
 * @param points mould-face side, middle and inner side of each ply, mould face first
 */
public record LaminateCheck(LaminateResponse response, List<PointCheck> points) {
    /**
     * Keeps a copy.
     *
     * @param response deformation, resultants and stresses
     * @param points three a ply
     */
    public LaminateCheck {
        Objects.requireNonNull(response, "response");
        points = List.copyOf(points);
    }
}
