package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.material.FibrePly;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Resin;
import laminate.part.ReinforcementLayer;
import laminate.process.ContentBand;
import laminate.process.ContentSet;
import laminate.process.FibreBed;
import laminate.process.FibreContent;
import laminate.process.Range;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import laminate.theory.Ply;

/**
 * Lays one layer of reinforcement: how much resin each of its plies takes, how thick and how stiff that makes it.
 *
 * <p>Each ply takes resin by its own content; a content stated for the whole layer fixes their sum and leaves the shares of
 * the trade, so that the masses balance. With V<sub>F</sub> and V<sub>R</sub> the volumes of fibre and resin per area and
 * V<sub>v</sub> the share of voids, t = Σ (V<sub>F</sub> + V<sub>R</sub>)/(1 − V<sub>v</sub>).
 */
final class FibreLaying {
    private final ReinforcementLayer layer;
    private final Resin resin;
    private final ContentSet contents;
    private final Workshop workshop;
    private final double voids;

    private FibreLaying(ReinforcementLayer layer, ContentSet contents, Workshop workshop) {
        this.layer = layer;
        this.resin = layer.layUp().resin();
        // A stated content replaces that of a standard, which may have none for this fibre or form.
        this.contents = layer.content().isPresent() ? ContentSet.TRADE : contents;
        this.workshop = workshop;
        this.voids = contents.isStandard()
                ? 0
                : workshop.voids(layer.layUp().process()).value();
    }

    static LaidLayer lay(ReinforcementLayer layer, ContentSet contents, Workshop workshop) {
        return new FibreLaying(layer, contents, workshop).lay();
    }

    /** A ply with the resin it takes (m³/m²). */
    private record WettedPly(FibrePly fibre, Range resinVolume) {
        double fibreVolume() {
            return volume(fibre);
        }

        double solidVolume() {
            return fibreVolume() + resinVolume.planned();
        }
    }

    private LaidLayer lay() {
        List<WettedPly> wetted = wetted();
        List<LaidPly> plies = plies(wetted);
        double fibreVolume = 0;
        Range resinVolume = Range.ZERO;
        for (WettedPly ply : wetted) {
            fibreVolume += ply.fibreVolume();
            resinVolume = resinVolume.plus(ply.resinVolume());
        }
        return new LaidLayer(
                layer,
                thickness(Range.exactly(fibreVolume).plus(resinVolume)),
                layer.reinforcement().arealMass(),
                fibreVolume,
                0,
                resinVolume.times(resin.densityCured()),
                0,
                0,
                voids,
                LaidPly.plies(plies),
                LaidPly.strengths(plies));
    }

    /** Voids stray too: the thinnest layer has none, the thickest twice those planned. */
    private Range thickness(Range solid) {
        return new Range(solid.planned() / (1 - voids), solid.least(), solid.most() / (1 - 2 * voids));
    }

    private List<WettedPly> wetted() {
        List<FibrePly> plies = layer.plies();
        List<ContentBand> bands = contents.bands(layer.layUp().process(), plies, resin.family());
        List<WettedPly> wetted = new ArrayList<>();
        for (int i = 0; i < plies.size(); i++) {
            wetted.add(new WettedPly(plies.get(i), usualResin(plies.get(i), bands.get(i))));
        }
        return layer.content().isPresent() ? sharedOut(layer.content().get(), wetted) : wetted;
    }

    /** A content of the workshop's own moves the plan; its scatter stays that of the trade, in proportion. */
    private Range usualResin(FibrePly ply, ContentBand band) {
        Range usual = band.resinVolume(ply.arealMass(), volume(ply), resin.densityCured(), voids);
        Optional<FibreContent> own = contents.isStandard() ? Optional.empty() : workshop.contentFor(layer.layUp(), ply);
        if (own.isEmpty()) {
            return usual;
        }
        double planned = own.get().resinVolume(ply.arealMass(), volume(ply), resin.densityCured(), voids);
        return usual.times(planned / usual.planned());
    }

    private List<WettedPly> sharedOut(FibreContent content, List<WettedPly> usual) {
        double fibreVolume = 0;
        double usualResin = 0;
        for (WettedPly ply : usual) {
            fibreVolume += ply.fibreVolume();
            usualResin += ply.resinVolume().planned();
        }
        double total = content.resinVolume(layer.reinforcement().arealMass(), fibreVolume, resin.densityCured(), voids);
        List<WettedPly> shared = new ArrayList<>();
        for (WettedPly ply : usual) {
            shared.add(new WettedPly(ply.fibre(), ply.resinVolume().times(total / usualResin)));
        }
        return shared;
    }

    private List<LaidPly> plies(List<WettedPly> wetted) {
        List<LaidPly> plies = new ArrayList<>();
        for (WettedPly ply : wetted) {
            checkPacking(ply);
            double thickness = ply.solidVolume() / (1 - voids);
            Strengthened made = made(ply.fibre(), ply.fibreVolume() / thickness);
            plies.add(new LaidPly(new Ply(made.lamina(), thickness, ply.fibre().angle()), made.origin()));
        }
        return HybridCloth.joined(layer.reinforcement(), plies);
    }

    private Strengthened made(FibrePly ply, double vf) {
        Lamina lamina = lamina(ply, vf);
        Optional<Strengthened> measured = PlyStrengths.asMeasured(lamina, layer.reinforcement());
        if (measured.isPresent()) {
            return measured.get();
        }
        return switch (workshop.strength()) {
            case LIBRARY -> PlyStrengths.byMicromechanics(lamina, ply, resin, vf, voids);
            case ISO_12215_5 -> GlassContentRule.strengthen(lamina, ply, resin, vf, voids);
        };
    }

    private Lamina lamina(FibrePly ply, double vf) {
        Optional<Figures> measured = layer.reinforcement().measured();
        return measured.isPresent()
                ? PlyStiffness.asMeasured(measured.get())
                : PlyStiffness.byMicromechanics(ply, resin, vf, voids, workshop.stiffness());
    }

    /** Voids are left out: they would only make a bed that is too full look less so. */
    private void checkPacking(WettedPly ply) {
        Form form = ply.fibre().form();
        double vf = ply.fibreVolume() / ply.solidVolume();
        double greatest = FibreBed.greatestVolumeFraction(form);
        if (vf > greatest * (1 + 1e-9)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s: its %s plies would be %.0f %% fibre by volume; such a bed holds at most %.0f %%",
                    layer.material(),
                    form.word(),
                    vf * 100,
                    greatest * 100));
        }
    }

    private static double volume(FibrePly ply) {
        return ply.arealMass() / ply.fibre().density();
    }
}
