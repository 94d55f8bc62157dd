package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Carries a level foot down to a second ring by vertical struts. */
final class Risers {

    private final DomeParts shell;
    private final double height;
    private final int[] below;

    private Risers(DomeParts shell, double height) {
        this.shell = shell;
        this.height = height;
        this.below = new int[shell.nodeCount()];
        Arrays.fill(below, -1);
        for (int i = 0; i < shell.feet().length; i++) {
            below[shell.feet()[i]] = shell.nodeCount() + i;
        }
    }

    /**
     * Adds the risers.
     *
     * @param shell with a level foot
     * @param height of a riser, in the shell's unit
     * @param diagonals whether quads get one
     * @return the whole frame; its feet are the nodes of the second ring
     */
    static DomeParts under(DomeParts shell, double height, boolean diagonals) {
        return new Risers(shell, height).build(diagonals);
    }

    private DomeParts build(boolean diagonals) {
        int nodes = shell.nodeCount() + shell.feet().length;
        double[] coordinates = Arrays.copyOf(shell.coordinates(), 3 * nodes);
        double[] axes = Arrays.copyOf(shell.axes(), 3 * nodes);
        int[] feet = new int[shell.feet().length];
        for (int i = 0; i < feet.length; i++) {
            Vec3 foot = shell.node(shell.feet()[i]);
            feet[i] = shell.nodeCount() + i;
            DomeParts.put(coordinates, feet[i], new Vec3(foot.x(), foot.y(), foot.z() - height));
            DomeParts.put(axes, feet[i], new Vec3(foot.x(), foot.y(), 0).unit());
        }
        List<Placed> members = members(diagonals);
        int[] ends = new int[2 * members.size()];
        Role[] roles = new Role[members.size()];
        for (int m = 0; m < members.size(); m++) {
            ends[2 * m] = members.get(m).a();
            ends[2 * m + 1] = members.get(m).b();
            roles[m] = members.get(m).role();
        }
        return new DomeParts(
                shell.source(),
                coordinates,
                axes,
                ends,
                roles,
                shell.names().withTier(feet.length),
                feet,
                shell.moved().length == 0 ? shell.moved() : Arrays.copyOf(shell.moved(), nodes));
    }

    private List<Placed> members(boolean diagonals) {
        List<Placed> members = new ArrayList<>();
        for (int m = 0; m < shell.memberCount(); m++) {
            int a = shell.members()[2 * m];
            int b = shell.members()[2 * m + 1];
            members.add(new Placed(a, b, Role.SHELL));
            if (below[a] >= 0 && below[b] >= 0) {
                members.add(new Placed(
                        StrictMath.min(below[a], below[b]), StrictMath.max(below[a], below[b]), Role.SECOND_RING));
                if (diagonals) {
                    boolean clockwise = clockwise(a, b);
                    members.add(new Placed(clockwise ? a : b, clockwise ? below[b] : below[a], Role.RISER_DIAGONAL));
                }
            }
        }
        for (int foot : shell.feet()) {
            members.add(new Placed(foot, below[foot], Role.RISER));
        }
        members.sort(Placed.ORDER);
        return members;
    }

    // Whether b comes after a, clockwise from above, on the short way round.
    private boolean clockwise(int a, int b) {
        Vec3 from = shell.node(a);
        Vec3 to = shell.node(b);
        return from.x() * to.y() - from.y() * to.x() < 0;
    }
}
