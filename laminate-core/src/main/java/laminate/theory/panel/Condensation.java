package laminate.theory.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Solves a panel divided into {@link Pieces}: the unknowns that live on one piece alone are eliminated piece by piece,
 * which leaves a small matrix of those on the lines between pieces (static condensation; R. J. Guyan, AIAA J. 3 (1965)
 * 380, from memory).
 */
final class Condensation {
    private final Basis basis;
    private final Form.Entries entries;
    private final double[] load;
    private final int[] lines;
    private final double[] factors;
    private final List<Inside> insides = new ArrayList<>();

    /** What lives on one piece alone: its unknowns, decomposed stiffness, and the columns L⁻¹ K of what it touches. */
    private record Inside(int[] unknowns, Envelope stiffness, int[] touched, double[][] columns, double[] load) {}

    private Condensation(Basis basis, Form energy, double[] load) {
        this.basis = basis;
        this.load = load;
        entries = energy.entries(basis);
        factors = new double[load.length];
        Comparator<Integer> order = basis.byRank();
        lines = IntStream.range(0, basis.size())
                .filter(i -> basis.piece(i) < 0)
                .boxed()
                .sorted(order)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    static double[] solve(Basis basis, Form energy, double[] load) {
        return new Condensation(basis, energy, load).solve();
    }

    private double[] solve() {
        double[] right = IntStream.of(lines).mapToDouble(i -> load[i]).toArray();
        double[][] rows = new double[lines.length][];
        int[] first = new int[lines.length];
        assemble(rows, first);
        for (int piece = 0; piece < basis.pieces(); piece++) {
            insides.add(eliminate(piece, rows, first, right));
        }
        double[] solution = new Envelope(rows, first).solve(right);
        for (int i = 0; i < lines.length; i++) {
            factors[lines[i]] = solution[i];
        }
        insides.forEach(inside -> substitute(inside, solution));
        return factors;
    }

    private void assemble(double[][] rows, int[] first) {
        for (int i = 0; i < lines.length; i++) {
            Basis.Unknown left = basis.unknown(lines[i]);
            int from = 0;
            while (!basis.mayCouple(left, basis.unknown(lines[from]))) {
                from++;
            }
            first[i] = from;
            rows[i] = new double[i - from + 1];
            for (int j = from; j <= i; j++) {
                Basis.Unknown right = basis.unknown(lines[j]);
                rows[i][j - from] = basis.mayCouple(left, right) ? entries.of(left, right) : 0;
            }
        }
    }

    private Inside eliminate(int piece, double[][] rows, int[] first, double[] right) {
        int[] own = basis.onlyOn(piece);
        int[] touched = IntStream.range(0, lines.length)
                .filter(i -> basis.touches(lines[i], piece))
                .toArray();
        Envelope stiffness = stiffness(own);
        stiffness.decompose();
        double[] ownLoad = IntStream.of(own).mapToDouble(i -> load[i]).toArray();
        stiffness.forward(ownLoad);
        double[][] columns = new double[touched.length][own.length];
        for (int b = 0; b < touched.length; b++) {
            Basis.Unknown line = basis.unknown(lines[touched[b]]);
            for (int i = 0; i < own.length; i++) {
                columns[b][i] = entries.of(line, basis.unknown(own[i]));
            }
            stiffness.forward(columns[b]);
            right[touched[b]] -= Envelope.dot(columns[b], 0, ownLoad, 0, own.length);
            for (int c = 0; c <= b; c++) {
                rows[touched[b]][touched[c] - first[touched[b]]] -=
                        Envelope.dot(columns[b], 0, columns[c], 0, own.length);
            }
        }
        return new Inside(own, stiffness, touched, columns, ownLoad);
    }

    private Envelope stiffness(int[] own) {
        double[][] rows = new double[own.length][];
        for (int i = 0; i < own.length; i++) {
            rows[i] = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                rows[i][j] = entries.of(basis.unknown(own[i]), basis.unknown(own[j]));
            }
        }
        return new Envelope(rows, new int[own.length]);
    }

    private void substitute(Inside inside, double[] solution) {
        double[] right = inside.load();
        for (int b = 0; b < inside.touched().length; b++) {
            double value = solution[inside.touched()[b]];
            double[] column = inside.columns()[b];
            for (int i = 0; i < right.length; i++) {
                right[i] -= column[i] * value;
            }
        }
        inside.stiffness().backward(right);
        for (int i = 0; i < right.length; i++) {
            factors[inside.unknowns()[i]] = right[i];
        }
    }
}
