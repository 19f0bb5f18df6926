package laminate.estimate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import laminate.material.Fibre;
import laminate.material.Resin;
import laminate.material.Status;

/** The usual cautions of health, fire and strength, as far as the part calls for them. */
public final class SafetyCautions {
    private static final String MEMORY = "from memory";

    private static final Caution PEROXIDE = caution(
            "Peroxide burns eyes: goggles on. Never mix it directly with accelerator, which explodes, nor thin it in acetone;"
                    + " keep it cool, in its own container, apart from accelerator.",
            "Practical Action, Fibreglass boat building; SPI AS-109",
            Status.PRINTED);
    private static final Caution STYRENE = caution(
            "Styrene harms hearing and nerves and burns (flash point 31 °C): extract the air, keep under the exposure limit"
                    + " that applies where you work, no flame, no smoking.",
            "HSE, Styrene control in contact moulding; flash point from memory",
            Status.PRINTED);
    private static final Caution EPOXY = caution(
            "Epoxy and its hardener sensitise the skin for life: nitrile gloves, covered arms, no solvent on skin.",
            MEMORY,
            Status.MEMORY);
    private static final Caution ISOCYANATE = caution(
            "Two-part polyurethane paint holds isocyanate: do not spray it without air-fed breathing protection.",
            MEMORY,
            Status.MEMORY);
    private static final Caution EXOTHERM = caution(
            "Mixed resin heats as it gels: small pots, spread what is left over, and stand waste in water until cold.",
            MEMORY,
            Status.MEMORY);
    private static final String DUST =
            "Dust from trimming and grinding: extraction, dust mask of class P3, goggles, covered skin.";
    private static final String CARBON_DUST = " Carbon dust conducts: keep it out of electrics.";
    private static final Caution STRENGTH = caution(
            "Estimates for planning and teaching. Where a part carries people or keeps water out, the code that applies and a"
                    + " licensed designer or surveyor decide, not this sheet.",
            "common practice, no source",
            Status.COMMON_PRACTICE);

    private SafetyCautions() {}

    static List<Caution> of(PartEstimate estimate) {
        List<Resin> resins = new ArrayList<>();
        boolean peroxide = false;
        for (ResinQuantity mixed : estimate.quantities().resins()) {
            resins.add(mixed.resin());
            peroxide |= !mixed.dose().agent().isHardener();
        }
        List<Caution> cautions = new ArrayList<>(ofMixing(resins, peroxide));
        if (!resins.isEmpty()) {
            boolean carbon = Cautions.holds(estimate, Fibre.Type.CARBON);
            cautions.add(caution(carbon ? DUST + CARBON_DUST : DUST, MEMORY, Status.MEMORY));
        }
        cautions.add(STRENGTH);
        return cautions;
    }

    /**
     * What to mind where resins are mixed.
     *
     * @param resins the resins
     * @param peroxide whether one of them is cured by a peroxide
     * @return the cautions of peroxide, styrene, epoxy, isocyanate and heat that they call for
     */
    public static List<Caution> ofMixing(Collection<Resin> resins, boolean peroxide) {
        List<Caution> cautions = new ArrayList<>();
        if (peroxide) {
            cautions.add(PEROXIDE);
        }
        Set<Resin.Family> families = EnumSet.noneOf(Resin.Family.class);
        for (Resin resin : resins) {
            families.add(resin.family());
        }
        if (families.contains(Resin.Family.POLYESTER) || families.contains(Resin.Family.VINYLESTER)) {
            cautions.add(STYRENE);
        }
        if (families.contains(Resin.Family.EPOXY)) {
            cautions.add(EPOXY);
        }
        if (families.contains(Resin.Family.POLYURETHANE)) {
            cautions.add(ISOCYANATE);
        }
        if (!resins.isEmpty()) {
            cautions.add(EXOTHERM);
        }
        return cautions;
    }

    private static Caution caution(String text, String source, Status status) {
        return new Caution(Caution.Kind.SAFETY, text, source, status);
    }
}
