package laminate.print.materials;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import laminate.material.Consumable;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Material;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.print.Measures;
import laminate.unit.Unit;

/** What a material is besides its figures, in the words of a material file. */
final class MaterialWords {
    private MaterialWords() {}

    /** Key and word of everything but name and figures, the kind first. */
    static Map<String, String> of(Material material) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("kind", material.kind().word());
        if (material instanceof Fibre fibre) {
            words.put("type", fibre.type().word());
        } else if (material instanceof Resin resin) {
            words.put("family", resin.family().word());
            words.put("use", resin.use().word());
            words.put("waxed", resin.waxed() ? "yes" : "no");
        } else if (material instanceof Reinforcement reinforcement) {
            addReinforcement(words, reinforcement);
        } else if (material instanceof Core core) {
            words.put("type", core.type().word());
            words.put("open-cell", core.openCell() ? "yes" : "no");
        } else if (material instanceof Consumable consumable) {
            words.put("sold-by", consumable.soldBy().symbol());
        }
        return words;
    }

    private static void addReinforcement(Map<String, String> words, Reinforcement reinforcement) {
        words.put("form", reinforcement.form().word());
        reinforcement.binder().ifPresent(binder -> words.put("binder", binder.word()));
        List<FibrePly> plies = reinforcement.plies();
        if (plies.size() == 1) {
            words.put("fibre", plies.get(0).fibre().id());
        } else {
            words.put(
                    "plies",
                    plies.stream()
                            .map(MaterialWords::ply)
                            .reduce((one, other) -> one + "; " + other)
                            .orElseThrow());
        }
    }

    private static String ply(FibrePly ply) {
        return ply.fibre().id() + " " + ply.form().word() + " "
                + Measures.text(ply.arealMass(), Unit.GRAM_PER_SQUARE_METRE) + " at " + Measures.count(ply.angle())
                + Unit.DEGREE.symbol();
    }
}
