package collarwright.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.collar.Webs;
import collarwright.geometry.Interval;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LadderTest {
    private static final Interval STRUT = new Interval(39.9, 40.05, 40.2);
    private static final CollarBody BODY = new CollarBody(80.1, new Interval(4.6, 4.7, 4.9), 90);

    private static LadderNeed need(double leanDegrees) {
        return new LadderNeed(BODY, STRUT, StrictMath.toRadians(leanDegrees), 0.5);
    }

    private static List<Cutter> saws(double step, double from, double to) {
        List<Cutter> saws = new ArrayList<>();
        for (int i = 0; from + i * step <= to; i++) {
            saws.add(Jobs.saw(from + i * step));
        }
        return saws;
    }

    @Test
    void ladder_anyRack_passesReachesBeyondTheNeedAndKeepsItsWebs() {
        Seeds.each(60, seeds -> {
            double lean = seeds.between(4, 18);
            CollarBody body = new CollarBody(seeds.between(70, 130), Interval.of(seeds.between(2, 9)), 90);
            List<Cutter> rack = IntStream.range(0, 40)
                    .mapToObj(i -> Jobs.saw(StrictMath.rint(seeds.between(38, 60) * 20) / 20))
                    .toList();
            LadderNeed need = new LadderNeed(body, STRUT, StrictMath.toRadians(lean), 0.5);
            Optional<Ladder> ladder = Ladder.of(need, rack);
            if (ladder.isEmpty()) {
                return;
            }
            List<Cutter> cutters = ladder.get().cutters();
            assertThat(cutters).hasSizeBetween(3, 8).doesNotHaveDuplicates();
            assertThat(cutters)
                    .isSortedAccordingTo(
                            Comparator.comparingDouble(c -> c.asDrilled().nominal()));
            assertThat(cutters.get(0).asDrilled().min()).isGreaterThan(STRUT.max());
            websHold(ladder.get().pattern("TRIAL"), body, cutters.size() > 3 ? 0.5 : 0.25);
            assertThat(Ladder.of(need, seeds.shuffled(rack))).isEqualTo(ladder);
        });
    }

    private static void websHold(Pattern pattern, CollarBody body, double share) {
        List<Hole> holes = pattern.holes();
        double first = Double.NaN;
        for (int i = 0; i < holes.size(); i++) {
            Hole one = holes.get(i);
            Hole next = holes.get((i + 1) % holes.size());
            double gap = next.azimuth() - one.azimuth() + (i + 1 == holes.size() ? 2 * StrictMath.PI : 0);
            double web = Webs.between(body.leastInnerRadius(), gap, one.diameter(), next.diameter());
            first = i == 0 ? web : first;
            assertThat(web).isCloseTo(first, within(1e-9));
            // Rooms are counted pair by pair, then shared evenly.
            assertThat(web).isGreaterThanOrEqualTo(share * holes.get(0).diameter() - 1e-9);
        }
    }

    @Test
    void ladder_fineRack_goesFromJustPassingToWellBeyondTheNeed() {
        Ladder ladder = Ladder.of(need(11.64), saws(0.25, 38, 60)).orElseThrow();

        List<Cutter> cutters = ladder.cutters();
        assertThat(cutters.get(0).asDrilled().nominal()).isLessThan(41);
        assertThat(ladder.fullWall(cutters.get(cutters.size() - 1)))
                .isBetween(StrictMath.toRadians(16), StrictMath.toRadians(19.7));
        assertThat(ladder.singleEdge(cutters.get(0))).isGreaterThan(ladder.fullWall(cutters.get(0)));
    }

    /** Of all sets of as many sizes that are spread like a ladder, hardly one promises smaller errors: by trying them all. */
    @Test
    void ladder_smallRack_isAsGoodAsNearlyAnyOther() {
        LadderNeed need = need(9);
        List<Cutter> rack = saws(0.25, 40.5, 44.5);
        Ladder ladder = Ladder.of(need, rack).orElseThrow();
        double ours = error(need, ladder.cutters());
        int better = 0;
        int all = 0;
        List<Cutter> usable = Ladder.usable(need, rack);
        for (int set = 0; set < 1 << usable.size(); set++) {
            if (Integer.bitCount(set) == ladder.cutters().size()) {
                List<Cutter> chosen = new ArrayList<>();
                for (int i = 0; i < usable.size(); i++) {
                    if ((set & 1 << i) != 0) {
                        chosen.add(usable.get(i));
                    }
                }
                if (spread(ladder, usable, chosen)) {
                    all++;
                    better += error(need, chosen) < ours * (1 - 1e-6) ? 1 : 0;
                }
            }
        }
        assertThat(all).isGreaterThan(50);
        assertThat(better).isLessThanOrEqualTo(all / 20);
    }

    /** What a job drills with is what its trial piece should tell of, wherever that size lies in the rack. */
    @Test
    void ladder_jobsOwnCutters_areAmongItsHoles() {
        LadderNeed need = need(9);
        List<Cutter> rack = saws(0.25, 40.5, 46);
        List<Cutter> usable = Ladder.usable(need, rack);
        List<Cutter> without = Ladder.of(need, rack).orElseThrow().cutters();
        assertThat(without).isNotEqualTo(usable);
        for (Cutter own : usable) {
            List<Cutter> cutters =
                    Ladder.of(need, rack, List.of(own)).orElseThrow().cutters();
            assertThat(cutters).contains(own).hasSameSizeAs(without).doesNotHaveDuplicates();
            assertThat(cutters)
                    .isSortedAccordingTo(
                            Comparator.comparingDouble(c -> c.asDrilled().nominal()));
            assertThat(cutters.stream().filter(c -> !without.contains(c)).count())
                    .isEqualTo(without.contains(own) ? 0 : 1);
        }
        Cutter foreign = Jobs.saw(39);
        assertThat(Ladder.of(need, rack, List.of(foreign)).orElseThrow().cutters())
                .isEqualTo(without);
    }

    private static boolean spread(Ladder ladder, List<Cutter> usable, List<Cutter> chosen) {
        double step =
                (ladder.fullWall(usable.get(usable.size() - 1)) - ladder.fullWall(usable.get(0))) / (chosen.size() - 1);
        for (int i = 1; i < chosen.size(); i++) {
            double gap = ladder.fullWall(chosen.get(i)) - ladder.fullWall(chosen.get(i - 1));
            if (gap < step / 2 || gap > 1.5 * step) {
                return false;
            }
        }
        return true;
    }

    // Variances of both unknowns for readings that are all off by 1, from slopes over small steps.
    private static double error(LadderNeed need, List<Cutter> cutters) {
        TrialCollar collar =
                new TrialCollar(need.body().outerRadius(), need.body().wall().nominal());
        double aa = 0;
        double ab = 0;
        double bb = 0;
        for (Cutter cutter : cutters) {
            TrialRow row = new TrialRow(1, "", cutter.asDrilled().nominal(), false, STRUT.nominal(), 0.1);
            BearingModel model = new BearingModel(collar, List.of(row));
            double at = collar.wall() / 2;
            double a = (model.angle(row, new Guess(at + 1e-3, 0)) - model.angle(row, new Guess(at - 1e-3, 0))) / 2e-3;
            double b = (model.angle(row, new Guess(at, 1e-3)) - model.angle(row, new Guess(at, -1e-3))) / 2e-3;
            aa += a * a;
            ab += a * b;
            bb += b * b;
        }
        return (aa + bb) / (aa * bb - ab * ab);
    }

    @Test
    void ladder_tooFewSizesOrNoRoom_isEmpty() {
        assertThat(Ladder.of(need(10), saws(1, 41, 42))).isEmpty();
        assertThat(Ladder.of(need(10), saws(1, 30, 40))).isEmpty();
        CollarBody narrow = new CollarBody(30, Interval.of(4), 90);
        assertThat(Ladder.of(new LadderNeed(narrow, STRUT, 0.2, 0.5), saws(0.5, 40.5, 50)))
                .isEmpty();
    }

    @Test
    void ladder_widthOfTheCollar_limitsTheHoles() {
        CollarBody flat = new CollarBody(80.1, new Interval(4.6, 4.7, 4.9), 42);
        Ladder ladder = Ladder.of(new LadderNeed(flat, STRUT, 0.2, 0.5), saws(0.25, 40.5, 50))
                .orElseThrow();
        assertThat(ladder.cutters()).allMatch(c -> c.asDrilled().max() <= 42);
    }
}
