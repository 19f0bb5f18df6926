package laminate.process;

import static laminate.process.Process.HAND_LAY_UP;
import static laminate.process.Process.INFUSION;
import static laminate.process.Process.VACUUM_BAG;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.theory.Mixture;

/**
 * Fibre contents that the trade reaches, by process, form, fibre and resin.
 *
 * <p>Contents laid wet are kept as glass mass fractions, as the trade states them; infused ones as volume fractions,
 * since the vacuum presses the bed to a volume. A fibre without rows of its own takes the volume fraction of glass: a
 * bed packs by volume, whatever its fibre weighs.
 */
final class TradeContents {

    /** Densities at which the wet rows' mass fractions are turned into volume fractions (kg/m³): E-glass, polyester. */
    static final double GLASS_DENSITY = 2560;

    static final double RESIN_DENSITY = 1200;

    private static final String RULE = "class-rule and ISO 12215-5 nominal glass content";
    private static final String WET = "hand-laid glass contents met in the trade";
    private static final String BUILDERS = "three builders' log books of one 6 x 300 g/m² epoxy plate, 52 to 68 %";
    private static final String SHARE_RESIN = "resin at 40 to 50 % of mass under a bag, trade technical pages";
    private static final String PRESSED =
            "volume fractions of vacuum-pressed glass; Sussmann et al., Polymers 10 (2018) 992,"
                    + " and debulked woven beds bracket them";
    private static final String CARBON = "carbon contents met in the trade";
    private static final String FLAX = "flax contents met in the trade";
    private static final String TISSUE = "tissue takes up about ten times its mass of resin";

    private static final Set<Form> ORIENTED = EnumSet.complementOf(EnumSet.of(Form.MAT, Form.TISSUE));

    private static final List<Row> ROWS = List.of(
            glass(
                    HAND_LAY_UP,
                    Form.MAT,
                    .27,
                    .30,
                    .33,
                    RULE + "; mat 2.5:1 in Practical Action, Fibreglass boat building"),
            glass(HAND_LAY_UP, Form.TISSUE, .07, .09, .12, TISSUE),
            glass(HAND_LAY_UP, Form.WOVEN_ROVING, .44, .48, .52, RULE),
            epoxy(HAND_LAY_UP, Form.WOVEN_CLOTH, .52, .60, .68, BUILDERS),
            glass(HAND_LAY_UP, Form.WOVEN_CLOTH, .46, .50, .54, WET),
            glass(HAND_LAY_UP, Form.STITCHED, .45, .50, .54, WET),
            glass(HAND_LAY_UP, Form.UNIDIRECTIONAL, .50, .55, .60, RULE),
            glass(VACUUM_BAG, Form.MAT, .33, .36, .40, RULE + "; " + SHARE_RESIN),
            glass(VACUUM_BAG, Form.TISSUE, .10, .13, .16, TISSUE),
            glass(VACUUM_BAG, Form.WOVEN_ROVING, .55, .58, .61, RULE),
            glass(VACUUM_BAG, Form.WOVEN_CLOTH, .57, .62, .66, SHARE_RESIN),
            glass(VACUUM_BAG, Form.STITCHED, .57, .60, .63, RULE),
            glass(VACUUM_BAG, Form.UNIDIRECTIONAL, .62, .66, .69, RULE),
            pressed(Form.MAT, .21, .25, .29),
            pressed(Form.TISSUE, .06, .08, .10),
            pressed(Form.WOVEN_ROVING, .475, .50, .525),
            pressed(Form.WOVEN_CLOTH, .475, .50, .525),
            pressed(Form.STITCHED, .50, .53, .555),
            pressed(Form.UNIDIRECTIONAL, .525, .55, .58),
            carbon(HAND_LAY_UP, .40, .45, .50),
            carbon(VACUUM_BAG, .50, .55, .60),
            carbon(INFUSION, .58, .62, .66),
            flax(HAND_LAY_UP, .20, .24, .28),
            flax(VACUUM_BAG, .27, .31, .35),
            flax(INFUSION, .32, .36, .40));

