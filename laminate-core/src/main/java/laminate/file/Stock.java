package laminate.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
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
    private final Reading<String> anyId = new AnyId();
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
        return new OfKind<>(Reinforcement.class, "a reinforcement");
    }

    Reading<Core> core() {
        return new OfKind<>(Core.class, "a core");
    }

    Reading<Bulker> bulker() {
        return new OfKind<>(Bulker.class, "a bulking mat");
    }

    Reading<Fibre> fibre() {
        return new OfKind<>(Fibre.class, "a fibre");
    }

    Reading<Resin> laminatingResin() {
        return new OfKind<>(Resin.class, "a laminating or infusion resin") {
            @Override
            boolean fits(Resin resin) {
                return resin.use().isLaminating();
            }
        };
    }

    Reading<Resin> resin(Resin.Use use) {
        return new OfKind<>(Resin.class, MaterialWords.aResin(use)) {
            @Override
            boolean fits(Resin resin) {
                return resin.use() == use;
            }
        };
    }

    /** A catalyst or a hardener. */
    Reading<Agent> agent(MaterialKind kind) {
        return new OfKind<>(Agent.class, "a " + kind.word()) {
            @Override
            boolean fits(Agent agent) {
                return agent.kind() == kind;
            }
        };
    }

    /** What cures a resin, of either kind. */
    Reading<Agent> anyAgent() {
        return new OfKind<>(Agent.class, "a catalyst or hardener");
    }

    /** The id of a material of any kind, which is not loaded for it. */
    Reading<String> anyId() {
        return anyId;
    }

    /** The agent of an id, wherever it is not the user who names it. */
    Optional<Agent> findAgent(String id) {
        Optional<Material> found = materials.find(id);
        return found.isPresent() && found.get() instanceof Agent agent ? Optional.of(agent) : Optional.empty();
    }

    boolean isUnreadable(String id) {
        return unreadable.contains(id);
    }

    private boolean isKnown(String id) {
        if (ids.isEmpty()) {
            ids = new HashSet<>(materials.ids());
        }
        return ids.contains(id) || isUnreadable(id) || !complete;
    }

    /** Reads the id of a material. */
    private abstract class Named<T> implements Reading<T> {

        private final String wanted;
        private final Reading<String> id = new IdReading() {
            @Override
            String hint(String text) {
                return Named.this.hint(text);
            }
        };

        Named(String wanted) {
            this.wanted = wanted;
        }

        @Override
        public final Optional<T> read(Node node, Complaints complaints) {
            Optional<String> named = id.read(node, complaints);
            return named.isEmpty() ? Optional.empty() : find(named.get(), node, complaints);
        }

        /** What the id names, or empty if that has been complained of here or before. */
        abstract Optional<T> find(String id, Node node, Complaints complaints);

        /** Whether the material of an id is one that is wanted. */
        abstract boolean isRight(String id);

        final String unknown(String id) {
            return Complaints.shown(id) + " is not known; " + hint(id) + wanted
                    + " of the library or of a material file is wanted";
        }

        private String hint(String text) {
            List<String> all = new ArrayList<>(materials.ids());
            all.addAll(unreadable);
            return new IdHints(all, this::isRight).of(text);
        }
    }

    private final class AnyId extends Named<String> {

        AnyId() {
            super("a material");
        }

        @Override
        Optional<String> find(String id, Node node, Complaints complaints) {
            if (isKnown(id)) {
                return Optional.of(id);
            }
            complaints.at(node, unknown(id));
            return Optional.empty();
        }

        @Override
        boolean isRight(String id) {
            return isUnreadable(id) || materials.find(id).isPresent();
        }
    }

    /** Finds a material of one kind. */
    private class OfKind<M extends Material> extends Named<M> {

        private final Class<M> kind;
        private final String wanted;

        OfKind(Class<M> kind, String wanted) {
            super(wanted);
            this.kind = kind;
            this.wanted = wanted;
        }

        /** Whether it serves here. */
        boolean fits(M material) {
            return true;
        }

        @Override
        final Optional<M> find(String id, Node node, Complaints complaints) {
            Optional<Material> found = materials.find(id);
            if (isUnreadable(id) || found.isEmpty() && !complete) {
                return Optional.empty();
            }
            Optional<M> right = fitting(found);
            if (right.isEmpty()) {
                complaints.at(node, found.isPresent() ? MaterialWords.wrongKind(found.get(), wanted) : unknown(id));
            }
            return right;
        }

        @Override
        final boolean isRight(String id) {
            return isUnreadable(id) || fitting(materials.find(id)).isPresent();
        }

        private Optional<M> fitting(Optional<Material> found) {
            return found.isPresent() && kind.isInstance(found.get()) && fits(kind.cast(found.get()))
                    ? Optional.of(kind.cast(found.get()))
                    : Optional.empty();
        }
    }
}
