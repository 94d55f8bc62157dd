package collarwright.rehearsal;

import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import collarwright.machining.CutMeans;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.TubeCutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Tube cutters of every kind, and programs for them. Invented values. */
final class TubeSamples {

    private TubeSamples() {}

    /** The machine of the profiles. */
    static Machine plain() {
        return Profiles.load(List.of(new BundledProfiles()))
                .machine("tube-plain")
                .orElseThrow();
    }

    /** A laser that marks and leaves the parting to a saw. */
    static TubeCutter laser() {
        return new TubeCutter(
                CutMeans.LASER,
                0.2,
                new TubeCutter.Start(0.3, 2, 0, 0.05),
                new TubeCutter.Speed(1200, List.of(new TubeCutter.Speed.Own("steel", 900))),
                new TubeCutter.Heights(3, 1),
                new TubeCutter.Limits(200, false, 200_000));
    }

    /** A small router that parts collars off. */
    static TubeCutter knife() {
        return new TubeCutter(
                CutMeans.KNIFE,
                3,
                new TubeCutter.Start(1, 30, 1.5, 0),
                new TubeCutter.Speed(500, List.of()),
                new TubeCutter.Heights(3, -9),
                new TubeCutter.Limits(200, true, 200_000));
    }

    /** The machine with something else to cut with; the room for parting goes along. */
    static Machine with(Machine m, TubeCutter tube) {
        Machine.Rotary r = m.rotary();
        Machine.Rotary rotary = new Machine.Rotary(
                r.positive(),
                r.topTowardChuck(),
                r.rapidDegreesPerMin(),
                r.accelerationDegreesPerS2(),
                0,
                r.chuckLength(),
                r.jawClear(),
                r.jawHeight(),
                tube.kerf(),
                r.endTrim(),
                r.maxStick(),
                r.form(),
                r.longestFree());
        return new Machine(
                m.name(),
                m.title(),
                m.kind(),
                m.post(),
                m.travel(),
                m.spindle(),
                rotary,
                m.source(),
                m.bed(),
                Optional.of(tube));
    }

    /** The machine with another word that turns the pipe, or another way to tell the speed. */
    static Machine with(Machine m, RotaryForm form) {
        Set<String> words = new TreeSet<>(m.post().words());
        words.add("G93");
        words.add(form.byY() ? "Y" : "A");
        Machine.Post p = m.post();
        Machine.Post post = new Machine.Post(
                p.cycles(),
                words,
                p.lengthDecimals(),
                p.angleDecimals(),
                p.lineLength(),
                p.endWord(),
                p.extension(),
                p.layout());
        return RotarySamples.with(RotarySamples.with(m, post), m.rotary().with(form));
    }

    /** In millimetres on PVC's size of pipe, called steel; in inches on 4 in pipe. */
    static RotarySettings settings(Machine machine, boolean inch) {
        return RotarySamples.settings(
                machine,
                inch ? ProgramUnits.INCH : ProgramUnits.MM,
                RotarySamples.cutting("steel", 30),
                inch ? RotarySamples.steel4in() : RotarySamples.pvc160());
    }

    /** Two patterns, one of them with holes of two sizes, none alike in its gaps. */
    static List<PatternRun> runs() {
        return List.of(
                new PatternRun(RotarySamples.pattern("CA", RotarySamples.twist(22), 0, 62.5, 150, 240.25), 2),
                new PatternRun(RotarySamples.pattern("CB", RotarySamples.twist(30), 0, 75, 210), 1));
    }

    static RotaryPlan plan(RotarySettings settings) {
        return RotaryJob.plan(settings, runs());
    }

    /** Every kind of machine. */
    static List<Machine> machines() {
        List<Machine> all = new ArrayList<>();
        RotaryForm.Word a = RotaryForm.Word.A;
        for (TubeCutter tube : List.of(plain().tube().orElseThrow(), laser(), knife())) {
            Machine machine = with(plain(), tube);
            all.add(machine);
            for (RotaryForm.Sweep sweep : RotaryForm.Sweep.values()) {
                all.add(with(machine, new RotaryForm(a, Optional.empty(), sweep)));
                all.add(with(machine, new RotaryForm(RotaryForm.Word.Y_DEGREES, Optional.empty(), sweep)));
                all.add(with(machine, new RotaryForm(RotaryForm.Word.Y_MM, Optional.of(400.0), sweep)));
            }
        }
        return all;
    }

    static ProgramFile cut(RotaryPlan plan) {
        return plan.programs().get(0);
    }

    static ProgramFile with(ProgramFile f, String text) {
        return new ProgramFile(f.name(), f.purpose(), f.task(), f.lift(), f.effort(), text);
    }
}
