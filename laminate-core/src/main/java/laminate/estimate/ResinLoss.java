package laminate.estimate;

/**
 * Where mixed resin goes that is neither in the part nor in the air.
 *
 * @param trimmed with the margin that is cut off (kg)
 * @param pots in pots, brushes, rollers and drips, or the catch pot (kg)
 * @param bag in peel ply, release film, breather and flow mesh (kg)
 * @param lines in hoses, spiral tubes and the feed bucket (kg)
 */
public record ResinLoss(double trimmed, double pots, double bag, double lines) {
    static ResinLoss byHand(double trimmed, double pots) {
        return new ResinLoss(trimmed, pots, 0, 0);
    }

    static ResinLoss inBag(double bag) {
        return new ResinLoss(0, 0, bag, 0);
    }

    static ResinLoss inLines(double lines) {
        return new ResinLoss(0, 0, 0, lines);
    }

    /**
     * All of it.
     *
     * @return the sum (kg)
     */
    public double total() {
        return trimmed + pots + bag + lines;
    }

    ResinLoss plus(ResinLoss other) {
        return new ResinLoss(trimmed + other.trimmed, pots + other.pots, bag + other.bag, lines + other.lines);
    }
}
