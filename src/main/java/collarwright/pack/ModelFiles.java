package collarwright.pack;

import collarwright.dome.Dome;
import collarwright.frame.FrameModel;
import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.hub.Hubs;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.strut.StrutType;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The frame of a plan for other programs: its nodes and members, and its struts and collars as solids. */
final class ModelFiles {

    /** Above this many struts no solids are made: a viewer would choke on them. Our choice, no source. */
    static final int MOST_SOLID = 5000;

    private final Plan plan;
    private final Hubs hubs;
    private final Dome dome;
    private final double radius;

    ModelFiles(Plan plan) {
        this.plan = plan;
        this.hubs = plan.hubs();
        this.dome = hubs.dome();
        this.radius = plan.struts().radius();
    }

    boolean solid() {
        return dome.memberCount() <= MOST_SOLID;
    }

    /** Nodes where the strut axes meet, and members between them. */
    FrameNet net() {
        double[] coordinates = new double[3 * dome.nodeCount()];
        for (int node = 0; node < dome.nodeCount(); node++) {
            coordinates[3 * node] = radius * dome.x(node);
            coordinates[3 * node + 1] = radius * dome.y(node);
            coordinates[3 * node + 2] = radius * dome.z(node);
        }
        int[] members = IntStream.range(0, dome.memberCount())
                .flatMap(m -> IntStream.of(dome.memberA(m), dome.memberB(m)))
                .toArray();
        return new FrameNet(coordinates, members);
    }

    List<String> ids() {
        return IntStream.range(0, dome.nodeCount()).mapToObj(dome::nodeId).toList();
    }

    /** Struts from cut end to cut end, collars where they sit. */
    FrameModel model() {
        double diameter = plan.job().strut().stock().od().nominal();
        List<FrameModel.Rod> rods = new ArrayList<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            StrutType type = plan.struts().types().get(hubs.strutTypeOf(m));
            Vec3 a = dome.node(hubs.nodeAtA(m)).times(radius);
            Vec3 b = dome.node(hubs.nodeAtB(m)).times(radius);
            Vec3 along = b.minus(a).unit();
            rods.add(new FrameModel.Rod(
                    a.plus(along.times(type.a().setback())),
                    b.minus(along.times(type.b().setback())),
                    diameter,
                    type.id()));
        }
        return new FrameModel(rods, collars());
    }

    private List<FrameModel.Collar> collars() {
        var body = plan.job().hub().body();
        List<Double> below =
                HubSeat.all(plan).stream().map(seat -> seat.collar().mean()).toList();
        List<FrameModel.Collar> collars = new ArrayList<>();
        for (int node = 0; node < dome.nodeCount(); node++) {
            Vec3 axis = dome.axis(node);
            Vec3 centre = dome.node(node).times(radius).minus(axis.times(below.get(hubs.typeOf(node))));
            collars.add(new FrameModel.Collar(
                    centre,
                    axis,
                    body.outerRadius(),
                    body.outerRadius() - body.wall().nominal(),
                    body.width()));
        }
        return collars;
    }
}
