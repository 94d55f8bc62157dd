package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.machining.BenchProgram;
import collarwright.machining.BoreSamples;
import collarwright.machining.EndPlan;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatSamples;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySettings;
import collarwright.testing.CanonicalMove;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Rapids into the work, on every machine of the profiles, on beds and flat tables, and where holes are bored. rs274
 * (linuxcnc-uspace, Debian) makes such moves without a word, since it knows of no work; so its moves run over a map of
 * heights here that knows nothing of holes and plans: what is left of the work in every place, to a twentieth of a
 * millimetre and of a degree. The first rapid that goes below what is left has to be the line that our rehearsal names
 * first, and good programs have none.
 */
@NeedsChecker(Checker.RS274)
class RapidGroundTest {

    private static final int SEEDS = 3;

    /** What is left of the work; everywhere its crown at first. */
    private static final class Heights {
        private final double crown;
        private final Map<List<Long>, Double> left = new HashMap<>();

        Heights(double crown) {
            this.crown = crown;
        }

        /** The line of the first rapid into the work, 0 if there is none. */
        int crash(List<CanonicalMove> moves) {
            CanonicalMove from = moves.get(0);
            for (CanonicalMove move : moves) {
                for (int i = 0; i <= 20; i++) {
                    List<Long> at = List.of(
                            cell(from.x(), move.x(), i, move.unitMm()),
                            cell(from.y(), move.y(), i, move.unitMm()),
                            cell(from.a(), move.a(), i, 1));
                    double z = (from.z() + (move.z() - from.z()) * i / 20) * move.unitMm();
                    if (move.kind() != CanonicalMove.Kind.TRAVERSE) {
                        left.merge(at, z, Math::min);
                    } else if (z < left.getOrDefault(at, crown) - 0.01) {
                        return move.block().orElseThrow();
                    }
                }
                from = move;
            }
            return 0;
        }

        private static long cell(double from, double to, int share, double unit) {
            return Math.round((from + (to - from) * share / 20) * unit * 20);
        }
    }

    /** A program, what it is rehearsed by, and how rs274 is to read it. */
    private record Case(
            String name,
            String text,
            double crown,
            Function<String, List<Finding>> rehearse,
            Function<String, String> read) {

        int crash(String changed) {
            List<CanonicalMove> moves = MachineContractTest.CONTROL
                    .read(numbered(read.apply(changed)))
                    .movesOrFail();
            // The machine's first place is its own zero: a move up to the clear height, whatever it passes.
            return new Heights(crown).crash(moves);
        }

        /** Every block by the number of its line, so that a move can be told by it; an O line was line 2. */
        private String numbered(String changed) {
            boolean program = text.lines().anyMatch(l -> l.matches("O\\d+\\s*"));
            StringBuilder out = new StringBuilder();
            int number = 0;
            for (String line : changed.lines().toList()) {
                number += program && number == 1 ? 2 : 1;
                String bare = line.replaceFirst("^N\\d+ ", "");
                out.append(bare.matches("[A-Z].*") ? "N" + number + " " + bare : bare)
                        .append('\n');
            }
            return out.toString();
        }
    }

    private static void hold(Case c, int seed) {
        assertThat(c.rehearse().apply(c.text())).as(c.name()).isEmpty();
        assertThat(c.crash(c.text())).as(c.name()).isZero();
        int number = 0;
        for (Mutation mutation : RapidMutation.all()) {
            Optional<Mutation.Spoilt> spoilt = mutation.apply(Seeds.of(77L * seed + number++), c.text());
            spoilt.ifPresent(s -> {
                String what = c.name() + ", seed " + seed + ", " + mutation.name() + ", line " + s.line();
                List<Finding> findings = c.rehearse().apply(s.text());
                assertThat(findings).as(what).isNotEmpty();
                assertThat(line(findings.get(0)))
                        .as(what + ": " + findings.get(0))
                        .isEqualTo(s.line());
                assertThat(findings)
                        .as(what)
                        .anyMatch(f -> line(f) == s.line() && f.found().startsWith("rapid to Z "));
                assertThat(c.crash(s.text())).as(what).isEqualTo(s.line());
            });
        }
    }

