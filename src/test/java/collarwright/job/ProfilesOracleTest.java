package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Interval;
import collarwright.machining.CuttingData;
import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds what the profiles give against published sizes, digits as printed, within half of the last one. */
class ProfilesOracleTest {

    private static RoundStock stock(String name) {
        return Jobs.PROFILES.stock(name).orElseThrow();
    }

    private static Cutter cutter(String rack, String id) {
        return Jobs.PROFILES.rack(rack).orElseThrow().cutters().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id));
    }

    // ASTM D1785, Table 1, outside diameters and tolerances in inches, and Table 2, least wall in inches. The profile
    // has
    // its walls from the millimetre columns, so this is the other half of the same tables.
    @ParameterizedTest
    @CsvSource({
        "0.5,  0.840, 0.004, 0.109, 0.147",
        "0.75, 1.050, 0.004, 0.113, 0.154",
        "1,    1.315, 0.005, 0.133, 0.179",
        "1.25, 1.660, 0.005, 0.140, 0.191",
        "1.5,  1.900, 0.006, 0.145, 0.200",
        "2,    2.375, 0.006, 0.154, 0.218",
        "2.5,  2.875, 0.007, 0.203, 0.276",
        "3,    3.500, 0.008, 0.216, 0.300",
        "3.5,  4.000, 0.008, 0.226, 0.318",
        "4,    4.500, 0.009, 0.237, 0.337",
        "5,    5.563, 0.010, 0.258, 0.375",
        "6,    6.625, 0.011, 0.280, 0.432",
        "8,    8.625, 0.015, 0.322, 0.500",
    })
    void pvcInch_agreesWithTheStandard(String size, double od, double tolerance, double sch40, double sch80) {
        RoundStock thin = stock("pvc-sch40-" + size + "in");
        RoundStock thick = stock("pvc-sch80-" + size + "in");
        for (RoundStock pipe : new RoundStock[] {thin, thick}) {
            assertThat(pipe.od().nominal() / 25.4).isCloseTo(od, within(0.0005));
            assertThat((pipe.od().max() - pipe.od().nominal()) / 25.4).isCloseTo(tolerance, within(0.0005));
            assertThat((pipe.od().nominal() - pipe.od().min()) / 25.4).isCloseTo(tolerance, within(0.0005));
        }
        assertThat(thin.wall().orElseThrow().min() / 25.4).isCloseTo(sch40, within(0.0005));
        assertThat(thick.wall().orElseThrow().min() / 25.4).isCloseTo(sch80, within(0.0005));
    }

    // The same pipes in another list: the nominal average wall of a pipe is about 0.010 in more than the least wall (a
    // pipe dealer's table: 1/2: .119, 2: .164, 4: .251, in inches). The middle of the two limits is what we count with.
    @ParameterizedTest
    @CsvSource({"0.5, 0.119", "2, 0.164", "4, 0.251"})
    void pvcInch_wallCountedWith_isTheAverage(String size, double average) {
        assertThat(stock("pvc-sch40-" + size + "in").wall().orElseThrow().nominal() / 25.4)
                .isCloseTo(average, within(0.0005));
    }

    // DIN 8062, table of sizes, millimetres: mean outside diameter from the nominal to the largest, wall from to.
    @ParameterizedTest
    @CsvSource({
        "20x1.5, 20, 20.2, 1.5, 1.9", "25x1.9, 25, 25.2, 1.9, 2.3", "32x2.4, 32, 32.2, 2.4, 2.9",
        "40x3.0, 40, 40.2, 3.0, 3.5", "50x3.7, 50, 50.2, 3.7, 4.3", "63x4.7, 63, 63.2, 4.7, 5.4",
        "75x5.6, 75, 75.3, 5.6, 6.4", "90x4.3, 90, 90.3, 4.3, 5.0", "110x8.2, 110, 110.3, 8.2, 9.3",
        "125x6.0, 125, 125.3, 6.0, 6.8", "140x6.7, 140, 140.4, 6.7, 7.6", "160x7.7, 160, 160.4, 7.7, 8.7",
        "200x9.6, 200, 200.4, 9.6, 10.8",
    })
    void pvcMetric_agreesWithTheStandard(String size, double od, double most, double least, double thick) {
        RoundStock pipe = stock("pvc-metric-" + size);
        assertThat(pipe.od()).isEqualTo(new Interval(od, od, most));
        assertThat(pipe.wall()).contains(Interval.between(least, thick));
    }

    // ISO 4065, series S 12.5: wall = diameter / (2 S + 1) with the exact S of the R 10 series, 10^1.1, rounded up to
    // 0.1 mm (rule from memory). 110 gives 4.202, which the table has as 4.2.
    @ParameterizedTest
    @CsvSource({"90, 3.5", "110, 4.2", "125, 4.8", "140, 5.4", "160, 6.2", "200, 7.7"})
    void pvcMetricThin_agreesWithTheRuleOfTheSeries(int od, String wall) {
        double exact = od / (2 * StrictMath.pow(10, 1.1) + 1);
        double rounded = StrictMath.ceil(exact * 10 - 0.05) / 10;
        assertThat(stock("pvc-metric-" + od + "x" + wall).wall().orElseThrow().min())
                .isCloseTo(rounded, within(1e-9));
    }

    // ANSI C80.3 and UL 797: trade size, outside diameter and wall in millimetres as the Steel Tube Institute prints
    // them beside the inches that the profile has.
    @ParameterizedTest
    @CsvSource({
        "0.5, 17.9, 1.07", "0.75, 23.4, 1.25", "1, 29.5, 1.45", "1.25, 38.4, 1.65", "1.5, 44.2, 1.65",
        "2, 55.8, 1.65", "2.5, 73.0, 1.83", "3, 88.9, 1.83", "3.5, 101.6, 2.11", "4, 114.3, 2.11",
    })
    void emt_agreesWithTheStandard(String size, double od, double wall) {
        assertThat(stock("emt-" + size + "in").od().nominal()).isCloseTo(od, within(0.0505));
        assertThat(stock("emt-" + size + "in").wall().orElseThrow().nominal()).isCloseTo(wall, within(0.0055));
    }

    // The same pipes in ASTM D1785, Table 1: its outside diameters are those of steel pipe, in inches; walls of
    // Schedule 40 and 80 in inches are those of ASME B36.10M too.
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.840, 0.109, 0.147", "1, 1.315, 0.133, 0.179", "1.25, 1.660, 0.140, 0.191", "2, 2.375, 0.154, 0.218",
        "3, 3.500, 0.216, 0.300", "4, 4.500, 0.237, 0.337", "5, 5.563, 0.258, 0.375", "6, 6.625, 0.280, 0.432",
        "8, 8.625, 0.322, 0.500",
    })
    void steelPipe_agreesWithTheInchSizes(String size, double od, double sch40, double sch80) {
        assertThat(stock("steel-sch40-" + size + "in").od().nominal()).isCloseTo(od * 25.4, within(0.0505));
        assertThat(stock("steel-sch40-" + size + "in").wall().orElseThrow().nominal())
                .isCloseTo(sch40 * 25.4, within(0.0055));
        assertThat(stock("steel-sch80-" + size + "in").wall().orElseThrow().nominal())
                .isCloseTo(sch80 * 25.4, within(0.0055));
    }

    @Test
    void emt_threeQuarters_isNotASteelPipe() {
        // A web table gives 1.050 in, which is the pipe of that size; the standard has 0.922 in.
        assertThat(stock("emt-0.75in").od().nominal()).isCloseTo(0.922 * 25.4, within(1e-9));
    }

    // Worked examples from a machinists' forum: a No. 37 drill with a point of 118° has 0.104/2/tan 59° = 0.031 in; the
    // factor for 118° is 0.3005 (a common rule: 0.3 D, Machinery's Handbook, from memory).
    @ParameterizedTest
    @CsvSource({"metric-twist, TW-10, 0.3005", "metric-twist, TW-22.25, 0.3005", "inch-twist, TW-1-1/2in, 0.3005"})
    void twistDrill_pointIsAsLongAsTheRuleSays(String rack, String id, double factor) {
        Cutter drill = cutter(rack, id);
        assertThat(drill.lead() / drill.size()).isCloseTo(factor, within(0.00015));
    }

    // Kept from 13/32 in with a point of 135°: 0.203 · tan 22.5° = 0.084 in, in the same place.
    @Test
    void twistDrill_otherPoint_agreesWithTheWorkedExample() {
        Job job = Jobs.job(
                "rack = [\"metric-twist\"]",
                "add = { kind = \"twist\", size = \"13/32 in\", point-angle = \"135 deg\", max-rpm = 100 }");
        assertThat(job.drilling().cutters().get(0).lead() / 25.4).isCloseTo(0.084, within(0.0005));
    }

    // BS 328: by 0.1 mm from 3.0 to 13.9, by 0.25 mm from 14.0 to 25.0.
    @Test
    void metricTwist_hasTheSizesOfTheStandard() {
        Rack rack = Jobs.PROFILES.rack("metric-twist").orElseThrow();
        assertThat(rack.kind()).isEqualTo(CutterKind.TWIST);
        assertThat(rack.cutters()).hasSize(110 + 45);
        assertThat(rack.cutters())
                .extracting(Cutter::id)
                .doesNotHaveDuplicates()
                .contains("TW-3", "TW-13.9", "TW-14.25", "TW-25");
    }

    // Fractional drills by 1/64 in to 1-3/4, by 1/32 to 2-1/4, by 1/16 to 3 (trade practice).
    @Test
    void inchTwist_hasTheSizesOfTheTrade() {
        Rack rack = Jobs.PROFILES.rack("inch-twist").orElseThrow();
        assertThat(rack.cutters()).extracting(Cutter::id).doesNotHaveDuplicates();
        assertThat(rack.cutters()).hasSize((112 - 8 + 1) + 16 + 12);
        assertThat(cutter("inch-twist", "TW-1-15/16in").size()).isEqualTo(49.2125);
    }

    // Hole saws by 1/16 in from 9/16 to 6 in (a maker's chart).
    @Test
    void inchHoleSaws_haveTheSizesOfTheTrade() {
        assertThat(Jobs.PROFILES.rack("inch-hole-saws").orElseThrow().cutters()).hasSize(96 - 9 + 1);
    }

    // A chart of bi-metal hole saws, turns a minute by diameter in inches: mild steel, stainless, aluminium, wood. Our
    // start values must never be faster than the chart, and not less than 7 tenths of it.
    @ParameterizedTest
    @CsvSource({
        "0.5625, 580, 300, 900, 3000",
        "0.625, 550, 275, 825, 3000",
        "0.75, 460, 230, 690, 3000",
        "1, 350, 175, 525, 2700",
        "1.25, 275, 140, 410, 2400",
        "1.5, 230, 115, 345, 2400",
        "1.75, 195, 95, 295, 2100",
        "2, 170, 85, 255, 2000",
        "2.25, 150, 75, 225, 2000",
        "2.5, 135, 65, 205, 1850",
    })
    void holeSaws_turnAsTheChartSays(double inches, double steel, double stainless, double aluminium, double wood) {
        assertThat(turns("steel", inches) / steel).isBetween(0.9, 1.01);
        assertThat(turns("stainless", inches) / stainless).isBetween(0.9, 1.01);
        assertThat(turns("aluminium", inches) / aluminium).isBetween(0.9, 1.01);
        assertThat(turns("wood", inches) / wood).isBetween(0.7, 1.01);
    }

    private static double turns(String material, double inches) {
        double size = inches * 25.4;
        CuttingData.Row row = Jobs.PROFILES.cutting(material).orElseThrow().rows().stream()
                .filter(r -> r.kind() == CutterKind.HOLE_SAW && r.fromSize() <= size && size <= r.toSize())
                .findFirst()
                .orElseThrow();
        return 1000 * row.surfaceSpeedMPerMin() / (StrictMath.PI * size);
    }

    // US Navy training manual, chapter Holding the Work: low carbon steel 80 to 110 surface feet a minute, aluminium
    // 200
    // to 300; feeds for 1/4 to 1/2 in drills 0.004 to 0.007 in a turn. Worked value of the trade: 80 sfm and 1/2 in are
    // 611 turns a minute (12 · 80 / (π · 0.5)).
    @Test
    void twistDrills_turnAsTheManualSays() {
        CuttingData.Row row = Jobs.PROFILES.cutting("steel").orElseThrow().rows().stream()
                .filter(r -> r.kind() == CutterKind.TWIST && r.fromSize() <= 12.7 && 12.7 <= r.toSize())
                .findFirst()
                .orElseThrow();
        assertThat(1000 * row.surfaceSpeedMPerMin() / (StrictMath.PI * 12.7)).isCloseTo(611, within(1.0));
        assertThat(row.feedPerRevolution() / 25.4).isBetween(0.004 - 1e-9, 0.007);
        assertThat(Jobs.PROFILES
                                .cutting("aluminium")
                                .orElseThrow()
                                .rows()
                                .get(0)
                                .surfaceSpeedMPerMin()
                        / 0.3048)
                .isBetween(200.0, 300.0);
    }

    // Typical value of PVC pipe compound, ASTM D1784 cell 12454 (a maker's sheet): specific gravity 1.40 ± .02.
    @Test
    void pvc_hasTheDensityOfPipe() {
        assertThat(Jobs.PROFILES.material("pvc").orElseThrow().material().densityKgPerM3())
                .isCloseTo(1400, within(20.0));
    }
}
