package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.wholeNumber;

import java.util.ArrayList;
import java.util.List;
import laminate.material.Resin;
import laminate.part.Coating;
import laminate.part.Film;
import laminate.unit.Dimension;

/** Reads coatings. */
final class CoatingReader {

    private static final int MOST_COATS = 20;

    private static final List<Reading.Choice<Film>> FILMS = List.of(
            film(Film.Basis.WET, Dimension.LENGTH),
            film(Film.Basis.CURED, Dimension.LENGTH),
            film(Film.Basis.AREAL_WEIGHT, Dimension.AREAL_MASS));

    private final Stock stock;
    private final LayUps layUps;

    CoatingReader(Stock stock, LayUps layUps) {
        this.stock = stock;
        this.layUps = layUps;
    }

    Reading<Coating> coating() {
        List<Reading.Choice<Located<Resin>>> materials = new ArrayList<>();
        for (Resin.Use use : Resin.Use.values()) {
            if (use.isCoating()) {
                materials.add(choice(use.word(), Located.of(stock.resin(use))));
            }
        }
        return mapping(Keys.COATING, in -> coating(in, materials));
    }

    private Coating coating(Fields in, List<Reading.Choice<Located<Resin>>> materials) {
        var material = in.exactlyOne(materials);
        var film = in.exactlyOne(FILMS);
        var coats = in.orElse("coats", wholeNumber(1, MOST_COATS), 1);
        var agents = Terms.agentsOf(in, stock);
        in.requireSound();
        Resin coating = material.get().value();
        return new Coating(
                coating, layUps.ofCoating(coating, agents, material.get().node()), film.get(), coats.get());
    }

    private static Reading.Choice<Film> film(Film.Basis basis, Dimension dimension) {
        return choice(basis.key(), quantity(dimension, Bounds.POSITIVE).map(value -> new Film(basis, value)));
    }
}
