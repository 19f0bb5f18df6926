package laminate.file;

import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Consumable;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Material;
import laminate.material.Reinforcement;
import laminate.material.Resin;

/** Says what a material is and where it belongs, to a user who has put it in the wrong place. */
final class MaterialWords {

    private MaterialWords() {}

    /** The message where another kind is wanted. */
    static String wrongKind(Material found, String wanted) {
        return found.id() + " is " + aMaterial(found) + ", and " + wanted + " is wanted here; " + howToWrite(found);
    }

    static String aMaterial(Material material) {
        return material instanceof Resin resin
                ? aResin(resin.use())
                : "a " + material.kind().word();
    }

    static String aResin(Resin.Use use) {
        return switch (use) {
            case LAMINATING -> "a laminating resin";
            case INFUSION -> "an infusion resin";
            case BARRIER -> "a barrier coat";
            case GELCOAT, FLOWCOAT, BONDING_PASTE, PAINT -> "a " + use.word();
        };
    }

    private static String howToWrite(Material material) {
        String id = material.id();
        if (material instanceof Resin resin) {
            return howToWrite(resin);
        } else if (material instanceof Reinforcement) {
            return "as a layer it is written " + id + " alone, or {reinforcement: " + id + ", angle: 45}";
        } else if (material instanceof Core) {
            return "it is written {core: " + id + ", thickness: 10 mm}";
        } else if (material instanceof Bulker) {
            return "it is written {bulker: " + id + "}";
        } else if (material instanceof Agent) {
            return "it is written " + material.kind().word() + ": " + id;
        } else if (material instanceof Fibre) {
            return "name a reinforcement that is made of it";
        } else if (material instanceof Consumable) {
            return "it belongs under consumables in the workshop file";
        }
        throw new IllegalStateException("a kind of material without words: " + material);
    }

    private static String howToWrite(Resin resin) {
        return switch (resin.use()) {
            case LAMINATING, INFUSION -> "it is written resin: " + resin.id();
            case GELCOAT, BARRIER, FLOWCOAT, PAINT ->
                "under coatings it is written {" + resin.use().word() + ": " + resin.id() + ", wet-film: 0.5 mm}";
            case BONDING_PASTE -> "with a core it is written bed: " + resin.id() + ", bed-thickness: 1 mm";
        };
    }
}
