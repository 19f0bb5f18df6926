package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.unit.Money;

/**
 * A mould or plug as a project states it.
 *
 * @param name what it is called
 * @param in where it stands
 * @param part its part file, empty where it is bought
 * @param stated price, life and set-up
 * @param inHand how many there are already
 * @param madeOn the name of what it is made on in place of the tooling of its part file
 */
record ProjectTool(
        String name,
        Fields in,
        Optional<Path> part,
        ToolingReader.Stated stated,
        int inHand,
        Optional<Located<String>> madeOn) {

    /** This tool as tooling of what is made on it. */
    Tooling tooling(Optional<Part> mould) {
        return stated.of(Optional.empty(), mould).named(name).withInHand(inHand);
    }

    void complainOfUse() {
        in.complain("name", "nothing is made on this; add made-on: " + name + " where it is used, or take it out");
    }

    /** Complains of prices in another currency than that of the price list, if there is one. */
    void complainOfOtherThan(Optional<String> currency) {
        if (currency.isPresent()) {
            complainOf("price", stated.price().get(), currency.get());
            complainOf("set-up-price", stated.setUpPrice().get(), currency.get());
        }
    }

    private void complainOf(String key, Optional<Money> price, String currency) {
        if (price.isPresent() && !price.get().currency().equals(currency)) {
            in.complain(key, Scalars.otherCurrency(price.get().currency(), currency));
        }
    }
}
