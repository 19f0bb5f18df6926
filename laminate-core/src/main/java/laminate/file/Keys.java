package laminate.file;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The keys that each kind of mapping may hold: the vocabulary of the files in one place. The names of the constants are
 * those of the definitions in the JSON Schema, in capitals. Where the keys are words of the user's own (names of schedules
 * and operations) or of an enumeration (processes), there is no entry.
 */
enum Keys {
    PART(
            "part file",
            "part count workshop prices materials process resin catalyst hardener fibre-content surface schedules"
                    + " alternatives zones panels beams limits infusion tooling items measured"),
    ZONE(
            "zone",
            "name area outline count process resin catalyst hardener fibre-content surface fibre-mass-fraction"
                    + " fibre-volume-fraction resin-ratio trim mirror coatings layers load-cases limits infusion"
                    + " measured"),
    OUTLINE("outline", "length width shape-factor"),
    TRIM("trim", "edge width"),
    AGENT("agent", "id amount"),
    REINFORCEMENT_LAYER(
            "reinforcement layer",
            "reinforcement angle turned times fibre-mass-fraction fibre-volume-fraction resin-ratio thickness"
                    + " process resin catalyst hardener"),
    CORE_LAYER("core layer", "core thickness finish grooves angle bed bed-thickness process resin catalyst hardener"),
    BULKER_LAYER("bulker layer", "bulker times process resin catalyst hardener"),
    LAMINA_LAYER("lamina layer", "lamina thickness angle times"),
    STAGE("stage", "stage process resin catalyst hardener layers"),
    LAYER_GROUP("group of layers", "times layers"),
    SCHEDULE_USE("use of a schedule", "schedule times"),
    LAMINA("lamina", "E1 E2 G12 nu12 density G13 G23 alpha1 alpha2 beta1 beta2 Xt Xc Yt Yc S S23 strain-limits"),
    STRAIN_LIMITS("set of strain limits", "e1t e1c e2t e2c g12"),
    GROOVES("set of grooves", "width depth pitch faces ways"),
    COATING("coating", "gelcoat barrier flowcoat paint wet-film thickness areal-weight coats catalyst hardener"),
    ITEM("item", "name count mass price"),
    MEASURED("set of measurements", "mass thickness"),
    LOAD_CASE(
            "load case",
            "name Nx Ny Nxy Mx My Mxy Qx Qy strain-x strain-y strain-xy curvature-x curvature-y curvature-xy"
                    + " temperature-change moisture"),
    PANEL(
            "panel",
            "name zone length width edges in-plane-edges pressure head water density upright flat patch edge-loads"
                    + " limits"),
    PATCH("patch load", "force pressure length width x y"),
    EDGE_LOADS("set of edge loads", "Nx Ny Nxy"),
    BEAM("beam", "name zone direction span width loading force line-load load-span bearing-length limits"),
    LIMITS("set of limits", "deflection reserve-factor thickness mass"),
    INFUSION(
            "infusion",
            "feed flow-length feed-radius vacuum driving-pressure rise viscosity viscosity-time porosity permeability"
                    + " permeability-at strip-test cross-permeability through-permeability compaction segments mesh hose"
                    + " spiral catch-pot margin leak"),
    STRIP_TEST("strip test", "length time viscosity vacuum driving-pressure porosity"),
    COMPACTION("compaction", "exponent least-pressure"),
    SEGMENT("segment", "length permeability porosity"),
    MESH("flow mesh", "thickness permeability porosity"),
    HOSE("hose", "bore length"),
    LEAK("leak test", "drop time"),
    TOOLING("statement of tooling", "process part price life planned-pulls set-up set-up-price"),

    PROJECT("project file", "project workshop prices materials mouldings tooling"),
    MOULDING("moulding of a project", "part count made-on"),
    PROJECT_TOOL(
            "mould or plug of a project", "name part price life planned-pulls in-hand set-up set-up-price made-on"),

