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
        Optional<Node> root = YamlTree.read(name, text, Keys.MATERIALS, complaints);
        if (root.isPresent()) {
            addAll(root.get());
        }
    }

    private void addAll(Node root) {
        if (root instanceof Node.Mapping one && one.entries().containsKey("material")) {
            nodes.add(one);
            return;
        }
        if (FileKind.isOther(Keys.MATERIALS, root, complaints)) {
            miss();
            return;
        }
        // Materials are read later; here they are taken as they are.
        Reading<Node> asItIs = (node, any) -> Optional.of(node);
        Reading.mapping(Keys.MATERIALS, in -> listed(in, asItIs))
                .read(root, complaints)
                .ifPresent(this::addOnceEach);
    }

    private static List<Node> listed(Fields in, Reading<Node> asItIs) {
        var materials = in.required("materials", Reading.listOf(asItIs));
        in.requireSound();
        return materials.get();
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
        return complaints.settle(Optional.of(inOrder(read)));
    }

    private List<Material> inOrder(Map<Node, Material> read) {
        List<Material> all = new ArrayList<>();
        for (Node node : nodes) {
            if (read.containsKey(node)) {
                all.add(read.get(node));
            }
        }
        return all;
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
                Optional<Node.Scalar> id = scalar(node, "material");
                if (found.isPresent()) {
                    read.put(node, found.get());
                } else if (id.isPresent()) {
                    unreadable.add(id.get().text().strip());
                }
            }
        }
        return new Stock(known.overlaidBy(Materials.of(inOrder(read))), unreadable, complete);
    }

    private static boolean isReferredTo(Node node) {
        Optional<Node.Scalar> kind = scalar(node, "kind");
        return kind.isPresent() && REFERRED_TO.contains(kind.get().text().strip());
    }

    private static Optional<Node.Scalar> scalar(Node node, String key) {
        return node instanceof Node.Mapping mapping
                        && mapping.entries().containsKey(key)
                        && mapping.entries().get(key).value() instanceof Node.Scalar scalar
                ? Optional.of(scalar)
                : Optional.empty();
    }
}
