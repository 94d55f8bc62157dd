package collarwright.pack;

import collarwright.plan.Plan;
import collarwright.strut.EndPlugs;
import collarwright.strut.EndWork;
import collarwright.strut.StrutType;
import java.util.ArrayList;
import java.util.List;

/** Columns of the cut list that only some jobs have: flattened ends, plugs, caps. */
final class EndColumns {

    private static final int MM_DECIMALS = 3;

    private final Plan plan;
    private final EndWork work;

    EndColumns(Plan plan) {
        this.plan = plan;
        this.work = plan.job().strut().endWork();
    }

    /** The heads of all columns: those that every job has, then the job's own. */
    String[] heads(String... usual) {
        List<String> heads = new ArrayList<>(List.of(usual));
        if (work.flat().isPresent()) {
            heads.add("hole to hole (mm)");
            heads.add("flat of each end (mm)");
        }
        if (work.plugs().isPresent()) {
            heads.add("plugs");
            heads.add("plug length (mm)");
            heads.add("plug diameter (mm)");
        }
        if (work.caps()) {
            heads.add("caps");
        }
        return heads.toArray(String[]::new);
    }

    /** The job's own cells of a strut type. */
    void fill(TableBuilder table, StrutType type) {
        int ends = 2 * plan.job().order().made(type.count());
        work.flat()
                .ifPresent(flat -> table.number(type.holeToHole().orElseThrow(), MM_DECIMALS)
                        .number(flat.length(), MM_DECIMALS));
        if (work.plugs().isPresent()) {
            EndPlugs plugs = work.plugs().get();
            table.whole(ends).number(plugs.length(), MM_DECIMALS).number(plugs.diameter(), MM_DECIMALS);
        }
        if (work.caps()) {
            table.whole(ends);
        }
    }
}
