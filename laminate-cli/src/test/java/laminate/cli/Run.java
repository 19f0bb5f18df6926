package laminate.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/**
 * What a run of the program within this process came to.
 *
 * @param exitCode the exit code
 * @param out standard output
 * @param err standard error
 */
record Run(int exitCode, String out, String err) {

    static Run laminate(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = List.of(args).stream().map(Object::toString).toArray(String[]::new);
        int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Run(exitCode, out.toString(), err.toString());
    }
}
