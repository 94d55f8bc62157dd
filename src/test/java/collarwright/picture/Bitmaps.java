package collarwright.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** Pictures as bitmaps. */
public final class Bitmaps {

    private static final double DOTS_PER_MM = 8;

    private Bitmaps() {}

    /** Paints a picture, and returns what was written in it. */
    public static List<Written> paint(Picture picture, BufferedImage onto) {
        Graphics2D graphics = onto.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, onto.getWidth(), onto.getHeight());
        graphics.scale(DOTS_PER_MM, DOTS_PER_MM);
        Sketch sketch = Sketch.on(graphics, Lettering.load());
        picture.paint(sketch);
        graphics.dispose();
        return sketch.written();
    }

    /** An empty bitmap of a picture's size. */
    public static BufferedImage blank(Picture picture) {
        return new BufferedImage(
                (int) Math.ceil(picture.width() * DOTS_PER_MM),
                (int) Math.ceil(picture.height() * DOTS_PER_MM),
                BufferedImage.TYPE_INT_RGB);
    }

    /** Whether any line or area reaches out of a picture by more than half a millimetre. */
    public static boolean spills(Picture picture) {
        int margin = (int) (5 * DOTS_PER_MM);
        BufferedImage sheet = blank(picture);
        BufferedImage large = new BufferedImage(
                sheet.getWidth() + 2 * margin, sheet.getHeight() + 2 * margin, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = large.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, large.getWidth(), large.getHeight());
        graphics.translate(margin, margin);
        graphics.scale(DOTS_PER_MM, DOTS_PER_MM);
        picture.paint(Sketch.on(graphics, Lettering.load()));
        graphics.dispose();
        int free = margin - (int) (DOTS_PER_MM / 2);
        for (int y = 0; y < large.getHeight(); y++) {
            for (int x = 0; x < large.getWidth(); x++) {
                boolean outside = x < free || y < free || x >= large.getWidth() - free || y >= large.getHeight() - free;
                if (outside && (large.getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Paints a picture into a PNG file, and returns what was written in it. */
    public static List<Written> save(Picture picture, Path file) {
        BufferedImage image = blank(picture);
        List<Written> written = paint(picture, image);
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(image, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return written;
    }
}
