package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.CollarBody;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.geometry.Vec3;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.machining.Load;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.SetupSheet;
import collarwright.machining.Workpiece;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Collars drilled by the programs, set on the nodes of a dome: every strut must find its hole, mirrored ones must not.
 *
 * <p>The test reads the printed words by itself and turns the pipe as the machine does. Sign of a rotary axis: Kramer,
 * Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 2.1.2.2: positive is
 * counter-clockwise seen from the + end of X, from the point of view of the workpiece, so the pipe itself turns clockwise.
 */
class HandednessTest {

    private static final Hubs HUBS = Hubs.of(Dome.of(new DomeSettings(4, 6)));
    private static final double COLLAR = 60;

    /** A 4-frequency half dome has hub types that differ from their mirror images. */
    private static List<Pattern> patterns() {
        List<Pattern> patterns = new ArrayList<>();
        for (HubType type : HUBS.types()) {
            List<Hole> holes = new ArrayList<>();
            for (HubStrut strut : type.struts()) {
                Hole model = RotarySamples.hole(holes.size() + 1, 0, 0, RotarySamples.twist(12));
                holes.add(new Hole(model.number(), strut.azimuth(), 0, 0.1, 12, model.cutter(), 0.2, 0.2, 0.2));
            }
            patterns.add(new Pattern("C" + (char) ('A' + patterns.size()), type.count(), holes, "FFFFFFFF"));
        }
        return patterns;
    }

    private static RotarySettings settings(boolean positive, boolean topTowardChuck) {
        Workpiece pipe = new Workpiece("pipe", new CollarBody(60, Interval.of(4), COLLAR), 0, true, List.of());
        return RotarySamples.settings(
                RotarySamples.turned(RotarySamples.machine(false), positive, topTowardChuck),
                ProgramUnits.MM,
                RotarySamples.cutting("pvc", 60),
                pipe);
    }

    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void drilledCollars_onTheNodes_meetEveryStrut(boolean positive, boolean topTowardChuck) {
        RotarySettings settings = settings(positive, topTowardChuck);
        List<Pattern> patterns = patterns();
        List<PatternRun> runs = patterns.stream().map(p -> new PatternRun(p, 2)).toList();
        RotaryPlan plan = RotaryJob.plan(settings, runs);
        assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();

        int mirrorsThatFit = 0;
        for (int node = 0; node < HUBS.dome().nodeCount(); node++) {
            int type = HUBS.typeOf(node);
            List<Vec3> drilled = drilled(plan, patterns.get(type).id(), positive);
            Frame pipe = new Frame(new Vec3(0, 0, 1), new Vec3(topTowardChuck ? -1 : 1, 0, 0));
            Frame mirror = new Frame(new Vec3(0, 0, 1), new Vec3(topTowardChuck ? 1 : -1, 0, 0));
            assertThat(worstMiss(node, drilled, pipe)).as("node " + node).isLessThan(Math.toRadians(0.001));
            mirrorsThatFit += worstMiss(node, drilled, mirror) < Math.toRadians(0.001) ? 1 : 0;
        }
        // Symmetric hubs fit either way; if all did, this test could not tell left from right.
        assertThat(mirrorsThatFit).isLessThan(HUBS.dome().nodeCount() - 5);
    }

    /** Directions in which the holes of the first collar of a pattern were drilled, in the pipe as it lies at A0. */
    private static List<Vec3> drilled(RotaryPlan plan, String pattern, boolean positive) {
        List<Vec3> directions = new ArrayList<>();
        Load load = plan.setups().stream()
                .map(SetupSheet::load)
                .filter(l -> l.patterns().contains(pattern))
                .findFirst()
                .orElseThrow();
        double edge = load.edge(load.patterns().indexOf(pattern) + 1);
        for (ProgramFile file : plan.programs()) {
            boolean ours =
                    file.purpose() == ProgramFile.Purpose.CUT && file.name().startsWith(load.id() + "-2-");
            double a = 0;
            double x = 0;
            Matcher words = java.util.regex.Pattern.compile("(?m)^G[01] ([XAZ])(-?[0-9.]+)( F.*)?$")
                    .matcher(ours ? file.text() : "");
            double lowest = 99;
            while (words.find()) {
                double number = Double.parseDouble(words.group(2));
                if (words.group(1).equals("A")) {
                    a = number;
                } else if (words.group(1).equals("X")) {
                    x = number;
                } else {
                    lowest = Math.min(lowest, number);
                    if (number > 70 && lowest < 60) {
                        lowest = 99;
                        if (x > edge && x < edge + COLLAR) {
                            directions.add(back(a, positive));
                        }
                    }
                }
            }
        }
        return directions;
    }

    /** The tool drills straight down from +Z; the pipe has turned clockwise by A as seen from +X. */
    private static Vec3 back(double a, boolean positive) {
        double turned = Math.toRadians(positive ? a : -a);
        // Seen from +X with Z up, +Y is to the right; what is up now was to the left before it turned clockwise.
        return new Vec3(0, -Math.sin(turned), Math.cos(turned));
    }

    /** A direction of azimuth 0 and the axis out of TOP, right-handed with their cross product. */
    private record Frame(Vec3 zero, Vec3 top) {
        Vec3 local(Vec3 v) {
            return new Vec3(v.dot(zero), v.dot(top.cross(zero)), v.dot(top));
        }
    }

    /** The largest angle from a strut, seen along the hub's axis, to the nearest drilled hole. */
    private static double worstMiss(int node, List<Vec3> drilled, Frame pipe) {
        Dome dome = HUBS.dome();
        Vec3 centre = dome.node(node);
        Vec3 outward = centre.unit();
        List<Vec3> struts = new ArrayList<>();
        Vec3 first = outward;
        for (int member = 0; member < dome.memberCount(); member++) {
            int hole = dome.memberA(member) == node
                    ? HUBS.holeAtA(member)
                    : dome.memberB(member) == node ? HUBS.holeAtB(member) : 0;
            if (hole > 0) {
                int far = dome.memberA(member) == node ? dome.memberB(member) : dome.memberA(member);
                Vec3 to = dome.node(far).minus(centre);
                Vec3 flat = to.minus(outward.times(to.dot(outward))).unit();
                struts.add(flat);
                first = hole == 1 ? flat : first;
            }
        }
        assertThat(drilled).hasSameSizeAs(struts);
        Frame hub = new Frame(first, outward);
        double worst = 0;
        for (Vec3 strut : struts) {
            double nearest = drilled.stream()
                    .mapToDouble(d -> Math.atan2(
                            pipe.local(d).cross(hub.local(strut)).norm(),
                            pipe.local(d).dot(hub.local(strut))))
                    .min()
                    .orElseThrow();
            worst = Math.max(worst, nearest);
        }
        return worst;
    }
}
