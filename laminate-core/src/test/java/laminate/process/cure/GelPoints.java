package laminate.process.cure;

import java.util.List;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.material.Status;

/** Resins with gel times for tests. */
final class GelPoints {
    private GelPoints() {}

    static Resin.GelPoint point(String agent, double dose, double kelvin, double seconds) {
        return new Resin.GelPoint(agent, dose, kelvin, new Figure(seconds, "cup test", Status.PRINTED));
    }

    static Resin.GelPoint point(double percent, double celsius, double minutes, String source, Status status) {
        return new Resin.GelPoint("mekp", percent / 100, celsius + 273.15, new Figure(minutes * 60, source, status));
    }

    static Resin resin(Resin like, List<Resin.GelPoint> points) {
        return new Resin(
                like.id(), like.name(), like.family(), like.use(), like.waxed(), like.figures(), like.cures(), points);
    }
}
