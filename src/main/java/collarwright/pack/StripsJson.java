package collarwright.pack;

import collarwright.plan.RolledHole;
import collarwright.plan.StripWork;
import collarwright.tooling.FlatStrip;
import java.io.IOException;
import java.util.Iterator;

/**
 * Writes the flat strips of {@code plan.json}: what to pull from the store, what to cut, where the ends meet, what rolling
 * does to every hole.
 */
final class StripsJson {

    private final JsonOut out;

    StripsJson(JsonOut out) {
        this.out = out;
    }

    /** Writes nothing where collars are cut from pipe. */
    void write(StripWork work) throws IOException {
        if (work.strips().isEmpty()) {
            return;
        }
        Iterator<RolledHole> rolled = work.holes().iterator();
        out.rows("stripStock", work.needs(), need -> {
            out.text("material", need.material());
            out.number("widthMm", need.width());
            out.number("thicknessMm", need.thickness());
            out.whole("pieces", need.pieces());
            out.number("lengthMm", need.length());
        });
        out.objects("strips", work.strips(), strip -> strip(strip, rolled));
    }

    private void strip(FlatStrip strip, Iterator<RolledHole> rolled) throws IOException {
        out.text("pattern", strip.pattern());
        out.whole("pieces", strip.made());
        out.number("lengthMm", strip.length());
        out.number("widthMm", strip.body().width());
        out.number("thicknessMm", strip.body().wall().nominal());
        out.text("joint", strip.joint().kind().word());
        out.number("jointLengthMm", strip.joint().length());
        out.degrees("seamDeg", strip.seam());
        out.rows("holes", strip.holes(), hole -> {
            RolledHole after = rolled.next();
            out.whole("hole", hole.hole().number());
            out.number("xMm", hole.x());
            out.number("yMm", hole.y());
            out.number("diameterMm", 2 * hole.radius());
            out.degrees("limitDeg", after.limit());
            out.degrees("leastLimitDeg", after.least());
        });
    }
}
