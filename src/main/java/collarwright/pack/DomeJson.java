package collarwright.pack;

import collarwright.dome.Cut;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.dome.Opening;
import collarwright.dome.SphereSettings;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Writes which dome a plan is for, so that it can be built again. */
final class DomeJson {

    private final JsonOut out;

    DomeJson(JsonOut out) {
        this.out = out;
    }

    void write(DomeSource source) throws IOException {
        out.object("dome", () -> {
            if (source instanceof DomeSettings settings) {
                dome(settings);
            } else if (source instanceof FrameSettings settings) {
                frame(settings);
            }
            if (!source.openings().isEmpty()) {
                out.rows("openings", source.openings(), this::opening);
            }
        });
    }

    private static String word(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void dome(DomeSettings settings) throws IOException {
        SphereSettings sphere = settings.sphere();
        out.text("base", word(sphere.base()));
        out.wholes("breakdown", sphere.breakdown().b(), sphere.breakdown().c());
        out.text("subdivision", word(sphere.subdivision()));
        out.text("up", word(sphere.up()));
        if (settings.cut() instanceof Cut.Tiers tiers) {
            out.whole("tiers", tiers.last());
        } else if (settings.cut() instanceof Cut.Height height) {
            out.number("cutHeight", height.above());
        }
        Form form = settings.form();
        out.number("heightFactor", form.heightFactor());
        out.text("axis", word(form.axis()));
        foot(settings.foot());
        out.text("tiersFrom", settings.tiersFromFoot() ? "foot" : "apex");
    }

    private void frame(FrameSettings settings) throws IOException {
        out.text("axis", word(settings.axis()));
        out.object("frame", () -> {
            out.text("digest", settings.net().digest());
            out.text("unit", settings.unit().symbol());
            out.number("mergeMm", settings.merge());
            out.number("alikeMm", settings.alike());
            out.number("feetWithinMm", settings.feetWithin());
            out.rows("axes", settings.axes(), given -> {
                out.text("node", Dome.of(settings).nodeId(given.node()));
                out.numbers(
                        "axis", given.axis().x(), given.axis().y(), given.axis().z());
            });
        });
    }

    private void foot(Foot foot) throws IOException {
        if (foot instanceof Foot.Natural) {
            out.text("foot", "natural");
        } else if (foot instanceof Foot.Level level) {
            out.text("foot", "level");
            out.text("footPlane", word(level.plane()));
        } else if (foot instanceof Foot.Riser riser) {
            out.text("foot", "riser");
            out.text("footPlane", word(riser.plane()));
            out.number("riserHeightMm", riser.height());
            out.flag("riserDiagonals", riser.diagonals());
        }
    }

    private void opening(Opening opening) throws IOException {
        out.texts("nodes", opening.nodes());
        out.texts("struts", texts(opening.struts()));
        if (opening.box().isPresent()) {
            Opening.Box box = opening.box().get();
            out.row("box", () -> {
                out.number("widthMm", box.width());
                out.number("heightMm", box.height());
                out.degrees("azimuthDeg", box.azimuth());
            });
        }
        out.texts("add", texts(opening.added()));
        out.texts("corners", opening.corners());
    }

    private static List<String> texts(List<Opening.Between> struts) {
        return struts.stream().map(Opening.Between::text).toList();
    }
}
