package laminate.material;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A stock of materials to find by id. */
public interface Materials {

    /**
     * Finds a material.
     *
     * @param id the name in files
     * @return the material, empty if the stock has none of that id
     */
    Optional<Material> find(String id);

    /**
     * All ids of the stock.
     *
     * @return the ids in a fixed order
     */
    List<String> ids();

    /**
     * Tells which materials will be asked for, so that a stock which reads them from files may begin. Nothing else
     * depends on it.
     *
     * @param ids the ids, and maybe other words, which are passed over
     */
    default void expect(Collection<String> ids) {}

    /**
     * A stock of given materials.
     *
     * @param materials the materials; a later one replaces an earlier one of the same id
     * @return the stock
     */
    static Materials of(List<? extends Material> materials) {
        return new MaterialList(materials);
    }

    /**
     * This stock with another laid over it.
     *
     * @param over the stock whose materials win where both have an id
     * @return the joint stock
     */
    default Materials overlaidBy(Materials over) {
        Materials under = this;
        return new Materials() {
            @Override
            public Optional<Material> find(String id) {
                Optional<Material> found = over.find(id);
                return found.isPresent() ? found : under.find(id);
            }

            @Override
            public List<String> ids() {
                Set<String> all = new LinkedHashSet<>(under.ids());
                all.addAll(over.ids());
                return List.copyOf(all);
            }
        };
    }
}
