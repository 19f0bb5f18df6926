package laminate.material;

/** Something that is bought and named by an id in part files and price lists. */
public sealed interface Material permits Fibre, Resin, Agent, Reinforcement, Core, Bulker, Consumable {

    /**
     * The name in files.
     *
     * @return the id, such as {@code mat-450}
     */
    String id();

    /**
     * What the material is, in words.
     *
     * @return one line
     */
    String name();

    /**
     * The figures with their sources.
     *
     * @return the figures
     */
    Figures figures();

    /**
     * What sort of material this is.
     *
     * @return the kind
     */
    MaterialKind kind();
}
