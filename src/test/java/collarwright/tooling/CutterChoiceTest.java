package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.hub.Hubs;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CutterChoiceTest {
    private static final CollarBody BODY = new CollarBody(80.05, new Interval(6.2, 6.4, 6.6), 80);
    private static final Interval STRUT = new Interval(39.9, 40.05, 40.2);

    /** A need on a line: a cutter of its size or more will do, and is as far off as it is larger. */
    private static CutterNeed onLine(double at, int holes) {
        return new CutterNeed(
                at, holes, c -> c.size() >= at ? OptionalDouble.of(c.size() - at) : OptionalDouble.empty());
    }

    private static List<Cutter> saws(double... sizes) {
        return DoubleStream.of(sizes).mapToObj(Jobs::saw).toList();
    }

    private static List<Double> chosen(List<CutterNeed> needs, List<Cutter> cutters, int most) {
        return CutterChoice.of(needs, cutters, most).orElseThrow().cutters().stream()
                .map(Cutter::size)
                .toList();
    }

    // By hand: the largest need takes 20 in any case; a second cutter does most for the worst of the rest.
    @Test
    void of_needsOnALine_takesWhatAHandWouldTake() {
        List<CutterNeed> needs = List.of(onLine(10, 1), onLine(12, 1), onLine(19, 1));
        List<Cutter> rack = saws(10, 12, 13, 20);
        assertThat(chosen(needs, rack, 1)).containsExactly(20.0);
        assertThat(CutterChoice.of(needs, rack, 1).orElseThrow().worst()).isEqualTo(10);
        assertThat(chosen(needs, rack, 2)).containsExactly(12.0, 20.0);
        assertThat(CutterChoice.of(needs, rack, 2).orElseThrow())
                .returns(2.0, CutterChoice::worst)
                .returns(2.0 + 0 + 1, CutterChoice::total);
        assertThat(chosen(needs, rack, 3)).containsExactly(10.0, 12.0, 20.0);
        assertThat(chosen(needs, rack, 9)).containsExactly(10.0, 12.0, 20.0);
    }

    @Test
    void of_equalWorst_takesTheLeastSumOverTheHoles() {
        // Two ways with a worst miss of 4: 14 alone is exact for nine holes, so the one hole at 20 pays.
        List<CutterNeed> weighed = List.of(onLine(14, 9), onLine(18, 1), onLine(20, 1));
        assertThat(chosen(weighed, saws(14, 18, 22), 2)).containsExactly(14.0, 22.0);
        List<CutterNeed> other = List.of(onLine(14, 1), onLine(18, 9), onLine(20, 1));
        assertThat(chosen(other, saws(14, 18, 22), 2)).containsExactly(18.0, 22.0);
    }

    @Test
    void of_moreThanNeeded_takesNoMoreCuttersThanItUses() {
        assertThat(chosen(List.of(onLine(14, 1), onLine(15, 1)), saws(15, 16, 17), 3))
                .containsExactly(15.0);
    }

    @Test
    void of_cuttersOfOneSize_takesTheFirstId() {
        Cutter twin = new Cutter("A", CutterKind.TWIST, "E", 43, Interval.of(43), true, 8, 100, 80, 600, "letters");
        List<CutterNeed> needs = List.of(CutterNeed.of(new HoleNeed(BODY, STRUT, 0.2), 1, reach(saws(43))));
        assertThat(CutterChoice.of(needs, List.of(Jobs.saw(43), twin), 1)
                        .orElseThrow()
                        .cutters())
                .containsExactly(twin);
    }

    @Test
    void of_needThatNothingServes_isEmpty() {
        assertThat(CutterChoice.of(List.of(onLine(14, 1), onLine(21, 1)), saws(14, 20), 2))
                .isEmpty();
        assertThat(CutterChoice.of(List.of(), saws(14), 1)).isEmpty();
        assertThat(CutterChoice.of(List.of(onLine(14, 1)), List.of(), 1)).isEmpty();
        assertThat(CutterChoice.unlimited(List.of(onLine(14, 1), onLine(21, 1)), saws(14, 20)))
                .isEmpty();
        assertThat(CutterChoice.unlimited(List.of(onLine(14, 1), onLine(17, 1)), saws(14, 20)))
                .hasValue(3);
    }

    // Two cutters that each serve only a part: no single one does, whatever they cost.
    @Test
    void of_tooFewToServeEveryNeed_isEmpty() {
        CutterNeed low = new CutterNeed(1, 1, c -> c.size() < 20 ? OptionalDouble.of(0) : OptionalDouble.empty());
        CutterNeed high = new CutterNeed(2, 1, c -> c.size() >= 20 ? OptionalDouble.of(0) : OptionalDouble.empty());
        assertThat(CutterChoice.of(List.of(low, high), saws(14, 20), 1)).isEmpty();
        assertThat(CutterChoice.of(List.of(high, low), saws(14, 20), 2)).isPresent();
    }

    @Test
    void of_noNumber_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CutterChoice.of(List.of(), List.of(), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> onLine(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> onLine(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> onLine(4, 0));
        List<Cutter> rack = saws(44);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DrillingSettings(rack, Fit.REACH, 0, 0, Optional.empty(), Optional.of(0)));
    }

    private static DrillingSettings reach(List<Cutter> cutters) {
        return new DrillingSettings(cutters, Fit.REACH, 0);
    }

    /** What a set of cutters comes to when every hole takes the one that the rule of choice gives it. */
    private record Outcome(double worst, double total, int cutters) implements Comparable<Outcome> {
        static Optional<Outcome> of(List<HoleNeed> needs, List<Integer> holes, DrillingSettings drilling) {
            double worst = 0;
            double total = 0;
            List<Cutter> used = new ArrayList<>();
            // From the largest need down: sums are rounded in this order.
            for (int i = needs.size() - 1; i >= 0; i--) {
                Optional<Cutter> cutter =
                        HoleSize.choose(needs.get(i), drilling).cutter();
                if (cutter.isEmpty()) {
                    return Optional.empty();
                }
                double miss = StrictMath.abs(HoleSize.limit(needs.get(i), cutter.get())
                        - needs.get(i).lean());
                worst = StrictMath.max(worst, miss);
                total = miss * holes.get(i) + total;
                used.add(cutter.get());
            }
            return Optional.of(
                    new Outcome(worst, total, (int) used.stream().distinct().count()));
        }

        @Override
        public int compareTo(Outcome other) {
            return Comparator.comparingDouble(Outcome::worst)
                    .thenComparingDouble(Outcome::total)
                    .thenComparingInt(Outcome::cutters)
                    .compare(this, other);
        }
    }

    // Every set of at most k cutters, tried one by one, each hole given its cutter by the rule of choice itself.
    @Test
    void of_drawnRacks_isTheBestOfAllSubsets() {
        int[] found = {0};
        Seeds.each(400, draw -> {
            List<Double> leans =
                    draw.numbers(draw.whole(1, 7), 0.0, 0.35).stream().sorted().toList();
            List<HoleNeed> needs =
                    leans.stream().map(lean -> new HoleNeed(BODY, STRUT, lean)).toList();
            List<Integer> holes = needs.stream().map(n -> draw.whole(1, 60)).toList();
            List<Cutter> rack = draw.numbers(draw.whole(1, 8), 40, 50).stream()
                    .map(mm -> drawn(mm, draw))
                    .toList();
            DrillingSettings drilling = new DrillingSettings(
                    rack,
                    draw.coin() ? Fit.REACH : Fit.NEAREST,
                    draw.between(0, 0.02),
                    draw.coin() ? 0 : 0.3,
                    Optional.empty(),
                    Optional.empty());
            int most = draw.whole(1, 4);
            Optional<Outcome> best = IntStream.range(1, 1 << rack.size())
                    .filter(bits -> Integer.bitCount(bits) <= most)
                    .mapToObj(bits -> drilling.with(IntStream.range(0, rack.size())
                            .filter(c -> (bits >> c & 1) != 0)
                            .mapToObj(rack::get)
                            .toList()))
                    .flatMap(some -> Outcome.of(needs, holes, some).stream())
                    .min(Comparator.naturalOrder());
            List<CutterNeed> asked = IntStream.range(0, needs.size())
                    .mapToObj(i -> CutterNeed.of(needs.get(i), holes.get(i), drilling))
                    .toList();
            Optional<CutterChoice> choice = CutterChoice.of(draw.shuffled(asked), rack, most);
            assertThat(choice.map(c -> c.worst())).isEqualTo(best.map(Outcome::worst));
            choice.ifPresent(c -> {
                found[0]++;
                assertThat(c.cutters()).hasSize(best.orElseThrow().cutters());
                assertThat(c.total()).isCloseTo(best.get().total(), within(1e-12));
                Outcome itsOwn =
                        Outcome.of(needs, holes, drilling.with(c.cutters())).orElseThrow();
                assertThat(itsOwn.worst()).isEqualTo(best.get().worst());
                assertThat(itsOwn.total()).isCloseTo(best.get().total(), within(1e-12));
            });
        });
        assertThat(found[0]).as("draws with a solution").isGreaterThan(200);
    }

    private static Cutter drawn(double mm, Seeds draw) {
        double size = StrictMath.rint(mm * 10) / 10;
        double spread = draw.coin() ? 0 : draw.between(0, 0.4);
        return Jobs.saw(size, new Interval(size - spread, size, size + spread), true);
    }

    // More cutters never make the worst hole worse; as many as are wanted give every hole its own best.
    @Test
    void of_dome_moreCutters_neverWorse() {
        Hubs hubs = Hubs.of(Dome.of(new DomeSettings(6, 9)));
        List<Cutter> rack = IntStream.rangeClosed(403, 460)
                .mapToObj(tenth -> Jobs.saw(tenth / 10.0))
                .toList();
        List<CutterNeed> needs = PatternBook.of(hubs, BODY, STRUT, reach(rack)).needs(reach(rack));
        assertThat(needs.stream().mapToInt(CutterNeed::holes).sum())
                .as("two holes for each strut")
                .isEqualTo(2 * 555);
        double before = Double.POSITIVE_INFINITY;
        for (int most = 1; most <= 12; most++) {
            double worst = CutterChoice.of(needs, rack, most).orElseThrow().worst();
            assertThat(worst).isLessThanOrEqualTo(before);
            before = worst;
        }
        assertThat(CutterChoice.of(needs, rack, rack.size()).orElseThrow().worst())
                .isEqualTo(CutterChoice.unlimited(needs, rack).orElseThrow());
    }

    @Test
    void patternBook_atMostTwo_usesThoseOfTheChoice() {
        Hubs hubs = Hubs.of(Dome.of(new DomeSettings(3, 5)));
        List<Cutter> rack = saws(42, 42.2, 42.5, 43, 44);
        DrillingSettings two = new DrillingSettings(rack, Fit.REACH, 0, 0, Optional.empty(), Optional.of(1));
        PatternBook book = PatternBook.of(hubs, BODY, STRUT, two);
        assertThat(book.holesByCutter()).containsOnlyKeys("HS-42.5");
        assertThat(PatternBook.of(hubs, BODY, STRUT, reach(rack)).holesByCutter())
                .hasSizeGreaterThan(1);
        // Where even the whole rack leaves a hole without a cutter, the limit changes nothing.
        DrillingSettings none = new DrillingSettings(saws(42, 42.2), Fit.REACH, 0, 0, Optional.empty(), Optional.of(1));
        assertThat(PatternBook.of(hubs, BODY, STRUT, none).sizes())
                .isEqualTo(
                        PatternBook.of(hubs, BODY, STRUT, reach(none.cutters())).sizes());
    }
}
