package collarwright.drawing;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * What is written about one hole: inside it as far as there is room, the rest beside it.
 *
 * @param hole its place
 * @param number its number
 * @param marked the size on the cutter
 * @param drills the size it drills
 */
record HoleLetters(FreeSpace.Placed hole, String number, String marked, String drills) {
    private static final List<Double> NUMBER_HEIGHTS = List.of(7.0, 6.0, 5.0, 4.0, 3.5, 3.0, 2.5);
    private static final List<Double> SIZE_HEIGHTS = List.of(4.0, 3.5, 3.0, 2.5);
    private static final List<Double> BESIDE_HEIGHTS = List.of(3.5, 3.0, 2.5, 2.0);

    static HoleLetters of(WrapHole hole, FreeSpace.Placed place) {
        return new HoleLetters(
                place,
                Integer.toString(hole.hole().number()),
                StrokeFont.say(hole.hole().cutter().marked()),
                "drills " + Decimals.trimmed(hole.hole().diameter(), 2));
    }

    /**
     * Writes inside the hole.
     *
     * @param arm how far the pilot's cross reaches from the axis
     * @return what found no room, with the number before it; empty if all did
     */
    List<String> inside(Lettering letters, double arm) {
        double from = arm + 1;
        boolean numbered = letters.setInside(hole, number, NUMBER_HEIGHTS, from);
        boolean sized = letters.setInside(hole, marked, SIZE_HEIGHTS, -from);
        boolean drilled = sized && letters.setInside(hole, drills, SIZE_HEIGHTS, -from);
        List<String> rest = new ArrayList<>();
        if (!sized) {
            rest.add(marked);
        }
        if (!drilled) {
            rest.add(drills);
        }
        if (!numbered || !rest.isEmpty()) {
            String first = rest.isEmpty() ? number : number + ": " + rest.remove(0);
            rest.add(0, first);
        }
        return List.copyOf(rest);
    }

    /** Writes beside the hole, in one line or two; false if there is no room for it. */
    boolean beside(Lettering letters, List<String> rest) {
        String line = String.join(" ", rest);
        double under = hole.centre().y() - hole.outline().holeRadius() - 1.5;
        for (double height : BESIDE_HEIGHTS) {
            Label label = Label.centred(line, height, hole.centre().x(), under - height);
            double reach = 2 * hole.outline().halfWidth() + 2 * height;
            Point at = label.at();
            if (letters.setNear(label, reach)
                    || (rest.size() == 2
                            && letters.setPairNear(rest.get(0), rest.get(1), List.of(height), at, reach))) {
                return true;
            }
        }
        return false;
    }
}
