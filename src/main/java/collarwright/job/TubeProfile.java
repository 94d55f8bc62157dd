package collarwright.job;

import collarwright.machining.ControlHabits;
import collarwright.machining.CutMeans;
import collarwright.machining.Machine;
import collarwright.machining.RotaryForm;
import collarwright.machining.TubeCutter;
import collarwright.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a tube cutter, and finds what does not go together, each at its key. */
final class TubeProfile {

    /** Torches, lasers and blades alike go at less than this. Our choice, no source. */
    private static final double MOST_SPEED = 100_000;

    private final ProfileFile.Entry entry;
    private final MachinePart post;
    private final MachinePart travel;
    private final MachinePart rotary;
    private final MachinePart tube;

    private TubeProfile(ProfileFile.Entry entry) {
        this.entry = entry;
        TableView table = entry.table();
        this.post = new MachinePart(table, "post", "how programs are written");
        this.travel = new MachinePart(table, "travel", "how far and how fast the machine moves");
        this.rotary = new MachinePart(table, "rotary", "the rotary axis and its chuck");
        this.tube = new MachinePart(table, "tube", "what the machine cuts with");
    }

    /**
     * Reads one machine.
     *
     * @param entry its table with name, title and source
     * @return the machine, or empty after findings
     */
    static Optional<Machine> read(ProfileFile.Entry entry) {
        return new TubeProfile(entry).read();
    }

    private Optional<Machine> read() {
        Machine.Rotary axis = RotaryProfile.read(rotary);
        Machine.Travel ways = MachineProfiles.travel(travel);
        // What is switched on and off does not turn: no speed of its own.
        Machine.Spindle none = new Machine.Spindle(1, 1, 0);
        Machine.Post words = new PostProfile(post, none, axis.form()).cuttingTubes();
        Optional<TubeCutter> cutter = cutter();
        cutter.ifPresent(c -> against(c, axis, ways));
        programs(words.layout().habits(), words.cycles());
        axis(axis, ways);
        boolean faulty = post.faulty() || travel.faulty() || rotary.faulty() || tube.faulty();
        return cutter.filter(c -> !faulty)
                .map(c -> new Machine(
                        entry.name(),
                        entry.title(),
                        Machine.Kind.TUBE,
                        words,
                        ways,
                        none,
                        axis,
                        entry.source(),
                        Optional.empty(),
                        Optional.of(c)));
    }

    private Optional<TubeCutter> cutter() {
        String word = tube.word(
                "process",
                "what cuts",
                CutMeans.TUBE.stream().map(CutMeans::word).toList());
        double kerf = tube.length("kerf", "width of the cut on the outside, where it is least", Length.Zero.REFUSED);
        double pierce = tube.number("pierce-seconds", "how long it stands until it is through, seconds", 0, 60, 1);
        double leadIn = tube.length("lead-in", "from where it pierces to the outline", Length.Zero.REFUSED);
        double overcut = tube.length("overcut", "how far it goes on after once round", Length.Zero.ALLOWED);
        double speed = tube.number("speed-mm-per-min", "speed over the outside, mm a minute", 10, MOST_SPEED, 2000);
        List<TubeCutter.Speed.Own> speeds = new ArrayList<>();
        Map<String, Double> named = tube.numbers("speeds", "material", "speed-mm-per-min", MOST_SPEED);
        named.forEach((material, own) -> speeds.add(new TubeCutter.Speed.Own(material, own)));
        double above = tube.length("pierce-height", "the tip over the pipe while it pierces", Length.Zero.REFUSED);
        double cut = tube.length("cut-height", "the tip over the pipe while it cuts", Length.Zero.EITHER_SIDE);
        double od = tube.length("largest-od", "the largest pipe that the chuck holds", Length.Zero.REFUSED);
        boolean parts = tube.flag("parts", "whether it parts collars off");
        double mark = tube.has("mark-seconds")
                ? tube.number("mark-seconds", "how long a spot takes that marks and does not pierce", 0, 10, 1)
                : 0;
        int lines = (int) tube.whole("most-lines", "most lines of a program", 100, 10_000_000);
        CutMeans process = CutMeans.TUBE.stream()
                .filter(p -> p.word().equals(word))
                .findFirst()
                .orElseThrow();
        heights(process, above, cut, mark);
        return tube.faulty()
                ? Optional.empty()
                : Optional.of(new TubeCutter(
                        process,
                        kerf,
                        new TubeCutter.Start(pierce, leadIn, overcut, mark),
                        new TubeCutter.Speed(speed, speeds),
                        new TubeCutter.Heights(above, cut),
                        new TubeCutter.Limits(od, parts, lines)));
    }

