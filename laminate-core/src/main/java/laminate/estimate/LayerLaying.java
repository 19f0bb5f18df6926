package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.material.Core;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.ContentBand;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.FibreBed;
import laminate.process.FibreContent;
import laminate.process.Range;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import laminate.theory.Ply;

/** From a planned layer to the layer as it lies: thickness, fibre, resin and plies. */
final class LayerLaying {
    private final ContentSet contents;
    private final Workshop workshop;

    LayerLaying(ContentSet contents, Workshop workshop) {
        this.contents = contents;
        this.workshop = workshop;
    }

    LaidLayer lay(Layer layer) {
        if (layer instanceof ReinforcementLayer reinforcement) {
            return layReinforcement(reinforcement);
        }
        if (layer instanceof CoreLayer core) {
            return layCore(core);
        }
        if (layer instanceof BulkerLayer bulker) {
            return layBulker(bulker);
        }
        return layLamina((LaminaLayer) layer);
    }

    /**
     * Each ply takes resin by its own content; a content stated for the whole layer fixes their sum and leaves their
     * shares, so that the masses balance. Then t = Σ (V_F + V_R)/(1 − V_v).
     */
    private LaidLayer layReinforcement(ReinforcementLayer layer) {
        Resin resin = layer.layUp().resin();
        double voids = contents.isStandard()
                ? 0
                : workshop.voids(layer.layUp().process()).value();
        List<FibrePly> fibrePlies = layer.plies();
        List<Range> resinVolumes = resinVolumes(layer, fibrePlies, voids);
        List<Ply> plies = new ArrayList<>();
        double fibreMass = 0;
        double fibreVolume = 0;
        Range resinVolume = Range.ZERO;
        for (int i = 0; i < fibrePlies.size(); i++) {
            FibrePly fibrePly = fibrePlies.get(i);
            double volume = volume(fibrePly);
            double thickness = (volume + resinVolumes.get(i).planned()) / (1 - voids);
            checkPacking(layer, fibrePly.form(), volume / (volume + resinVolumes.get(i).planned()));
            plies.add(new Ply(
                    lamina(layer, fibrePly, volume / thickness, voids), thickness, fibrePly.angle()));
            fibreMass += fibrePly.arealMass();
            fibreVolume += volume;
            resinVolume = resinVolume.plus(resinVolumes.get(i));
        }
        return new LaidLayer(
                layer,
                thickness(Range.exactly(fibreVolume).plus(resinVolume), voids),
                fibreMass,
                fibreVolume,
                0,
                resinVolume.times(resin.densityCured()),
                0,
                0,
                voids,
                HybridCloth.joined(layer.reinforcement(), plies));
    }

    /** Voids stray too: the thinnest layer has none, the thickest twice those planned. */
    private static Range thickness(Range solid, double voids) {
        return new Range(
                solid.planned() / (1 - voids), solid.least(), solid.most() / (1 - 2 * voids));
    }

    private List<Range> resinVolumes(ReinforcementLayer layer, List<FibrePly> plies, double voids) {
        double density = layer.layUp().resin().densityCured();
        List<ContentBand> bands =
                contents.bands(layer.layUp().process(), plies, layer.layUp().resin().family());
        List<Range> volumes = new ArrayList<>();
        for (int i = 0; i < plies.size(); i++) {
            FibrePly ply = plies.get(i);
            Range usual = bands.get(i).resinVolume(ply.arealMass(), volume(ply), density, voids);
            volumes.add(contents == ContentSet.TRADE ? ofWorkshop(layer, ply, usual, density, voids) : usual);
        }
        return layer.content()
                .map(content -> sharedOut(content, layer, plies, volumes, voids))
                .orElse(volumes);
    }

    /** A content of the workshop's own moves the plan; its scatter stays that of the trade, in proportion. */
    private Range ofWorkshop(ReinforcementLayer layer, FibrePly ply, Range usual, double density, double voids) {
        return workshop.contentFor(layer.layUp(), ply)
                .map(own -> usual.times(
                        own.resinVolume(ply.arealMass(), volume(ply), density, voids) / usual.planned()))
                .orElse(usual);
    }

