package laminate.check;

import java.util.OptionalDouble;

/**
 * What a ply of core gives the faces, as a lamina does not know it.
 *
 * @param Ez modulus through the thickness (Pa)
 * @param cellular whether it has cells that a face may dimple into
 * @param cellSize diameter of the circle within a cell (m), if known
 */
record CoreSupport(double Ez, boolean cellular, OptionalDouble cellSize) {

    CoreSupport stiffer(double factor) {
        return new CoreSupport(factor * Ez, cellular, cellSize);
    }
}
