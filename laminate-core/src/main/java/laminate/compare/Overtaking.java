package laminate.compare;

import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds where one cost curve overtakes another. Between two new moulds their difference is a straight line of whole coins
 * times the parts estimated, so each place is found by division, exactly.
 */
final class Overtaking {
    private final CostCurve one;
    private final CostCurve other;
    /** 1 while the one is dearer, −1 while the other is, 0 before either was. */
    private int dearer;

    private int start;
    private int first;
    private int last;

    private Overtaking(CostCurve one, CostCurve other) {
        this.one = one;
        this.other = other;
    }

    /** Where the lead changes; empty if it never does, or the currencies differ. */
    static Optional<BreakEven> between(String one, CostCurve ofOne, String other, CostCurve ofOther) {
        if (!ofOne.currency().equals(ofOther.currency())) {
            return Optional.empty();
        }
        Overtaking race = new Overtaking(ofOne, ofOther);
        race.run();
        boolean oneLedFirst = race.start < 0;
        return race.first == 0
                ? Optional.empty()
                : Optional.of(new BreakEven(
                        oneLedFirst ? one : other,
                        oneLedFirst ? other : one,
                        race.first,
                        race.dearer == race.start ? OptionalInt.empty() : OptionalInt.of(race.last)));
    }

    private void run() {
        for (int from = 1; from <= CostCurve.MOST_PARTS; ) {
            int to = Math.min(CostCurve.MOST_PARTS, Math.min(lastOfMould(one, from), lastOfMould(other, from)));
            runStraight(from, to);
            from = to + 1;
        }
    }

    private static int lastOfMould(CostCurve curve, int parts) {
        long last = curve.life().isPresent()
                ? (long) curve.moulds(parts) * curve.life().getAsInt()
                : CostCurve.MOST_PARTS;
        return (int) Math.min(last, CostCurve.MOST_PARTS);
    }

    /** From one number of parts to another, between which no mould is renewed. */
    private void runStraight(int from, int to) {
        BigInteger there = difference(from);
        BigInteger slope = from == to ? BigInteger.ZERO : difference(from + 1).subtract(there);
        if (dearer == 0) {
            dearer = there.signum() != 0 ? there.signum() : slope.signum();
            start = dearer;
        }
        if (there.signum() == -dearer && dearer != 0) {
            change(from);
        }
        if (slope.signum() == -dearer && dearer != 0) {
            BigInteger steps = there.abs().divide(slope.abs()).add(BigInteger.ONE);
            if (steps.compareTo(BigInteger.valueOf((long) to - from)) <= 0) {
                change(from + steps.intValueExact());
            }
        }
    }

    private void change(int parts) {
        dearer = -dearer;
        first = first == 0 ? parts : first;
        last = parts;
    }

    /** What the one costs more than the other, in coins times the parts that either was estimated for. */
    private BigInteger difference(int parts) {
        return one.coinsTimesMouldings(parts)
                .multiply(BigInteger.valueOf(other.mouldings()))
                .subtract(other.coinsTimesMouldings(parts).multiply(BigInteger.valueOf(one.mouldings())));
    }
}
