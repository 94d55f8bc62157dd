package collarwright.picture;

import collarwright.sheet.XmlText;
import collarwright.units.Decimals;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.ViewBox;

/** Shows pictures as SVG text, at their size on paper, for a page. */
public final class SvgPicture {

    private SvgPicture() {}

    /**
     * Draws a picture as an SVG element of a page.
     *
     * @param picture the picture
     * @param id a name that is used once on the page, letters, digits and hyphens
     * @param glyphs the letters that the page's pictures share; the page has to hold their shapes
     * @return the element; 1 unit of its view box is 1 mm
     */
    public static String element(Picture picture, String id, SvgGlyphs glyphs) {
        SVGGraphics2D graphics = new SVGGraphics2D(picture.width(), picture.height(), SVGUnits.MM);
        graphics.setDefsKeyPrefix(id + "-");
        graphics.setGeomDoubleConverter(SvgPicture::number);
        graphics.setTransformDoubleConverter(SvgPicture::number);
        StringBuilder texts = new StringBuilder();
        picture.paint(Sketch.on(graphics, glyphs.letters(), text -> texts.append(glyphs.write(text))));
        String element =
                graphics.getSVGElement(id, true, new ViewBox(0, 0, picture.width(), picture.height()), null, null);
        int head = element.indexOf('>');
        int end = element.lastIndexOf("</svg>");
        return element.substring(0, head) + " role=\"img\" aria-labelledby=\"" + id + "-title\"><title id=\"" + id
                + "-title\">" + XmlText.escaped(picture.describe()) + "</title>"
                + element.substring(head + 1, end).strip() + texts + "</svg>";
    }

    /**
     * Draws a picture as a file of its own.
     *
     * @param picture the picture
     * @param id a name, letters, digits and hyphens
     * @return the file's text
     */
    public static String document(Picture picture, String id) {
        SvgGlyphs glyphs = new SvgGlyphs(Lettering.load());
        String element = element(picture, id, glyphs);
        int end = element.lastIndexOf("</svg>");
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element.substring(0, end) + glyphs.defs() + "</svg>\n";
    }

    // A hundredth of a millimetre is finer than any printer's dot.
    private static String number(double value) {
        return Decimals.trimmed(value, 2);
    }
}
