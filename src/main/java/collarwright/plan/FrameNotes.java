package collarwright.plan;

import collarwright.collar.NodeOffset;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutType;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Tells what a choice about the frame does, and what the other choice would do. */
final class FrameNotes {

    /** So many strut types are told one by one; the rest stand in the pack. */
    private static final int TOLD = 12;

    private final Job job;
    private final Framing frame;

    private FrameNotes(Job job, Framing frame) {
        this.job = job;
        this.frame = frame;
    }

    static List<Finding> of(Job job, Framing frame) {
        FrameNotes notes = new FrameNotes(job, frame);
        List<Finding> findings = new ArrayList<>();
        if (job.dome() instanceof DomeSettings settings) {
            notes.levelled(settings, findings);
            notes.tilts(settings, findings);
        }
        if (job.dome() instanceof FrameSettings settings) {
            findings.addAll(FacingSides.of(frame.hubs().dome(), settings));
        }
        StockLengths.of(job, frame.struts()).ifPresent(findings::add);
        if (job.size() instanceof SizeRule.PiecesPerStock rule) {
            findings.add(notes.perStick(rule));
        }
        return findings;
    }

    private void levelled(DomeSettings settings, List<Finding> findings) {
        Dome shell = frame.shell().dome();
        double most = largestMove(shell);
        if (most == 0) {
            return;
        }
        Foot.Plane plane =
                settings.foot() instanceof Foot.Level level ? level.plane() : ((Foot.Riser) settings.foot()).plane();
        Foot.Plane other = plane == Foot.Plane.LEAST_MOVE ? Foot.Plane.FEWEST_TYPES : Foot.Plane.LEAST_MOVE;
        int natural = types(standing(settings, new Foot.Natural()));
        Dome alternative = standing(settings, new Foot.Level(other));
        findings.add(Finding.note(
                Code.FOOT_LEVELLED,
                new Where.Part(FrameShape.named(
                        shell,
                        shell.feet().stream()
                                .filter(node -> shell.moved(node) > 0)
                                .mapToInt(Integer::intValue)
                                .toArray())),
                "foot hubs in one plane",
                "moved along their meridians by up to " + millimetres(most) + " mm; "
                        + frame.shell().strutShapes().size() + " strut types instead of " + natural,
                "foot-plane = \"" + word(other) + "\" would move them by up to "
                        + millimetres(largestMove(alternative)) + " mm and make " + types(alternative)
                        + " strut types",
                "how far each was moved stands in plan.json (movedMm) and in struts/hubs.csv"));
    }

    private static String word(Foot.Plane plane) {
        return plane == Foot.Plane.LEAST_MOVE ? "least-move" : "fewest-types";
    }

    private String millimetres(double length) {
        return Decimals.fixed(length * frame.struts().radius(), 1);
    }

    private static Dome standing(DomeSettings settings, Foot foot) {
        return Dome.of(new DomeSettings(
                settings.sphere(), settings.cut(), settings.form(), foot, settings.tiersFromFoot(), List.of()));
    }

    private static int types(Dome dome) {
        return Hubs.of(dome).strutShapes().size();
    }

    private static double largestMove(Dome dome) {
        return dome.feet().stream().mapToDouble(dome::moved).max().orElse(0);
    }

    // Unequal tilts in one hub mean that its strut axes do not meet in one point: that is what even tilts make better.
    private void tilts(DomeSettings settings, List<Finding> findings) {
        if (settings.form().equals(Form.SPHERE)) {
            return;
        }
        Form.Axis kind = settings.form().axis();
        Form.Axis other = kind == Form.Axis.FITTED ? Form.Axis.EVEN_TILTS : Form.Axis.FITTED;
        Form form = new Form(settings.form().heightFactor(), other);
        Dome alternative = Dome.of(new DomeSettings(
                settings.sphere(), settings.cut(), form, settings.foot(), settings.tiersFromFoot(), List.of()));
        if (!HubFaults.of(alternative, settings).isEmpty()) {
            return;
        }
        findings.add(Finding.note(
                Code.HUB_TILTS,
                new Where.Part("hub axes"),
                "struts of a hub that lean alike and meet in one point",
                told(frame.shell()),
                "axis = \"" + (other == Form.Axis.FITTED ? "fitted" : "even-tilts") + "\" would give "
                        + told(Hubs.of(alternative))));
    }

    private String told(Hubs hubs) {
        double midRadius = job.hub().body().midRadius();
        double angle = 0;
        double apart = 0;
        for (HubType type : hubs.types()) {
            List<Double> tilts =
                    type.struts().stream().map(HubStrut::axialAngle).toList();
            double least = tilts.stream().min(Double::compare).orElseThrow();
            double most = tilts.stream().max(Double::compare).orElseThrow();
            angle = StrictMath.max(angle, most - least);
            apart = StrictMath.max(apart, NodeOffset.of(midRadius, tilts).spread());
        }
        return "tilts up to " + Decimals.fixed(Angles.degrees(angle), 2) + "° apart in one hub, axes that meet within "
                + Decimals.fixed(apart, 1) + " mm";
    }

    private Finding perStick(SizeRule.PiecesPerStock rule) {
        List<StrutType> types = frame.struts().types();
        String told = types.stream()
                .sorted(java.util.Comparator.comparingDouble(StrutType::cut).reversed())
                .limit(TOLD)
                .map(type -> type.id() + " " + pieces(rule, type) + " ("
                        + Decimals.fixed(100 * pieces(rule, type) * type.cut() / rule.stick(), 1) + " %)")
                .collect(Collectors.joining(", "));
        return Finding.note(
                Code.STOCK_YIELD,
                new Where.Part("struts"),
                rule.pieces() + " pieces of the longest from a stick of " + Decimals.trimmed(rule.stick(), 1) + " mm",
                told + (types.size() > TOLD ? " and " + (types.size() - TOLD) + " more types" : ""),
                "pieces of each type from a stick, and how much of it they use");
    }

    /** Pieces of a strut that a stick gives. */
    static int pieces(SizeRule.PiecesPerStock rule, StrutType type) {
        double usable = rule.stick() - rule.trim() + rule.kerf();
        return (int) StrictMath.floor(usable / (type.cut() + rule.kerf()) * (1 + 1e-12));
    }
}
