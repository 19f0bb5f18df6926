package laminate.print;

/** Lets tests of other packages measure a line as a terminal does. */
public final class Columns {
    private Columns() {}

    public static int of(String line) {
        return Lines.width(line);
    }
}
