package collarwright.paper;

import collarwright.machining.ControlHabits;
import collarwright.machining.Load;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryPlan;
import collarwright.machining.SetupSheet;
import collarwright.machining.StickCount;
import collarwright.plan.Box;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The batch as a whole: which sticks are run how often, and what comes off them into which box. */
final class BatchTables {

    private final Paperwork work;

    BatchTables(Paperwork work) {
        this.work = work;
    }

    /** How many sticks, how many could not be saved, how far everything turns and travels. */
    List<DomeFacts.Fact> facts() {
        StickCount count = work.count();
        RotaryPlan.Summary sum = new RotaryPlan(List.of(), work.setups(), List.of()).summary();
        ProgramFile.Effort effort = sum.effort();
        double turn = work.plan().job().shop().times().hands().turn();
        List<DomeFacts.Fact> facts = new ArrayList<>();
        facts.add(new DomeFacts.Fact(
                "sticks",
                sum.sticks()
                        + (count.fewestSticks()
                                ? ", the fewest possible"
                                : ", at least " + count.leastSticks() + " if patterns were mixed on a stick")));
        facts.add(new DomeFacts.Fact(
                "layouts",
                work.setups().size()
                        + (count.fewestLayouts()
                                ? ", the fewest for so many sticks"
                                : ", at least " + count.leastLayouts() + " for so many sticks")));
        facts.add(new DomeFacts.Fact("programs", sum.programRuns() + " runs, air cuts not counted"));
        facts.add(new DomeFacts.Fact(
                "turning",
                Decimals.fixed(effort.rotationDegrees() / 360, 1) + " turns of the pipe, at least "
                        + Decimals.fixed(effort.leastRotationDegrees() / 360, 1)));
        facts.add(new DomeFacts.Fact(
                "travel",
                Decimals.fixed(effort.travel() / 1000, 1) + " m along X, at least "
                        + Decimals.fixed(effort.leastTravel() / 1000, 1) + " m"));
        facts.add(new DomeFacts.Fact(
                "time",
                SetupPages.time(effort.seconds(turn)) + ", without loading and tool changes"
                        + SetupPages.hand(effort.handTurns(), turn)));
        return facts;
    }

    Grid sticks() {
        List<List<Cell>> rows = new ArrayList<>();
        double turn = work.plan().job().shop().times().hands().turn();
        for (SetupSheet setup : work.setups()) {
            Load load = setup.load();
            rows.add(List.of(
                    Cell.strong(load.id()),
                    Cell.of(load.laid()),
                    Cell.of(Integer.toString(load.collars())),
                    Cell.strong(Integer.toString(load.runs())),
                    Cell.of(Integer.toString(setup.files())),
                    Cell.of(SetupPages.time(setup.onOneStick().seconds(turn))),
                    Cell.tick()));
        }
        return new Grid(
                "Which stick is run how often; every stick with all of its programs, each once",
                List.of(
                        Column.words("stick"),
                        Column.words("places from the chuck, pattern"),
                        Column.numbers("collars"),
                        Column.numbers("sticks to run"),
                        Column.numbers("programs"),
                        Column.numbers("time for one"),
                        Column.marks("done")),
                rows);
    }

    /**
     * The choice that a shop has where each cutter has a file of its own and its height is set by hand.
     *
     * @return both ways with what they cost; empty where nothing is saved
     */
    Optional<String> otherOrder() {
        RotaryPlan.Summary sum = new RotaryPlan(List.of(), work.setups(), List.of()).summary();
        ControlHabits habits =
                work.plan().job().shop().machine().post().layout().habits();
        if (habits.allInOneFile() || sum.programRuns() == sum.sticks() || sum.cutters() >= sum.cutterRuns()) {
            return Optional.empty();
        }
        return Optional.of("Two orders are possible. Stick by stick, as counted here: " + sum.sticks()
                + " times a stick is put in, " + sum.cutterRuns()
                + " times a cutter. Or all sticks with the first cutter, then all with the next: " + sum.cutters()
                + " times a cutter, but " + sum.programRuns()
                + " times a stick, and each stick loses its A0 and X0 when it"
                + " leaves the chuck. So scribe a line along each stick where A is 0, and one round it at the jaw face,"
                + " before it comes out, mark its free end and its layout, and set both again by these lines: what A is"
                + " off, every later hole is off.");
    }

    Grid boxes() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Box box : Box.of(work.plan())) {
            rows.add(List.of(
                    Cell.strong(Integer.toString(box.number())),
                    Cell.strong(box.pattern()),
                    Cell.strong(Integer.toString(box.pieces())),
                    Cell.of(Integer.toString(box.spares())),
                    Cell.of(from(box.pattern())),
                    Cell.blank(),
                    Cell.tick()));
        }
        return new Grid(
                "What comes off, one box for each pattern",
                List.of(
                        Column.numbers("box"),
                        Column.words("pattern"),
                        Column.numbers("pieces"),
                        Column.numbers("spares among them"),
                        Column.words("from"),
                        Column.marks("counted"),
                        Column.marks("full")),
                rows);
    }

    private String from(String pattern) {
        List<String> sticks = new ArrayList<>();
        for (SetupSheet setup : work.setups()) {
            long each = setup.load().patterns().stream().filter(pattern::equals).count();
            if (each > 0) {
                sticks.add(setup.load().runs() + " × " + setup.load().id() + " with " + each);
            }
        }
        if (!sticks.isEmpty()) {
            return String.join(", ", sticks);
        }
        return work.plan().job().shop().strip().isPresent() ? "flat strips" : "the press";
    }
}
