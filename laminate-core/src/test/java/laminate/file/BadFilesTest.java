package laminate.file;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are wrong as text, as YAML, or in the shape and the words of their values. */
class BadFilesTest {

    private static final Corpus CORPUS = new Corpus("bad");

    static Set<String> names() {
        return CORPUS.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void complaintsAreThoseBesideTheFile(String name) {
        CORPUS.check(name, SketchFile::read);
    }

    @Test
    void everyFileHasItsComplaintsAndTheyTheirFile() {
        CORPUS.checkComplete(90);
    }
}
