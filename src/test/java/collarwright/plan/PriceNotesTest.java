package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.PriceList;
import collarwright.job.PriceList.Measure;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PriceNotesTest {

    private static final RoundStock PIPE = Jobs.windbreak().job().strut().stock();

    private static PriceList.Price price(Measure measure, double size, String unit) {
        return new PriceList.Price(PIPE.name(), measure, size, unit, 2);
    }

    private static List<Finding> notes(PriceList.Price... prices) {
        List<StockLength> lengths = List.of(
                StockLength.offcut("A-1", 900),
                StockLength.unlimited("3000 mm", 3000),
                StockLength.unlimited("6000 mm", 6000));
        return PriceNotes.of(PIPE, lengths, new PriceList(Arrays.asList(prices)));
    }

    @Test
    void lengthThatIsNotSold_isTold() {
        assertThat(notes(
                        price(Measure.STICK, 6000, "6 m"),
                        price(Measure.STICK, 4000, "4 m"),
                        price(Measure.LENGTH, 1000, "m")))
                .containsExactly(Finding.warn(
                        Code.PRICE_UNUSED,
                        new Where.Part("prices"),
                        "prices of lengths that " + PIPE.title() + " is sold in here: 3000 mm, 6000 mm",
                        "a price for 4 m",
                        "if you can buy it, name it in lengths, beside stock",
                        "or take the line out of the price file"));
    }

    @Test
    void lengthWithoutPrice_besideOneWithAPrice_isTold() {
        assertThat(notes(price(Measure.STICK, 6000, "6 m")))
                .containsExactly(Finding.warn(
                        Code.PRICE_UNUSED,
                        new Where.Part("prices"),
                        "a price for every length of " + PIPE.title() + ", or for none",
                        "none for 3000 mm: sticks are planned for the least length, not the least price",
                        "add the price, by stick, by length or by weight",
                        "or name in lengths only what you buy"));
    }

    @Test
    void pricesForAllOrNone_needNoNote() {
        assertThat(notes()).isEmpty();
        assertThat(notes(price(Measure.STICK, 6000, "6 m"), price(Measure.STICK, 3000.2, "3 m")))
                .isEmpty();
        assertThat(notes(price(Measure.KILOGRAM, 1, "kg"))).isEmpty();
    }
}
