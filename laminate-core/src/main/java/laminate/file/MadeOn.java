package laminate.file;

import java.util.Optional;
import laminate.part.Tooling;

/** What a part is made on by the word of a project, in place of the tooling that its own file states. */
@FunctionalInterface
interface MadeOn {

    /** The mould or plug, empty if it has been complained of. */
    Optional<Tooling> tooling(MadeHere here, Complaints complaints);
}
