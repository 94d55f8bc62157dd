package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Vec3;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.machining.Bed;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndJob;
import collarwright.machining.EndPlan;
import collarwright.machining.EndSamples;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotarySamples;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.Production;
import collarwright.strut.StrutType;
import collarwright.testing.DomeJobs;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Struts drilled as the programs' texts say, put into their domes in space: both tie holes stand square to the plane of
 * their strut and their hub's axis, which is what makes a tie lie level round its ring. Handedness is proven here: mirror
 * images of twisted struts are among them.
 */
class EndTwistOracleTest {

    @Test
    void drilledStruts_inTheirDomes_haveBothHolesSquareToTheHubs() throws IOException {
        List<Double> twists = new ArrayList<>();
        for (Job job : DomeJobs.all()) {
            Plan plan = Planner.plan(job, List.of());
            for (double reach : new double[] {5000, 200}) {
                prove(plan, reach, twists);
            }
        }
        assertThat(twists).anyMatch(t -> t > 0.05).anyMatch(t -> t < -0.05);
    }

    private static void prove(Plan plan, double reach, List<Double> twists) {
        List<EndStops> stops = Production.stops(plan);
        BedSettings settings = EndSamples.settings(
                EndSamples.bed(false, true, reach, new Bed(20, 2, 25)), ProgramUnits.MM, RotarySamples.twist(6));
        EndPlan programs = EndJob.plan(settings, stops);
        assertThat(programs.programs()).isNotEmpty();
        Hubs hubs = plan.hubs();
        for (int member = 0; member < hubs.dome().memberCount(); member++) {
            StrutType type = plan.struts().types().get(hubs.strutTypeOf(member));
            List<StrutHole> holes = new ArrayList<>();
            for (BenchProgram<EndTask> file : programs.programs()) {
                if (!file.air() && file.task().stops().type().equals(type.id())) {
                    holes.addAll(EndRehearsal.holes(file, settings, type.cut()));
                }
            }
            assertThat(holes).hasSize(2);
            holes.sort((p, q) -> Double.compare(p.fromA(), q.fromA()));
            twists.add(type.twist());
            square(hubs, member, type, holes);
        }
    }

    private static void square(Hubs hubs, int member, StrutType type, List<StrutHole> holes) {
        int a = hubs.nodeAtA(member);
        int b = hubs.nodeAtB(member);
        Vec3 along = hubs.dome().node(b).minus(hubs.dome().node(a)).unit();
        Vec3 wantedA = hubs.dome().axis(a).cross(along).unit();
        Vec3 wantedB = hubs.dome().axis(b).cross(along).unit();
        // The strut as drilled lies along +x; turn it about its length until its first hole is square to hub a.
        Vec3 drilledA = holes.get(0).direction();
        Vec3 drilledB = holes.get(1).direction();
        double between = StrictMath.atan2(new Vec3(1, 0, 0).dot(drilledA.cross(drilledB)), drilledA.dot(drilledB));
        Vec3 secondInDome = Wrap.turned(wantedA, along, between);
        double off = StrictMath.toDegrees(
                StrictMath.asin(StrictMath.min(1, secondInDome.cross(wantedB).norm())));
        assertThat(off).as(type + " member " + member).isLessThan(0.06);
    }
}
