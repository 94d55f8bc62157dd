package collarwright.rehearsal;

import collarwright.machining.Cut;
import collarwright.machining.Machine;
import collarwright.machining.ProgramTask;
import collarwright.tooling.Cutter;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Feeds, speeds and dwells that somebody changed: within bounds they are the shop's own judgement, told and let through;
 * beyond them they are told with the bounds.
 *
 * <p>Bounds: the machine's and the cutter's limits, and no more than a quarter over the plan in speed or in feed per turn:
 * our choice, no source.
 */
final class Drives {

    private static final double OVER = 1.25 + 1e-9;

    /** So many times the planned dwell is a slip, such as milliseconds for seconds: our choice, no source. */
    private static final double SLIP = 10;

    /** Of each line that bores: what part of the feed at the wall its centre has. */
    private final Map<Integer, Double> shares = new HashMap<>();

    private final Machine machine;
    private final Cut cut;
    private final Cutter cutter;
    private final Replayed proof;

    Drives(Replayed proof, Cut cut, Cutter cutter) {
        this.machine = proof.machine();
        this.cut = cut;
        this.cutter = cutter;
        this.proof = proof;
    }

    Drives(Proof proof, ProgramTask task) {
        this(proof, task.cut(), task.cutter());
        if (proof.bores()) {
            double tool = cutter.size();
            for (DrilledHole hole : DrilledHole.from(proof)) {
                double share = 1 - tool / hole.bored(tool).orElse(Double.POSITIVE_INFINITY);
                hole.cuts().forEach(s -> shares.put(s.line(), share));
            }
        }
    }

    /** Feed of the teeth at the wall: of a drill that of the program, of a boring cutter more than its centre's. */
    private double atWall(Event.Stroke stroke) {
        return stroke.drive().feedMmPerMin() / share(stroke);
    }

    private double share(Event.Stroke stroke) {
        return shares.getOrDefault(stroke.line(), 1.0);
    }

    /** The same events as if the bearable changes of feed and speed had not been made. */
    List<Event> asPlanned() {
        List<Event> events = new ArrayList<>();
        for (Event event : proof.events()) {
            if (event instanceof Event.Stroke s && s.feed() && s.drive().feedMmPerMin() > 0) {
                Event.Drive drive = new Event.Drive(
                        cut.feedMmPerMin() * share(s),
                        s.drive().rpm() > 0 ? cut.rpm() : 0,
                        s.drive().feedStated(),
                        s.drive().seconds());
                events.add(new Event.Stroke(s.block(), s.kind(), s.from(), s.to(), drive, s.path()));
            } else if (event instanceof Event.Spindle p && p.on() && p.rpm() > 0) {
                events.add(new Event.Spindle(p.line(), true, cut.rpm()));
            } else {
                events.add(event);
            }
        }
        return events;
    }

    /** The bearable changes: first line, plan and what stands there, with the count of cuts. */
    List<Fault> changes() {
        List<Fault> changes = new ArrayList<>();
        List<Event.Stroke> slower = proof.strokes().stream()
                .filter(s -> s.feed() && bearable(s))
                .filter(s -> differs(atWall(s), cut.feedMmPerMin(), share(s)))
                .toList();
        if (!slower.isEmpty()) {
            double least = slower.stream().mapToDouble(this::atWall).min().orElseThrow();
            double most = slower.stream().mapToDouble(this::atWall).max().orElseThrow();
            String found = "F " + proof.text(least) + (differs(least, most) ? " to " + proof.text(most) : "")
                    + " a minute" + (shares.isEmpty() ? "" : " at the wall") + " in " + slower.size() + " of "
                    + proof.strokes().stream().filter(Event.Stroke::feed).count() + " cuts";
            changes.add(new Fault(
                    slower.get(0).line(),
                    "feed " + proof.text(cut.feedMmPerMin()) + " a minute" + (shares.isEmpty() ? "" : " at the wall")
                            + " as planned",
                    found));
        }
        for (Event event : proof.events()) {
            if (event instanceof Event.Spindle p && p.on() && bearableSpeed(p.rpm()) && differs(p.rpm(), cut.rpm())) {
                changes.add(new Fault(
                        p.line(), cut.rpm() + " rpm as planned", "S " + Decimals.trimmed(p.rpm(), 1) + " rpm"));
            }
        }
        return changes;
    }

