package laminate.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Materials;
import laminate.material.Reinforcement;
import laminate.material.Resin;

/**
 * The materials that a file may name, and the readings that find one by its id. A material is asked for only where it is
 * named, so that a library need not load the others.
 */
final class Stock {

    private final Materials materials;
    private final SortedSet<String> unreadable;
    private final boolean complete;
    private Set<String> ids = Set.of();

    /**
     * Makes a stock.
     *
     * @param unreadable ids of materials that have been complained of: naming one of them is no further slip
     * @param complete whether all material files could be read: if not, naming an unknown material is no further slip
     */
    Stock(Materials materials, Set<String> unreadable, boolean complete) {
        this.materials = materials;
        this.complete = complete;
        this.unreadable = new TreeSet<>(unreadable);
    }

    static Stock of(Materials materials) {
        return new Stock(materials, Set.of(), true);
    }

    Materials materials() {
        return materials;
    }

    Reading<Reinforcement> reinforcement() {
        return of(Reinforcement.class, any -> true, "a reinforcement");
    }

    Reading<Core> core() {
        return of(Core.class, any -> true, "a core");
    }

    Reading<Bulker> bulker() {
        return of(Bulker.class, any -> true, "a bulking mat");
    }

    Reading<Fibre> fibre() {
        return of(Fibre.class, any -> true, "a fibre");
    }

    Reading<Resin> laminatingResin() {
        return of(Resin.class, resin -> resin.use().isLaminating(), "a laminating or infusion resin");
    }

    Reading<Resin> resin(Resin.Use use) {
        return of(Resin.class, resin -> resin.use() == use, MaterialWords.aResin(use));
    }

    /** A catalyst or a hardener. */
    Reading<Agent> agent(MaterialKind kind) {
        return of(Agent.class, agent -> agent.kind() == kind, "a " + kind.word());
    }

    /** What cures a resin, of either kind. */
    Reading<Agent> anyAgent() {
        return of(Agent.class, any -> true, "a catalyst or hardener");
    }

    /** The id of a material of any kind, which is not loaded for it. */
    Reading<String> anyId() {
        return (node, complaints) -> Scalars.id(text -> hint(text, any -> true))
                .read(node, complaints)
                .flatMap(id -> {
                    if (isKnown(id)) {
                        return Optional.of(id);
                    }
                    complaints.at(node, unknown(id, "a material", any -> true));
                    return Optional.empty();
                });
    }

    /** The agent of an id, wherever it is not the user who names it. */
    Optional<Agent> findAgent(String id) {
        return materials.find(id).filter(Agent.class::isInstance).map(Agent.class::cast);
    }

    boolean isUnreadable(String id) {
        return unreadable.contains(id);
    }

    private <M extends Material> Reading<M> of(Class<M> type, Predicate<M> fits, String wanted) {
        Predicate<Material> right = found -> type.isInstance(found) && fits.test(type.cast(found));
        return (node, complaints) -> Scalars.id(text -> hint(text, right))
                .read(node, complaints)
                .flatMap(id -> {
                    Optional<Material> found = materials.find(id);
                    if (isUnreadable(id) || found.isEmpty() && !complete) {
                        return Optional.empty();
                    }
                    if (found.filter(right).isEmpty()) {
                        complaints.at(
                                node,
                                found.map(other -> MaterialWords.wrongKind(other, wanted))
                                        .orElseGet(() -> unknown(id, wanted, right)));
                    }
                    return found.filter(right).map(type::cast);
                });
    }

    private boolean isKnown(String id) {
        if (ids.isEmpty()) {
            ids = new HashSet<>(materials.ids());
        }
        return ids.contains(id) || isUnreadable(id) || !complete;
    }

    private String unknown(String id, String wanted, Predicate<Material> right) {
        return Complaints.shown(id) + " is not known; " + hint(id, right) + wanted
                + " of the library or of a material file is wanted";
    }

    private String hint(String text, Predicate<Material> right) {
        List<String> all = new ArrayList<>(materials.ids());
        all.addAll(unreadable);
        return new IdHints(all, id -> isRight(id, right)).of(text);
    }

    private boolean isRight(String id, Predicate<Material> right) {
        return isUnreadable(id) || materials.find(id).filter(right).isPresent();
    }
}
