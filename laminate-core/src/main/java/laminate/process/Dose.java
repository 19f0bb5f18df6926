package laminate.process;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.material.Agent;
import laminate.material.Resin;

/**
 * An agent and how much of it a resin takes.
 *
 * @param agent the catalyst or hardener
 * @param ratio mass of agent per mass of liquid resin (kg/kg)
 */
public record Dose(Agent agent, double ratio) {

    /**
     * Checks the dose by itself.
     *
     * @throws IllegalArgumentException if the ratio is not above zero and finite
     */
    public Dose {
        if (!(ratio > 0) || !Double.isFinite(ratio)) {
            throw new IllegalArgumentException("a dose must be above zero, not " + ratio);
        }
    }

    /**
     * The usual dose of an agent for a resin.
     *
     * @param resin the resin
     * @param agent an agent that cures it
     * @return the dose
     * @throws IllegalArgumentException if the agent does not cure the resin
     */
    public static Dose usual(Resin resin, Agent agent) {
        return new Dose(agent, cure(resin, agent).amount().value());
    }

    /**
     * A dose given by mass. A dose outside the range stated for the resin is refused, not warned about: too little or
     * too much both leave the resin undercured, and too much can run away.
     *
     * @param resin the resin
     * @param agent an agent that cures it
     * @param ratio mass of agent per mass of liquid resin (kg/kg)
     * @return the dose
     * @throws IllegalArgumentException if the agent does not cure the resin, or the ratio is outside its range
     */
    public static Dose of(Resin resin, Agent agent, double ratio) {
        Resin.Cure cure = cure(resin, agent);
        // The edge of the range must be reachable when a dose by volume is converted to one by mass.
        double slack = 1e-9;
        if (!(ratio >= cure.from().value() * (1 - slack) && ratio <= cure.to().value() * (1 + slack))) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s takes %s %% to %s %% of %s by mass, not %s %%",
                    resin.id(),
                    percent(cure.from().value()),
                    percent(cure.to().value()),
                    agent.id(),
                    percent(ratio)));
        }
        return new Dose(agent, ratio);
    }

    /**
     * A dose given by volume of agent per mass of resin.
     *
     * @param resin the resin
     * @param agent an agent that cures it
     * @param volumePerMass volume of agent per mass of liquid resin (m³/kg)
     * @return the dose, by mass from the agent's own density
     * @throws IllegalArgumentException as {@link #of}
     */
    public static Dose ofVolume(Resin resin, Agent agent, double volumePerMass) {
        return of(resin, agent, volumePerMass * agent.density());
    }

    /**
     * Mass of agent for a mass of resin.
     *
     * @param resin mass of liquid resin (kg)
     * @return mass of agent (kg)
     */
    public double massFor(double resin) {
        return ratio * resin;
    }

    /**
     * Share of the cured matrix that comes from the agent: r/(1 + r) for a hardener in the ratio r, none for a
     * catalyst.
     *
     * @return the fraction of mass
     */
    public double shareOfMatrix() {
        return agent.isHardener() ? ratio / (1 + ratio) : 0;
    }

    private static Resin.Cure cure(Resin resin, Agent agent) {
        Optional<Resin.Cure> cure = resin.cureBy(agent.id());
        if (cure.isEmpty()) {
            List<String> agents = resin.cures().stream().map(Resin.Cure::agent).toList();
            throw new IllegalArgumentException(
                    agent.id() + " does not cure " + resin.id() + "; it takes " + String.join(", ", agents));
        }
        return cure.get();
    }

    private static String percent(double ratio) {
        return BigDecimal.valueOf(ratio * 100)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
