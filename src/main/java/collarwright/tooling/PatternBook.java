package collarwright.tooling;

import collarwright.collar.CollarBody;
import collarwright.collar.Heights;
import collarwright.collar.HubSettings;
import collarwright.geometry.Interval;
import collarwright.hub.Hubs;
import collarwright.strut.StrutLayout;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import collarwright.units.Letters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The patterns of a job: which holes every hub type gets.
 *
 * @param sizes the size of every hole that had to be sized, each with the place it is for
 * @param patterns in the order of their first nodes; empty if a hole has no cutter
 * @param placements how the hubs of each type sit on their pattern, by hub type
 * @param sharing what is saved and what it costs where hub types share patterns
 * @param asked what all holes ask of the cutters
 */
public record PatternBook(
        List<Sized> sizes,
        List<Pattern> patterns,
        List<Placement> placements,
        Optional<Sharing> sharing,
        List<Asked> asked) {

    /** Keeps the lists. */
    public PatternBook {
        sizes = List.copyOf(sizes);
        patterns = List.copyOf(patterns);
        placements = List.copyOf(placements);
        asked = List.copyOf(asked);
    }

    /**
     * A size and the place it is for.
     *
     * @param place such as {@code strut SA} or {@code pattern CA / hole 2}
     * @param size the size
     */
    public record Sized(String place, HoleSize size) {}

    /**
     * What some holes that are alike ask.
     *
     * @param need of the strut that leans furthest in them
     * @param required least diameter that serves all struts that use them
     * @param holes how many there are in one dome
     */
    public record Asked(HoleNeed need, double required, int holes) {

        CutterNeed of(DrillingSettings drilling) {
            return CutterNeed.of(need, required, holes, drilling);
        }
    }

    /**
     * States what all holes ask of the cutters.
     *
     * @param drilling the rule of choice
     * @return needs with the number of their holes in one dome
     */
    public List<CutterNeed> needs(DrillingSettings drilling) {
        return asked.stream().map(a -> a.of(drilling)).toList();
    }

    /**
     * Sizes the holes and lays out one pattern for every hub type, with all holes on the mid-plane.
     *
     * @param hubs the hubs
     * @param body the collar
     * @param strut strut diameter with its limits
     * @param drilling cutters and the rule of choice
     * @return the book
     */
    public static PatternBook of(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling) {
        return ExactPatterns.book(hubs, body, strut, drilling, Heights.MIDPLANE);
    }

    /**
     * Sizes the holes for both ends of each strut type.
     *
     * @param hubs the hubs
     * @param body the collar
     * @param strut strut diameter with its limits
     * @param drilling cutters and the rule of choice
     * @return end a before end b, in the order of the strut types
     */
    public static List<HoleSize> byEnd(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling) {
        return ExactPatterns.byEnd(hubs, body, strut, drilling);
    }

    /**
     * Sizes the holes and lays out one pattern for every hub type, even if the job shares them.
     *
     * @param hubs the hubs
     * @param hub the collar and the heights of its holes
     * @param strut strut diameter with its limits
     * @param drilling cutters and the rule of choice
     * @return the book
     */
    public static PatternBook exact(Hubs hubs, HubSettings hub, Interval strut, DrillingSettings drilling) {
        return ExactPatterns.book(hubs, hub.body(), strut, drilling, hub.heights());
    }

    /**
     * A book in which no hole has a size: no strut passes the collar's bore.
     *
     * @param hubs the hubs
     * @return hub types with patterns of their own, none of which is laid out
     */
    public static PatternBook unsized(Hubs hubs) {
        List<Placement> placements = new ArrayList<>();
        hubs.types()
                .forEach(type -> placements.add(
                        Placement.own(placements.size(), type.struts().size())));
        return new PatternBook(List.of(), List.of(), placements, Optional.empty(), List.of());
    }

    /**
     * Sizes the holes and lays out the patterns.
     *
     * @param hubs the hubs
     * @param struts their struts
     * @param hub the collar and the heights of its holes
     * @param strut strut diameter with its limits
     * @param drilling cutters, the rule of choice and whether patterns are shared
     * @return the book
     */
    public static PatternBook of(
            Hubs hubs, StrutLayout struts, HubSettings hub, Interval strut, DrillingSettings drilling) {
        if (drilling.shared().isEmpty()) {
            return ExactPatterns.book(hubs, hub.body(), strut, drilling, hub.heights());
        }
        SharedPatterns.Laid laid =
                SharedPatterns.lay(hubs, struts, hub, drilling).laid(strut);
        List<Asked> asked = laid.asked(hubs);
        DrillingSettings narrowed =
                CutterChoice.narrowed(asked.stream().map(a -> a.of(drilling)).toList(), drilling);
        List<Sized> sizes = new ArrayList<>();
        for (int i = 0; i < laid.needs().size(); i++) {
            for (int hole = 0; hole < laid.needs().get(i).size(); hole++) {
                String place = "pattern " + Ids.letters('C', i) + " / hole " + (hole + 1);
                HoleNeed need = laid.needs().get(i).get(hole);
                sizes.add(new Sized(
                        place, HoleSize.choose(need, laid.required().get(i).get(hole), narrowed)));
            }
        }
        boolean complete = sizes.stream().allMatch(s -> s.size().cutter().isPresent());
        List<Pattern> patterns = complete ? patterns(hubs, laid, sizes, hub.body()) : List.of();
        return new PatternBook(sizes, patterns, laid.placements(), Optional.of(laid.sharing()), asked);
    }

    private static List<Pattern> patterns(Hubs hubs, SharedPatterns.Laid laid, List<Sized> sizes, CollarBody body) {
        List<Pattern> patterns = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < laid.azimuths().size(); i++) {
            List<Hole> holes = new ArrayList<>();
            for (int hole = 0; hole < laid.azimuths().get(i).size(); hole++) {
                double azimuth = laid.azimuths().get(i).get(hole);
                double height = laid.heights().get(i).get(hole);
                holes.add(sizes.get(next).size().at(hole + 1, azimuth).at(hole + 1, azimuth, height));
                next++;
            }
            int count = Placement.collars(hubs, laid.placements(), i);
            patterns.add(new Pattern(Ids.letters('C', i), count, holes, fingerprint(body, holes)));
        }
        return patterns;
    }

    /**
     * Tells a drilling apart from any other: what a drill press needs to make the collar, and nothing of the dome's size, so
     * that batches can be joined.
     *
     * @param body the collar
     * @param holes its holes, by number
     * @return 8 letters
     */
    public static String fingerprint(CollarBody body, List<Hole> holes) {
        StringBuilder text = new StringBuilder()
                .append(Decimals.fixed(2 * body.outerRadius(), 4))
                .append(' ')
                .append(Decimals.fixed(body.wall().nominal(), 4))
                .append(' ')
                .append(Decimals.fixed(body.width(), 4));
        if (body.rims() > 0) {
            text.append(" rims ").append(Decimals.fixed(body.rims(), 4));
        }
        for (Hole hole : holes) {
            text.append('\n')
                    .append(Decimals.fixed(Angles.degrees(hole.azimuth()), 6))
                    .append(' ')
                    .append(Decimals.fixed(hole.height(), 4))
                    .append(' ')
                    .append(Decimals.fixed(hole.diameter(), 4));
        }
        return Letters.of(text.toString());
    }

    /**
     * Tells whether a pattern does not say which hub type it is for.
     *
     * @return true if hub types share patterns, by agreement or because they drill the same
     */
    public boolean hubsShare() {
        return sharing.isPresent()
                || placements.stream().mapToInt(Placement::pattern).distinct().count() < placements.size();
    }

    /**
     * Tells whether collars are put on upside down.
     *
     * @return true if a hub type takes its collar with TOP toward the inside of the dome
     */
    public boolean flips() {
        return placements.stream().anyMatch(Placement::flipped);
    }

    /**
     * Counts the holes of a dome by cutter.
     *
     * @return holes per cutter id in one dome, by id
     */
    public Map<String, Integer> holesByCutter() {
        Map<String, Integer> counts = new TreeMap<>();
        for (Pattern pattern : patterns) {
            for (Hole hole : pattern.holes()) {
                counts.merge(hole.cutter().id(), pattern.count(), Integer::sum);
            }
        }
        return counts;
    }
}
