package laminate.print.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.part.CoreLayer;

/**
 * The plies of a zone by number and material; a layer may be several plies.
 *
 * @param materials the id of each ply's material, mould face first
 */
record PlyNames(List<String> materials) {

    static PlyNames of(ZoneEstimate zone) {
        List<String> materials = new ArrayList<>();
        for (LaidLayer laid : zone.layers()) {
            List<String> stacked = new ArrayList<>(
                    Collections.nCopies(laid.plies().size(), laid.layer().material()));
            bed(laid).ifPresent(paste -> stacked.set(0, paste));
            materials.addAll(stacked);
        }
        return new PlyNames(materials);
    }

    /** The paste that a core lies in, which is the ply below the core's own. */
    private static Optional<String> bed(LaidLayer laid) {
        return laid.plies().size() > 1 && laid.layer() instanceof CoreLayer core
                ? core.bed().map(bed -> bed.paste().id())
                : Optional.empty();
    }

    /** The number that a reader counts by, from 1 at the mould face. */
    static int number(int ply) {
        return ply + 1;
    }

    /** Number and material. */
    String of(int ply) {
        return number(ply) + " " + materials.get(ply);
    }

    String material(int ply) {
        return materials.get(ply);
    }
}
