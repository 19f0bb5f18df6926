package laminate.print.estimate;

import laminate.estimate.LaidCoating;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.print.JsonWriter;
import laminate.print.WorkedJson;
import laminate.theory.Deformation;
import laminate.theory.EngineeringConstants;
import laminate.theory.Laminate;

/** A zone in JSON: its totals, coatings, layers and stiffness. */
final class ZoneJson {
    private ZoneJson() {}

    static void print(ZoneEstimate estimate, JsonWriter json) {
        json.object()
                .field("name", estimate.zone().name())
                .field("count", estimate.zone().count())
                .field("area_m2", estimate.zone().area());
        EstimateJson.printRange("thickness", "m", estimate.thickness(), json);
        EstimateJson.printRange("thickness_with_coatings", "m", estimate.thicknessWithCoatings(), json);
        EstimateJson.printRange("mass_per_area", "kg_m2", estimate.massPerArea(), json);
        if (estimate.fibreMassFraction() > 0) {
            json.field("fibre_mass_fraction", estimate.fibreMassFraction())
                    .field("fibre_volume_fraction", estimate.fibreVolumeFraction())
                    .field("void_fraction", estimate.voidFraction());
        }
        json.key("coatings").array();
        estimate.coatings().forEach(coating -> print(coating, json));
        json.end().key("layers").array();
        estimate.layers().forEach(layer -> print(layer, json));
        json.end();
        printStiffness(estimate.laminate(), json);
        json.end();
    }

    private static void print(LaidCoating laid, JsonWriter json) {
        json.object()
                .field("material", laid.coating().material().id())
                .field("coats", laid.coating().coats())
                .field("thickness_m", laid.thickness().planned())
                .field("mass_per_area_kg_m2", laid.massPerArea().planned())
                .field("applied_kg_m2", laid.applied())
                .end();
    }

    private static void print(LaidLayer laid, JsonWriter json) {
        json.object()
                .field("material", laid.layer().material())
                .field("kind", EstimateWords.kind(laid.layer()))
                .field("angle_deg", EstimateWords.angle(laid.layer()));
        if (EstimateWords.isTurned(laid.layer())) {
            json.key("turned").flag(true);
        }
        if (!laid.layer().stage().isEmpty()) {
            json.field("stage", laid.layer().stage());
        }
        laid.layer()
                .laying()
                .ifPresent(layUp -> json.field("process", layUp.process().word())
                        .field("resin", layUp.resin().id()));
        EstimateJson.printRange("thickness", "m", laid.thickness(), json);
        printMasses(laid, json);
        if (laid.isReinforced()) {
            json.field("fibre_mass_fraction", laid.fibreMassFraction())
                    .field("fibre_volume_fraction", laid.fibreVolumeFraction())
                    .field("void_fraction", laid.voids());
            WorkedJson.print(laid.worked(), json);
        }
        json.end();
    }

    private static void printMasses(LaidLayer laid, JsonWriter json) {
        if (laid.isReinforced()) {
            json.field("fibre_kg_m2", laid.fibreMass());
        }
        if (laid.coreMass() > 0) {
            json.field("core_kg_m2", laid.coreMass());
        }
        if (laid.layer().laying().isPresent()) {
            json.field("resin_kg_m2", laid.resinMass().planned() + laid.bedMass());
        }
        if (laid.bedMass() > 0) {
            json.field("bed_kg_m2", laid.bedMass());
        }
        if (laid.givenMass() > 0) {
            json.field("given_kg_m2", laid.givenMass());
        }
    }

    private static void printStiffness(Laminate laminate, JsonWriter json) {
        json.key("stiffness").object();
        json.key("coupled").flag(laminate.isCoupled());
        json.key("A_N_m").matrix(laminate.membrane().rows());
        json.key("B_N").matrix(laminate.coupling().rows());
        json.key("D_Nm").matrix(laminate.bending().rows());
        ZoneStiffness.of(laminate).ifPresent(stiffness -> {
            print("in_plane", stiffness.inPlane(), json);
            print("bending", stiffness.bending(), json);
            stiffness.expansion().ifPresent(free -> print(free, json));
        });
        json.end();
    }

    private static void print(String key, EngineeringConstants constants, JsonWriter json) {
        json.key(key)
                .object()
                .field("Ex_Pa", constants.Ex())
                .field("Ey_Pa", constants.Ey())
                .field("Gxy_Pa", constants.Gxy())
                .field("nu_xy", constants.nuxy())
                .end();
    }

    private static void print(Deformation free, JsonWriter json) {
        json.key("expansion")
                .object()
                .field("alpha_x_1_K", free.strain().x())
                .field("alpha_y_1_K", free.strain().y())
                .field("alpha_xy_1_K", free.strain().xy())
                .end();
    }
}
