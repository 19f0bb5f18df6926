package laminate.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PriceList;

/**
 * The chain of parts that are made on each other, from the moulding to its mould to the plug, and the workshop and prices that
 * they share. A mould that is made elsewhere has a price; one that is made here is reckoned here.
 *
 * @param chain the part files, the moulding first, the one that is read last
 * @param workshop the workshop of what is made on this one, empty at the moulding itself
 * @param priceList the prices of that
 */
record MadeHere(List<Path> chain, Optional<WorkshopFile> workshop, Optional<PriceList> priceList) {

    private static final String ELSEWHERE = " than that of what is made on this; take it out, or state the price of the"
            + " mould in place of its part file";

    static MadeHere first(Path file) {
        return new MadeHere(List.of(file), Optional.empty(), Optional.empty());
    }

    MadeHere with(WorkshopFile own, Optional<PriceList> ownPrices) {
        return new MadeHere(chain, Optional.of(own), ownPrices);
    }

    MadeHere on(Path mould) {
        List<Path> longer = new ArrayList<>(chain);
        longer.add(mould);
        return new MadeHere(longer, workshop, priceList);
    }

    /** The workshop of the part that is read: its own, which has to be that of what is made on it. */
    WorkshopFile workshop(Fields in, Term<WorkshopFile> stated) {
        if (stated.value().isPresent() && workshop.isPresent() && !workshop.equals(stated.value())) {
            in.complain("workshop", "this is another workshop" + ELSEWHERE);
        }
        return stated.value().or(() -> workshop).orElse(WorkshopFile.USUAL);
    }

    /** The prices of the part that is read: its own, which have to be those of what is made on it. */
    Optional<PriceList> prices(Fields in, Term<PriceList> stated) {
        if (stated.value().isPresent() && workshop.isPresent() && !priceList.equals(stated.value())) {
            in.complain("prices", "this is another price list" + ELSEWHERE);
        }
        return stated.value().or(() -> priceList);
    }

    /** Whether a mould is one of those that are made on it, which is complained of. */
    boolean isMadeOnItself(Path mould, Node node, Complaints complaints) {
        for (int i = 0; i < chain.size(); i++) {
            if (isSame(chain.get(i), mould)) {
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
        between.forEach(path -> names.add(path.getFileName().toString()));
        return names.isEmpty() ? "" : ", by way of " + String.join(" and ", names);
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return one.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        }
    }
}
