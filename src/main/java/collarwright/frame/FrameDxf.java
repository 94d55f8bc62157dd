package collarwright.frame;

import collarwright.geometry.Vec3;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes struts as lines in space, from cut end to cut end, a layer for each strut type, in the old and plain release 12
 * that every program reads. Millimetres.
 *
 * <p>Source: Autodesk, AutoCAD Release 12 Customization Manual, chapter Drawing Interchange and File Formats (from
 * memory).
 */
public final class FrameDxf {

    private static final String END = "\r\n";

    private final StringBuilder out = new StringBuilder();

    private FrameDxf() {}

    /**
     * Writes a model's struts.
     *
     * @param model the model
     * @return the file
     */
    public static byte[] write(FrameModel model) {
        return new FrameDxf().all(model).getBytes(StandardCharsets.US_ASCII);
    }

    private String all(FrameModel model) {
        List<String> layers = model.rods().stream()
                .map(FrameModel.Rod::type)
                .distinct()
                .sorted()
                .toList();
        tag(999, "struts from cut end to cut end, mm, +z up");
        tag(0, "SECTION").tag(2, "HEADER").tag(9, "$ACADVER").tag(1, "AC1009").tag(0, "ENDSEC");
        tag(0, "SECTION").tag(2, "TABLES");
        tag(0, "TABLE").tag(2, "LTYPE").tag(70, "1");
        tag(0, "LTYPE")
                .tag(2, "CONTINUOUS")
                .tag(70, "0")
                .tag(3, "Solid line")
                .tag(72, "65")
                .tag(73, "0")
                .tag(40, "0.0");
        tag(0, "ENDTAB");
        tag(0, "TABLE").tag(2, "LAYER").tag(70, Integer.toString(layers.size() + 1));
        layer("0", 7);
        for (int i = 0; i < layers.size(); i++) {
            layer(layers.get(i), i % 7 + 1);
        }
        tag(0, "ENDTAB").tag(0, "ENDSEC");
        tag(0, "SECTION").tag(2, "ENTITIES");
        for (FrameModel.Rod rod : model.rods()) {
            tag(0, "LINE").tag(8, rod.type());
            point(10, rod.from());
            point(11, rod.to());
        }
        tag(0, "ENDSEC").tag(0, "EOF");
        return out.toString();
    }

    private void layer(String name, int colour) {
        tag(0, "LAYER")
                .tag(2, name)
                .tag(70, "0")
                .tag(62, Integer.toString(colour))
                .tag(6, "CONTINUOUS");
    }

    private void point(int code, Vec3 at) {
        tag(code, Digits.of(at.x())).tag(code + 10, Digits.of(at.y())).tag(code + 20, Digits.of(at.z()));
    }

    private FrameDxf tag(int code, String value) {
        out.append(code).append(END).append(value).append(END);
        return this;
    }
}
