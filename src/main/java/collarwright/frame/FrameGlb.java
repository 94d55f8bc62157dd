package collarwright.frame;

import collarwright.geometry.Vec3;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a model as binary glTF for pictures: two meshes, struts and collars, in metres with +y up, as the format wants.
 * Without normals, so that viewers show the flat sides that they are.
 *
 * <p>Source: Khronos Group, glTF 2.0 Specification, chapters GLB File Format and Geometry (from memory).
 */
public final class FrameGlb {

    private static final int GLTF = 0x46546C67;
    private static final int JSON = 0x4E4F534A;
    private static final int BINARY = 0x004E4942;
    private static final int FLOATS = 4;

    private FrameGlb() {}

    /**
     * Writes a model.
     *
     * @param model the model, with a rod and a collar at least
     * @return the file
     */
    public static byte[] write(FrameModel model) {
        Triangles rods = new Triangles();
        model.rods().forEach(rod -> rods.rod(rod, FrameStl.ROD_SIDES));
        Triangles collars = new Triangles();
        model.collars().forEach(collar -> collars.collar(collar, FrameStl.COLLAR_SIDES));
        ByteBuffer data = ByteBuffer.allocate(
                        12 * (rods.pointCount() + collars.pointCount() + rods.size() + collars.size()))
                .order(ByteOrder.LITTLE_ENDIAN);
        List<String> accessors = new ArrayList<>();
        List<String> views = new ArrayList<>();
        for (Triangles part : List.of(rods, collars)) {
            int from = data.position();
            accessors.add(points(data, part, views.size()));
            views.add(view(from, data.position(), 34962));
            int next = data.position();
            accessors.add(corners(data, part, views.size()));
            views.add(view(next, data.position(), 34963));
        }
        return file(text(String.join(",", accessors), String.join(",", views), data.capacity()), data);
    }

    private static String view(int from, int to, int target) {
        return "{\"buffer\":0,\"byteOffset\":" + from + ",\"byteLength\":" + (to - from) + ",\"target\":" + target
                + "}";
    }

    private static String points(ByteBuffer data, Triangles part, int view) {
        float[] least = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
        float[] most = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
        for (int point = 0; point < part.pointCount(); point++) {
            Vec3 at = part.point(point).times(0.001);
            float[] turned = {(float) at.x(), (float) at.z(), (float) -at.y()};
            for (int i = 0; i < 3; i++) {
                data.putFloat(turned[i]);
                least[i] = StrictMath.min(least[i], turned[i]);
                most[i] = StrictMath.max(most[i], turned[i]);
            }
        }
        return "{\"bufferView\":" + view + ",\"componentType\":5126,\"count\":" + part.pointCount()
                + ",\"type\":\"VEC3\",\"min\":" + vector(least) + ",\"max\":" + vector(most) + "}";
    }

    private static String corners(ByteBuffer data, Triangles part, int view) {
        for (int t = 0; t < part.size(); t++) {
            for (int corner = 0; corner < 3; corner++) {
                data.putInt(part.corner(t, corner));
            }
        }
        return "{\"bufferView\":" + view + ",\"componentType\":5125,\"count\":" + 3 * part.size()
                + ",\"type\":\"SCALAR\"}";
    }

    private static String vector(float[] at) {
        return "[" + Digits.of(at[0]) + "," + Digits.of(at[1]) + "," + Digits.of(at[2]) + "]";
    }

    private static String text(String accessors, String views, int bytes) {
        return "{\"asset\":{\"version\":\"2.0\",\"generator\":\"collarwright\"},\"scene\":0,\"scenes\":[{\"nodes\":[0,1]}],"
                + "\"nodes\":[{\"mesh\":0,\"name\":\"struts\"},{\"mesh\":1,\"name\":\"collars\"}],"
                + "\"meshes\":[{\"name\":\"struts\",\"primitives\":[{\"attributes\":{\"POSITION\":0},\"indices\":1,\"material\":0}]},"
                + "{\"name\":\"collars\",\"primitives\":[{\"attributes\":{\"POSITION\":2},\"indices\":3,\"material\":1}]}],"
                + "\"materials\":[" + material("strut", "0.75,0.72,0.66") + "," + material("collar", "0.25,0.42,0.5")
                + "],"
                + "\"accessors\":[" + accessors + "],\"bufferViews\":[" + views + "],\"buffers\":[{\"byteLength\":"
                + bytes
                + "}]}";
    }

    private static String material(String name, String colour) {
        return "{\"name\":\"" + name + "\",\"pbrMetallicRoughness\":{\"baseColorFactor\":[" + colour
                + ",1],\"metallicFactor\":0,\"roughnessFactor\":0.8}}";
    }

    // Each chunk is filled up to four bytes: the text with blanks; the numbers are full of themselves.
    private static byte[] file(String text, ByteBuffer data) {
        byte[] json = text.getBytes(StandardCharsets.US_ASCII);
        int filled = (json.length + FLOATS - 1) / FLOATS * FLOATS;
        ByteBuffer out =
                ByteBuffer.allocate(12 + 8 + filled + 8 + data.capacity()).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(GLTF).putInt(2).putInt(out.capacity());
        out.putInt(filled).putInt(JSON).put(json);
        for (int i = json.length; i < filled; i++) {
            out.put((byte) ' ');
        }
        out.putInt(data.capacity()).putInt(BINARY).put(data.flip());
        return out.array();
    }
}
