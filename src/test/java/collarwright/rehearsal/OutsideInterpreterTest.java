package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.CanonicalMove.Spindle;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every program through rs274, the stand-alone interpreter of linuxcnc-uspace (Debian). It prints four decimals. */
@NeedsChecker(Checker.RS274)
class OutsideInterpreterTest {

    private static final Rs274 CONTROL = new Rs274(List.of());

    @ParameterizedTest
    @CsvSource({"false, false", "false, true", "true, false", "true, true"})
    void everyProgram_makesThePlannedHoles(boolean cycles, boolean inch) {
        RotarySettings settings = inch ? RotarySamples.inch(cycles) : RotarySamples.metric(cycles);
        PatternRun run =
                new PatternRun(RotarySamples.sixWay(inch ? RotarySamples.TWIST_1_1_8 : RotarySamples.HOLE_SAW_44), 14);
        List<ProgramFile> programs = RotaryJob.plan(settings, List.of(run)).programs();
        assertThat(programs).hasSizeGreaterThanOrEqualTo(5);
        programs.forEach(p -> prove(p, settings));
    }

    @Test
    void drawnPrograms_makeThePlannedHoles() {
        Seeds.each(12, draw -> {
            RotarySettings settings = RehearsalTest.settings(draw);
            List<PatternRun> runs = RehearsalTest.runs(draw, settings.work().body());
            RotaryJob.plan(settings, runs).programs().stream().limit(6).forEach(p -> prove(p, settings));
        });
    }

