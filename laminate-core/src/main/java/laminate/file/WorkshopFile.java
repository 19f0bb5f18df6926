package laminate.file;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import laminate.material.Materials;
import laminate.process.ContentSet;
import laminate.process.Workshop;
import laminate.quote.QuotationText;
import laminate.quote.Terms;

/**
 * What a workshop file states.
 *
 * @param workshop the workshop's figures
 * @param contents the set of nominal fibre contents for parts that name none
 * @param terms what the yard quotes by, empty where it states no pricing
 * @param quotation what the yard writes on its quotations
 */
public record WorkshopFile(Workshop workshop, ContentSet contents, Optional<Terms> terms, QuotationText quotation) {

    /** A workshop that states nothing. */
    public static final WorkshopFile USUAL =
            new WorkshopFile(Workshop.USUAL, ContentSet.TRADE, Optional.empty(), QuotationText.NONE);

    /** Checks that nothing is missing. */
    public WorkshopFile {
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(contents, "contents");
        Objects.requireNonNull(terms, "terms");
        Objects.requireNonNull(quotation, "quotation");
    }

    /**
     * Reads a workshop file.
     *
     * @param file the file
     * @param materials the materials that it may name as consumables; they are asked for their ids only
     * @return the workshop
     * @throws InputException with all that is wrong in the file
     */
    public static WorkshopFile read(Path file, Materials materials) {
        Complaints complaints = new Complaints();
        Reading<WorkshopFile> workshop = new WorkshopReader(Stock.of(materials), Optional.empty()).workshop();
        return complaints.settle(workshop.read(file, Keys.WORKSHOP, complaints));
    }
}
