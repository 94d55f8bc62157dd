package collarwright.dome;

import collarwright.frame.FrameNet;
import java.util.stream.IntStream;

/** Makes a dome of a frame from outside: lays its hub axes and finds its feet. */
final class FrameParts {

    private final FrameSettings settings;
    private final double[] coordinates;

    private FrameParts(FrameSettings settings) {
        this.settings = settings;
        this.coordinates = settings.net().coordinates();
    }

    static DomeParts of(FrameSettings settings) {
        return new FrameParts(settings).parts();
    }

    private DomeParts parts() {
        FrameNet net = settings.net();
        DomeParts bare = new DomeParts(
                settings,
                coordinates,
                coordinates.clone(),
                net.members(),
                new Role[0],
                NodeNames.numbers(net.nodeCount()),
                feet(),
                new double[0]);
        double[] axes = HubAxes.of(bare, settings.axis());
        putGiven(axes);
        Outward.turn(bare, axes);
        // A given axis is taken as it is given, also against its neighbours.
        putGiven(axes);
        return bare.on(coordinates, axes);
    }

    private void putGiven(double[] axes) {
        settings.axes().forEach(given -> DomeParts.put(axes, given.node(), given.axis()));
    }

    // A frame stands on three nodes or more; on fewer it hangs or lies.
    private int[] feet() {
        int nodes = settings.net().nodeCount();
        double low = IntStream.range(0, nodes).mapToDouble(this::z).min().orElse(0);
        int[] lowest = IntStream.range(0, nodes)
                .filter(node -> z(node) <= low + settings.feetWithin())
                .toArray();
        return lowest.length >= 3 ? lowest : new int[0];
    }

    private double z(int node) {
        return coordinates[3 * node + 2];
    }
}
