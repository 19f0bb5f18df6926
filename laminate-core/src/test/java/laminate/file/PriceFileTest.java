package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.OptionalDouble;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PriceFileTest {

    @TempDir
    private Path folder;

    private PriceList read(String text, Bench.Watched stock) {
        return PriceFile.read(new Bench(folder).put("prices.yaml", text), stock);
    }

    @Test
    void pricesAreReadAsTheyAreWritten() {
        PriceList list = read("""
                currency: GBP
                date: 2026-01-15
                prices:
                  - {material: mat-450, price: 3.10 GBP/kg, roll: {width: 1.27 m, mass: 35 kg}}
                  - {material: cloth-280, price: 120 GBP/roll, roll: {width: 1 m, length: 50 m}}
                  - {material: gloves, price: 0.15 GBP/piece}
                """, new Bench.Watched());
        assertThat(list.currency()).isEqualTo("GBP");
        assertThat(list.date()).contains(LocalDate.of(2026, 1, 15));
        assertThat(list.prices())
                .extracting(price -> price.price().toString())
                .containsExactly("3.10 GBP/kg", "120 GBP/roll", "0.15 GBP/piece");
        assertThat(list.find("mat-450").orElseThrow().roll())
                .contains(new Price.Roll(1.27, OptionalDouble.empty(), OptionalDouble.of(35)));
        assertThat(list.find("cloth-280").orElseThrow().roll())
                .contains(new Price.Roll(1, OptionalDouble.of(50), OptionalDouble.empty()));
    }

    @Test
    void noMaterialIsLoadedToPriceIt() {
        Bench.Watched stock = new Bench.Watched();
        read("currency: GBP\nprices: [{material: mat-450, price: 3 GBP/kg}]\n", stock);
        assertThat(stock.loaded).isEmpty();
    }
}
