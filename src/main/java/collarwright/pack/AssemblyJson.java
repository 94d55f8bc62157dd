package collarwright.pack;

import collarwright.assembly.Assembly;
import collarwright.assembly.Bow;
import collarwright.assembly.HoleReport;
import collarwright.assembly.Push;
import collarwright.assembly.RaisingOrder;
import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Writes how a frame goes together: the travel of every hole, and the raising order. */
final class AssemblyJson {

    private final JsonOut out;
    private final Plan plan;
    private final PartNames names;

    AssemblyJson(JsonOut out, Plan plan) {
        this.out = out;
        this.plan = plan;
        this.names = PartNames.of(plan);
    }

    void write(Assembly assembly) throws IOException {
        out.object("assembly", () -> {
            out.objects("hubTypes", range(assembly.reports().size()), type -> {
                out.text("id", names.hubType(type));
                List<HoleReport> holes = assembly.reports().get(type);
                out.rows(
                        "holes",
                        range(holes.size()),
                        hole -> hole(plan.placement(type).holes(), hole, holes.get(hole)));
            });
            out.objects("order", assembly.order().stages(), this::stage);
        });
    }

    private static List<Integer> range(int count) {
        return IntStream.range(0, count).boxed().toList();
    }

    private void hole(List<Integer> number, int hole, HoleReport report) throws IOException {
        out.whole("n", number.get(hole) + 1L);
        out.number("neededMm", report.needed());
        out.number("toEnterMm", report.toEnter());
        push("ringOut", number, report.ringOut());
        out.numberIfFinite("ringInMm", report.ringIn().travel());
        out.wholes(
                "waiting",
                report.waiting().stream()
                        .mapToInt(other -> number.get(other) + 1)
                        .toArray());
        if (report.bow().isPresent()) {
            Bow bow = report.bow().get();
            out.row("bow", () -> {
                out.number("shorteningMm", bow.shortening());
                out.number("risePushedMm", bow.riseWhenPushed());
                out.number("risePulledMm", bow.riseWhenPulled());
                out.number("strainPercent", 100 * bow.strain());
            });
        }
    }

    private void push(String key, List<Integer> number, Push push) throws IOException {
        out.row(key, () -> {
            out.numberIfFinite("travelMm", push.travel());
            out.text("meets", push.met().name().toLowerCase(Locale.ROOT));
            if (push.hole() >= 0) {
                out.whole("hole", number.get(push.hole()) + 1L);
            }
        });
    }

    private void stage(RaisingOrder.Stage stage) throws IOException {
        out.whole("level", stage.level());
        out.texts("nodes", stage.hubs().stream().map(names::node).toList());
        out.rows("struts", stage.steps(), this::step);
    }

    private void step(RaisingStep step) throws IOException {
        out.text("member", names.member(step.member()));
        out.text("way", step.way().name().toLowerCase(Locale.ROOT));
        out.text("hub", names.node(step.hub()));
        if (step.way() == Way.BOW || step.way() == Way.STUCK) {
            out.number("strainPercent", 100 * step.strain());
        }
    }
}
