package collarwright.machining;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * All programs of a job for a machine that turns the pipe.
 *
 * <p>Nothing here has been rehearsed yet.
 *
 * @param programs by layout and order, each followed by its air-cut version; the rotary direction test last;
 *     empty if any finding stops the work, since half a set of programs cuts metal
 * @param setups one for each layout of a stick
 * @param count sticks and layouts beside the least possible
 * @param findings stops, warnings and notes
 */
public record RotaryPlan(
        List<ProgramFile> programs, List<SetupSheet> setups, StickCount count, List<Finding> findings) {
    /** Checks that no program stands beside a stop. */
    public RotaryPlan {
        programs = List.copyOf(programs);
        setups = List.copyOf(setups);
        findings = List.copyOf(findings);
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP) && !(programs.isEmpty() && setups.isEmpty())) {
            throw new IllegalArgumentException("no program may stand beside a stop");
        }
    }

    /**
     * Puts programs together of which nobody counts the sticks.
     *
     * @param programs the programs
     * @param setups one for each layout
     * @param findings stops, warnings and notes
     */
    public RotaryPlan(List<ProgramFile> programs, List<SetupSheet> setups, List<Finding> findings) {
        this(programs, setups, StickCount.NONE, findings);
    }

    /**
     * What a whole order asks of the machine.
     *
     * @param sticks sticks of pipe that are loaded
     * @param programRuns how often a program is started, air cuts and the direction test not counted
     * @param cutterRuns how often a cutter comes into the spindle on all sticks: more than programs where one file has
     *     all cutters of a stick
     * @param cutters different cutters
     * @param effort time, turns and travel of all of these runs, with the least possible turns and travel
     */
    public record Summary(int sticks, int programRuns, int cutterRuns, int cutters, ProgramFile.Effort effort) {

        /**
         * Tells how near the turns are to the least possible.
         *
         * @return turns over least turns, 1 or more; 1 if nothing has to turn
         */
        public double rotationOverLeast() {
            return effort.leastRotationDegrees() > 0 ? effort.rotationDegrees() / effort.leastRotationDegrees() : 1;
        }

        /**
         * Tells how near the travel is to the least possible.
         *
         * @return travel over least travel, 1 or more; 1 if nothing has to travel
         */
        public double travelOverLeast() {
            return effort.leastTravel() > 0 ? effort.travel() / effort.leastTravel() : 1;
        }
    }

    /**
     * Sums up all setups with the runs of each.
     *
     * @return sticks, program runs, time, turns and travel; loading, tool changes and pauses not counted; all 0 if
     *     nothing can be made
     */
    public Summary summary() {
        int sticks = 0;
        int runs = 0;
        int cutterRuns = 0;
        Set<String> cutters = new HashSet<>();
        ProgramFile.Effort effort = ProgramFile.Effort.NONE;
        for (SetupSheet setup : setups) {
            int times = setup.load().runs();
            sticks += times;
            runs += times * setup.files();
            cutterRuns += times * setup.steps().size();
            setup.steps().forEach(s -> cutters.add(s.cutter().tool().id()));
            effort = effort.plus(setup.inAll());
        }
        return new Summary(sticks, runs, cutterRuns, cutters.size(), effort);
    }
}
