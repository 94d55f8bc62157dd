package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Number and letter drills, aluminium tube, reinforcing bar and dowel against published sizes, digits as printed. */
class AddedProfilesOracleTest {

    private static RoundStock stock(String name) {
        return Jobs.PROFILES.stock(name).orElseThrow();
    }

    private static List<Cutter> drills() {
        return Jobs.PROFILES.rack("number-letter-twist").orElseThrow().cutters();
    }

    private static Cutter drill(String marked) {
        return drills().stream()
                .filter(c -> c.marked().equals(marked))
                .findFirst()
                .orElseThrow();
    }

    // ASME B94.11M, number and letter sizes, inches. Letter E is 1/4 in.
    @ParameterizedTest
    @CsvSource({
        "#80, TW-No80, .0135",
        "#70, TW-No70, .0280",
        "#61, TW-No61, .0390",
        "#60, TW-No60, .0400",
        "#53, TW-No53, .0595",
        "#52, TW-No52, .0635",
        "#43, TW-No43, .0890",
        "#36, TW-No36, .1065",
        "#29, TW-No29, .1360",
        "#21, TW-No21, .1590",
        "#16, TW-No16, .1770",
        "#7, TW-No7, .2010",
        "#5, TW-No5, .2055",
        "#1, TW-No1, .2280",
        "A, TW-A, .234",
        "E, TW-E, .250",
        "F, TW-F, .257",
        "I, TW-I, .272",
        "N, TW-N, .302",
        "Q, TW-Q, .332",
        "U, TW-U, .368",
        "Z, TW-Z, .413",
    })
    void numberAndLetterDrills_agreeWithTheStandard(String marked, String id, double inches) {
        Cutter drill = drill(marked);
        assertThat(drill.id()).isEqualTo(id);
        assertThat(drill.size() / 25.4).isCloseTo(inches, within(1e-9));
        assertThat(drill.measured()).isFalse();
    }

    // 80 numbers from the thinnest, #80, to #1, then 26 letters from A up: never two of one size, and no step wider
    // than
    // the widest of the table, from N .302 to O .316.
    @Test
    void numberAndLetterDrills_areAllThere_andAscend() {
        assertThat(drills()).hasSize(106);
        assertThat(drills()).extracting(Cutter::id).doesNotHaveDuplicates();
        for (int i = 1; i < drills().size(); i++) {
            assertThat((drills().get(i).size() - drills().get(i - 1).size()) / 25.4)
                    .as(drills().get(i).marked())
                    .isBetween(0.0005, 0.0141);
        }
    }

    // The numbers must not be taken for millimetres beside metric drills.
    @Test
    void numberAndLetterDrills_besideMetricOnes_keepTheirOwnIds() {
        Job job = Jobs.job("rack = [\"metric-twist\"]", "rack = [\"metric-twist\", \"number-letter-twist\"]");
        assertThat(job.drilling().cutters())
                .extracting(Cutter::id)
                .doesNotHaveDuplicates()
                .contains("TW-7", "TW-No7")
                .hasSize(155 + 106);
    }

    // ANSI H35.2, extruded round tube, other alloys: mean outside diameter, inches: 0.500 to 0.999 ±.010, 1.000 to
    // 1.999
    // ±.012, 2.000 to 3.999 ±.015, 4.000 to 5.999 ±.025.
    @ParameterizedTest
    @CsvSource({
        "0.5x0.058, 0.500, 0.010, 0.058", "0.875x0.058, 0.875, 0.010, 0.058", "1x0.065, 1.000, 0.012, 0.065",
        "1.75x0.125, 1.750, 0.012, 0.125", "2x0.25, 2.000, 0.015, 0.250", "3.5x0.125, 3.500, 0.015, 0.125",
        "4x0.125, 4.000, 0.025, 0.125", "5.5x0.125, 5.500, 0.025, 0.125",
    })
    void aluminium_agreesWithTheStandard(String size, double od, double tolerance, double wall) {
        RoundStock tube = stock("aluminium-" + size + "in");
        assertThat(tube.od().nominal() / 25.4).isCloseTo(od, within(1e-9));
        assertThat((tube.od().max() - tube.od().nominal()) / 25.4).isCloseTo(tolerance, within(1e-9));
        assertThat((tube.od().nominal() - tube.od().min()) / 25.4).isCloseTo(tolerance, within(1e-9));
        assertThat(tube.wall().orElseThrow().nominal() / 25.4).isCloseTo(wall, within(1e-9));
        assertThat(tube.material().name()).isEqualTo("aluminium");
    }

