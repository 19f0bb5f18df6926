package laminate.process;

import java.util.List;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Resin;
import laminate.material.Status;

/**
 * Nominal glass contents by mass, ISO 12215-5:2008, Annex C (from memory; the table was not seen in print).
 *
 * <p>With R the share of mat in the glass of a combined reinforcement:
 *
 * <pre>
 *                        open mould, simple   open mould, complex   vacuum bag or infusion
 *   chopped strand mat   0.30                 0.25                  0.36
 *   woven roving         0.48                 0.36                  0.58
 *   mat and roving       0.46 - 0.18 R        0.35 - 0.11 R         0.56 - 0.22 R
 *   stitched             0.50                 0.38                  0.60
 *   unidirectional       0.55                 0.41                  0.66
 * </pre>
 *
 * Whether the standard prints infusion apart from vacuum bag is not verified. Woven cloth is taken as woven roving,
 * since the table has no row for it.
 */
final class IsoNominalContents {
    private static final String SOURCE = "ISO 12215-5:2008, Annex C, nominal glass content";

    private IsoNominalContents() {}

    static List<ContentBand> bands(Process process, List<FibrePly> plies, Resin.Family family, boolean simple) {
        double mat = plies.stream()
                .filter(IsoNominalContents::isMat)
                .mapToDouble(FibrePly::arealMass)
                .sum();
        double all = plies.stream().mapToDouble(FibrePly::arealMass).sum();
        boolean combined = mat > 0 && mat < all;
        plies.forEach(IsoNominalContents::checkGlass);
        return plies.stream()
                .map(ply -> scattered(
                        combined ? combinedContent(process, simple, mat / all) : content(process, simple, ply.form()),
                        TradeContents.band(process, ply.form(), Fibre.Type.GLASS, family)))
                .toList();
    }

    /** The standard gives no scatter: take that of the trade's resin for the same layer, in proportion. */
    private static ContentBand scattered(double psi, ContentBand trade) {
        double nominal = resinRatio(trade.nominal());
        return new ContentBand(
                FibreContent.ofMassFraction(psi),
                withResin(psi, resinRatio(trade.rich()) / nominal),
                withResin(psi, resinRatio(trade.lean()) / nominal),
                SOURCE,
                Status.MEMORY);
    }

    /** Mass of resin per mass of glass at the standard's densities. */
    private static double resinRatio(FibreContent content) {
        return content.resinVolume(1, 1 / TradeContents.GLASS_DENSITY, TradeContents.RESIN_DENSITY, 0)
                * TradeContents.RESIN_DENSITY;
    }

    private static FibreContent withResin(double psi, double factor) {
        return FibreContent.ofResinRatio(factor * (1 - psi) / psi);
    }

    private static double combinedContent(Process process, boolean simple, double r) {
        if (process != Process.HAND_LAY_UP) {
            return 0.56 - 0.22 * r;
        }
        return simple ? 0.46 - 0.18 * r : 0.35 - 0.11 * r;
    }

    private static double content(Process process, boolean simple, Form form) {
        double[] row = switch (form) {
            case MAT -> new double[] {0.30, 0.25, 0.36};
            case WOVEN_ROVING, WOVEN_CLOTH -> new double[] {0.48, 0.36, 0.58};
            case STITCHED -> new double[] {0.50, 0.38, 0.60};
            case UNIDIRECTIONAL -> new double[] {0.55, 0.41, 0.66};
            case TISSUE ->
                throw new IllegalArgumentException(
                        "iso-nominal has no content for tissue; state its fibre-mass-fraction");
        };
        return row[process != Process.HAND_LAY_UP ? 2 : simple ? 0 : 1];
    }

    private static boolean isMat(FibrePly ply) {
        return ply.form().architecture() == Form.Architecture.RANDOM;
    }

    private static void checkGlass(FibrePly ply) {
        if (ply.fibre().type() != Fibre.Type.GLASS) {
            throw new IllegalArgumentException("iso-nominal gives contents for glass only, not for "
                    + ply.fibre().id() + "; state the layer's fibre-mass-fraction");
        }
    }
}
