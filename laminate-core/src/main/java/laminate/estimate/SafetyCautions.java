package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.material.Fibre;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.ReinforcementLayer;

/** The usual cautions of health, fire and strength, as far as the part calls for them. */
final class SafetyCautions {

    private SafetyCautions() {}

    static List<Caution> of(PartEstimate estimate) {
        List<Caution> cautions = new ArrayList<>();
        List<ResinQuantity> resins = estimate.quantities().resins();
        if (resins.stream().anyMatch(resin -> !resin.dose().agent().isHardener())) {
            add(
                    cautions,
                    "Peroxide burns eyes: goggles on. Never mix it directly with accelerator, which explodes, nor thin it in"
                            + " acetone; keep it cool, in its own container, apart from accelerator.",
                    "Practical Action, Fibreglass boat building; SPI AS-109");
        }
        if (resins.stream().anyMatch(resin -> resin.resin().family().isStyrenic())) {
            add(
                    cautions,
                    "Styrene harms hearing and nerves and burns (flash point 31 °C): extract the air, keep under the exposure"
                            + " limit that applies where you work, no flame, no smoking.",
                    "HSE, Styrene control in contact moulding; flash point from memory");
        }
        if (resins.stream().anyMatch(resin -> resin.resin().family() == Resin.Family.EPOXY)) {
            add(
                    cautions,
                    "Epoxy and its hardener sensitise the skin for life: nitrile gloves, covered arms, no solvent on skin.",
                    "from memory");
        }
        if (resins.stream().anyMatch(resin -> resin.resin().family() == Resin.Family.POLYURETHANE)) {
            add(
                    cautions,
                    "Two-part polyurethane paint holds isocyanate: do not spray it without air-fed breathing protection.",
                    "from memory");
        }
        if (!resins.isEmpty()) {
            add(
                    cautions,
                    "Mixed resin heats as it gels: small pots, spread what is left over, and stand waste in water until cold.",
                    "from memory");
            add(
                    cautions,
                    "Dust from trimming and grinding: extraction, dust mask of class P3, goggles, covered skin."
                            + (hasCarbon(estimate) ? " Carbon dust conducts: keep it out of electrics." : ""),
                    "from memory");
        }
        add(
                cautions,
                "Estimates for planning and teaching. Where a part carries people or keeps water out, the code that applies and"
                        + " a licensed designer or surveyor decide, not this sheet.",
                "common practice, no source");
        return cautions;
    }

    private static boolean hasCarbon(PartEstimate estimate) {
        return estimate.zones().stream()
                .flatMap(zone -> zone.zone().layers().stream())
                .filter(ReinforcementLayer.class::isInstance)
                .flatMap(layer -> ((ReinforcementLayer) layer).plies().stream())
                .anyMatch(ply -> ply.fibre().type() == Fibre.Type.CARBON);
    }

    private static void add(List<Caution> cautions, String text, String source) {
        Status status = source.equals("from memory")
                ? Status.MEMORY
                : source.startsWith("common") ? Status.COMMON_PRACTICE : Status.PRINTED;
        cautions.add(new Caution(Caution.Kind.SAFETY, text, source, status));
    }
}
