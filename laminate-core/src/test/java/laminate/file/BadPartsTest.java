package laminate.file;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Part, project, workshop, price, stock and material files that mean something impossible. The name tells the kind:
 * {@code project-…}, {@code workshop-…}, {@code prices-…}, {@code stock-…}, {@code material-…}, else a part file.
 */
class BadPartsTest {

    private static final Corpus CORPUS = new Corpus("bad-parts");

    static Set<String> names() {
        return CORPUS.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void complaintsAreThoseBesideTheFile(String name) {
        CORPUS.check(name, file -> read(name, file));
    }

    @Test
    void everyFileHasItsComplaintsAndTheyTheirFile() {
        CORPUS.checkComplete(150);
    }

    private static void read(String name, Path file) {
        switch (name.substring(0, Math.max(0, name.indexOf('-')))) {
            case "project" -> ProjectFile.read(file, Bench.STOCK, Overrides.NONE);
            case "workshop" -> WorkshopFile.read(file, Bench.STOCK);
            case "prices" -> PriceFile.read(file, Bench.STOCK);
            case "stock" -> StockFile.read(file, Bench.STOCK);
            case "material" -> MaterialFile.read(file, Bench.STOCK);
            default -> PartFile.read(file, Bench.STOCK);
        }
    }
}
