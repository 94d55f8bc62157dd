package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import collarwright.machining.TubeCutter;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds a tube cutter's program to its rules: what is switched on when, where it may go, how fast, and that every stay below
 * the clear height makes what was planned, in its order; cuts all round come last.
 */
final class TubeRules {

    /** What a speed may be off, as a share. Our choice, no source. */
    private static final double SPEED = 0.02;

    private final Proof proof;
    private final ProgramTask task;
    private final TubeCutter tube;
    private final List<Fault> faults = new ArrayList<>();

    private TubeRules(Proof proof, ProgramTask task) {
        this.proof = proof;
        this.task = task;
        this.tube = proof.machine().tube().orElseThrow();
    }

    static List<Fault> check(Proof proof, ProgramTask task) {
        TubeRules rules = new TubeRules(proof, task);
        MotionLimits.Stated found = MotionLimits.firstStated(proof, "ZYAX");
        rules.faults.addAll(MotionLimits.order(proof, found, "ZAX", "Z, the pipe, X"));
        rules.faults.addAll(MotionLimits.ends(proof));
        rules.faults.addAll(TorchRules.check(proof));
        for (Event.Stroke stroke : proof.strokes()) {
            rules.faults.addAll(MotionLimits.travel(proof, stroke));
            rules.rapid(stroke);
            rules.cut(stroke);
        }
        rules.stays();
        return List.copyOf(rules.faults);
    }

    private double level(double aboveCrown) {
        return proof.settings().work().body().outerRadius()
                + aboveCrown
                + proof.file().lift();
    }

    private boolean near(double z, double wanted) {
        return StrictMath.abs(z - wanted) <= 2 * proof.tolerance();
    }

    private void rapid(Event.Stroke stroke) {
        if (stroke.feed()) {
            return;
        }
        faults.addAll(MotionLimits.oneAxis(stroke));
        boolean high = proof.atClear(stroke.lowest());
        if ((stroke.turns() || stroke.travels()) && !high) {
            fault(
                    stroke,
                    "rapids of X and of the pipe at Z " + proof.text(proof.clear()) + " or higher",
                    "Z " + proof.text(stroke.lowest()));
        }
        if (!high && !near(stroke.lowest(), level(tube.heights().pierce())) && rises(stroke) <= 0) {
            fault(
                    stroke,
                    "a rapid down to Z " + proof.text(level(tube.heights().pierce())) + ", where it pierces",
                    "Z " + proof.text(stroke.to().z()));
        }
        if (!high && rises(stroke) > 0 && !proof.atClear(stroke.to().z())) {
            fault(
                    stroke,
                    "a rapid up to Z " + proof.text(proof.clear()),
                    "Z " + proof.text(stroke.to().z()));
        }
    }

    private static double rises(Event.Stroke stroke) {
        return stroke.to().z() - stroke.from().z();
    }

    private void cut(Event.Stroke stroke) {
        if (!stroke.feed()) {
            return;
        }
        if (stroke.path() instanceof Swept.Arc) {
            fault(stroke, "straight stretches", "an arc");
            return;
        }
        double low = level(tube.heights().cut());
        if (!stroke.turns() && !stroke.travels()) {
            boolean down = near(stroke.from().z(), level(tube.heights().pierce()));
            if (!down || !near(stroke.to().z(), low)) {
                fault(
                        stroke,
                        "down from the pierce height to Z " + proof.text(low),
                        "Z " + proof.text(stroke.from().z()) + " to "
                                + proof.text(stroke.to().z()));
            }
            double most = tube.speed().of(proof.settings().cutting().material());
            if (stroke.drive().feedMmPerMin() > most * (1 + SPEED)) {
                fault(
                        stroke,
                        "down no faster than " + speed(most),
                        speed(stroke.drive().feedMmPerMin()));
            }
            return;
        }
        if (!near(stroke.from().z(), low) || !near(stroke.to().z(), low)) {
            fault(
                    stroke,
                    "Z " + proof.text(low) + " while it cuts",
                    "Z " + proof.text(stroke.to().z()));
        }
        if (StrictMath.min(stroke.from().x(), stroke.to().x()) < tube.kerf() / 2 - proof.tolerance()) {
            fault(
                    stroke,
                    "the side of the cut in front of the jaw face, X 0 or more",
                    "X " + proof.text(stroke.to().x()));
        }
        pace(stroke);
    }

    /** The speed over the outside is the asked one, or the axis turns as fast as it can. */
    private void pace(Event.Stroke stroke) {
        double turn = StrictMath.abs(stroke.to().a() - stroke.from().a());
        double along = StrictMath.abs(stroke.to().x() - stroke.from().x());
        double outer = proof.settings().work().body().outerRadius();
        double minutes = stroke.drive().seconds() / 60;
        Machine.Rotary rotary = proof.machine().rotary();
        double wanted = tube.speed().of(proof.settings().cutting().material());
        double speed = StrictMath.hypot(along, Angles.radians(turn) * outer) / minutes;
        double turning = turn / minutes;
        if (!(turning <= rotary.rapidDegreesPerMin() * (1 + SPEED / 10))) {
            fault(
                    stroke,
                    "the pipe turned at " + Decimals.fixed(rotary.rapidDegreesPerMin(), 0)
                            + " degrees a minute at most",
                    Double.isFinite(turning) ? Decimals.fixed(turning, 0) : "no time stated");
        }
        boolean slowed = turning >= rotary.rapidDegreesPerMin() * (1 - SPEED);
        if (!(speed <= wanted * (1 + SPEED)) || (!slowed && speed < wanted * (1 - SPEED))) {
            fault(stroke, speed(wanted) + " over the pipe's outside, within 2 %", speed(speed));
        }
    }

