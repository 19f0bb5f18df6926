package laminate.theory.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The products of {@link Shapes} along x and y that the fields of a panel are built of, chosen so that each one fits
 * the supports. Their factors are the unknowns.
 *
 * <p>Where opposite edges are alike, each unknown has a character: whether the state it stands for is left as it is
 * (0) or reversed (1) when the panel is mirrored along x, and along y. Unknowns of different character do not couple
 * unless the laminate couples them, which splits the problem into as many as four small ones.
 */
final class Basis {
    private final Panel panel;
    private final Kinematics kinematics;
    private final Line alongX;
    private final Line alongY;
    private final boolean mirrorsAlongX;
    private final boolean mirrorsAlongY;
    private final List<Unknown> unknowns = new ArrayList<>();

    /** One unknown: the factor of a field's product of functions; character 0 to 3, along x + 2 along y. */
    record Unknown(Field field, int x, int y, int character) {}

    private Basis(Panel panel, Kinematics kinematics, Line alongX, Line alongY, boolean symmetric) {
        this.panel = panel;
        this.kinematics = kinematics;
        this.alongX = alongX;
        this.alongY = alongY;
        mirrorsAlongX = symmetric && panel.edges().xStart() == panel.edges().xEnd();
        mirrorsAlongY = symmetric && panel.edges().yStart() == panel.edges().yEnd();
    }

    /**
     * The functions for a panel.
     *
     * @param membrane whether displacements in the plane take part
     */
    static Basis of(Panel panel, Kinematics kinematics, Orders orders, boolean membrane) {
        boolean smooth = kinematics == Kinematics.THIN;
        Line alongX = new Shapes(panel.length(), orders.x(), smooth);
        Line alongY = new Shapes(panel.width(), orders.y(), smooth);
        return new Basis(panel, kinematics, alongX, alongY, true).filled(membrane);
    }

    /**
     * The functions for a panel, for first-order shear theory, in pieces.
     *
     * @param order power within each piece
     * @param membrane whether displacements in the plane take part
     */
    static Basis of(Panel panel, Mesh mesh, int order, boolean membrane) {
        Line alongX = new Pieces(mesh.x(), order);
        Line alongY = new Pieces(mesh.y(), order);
        return new Basis(panel, Kinematics.FIRST_ORDER, alongX, alongY, false).filled(membrane);
    }

    private Basis filled(boolean membrane) {
        for (Field field : kinematics.fields()) {
            if (membrane || !field.isInPlane()) {
                add(field);
            }
        }
        removeRigidMotion();
        return this;
    }

    private void add(Field field) {
        Edges e = panel.edges();
        int[] xs = functions(field, alongX, e.xStart(), e.xEnd(), true);
        int[] ys = functions(field, alongY, e.yStart(), e.yEnd(), false);
        for (int x : xs) {
            for (int y : ys) {
                unknowns.add(new Unknown(field, x, y, character(field, x, y)));
            }
        }
    }

    private int character(Field field, int x, int y) {
        int byX = mirrorsAlongX ? (alongX.parity(x) + field.flipsAlongX()) % 2 : 0;
        int byY = mirrorsAlongY ? (alongY.parity(y) + field.flipsAlongY()) % 2 : 0;
        return byX + 2 * byY;
    }

    private int[] functions(Field field, Line line, Edge start, Edge end, boolean acrossX) {
        if (kinematics == Kinematics.THIN && field == Field.W) {
            return smooth((Shapes) line, start, end);
        }
        boolean heldStart = field.heldBy(start, acrossX, panel.inPlane());
        boolean heldEnd = field.heldBy(end, acrossX, panel.inPlane());
        boolean local = line instanceof Pieces && !field.isInPlane();
        IntStream free = local ? IntStream.of(Line.AT_START, Line.AT_END) : IntStream.of(Line.ONE, Line.LINEAR);
        IntStream ends = heldStart
                ? (heldEnd ? IntStream.empty() : IntStream.of(Line.AT_END))
                : heldEnd ? IntStream.of(Line.AT_START) : free;
        return IntStream.concat(ends, IntStream.of(line.inner())).toArray();
    }

    private static int[] smooth(Shapes shapes, Edge start, Edge end) {
        IntStream.Builder ends = IntStream.builder();
        boolean alike = start == end;
        if (!start.holdsDeflection()) {
            ends.add(shapes.smooth(alike ? Shapes.SMOOTH_ONE : Shapes.SMOOTH_VALUE_START));
        }
        if (!end.holdsDeflection()) {
            ends.add(shapes.smooth(alike ? Shapes.SMOOTH_VALUE_ODD : Shapes.SMOOTH_VALUE_END));
        }
        if (!start.holdsTurning()) {
            ends.add(shapes.smooth(alike ? Shapes.SMOOTH_SLOPE_EVEN : Shapes.SMOOTH_SLOPE_START));
        }
        if (!end.holdsTurning()) {
            ends.add(shapes.smooth(alike ? Shapes.SMOOTH_SLOPE_ODD : Shapes.SMOOTH_SLOPE_END));
        }
        IntStream bubbles = IntStream.rangeClosed(4, shapes.order()).map(shapes::smoothBubble);
        return IntStream.concat(ends.build(), bubbles).toArray();
    }

