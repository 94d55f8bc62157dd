package collarwright.rehearsal;

import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.units.Decimals;
import java.util.List;

/**
 * What a program does, hole by hole, as its text is read back: for a person who wants to check it by eye.
 *
 * @param holes holes and dimples in the order in which they are made
 */
public record Backplot(List<Row> holes) {
    /** Keeps the list. */
    public Backplot {
        holes = List.copyOf(holes);
    }

    /**
     * One hole or dimple.
     *
     * @param line the line of its first cut, from 1
     * @param x X of the tool
     * @param angleDegrees A
     * @param bottom Z of the lowest point
     * @param cuts cuts to get there: 1 without pecks
     * @param rpm spindle speed, 0 if it stands
     * @param feedMmPerMin feed, mm/min
     */
    public record Row(
            int line, double x, double angleDegrees, double bottom, int cuts, double rpm, double feedMmPerMin) {}

    /**
     * Reads a program back.
     *
     * @param file the program; only its text is read
     * @param settings what it was made with, for the clear height between holes
     * @return its holes
     */
    public static Backplot of(ProgramFile file, RotarySettings settings) {
        BlockReader reader = BlockReader.read(file.text());
        List<Event> events = Interpreter.run(reader.blocks(), Pose.UNKNOWN).events();
        Proof proof = new Proof(file, settings, reader.blocks(), events);
        return new Backplot(DrilledHole.from(proof).stream().map(Backplot::row).toList());
    }

    private static Row row(DrilledHole hole) {
        Event.Drive drive = hole.cuts().get(0).drive();
        return new Row(
                hole.line(),
                hole.at().x(),
                hole.at().a(),
                hole.bottom(),
                hole.cuts().size(),
                drive.spinning() ? drive.rpm() : 0,
                drive.feedMmPerMin());
    }

    /**
     * Prints the holes as a table.
     *
     * @return a heading and one line for each hole, LF line ends, millimetres and degrees
     */
    public String text() {
        StringBuilder text = new StringBuilder("  line       X mm      A deg       Z mm  cuts    rpm  mm/min\n");
        for (Row row : holes) {
            column(text, Integer.toString(row.line()), 6);
            column(text, Decimals.fixed(row.x(), 3), 11);
            column(text, Decimals.fixed(row.angleDegrees(), 3), 11);
            column(text, Decimals.fixed(row.bottom(), 3), 11);
            column(text, Integer.toString(row.cuts()), 6);
            column(text, Decimals.fixed(row.rpm(), 0), 7);
            column(text, Decimals.fixed(row.feedMmPerMin(), 1), 8);
            text.append('\n');
        }
        return text.toString();
    }

    private static void column(StringBuilder text, String value, int width) {
        text.append(" ".repeat(StrictMath.max(1, width - value.length()))).append(value);
    }
}
