package collarwright.paper;

import collarwright.machining.RotaryPlan;
import collarwright.machining.SetupSheet;
import collarwright.machining.StickCount;
import collarwright.plan.Plan;
import collarwright.plan.WorkTime;
import java.util.List;

/**
 * What papers are printed from.
 *
 * @param plan the plan
 * @param setups setup sheets of the machine's programs; empty for a press
 * @param count sticks and layouts beside the least possible
 * @param files every file of the pack, in the order in which they are listed
 * @param time how long the order takes
 */
public record Paperwork(Plan plan, List<SetupSheet> setups, StickCount count, List<PackFile> files, WorkTime time) {
    /** Keeps the lists. */
    public Paperwork {
        setups = List.copyOf(setups);
        files = List.copyOf(files);
    }

    /**
     * Papers of which nobody counts the sticks.
     *
     * @param plan the plan
     * @param setups setup sheets of the machine's programs; empty for a press
     * @param files every file of the pack
     */
    public Paperwork(Plan plan, List<SetupSheet> setups, List<PackFile> files) {
        this(
                plan,
                setups,
                StickCount.NONE,
                files,
                WorkTime.of(plan, new RotaryPlan(List.of(), setups, List.of()).summary()));
    }
}
