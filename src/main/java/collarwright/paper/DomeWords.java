package collarwright.paper;

import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says in a line which dome it is. */
final class DomeWords {

    private DomeWords() {}

    static String of(DomeSource source) {
        if (source instanceof FrameSettings frame) {
            return "a frame from outside, read in " + frame.unit().symbol();
        }
        return dome((DomeSettings) source);
    }

    private static String dome(DomeSettings settings) {
        SphereSettings sphere = settings.sphere();
        List<String> words = new ArrayList<>();
        words.add(sphere.base().name().toLowerCase(Locale.ROOT));
        words.add(breakdown(sphere.breakdown()));
        if (sphere.subdivision() == Subdivision.ARCS) {
            words.add("equal arcs along the edges");
        }
        words.add(kept(settings));
        words.add(sphere.up().name().toLowerCase(Locale.ROOT) + " up");
        Form form = settings.form();
        if (form.heightFactor() != 1) {
            words.add("height " + Decimals.trimmed(form.heightFactor(), 4) + " of a sphere's");
        }
        if (form.axis() == Form.Axis.EVEN_TILTS) {
            words.add("hub axes for even tilts");
        }
        words.add(foot(settings.foot()));
        if (!settings.openings().isEmpty()) {
            words.add(
                    settings.openings().size() == 1
                            ? "1 opening"
                            : settings.openings().size() + " openings");
        }
        if (settings.tiersFromFoot()) {
            words.add("tiers counted from the foot");
        }
        return String.join(", ", words);
    }

    // Which way a class III turns has to be said: its mirror image takes other collars.
    private static String breakdown(Breakdown breakdown) {
        int b = breakdown.b();
        int c = breakdown.c();
        return switch (breakdown.geodesicClass()) {
            case 1 -> "class I, frequency " + b + "v";
            case 2 -> "class II, breakdown (" + b + ", " + c + ")";
            default ->
                "class III, breakdown (" + b + ", " + c + "): " + b + (b == 1 ? " step" : " steps")
                        + " and, turned left seen from outside, " + c + " more";
        };
    }

    private static String kept(DomeSettings settings) {
        if (settings.whole()) {
            return settings.sphere().hasRows()
                    ? rows(settings, settings.sphere().tiers())
                    : "the whole sphere";
        }
        if (settings.cut() instanceof Cut.Tiers tiers) {
            return settings.sphere().hasRows()
                    ? rows(settings, tiers.last())
                    : "tiers 0 to " + tiers.last() + " of " + settings.sphere().tiers();
        }
        double above = ((Cut.Height) settings.cut()).above();
        return "hubs from " + Decimals.trimmed(above, 4) + " radii over the sphere's centre up";
    }

    private static String rows(DomeSettings settings, int rows) {
        return rows + " of " + settings.sphere().tiers() + " rows";
    }

    private static String foot(Foot foot) {
        if (foot instanceof Foot.Natural) {
            return "natural foot";
        }
        if (foot instanceof Foot.Riser riser) {
            return "risers of " + Decimals.trimmed(riser.height(), 1) + " mm under a level foot"
                    + (riser.diagonals() ? ", with diagonals" : "");
        }
        return "level foot";
    }
}
