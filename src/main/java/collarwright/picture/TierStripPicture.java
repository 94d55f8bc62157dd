package collarwright.picture;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.kit.Connection;
import collarwright.plan.Plan;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some hubs of one tier side by side, as they are seen from outside with UP up, and every strut at them: places count from
 * right to left, because they count clockwise seen from above. Hubs of the tiers above and below are dots with their names.
 */
public final class TierStripPicture implements Picture {

    private static final double WIDTH = 180;
    private static final double ROW = 24;
    private static final double NAME = 6.5;
    private static final double LEAST_PITCH = 30;

    /** What a strut's name takes, to see whether names have room. */
    private static final double STRUT = 6;

    private final Plan plan;
    private final Hubs hubs;
    private final Dome dome;
    private final HubMarks marks;
    private final Window window;
    private final double pitch;
    private final Map<Integer, List<Connection>> ends;

    /**
     * Which hubs.
     *
     * @param tier the tier
     * @param from the first of them, from 0 at the tier's first place
     * @param count how many
     */
    public record Window(int tier, int from, int count) {}

    /**
     * Prepares the picture.
     *
     * @param plan the plan
     * @param window which hubs
     * @param pitch from hub to hub, mm
     * @param ends strut ends by node
     */
    public TierStripPicture(Plan plan, Window window, double pitch, Map<Integer, List<Connection>> ends) {
        this.plan = plan;
        this.hubs = plan.hubs();
        this.dome = hubs.dome();
        this.marks = new HubMarks(plan);
        this.window = window;
        this.pitch = pitch;
        this.ends = Map.copyOf(ends);
    }

