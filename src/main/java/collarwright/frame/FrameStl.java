package collarwright.frame;

import collarwright.geometry.Vec3;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Writes a model as binary STL: rods of 12 sides and collars of 24, each closed; mm.
 *
 * <p>Source: 3D Systems, StereoLithography Interface Specification, 1989 (from memory).
 */
public final class FrameStl {

    static final int ROD_SIDES = 12;
    static final int COLLAR_SIDES = 24;
    private static final int HEAD = 80;
    private static final int TRIANGLE = 50;

    private FrameStl() {}

    /**
     * Writes a model.
     *
     * @param model the model
     * @return the file
     */
    public static byte[] write(FrameModel model) {
        Triangles all = new Triangles();
        model.rods().forEach(rod -> all.rod(rod, ROD_SIDES));
        model.collars().forEach(collar -> all.collar(collar, COLLAR_SIDES));
        ByteBuffer out = ByteBuffer.allocate(HEAD + 4 + TRIANGLE * all.size()).order(ByteOrder.LITTLE_ENDIAN);
        out.position(HEAD);
        out.putInt(all.size());
        for (int t = 0; t < all.size(); t++) {
            put(out, all.normal(t));
            for (int corner = 0; corner < 3; corner++) {
                put(out, all.point(all.corner(t, corner)));
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    private static void put(ByteBuffer out, Vec3 at) {
        out.putFloat((float) at.x()).putFloat((float) at.y()).putFloat((float) at.z());
    }
}