    /** The changes that machine, cutter or material do not bear, each at its line, with what they do bear. */
    List<Fault> tooMuch() {
        List<Fault> faults = new ArrayList<>();
        for (Event event : proof.events()) {
            if (event instanceof Event.Spindle p && p.on() && p.rpm() > 0 && !bearableSpeed(p.rpm())) {
                faults.add(new Fault(
                        p.line(),
                        "S " + rpm(leastSpeed()) + " to " + rpm(mostSpeed()) + " rpm, planned " + cut.rpm(),
                        "S " + rpm(p.rpm()) + " rpm"));
            } else if (event instanceof Event.Stroke s && s.feed() && s.drive().feedMmPerMin() > mostFeed(s) + 1e-6) {
                String wall = shares.isEmpty() ? "" : " at the wall";
                faults.add(new Fault(
                        s.line(),
                        "F up to " + proof.text(mostFeed(s) / share(s)) + " a minute" + wall + ", planned "
                                + proof.text(cut.feedMmPerMin()),
                        "F " + proof.text(atWall(s)) + " a minute" + wall));
            }
        }
        return faults;
    }

    /** Dwells that are so long that the unit of their word was mistaken. */
    List<Fault> longDwells() {
        double planned = StrictMath.max(1, machine.spindle().startSeconds());
        List<Fault> faults = new ArrayList<>();
        for (Event event : proof.events()) {
            if (event instanceof Event.Dwell d && SpindleRules.seconds(machine, d) > SLIP * planned) {
                String unit = machine.post().layout().dwellMilliseconds() ? "milliseconds" : "seconds";
                faults.add(new Fault(
                        d.line(),
                        "a dwell of " + Decimals.trimmed(planned, 2) + " s as planned; this control counts " + unit,
                        "G4 of " + Decimals.trimmed(SpindleRules.seconds(machine, d), 2) + " s"));
            }
        }
        return faults;
    }

    private static String rpm(double rpm) {
        return Decimals.trimmed(rpm, 1);
    }

    private static boolean differs(double a, double b) {
        return StrictMath.abs(a - b) > 0.051;
    }

    /** The centre's feed is rounded down by up to a step, which is more at the wall. */
    private static boolean differs(double a, double b, double share) {
        return StrictMath.abs(a - b) > (share < 1 ? 0.3 / share : 0.051);
    }

    private boolean bearable(Event.Stroke stroke) {
        double feed = stroke.drive().feedMmPerMin();
        return feed > 0 && feed <= mostFeed(stroke) + 1e-6;
    }

    /** Of the centre; a speed that is not bearable itself counts as the planned one. */
    private double mostFeed(Event.Stroke stroke) {
        double rpm = stroke.drive().rpm();
        double turns = bearableSpeed(rpm) ? rpm : cut.rpm();
        double perTurn = OVER * cut.feedMmPerMin() / cut.rpm() + 1e-6;
        return StrictMath.min(machine.travel().maxFeedMmPerMin(), perTurn * turns * share(stroke));
    }

    private boolean bearableSpeed(double rpm) {
        return !differs(rpm, cut.rpm()) || (rpm >= leastSpeed() && rpm <= mostSpeed());
    }

    private double leastSpeed() {
        return StrictMath.max(machine.spindle().minRpm(), cutter.minRpm());
    }

    private double mostSpeed() {
        double most = StrictMath.min(machine.spindle().maxRpm(), cutter.maxRpm());
        return StrictMath.min(most, OVER * cut.rpm());
    }
}
