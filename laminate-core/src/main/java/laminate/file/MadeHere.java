package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PriceList;

/**
 * The chain of parts that are made on each other, from the moulding to its mould to the plug, and the yard that makes them
 * all. A mould that is made elsewhere has a price; one that is made here is reckoned here.
 *
 * @param chain the part files, the moulding first, the one that is read last
 * @param workshop the workshop of the yard that makes what is made on this one
 * @param prices its prices
 * @param inProject whether the parts are those of a project
 */
record MadeHere(List<Path> chain, OfYard<WorkshopFile> workshop, OfYard<PriceList> prices, boolean inProject) {

    private static final String THAN_MADE_ON_IT =
            " than that of what is made on this; take it out, or state the price of"
                    + " the mould in place of its part file";
    private static final String THAN_IN_PROJECT =
            " than that of the project's first moulding; one yard makes a project: name one for all in the project file";

    static MadeHere first(Path file) {
        return new MadeHere(List.of(file), OfYard.open(), OfYard.open(), false);
    }

    /** What a project makes, before any of its part files is read. */
    static MadeHere inProject(OfYard<WorkshopFile> workshop, OfYard<PriceList> prices) {
        return new MadeHere(List.of(), workshop, prices, true);
    }

    MadeHere in(Yard own) {
        return own.sound()
                ? new MadeHere(
                        chain,
                        workshop.orOfPart(Optional.of(own.workshop()), own.workshopFile()),
                        prices.orOfPart(own.prices(), own.priceFile()),
                        inProject)
                : this;
    }

    /** Whether the yard is not known yet. */
    boolean isOpen() {
        return workshop.isOpen() || prices.isOpen();
    }

    /** These parts in the yard of others. */
    MadeHere asIn(MadeHere others) {
        return new MadeHere(chain, others.workshop(), others.prices(), inProject);
    }

    MadeHere on(Path mould) {
        List<Path> longer = new ArrayList<>(chain);
        longer.add(mould);
        return new MadeHere(longer, workshop, prices, inProject);
    }

    /** The workshop of the part that is read: its own, which has to be the yard's. */
    WorkshopFile workshop(Fields in, Optional<WorkshopFile> stated) {
        if (stated.isEmpty()) {
            return workshop.value().orElse(WorkshopFile.USUAL);
        }
        if (workshop.differsFrom(stated.get())) {
            in.complain("workshop", "this is another workshop" + elsewhere());
        }
        return stated.get();
    }

    /** The prices of the part that is read: its own, which have to be the yard's. */
    Optional<PriceList> prices(Fields in, Optional<PriceList> stated) {
        if (stated.isEmpty()) {
            return prices.value();
        }
        if (prices.differsFrom(stated.get())) {
            in.complain("prices", "this is another price list" + elsewhere());
        }
        return stated;
    }

    private String elsewhere() {
        return inProject ? THAN_IN_PROJECT : THAN_MADE_ON_IT;
    }

    /** Whether a mould is one of those that are made on it, which is complained of. */
    boolean isMadeOnItself(Path mould, Node node, Complaints complaints) {
        for (int i = 0; i < chain.size(); i++) {
            if (OfYard.isSame(chain.get(i), mould)) {
                complaints.at(
                        node,
                        Complaints.shown(mould.getFileName().toString()) + " would be made on itself"
                                + byWay(chain.subList(i + 1, chain.size()))
                                + "; the part file of another mould or plug is wanted");
                return true;
            }
        }
        return false;
    }

    private static String byWay(List<Path> between) {
        List<String> names = new ArrayList<>();
        for (Path path : between) {
            names.add(path.getFileName().toString());
        }
        return names.isEmpty() ? "" : ", by way of " + String.join(" and ", names);
    }
}
