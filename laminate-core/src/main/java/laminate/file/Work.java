package laminate.file;

import java.nio.file.Path;
import java.util.List;

/** What a yard is asked to make: a part by itself, or a project of several parts with what they are made on. */
public sealed interface Work permits Job, Project {

    /**
     * All that is to be made, each in its number: of a project plugs first, then moulds, then mouldings for one set.
     *
     * @return the jobs in the order of making
     */
    List<Job> jobs();

    /**
     * What is made for the customer, without what it is made on, each in its number.
     *
     * @return the jobs in the order of the file
     */
    List<Job> mouldings();

    /**
     * The files all this was read from.
     *
     * @return the file asked for, those that it or they name, and those that an override names
     */
    List<Path> files();
}
