package laminate.material;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import laminate.unit.Significant;

/**
 * A resin, and what is applied like one: gelcoat, flowcoat, barrier coat, bonding paste, paint.
 *
 * <p>A peroxide-cured resin is its own matrix: the catalyst does not count as part of it. A two-part resin's matrix is
 * resin and hardener in their ratio; its cured density and moduli are those of the mixture.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param family the chemistry
 * @param use what it is for
 * @param waxed whether it holds wax, which rises to the surface and must be ground off before anything bonds to it
 * @param figures densities, moduli, expansion, shrinkage, styrene content, viscosity
 * @param cures the agents that cure it, each with its default dose and its allowed range; the first is the default
 * @param gelPoints measured gel times
 */
public record Resin(
        String id,
        String name,
        Family family,
        Use use,
        boolean waxed,
        Figures figures,
        List<Cure> cures,
        List<GelPoint> gelPoints)
        implements Material {

    /** Properties that every resin has. */
    public static final Set<Property> REQUIRED =
            Property.setOf(Property.DENSITY_LIQUID, Property.DENSITY_CURED, Property.E, Property.NU, Property.ALPHA);

    /** Properties that a resin may have. */
    public static final Set<Property> OPTIONAL = Property.setOf(
            Property.TENSILE_STRENGTH,
            Property.COMPRESSIVE_STRENGTH,
            Property.ELONGATION,
            Property.SHRINKAGE,
            Property.STYRENE_CONTENT,
            Property.VISCOSITY,
            Property.STAGE_THICKNESS);

    /** The chemistry of a resin. */
    public enum Family {
        /** Unsaturated polyester, cured by peroxide. */
        POLYESTER("polyester"),
        /** Vinylester, cured by peroxide. */
        VINYLESTER("vinylester"),
        /** Epoxy, two-part. */
        EPOXY("epoxy"),
        /** Polyurethane, two-part. */
        POLYURETHANE("polyurethane");

        private final String word;

        Family(String word) {
            this.word = word;
        }

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return word;
        }

        /**
         * Whether the resin is thinned and cross-linked by styrene.
         *
         * @return true for polyester and vinylester
         */
        public boolean isStyrenic() {
            return this == POLYESTER || this == VINYLESTER;
        }
    }

    /** What a resin is for. */
    public enum Use {
        /** Wetting out by hand. */
        LAMINATING("laminating"),
        /** Infusion under vacuum. */
        INFUSION("infusion"),
        /** The outer face, applied to the mould. */
        GELCOAT("gelcoat"),
        /** A waxed inner face. */
        FLOWCOAT("flowcoat"),
        /** A coat between gelcoat and laminate. */
        BARRIER("barrier"),
        /** Bedding cores and bonding mouldings. */
        BONDING_PASTE("bonding paste"),
        /** Paint. */
        PAINT("paint");

        private final String word;

        Use(String word) {
            this.word = word;
        }

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return word;
        }

        /**
         * Whether it wets out reinforcement.
         *
         * @return true for laminating and infusion resins
         */
        public boolean isLaminating() {
            return this == LAMINATING || this == INFUSION;
        }

        /**
         * Whether it is applied as a coat, and takes its own dose rather than the part's.
         *
         * @return true for gelcoat, barrier, flowcoat and paint
         */
        public boolean isCoating() {
            return this == GELCOAT || this == FLOWCOAT || this == BARRIER || this == PAINT;
        }
    }

    /**
     * An agent that cures the resin.
     *
     * @param agent the id of the catalyst or hardener
     * @param amount the usual dose (kg per kg of liquid resin)
     * @param from the least dose allowed (kg/kg)
     * @param to the greatest dose allowed (kg/kg)
     */
    public record Cure(String agent, Figure amount, Figure from, Figure to) {
        /**
         * Checks the range.
         *
         * @throws IllegalArgumentException if the doses are not above zero and in order
         */
        public Cure {
            if (from.value() <= 0 || amount.value() < from.value() || to.value() < amount.value()) {
                throw new IllegalArgumentException(
                        "the doses of " + agent + " must rise from least to usual to greatest, not " + from.value()
                                + ", " + amount.value() + ", " + to.value());
            }
        }
    }

    /**
     * A gel time.
     *
     * @param agent the id of the catalyst or hardener
     * @param amount its dose (kg per kg of liquid resin)
     * @param temperature the temperature (K)
     * @param time the gel time (s) with its source
     */
    public record GelPoint(String agent, double amount, double temperature, Figure time) {
        /**
         * Checks the point.
         *
         * @throws IllegalArgumentException if a value is not above zero
         */
        public GelPoint {
            if (!(amount > 0 && temperature > 0 && time.value() > 0)) {
                throw new IllegalArgumentException("dose, temperature and gel time must be above zero, not " + amount
                        + ", " + temperature + ", " + time.value());
            }
        }
    }

    /**
     * Checks the resin.
     *
     * @throws IllegalArgumentException if a figure is missing, out of place or impossible, no agent cures it, or a gel
     *     time is given twice
     */
    public Resin {
        figures.check(id, REQUIRED, OPTIONAL);
        figures.checkPositive(id, Property.DENSITY_LIQUID, Property.DENSITY_CURED, Property.E);
        figures.checkPositive(
                id,
                Property.STAGE_THICKNESS,
                Property.VISCOSITY,
                Property.TENSILE_STRENGTH,
                Property.COMPRESSIVE_STRENGTH,
                Property.ELONGATION);
        figures.checkRange(id, 0, 1, Property.STYRENE_CONTENT, Property.SHRINKAGE);
        figures.checkRange(id, -1, 0.5, Property.NU);
        cures = List.copyOf(cures);
        gelPoints = List.copyOf(gelPoints);
        if (cures.isEmpty()) {
            throw new IllegalArgumentException(id + " names no agent that cures it");
        }
        checkOnce(id, gelPoints);
    }

    private static void checkOnce(String id, List<GelPoint> points) {
        Set<List<Object>> seen = new HashSet<>();
        for (GelPoint point : points) {
            if (!seen.add(List.of(point.agent(), point.amount(), point.temperature()))) {
                throw new IllegalArgumentException(id + " has two gel times with "
                        + Significant.format(point.amount() * 100, 4) + " % of " + point.agent() + " at "
                        + Significant.format(point.temperature() - 273.15, 4) + " °C");
            }
        }
    }

    /**
     * Density of the liquid.
     *
     * @return ρ (kg/m³)
     */
    public double densityLiquid() {
        return figures.value(Property.DENSITY_LIQUID);
    }

    /**
     * Density of the cured matrix.
     *
     * @return ρr (kg/m³)
     */
    public double densityCured() {
        return figures.value(Property.DENSITY_CURED);
    }

    /**
     * Styrene in the liquid.
     *
     * @return the fraction of mass, 0 where none is stated
     */
    public double styreneContent() {
        return figures.valueOf(Property.STYRENE_CONTENT).orElse(0);
    }

    /**
     * Thickest laminate that may be laid wet in one stage.
     *
     * @return the thickness (m), empty if not stated
     */
    public OptionalDouble stageThickness() {
        return figures.valueOf(Property.STAGE_THICKNESS);
    }

    /**
     * The dose that the resin takes where none is stated.
     *
     * @return the first of {@link #cures()}
     */
    public Cure defaultCure() {
        return cures.get(0);
    }

    /**
     * How an agent cures this resin.
     *
     * @param agent the id of the agent
     * @return its doses, empty if it does not cure this resin
     */
    public Optional<Cure> cureBy(String agent) {
        for (Cure cure : cures) {
            if (cure.agent().equals(agent)) {
                return Optional.of(cure);
            }
        }
        return Optional.empty();
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.RESIN;
    }
}
