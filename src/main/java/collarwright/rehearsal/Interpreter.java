package collarwright.rehearsal;

import collarwright.machining.RotarySettings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Runs blocks as a control would and writes down what the machine does.
 *
 * <p>Knows G0 G1 G2 G3 G4 G17 G20 G21 G43 G49 G73 G80 G81 G82 G83 G90 G91 G93 G94 G98 G99, M0 M2 M3 M5 M6 M30, and X Y Z A I J F S P
 * R Q L N T H O; any other word is a fault. Within a block: feed and speed, cutter, spindle, dwell, units, cutter length, distance and retract modes, motion, stop.
 *
 * <p>Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, table 8 (order),
 * table 4 (modal groups), section 3.5.16 (cycles). In one thing it follows the open controller that grew out of it: G83
 * comes out to the R plane between pecks also under G98.
 */
final class Interpreter {

    private static final Map<String, Integer> GROUPS = groups();

    private final List<Event> events = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final Canned canned;
    private final ArcReader arcs;
    private final Dialect dialect;
    private int tool;
    private Pose pose;
    private double unit;
    private boolean absolute = true;
    private boolean retractToOldZ = true;
    private String motion = "";
    private double feed;
    private double rpm;
    private boolean feedStated;
    private boolean inverseTime;
    private boolean ended;

    /**
     * What a run gave.
     *
     * @param events what the machine did, in order
     * @param faults what a control would refuse, or should
     */
    record Run(List<Event> events, List<Fault> faults) {}

    /**
     * What words mean on a control.
     *
     * @param turnWord the word that turns the pipe
     * @param dwellByX whether X of a dwell is its time
     * @param torch whether M3 switches on what does not turn, and needs no S
     */
    record Dialect(TurnWord turnWord, boolean dwellByX, boolean torch) {

        static Dialect of(RotarySettings settings) {
            boolean dwellByX = settings.machine().post().layout().habits().dwellByX();
            return new Dialect(
                    TurnWord.of(settings), dwellByX, settings.machine().tube().isPresent());
        }
    }

    private Interpreter(Pose start, Dialect dialect) {
        this.pose = start;
        this.dialect = dialect;
        this.arcs = new ArcReader(this);
        this.canned = new Canned(this);
    }

    static Run run(List<Block> blocks, Pose start) {
        return run(blocks, start, TurnWord.DEGREES);
    }

    static Run run(List<Block> blocks, Pose start, TurnWord turnWord) {
        return run(blocks, start, new Dialect(turnWord, false, false));
    }

    static Run run(List<Block> blocks, Pose start, Dialect dialect) {
        Interpreter interpreter = new Interpreter(start, dialect);
        blocks.forEach(interpreter::block);
        return new Run(List.copyOf(interpreter.events), List.copyOf(interpreter.faults));
    }

    private void block(Block block) {
        if (ended) {
            fault(block, "nothing after the program's end", "more words");
            return;
        }
        if (!wordsFit(block)) {
            return;
        }
        feedAndSpeed(block);
        tool(block);
        spindle(block);
        dwell(block);
        modes(block);
        offset(block);
        motion(block);
        stop(block);
    }

    private boolean wordsFit(Block block) {
        int before = faults.size();
        Set<Object> seen = new HashSet<>();
        for (Word word : block.words()) {
            Integer group = GROUPS.get(word.key());
            if (group == null) {
                fault(block, WordRules.KNOWN, word.toString());
            } else if (!seen.add(group)) {
                fault(block, "one word of its kind in a block", word + " beside another");
            }
        }
        return faults.size() == before;
    }

    /** A change of the feed's meaning takes the old feed out of force. */
    private void feedAndSpeed(Block block) {
        if (block.hasAny("G93", "G94")) {
            feed = inverseTime == block.has("G93") ? feed : 0;
            inverseTime = block.has("G93");
        }
        feedStated = block.has("F");
        if (feedStated && !inverseTime) {
            scale(block);
        }
        block.value('F').ifPresent(f -> feed = f);
        block.value('S').ifPresent(s -> rpm = s);
        if (feed < 0 || rpm < 0) {
            fault(block, "F and S of 0 or more", "a negative one");
        }
    }

