package laminate.file;

import java.io.IOException;
import java.nio.file.Files;
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
 * @param yard the yard that makes what is made on this one, empty at the moulding itself, and where it could not be read
 */
record MadeHere(List<Path> chain, Optional<Yard> yard) {

    private static final String ELSEWHERE = " than that of what is made on this; take it out, or state the price of the"
            + " mould in place of its part file";

    static MadeHere first(Path file) {
        return new MadeHere(List.of(file), Optional.empty());
    }

    MadeHere in(Yard own) {
        return own.sound() ? new MadeHere(chain, Optional.of(own)) : this;
    }

    MadeHere on(Path mould) {
        List<Path> longer = new ArrayList<>(chain);
        longer.add(mould);
        return new MadeHere(longer, yard);
    }

    /** The workshop of a file, if that is the yard's: it need not be read again. */
    Optional<WorkshopFile> workshopOf(Optional<Path> file) {
        return yard.isPresent() && isSame(yard.get().workshopFile(), file)
                ? Optional.of(yard.get().workshop())
                : Optional.empty();
    }

    /** The prices of a file, if these are the yard's. */
    Optional<PriceList> pricesOf(Optional<Path> file) {
        return yard.isPresent() && isSame(yard.get().priceFile(), file)
                ? yard.get().prices()
                : Optional.empty();
    }

    /** The workshop of the part that is read: its own, which has to be the yard's. */
    WorkshopFile workshop(Fields in, Optional<WorkshopFile> stated) {
        if (stated.isEmpty()) {
            return yard.isPresent() ? yard.get().workshop() : WorkshopFile.USUAL;
        }
        if (yard.isPresent() && isOther(stated.get(), yard.get().workshop())) {
            in.complain("workshop", "this is another workshop" + ELSEWHERE);
        }
        return stated.get();
    }

    /** The prices of the part that is read: its own, which have to be the yard's. */
    Optional<PriceList> prices(Fields in, Optional<PriceList> stated) {
        if (stated.isEmpty()) {
            return yard.isPresent() ? yard.get().prices() : Optional.empty();
        }
        if (yard.isPresent() && isOther(stated.get(), yard.get().prices().orElse(null))) {
            in.complain("prices", "this is another price list" + ELSEWHERE);
        }
        return stated;
    }

    /** Looks first whether they are one: to compare records costs the Java machine some time at the first time. */
    private static boolean isOther(Object one, Object other) {
        return one != other && !one.equals(other);
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
        for (Path path : between) {
            names.add(path.getFileName().toString());
        }
        return names.isEmpty() ? "" : ", by way of " + String.join(" and ", names);
    }

    private static boolean isSame(Optional<Path> one, Optional<Path> other) {
        return one.isPresent() && other.isPresent() && isSame(one.get(), other.get());
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
