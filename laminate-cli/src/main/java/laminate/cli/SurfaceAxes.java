package laminate.cli;

import java.util.List;
import laminate.check.SurfaceTerms;
import laminate.theory.LaminateLoad.Term;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * The two axes of a failure surface on the command line: Nx,Ny.
 *
 * @param x term of the first axis
 * @param y term of the second axis
 */
record SurfaceAxes(Term x, Term y) {
    private static final int LEAST_RAYS = 3;

    /** Reads two terms with a comma between. */
    static ITypeConverter<SurfaceAxes> reader() {
        Words<Term> terms = new Words<>(Term.values(), Term::word);
        return text -> {
            List<String> words = List.of(text.split(",", -1));
            if (words.size() != 2) {
                throw new TypeConversionException("'" + text + "' is not two terms with a comma between, as Nx,Ny");
            }
            return of(terms.convert(words.get(0)), terms.convert(words.get(1)));
        };
    }

    private static SurfaceAxes of(Term x, Term y) {
        try {
            new SurfaceTerms(x, y, LEAST_RAYS);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(x.word() + " and " + y.word()
                    + " cannot be the axes of a surface; give two that do not stand for each other");
        }
        return new SurfaceAxes(x, y);
    }

    SurfaceTerms with(int rays) {
        return new SurfaceTerms(x, y, rays);
    }
}
