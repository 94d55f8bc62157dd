package collarwright.trial;

import collarwright.collar.RoundHole;
import collarwright.collar.Webs;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holes of different sizes round one test collar, from one that a strut just passes to one in which it leans well beyond what
 * the job needs.
 *
 * <p>Steps: 1. the cutters whose holes the strut passes, up to a lean well above the need. 2. From eight holes down: as many
 * as the girth has room for, with webs; first spread evenly over the lean, then exchanged one by one as long as the expected
 * errors of bearing wall and oversize together get less; neighbours in size stay half an even step to one and a half
 * apart, so that it stays a ladder and shows where the contact is another than supposed. 3. Laid round the collar with equal webs, smallest
 * first, clockwise from above. Before that, the cutters that the job drills with take the places of their nearest sizes.
 *
 * @param need what it is laid out for
 * @param cutters one for each hole, smallest first
 */
public record Ladder(LadderNeed need, List<Cutter> cutters) {

    /** Fewest holes that tell anything. */
    public static final int FEWEST = 3;

    /** Most holes; more take longer to read than they tell. Our choice, no source. */
    public static final int MOST = 8;

    /** Fewest holes for which wide webs are kept. Our choice, no source. */
    private static final int ENOUGH = 4;

    /** How far beyond the need the largest hole may lean: half the need more, at least so much. Our choice, no source. */
    private static final double BEYOND = StrictMath.toRadians(8);

    private static final double STEEPEST = StrictMath.toRadians(45);
    private static final int MOST_EXCHANGES = 200;

    /** Keeps the cutters. */
    public Ladder {
        cutters = List.copyOf(cutters);
    }

    /**
     * Lays out a ladder.
     *
     * @param need collar, strut and lean
     * @param rack the shop's cutters that can drill this collar, in any order
     * @return 3 to 8 holes; empty if there are not three sizes with room for their webs
     */
    public static Optional<Ladder> of(LadderNeed need, List<Cutter> rack) {
        return of(need, rack, List.of());
    }

    /**
     * Lays out a ladder that holds the cutters which a job drills with.
     *
     * @param need collar, strut and lean
     * @param rack the shop's cutters that can drill this collar, in any order
     * @param own the job's cutters, the one with the most holes first; each takes the place of the nearest size that is none
     *     of them, as long as the webs hold and it keeps a quarter of an even step from its neighbours
     * @return 3 to 8 holes; empty if there are not three sizes with room for their webs
     */
    public static Optional<Ladder> of(LadderNeed need, List<Cutter> rack, List<Cutter> own) {
        List<Cutter> usable = usable(need, rack);
        for (int holes = StrictMath.min(MOST, usable.size()); holes >= FEWEST; holes--) {
            double web = holes >= ENOUGH ? need.web() : need.web() / 2;
            Choice choice = new Choice(need, usable, web);
            Optional<List<Cutter>> chosen = choice.of(holes);
            if (chosen.isPresent()) {
                return Optional.of(new Ladder(need, choice.with(own, chosen.get())));
            }
        }
        return Optional.empty();
    }

