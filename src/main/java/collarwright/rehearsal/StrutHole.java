package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.hub.StrutTip;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A hole as a program drills it, seen in the strut.
 *
 * <p>Frame of the strut: x from cut end a to cut end b, z the side that lay up when the first hole was drilled, y = z × x. A
 * strut that was turned end for end about the vertical keeps z up and points the other way.
 *
 * @param fromA along the strut, from cut end a
 * @param direction the way the drill came from
 * @param line the line of its first cut
 */
record StrutHole(double fromA, Vec3 direction, int line) {

    private static final Pattern TURN =
            Pattern.compile("TURN THE STRUT (\\d+\\.\\d+) DEG (ANTICLOCKWISE|CLOCKWISE) SEEN FROM THE STOP");

    private static final Vec3 UP = new Vec3(0, 0, 1);
    private static final Vec3 ALONG = new Vec3(1, 0, 0);

    /** All holes of a program in a strut of a length: what a person turned at a stop is read from the comments in front of it. */
    static List<StrutHole> from(BenchProof proof, StrutTip atStop, double cut) {
        boolean endB = atStop == StrutTip.B;
        List<StrutHole> holes = new ArrayList<>();
        for (DrilledHole hole : proof.holes()) {
            double turned = 0;
            for (Event event : proof.events()) {
                if (event instanceof Event.Stop stop && event.line() < hole.line()) {
                    turned += clockwise(stop);
                }
            }
            // The strut turned clockwise seen from the stop, which is right-handed about +X; the drill stayed where it
            // was.
            Vec3 onBed = Wrap.turned(UP, ALONG, -turned);
            Vec3 inStrut = endB ? new Vec3(-onBed.x(), -onBed.y(), onBed.z()) : onBed;
            double x = hole.at().x();
            holes.add(new StrutHole(endB ? cut - x : x, inStrut, hole.line()));
        }
        return List.copyOf(holes);
    }

    /** Radians that a stop turns the strut by; 0 where it is for something else, NaN where nobody could tell. */
    static double clockwise(Event.Stop stop) {
        double turned = 0;
        boolean told = !StopNote.read(stop.comments()).isEmpty();
        for (String comment : stop.comments()) {
            double angle = clockwise(comment);
            if (!Double.isNaN(angle)) {
                turned += angle;
                told = true;
            }
        }
        return told ? turned : Double.NaN;
    }

    /** Radians; NaN where nobody could tell by how much to turn. */
    static double clockwise(String note) {
        Matcher matcher = TURN.matcher(note);
        if (!matcher.find()) {
            return Double.NaN;
        }
        double angle = Angles.radians(Double.parseDouble(matcher.group(1)));
        return matcher.group(2).equals("CLOCKWISE") ? angle : -angle;
    }

    /**
     * The angle from this hole's axis to another's, clockwise looking from a to b, in (−π/2, π/2]: a hole has no ends.
     */
    double twistTo(StrutHole other) {
        double sine = ALONG.dot(direction.cross(other.direction));
        double cosine = direction.dot(other.direction);
        double twist = StrictMath.atan2(sine, cosine);
        double half = StrictMath.PI / 2;
        return twist > half + 1e-9 ? twist - StrictMath.PI : twist <= -half + 1e-9 ? twist + StrictMath.PI : twist;
    }
}