    private static List<Range> sharedOut(
            FibreContent content, ReinforcementLayer layer, List<FibrePly> plies, List<Range> usual, double voids) {
        double fibreVolume = plies.stream().mapToDouble(LayerLaying::volume).sum();
        double total = content.resinVolume(
                layer.reinforcement().arealMass(),
                fibreVolume,
                layer.layUp().resin().densityCured(),
                voids);
        double factor = total / usual.stream().mapToDouble(Range::planned).sum();
        return usual.stream().map(range -> range.times(factor)).toList();
    }

    private Lamina lamina(ReinforcementLayer layer, FibrePly ply, double vf, double voids) {
        return layer.reinforcement()
                .measured()
                .map(PlyStiffness::asMeasured)
                .orElseGet(() -> PlyStiffness.byMicromechanics(
                        ply, layer.layUp().resin(), vf, voids, workshop.stiffness()));
    }

    private static void checkPacking(ReinforcementLayer layer, Form form, double vf) {
        double greatest = FibreBed.greatestVolumeFraction(form);
        if (vf > greatest * (1 + 1e-9)) {
            throw new IllegalArgumentException(String.format(
                    java.util.Locale.ROOT,
                    "%s: its %s plies would be %.0f %% fibre by volume; such a bed holds at most %.0f %%",
                    layer.material(),
                    form.word(),
                    vf * 100,
                    greatest * 100));
        }
    }

    private LaidLayer layCore(CoreLayer layer) {
        Core core = layer.core();
        Resin resin = layer.layUp().resin();
        double faces = CoreFinish.faceUptake(core, layer.layUp().process())
                * (layer.bed().isPresent() ? 1 : 2);
        double uptake = faces + layer.finish().openingUptake(layer.thickness(), resin.densityCured());
        double bed = layer.bed().map(Bed::thickness).orElse(0.0);
        double bedMass = layer.bed()
                .map(paste -> paste.thickness() * paste.paste().densityCured())
                .orElse(0.0);
        List<Ply> plies = new ArrayList<>();
        layer.bed().ifPresent(paste -> plies.add(new Ply(isotropic(paste.paste()), paste.thickness(), 0)));
        plies.add(new Ply(lamina(core), layer.thickness(), layer.angle()));
        return new LaidLayer(
                layer,
                Range.exactly(layer.thickness() + bed),
                0,
                0,
                core.density() * layer.thickness(),
                Range.exactly(uptake),
                bedMass,
                0,
                0,
                plies);
    }

    private static LaidLayer layBulker(BulkerLayer layer) {
        double e = layer.bulker().figures().value(Property.E);
        double nu = layer.bulker().figures().value(Property.NU);
        double alpha = layer.bulker().figures().value(Property.ALPHA);
        Lamina lamina = Lamina.isotropic(e, nu).withExpansion(alpha, alpha);
        double thickness = layer.bulker().thickness();
        return new LaidLayer(
                layer,
                Range.exactly(thickness),
                0,
                0,
                layer.bulker().arealMass(),
                Range.exactly(layer.bulker().resinUptake()),
                0,
                0,
                0,
                List.of(new Ply(lamina, thickness, 0)));
    }

    private static LaidLayer layLamina(LaminaLayer layer) {
        return new LaidLayer(
                layer,
                Range.exactly(layer.thickness()),
                0,
                0,
                0,
                Range.ZERO,
                0,
                layer.density() * layer.thickness(),
                0,
                List.of(new Ply(layer.lamina(), layer.thickness(), layer.angle())));
    }

    private static Lamina lamina(Core core) {
        double alpha = core.figures().value(Property.ALPHA);
        return Lamina.of(
                        core.figures().value(Property.E1),
                        core.figures().value(Property.E2),
                        core.figures().value(Property.G12),
                        core.figures().value(Property.NU12))
                .withTransverseShear(
                        core.figures().value(Property.G13), core.figures().value(Property.G23))
                .withExpansion(alpha, alpha);
    }

    private static Lamina isotropic(Resin paste) {
        double alpha = paste.figures().value(Property.ALPHA);
        return Lamina.isotropic(paste.figures().value(Property.E), paste.figures().value(Property.NU))
                .withExpansion(alpha, alpha);
    }

    private static double volume(FibrePly ply) {
        return ply.arealMass() / ply.fibre().density();
    }
}