    private static int line(Finding finding) {
        return finding.where() instanceof Where.Text text ? text.line() : 0;
    }

    private static ProgramFile with(ProgramFile f, String text) {
        return new ProgramFile(f.name(), f.purpose(), f.task(), f.lift(), f.effort(), text, f.after());
    }

    private static Case of(ProgramFile file, RotarySettings settings) {
        return new Case(
                settings.machine().name() + " " + file.name(),
                file.text(),
                settings.work().body().outerRadius() + file.lift(),
                text -> Rehearsal.rehearse(with(file, text), settings),
                text -> MachineContractTest.asItReads(text, settings));
    }

    @Test
    void rapidIntoThePipe_onEveryMachine_isTheFirstFindingAtItsLine() {
        for (Machine machine : ProfileJobs.machines()) {
            if (machine.rotary().form().byHand()) {
                continue; // rs274 does not see a hand turn the pipe; MutationsTest has its lines
            }
            for (int seed = 1; seed <= SEEDS; seed++) {
                ProfileJobs job = ProfileJobs.draw(Seeds.of(seed), machine);
                for (ProgramFile file : job.programs().stream().limit(6).toList()) {
                    if (file.purpose() != ProgramFile.Purpose.DIRECTION_TEST) {
                        hold(of(file, job.settings()), seed);
                    }
                }
            }
        }
    }

    @Test
    void rapidIntoThePipe_betweenBoredHoles_isTheFirstFindingAtItsLine() {
        for (int seed = 1; seed <= SEEDS; seed++) {
            RotarySettings settings = BoreSamples.settings(seed % 2 == 0, seed % 4 < 2);
            PatternRun run = new PatternRun(BoreSamples.mixed(BoreSamples.mill(12, 40), 16.5, 27.25), 2);
            for (ProgramFile file : RotaryJob.plan(settings, List.of(run)).programs()) {
                if (file.name().contains("-EM-")) {
                    hold(of(file, settings), seed);
                }
            }
        }
    }

    @Test
    void rapidIntoAStrut_isTheFirstFindingAtItsLine() {
        for (int seed = 1; seed <= 12; seed++) {
            List<EndStops> struts = new ArrayList<>();
            collarwright.machining.BedSettings[] used = new collarwright.machining.BedSettings[1];
            EndPlan plan = EndRehearsalTest.drawn(Seeds.of(seed), struts, used);
            for (BenchProgram<EndTask> file : plan.programs()) {
                hold(
                        new Case(
                                file.name(),
                                file.text(),
                                used[0].bar().crown() + file.lift(),
                                text -> EndRehearsal.rehearse(
                                        new BenchProgram<>(
                                                file.name(), file.tasks(), file.lift(), file.seconds(), text),
                                        used[0]),
                                text -> text),
                        seed);
            }
        }
    }

    @Test
    void rapidIntoAStrip_isTheFirstFindingAtItsLine() {
        for (int seed = 1; seed <= 6; seed++) {
            FlatSettings settings = FlatSamples.settings(
                    FlatSamples.machine(seed % 2 == 0), seed % 3 == 0 ? ProgramUnits.INCH : ProgramUnits.MM);
            for (BenchProgram<FlatTask> file :
                    FlatJob.plan(settings, List.of(FlatSamples.strip())).programs()) {
                hold(
                        new Case(
                                file.name(),
                                file.text(),
                                file.lift(),
                                text -> FlatRehearsal.rehearse(
                                        new BenchProgram<>(
                                                file.name(), file.tasks(), file.lift(), file.seconds(), text),
                                        settings),
                                text -> text),
                        seed);
            }
        }
    }
}
