package laminate.order.cut;

/**
 * Where every piece lies, in grid steps. Sheets, and pulls cut across, lie end to end: y counts from the start of the
 * first.
 */
final class Layout {
    private final long[] x;
    private final long[] y;
    private final boolean[] turned;
    private final int[] part;
    private int parts;
    private long start;
    private long end;

    private Layout(long[] x, long[] y, boolean[] turned, int[] part) {
        this.x = x;
        this.y = y;
        this.turned = turned;
        this.part = part;
    }

    static Layout of(int count) {
        return new Layout(new long[count], new long[count], new boolean[count], new int[count]);
    }

    /** Forgets all pieces and begins the first sheet or pull. */
    void clear() {
        parts = 1;
        start = 0;
        end = 0;
    }

    /** Begins another sheet or pull at a distance from the start of the first. */
    void begin(long distance) {
        parts++;
        start = distance;
    }

    /** Lays a piece in the present sheet or pull. */
    void put(int item, long across, long along, boolean quarterTurn, long size) {
        x[item] = across;
        y[item] = start + along;
        turned[item] = quarterTurn;
        part[item] = parts - 1;
        end = Math.max(end, start + along + size);
    }

    long x(int item) {
        return x[item];
    }

    long y(int item) {
        return y[item];
    }

    boolean turned(int item) {
        return turned[item];
    }

    /** In which sheet a piece lies, from 0. */
    int part(int item) {
        return part[item];
    }

    /** How many sheets or pulls there are. */
    int parts() {
        return parts;
    }

    /** The far end of the last piece. */
    long length() {
        return end;
    }

    Layout copy() {
        Layout copy = new Layout(x.clone(), y.clone(), turned.clone(), part.clone());
        copy.parts = parts;
        copy.start = start;
        copy.end = end;
        return copy;
    }
}