    /**
     * Finds how far apart hubs have to stand so that their names and those of their struts have room.
     *
     * @param plan the plan
     * @param letters the typeface
     * @return mm from hub to hub
     */
    public static double pitch(Plan plan, Lettering letters) {
        HubMarks marks = new HubMarks(plan);
        double half = 0;
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            half = StrictMath.max(half, marks.halfWidth(letters, node));
        }
        return StrictMath.max(LEAST_PITCH, 2 * half + 14.6);
    }

    /**
     * Cuts a tier into strips of about equal length.
     *
     * @param tier the tier
     * @param hubs how many hubs it has
     * @param pitch from hub to hub, mm
     * @return strips from the first place on
     */
    public static List<Window> windows(int tier, int hubs, double pitch) {
        int most = (int) StrictMath.max(1, StrictMath.floor(WIDTH / pitch) - 1);
        int strips = (hubs + most - 1) / most;
        List<Window> windows = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < strips; i++) {
            int count = hubs / strips + (i < hubs % strips ? 1 : 0);
            windows.add(new Window(tier, from, count));
            from += count;
        }
        return windows;
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return middle() + (reaches(1) ? ROW + NAME : HubMarks.HALF_HEIGHT + 4);
    }

    private double middle() {
        return reaches(-1) ? ROW + NAME : HubMarks.HALF_HEIGHT + 4;
    }

    // Whether a strut of these hubs goes to a tier above (-1) or below (1).
    private boolean reaches(int way) {
        for (int i = 0; i < window.count(); i++) {
            int node = first() + window.from() + i;
            for (Connection end : ends.getOrDefault(node, List.of())) {
                int tier = dome.tierOf(other(end, node));
                if (Integer.signum(tier - window.tier()) == way) {
                    return true;
                }
            }
        }
        return false;
    }

    private int other(Connection end, int node) {
        int a = hubs.nodeAtA(end.member());
        return a == node ? hubs.nodeAtB(end.member()) : a;
    }

    @Override
    public String describe() {
        return "Hubs " + marks.names().node(first() + window.from()) + " to "
                + marks.names().node(first() + window.from() + window.count() - 1)
                + " side by side from right to left, seen from outside, with their struts, holes and stripes.";
    }

    private int first() {
        return dome.firstOfTier(window.tier());
    }

    private int count() {
        return dome.firstOfTier(window.tier() + 1) - first();
    }

    private double x(double place) {
        return WIDTH / 2 - (place - window.from() - (window.count() - 1) / 2.0) * pitch;
    }

    // Clockwise seen from above, from the +x meridian, in [0, 2π).
    private double azimuth(int node) {
        double x = dome.x(node) - dome.middle().x();
        double y = dome.y(node) - dome.middle().y();
        double azimuth = StrictMath.atan2(-y, x);
        return azimuth < -1e-9 ? azimuth + 2 * StrictMath.PI : azimuth;
    }

    private boolean onAxis(int node) {
        double x = dome.x(node) - dome.middle().x();
        double y = dome.y(node) - dome.middle().y();
        return StrictMath.hypot(x, y) < 1e-9;
    }

    // Where a node of any tier lies among the places of this one, nearest to a place of it.
    private double place(int node, int near) {
        if (onAxis(node)) {
            return near;
        }
        double away = azimuth(node) - azimuth(first() + near);
        away -= 2 * StrictMath.PI * StrictMath.rint(away / (2 * StrictMath.PI));
        int step = away < 0 ? -1 : 1;
        int next = StrictMath.floorMod(near + step, count());
        double gap = StrictMath.abs(azimuth(first() + next) - azimuth(first() + near));
        gap = StrictMath.min(gap, 2 * StrictMath.PI - gap);
        return gap < 1e-9 ? near : near + away / gap;
    }

    private Spot spot(int node, int near) {
        int tier = dome.tierOf(node);
        double mid = middle();
        if (tier == window.tier()) {
            int ahead = StrictMath.floorMod(node - first() - near, count());
            int away = ahead > count() / 2 ? ahead - count() : ahead;
            return new Spot(x(near + away), mid);
        }
        double far = StrictMath.abs(tier - window.tier()) > 1 ? ROW : ROW - 1;
        double y = mid + (tier > window.tier() ? far : -far);
        return new Spot(x(place(node, near)), y);
    }

    /**
     * Tells whether all names and numbers have room, which they lack where places of neighbouring tiers lie close together.
     *
     * @param letters the typeface
     * @return false where the hubs are better shown one by one
     */
    public boolean clear(Lettering letters) {
        List<Rectangle2D> boxes = new ArrayList<>();
        Set<String> named = new HashSet<>();
        for (Line line : lines()) {
            Spot at = strutSpot(line);
            boxes.add(new Rectangle2D.Double(at.x() - STRUT / 2, at.y() - 2.8, STRUT, 5.6));
            Spot name = nameSpot(line, letters);
            if (!line.inner() && named.add(line.other() + " " + StrictMath.rint(name.x()))) {
                double wide = letters.width(marks.names().node(line.other()), Label.SIZE);
                boxes.add(new Rectangle2D.Double(name.x() - wide / 2, name.y() - 1.5, wide, 3));
            }
        }
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (boxes.get(i).intersects(boxes.get(j))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean level(Line line) {
        return StrictMath.abs(line.to().y() - line.from().y()) < 1;
    }

    private static Spot strutSpot(Line line) {
        double length = StrictMath.hypot(
                line.to().x() - line.from().x(), line.to().y() - line.from().y());
        return along(line.from(), line.to(), level(line) ? 0.5 : (length / 2 + 3.3) / length);
    }

    private Spot nameSpot(Line line, Lettering letters) {
        double half = letters.width(marks.names().node(line.other()), Label.SIZE) / 2 + 0.6;
        double x = StrictMath.min(WIDTH - half, StrictMath.max(half, line.to().x()));
        double y = line.to().y();
        return new Spot(x, level(line) ? y : y < line.from().y() ? y - 3.4 : y + 3.4);
    }

    private boolean inWindow(int node) {
        int place = node - first();
        return dome.tierOf(node) == window.tier() && place >= window.from() && place < window.from() + window.count();
    }

    @Override
    public void paint(Sketch sketch) {
        int types = plan.struts().types().size();
        List<Line> lines = lines();
        for (Line line : lines) {
            sketch.line(StrutLines.of(line.type(), types), line.from(), line.to());
        }
        Set<String> named = new HashSet<>();
        for (Line line : lines) {
            if (!line.inner()) {
                other(sketch, line, named);
            }
        }
        for (Line line : lines) {
            marks.strut(sketch, strutSpot(line), line.type());
        }
        for (int i = 0; i < window.count(); i++) {
            int place = window.from() + i;
            marks.box(sketch, new Spot(x(place), middle()), first() + place);
        }
        for (Line line : lines) {
            marks.hole(sketch, line.from(), line.to(), line.hub(), line.hole());
            if (line.inner()) {
                marks.hole(sketch, line.to(), line.from(), line.other(), line.otherHole());
            }
        }
    }

    private record Line(int hub, int hole, int other, int otherHole, int type, boolean inner, Spot from, Spot to) {}

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Set<Integer> drawn = new HashSet<>();
        for (int i = 0; i < window.count(); i++) {
            int node = first() + window.from() + i;
            for (Connection end : ends.getOrDefault(node, List.of())) {
                int m = end.member();
                boolean atA = hubs.nodeAtA(m) == node;
                int other = other(end, node);
                if (inWindow(other) && !drawn.add(m)) {
                    continue;
                }
                Spot from = new Spot(x(window.from() + i), middle());
                Spot to = spot(other, window.from() + i);
                boolean inner = inWindow(other) && StrictMath.abs(to.x() - x(other - first())) < 1;
                if (!inner) {
                    // Another strip, or the other way round the dome: a stub at each end.
                    drawn.remove(m);
                }
                lines.add(new Line(
                        node,
                        end.hole(),
                        other,
                        atA ? plan.holeAtB(m) : plan.holeAtA(m),
                        hubs.strutTypeOf(m),
                        inner,
                        from,
                        new Spot(StrictMath.min(WIDTH - 1, StrictMath.max(1, to.x())), to.y())));
            }
        }
        return lines;
    }

    // A hub of another strip: its name where the strut ends, once for each place.
    private void other(Sketch sketch, Line line, Set<String> named) {
        String name = marks.names().node(line.other());
        Spot at = nameSpot(line, sketch.letters());
        if (!level(line)) {
            sketch.fill(Ink.INK, Sketch.circle(line.to(), 0.9));
        }
        if (named.add(name + StrictMath.rint(at.x()))) {
            sketch.write(Label.of(name, at.x(), at.y(), Label.Side.MIDDLE)
                    .in(Ink.DATUM)
                    .onPaper());
        }
    }

    private static Spot along(Spot from, Spot to, double share) {
        return from.plus(share * (to.x() - from.x()), share * (to.y() - from.y()));
    }
}
