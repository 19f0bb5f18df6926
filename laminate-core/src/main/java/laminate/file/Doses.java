package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Reading.shortOrFull;
import static laminate.file.Scalars.quantity;

import java.util.Optional;
import laminate.material.Agent;
import laminate.material.MaterialKind;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.unit.Dimension;

/** Doses as files state them: an agent, and perhaps how much of it. */
final class Doses {

    /**
     * An amount of agent.
     *
     * @param value mass of agent per mass of resin (kg/kg), or its volume per mass of resin (m³/kg)
     * @param byVolume which of the two
     */
    record Amount(double value, boolean byVolume) {

        private static final Reading<Double> BY_MASS = quantity(Dimension.FRACTION, Bounds.POSITIVE);
        private static final Reading<Double> BY_VOLUME = quantity(Dimension.VOLUME_PER_MASS, Bounds.POSITIVE);

        /** Another unit than % tells that ml/kg is meant, so that a slip in either gets the message that fits. */
        static final Reading<Amount> READING = new ByUnit();

        private static final class ByUnit implements Reading<Amount> {

            @Override
            public Optional<Amount> read(Node node, Complaints complaints) {
                boolean byVolume = node instanceof Node.Scalar scalar && hasOtherUnit(scalar.text());
                Optional<Double> value = (byVolume ? BY_VOLUME : BY_MASS).read(node, complaints);
                return value.isPresent() ? Optional.of(new Amount(value.get(), byVolume)) : Optional.empty();
            }

            private static boolean hasOtherUnit(String text) {
                boolean letters = false;
                for (int i = 0; i < text.length(); i++) {
                    letters |= Character.isLetter(text.charAt(i));
                }
                return letters && text.indexOf('%') < 0;
            }
        }
    }

    /**
     * An agent as it is stated.
     *
     * @param agent the catalyst or hardener
     * @param amount how much, empty for what the resin usually takes
     */
    record Stated(Located<Agent> agent, Optional<Located<Amount>> amount) {

        boolean cures(Resin resin) {
            return resin.cureBy(agent.value().id()).isPresent();
        }

        /**
         * The dose for a resin.
         *
         * @throws Refusal at the agent or at its amount, whichever does not suit the resin
         */
        Dose doseFor(Resin resin) {
            Agent what = agent.value();
            try {
                return amount.isEmpty()
                        ? Dose.usual(resin, what)
                        : dose(resin, what, amount.get().value());
            } catch (IllegalArgumentException e) {
                boolean amountIsToBlame = amount.isPresent() && cures(resin);
                throw new Refusal(amountIsToBlame ? amount.get().node() : agent.node(), e.getMessage());
            }
        }

        private static Dose dose(Resin resin, Agent what, Amount much) {
            return much.byVolume() ? Dose.ofVolume(resin, what, much.value()) : Dose.of(resin, what, much.value());
        }
    }

    private Doses() {}

    /** An agent by its id alone, or with an amount. */
    static Reading<Stated> of(MaterialKind kind, Stock stock) {
        Reading<Located<Agent>> agent = Located.of(stock.agent(kind));
        return shortOrFull(
                agent.map(found -> new Stated(found, Optional.empty())), mapping(Keys.AGENT, in -> stated(in, agent)));
    }

    private static Stated stated(Fields in, Reading<Located<Agent>> agent) {
        var id = in.required("id", agent);
        var amount = in.optional("amount", Located.of(Amount.READING));
        in.requireSound();
        return new Stated(id.get(), amount.get());
    }

    /**
     * The dose that a resin takes where none is stated.
     *
     * @param where the place to blame if its agent is missing
     */
    static Dose usual(Resin resin, Stock stock, Node where) {
        String id = resin.defaultCure().agent();
        Optional<Agent> agent = stock.findAgent(id);
        if (agent.isEmpty()) {
            throw new Refusal(
                    where,
                    resin.id() + " is cured by " + id + ", which is no known catalyst or hardener; state another"
                            + " that cures it, or add it to a material file");
        }
        return Dose.usual(resin, agent.get());
    }
}