    /**
     * Finds the cutters whose holes the strut passes and binds in, up to well above the need.
     *
     * @param need collar, strut and lean
     * @param rack the shop's cutters
     * @return by size, one of each
     */
    public static List<Cutter> usable(LadderNeed need, List<Cutter> rack) {
        double most = StrictMath.min(STEEPEST, StrictMath.max(1.5 * need.largestNeed(), need.largestNeed() + BEYOND));
        List<Cutter> usable = new ArrayList<>();
        rack.stream()
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id))
                .filter(c -> c.asDrilled().min() > need.strut().max()
                        && c.asDrilled().max() < 2 * need.body().leastInnerRadius()
                        && Webs.toEdge(need.body().width(), 0, c.asDrilled().max()) >= 0
                        && full(need, c) <= most)
                .filter(c -> usable.isEmpty()
                        || c.asDrilled().nominal()
                                > usable.get(usable.size() - 1).asDrilled().nominal())
                .forEach(usable::add);
        return List.copyOf(usable);
    }

    private static double full(LadderNeed need, Cutter cutter) {
        TrialCollar collar = need.collar();
        return RoundHole.tiltLimit(
                need.strut().nominal(), cutter.asDrilled().nominal(), collar.bore() / 2, collar.outerRadius());
    }

    /**
     * Returns the lean at which a nominal strut binds if the full wall bears: the least that may be read.
     *
     * @param cutter one of the cutters
     * @return the tilt limit, without oversize
     */
    public double fullWall(Cutter cutter) {
        return full(need, cutter);
    }

    /**
     * Returns the lean at which a nominal strut binds if a single edge bears: the most that may be read without oversize.
     *
     * @param cutter one of the cutters
     * @return the tilt limit, without oversize
     */
    public double singleEdge(Cutter cutter) {
        double middle = need.collar().middle();
        return RoundHole.tiltLimit(need.strut().nominal(), cutter.asDrilled().nominal(), middle, middle);
    }

    /**
     * Lays the holes round the collar.
     *
     * @param id of the pattern
     * @return one collar; hole 1 is the smallest, webs are equal at the inner wall
     */
    public Pattern pattern(String id) {
        double radius = need.body().leastInnerRadius();
        double[] halves = new double[cutters.size()];
        double taken = 0;
        for (int i = 0; i < halves.length; i++) {
            halves[i] = StrictMath.asin(cutters.get(i).asDrilled().nominal() / 2 / radius);
            taken += 2 * halves[i];
        }
        double web = (2 * StrictMath.PI - taken) / halves.length;
        List<Hole> holes = new ArrayList<>();
        double azimuth = 0;
        for (int i = 0; i < halves.length; i++) {
            azimuth += i == 0 ? 0 : halves[i - 1] + web + halves[i];
            Cutter cutter = cutters.get(i);
            HoleNeed straight = new HoleNeed(need.body(), need.strut(), 0);
            holes.add(new HoleSize(straight, need.strut().max(), Optional.of(cutter)).at(i + 1, azimuth));
        }
        return new Pattern(id, 1, holes, PatternBook.fingerprint(need.body(), holes));
    }

    /** The choice of the sizes. */
    private record Choice(LadderNeed need, List<Cutter> usable, double web) {

        Optional<List<Cutter>> of(int holes) {
            List<Cutter> chosen = even(holes);
            if (chosen.size() < holes || !room(chosen) || !apart(chosen, Double.POSITIVE_INFINITY)) {
                return Optional.empty();
            }
            // A rack with wide steps has gaps that cannot be helped.
            double widest = StrictMath.max(1.5 * step(holes), widest(chosen));
            double best = error(chosen);
            for (int i = 0; i < MOST_EXCHANGES; i++) {
                List<Cutter> better = exchanged(chosen, best, widest);
                double error = error(better);
                if (!(error < best * (1 - 1e-9))) {
                    break;
                }
                chosen = better;
                best = error;
            }
            return Optional.of(chosen);
        }

        // Those that were put in stay; what they push aside is never one of them.
        List<Cutter> with(List<Cutter> own, List<Cutter> chosen) {
            List<Cutter> now = chosen;
            List<Cutter> kept = new ArrayList<>();
            for (Cutter cutter : own) {
                if (usable.contains(cutter)) {
                    now = with(cutter, now, kept);
                    kept.add(cutter);
                }
            }
            return now;
        }

        private List<Cutter> with(Cutter cutter, List<Cutter> chosen, List<Cutter> kept) {
            if (chosen.contains(cutter)) {
                return chosen;
            }
            double closest = step(chosen.size()) / 4;
            return chosen.stream()
                    .filter(c -> !kept.contains(c))
                    .sorted(Comparator.comparingDouble(c -> StrictMath.abs(lean(c) - lean(cutter))))
                    .limit(1)
                    .map(c -> bySize(Stream.concat(chosen.stream().filter(o -> !o.equals(c)), Stream.of(cutter))
                            .toList()))
                    .filter(next -> closest(next) >= closest && room(next))
                    .findFirst()
                    .orElse(chosen);
        }

        private double closest(List<Cutter> chosen) {
            double closest = Double.POSITIVE_INFINITY;
            for (int i = 1; i < chosen.size(); i++) {
                closest = StrictMath.min(closest, lean(chosen.get(i)) - lean(chosen.get(i - 1)));
            }
            return closest;
        }

        private double lean(Cutter cutter) {
            return full(need, cutter);
        }

        private double step(int holes) {
            return (lean(usable.get(usable.size() - 1)) - lean(usable.get(0))) / (holes - 1);
        }

        private List<Cutter> even(int holes) {
            double first = lean(usable.get(0));
            List<Cutter> chosen = new ArrayList<>();
            for (int i = 0; i < holes; i++) {
                double wanted = first + i * step(holes);
                usable.stream()
                        .filter(c -> !chosen.contains(c))
                        .min(Comparator.comparingDouble(c -> StrictMath.abs(lean(c) - wanted)))
                        .ifPresent(chosen::add);
            }
            return bySize(chosen);
        }

        private static List<Cutter> bySize(List<Cutter> cutters) {
            return cutters.stream()
                    .sorted(Comparator.comparingDouble(c -> c.asDrilled().nominal()))
                    .toList();
        }

        private boolean apart(List<Cutter> chosen, double widest) {
            double least = step(chosen.size()) / 2;
            for (int i = 1; i < chosen.size(); i++) {
                if (lean(chosen.get(i)) - lean(chosen.get(i - 1)) < least) {
                    return false;
                }
            }
            return widest(chosen) <= widest;
        }

        private double widest(List<Cutter> chosen) {
            double widest = 0;
            for (int i = 1; i < chosen.size(); i++) {
                widest = StrictMath.max(widest, lean(chosen.get(i)) - lean(chosen.get(i - 1)));
            }
            return widest;
        }

        // At the inner wall, each web as wide as the larger of its two holes asks.
        private boolean room(List<Cutter> chosen) {
            double radius = need.body().leastInnerRadius();
            double gaps = 0;
            for (int i = 0; i < chosen.size(); i++) {
                double one = chosen.get(i).asDrilled().max();
                double next = chosen.get((i + 1) % chosen.size()).asDrilled().max();
                gaps += StrictMath.asin(one / 2 / radius)
                        + StrictMath.asin(next / 2 / radius)
                        + web * StrictMath.max(one, next) / radius;
            }
            return gaps <= 2 * StrictMath.PI;
        }

        // What the errors of both unknowns come to, for readings that are all off alike.
        private double error(List<Cutter> chosen) {
            List<TrialRow> rows = chosen.stream()
                    .map(c -> new TrialRow(
                            1,
                            c.id(),
                            c.asDrilled().nominal(),
                            false,
                            need.strut().nominal(),
                            0.1))
                    .toList();
            BearingModel model = new BearingModel(need.collar(), rows);
            var normal = BoundedFit.Normal.of(model, new Guess(need.collar().wall() / 2, 0));
            double determinant = normal.bearings() * normal.oversizes() - normal.both() * normal.both();
            return determinant > 0 ? (normal.bearings() + normal.oversizes()) / determinant : Double.POSITIVE_INFINITY;
        }

        private List<Cutter> exchanged(List<Cutter> chosen, double error, double widest) {
            List<Cutter> best = chosen;
            double least = error;
            for (int i = 0; i < chosen.size(); i++) {
                for (Cutter other : usable) {
                    List<Cutter> next = new ArrayList<>(chosen);
                    next.set(i, other);
                    List<Cutter> sorted = bySize(next);
                    if (!chosen.contains(other) && apart(sorted, widest) && room(sorted)) {
                        double there = error(sorted);
                        if (there < least) {
                            least = there;
                            best = sorted;
                        }
                    }
                }
            }
            return best;
        }
    }
}
