package collarwright.bench;

import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Heading;
import collarwright.drawing.Layer;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.sheet.DxfFlavour;
import collarwright.sheet.DxfWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One side of the race of DXF writers: reads a flavour ({@code r2000} or {@code r12}) and a file name from standard input,
 * a pair a line, draws a sheet of 10,000 holes in a frame from nothing, looks it through and writes it, and answers with the
 * wall time of it all in milliseconds.
 */
final class DxfRounds {

    private static final int SIDE = 100;
    private static final double PITCH = 25;
    private static final double EDGE = 20;

    private DxfRounds() {}

    /**
     * Writes what standard input asks for, until it ends.
     *
     * @param args none
     * @throws IOException if standard input cannot be read or a file not be written
     */
    @SuppressWarnings("SystemOut") // the answers
    public static void main(String[] args) throws IOException {
        BufferedReader asked = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = asked.readLine(); line != null; line = asked.readLine()) {
            String[] words = line.split(" ", 2);
            DxfFlavour flavour = DxfFlavour.valueOf(words[0].toUpperCase(Locale.ROOT));
            long start = System.nanoTime();
            Sheet sheet = sheet();
            String text = DxfWriter.print(sheet, flavour);
            Files.writeString(java.nio.file.Path.of(words[1]), text, StandardCharsets.US_ASCII);
            System.out.println((System.nanoTime() - start) / 1e6);
        }
    }

    // The same holes stand in dxf-race.py.
    private static Sheet sheet() {
        List<Shape> holes = new ArrayList<>();
        for (int row = 0; row < SIDE; row++) {
            for (int column = 0; column < SIDE; column++) {
                double radius = 6 + (row * 7 + column * 3) % 50 * 0.1;
                holes.add(new Circle(new Point(EDGE + PITCH * (column + 0.5), EDGE + PITCH * (row + 0.5)), radius));
            }
        }
        Box size = new Box(0, 0, SIDE * PITCH + 2 * EDGE, SIDE * PITCH + 2 * EDGE);
        Box frame = new Box(EDGE, EDGE, EDGE + SIDE * PITCH, EDGE + SIDE * PITCH);
        return new Sheet(
                "holes",
                new Heading("Holes", "Race", "AAAAAAAA", List.of(), List.of()),
                size,
                frame,
                List.of(
                        new Layer(Role.CUT_INSIDE, holes),
                        new Layer(Role.CUT_OUTSIDE, List.of(Path.rectangle(frame))),
                        new Layer(Role.MARK, List.of()),
                        new Layer(Role.NOTE, List.of())));
    }
}
