package collarwright.pack;

import collarwright.collar.CollarBody;
import collarwright.dome.Dome;
import collarwright.dome.Role;
import collarwright.geometry.Vec3;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.hub.StrutTip;
import collarwright.plan.HubSeat;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.StrutLean;
import collarwright.strut.StrutEnd;
import collarwright.strut.StrutType;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.Sharing;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

/** Writes what a dome is made of: strut types, hub types, nodes, members and patterns. */
final class PartsJson {

    private final JsonOut out;
    private final Plan plan;
    private final Hubs hubs;
    private final Dome dome;
    private final CollarBody body;
    private final PartNames names;
    private final List<HubSeat> seats;
    private final List<List<StrutLean>> leans;

    PartsJson(JsonOut out, Plan plan) {
        this.out = out;
        this.plan = plan;
        this.hubs = plan.hubs();
        this.dome = hubs.dome();
        this.body = plan.job().hub().body();
        this.names = PartNames.of(plan);
        this.seats = HubSeat.all(plan);
        this.leans = plan.book().patterns().isEmpty() ? List.of() : StrutLean.all(plan);
    }

    void write() throws IOException {
        out.objects("strutTypes", plan.struts().types(), this::strutType);
        out.objects("hubTypes", range(hubs.types().size()), this::hubType);
        out.rows("nodes", range(dome.nodeCount()), this::node);
        out.rows("members", range(dome.memberCount()), this::member);
        out.objects("patterns", plan.book().patterns(), this::pattern);
        if (plan.book().sharing().isPresent()) {
            sharing(plan.book().sharing().get());
        }
    }

    private static List<Integer> range(int count) {
        return IntStream.range(0, count).boxed().toList();
    }

    private void strutType(StrutType type) throws IOException {
        out.text("id", type.id());
        out.whole("count", type.count());
        out.whole("made", plan.job().order().made(type.count()));
        out.number("chordMm", type.chord());
        out.number("cutMm", type.cut());
        if (plan.job().strut().endWork().flat().isPresent()
                && type.holeToHole().filter(l -> l > 0).isPresent()) {
            out.number("holeToHoleMm", type.holeToHole().get());
        }
        out.degrees("twistDeg", type.twist());
        out.rows("ends", List.of(type.a(), type.b()), this::end);
    }

    private void end(StrutEnd end) throws IOException {
        out.degrees("axialDeg", end.axialAngle());
        out.number("setbackMm", end.setback());
        if (end.drill().isPresent()) {
            out.number("drillMm", end.drill().get());
        }
    }

    private void hubType(int index) throws IOException {
        HubType type = hubs.types().get(index);
        HubSeat seat = seats.get(index);
        out.text("id", names.hubType(index));
        out.whole("count", type.count());
        out.text("pattern", names.pattern(index));
        if (plan.job().drilling().flip()) {
            out.flag("flipped", plan.placement(index).flipped());
        }
        out.number("collarBelowNodeMm", seat.collar().mean());
        out.number("nodeSpreadMm", seat.collar().spread());
        out.number("ringMiddleMm", seat.ring().middle());
        out.number("ringLeastWidthMm", seat.ring().width());
        out.degrees("turnOnPatternDeg", plan.placement(index).turn());
        out.rows("struts", range(type.struts().size()), strut -> hubStrut(index, strut));
    }

    private void hubStrut(int hubType, int index) throws IOException {
        HubStrut strut = hubs.types().get(hubType).struts().get(index);
        out.text("strutType", names.strutType(strut.strutType()));
        out.text("end", strut.tip() == StrutTip.A ? "a" : "b");
        out.degrees("azimuthDeg", strut.azimuth());
        out.degrees("axialDeg", strut.axialAngle());
        out.whole("hole", plan.placement(hubType).holes().get(index) + 1L);
        if (plan.book().sharing().isPresent() && !leans.isEmpty()) {
            StrutLean lean = leans.get(hubType).get(index);
            out.degrees("leanDeg", lean.lean());
            out.degrees("extraLeanDeg", lean.extra());
            out.number("missMm", lean.miss());
        }
    }

    private void sharing(Sharing sharing) throws IOException {
        out.object("sharing", () -> {
            out.whole("hubTypes", sharing.hubTypes());
            out.whole("patterns", sharing.patterns());
            out.whole("atLeast", sharing.atLeast());
            out.degrees("extraLeanDeg", sharing.extraLean());
            out.number("missMm", sharing.miss());
            out.degrees("extraLeanLimitDeg", sharing.limits().extraLean());
            out.number("missLimitMm", sharing.limits().miss());
        });
    }

    private void node(int node) throws IOException {
        double radius = plan.struts().radius();
        out.text("id", names.node(node));
        out.text("hubType", names.hubType(hubs.typeOf(node)));
        out.numbers("xyzMm", radius * dome.x(node), radius * dome.y(node), radius * dome.z(node));
        Vec3 axis = dome.axis(node);
        out.numbers("axis", axis.x(), axis.y(), axis.z());
        out.degrees("turnDeg", plan.turn(node));
        if (dome.moved(node) > 0) {
            out.number("movedMm", radius * dome.moved(node));
        }
        out.flag("flipped", plan.flipped(node));
    }

    private void member(int member) throws IOException {
        out.text("id", names.member(member));
        out.text("strutType", names.strutType(hubs.strutTypeOf(member)));
        if (dome.role(member) != Role.SHELL) {
            out.text("role", role(dome.role(member)));
        }
        memberEnd("a", hubs.nodeAtA(member), plan.holeAtA(member));
        memberEnd("b", hubs.nodeAtB(member), plan.holeAtB(member));
    }

    private static String role(Role role) {
        return switch (role) {
            case SHELL -> "shell";
            case RISER -> "riser";
            case SECOND_RING -> "second-ring";
            case RISER_DIAGONAL -> "riser-diagonal";
            case RIM -> "rim";
        };
    }

    private void memberEnd(String key, int node, int hole) throws IOException {
        out.row(key, () -> {
            out.text("node", names.node(node));
            out.whole("hole", hole);
        });
    }

    private void pattern(Pattern pattern) throws IOException {
        out.text("id", pattern.id());
        out.whole("count", pattern.count());
        out.whole("made", plan.job().order().made(pattern.count()));
        out.text("fingerprint", pattern.fingerprint());
        out.rows("holes", pattern.holes(), this::hole);
    }

    private void hole(Hole hole) throws IOException {
        out.whole("n", hole.number());
        out.degrees("azimuthDeg", hole.azimuth());
        out.number("heightMm", hole.height());
        out.number("arcMm", hole.azimuth() * body.outerRadius());
        out.degrees("neededLeanDeg", hole.neededLean());
        out.numberIfFinite("requiredMm", hole.required());
        out.text("cutter", hole.cutter().id());
        if (hole.cutter().bores()) {
            out.text("boredWith", hole.cutter().tool().id());
        }
        out.number("asDrilledMm", hole.diameter());
        out.degrees("tiltLimitDeg", hole.tiltLimit());
        out.degrees("tiltMinDeg", hole.tiltMin());
        out.degrees("tiltMaxDeg", hole.tiltMax());
        out.degrees("slackDeg", hole.slack());
        out.degrees("swingDeg", hole.swing());
        out.degrees("tiltSpreadDeg", hole.tolerance().spread());
        out.degrees("perHoleDeg", hole.tolerance().perHole());
        out.degrees("perStrutDeg", hole.tolerance().perStrut());
        out.degrees("perWallDeg", hole.tolerance().perWall());
    }
}