    private TradeContents() {}

    /**
     * The content of a ply.
     *
     * @return the band; every process and form has one
     */
    static List<ContentBand> bands(Process process, List<FibrePly> plies, Resin.Family family) {
        List<ContentBand> bands = new ArrayList<>();
        for (FibrePly ply : plies) {
            bands.add(band(process, ply.form(), ply.fibre().type(), family));
        }
        return bands;
    }

    static ContentBand band(Process process, Form form, Fibre.Type fibre, Resin.Family family) {
        Optional<ContentBand> own = find(process, form, fibre, family);
        return own.isPresent()
                ? own.get()
                : inVolume(find(process, form, Fibre.Type.GLASS, family).orElseThrow());
    }

    private static Optional<ContentBand> find(Process process, Form form, Fibre.Type fibre, Resin.Family family) {
        for (Row row : ROWS) {
            if (row.matches(process, form, fibre, family)) {
                return Optional.of(row.band());
            }
        }
        return Optional.empty();
    }

    private static ContentBand inVolume(ContentBand glass) {
        return new ContentBand(
                inVolume(glass.nominal()),
                inVolume(glass.rich()),
                inVolume(glass.lean()),
                glass.source() + "; the same volume fraction as glass",
                Status.MEMORY);
    }

    private static FibreContent inVolume(FibreContent glass) {
        return glass.basis() == FibreContent.Basis.VOLUME_FRACTION
                ? glass
                : FibreContent.ofVolumeFraction(
                        Mixture.fibreVolumeFraction(glass.value(), GLASS_DENSITY, RESIN_DENSITY, 0));
    }

    private static Row glass(Process process, Form form, double rich, double nominal, double lean, String source) {
        ContentBand band = ofMass(rich, nominal, lean, source, Status.MEMORY);
        return new Row(process, Set.of(form), Fibre.Type.GLASS, EnumSet.allOf(Resin.Family.class), band);
    }

    private static Row epoxy(Process process, Form form, double rich, double nominal, double lean, String source) {
        ContentBand band = ofMass(rich, nominal, lean, source, Status.PRINTED);
        return new Row(process, Set.of(form), Fibre.Type.GLASS, EnumSet.of(Resin.Family.EPOXY), band);
    }

    private static Row pressed(Form form, double rich, double nominal, double lean) {
        ContentBand band = ofVolume(rich, nominal, lean, PRESSED);
        return new Row(INFUSION, Set.of(form), Fibre.Type.GLASS, EnumSet.allOf(Resin.Family.class), band);
    }

    private static Row carbon(Process process, double rich, double nominal, double lean) {
        ContentBand band = ofMass(rich, nominal, lean, CARBON, Status.MEMORY);
        return new Row(process, ORIENTED, Fibre.Type.CARBON, EnumSet.allOf(Resin.Family.class), band);
    }

    private static Row flax(Process process, double rich, double nominal, double lean) {
        ContentBand band = ofVolume(rich, nominal, lean, FLAX);
        return new Row(process, ORIENTED, Fibre.Type.NATURAL, EnumSet.allOf(Resin.Family.class), band);
    }

    private static ContentBand ofMass(double rich, double nominal, double lean, String source, Status status) {
        return new ContentBand(
                FibreContent.ofMassFraction(nominal),
                FibreContent.ofMassFraction(rich),
                FibreContent.ofMassFraction(lean),
                source,
                status);
    }

    private static ContentBand ofVolume(double rich, double nominal, double lean, String source) {
        return new ContentBand(
                FibreContent.ofVolumeFraction(nominal),
                FibreContent.ofVolumeFraction(rich),
                FibreContent.ofVolumeFraction(lean),
                source,
                Status.MEMORY);
    }

    private record Row(
            Process process, Set<Form> forms, Fibre.Type fibre, Set<Resin.Family> families, ContentBand band) {
        boolean matches(Process aProcess, Form form, Fibre.Type aFibre, Resin.Family family) {
            return process == aProcess && forms.contains(form) && fibre == aFibre && families.contains(family);
        }
    }
}
