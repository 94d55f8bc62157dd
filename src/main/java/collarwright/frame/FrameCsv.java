package collarwright.frame;

import collarwright.geometry.Vec3;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes a frame as the table that {@link FrameReader} reads: rows {@code node,ID,x,y,z} and {@code member,ID,ID}, in mm.
 *
 * <p>Source: IETF RFC 4180, Common Format and MIME Type for CSV Files, 2005.
 */
public final class FrameCsv {

    private static final String END = "\r\n";

    private FrameCsv() {}

    /**
     * Writes a frame.
     *
     * @param net the frame
     * @param ids what its nodes are called; letters, digits and hyphens
     * @return the file; read back, every coordinate and member is exactly the same
     */
    public static byte[] write(FrameNet net, List<String> ids) {
        StringBuilder out = new StringBuilder("kind,id,x (mm),y (mm),z (mm)").append(END);
        for (int node = 0; node < net.nodeCount(); node++) {
            Vec3 at = net.node(node);
            out.append("node,").append(ids.get(node));
            out.append(',').append(Digits.of(at.x()));
            out.append(',').append(Digits.of(at.y()));
            out.append(',').append(Digits.of(at.z())).append(END);
        }
        for (int m = 0; m < net.memberCount(); m++) {
            out.append("member,").append(ids.get(net.memberA(m)));
            out.append(',').append(ids.get(net.memberB(m))).append(END);
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }
}
