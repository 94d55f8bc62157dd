package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns patterns into programs for a tube cutter: for each layout of a stick one program that marks, cuts all holes along
 * their outlines, and parts the collars off last; with its air cut, in which nothing is switched on; at the end the rotary
 * direction test.
 */
final class TubeJob {

    private final RotarySettings settings;
    private final TubeCutter tube;
    private final List<Finding> findings = new ArrayList<>();
    private final List<ProgramFile> programs = new ArrayList<>();
    private final List<SetupSheet> setups = new ArrayList<>();
    private final ProgramNames names;
    private StickCount count = StickCount.NONE;

    private TubeJob(RotarySettings settings) {
        this.settings = settings;
        this.tube = settings.machine().tube().orElseThrow();
        this.names = new ProgramNames(settings.machine());
    }

    static RotaryPlan plan(RotarySettings settings, List<PatternRun> runs, StickRule rule) {
        TubeJob job = new TubeJob(settings);
        RotaryJob.degreesInInches(settings).ifPresent(job.findings::add);
        job.findings.addAll(TubeStops.check(settings, runs));
        if (!job.stopped()) {
            TubePlaces places = new TubePlaces(settings, runs);
            job.findings.addAll(places.findings());
            StickPlan sticks = StickPlan.plan(new StickRoom(settings, places.spans()), runs, rule, patterns -> 0);
            job.findings.addAll(sticks.findings());
            job.findings.addAll(FreeEnd.check(settings, sticks.loads()));
            job.count = sticks.count();
            job.write(sticks.loads(), places);
        }
        return job.stopped()
                ? new RotaryPlan(List.of(), List.of(), job.findings)
                : new RotaryPlan(job.programs, job.setups, job.count, job.findings);
    }

    private boolean stopped() {
        return findings.stream().anyMatch(f -> f.level() == Level.STOP);
    }

    private void write(List<Load> loads, TubePlaces places) {
        if (stopped()) {
            return;
        }
        try {
            loads.forEach(load -> write(load, places));
            programs.add(DirectionTest.program(settings, List.of(tube.cutter()), names));
        } catch (JobException e) {
            findings.addAll(e.findings());
        }
    }

    private void write(Load load, TubePlaces places) {
        double speed =
                settings.grid().snapFeed(tube.speed().of(settings.cutting().material()));
        String formula =
                Decimals.fixed(speed, 0) + " mm/min over the pipe's outside, by the machine's profile; slower where the"
                        + " pipe would have to turn faster than it can";
        Cut cut = new Cut(
                0, speed, tube.kerf(), List.of(formula), settings.machine().source());
        TubeHeights z = TubeHeights.of(settings);
        double crown = settings.work().body().outerRadius();
        ProgramTask task = new ProgramTask(
                load, tube.cutter(), cut, new Heights(crown, z.pierce(), z.clear()), places.operations(load));
        TubeWriter writer = new TubeWriter(settings, task);
        ProgramFile file = writer.cut(names);
        programs.add(file);
        length(file);
        Optional<ProgramFile> air = writer.air(names);
        air.ifPresentOrElse(programs::add, () -> findings.add(noAirCut(file, writer.lift())));
        SetupSheet.Step step = new SetupSheet.Step(
                1,
                file.name(),
                air.map(ProgramFile::name),
                task.cutter(),
                1,
                cut,
                z.clear(),
                task.deepest(),
                crown - task.deepest(),
                z.clear() - task.deepest(),
                task.operations().size(),
                file.effort());
        setups.add(Setups.sheet(settings, List.of(task), List.of(step)));
    }

    private void length(ProgramFile file) {
        long lines = file.text().lines().count();
        if (lines > tube.limits().lines()) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    new Where.Part("program " + file.name()),
                    "at most " + tube.limits().lines() + " lines, what the control takes (tube.most-lines)",
                    lines + " lines",
                    "put fewer collars on a stick: a shorter longest-stick in the profile",
                    "raise most-lines, if the control takes more"));
        }
    }

    private Finding noAirCut(ProgramFile file, double lift) {
        return Finding.warn(
                Code.MACHINE_TRAVEL,
                new Where.Part("program " + file.name()),
                "room for an air cut, " + Sizes.both(lift) + " higher",
                "Z travel ends at " + Sizes.both(settings.machine().travel().maxZ()),
                "run the program first with no pipe in the chuck and the cutter unplugged");
    }
}
