package collarwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published instances with known optima. */
@Tag("oracle")
class CuttingOracleTest {

    private static final SawSettings NO_KERF = new SawSettings(0, 0, 0, 0);

    private static CutPlan plan(double stick, String widths) {
        List<CutPiece> pieces = new ArrayList<>();
        for (String entry : widths.split(" ")) {
            String[] parts = entry.split(":");
            pieces.add(new CutPiece("W" + parts[0], Double.parseDouble(parts[0]), Integer.parseInt(parts[1])));
        }
        return CuttingPlanner.plan(new CuttingTask(pieces, List.of(StockLength.unlimited("roll", stick)), NO_KERF));
    }

    private static void hasOptimum(CutPlan plan, int sticks) {
        assertThat(plan.newSticks()).isEqualTo(sticks);
        assertThat(plan.proof().proven()).isTrue();
        CutPlans.sound(plan);
    }

    // Source: GAMS Development Corp., GAMS Model Library, model CUTSTOCK (data of P.C. Gilmore, R.E. Gomory, Operations
    // Research 9 (1961)): rolls of 100; the least is 453.
    @Test
    void rollsOfTheModelLibrary_453() {
        hasOptimum(plan(100, "45:97 36:610 31:395 14:211"), 453);
    }

    // Source: Wikipedia, Cutting stock problem, example of a paper machine with rolls of 5600 mm: 73 rolls, waste 0.401
    // %.
    @Test
    void paperMachine_73() {
        CutPlan plan = plan(
                5600,
                "1380:22 1520:25 1560:12 1710:14 1820:18 1880:18 1930:20 2000:10 2050:12 2100:14 2140:16 2150:18 2200:20");
        hasOptimum(plan, 73);
        double cut = plan.layouts().stream()
                .mapToDouble(l -> l.runs() * l.sums().pieces())
                .sum();
        assertThat(100 * (1 - cut / plan.stickLength())).isBetween(0.4005, 0.4015);
    }

    // Source: M. Delorme, M. Iori, S. Martello, BPPLIB: a library for bin packing and cutting stock problems,
    // Optimization
    // Letters 12 (2018) 235-250: set of E. Falkenauer, Journal of Heuristics 2 (1996), instance t60_00: 20.
    @Test
    void t60_00_20() {
        hasOptimum(
                plan(
                        1000,
                        "495:1 474:1 473:1 472:1 466:1 450:1 445:1 444:1 439:1 430:1 419:1 414:1 410:1 395:1 372:1 370:1 366:3"
                                + " 363:1 361:1 357:1 355:1 351:1 350:2 347:1 320:1 315:1 307:1 303:1 299:1 298:2 292:1 288:1 287:1"
                                + " 283:1 275:2 274:1 273:1 272:2 271:1 269:2 268:1 263:1 262:1 261:1 259:1 258:1 255:1 254:1 252:3"
                                + " 251:1"),
                20);
    }

    // Source: as above, instance u120_00: 48.
    @Test
    void u120_00_48() {
        hasOptimum(
                plan(
                        150,
                        "98:3 96:2 94:1 93:2 92:1 91:2 90:1 87:1 86:1 85:2 84:5 83:2 82:2 81:1 80:3 79:2 78:4 76:1 74:2 73:4"
                                + " 72:1 71:1 70:3 69:3 67:1 66:1 64:1 62:2 60:2 59:1 58:3 57:4 55:3 50:1 49:3 47:1 46:2 45:2 44:2"
                                + " 43:4 42:5 41:3 39:2 38:3 37:1 36:3 35:1 33:3 32:2 30:3 29:1 28:1 27:2 26:1 25:2 24:1 23:2 20:1"),
                48);
    }

    // Source: by construction: three pieces fill each bin of 1000 exactly, so that fewer bins have no room; sizes of
    // the
    // classes t60 to t501 of E. Falkenauer (as above).
    @ParameterizedTest
    @CsvSource({"20, 1", "20, 2", "40, 1", "40, 3", "83, 1", "83, 2", "167, 1", "167, 2"})
    void tripletsByConstruction_everyBinIsFull(int bins, int seed) {
        CutPlan plan = plan(1000, CutPlans.triplets(bins, seed));
        hasOptimum(plan, bins);
        assertThat(plan.layouts())
                .allSatisfy(l -> assertThat(l.sums().remainder()).isZero());
    }

    // The same in thousandths of a millimetre, where rooms cannot be counted through.
    @Test
    void tripletsOfOddLengths_everyBinIsFull() {
        StringBuilder widths = new StringBuilder();
        for (int bin = 0; bin < 20; bin++) {
            int a = 2_280_001 + bin * 31_337;
            int b = 1_500_003 + bin * 6_007;
            for (int piece : new int[] {a, b, 6_000_000 - a - b}) {
                widths.append(widths.isEmpty() ? "" : " ")
                        .append(piece / 1000.0)
                        .append(":1");
            }
        }
        hasOptimum(plan(6000, widths.toString()), 20);
    }

    // Source: a shop's rule, checked by hand: 11 parts with a kerf of 3.2 mm take 11 cuts, 35.2 mm in all; where the
    // last
    // part ends with the stick, the eleventh cut falls away.
    @Test
    void elevenParts_takeElevenCuts() {
        StickLayout.Sums rest = elevenOf(6000).layouts().get(0).sums();
        assertThat(rest.cuts()).isEqualTo(11);
        assertThat(rest.kerf()).isEqualTo(35.2);
        assertThat(rest.remainder()).isEqualTo(6000 - 11 * 500 - 35.2);
        StickLayout.Sums none = elevenOf(11 * 500 + 10 * 3.2).layouts().get(0).sums();
        assertThat(none.cuts()).isEqualTo(10);
        assertThat(none.kerf()).isEqualTo(32);
        assertThat(none.remainder()).isZero();
    }

    private static CutPlan elevenOf(double stick) {
        CutPlan plan = CuttingPlanner.plan(new CuttingTask(
                List.of(new CutPiece("P", 500, 11)),
                List.of(StockLength.unlimited("stick", stick)),
                new SawSettings(3.2, 0, 0, 0)));
        CutPlans.sound(plan);
        assertThat(plan.newSticks()).isEqualTo(1);
        return plan;
    }
}
