package collarwright.plan;

import collarwright.hub.HubStrut;
import collarwright.tooling.Joint;
import collarwright.tooling.Pattern;
import collarwright.tooling.Placement;
import java.util.ArrayList;
import java.util.List;

/**
 * What the hole of a strut asks of it and gives it, where its hub shares a pattern with others.
 *
 * @param lean the furthest that the strut has to lean in its hole, over all places where it is used
 * @param extra how much further than its own axial angle the hole lets it lean because it serves others too: the largest
 *     needed lean of the hole, less that angle
 * @param miss the most that the strut's line passes the hub's axis
 */
public record StrutLean(double lean, double extra, double miss) {

    /**
     * Finds it for all struts of all hub types.
     *
     * @param plan the plan, with patterns
     * @return by hub type and strut; a strut of a hub that has its own pattern leans by its axial angle and misses nothing
     */
    public static List<List<StrutLean>> all(Plan plan) {
        List<double[]> leans = new ArrayList<>();
        List<double[]> misses = new ArrayList<>();
        plan.hubs().types().forEach(type -> {
            leans.add(type.struts().stream()
                    .mapToDouble(s -> plan.book().sharing().isPresent() ? 0 : StrictMath.abs(s.axialAngle()))
                    .toArray());
            misses.add(new double[type.struts().size()]);
        });
        plan.book().sharing().ifPresent(sharing -> {
            for (Joint joint : sharing.joints()) {
                take(leans, joint.a(), joint.line().a().direction().lean());
                take(leans, joint.b(), joint.line().b().direction().lean());
                take(misses, joint.a(), StrictMath.abs(joint.line().a().miss()));
                take(misses, joint.b(), StrictMath.abs(joint.line().b().miss()));
            }
        });
        List<List<StrutLean>> all = new ArrayList<>();
        for (int type = 0; type < leans.size(); type++) {
            all.add(of(plan, type, leans.get(type), misses.get(type)));
        }
        return all;
    }

    private static void take(List<double[]> most, Joint.At at, double value) {
        double[] row = most.get(at.hubType());
        row[at.strut()] = StrictMath.max(row[at.strut()], value);
    }

    private static List<StrutLean> of(Plan plan, int type, double[] leans, double[] misses) {
        Placement placement = plan.placement(type);
        Pattern pattern = plan.book().patterns().get(placement.pattern());
        List<StrutLean> row = new ArrayList<>();
        for (int i = 0; i < leans.length; i++) {
            HubStrut strut = plan.hubs().types().get(type).struts().get(i);
            double needed = pattern.holes().get(placement.holes().get(i)).neededLean();
            row.add(new StrutLean(leans[i], needed - StrictMath.abs(strut.axialAngle()), misses[i]));
        }
        return row;
    }
}
