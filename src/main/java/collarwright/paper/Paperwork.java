package collarwright.paper;

import collarwright.machining.EndPlan;
import collarwright.machining.RotaryPlan;
import collarwright.machining.SetupSheet;
import collarwright.machining.StickCount;
import collarwright.plan.Plan;
import collarwright.plan.StockWork;
import collarwright.plan.StripWork;
import collarwright.plan.WorkTime;
import java.util.List;

/**
 * What papers are printed from.
 *
 * @param plan the plan
 * @param setups setup sheets of the machine's programs; empty for a press
 * @param count sticks and layouts beside the least possible
 * @param lying what is made of work that lies still
 * @param files every file of the pack, in the order in which they are listed
 * @param time how long the order takes
 */
public record Paperwork(
        Plan plan, List<SetupSheet> setups, StickCount count, Lying lying, List<PackFile> files, WorkTime time) {

    /**
     * What is made of work that lies still.
     *
     * @param ends programs for the ends of struts; none for a press
     * @param strips collars from flat strip; none where they are cut from pipe
     * @param stock what is cut from which stick
     */
    public record Lying(EndPlan ends, StripWork strips, StockWork stock) {}

    /** Keeps the lists. */
    public Paperwork {
        setups = List.copyOf(setups);
        files = List.copyOf(files);
    }

    /**
     * Papers of a job whose struts are drilled on a press, whose collars are cut from pipe, and of which nobody counts the
     * sticks.
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
                new Lying(EndPlan.NONE, StripWork.NONE, StockWork.of(plan)),
                files,
                WorkTime.of(plan, WorkTime.Machines.only(new RotaryPlan(List.of(), setups, List.of()).summary())));
    }

    /**
     * Returns the programs for the ends of struts.
     *
     * @return none for a press
     */
    public EndPlan ends() {
        return lying.ends();
    }

    /**
     * Returns the collars from flat strip.
     *
     * @return none where they are cut from pipe
     */
    public StripWork strips() {
        return lying.strips();
    }

    /**
     * Returns what is cut from which stick.
     *
     * @return struts, collars and rings
     */
    public StockWork stock() {
        return lying.stock();
    }
}