    /**
     * A panel that is free in its plane can still drift and turn there without strain. Each such motion is stopped by
     * leaving out one unknown that it needs, which changes no strain.
     */
    private void removeRigidMotion() {
        boolean turns = has(Field.U, Line.ONE, Line.ONE, false, true) && has(Field.V, Line.ONE, Line.ONE, true, false);
        if (turns) {
            unknowns.remove(find(Field.U, Line.ONE, linear(Field.U)));
        }
        unknowns.removeIf(u -> u.field().isInPlane() && u.x() == Line.ONE && u.y() == Line.ONE);
    }

    private boolean has(Field field, int x, int y, boolean linearX, boolean linearY) {
        return unknowns.stream()
                .anyMatch(u -> u.field() == field
                        && (linearX ? isLinear(u.x()) : u.x() == x)
                        && (linearY ? isLinear(u.y()) : u.y() == y));
    }

    private static boolean isLinear(int function) {
        return function == Line.LINEAR || function == Line.AT_START || function == Line.AT_END;
    }

    private int linear(Field field) {
        return unknowns.stream()
                .filter(u -> u.field() == field && u.x() == Line.ONE && isLinear(u.y()))
                .findFirst()
                .orElseThrow()
                .y();
    }

    private Unknown find(Field field, int x, int y) {
        return unknowns.stream()
                .filter(u -> u.field() == field && u.x() == x && u.y() == y)
                .findFirst()
                .orElseThrow();
    }

    Panel panel() {
        return panel;
    }

    Kinematics kinematics() {
        return kinematics;
    }

    Line alongX() {
        return alongX;
    }

    Line alongY() {
        return alongY;
    }

    int size() {
        return unknowns.size();
    }

    Unknown unknown(int i) {
        return unknowns.get(i);
    }

    /**
     * The character that a laminate which couples shear with stretching adds: such a laminate reverses when mirrored
     * along x and when mirrored along y.
     */
    int reversal() {
        return (mirrorsAlongX ? 1 : 0) + (mirrorsAlongY ? 2 : 0);
    }

    /** Number of pieces; 1 if the functions run over the whole panel. */
    int pieces() {
        return alongX instanceof Pieces x && alongY instanceof Pieces y ? x.count() * y.count() : 1;
    }

    /** The piece that alone an unknown lives on; −1 for one on the lines between pieces. */
    int piece(int unknown) {
        int x = ((Pieces) alongX).pieceOf(unknowns.get(unknown).x());
        int y = ((Pieces) alongY).pieceOf(unknowns.get(unknown).y());
        return x < 0 || y < 0 ? -1 : x * ((Pieces) alongY).count() + y;
    }

    /** Whether an unknown moves a piece. */
    boolean touches(int unknown, int piece) {
        Pieces x = (Pieces) alongX;
        Pieces y = (Pieces) alongY;
        return x.touches(unknowns.get(unknown).x(), piece / y.count())
                && y.touches(unknowns.get(unknown).y(), piece % y.count());
    }

    /** The unknowns that live on one piece alone. */
    int[] onlyOn(int piece) {
        return IntStream.range(0, size()).filter(i -> piece(i) == piece).toArray();
    }

    /** False for two unknowns of which every product of derivatives has an integral of zero. */
    boolean mayCouple(Unknown left, Unknown right) {
        return alongX.mayCouple(left.x(), right.x()) && alongY.mayCouple(left.y(), right.y());
    }

    /**
     * The unknowns in groups that do not couple in a linear problem. Within a group they are in the order of powers, so
     * that those that couple stand near each other.
     *
     * @param shearCoupled whether the laminate or the load couples states that differ by {@link #reversal()}
     */
    List<int[]> groups(boolean shearCoupled) {
        Map<Integer, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < size(); i++) {
            int character = unknowns.get(i).character();
            int group = shearCoupled ? Math.min(character, character ^ reversal()) : character;
            groups.computeIfAbsent(group, any -> new ArrayList<>()).add(i);
        }
        return groups.values().stream()
                .map(g ->
                        g.stream().sorted(byRank()).mapToInt(Integer::intValue).toArray())
                .toList();
    }

    /** Along the side of the higher order, or with more pieces, first. */
    Comparator<Integer> byRank() {
        Comparator<Integer> byX =
                Comparator.comparingInt(i -> alongX.rank(unknowns.get(i).x()));
        Comparator<Integer> byY =
                Comparator.comparingInt(i -> alongY.rank(unknowns.get(i).y()));
        boolean xFirst = alongX.inner().length >= alongY.inner().length;
        return xFirst ? byX.thenComparing(byY) : byY.thenComparing(byX);
    }
}
