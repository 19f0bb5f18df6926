package laminate.order;

/** What an order is grouped by, in the order in which it is listed. */
public enum Group {
    /** Mats, cloths and fabrics. */
    REINFORCEMENT("reinforcement"),
    /** Cores and bulking mat. */
    CORE("cores"),
    /** Resins, gelcoats, flowcoats, paints and pastes. */
    RESIN("resins"),
    /** Catalysts and hardeners. */
    AGENT("catalysts and hardeners"),
    /** What the work uses up. */
    CONSUMABLE("consumables"),
    /** Bought-in items. */
    ITEM("items");

    private final String word;

    Group(String word) {
        this.word = word;
    }

    /**
     * The group in words.
     *
     * @return the words
     */
    public String word() {
        return word;
    }

    /** The group of a material of a kind, as estimates call it. */
    static Group of(String kind) {
        return switch (kind) {
            case "reinforcement" -> REINFORCEMENT;
            case "core", "bulking mat" -> CORE;
            case "catalyst", "hardener" -> AGENT;
            case "consumable" -> CONSUMABLE;
            default -> RESIN;
        };
    }
}