    private String speed(double mmPerMin) {
        return Double.isFinite(mmPerMin) ? proof.text(mmPerMin) + " a minute" : "no time stated";
    }

    /** Stay by stay beside the plan. */
    private void stays() {
        List<TubeStay> stays = TubeStay.of(proof);
        List<Operation> planned = task.operations();
        if (stays.size() != planned.size()) {
            int line = stays.isEmpty() ? 1 : stays.get(stays.size() - 1).line();
            faults.add(new Fault(line, planned.size() + " marks and cuts", stays.size() + " of them"));
        }
        boolean parted = false;
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < stays.size(); i++) {
            TubeStay stay = stays.get(i);
            if (i < planned.size()) {
                stay(stay, planned.get(i));
            }
            boolean round = stay.kind() == TubeStay.Kind.ROUND;
            if (parted && !round) {
                faults.add(new Fault(stay.line(), "cuts all round last of all", "another one after it"));
            }
            if (round && !(stay.start().x() < last)) {
                faults.add(new Fault(
                        stay.line(),
                        "cuts all round from the free end inward",
                        "X " + proof.text(stay.start().x())));
            }
            last = round ? stay.start().x() : last;
            parted |= round;
        }
    }

    private void stay(TubeStay stay, Operation operation) {
        String what = "collar " + operation.place().collar() + ", " + operation.title();
        dwell(stay, operation, what);
        if (operation instanceof Operation.Contour contour) {
            if (stay.kind() == TubeStay.Kind.OUTLINE) {
                faults.addAll(OutlineRules.check(proof, stay, contour));
            } else {
                faults.add(new Fault(stay.line(), what + " cut along its outline", "no outline"));
            }
        } else if (operation instanceof Operation.PartOff) {
            round(stay, operation, what);
        } else if (stay.kind() != TubeStay.Kind.SPOT || !at(stay.start(), operation)) {
            faults.add(new Fault(stay.line(), what + " at " + place(operation), place(stay.start())));
        }
    }

    /** How long it stands before it cuts, or on a spot. */
    private void dwell(TubeStay stay, Operation operation, String what) {
        boolean mark = operation instanceof Operation.Mark;
        double wanted = mark ? tube.start().markSeconds() : tube.start().pierceSeconds();
        for (Event event : stay.events()) {
            if (event instanceof Event.Dwell dwell) {
                double seconds = SpindleRules.seconds(proof.machine(), dwell);
                if (StrictMath.abs(seconds - wanted) > 0.0051) {
                    faults.add(new Fault(dwell.line(), what + ", a dwell of " + wanted + " s", seconds + " s"));
                }
            }
        }
    }

    /** Once round and a little further, one way, X standing still. */
    private void round(TubeStay stay, Operation operation, String what) {
        double over = Angles.degrees(
                tube.start().overcut() / proof.settings().work().body().outerRadius());
        double slack = 2 * proof.angleStepDegrees();
        boolean one = true;
        double way = 0;
        double sign = 0;
        for (Event.Stroke sweep : stay.sweeps()) {
            double turn = sweep.to().a() - sweep.from().a();
            one &= sign * turn >= 0;
            sign = turn;
            way += StrictMath.abs(turn);
            one &= sweep.to().a() > -slack && sweep.to().a() < 360 + over + slack;
        }
        if (stay.kind() != TubeStay.Kind.ROUND
                || !one
                || !(StrictMath.abs(way - 360 - over) <= slack)
                || StrictMath.abs(stay.start().x() - operation.place().x()) > 2 * proof.tolerance()) {
            faults.add(new Fault(
                    stay.line(),
                    what + ", once round and " + proof.degrees(over) + " at X "
                            + proof.text(operation.place().x()),
                    proof.degrees(way) + " at X " + proof.text(stay.start().x())));
        }
    }

    private boolean at(Pose pose, Operation operation) {
        return StrictMath.abs(pose.x() - operation.place().x()) <= 2 * proof.tolerance()
                && StrictMath.abs(pose.a() - operation.place().angleDegrees()) <= 2 * proof.angleToleranceDegrees();
    }

    private String place(Operation operation) {
        return "X " + proof.text(operation.place().x()) + ", "
                + proof.degrees(operation.place().angleDegrees());
    }

    private String place(Pose pose) {
        return "X " + proof.text(pose.x()) + ", " + proof.degrees(pose.a());
    }

    private void fault(Event.Stroke stroke, String expected, String found) {
        faults.add(new Fault(stroke.line(), expected, found));
    }
}
