package laminate.material;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import laminate.unit.Dimension;

/** What a figure of a material measures: its key in files, and its dimension. */
public enum Property {
    /** Density (kg/m³). */
    DENSITY("density", Dimension.DENSITY),
    /** Density of the liquid, before cure (kg/m³). */
    DENSITY_LIQUID("density-liquid", Dimension.DENSITY),
    /** Density of the cured solid (kg/m³). */
    DENSITY_CURED("density-cured", Dimension.DENSITY),
    /** Young's modulus of an isotropic material (Pa). */
    E("E", Dimension.PRESSURE),
    /** Poisson's ratio of an isotropic material. */
    NU("nu"),
    /** Young's modulus along the fibre or the length of a sheet (Pa). */
    E1("E1", Dimension.PRESSURE),
    /** Young's modulus across the fibre or the length of a sheet (Pa). */
    E2("E2", Dimension.PRESSURE),
    /** Young's modulus through the thickness (Pa). */
    EZ("Ez", Dimension.PRESSURE),
    /** In-plane shear modulus (Pa). */
    G12("G12", Dimension.PRESSURE),
    /** Transverse shear modulus on the 1 face (Pa). */
    G13("G13", Dimension.PRESSURE),
    /** Transverse shear modulus on the 2 face (Pa). */
    G23("G23", Dimension.PRESSURE),
    /** Major Poisson's ratio in plane. */
    NU12("nu12"),
    /** Coefficient of linear thermal expansion of an isotropic material (1/K). */
    ALPHA("alpha", Dimension.EXPANSION),
    /** Coefficient of linear thermal expansion along the fibre (1/K). */
    ALPHA1("alpha1", Dimension.EXPANSION),
    /** Coefficient of linear thermal expansion across the fibre (1/K). */
    ALPHA2("alpha2", Dimension.EXPANSION),
    /** Tensile strength (Pa). */
    TENSILE_STRENGTH("tensile-strength", Dimension.PRESSURE),
    /** Compressive strength (Pa). */
    COMPRESSIVE_STRENGTH("compressive-strength", Dimension.PRESSURE),
    /** Shear strength (Pa). */
    SHEAR_STRENGTH("shear-strength", Dimension.PRESSURE),
    /** Tensile strength of a ply along direction 1 (Pa). */
    XT("Xt", Dimension.PRESSURE),
    /** Compressive strength of a ply along direction 1 (Pa). */
    XC("Xc", Dimension.PRESSURE),
    /** Tensile strength of a ply along direction 2 (Pa). */
    YT("Yt", Dimension.PRESSURE),
    /** Compressive strength of a ply along direction 2 (Pa). */
    YC("Yc", Dimension.PRESSURE),
    /** In-plane shear strength of a ply (Pa). */
    S("S", Dimension.PRESSURE),
    /** Shear strength of a ply across its fibres (Pa). */
    S23("S23", Dimension.PRESSURE),
    /** Strain at which a ply breaks in tension along direction 1, a fraction. */
    STRAIN_1T("e1t", Dimension.FRACTION),
    /** Strain at which a ply breaks in compression along direction 1, a fraction. */
    STRAIN_1C("e1c", Dimension.FRACTION),
    /** Strain at which a ply breaks in tension along direction 2, a fraction. */
    STRAIN_2T("e2t", Dimension.FRACTION),
    /** Strain at which a ply breaks in compression along direction 2, a fraction. */
    STRAIN_2C("e2c", Dimension.FRACTION),
    /** Engineering shear strain at which a ply breaks, a fraction. */
    STRAIN_12("g12", Dimension.FRACTION),
    /** Elongation at break in tension, a fraction. */
    ELONGATION("elongation", Dimension.FRACTION),
    /** Shrinkage of the volume on cure, a fraction. */
    SHRINKAGE("shrinkage", Dimension.FRACTION),
    /** Styrene in the liquid resin, a fraction of its mass. */
    STYRENE_CONTENT("styrene-content", Dimension.FRACTION),
    /** Viscosity of the liquid at workshop temperature (Pa·s). */
    VISCOSITY("viscosity", Dimension.VISCOSITY),
    /** Thickest laminate that may be laid wet in one stage (m). */
    STAGE_THICKNESS("stage-thickness", Dimension.LENGTH),
    /** Mass of the dry material per area (kg/m²). */
    AREAL_WEIGHT("areal-weight", Dimension.AREAL_MASS),
    /** Thickness as moulded (m). */
    THICKNESS("thickness", Dimension.LENGTH),
    /** Thickness of the dry material, not compressed (m). */
    DRY_THICKNESS("dry-thickness", Dimension.LENGTH),
    /** Width of the roll as sold (m). */
    ROLL_WIDTH("roll-width", Dimension.LENGTH),
    /** Length of the roll as sold (m). */
    ROLL_LENGTH("roll-length", Dimension.LENGTH),
    /** Share of a woven reinforcement's mass that runs with the warp, a fraction. */
    WARP_SHARE("warp-share", Dimension.FRACTION),
    /** Share of the volume that is fibre. */
    FIBRE_VOLUME_FRACTION("fibre-volume-fraction", Dimension.FRACTION),
    /** Width across the flats of a honeycomb's cells (m). */
    CELL_SIZE("cell-size", Dimension.LENGTH),
    /** Resin that one plain face of a core takes up when wetted out by hand (kg/m²). */
    UPTAKE_HAND("uptake-hand", Dimension.AREAL_MASS),
    /** Resin that one plain face of a core takes up when infused (kg/m²). */
    UPTAKE_INFUSION("uptake-infusion", Dimension.AREAL_MASS);

    private final String key;
    private final Dimension dimension;

    Property(String key) {
        this(key, null);
    }

    Property(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    /**
     * The key of this property in a material file.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * The dimension of this property.
     *
     * @return the dimension, empty for a bare number
     */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(dimension);
    }

    /**
     * A set in the order of this enumeration, so that messages do not change from run to run.
     *
     * @param first a property
     * @param rest more of them
     * @return the set, which cannot be changed
     */
    static Set<Property> setOf(Property first, Property... rest) {
        return Collections.unmodifiableSet(EnumSet.of(first, rest));
    }
}
