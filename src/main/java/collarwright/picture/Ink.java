package collarwright.picture;

import java.awt.Color;

/**
 * The colours of all pictures and papers: one ink, two greys, two tints and one blue for the datum. In grey they keep their
 * order from dark to light; nothing is told by colour alone.
 */
public enum Ink {
    /** Outlines and letters. */
    INK(0x1C1F22),
    /** The 0° line and what belongs to it; as dark as ink on a grey printer. */
    DATUM(0x14477A),
    /** Dimension and help lines. */
    GREY(0x5F666C),
    /** Lines on the far side. */
    FAR(0xA9AFB4),
    /** Table rules and rings behind a picture. */
    RULE(0xCBD0D4),
    /** Cut material. */
    TINT(0xDDE2E6),
    /** Strut bodies and table heads. */
    PALE(0xEFF2F4),
    /** Paper. */
    PAPER(0xFFFFFF);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /**
     * Returns the colour.
     *
     * @return opaque sRGB
     */
    public Color color() {
        return new Color(rgb);
    }

    /**
     * Returns the colour as web pages write it.
     *
     * @return such as {@code #1c1f22}
     */
    public String hex() {
        String digits = Integer.toHexString(rgb);
        return "#" + "0".repeat(6 - digits.length()) + digits;
    }
}
