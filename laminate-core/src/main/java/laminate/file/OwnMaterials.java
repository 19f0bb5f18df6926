package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Materials;

/**
 * Reads material files together, so that a material may refer to another wherever that stands: what is referred to (fibres,
 * catalysts, hardeners) is read first. Of two materials of one id in different files the later wins.
 */
final class OwnMaterials {

    private static final Set<String> REFERRED_TO =
            Set.of(MaterialKind.FIBRE.word(), MaterialKind.CATALYST.word(), MaterialKind.HARDENER.word());

    private final Materials known;
    private final Complaints complaints;
    private final List<Node> nodes = new ArrayList<>();
    private boolean agentsAreChecked;
    private boolean complete = true;

    OwnMaterials(Materials known, Complaints complaints) {
        this.known = known;
        this.complaints = complaints;
    }

    /** Adds a user's file. */
    void add(Path file) {
        agentsAreChecked = true;
        YamlTree.read(file, Keys.MATERIALS, complaints).ifPresentOrElse(this::addAll, this::miss);
    }

    /** Notes that a file could not be had: what is unknown now may be known in it, and is passed over in silence. */
    void miss() {
        complete = false;
    }

    /** Adds a text of the library, where the agents of a resin are not loaded only to see that they are there. */
    void add(String name, String text) {
        YamlTree.read(name, text, Keys.MATERIALS, complaints).ifPresent(this::addAll);
    }

    private void addAll(Node root) {
        if (root instanceof Node.Mapping one && one.entries().containsKey("material")) {
            nodes.add(one);
            return;
        }
        // Materials are read later; here they are taken as they are.
        Reading<Node> asItIs = (node, any) -> Optional.of(node);
        Reading.mapping(Keys.MATERIALS, in -> in.required("materials", Reading.listOf(asItIs)))
                .read(root, complaints)
                .ifPresent(this::addOnceEach);
    }

    private void addOnceEach(List<Node> materials) {
        Map<String, Node> seen = new HashMap<>();
        for (Node material : materials) {
            Optional<Node.Scalar> id = scalar(material, "material");
            Optional<Node> earlier = id.map(found -> seen.putIfAbsent(found.text(), found));
            earlier.ifPresent(first -> complaints.at(
                    id.get(),
                    Complaints.shown(id.get().text()) + " is given twice, first in line "
                            + first.position().line() + "; a material may stand once in a file"));
        }
        nodes.addAll(materials);
    }

    /** The materials in the order of the files. */
    List<Material> settle() {
        Map<Node, Material> read = new IdentityHashMap<>();
        readAll(read);
        List<Material> inOrder = nodes.stream()
                .flatMap(node -> Optional.ofNullable(read.get(node)).stream())
                .toList();
        return complaints.settle(Optional.of(inOrder));
    }

    /** All that may be named in a part: what was known, and the materials of the files over it. */
    Stock stock() {
        return nodes.isEmpty() && complete ? Stock.of(known) : readAll(new IdentityHashMap<>());
    }

    private Stock readAll(Map<Node, Material> read) {
        Set<String> unreadable = new HashSet<>();
        Stock first = readSome(read, unreadable, Stock.of(known), true);
        return readSome(read, unreadable, first, false);
    }

    private Stock readSome(Map<Node, Material> read, Set<String> unreadable, Stock stock, boolean referredTo) {
        Reading<Material> material = new MaterialReader(stock, agentsAreChecked).material();
        for (Node node : nodes) {
            if (isReferredTo(node) == referredTo) {
                Optional<Material> found = material.read(node, complaints);
                found.ifPresent(sound -> read.put(node, sound));
                scalar(node, "material")
                        .filter(id -> found.isEmpty())
                        .ifPresent(id -> unreadable.add(id.text().strip()));
            }
        }
        List<Material> all = nodes.stream()
                .flatMap(node -> Optional.ofNullable(read.get(node)).stream())
                .toList();
        return new Stock(known.overlaidBy(Materials.of(all)), unreadable, complete);
    }

    private static boolean isReferredTo(Node node) {
        return scalar(node, "kind")
                .map(kind -> REFERRED_TO.contains(kind.text().strip()))
                .orElse(false);
    }

    private static Optional<Node.Scalar> scalar(Node node, String key) {
        return node instanceof Node.Mapping mapping
                        && mapping.entries().containsKey(key)
                        && mapping.entries().get(key).value() instanceof Node.Scalar scalar
                ? Optional.of(scalar)
                : Optional.empty();
    }
}
