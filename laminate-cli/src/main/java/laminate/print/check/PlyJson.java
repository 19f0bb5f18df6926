package laminate.print.check;

import java.util.List;
import laminate.check.LaminateCheck;
import laminate.check.PointCheck;
import laminate.check.Reserve;
import laminate.estimate.ZoneEstimate;
import laminate.print.JsonWriter;
import laminate.theory.PlyPoint;
import laminate.theory.Vector3;
import laminate.theory.failure.PlyReserve;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.LocalMode;

/** Plies and reserve factors in JSON. */
final class PlyJson {
    private final PlyNames names;

    PlyJson(ZoneEstimate zone) {
        this.names = PlyNames.of(zone);
    }

    static void vector(String key, Vector3 vector, JsonWriter json) {
        json.key(key).numbers(vector.x(), vector.y(), vector.xy());
    }

    /** Three points a ply. */
    void points(String key, LaminateCheck check, JsonWriter json) {
        json.key(key).array();
        check.points().forEach(point -> point(point, json));
        json.end();
    }

    private void point(PointCheck check, JsonWriter json) {
        PlyPoint point = check.point();
        json.object()
                .field("ply", PlyNames.number(point.ply()))
                .field("material", names.material(point.ply()))
                .field("at", CheckWords.at(point.at()))
                .field("z_m", point.z());
        vector("strain_xy", point.strain(), json);
        vector("stress_xy_Pa", point.stress(), json);
        vector("strain_12", point.plyStrain(), json);
        vector("stress_12_Pa", point.plyStress(), json);
        json.key("shear_xz_yz_Pa").numbers(point.shear().xz(), point.shear().yz());
        json.key("shear_13_23_Pa")
                .numbers(point.plyShear().xz(), point.plyShear().yz());
        json.key("reserve_factors").object();
        check.reserves().forEach((criterion, factor) -> json.field(criterion.jsonName(), factor.value()));
        json.end().key("modes").object();
        check.reserves()
                .forEach((criterion, factor) ->
                        json.field(criterion.jsonName(), factor.mode().text()));
        json.end().end();
    }

    /** By kind as one object, and with their places as a list. */
    void reserves(List<Reserve> reserves, JsonWriter json) {
        json.key("reserve_factors").object();
        reserves.forEach(reserve -> json.field(CheckWords.key(reserve.kind()), reserve.factor()));
        json.end().key("reserves").array();
        for (Reserve reserve : reserves) {
            json.object()
                    .field("against", CheckWords.key(reserve.kind()))
                    .field("reserve_factor", reserve.factor())
                    .field("x_m", reserve.x())
                    .field("y_m", reserve.y());
            reserve.ply().ifPresent(ply -> failure(ply, json));
            reserve.local().ifPresent(local -> local(local, json));
            json.end();
        }
        json.end();
    }

    /** The ply, the point in it, and how it fails, as fields of the object that is open. */
    void failure(PlyReserve failure, JsonWriter json) {
        json.field("ply", PlyNames.number(failure.ply()))
                .field("material", names.material(failure.ply()))
                .field("at", CheckWords.at(failure.at()))
                .field("criterion", failure.reserve().criterion().jsonName())
                .field("mode", failure.reserve().mode().text());
    }

    private static void local(LocalCheck local, JsonWriter json) {
        boolean force = local.mode() == LocalMode.SHEAR_CRIMPING || local.mode() == LocalMode.INDENTATION;
        String unit = force ? "_N_m" : "_Pa";
        local.face().ifPresent(face -> json.field("face", CheckWords.face(face)));
        json.field("mode", local.mode().id().replace('_', ' '))
                .field("demand" + unit, local.demand())
                .field("capacity" + unit, local.capacity());
    }
}
