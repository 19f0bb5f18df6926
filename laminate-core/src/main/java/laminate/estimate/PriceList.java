package laminate.estimate;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What materials cost, in one currency on one day.
 *
 * @param currency ISO 4217 code
 * @param date the day the prices are of, empty where not stated
 * @param prices the prices
 */
public record PriceList(String currency, Optional<LocalDate> date, List<Price> prices) {

    /**
     * Checks the list.
     *
     * @throws IllegalArgumentException if a price is in another currency, or a material is priced twice
     */
    public PriceList {
        prices = List.copyOf(prices);
        Map<String, Price> seen = new LinkedHashMap<>();
        for (Price price : prices) {
            if (!price.price().currency().equals(currency)) {
                throw new IllegalArgumentException("the price of " + price.material() + " is in "
                        + price.price().currency() + ", the list is in " + currency);
            }
            if (seen.put(price.material(), price) != null) {
                throw new IllegalArgumentException(price.material() + " is priced twice");
            }
        }
    }

    /**
     * Finds the price of a material.
     *
     * @param material the id
     * @return the price, empty if the list has none
     */
    public Optional<Price> find(String material) {
        for (Price price : prices) {
            if (price.material().equals(material)) {
                return Optional.of(price);
            }
        }
        return Optional.empty();
    }

    /**
     * Several lists in one, as for parts that each name their own.
     *
     * @param lists the lists
     * @return all their prices, with the day that they are of if it is one; empty if there is no list
     * @throws IllegalArgumentException if they are in several currencies, or a material is priced in two ways
     */
    public static Optional<PriceList> joined(List<PriceList> lists) {
        Map<String, Price> all = new LinkedHashMap<>();
        Set<Optional<LocalDate>> dates = new LinkedHashSet<>();
        for (PriceList list : lists) {
            dates.add(list.date());
            for (Price price : list.prices()) {
                Price known = all.putIfAbsent(price.material(), price);
                if (known != null && !known.equals(price)) {
                    throw new IllegalArgumentException(price.material()
                            + " is priced in two ways by the price lists of the parts; one list for all is wanted");
                }
            }
        }
        return lists.isEmpty()
                ? Optional.empty()
                : Optional.of(new PriceList(
                        lists.get(0).currency(),
                        dates.size() == 1 ? dates.iterator().next() : Optional.empty(),
                        List.copyOf(all.values())));
    }
}