    WORKSHOP(
            "workshop file",
            "temperature fibre-content surface loss voids gelcoat-application evaporation labour consumables"
                    + " pricing quotation mixing working-day styrene-limit micromechanics knock-down strength"),
    CONTENT_RULE(
            "fibre content of a workshop",
            "process kind fibre resin fibre-mass-fraction fibre-volume-fraction resin-ratio"),
    LOSS("loss of a process", "resin reinforcement core coating laps bag mesh lines bucket"),
    LABOUR("statement of labour", "rate crew paid learning cure operations"),
    LEARNING("statement of learning", "rate counted-on"),
    PRICING("statement of pricing", "rejects overhead contingency margin mark-up discount tax"),
    OVERHEAD("overhead", "rate on"),
    TAX("tax", "name rate"),
    QUOTATION("quotation", "yard scope exclusions terms valid-for"),
    MIXING("statement of mixing", "usable-share resin-scale agent-scale pump-stroke largest-mix mixing-time"),
    WORKING_DAY("working day", "start length"),
    CONSUMABLE_USE("use of a consumable", "material amount per"),
    KNOCK_DOWN("knock-down", "mat woven"),

    PRICES("price file", "currency date prices"),
    PRICE("price", "material price roll packs minimum lead-time shelf-life"),
    PACK("pack", "pack amount width length thickness price minimum"),
    ROLL("roll", "width length mass"),

    STOCK("stock file", "stock"),
    STOCK_ITEM("entry of the stock", "material amount thickness use-by"),

    MATERIALS("material file", "materials"),
    FIBRE(
            "fibre",
            "material kind name type density E1 E2 G12 nu12 alpha1 alpha2 tensile-strength" + " compressive-strength"),
    RESIN(
            "resin",
            "material kind name family use waxed density-liquid density-cured E nu alpha tensile-strength"
                    + " compressive-strength elongation shrinkage styrene-content viscosity stage-thickness cure gel-time"),
    CURING_AGENT("catalyst or hardener", "material kind name density"),
    REINFORCEMENT(
            "reinforcement",
            "material kind name form areal-weight binder fibre plies warp-share roll-width roll-length dry-thickness"
                    + " measured"),
    CORE(
            "core",
            "material kind name type open-cell density E1 E2 G12 nu12 Ez G13 G23 alpha compressive-strength"
                    + " shear-strength tensile-strength cell-size uptake-hand uptake-infusion"),
    BULKER(
            "bulker",
            "material kind name areal-weight thickness density E nu alpha tensile-strength compressive-strength"
                    + " shear-strength roll-width roll-length"),
    CONSUMABLE("consumable", "material kind name sold-by density areal-weight roll-width roll-length"),
    FIGURE("figure", "value source status"),
    CURE("cure", "agent amount from to"),
    GEL_TIME("gel time", "agent amount times source status"),
    MAKE_UP_PLY("ply of a reinforcement", "fibre form angle areal-weight warp-share"),
    MEASURED_PLY(
            "set of measured ply properties",
            "fibre-volume-fraction E1 E2 G12 nu12 alpha1 alpha2 G13 G23 Xt Xc Yt Yc S S23 strain-limits"),
    MEASURED_STRAINS("set of measured strain limits", "e1t e1c e2t e2c g12");

    private final String kind;
    private final Set<String> names;

    Keys(String kind, String names) {
        this.kind = kind;
        this.names = Collections.unmodifiableSet(new LinkedHashSet<>(List.of(names.split(" "))));
    }

    /** What such a mapping is called in a message, without an article: "zone". */
    String kind() {
        return kind;
    }

    /** The accepted keys in the order in which they are best written. */
    Set<String> names() {
        return names;
    }

    /** The key that such a mapping usually begins with. */
    String first() {
        return names.iterator().next();
    }

    /** The kind with its article: "a zone", "an item". */
    String aKind() {
        return ("aeiou".indexOf(kind.charAt(0)) < 0 ? "a " : "an ") + kind;
    }
}
