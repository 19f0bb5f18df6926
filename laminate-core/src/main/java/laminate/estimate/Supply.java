package laminate.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.unit.Amount;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/**
 * How a material is sold, beside its price.
 *
 * @param packs the packs in which it is sold; empty if it is weighed or measured out
 * @param minimum the least that is sold at all, in the measure of the packs; empty if there is none
 * @param leadTime how long it takes from order to delivery (s), empty where not stated
 * @param shelfLife how long it keeps from delivery (s), empty where not stated
 */
public record Supply(
        List<PackPrice> packs, Optional<Amount> minimum, OptionalDouble leadTime, OptionalDouble shelfLife) {
    /** Weighed or measured out, and nothing known of delivery and keeping. */
    public static final Supply LOOSE =
            new Supply(List.of(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** Decimals of a price that is reckoned from that of a pack. */
    private static final int DECIMALS = 4;

    /**
     * Checks the packs.
     *
     * @throws IllegalArgumentException if packs and minimum are in several measures, or a time is not zero or more
     */
    public Supply {
        Objects.requireNonNull(minimum, "minimum");
        packs = List.copyOf(packs);
        for (PackPrice pack : packs) {
            checkMeasure(packs.get(0), pack.name(), pack.amount());
        }
        if (!packs.isEmpty() && minimum.isPresent()) {
            checkMeasure(packs.get(0), "the minimum", minimum.get());
        }
        checkTime("lead time", leadTime);
        checkTime("shelf life", shelfLife);
    }

    private static void checkMeasure(PackPrice first, String name, Amount amount) {
        if (amount.measure() != first.amount().measure()) {
            throw new IllegalArgumentException(name + " is " + amount + ", " + first.name() + " " + first.amount()
                    + "; packs of a material are of one measure");
        }
    }

    private static void checkTime(String name, OptionalDouble time) {
        if (!(time.orElse(0) >= 0) || !Double.isFinite(time.orElse(0))) {
            throw new IllegalArgumentException("a " + name + " is zero or more, not " + time.getAsDouble() + " s");
        }
    }

    /**
     * The price by measure of the pack that is the best value: what the material costs as it is used, out of packs.
     *
     * @return the price, rounded half up to four decimals; empty without packs
     */
    public Optional<UnitPrice> bestUnitPrice() {
        Optional<UnitPrice> best = Optional.empty();
        for (PackPrice pack : packs) {
            BigDecimal amount = price(pack);
            PriceBasis measure = pack.amount().measure();
            if (best.isEmpty() || amount.compareTo(best.get().amount()) < 0) {
                best = Optional.of(new UnitPrice(amount, pack.price().currency(), measure));
            }
        }
        return best;
    }

    /** With as many decimals as its coins have, and more where it takes them. */
    private static BigDecimal price(PackPrice pack) {
        BigDecimal coins = pack.price().amount();
        BigDecimal rounded = coins.divide(pack.amount().value(), MathContext.DECIMAL64)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.setScale(Math.max(coins.scale(), rounded.scale()));
    }
}
