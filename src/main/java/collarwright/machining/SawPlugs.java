package collarwright.machining;

import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;

/**
 * How many plugs a hole saw holds: what it cuts out stays in it, and a full saw rubs on plastic and pushes the pipe away.
 *
 * <p>A plug of a curved wall is as high as the wall reaches down at its sides, and lies on the one before it as it likes, so
 * that each takes its whole height. The last one still has to be cut: n = 1 + ⌊(depth of the saw − depth of the cut) ÷
 * height⌋. Source: plane geometry of two crossing cylinders.
 */
public final class SawPlugs {

    private SawPlugs() {}

    /**
     * Counts.
     *
     * @param work the pipe
     * @param cutter any cutter
     * @param overtravel beyond the break-through
     * @return holes until it is full, 1 or more; 0 for a cutter that is no hole saw
     */
    public static int most(Workpiece work, Cutter cutter, double overtravel) {
        if (cutter.kind() != CutterKind.HOLE_SAW) {
            return 0;
        }
        double cut = HoleDepth.of(work, cutter, overtravel).cut();
        return most(cutter, cut, cut - overtravel);
    }

    /**
     * Counts for a flat sheet, whose plugs are as high as it is thick.
     *
     * @param thickness the sheet where it is thickest
     * @param cutter any cutter
     * @param overtravel beyond the break-through
     * @return holes until it is full, 1 or more; 0 for a cutter that is no hole saw
     */
    public static int most(double thickness, Cutter cutter, double overtravel) {
        return cutter.kind() == CutterKind.HOLE_SAW ? most(cutter, thickness + overtravel, thickness) : 0;
    }

    private static int most(Cutter cutter, double cut, double height) {
        return 1 + (int) StrictMath.max(0, StrictMath.min(999, StrictMath.floor((cutter.depth() - cut) / height)));
    }

    /**
     * Tells an operator.
     *
     * @param most how many it holds, 1 or more
     * @return a sentence without an end
     */
    public static String words(int most) {
        return "take the plug out of the saw after every hole; it is full after " + most
                + (most == 1 ? " hole" : " holes");
    }
}
