package collarwright.frame;

import collarwright.geometry.Vec3;
import java.nio.charset.StandardCharsets;

/**
 * Writes a frame as OBJ: a {@code v} for each node, an {@code l} for each member, in mm.
 *
 * <p>Source: Wavefront, Object Files (.obj), appendix B1 of the Advanced Visualizer manual (from memory).
 */
public final class FrameObj {

    private FrameObj() {}

    /**
     * Writes a frame.
     *
     * @param net the frame
     * @return the file; read back, every coordinate and member is exactly the same
     */
    public static byte[] write(FrameNet net) {
        StringBuilder out = new StringBuilder("# nodes and members in mm, +z up\n");
        for (int node = 0; node < net.nodeCount(); node++) {
            Vec3 at = net.node(node);
            out.append("v ")
                    .append(Digits.of(at.x()))
                    .append(' ')
                    .append(Digits.of(at.y()))
                    .append(' ')
                    .append(Digits.of(at.z()))
                    .append('\n');
        }
        for (int m = 0; m < net.memberCount(); m++) {
            out.append("l ")
                    .append(net.memberA(m) + 1)
                    .append(' ')
                    .append(net.memberB(m) + 1)
                    .append('\n');
        }
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