    /** Units count from their own block on, which RS274 settles after F: so F there would be in the old unit. */
    private double scale(Block block) {
        if (unit == 0) {
            fault(block, "G20 or G21 before the first length or feed", "no unit yet");
            unit = 1;
        }
        return unit;
    }

    private void tool(Block block) {
        block.value('T').ifPresent(t -> tool = (int) StrictMath.rint(t));
        if (block.has("M6")) {
            if (tool <= 0) {
                fault(block, "T with the cutter's number before M6", "M6 without T");
            }
            events.add(new Event.Tool(block.line(), tool, block.comments()));
        }
    }

    private void offset(Block block) {
        int number = (int) StrictMath.rint(block.value('H').orElse(0.0));
        if (block.has("G43") != block.has("H") || (block.has("H") && number <= 0)) {
            fault(block, "G43 with H of 1 or more", block.has("H") ? "H" + number : "no H");
        } else if (block.hasAny("G43", "G49")) {
            events.add(new Event.Offset(block.line(), number));
        }
    }

    private void spindle(Block block) {
        if (block.has("M3")) {
            if (rpm <= 0 && !dialect.torch()) {
                fault(block, "S with a speed before the spindle starts", "M3 without S");
            }
            events.add(new Event.Spindle(block.line(), true, rpm));
        } else if (block.has("M5")) {
            events.add(new Event.Spindle(block.line(), false, rpm));
        }
    }

    private void dwell(Block block) {
        if (!block.has("G4")) {
            return;
        }
        boolean byX = dialect.dwellByX();
        double p = block.value(byX ? 'X' : 'P').orElse(-1.0);
        if (p < 0 || block.hasAny(byX ? "P" : "X", "Y", "Z", "A")) {
            String word = byX ? "X" : "P";
            fault(block, "G4 with " + word + " of 0 or more, and no axis", p < 0 ? "no " + word : word + " " + p);
        }
        events.add(new Event.Dwell(block.line(), p));
    }

    private void modes(Block block) {
        if (block.has("G21")) {
            unit = 1;
        } else if (block.has("G20")) {
            unit = 25.4;
        }
        if (block.hasAny("G90", "G91")) {
            absolute = block.has("G90");
        }
        if (block.hasAny("G98", "G99")) {
            retractToOldZ = block.has("G98");
        }
    }

    private void motion(Block block) {
        boolean fresh = false;
        boolean series = Canned.cycle(motion);
        for (Word word : block.words()) {
            if (Integer.valueOf(1).equals(GROUPS.get(word.key()))) {
                fresh = !word.is(motion);
                motion = word.key();
            }
        }
        if (!block.moves() || block.has("G4")) {
            if (Canned.cycle(motion) && fresh) {
                fault(block, "X, Y and Z with a cycle", "no axis");
            } else if (block.hasAny("I", "J", "G2", "G3")) {
                fault(block, "an arc with X or Y for its end", "no axis");
            }
            strayWords(block);
            return;
        }
        if (Canned.cycle(motion)) {
            if (inverseTime || block.hasAny("I", "J")) {
                fault(block, "a cycle under G94, without I and J", "another word");
            }
            if (!series) {
                canned.begin();
            }
            canned.drill(block, motion, fresh);
        } else if (motion.equals("G2") || motion.equals("G3")) {
            arc(block);
        } else if (motion.equals("G0") || motion.equals("G1")) {
            straight(block);
        } else {
            fault(block, "G0, G1 or a cycle before an axis word", motion.isEmpty() ? "no motion word" : motion);
        }
    }

    private void straight(Block block) {
        strayWords(block);
        boolean rapid = motion.equals("G0");
        if (!rapid) {
            feedInForce(block);
        }
        stroke(block, rapid ? Event.Kind.RAPID : Event.Kind.FEED, target(block));
    }

    private void arc(Block block) {
        strayWords(block);
        feedInForce(block);
        Pose to = target(block);
        arcs.read(block, motion.equals("G2"), to).ifPresent(arc -> stroke(block, Event.Kind.FEED, to, arc));
    }

    private void feedInForce(Block block) {
        if (feed <= 0) {
            fault(block, "F above 0 for a cut", "F " + feed);
        } else if (inverseTime && !feedStated) {
            fault(block, "F in every block that cuts under G93", "none");
        }
    }

