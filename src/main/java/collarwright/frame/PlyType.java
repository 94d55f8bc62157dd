package collarwright.frame;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.stream.Stream;

/** The number types of PLY. */
enum PlyType {
    INT8("char", "int8", 1),
    UINT8("uchar", "uint8", 1),
    INT16("short", "int16", 2),
    UINT16("ushort", "uint16", 2),
    INT32("int", "int32", 4),
    UINT32("uint", "uint32", 4),
    FLOAT32("float", "float32", 4),
    FLOAT64("double", "float64", 8);

    private final String first;
    private final String second;
    private final int size;

    PlyType(String first, String second, int size) {
        this.first = first;
        this.second = second;
        this.size = size;
    }

    static Optional<PlyType> of(String name) {
        return Stream.of(values())
                .filter(t -> t.first.equals(name) || t.second.equals(name))
                .findFirst();
    }

    int size() {
        return size;
    }

    double read(ByteBuffer in, int at) {
        return switch (this) {
            case INT8 -> in.get(at);
            case UINT8 -> in.get(at) & 0xFF;
            case INT16 -> in.getShort(at);
            case UINT16 -> in.getShort(at) & 0xFFFF;
            case INT32 -> in.getInt(at);
            case UINT32 -> in.getInt(at) & 0xFFFF_FFFFL;
            case FLOAT32 -> in.getFloat(at);
            case FLOAT64 -> in.getDouble(at);
        };
    }
}