    // ASTM A615/A615M, Table 1: mass in kg/m and minimum average height of deformations in inches; the profile has its
    // sizes from the other columns. A plain bar of that mass with 7850 kg/m³ has the nominal diameter, within the
    // rounding of both
    // columns and of the inch sizes behind them (No. 10 is 1.270 in, 32.26 mm).
    @ParameterizedTest
    @CsvSource({
        "3, 0.560, 0.015",
        "4, 0.994, 0.020",
        "5, 1.552, 0.028",
        "6, 2.235, 0.038",
        "7, 3.042, 0.044",
        "8, 3.973, 0.050",
        "9, 5.059, 0.056",
        "10, 6.404, 0.064",
        "11, 7.907, 0.071",
    })
    void rebar_agreesWithTheStandard(int number, double kilograms, double height) {
        RoundStock bar = stock("rebar-no" + number);
        double plain = 1000 * StrictMath.sqrt(4 * kilograms / (StrictMath.PI * 7850));
        assertThat(bar.od().nominal()).isCloseTo(plain, within(0.08));
        assertThat(bar.od().min()).isEqualTo(bar.od().nominal());
        assertThat((bar.od().max() - bar.od().nominal()) / 2 / 25.4).isCloseTo(height, within(0.0005));
        assertThat(bar.wall()).isEmpty();
    }

    // Overall diameters that the trade allows for (Concrete Reinforcing Steel Institute, from memory): 7/16, 9/16,
    // 11/16,
    // 7/8, 1 and 1-1/8 in. Our upper limit is a least one and must stay below.
    @ParameterizedTest
    @CsvSource({"3, 0.4375", "4, 0.5625", "5, 0.6875", "6, 0.875", "7, 1", "8, 1.125"})
    void rebar_upperLimit_staysBelowTheTradesOverallDiameter(int number, double overall) {
        assertThat(stock("rebar-no" + number).od().max() / 25.4).isBetween(overall * 0.9, overall);
    }

    // Long dowel rod: within 1/64 in up to 1/2 in, 1/32 in above (trade practice, from memory; no standard was found).
    @ParameterizedTest
    @CsvSource({"0.25, 0.015625", "0.5, 0.015625", "0.625, 0.03125", "1.25, 0.03125", "2, 0.03125"})
    void dowel_isAsTheTradeHasIt(double od, double tolerance) {
        RoundStock rod = stock("dowel-" + collarwright.units.Decimals.trimmed(od, 4) + "in");
        assertThat(rod.od().nominal() / 25.4).isCloseTo(od, within(1e-9));
        assertThat((rod.od().max() - rod.od().nominal()) / 25.4).isCloseTo(tolerance, within(1e-9));
        assertThat(rod.wall()).isEmpty();
        assertThat(rod.material().name()).isEqualTo("hardwood");
    }

    @Test
    void remove_byName_takesTheNamedDrillOnly() {
        Job job = Jobs.job(
                "rack = [\"metric-twist\"]",
                "rack = [\"metric-twist\", \"number-letter-twist\"]\nremove = [\"#7\", \"E\", \"7 mm\"]");
        assertThat(job.drilling().cutters())
                .extracting(Cutter::id)
                .hasSize(155 + 106 - 3)
                .doesNotContain("TW-No7", "TW-E", "TW-7");
    }

    @Test
    void add_withItsName_takesThePlaceOfTheRacksDrill() {
        Job job = Jobs.job(
                "rack = [\"metric-twist\"]",
                "rack = [\"number-letter-twist\"]\n"
                        + "add = { kind = \"twist\", size = \"0.257 in\", marked = \"F\", as-drilled = \"6.6 mm\" }");
        assertThat(job.drilling().cutters())
                .filteredOn(c -> c.id().equals("TW-F"))
                .extracting(c -> c.asDrilled().nominal())
                .containsExactly(6.6);
    }
}
