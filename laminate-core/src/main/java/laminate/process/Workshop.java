package laminate.process;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.unit.Dimension;

/**
 * A workshop's own figures, each in place of the usual one.
 *
 * <p>{@link #USUAL} states nothing; the {@code with…} methods lay a workshop's own figures over it.
 *
 * @param temperature temperature of the workshop (K), empty where not stated
 * @param contentRules fibre contents of its own; the first that holds for a ply wins
 * @param voids void volume fraction of its own, by process
 * @param losses losses of its own, by process and cause
 * @param gelcoatSprayed whether gelcoat is sprayed, which loses more styrene
 * @param evaporation share of styrenic resin that evaporates, of its own, by process
 * @param labour rate and times
 * @param consumables what is used up
 * @param stiffness how ply stiffness is reckoned
 * @param strength how ply strength is reckoned
 * @param shopFloor hands, scales and hours
 */
public record Workshop(
        OptionalDouble temperature,
        List<ContentRule> contentRules,
        Map<Process, Figure> voids,
        Map<Process, Map<Loss, Figure>> losses,
        boolean gelcoatSprayed,
        Map<Process, Figure> evaporation,
        Labour labour,
        Consumables consumables,
        StiffnessBasis stiffness,
        StrengthBasis strength,
        ShopFloor shopFloor) {

    /**
     * The temperature where a workshop states none (K): the middle of the 18 to 22 °C that the Rules for Classification of
     * FRP Ships 2014 recommend.
     */
    public static final double USUAL_TEMPERATURE = 293.15;

    /** A workshop that states nothing. */
    public static final Workshop USUAL = new Workshop(
            OptionalDouble.empty(),
            List.of(),
            Map.of(),
            Map.of(),
            false,
            Map.of(),
            Labour.USUAL,
            Consumables.USUAL,
            StiffnessBasis.USUAL,
            StrengthBasis.LIBRARY,
            ShopFloor.USUAL);

    /** Half of a laminate void, or half of a resin gone, is a slip in any workshop. */
    private static final double MOST_SHARE = 0.5;

    private static final Map<Process, Map<Loss, Figure>> USUAL_LOSSES = usualLosses();

    private static final Map<Process, Figure> USUAL_VOIDS = new EnumMap<>(Map.of(
            Process.HAND_LAY_UP, new Figure(0.03, "hand lay-up, 2 to 5 %", Status.MEMORY),
            Process.VACUUM_BAG,
                    new Figure(
                            0.02,
                            "wet lay-up and bag, 1.75 to 2.75 %: Sussmann et al., Polymers 10 (2018) 992",
                            Status.PRINTED),
            Process.INFUSION, new Figure(0.01, "infusion, under 1 to 2 %", Status.MEMORY)));

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the temperature, a void fraction, a loss or an evaporation is out of its
     *     range
     */
    public Workshop {
        Objects.requireNonNull(labour, "labour");
        Objects.requireNonNull(consumables, "consumables");
        Objects.requireNonNull(stiffness, "stiffness");
        if (temperature.isPresent()) {
            checkTemperature(temperature.getAsDouble());
        }
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(shopFloor, "shopFloor");
        contentRules = List.copyOf(contentRules);
        voids = sorted(voids);
        evaporation = sorted(evaporation);
        losses = sortedLosses(losses);
        checkShares("a void fraction", voids.values());
        checkShares("an evaporation", evaporation.values());
        for (Map<Loss, Figure> own : losses.values()) {
            for (Map.Entry<Loss, Figure> loss : own.entrySet()) {
                checkLoss(loss.getKey(), loss.getValue());
            }
        }
    }

    /**
     * A workshop with the usual hands, scales and hours.
     *
     * @param temperature temperature of the workshop (K), empty where not stated
     * @param contentRules fibre contents of its own; the first that holds for a ply wins
     * @param voids void volume fraction of its own, by process
     * @param losses losses of its own, by process and cause
     * @param gelcoatSprayed whether gelcoat is sprayed, which loses more styrene
     * @param evaporation share of styrenic resin that evaporates, of its own, by process
     * @param labour rate and times
     * @param consumables what is used up
     * @param stiffness how ply stiffness is reckoned
     * @param strength how ply strength is reckoned
     * @throws IllegalArgumentException if a figure is out of its range
     */
    public Workshop(
            OptionalDouble temperature,
            List<ContentRule> contentRules,
            Map<Process, Figure> voids,
            Map<Process, Map<Loss, Figure>> losses,
            boolean gelcoatSprayed,
            Map<Process, Figure> evaporation,
            Labour labour,
            Consumables consumables,
            StiffnessBasis stiffness,
            StrengthBasis strength) {
        this(
                temperature,
                contentRules,
                voids,
                losses,
                gelcoatSprayed,
                evaporation,
                labour,
                consumables,
                stiffness,
                strength,
                ShopFloor.USUAL);
    }

    /**
     * Void volume fraction of a process.
     *
     * @param process the process
     * @return V<sub>v</sub> with its source
     */
    public Figure voids(Process process) {
        return voids.getOrDefault(process, USUAL_VOIDS.get(process));
    }

    /**
     * What a process loses by a cause.
     *
     * @param process the process
     * @param loss the cause
     * @return a fraction, kg/m² or kg, by {@link Loss#dimension()}, with its source
     */
    public Figure loss(Process process, Loss loss) {
        Figure own = losses.getOrDefault(process, Map.of()).get(loss);
        return own != null ? own : USUAL_LOSSES.get(process).get(loss);
    }

    /**
     * Share of a laminating resin that evaporates as it is laid: nothing under an infusion bag. Paste in a bed is
     * covered by the core at once and loses none.
     *
     * @param process the process
     * @param resin the resin
     * @return the share of the mass applied
     */
    public double evaporation(Process process, Resin resin) {
        Figure own = evaporation.get(process);
        if (own != null) {
            return resin.family().isStyrenic() ? own.value() : 0;
        }
        return process == Process.INFUSION ? 0 : Evaporation.byHand(resin);
    }

    /**
     * Share of a coating that evaporates as it is applied.
     *
     * @param coating the gelcoat, flowcoat, barrier coat or paint
     * @return the share of the mass applied
     */
    public double coatingEvaporation(Resin coating) {
        if (coating.use() == Resin.Use.PAINT) {
            return Evaporation.ofSolvent(coating);
        }
        return gelcoatSprayed ? Evaporation.bySpray(coating) : Evaporation.byHand(coating);
    }

    /**
     * The workshop's own content for a ply.
     *
     * @param layUp how it is laid
     * @param ply the ply
     * @return the content, empty where no rule of the workshop holds
     */
    public Optional<FibreContent> contentFor(LayUp layUp, FibrePly ply) {
        for (ContentRule rule : contentRules) {
            if (rule.holdsFor(layUp, ply)) {
                return Optional.of(rule.content());
            }
        }
        return Optional.empty();
    }

    /**
     * This workshop with other labour.
     *
     * @param own rate and times
     * @return the workshop
     */
    public Workshop withLabour(Labour own) {
        Draft draft = new Draft(this);
        draft.labour = own;
        return draft.workshop();
    }

    /**
     * This workshop with losses of its own.
     *
     * @param own losses by process and cause; those not named stay usual
     * @return the workshop
     */
    public Workshop withLosses(Map<Process, Map<Loss, Figure>> own) {
        Draft draft = new Draft(this);
        draft.losses = own;
        return draft.workshop();
    }

    /**
     * This workshop with voids of its own.
     *
     * @param own void volume fraction by process
     * @return the workshop
     */
    public Workshop withVoids(Map<Process, Figure> own) {
        Draft draft = new Draft(this);
        draft.voids = own;
        return draft.workshop();
    }

    /**
     * This workshop with fibre contents of its own.
     *
     * @param own rules; the first that holds for a ply wins
     * @return the workshop
     */
    public Workshop withContentRules(List<ContentRule> own) {
        Draft draft = new Draft(this);
        draft.contentRules = own;
        return draft.workshop();
    }

    /**
     * This workshop with other consumables.
     *
     * @param own what is used up
     * @return the workshop
     */
    public Workshop withConsumables(Consumables own) {
        Draft draft = new Draft(this);
        draft.consumables = own;
        return draft.workshop();
    }

    /**
     * This workshop with another way to reckon stiffness.
     *
     * @param own the basis
     * @return the workshop
     */
    public Workshop withStiffness(StiffnessBasis own) {
        Draft draft = new Draft(this);
        draft.stiffness = own;
        return draft.workshop();
    }

    /**
     * This workshop with another way to reckon strength.
     *
     * @param own the basis
     * @return the workshop
     */
    public Workshop withStrength(StrengthBasis own) {
        Draft draft = new Draft(this);
        draft.strength = own;
        return draft.workshop();
    }

    /**
     * This workshop with other hands, scales and hours.
     *
     * @param own the shop floor
     * @return the workshop
     */
    public Workshop withShopFloor(ShopFloor own) {
        Draft draft = new Draft(this);
        draft.shopFloor = own;
        return draft.workshop();
    }

    /**
     * The temperature to plan by; a plan says where it is not the workshop's own.
     *
     * @return its own, else {@link #USUAL_TEMPERATURE} (K)
     */
    public double plannedTemperature() {
        return temperature.orElse(USUAL_TEMPERATURE);
    }

    /**
     * This workshop at another temperature.
     *
     * @param kelvin the temperature (K)
     * @return the workshop
     * @throws IllegalArgumentException if it is not above 0 K
     */
    public Workshop withTemperature(double kelvin) {
        Draft draft = new Draft(this);
        draft.temperature = OptionalDouble.of(kelvin);
        return draft.workshop();
    }

    private static void checkTemperature(double kelvin) {
        if (!(kelvin > 0) || !Double.isFinite(kelvin)) {
            throw new IllegalArgumentException("a temperature must be above 0 K, not " + kelvin);
        }
    }

    private static void checkShares(String what, Collection<Figure> figures) {
        for (Figure figure : figures) {
            checkShare(what, figure);
        }
    }

    private static void checkShare(String what, Figure figure) {
        if (!(figure.value() >= 0 && figure.value() < MOST_SHARE)) {
            throw new IllegalArgumentException(
                    what + " must be from 0 to below " + MOST_SHARE + ", not " + figure.value());
        }
    }

    private static void checkLoss(Loss loss, Figure figure) {
        boolean isShare = loss.dimension() == Dimension.FRACTION;
        if (figure.value() < 0 || isShare && figure.value() > 1) {
            throw new IllegalArgumentException(
                    "loss of " + loss.key() + " must be from 0" + (isShare ? " to 1" : "") + ", not " + figure.value());
        }
    }

    private static <V> Map<Process, V> sorted(Map<Process, V> byProcess) {
        EnumMap<Process, V> copy = new EnumMap<>(Process.class);
        copy.putAll(byProcess);
        return Collections.unmodifiableMap(copy);
    }

    private static Map<Process, Map<Loss, Figure>> sortedLosses(Map<Process, Map<Loss, Figure>> byProcess) {
        EnumMap<Process, Map<Loss, Figure>> copy = new EnumMap<>(Process.class);
        for (Map.Entry<Process, Map<Loss, Figure>> own : byProcess.entrySet()) {
            EnumMap<Loss, Figure> sorted = new EnumMap<>(Loss.class);
            sorted.putAll(own.getValue());
            copy.put(own.getKey(), Collections.unmodifiableMap(sorted));
        }
        return Collections.unmodifiableMap(copy);
    }

    private static Map<Process, Map<Loss, Figure>> usualLosses() {
        EnumMap<Process, Map<Loss, Figure>> byProcess = new EnumMap<>(Process.class);
        for (Process process : Process.values()) {
            byProcess.put(process, Loss.usual(process));
        }
        return byProcess;
    }

    /** A workshop while one of its values is exchanged. */
    private static final class Draft {
        private final Workshop from;
        private OptionalDouble temperature;
        private List<ContentRule> contentRules;
        private Map<Process, Figure> voids;
        private Map<Process, Map<Loss, Figure>> losses;
        private Labour labour;
        private Consumables consumables;
        private StiffnessBasis stiffness;
        private StrengthBasis strength;
        private ShopFloor shopFloor;

        Draft(Workshop from) {
            this.from = from;
            temperature = from.temperature;
            contentRules = from.contentRules;
            voids = from.voids;
            losses = from.losses;
            labour = from.labour;
            consumables = from.consumables;
            stiffness = from.stiffness;
            strength = from.strength;
            shopFloor = from.shopFloor;
        }

        Workshop workshop() {
            return new Workshop(
                    temperature,
                    contentRules,
                    voids,
                    losses,
                    from.gelcoatSprayed,
                    from.evaporation,
                    labour,
                    consumables,
                    stiffness,
                    strength,
                    shopFloor);
        }
    }
}
