package collarwright.paper;

import collarwright.machining.EndPlan;
import collarwright.machining.SetupSheet;
import collarwright.plan.Plan;
import collarwright.plan.StripWork;
import java.util.List;

/**
 * What papers are printed from.
 *
 * @param plan the plan
 * @param setups setup sheets of the machine's programs; empty for a press
 * @param ends programs for the ends of struts; none for a press
 * @param strips collars from flat strip; none where they are cut from pipe
 * @param files every file of the pack, in the order in which they are listed
 */
public record Paperwork(Plan plan, List<SetupSheet> setups, EndPlan ends, StripWork strips, List<PackFile> files) {
    /** Keeps the lists. */
    public Paperwork {
        setups = List.copyOf(setups);
        files = List.copyOf(files);
    }

    /**
     * Papers of a job whose struts are drilled on a press and whose collars are cut from pipe.
     *
     * @param plan the plan
     * @param setups setup sheets of the machine's programs
     * @param files every file of the pack
     */
    public Paperwork(Plan plan, List<SetupSheet> setups, List<PackFile> files) {
        this(plan, setups, EndPlan.NONE, StripWork.NONE, files);
    }
}
