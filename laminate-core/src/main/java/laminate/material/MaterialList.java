package laminate.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A stock held in memory. */
final class MaterialList implements Materials {
    private final Map<String, Material> byId = new LinkedHashMap<>();

    MaterialList(List<? extends Material> materials) {
        for (Material material : materials) {
            byId.put(material.id(), material);
        }
    }

    @Override
    public Optional<Material> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    @Override
    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }
}
