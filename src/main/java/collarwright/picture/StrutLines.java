package collarwright.picture;

import java.util.List;

/** The line of every strut type, told apart by its dashes as lines in technical drawings are. */
final class StrutLines {

    private static final List<List<Double>> DASHES = List.of(
            List.of(),
            List.of(3.5, 1.25),
            List.of(1.25, 1.0),
            List.of(4.25, 0.75, 0.75, 0.75),
            List.of(4.25, 0.75, 0.75, 0.75, 0.75, 0.75),
            List.of(0.5, 0.75));

    private StrutLines() {}

    /** Whether so many types can be told apart by their lines; more than that are all drawn alike. */
    static boolean tellApart(int types) {
        return types <= DASHES.size();
    }

    static Stroking of(int type, int types) {
        return tellApart(types)
                ? new Stroking(Stroking.WIDE, DASHES.get(type), Ink.INK)
                : Stroking.solid(Stroking.NARROW, Ink.INK);
    }
}