    private void heights(CutMeans process, double above, double cut, double mark) {
        if (tube.faulty()) {
            return;
        }
        boolean blade = process == CutMeans.KNIFE;
        if ((cut > 0) == blade) {
            tube.conflict(
                    "cut-height",
                    blade ? "below 0 for a blade: how deep it goes into the pipe" : "above 0 for a jet",
                    StockReader.mm(cut),
                    blade ? "such as cut-height = \"-6 mm\"" : "such as cut-height = \"1.5 mm\"");
        } else if (cut > above) {
            tube.conflict(
                    "pierce-height",
                    "as high as cut-height or higher",
                    StockReader.mm(above) + " against " + StockReader.mm(cut),
                    "check both keys");
        }
        if (blade && mark > 0) {
            tube.conflict("mark-seconds", "0 for a blade, which cannot mark by a spot", mark + "", "take it out");
        }
    }

    private void against(TubeCutter cutter, Machine.Rotary axis, Machine.Travel ways) {
        double fastest = cutter.speed().fastest();
        if (!travel.faulty() && fastest > ways.maxFeedMmPerMin()) {
            tube.conflict(
                    fastest > cutter.speed().mmPerMin() ? "speeds" : "speed-mm-per-min",
                    "at most travel.max-feed-mm-per-min, " + ways.maxFeedMmPerMin(),
                    fastest + "",
                    "check both keys");
        }
        if (rotary.faulty() || !cutter.limits().parts()) {
            return;
        }
        if (StrictMath.abs(axis.partingKerf() - cutter.kerf()) > 1e-9) {
            rotary.conflict(
                    "parting-kerf",
                    "as wide as tube.kerf, which parts the collars: " + StockReader.mm(cutter.kerf()),
                    StockReader.mm(axis.partingKerf()),
                    "write the same width at both keys, or parts = false");
        }
        if (axis.endTrim() < cutter.kerf()) {
            rotary.conflict(
                    "end-trim",
                    "as much as tube.kerf or more, for the cut that trims the free end",
                    StockReader.mm(axis.endTrim()),
                    "trim more, or write parts = false");
        }
    }

    private void axis(Machine.Rotary axis, Machine.Travel ways) {
        if (axis.form().byHand()) {
            rotary.conflict(
                    "form",
                    "a word that turns the pipe while it is cut",
                    RotaryProfile.name(axis.form()),
                    "no hand turns it so evenly: use a machine with a rotary axis");
        }
        if (axis.takeUpDegrees() > 0) {
            rotary.conflict(
                    "take-up-deg",
                    "0: a cut along an outline turns both ways",
                    axis.takeUpDegrees() + "",
                    "write take-up-deg = 0, and take the play out of the axis itself");
        }
        if (ways.across().isPresent()) {
            travel.conflict(
                    "y",
                    "no travel of Y: the head stays over the axis",
                    "travel.y",
                    "take it out; a Y word that turns the pipe has no travel either");
        }
    }

    private void programs(ControlHabits habits, boolean cycles) {
        if (cycles) {
            post.conflict("cycles", "false: a tube cutter drills nothing", "true", "write cycles = false");
        }
        if (habits.allInOneFile()) {
            post.conflict("tool-change", "file: a tube cutter has one cutter", "another way", "take tool-change out");
        }
    }

    /** Words of turning cuts. */
    static Set<String> turning(RotaryForm form) {
        return form.sweep() == RotaryForm.Sweep.INVERSE_TIME ? Set.of("G93") : Set.of();
    }
}
