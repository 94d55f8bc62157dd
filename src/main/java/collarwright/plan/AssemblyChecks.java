package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.assembly.Assembly.Tightest;
import collarwright.assembly.HubTravel;
import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.dome.Dome;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Checks whether a frame can be put together by hand, and what has to change where it cannot. */
final class AssemblyChecks {

    private static final String GEOMETRY = "geometry";
    private static final double ROUNDING = 1e-6;
    private static final int TOLD = 6;

    private final Job job;
    private final Hubs hubs;
    private final StrutLayout struts;
    private final PatternBook book;
    private final Assembly assembly;

    AssemblyChecks(Job job, Hubs hubs, StrutLayout struts, PatternBook book, Assembly assembly) {
        this.book = book;
        this.job = job;
        this.hubs = hubs;
        this.struts = struts;
        this.assembly = assembly;
    }

    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        assembly.tightest().forEach(t -> checks.add(travel(t)));
        for (int type = 0; type < assembly.travels().size(); type++) {
            checks.add(ringLast(type));
        }
        return checks;
    }

    private Check travel(Tightest tightest) {
        Check check = new Check(
                Code.STRUT_TRAVEL,
                new Where.Part("strut "
                        + struts.types().get(tightest.strutType()).id()
                        + " / pushed into pattern " + pattern(tightest.hubType()) + " hole "
                        + (book.placements().get(tightest.hubType()).holes().get(tightest.hole()) + 1)),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                tightest.travel(),
                new Check.Limits(
                        OptionalDouble.empty(),
                        tightest.needed(),
                        "geometry, with the working clearance: our choice, no source; editable in [limits]"),
                List.of());
        return check.verdict().isPresent() ? check.withHints(early(tightest)) : check;
    }

    private String pattern(int type) {
        return Ids.letters('C', book.placements().get(type).pattern());
    }

    private String ringAt(int type) {
        return (book.hubsShare() ? "hub " + Ids.letters('H', type) + " on pattern " : "pattern ") + pattern(type)
                + " / centre ring";
    }

    private List<String> early(Tightest tightest) {
        List<String> hints = new ArrayList<>();
        hints.add("put it in before the neighbours that it meets: follow the raising order in the traveller");
        hints.addAll(new AssemblyAdvice(job, hubs, assembly).hints(members(tightest.strutType())));
        return hints;
    }

    private List<Integer> members(int strutType) {
        List<Integer> members = new ArrayList<>();
        for (int m = 0; m < hubs.dome().memberCount(); m++) {
            if (hubs.strutTypeOf(m) == strutType) {
                members.add(m);
            }
        }
        return members;
    }

    private Check ringLast(int type) {
        double room = assembly.travels().get(type).holes().stream()
                .mapToDouble(HubTravel.HoleTravel::ringRoom)
                .min()
                .orElseThrow();
        List<String> hints = room >= 0
                ? List.of()
                : List.of("make end-gap at least "
                        + Decimals.fixed(StrictMath.ceil(-room * 10 - ROUNDING) / 10, 1)
                        + " mm larger, or take a smaller centre ring");
        return new Check(
                Code.RING_LAST,
                new Where.Part(ringAt(type)),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                room,
                new Check.Limits(OptionalDouble.of(0), 0, GEOMETRY),
                hints);
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        byType(Way.STUCK).forEach((type, steps) -> findings.add(stuck(type, steps)));
        byType(Way.BOW).forEach((type, steps) -> findings.add(bowed(type, steps)));
        boolean stuck = !assembly.order().steps(Way.STUCK).isEmpty();
        List<RaisingStep> held = stuck
                ? List.of()
                : assembly.order().steps().stream().filter(RaisingStep::held).toList();
        if (!held.isEmpty()) {
            findings.add(Finding.warn(
                    Code.ASSEMBLY_HELD,
                    new Where.Part(named(held)),
                    "every strut joins what stands on the ground",
                    held.size() + " struts join parts that do not reach the ground yet",
                    "prop these parts up until they are joined to what stands, and keep clear of them"));
        }
        return findings;
    }

    private Map<Integer, List<RaisingStep>> byType(Way way) {
        return assembly.order().steps(way).stream()
                .collect(Collectors.groupingBy(s -> hubs.strutTypeOf(s.member()), TreeMap::new, Collectors.toList()));
    }

    private Finding stuck(int type, List<RaisingStep> steps) {
        return finding(
                Level.STOP,
                Code.ASSEMBLY_STUCK,
                steps,
                "room to push " + strut(type) + " in, in some order of assembly, or to bow it in by at most "
                        + percent(job.strut().stock().material().strainLimit()),
                "no order leaves room: " + travelled(type) + "; bowing it in would strain it by " + worst(steps));
    }

    private Finding bowed(int type, List<RaisingStep> steps) {
        return finding(
                Level.WARN,
                Code.ASSEMBLY_BOW,
                steps,
                "room to push " + strut(type) + " in straight",
                "no order leaves room: " + travelled(type) + "; bowed in it is strained by " + worst(steps) + " of the "
                        + percent(job.strut().stock().material().strainLimit()) + " that are allowed");
    }

    private Finding finding(Level level, Code code, List<RaisingStep> steps, String expected, String found) {
        List<String> hints = new ArrayList<>(new AssemblyAdvice(job, hubs, assembly)
                .hints(steps.stream().map(RaisingStep::member).toList()));
        if (level == Level.WARN) {
            hints.add("or bow it by hand as it goes in, and mind that it springs back");
        } else if (hints.isEmpty()) {
            hints.add("take thinner struts, or another pair of pipes for collar and ring");
        }
        return new Finding(level, code, new Where.Part(named(steps)), expected, found, hints);
    }

    private String strut(int type) {
        return "strut " + struts.types().get(type).id();
    }

    // What the strut type's tightest place has and needs.
    private String travelled(int type) {
        Tightest tightest = assembly.tightest().get(type);
        return "with its neighbours seated it can be pushed in by " + Decimals.fixed(tightest.travel(), 1)
                + " mm and needs " + Decimals.fixed(tightest.needed(), 1) + " mm";
    }

    private static String worst(List<RaisingStep> steps) {
        return percent(steps.stream()
                .map(RaisingStep::strain)
                .max(Comparator.naturalOrder())
                .orElseThrow());
    }

    private static String percent(double strain) {
        return Decimals.fixed(100 * strain, 2) + " %";
    }

    private String named(List<RaisingStep> steps) {
        Dome dome = hubs.dome();
        String told = steps.stream()
                .limit(TOLD)
                .map(s -> dome.nodeId(dome.memberA(s.member())) + "/" + dome.nodeId(dome.memberB(s.member())))
                .collect(Collectors.joining(", "));
        String more = steps.size() > TOLD ? " and " + (steps.size() - TOLD) + " more" : "";
        return (steps.size() == 1 ? "strut " : "struts ") + told + more;
    }
}