    /** N numbers, percent signs, CR LF and milliseconds, each alone and all together; rs274 reads P as it stands. */
    @ParameterizedTest
    @CsvSource({
        "10,false,false,false",
        "0,true,false,false",
        "0,false,true,false",
        "0,false,false,true",
        "5,true,true,true"
    })
    void everyLayout_makesThePlannedHoles(int step, boolean percent, boolean crlf, boolean milliseconds) {
        RotarySettings settings = RotarySamples.metric(false);
        Machine.Post p = settings.machine().post();
        Machine.Layout layout = new Machine.Layout(step, percent, crlf, milliseconds);
        Machine.Post post = new Machine.Post(
                p.cycles(), p.words(), p.lengthDecimals(), p.angleDecimals(), p.lineLength(), "M2", "ngc", layout);
        PatternRun run = new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2);
        List<ProgramFile> programs = RotaryJob.plan(
                        RotarySamples.on(settings, RotarySamples.with(settings.machine(), post)), List.of(run))
                .programs();
        assertThat(programs).hasSize(5);
        programs.forEach(f -> prove(f, settings));
    }

    private static void prove(ProgramFile file, RotarySettings settings) {
        List<CanonicalMove> moves = CONTROL.read(file.text()).movesOrFail();
        List<Operation> planned = file.task().map(t -> t.operations()).orElse(List.of());
        List<CanonicalMove> holes = holes(moves);
        assertThat(holes).as(file.name()).hasSameSizeAs(planned);
        double tolerance = settings.units() == ProgramUnits.INCH ? 0.0001 * 25.4 : 0.001;
        for (int i = 0; i < planned.size(); i++) {
            CanonicalMove hole = holes.get(i);
            Operation operation = planned.get(i);
            assertThat(hole.inch()).isEqualTo(settings.units() == ProgramUnits.INCH);
            assertThat(hole.x() * hole.unitMm()).isCloseTo(operation.place().x(), within(tolerance));
            assertThat(hole.y()).isZero();
            assertThat(hole.z() * hole.unitMm()).isCloseTo(operation.bottom() + file.lift(), within(tolerance));
            assertThat(hole.a()).isCloseTo(operation.place().angleDegrees(), within(0.001));
            assertThat(hole.state().spindle()).isEqualTo(Spindle.CLOCKWISE);
            assertThat(hole.state().spindleRpm())
                    .isEqualTo(file.task().orElseThrow().cut().rpm());
            assertThat(hole.state().feed() * hole.unitMm())
                    .isCloseTo(file.task().orElseThrow().cut().feedMmPerMin(), within(0.002));
        }
    }

    /** The last cut of each stay at one place. */
    private static List<CanonicalMove> holes(List<CanonicalMove> moves) {
        List<CanonicalMove> holes = new ArrayList<>();
        for (CanonicalMove move : moves) {
            if (move.kind() != Kind.FEED) {
                continue;
            }
            CanonicalMove last = holes.isEmpty() ? null : holes.get(holes.size() - 1);
            if (last != null && last.x() == move.x() && last.a() == move.a()) {
                holes.remove(holes.size() - 1);
            }
            holes.add(move);
        }
        return holes;
    }

    @ParameterizedTest
    @CsvSource({"false", "true"})
    void plainAndCycles_areTheSameMoves(boolean inch) {
        PatternRun run =
                new PatternRun(RotarySamples.sixWay(inch ? RotarySamples.TWIST_1_1_8 : RotarySamples.HOLE_SAW_44), 3);
        List<ProgramFile> plain = RotaryJob.plan(
                        inch ? RotarySamples.inch(false) : RotarySamples.metric(false), List.of(run))
                .programs();
        List<ProgramFile> cycles = RotaryJob.plan(
                        inch ? RotarySamples.inch(true) : RotarySamples.metric(true), List.of(run))
                .programs();
        for (int i = 0; i < plain.size(); i++) {
            assertThat(places(cycles.get(i))).isEqualTo(places(plain.get(i)));
        }
    }

    private static List<String> places(ProgramFile file) {
        List<String> places = new ArrayList<>();
        for (CanonicalMove m : CONTROL.read(file.text()).movesOrFail()) {
            String place = m.x() + " " + m.y() + " " + m.z() + " " + m.a();
            if (places.isEmpty() || !places.get(places.size() - 1).endsWith(" to " + place)) {
                places.add(m.kind() + " to " + place);
            }
        }
        return places;
    }

    /** Our interpreter and theirs on the same cycles, from text that neither of them wrote. */
    @Test
    void interpreters_onDrawnCycles_agree() {
        Seeds.each(20, draw -> {
            StringBuilder text = new StringBuilder("G21 G17 G90 G94\nS100 M3\nF100.0\nG0 X0.0 Y0.0 Z20.0 A0.0\n");
            // In a row of cycles with R planes above where the row began, or with G99, rs274 takes a way of its own; no
            // program of ours has such a row.
            boolean g98 = draw.coin();
            for (int i = 0; i < 12; i++) {
                String cycle = draw.oneOf(List.of("G81", "G82 P0.5", "G83 Q" + draw.whole(11, 40) / 10.0, "G73 Q2.3"));
                text.append(g98 ? "G98 " : "G99 ")
                        .append(cycle)
                        .append(" X" + draw.whole(0, 50) / 2.0 + " Y" + draw.whole(0, 50) / 4.0)
                        .append(" Z-" + draw.whole(10, 99) / 7 + ".13 R" + draw.whole(1, g98 ? 20 : 25) + ".0")
                        .append(draw.coin() ? " L2\n" : "\n");
                text.append(!g98 || draw.coin() ? "G80\nG0 A" + draw.whole(0, 359) + ".0\n" : "");
            }
            text.append("G80\nM2\n");

            List<String> ours = new ArrayList<>();
            Interpreter.Run run =
                    Interpreter.run(BlockReader.read(text.toString()).blocks(), Pose.UNKNOWN);
            assertThat(run.faults()).isEmpty();
            for (Event event : run.events()) {
                if (event instanceof Event.Stroke s && !s.from().equals(s.to())) {
                    ours.add(line(s.feed(), s.to().x(), s.to().y(), s.to().z(), s.to().a()));
                }
            }
            List<String> theirs = new ArrayList<>();
            String last = "";
            for (CanonicalMove m : CONTROL.read(text.toString()).movesOrFail()) {
                String line = line(m.kind() == Kind.FEED, m.x(), m.y(), m.z(), m.a());
                String place = line.substring(line.indexOf(' '));
                if (!place.equals(last)) {
                    theirs.add(line);
                }
                last = place;
            }
            assertThat(ours).as(text.toString()).isEqualTo(theirs);
        });
    }

    private static String line(boolean feed, double x, double y, double z, double a) {
        return (feed ? "feed" : "rapid") + " " + milli(x) + " " + milli(y) + " " + milli(z) + " " + milli(a);
    }

    private static long milli(double value) {
        return Math.round(value * 1000);
    }
}
