package collarwright.kit;

import java.util.List;

/**
 * What one label says.
 *
 * @param kind what it is stuck on
 * @param code the text of its QR code, which also stands on it in letters: the job's revision, a blank, and the id
 * @param large what has to be read first
 * @param lines the rest
 */
public record SiteLabel(Kind kind, String code, String large, List<String> lines) {

    /** What a label is stuck on. */
    public enum Kind {
        /** An end of a strut. */
        STRUT_END,
        /** A collar. */
        COLLAR,
        /** A bundle or box. */
        BUNDLE
    }

    /** Keeps the lines. */
    public SiteLabel {
        lines = List.copyOf(lines);
    }
}
