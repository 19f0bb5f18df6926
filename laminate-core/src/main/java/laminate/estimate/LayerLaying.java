package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.material.Core;
import laminate.material.Figures;
import laminate.material.Property;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
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
            return FibreLaying.lay(reinforcement, contents, workshop);
        }
        if (layer instanceof CoreLayer core) {
            return layCore(core);
        }
        if (layer instanceof BulkerLayer bulker) {
            return layBulker(bulker);
        }
        return layLamina((LaminaLayer) layer);
    }

    private static LaidLayer layCore(CoreLayer layer) {
        List<LaidPly> plies = new ArrayList<>();
        double bedThickness = 0;
        double bedMass = 0;
        if (layer.bed().isPresent()) {
            Bed bed = layer.bed().get();
            plies.add(bedPly(bed));
            bedThickness = bed.thickness();
            bedMass = bed.thickness() * bed.paste().densityCured();
        }
        Strengthened core = UnreinforcedStrengths.core(lamina(layer.core()), layer.core());
        plies.add(new LaidPly(new Ply(core.lamina(), layer.thickness(), layer.angle()), core.origin()));
        return unreinforced(
                layer,
                layer.thickness() + bedThickness,
                layer.core().density() * layer.thickness(),
                uptake(layer),
                bedMass,
                plies);
    }

    private static LaidPly bedPly(Bed bed) {
        Strengthened paste = UnreinforcedStrengths.paste(isotropic(bed.paste().figures()), bed.paste());
        return new LaidPly(new Ply(paste.lamina(), bed.thickness(), 0), paste.origin());
    }

    /** A bed takes the place of the resin at the face towards the mould. */
    private static double uptake(CoreLayer layer) {
        int wetFaces = layer.bed().isPresent() ? 1 : 2;
        return wetFaces * CoreFinish.faceUptake(layer.core(), layer.layUp().process())
                + layer.finish()
                        .openingUptake(layer.thickness(), layer.layUp().resin().densityCured());
    }

    private static LaidLayer layBulker(BulkerLayer layer) {
        double thickness = layer.bulker().thickness();
        Strengthened mat = UnreinforcedStrengths.bulker(isotropic(layer.bulker().figures()), layer.bulker());
        List<LaidPly> plies = List.of(new LaidPly(new Ply(mat.lamina(), thickness, 0), mat.origin()));
        return unreinforced(
                layer, thickness, layer.bulker().arealMass(), layer.bulker().resinUptake(), 0, plies);
    }

    private static LaidLayer unreinforced(
            Layer layer, double thickness, double core, double resin, double bed, List<LaidPly> plies) {
        return new LaidLayer(
                layer,
                Range.exactly(thickness),
                0,
                0,
                core,
                Range.exactly(resin),
                bed,
                0,
                0,
                LaidPly.plies(plies),
                LaidPly.strengths(plies));
    }

    private static LaidLayer layLamina(LaminaLayer layer) {
        double mass = layer.density() * layer.thickness();
        List<Ply> plies = List.of(new Ply(layer.lamina(), layer.thickness(), layer.angle()));
        return new LaidLayer(
                layer,
                Range.exactly(layer.thickness()),
                0,
                0,
                0,
                Range.ZERO,
                0,
                mass,
                0,
                plies,
                List.of(UnreinforcedStrengths.given(layer.lamina())));
    }

    private static Lamina lamina(Core core) {
        Figures figures = core.figures();
        double alpha = figures.value(Property.ALPHA);
        return Lamina.of(
                        figures.value(Property.E1),
                        figures.value(Property.E2),
                        figures.value(Property.G12),
                        figures.value(Property.NU12))
                .withTransverseShear(figures.value(Property.G13), figures.value(Property.G23))
                .withExpansion(alpha, alpha);
    }

    private static Lamina isotropic(Figures figures) {
        double alpha = figures.value(Property.ALPHA);
        return Lamina.isotropic(figures.value(Property.E), figures.value(Property.NU))
                .withExpansion(alpha, alpha);
    }
}