    private void strayWords(Block block) {
        boolean p = block.has("P") && !block.has("G4");
        if (block.hasAny("R", "Q", "L") || p) {
            fault(block, "R, Q, L and P only with a word that uses them", "one alone");
        }
        if (block.hasAny("I", "J") && !motion.equals("G2") && !motion.equals("G3")) {
            fault(block, "I and J only with G2 or G3", "one alone");
        }
    }

    private void stop(Block block) {
        if (block.has("M0")) {
            events.add(new Event.Stop(block.line(), block.comments()));
            StopNote.read(block.comments()).forEach(note -> byHand(block, note));
        } else if (block.hasAny("M2", "M30")) {
            ended = true;
            events.add(new Event.End(block.line()));
        }
    }

    private Pose target(Block block) {
        return new Pose(
                target(block, 'X', pose.x()),
                turnsByY() ? pose.y() : target(block, 'Y', pose.y()),
                target(block, 'Z', pose.z()),
                angle(block));
    }

    /** What the operator does at a stop. */
    private void byHand(Block block, StopNote note) {
        if (note instanceof StopNote.Turn turn) {
            Pose to = new Pose(pose.x(), pose.y(), pose.z(), turn.degrees());
            stroke(block, Event.Kind.HAND, to);
        } else if (note instanceof StopNote.SpindleOn start) {
            rpm = start.rpm();
            events.add(new Event.Spindle(block.line(), true, rpm));
        } else if (note instanceof StopNote.SpindleOff) {
            events.add(new Event.Spindle(block.line(), false, rpm));
        }
    }

    private double target(Block block, char letter, double now) {
        return block.value(letter)
                .map(v -> absolute ? v * scale(block) : now + v * scale(block))
                .orElse(now);
    }

    private double angle(Block block) {
        TurnWord turnWord = dialect.turnWord();
        if (turnWord.letter() != 'A' && block.has("A")) {
            fault(block, "no A word where another turns the pipe", "A");
        }
        Optional<Double> value = block.value(turnWord.letter());
        if (value.isEmpty()) {
            return pose.a();
        }
        double turned = turnWord.degrees(value.get(), turnWord.length() ? scale(block) : 1);
        return absolute ? turned : pose.a() + turned;
    }

    boolean turnsByY() {
        return dialect.turnWord().letter() == 'Y';
    }

    boolean inch() {
        return unit > 1;
    }

    // What cycles need.
    double length(Block block, double value) {
        return value * scale(block);
    }

    Pose pose() {
        return pose;
    }

    boolean absolute() {
        return absolute;
    }

    boolean retractsToOldZ() {
        return retractToOldZ;
    }

    double feed() {
        return feed;
    }

    void stroke(Block block, Event.Kind kind, Pose to) {
        stroke(block, kind, to, new Swept.Straight());
    }

    private void stroke(Block block, Event.Kind kind, Pose to, Swept path) {
        FeedRate rate = new FeedRate(feed, inverseTime, unit, dialect.turnWord());
        events.add(new Event.Stroke(
                block, kind, pose, to, rate.drive(kind, new FeedRate.Way(pose, to, path), rpm, feedStated), path));
        pose = to;
    }

    void pause(Block block, double p) {
        events.add(new Event.Dwell(block.line(), p));
    }

    void fault(Block block, String expected, String found) {
        faults.add(new Fault(block.line(), expected, found));
    }

    /** Every word that has a meaning here, as allow-lists name it. */
    static Set<String> words() {
        return GROUPS.keySet();
    }

    private static Map<String, Integer> groups() {
        Map<String, Integer> map = new HashMap<>();
        String[][] groups = {
            {"G4"},
            {"G0", "G1", "G2", "G3", "G73", "G80", "G81", "G82", "G83"},
            {"G17"},
            {"G90", "G91"},
            {"G93", "G94"},
            {"G20", "G21"},
            {"G98", "G99"},
            {"M0", "M2", "M30"},
            {"M3", "M5"},
            {"M6"},
            {"G43", "G49"}
        };
        for (int i = 0; i < groups.length; i++) {
            for (String word : groups[i]) {
                map.put(word, i);
            }
        }
        for (char letter : "XYZAIJFSPRQLNTHO".toCharArray()) {
            map.put(String.valueOf(letter), 100 + letter);
        }
        return Map.copyOf(map);
    }
}
