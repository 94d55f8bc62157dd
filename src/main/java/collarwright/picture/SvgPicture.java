package collarwright.picture;

import collarwright.units.Decimals;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.ViewBox;

/** Shows pictures as SVG text, at their size on paper, for a page or a file of its own. */
public final class SvgPicture {

    private SvgPicture() {}

    /**
     * Draws a picture as an SVG element.
     *
     * @param picture the picture
     * @param id a name that is used once on the page, letters, digits and hyphens
     * @param letters the typeface
     * @return an element that may stand in a page; 1 unit of its view box is 1 mm
     */
    public static String element(Picture picture, String id, Lettering letters) {
        SVGGraphics2D graphics = new SVGGraphics2D(picture.width(), picture.height(), SVGUnits.MM);
        graphics.setDefsKeyPrefix(id + "-");
        graphics.setGeomDoubleConverter(SvgPicture::number);
        graphics.setTransformDoubleConverter(SvgPicture::number);
        picture.paint(Sketch.on(graphics, letters));
        String element =
                graphics.getSVGElement(id, true, new ViewBox(0, 0, picture.width(), picture.height()), null, null);
        int head = element.indexOf('>');
        return element.substring(0, head) + " role=\"img\" aria-labelledby=\"" + id + "-title\"><title id=\"" + id
                + "-title\">" + escape(picture.describe()) + "</title>"
                + element.substring(head + 1).strip();
    }

    // A hundredth of a millimetre is finer than any printer's dot.
    private static String number(double value) {
        return Decimals.trimmed(value, 2);
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
