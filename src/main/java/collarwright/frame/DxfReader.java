package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.units.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads the drawing format DXF, text only: from its entities LINE, 3DFACE, POLYLINE (3D, polygon mesh, polyface) and
 * LWPOLYLINE; {@code $INSUNITS} names the unit. What lies on a sheet of paper is passed over.
 *
 * <p>Source: Autodesk, DXF Reference for AutoCAD 2000, chapters on the HEADER and ENTITIES sections.
 */
final class DxfReader {

    private final RawFrame raw;
    private final Lines lines;
    private final DxfMembers members;
    private final Map<String, Integer> unread = new TreeMap<>();
    private int code;
    private String value = "";
    private boolean more;

    DxfReader(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.members = new DxfMembers(raw);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    RawFrame read() {
        step();
        String section = "";
        boolean ended = false;
        while (more) {
            if (code == 0 && value.equals("SECTION")) {
                step();
                section = more && code == 2 ? value : "";
                step();
            } else if (code == 0 && value.equals("ENDSEC")) {
                section = "";
                step();
            } else if (code == 0 && value.equals("EOF")) {
                ended = true;
                step();
            } else if (section.equals("ENTITIES") && code == 0) {
                entity();
            } else if (section.equals("HEADER") && code == 9 && value.equals("$INSUNITS")) {
                step();
                units();
            } else {
                step();
            }
        }
        if (!ended && !raw.stopped()) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "EOF at the end",
                    "the end of the file",
                    "the file is cut short or no text DXF: write it again as text");
        }
        members.tell();
        unread.forEach((kind, count) -> raw.add(Finding.note(
                Code.FRAME_SYNTAX,
                new collarwright.finding.Where.Part(raw.file()),
                "LINE, 3DFACE, POLYLINE or LWPOLYLINE of the model",
                count + " of " + kind,
                "they were passed over")));
        return raw;
    }

    // The next pair of a group code and its value.
    private void step() {
        more = lines.next();
        if (!more) {
            return;
        }
        int number = Numbers.whole(lines.line().strip()).orElse(Integer.MIN_VALUE);
        if (number == Integer.MIN_VALUE) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "the number of a group",
                    lines.line(),
                    "save the drawing as text DXF again");
            more = false;
            return;
        }
        code = number;
        more = lines.next();
        value = lines.line().strip();
    }

    private void units() {
        if (more && code == 70) {
            Optional<LengthUnit> unit = switch (value) {
                case "1" -> Optional.of(LengthUnit.IN);
                case "2" -> Optional.of(LengthUnit.FT);
                case "4" -> Optional.of(LengthUnit.MM);
                case "5" -> Optional.of(LengthUnit.CM);
                case "6" -> Optional.of(LengthUnit.M);
                default -> Optional.empty();
            };
            unit.ifPresent(raw::unit);
            step();
        }
    }

    private void entity() {
        DxfGroups entity = groups();
        List<DxfGroups> vertices = entity.kind().equals("POLYLINE") ? vertices() : List.of();
        if (entity.onPaper()) {
            unread.merge(entity.kind() + " on a sheet of paper", 1, Integer::sum);
            return;
        }
        switch (entity.kind()) {
            case "LINE" -> members.line(entity);
            case "3DFACE" -> members.face(entity);
            case "LWPOLYLINE" -> members.flatPolyline(entity);
            case "POLYLINE" -> members.polyline(entity, vertices);
            default -> unread.merge(entity.kind(), 1, Integer::sum);
        }
    }

    private DxfGroups groups() {
        DxfGroups found = new DxfGroups(raw, value, lines.number());
        step();
        while (more && code != 0) {
            found.add(code, value, lines.number());
            step();
        }
        return found;
    }

    // The corners of a polyline follow it as entities of their own, up to its end mark.
    private List<DxfGroups> vertices() {
        List<DxfGroups> found = new ArrayList<>();
        while (more && code == 0 && value.equals("VERTEX")) {
            found.add(groups());
        }
        if (more && code == 0 && value.equals("SEQEND")) {
            groups();
        }
        return found;
    }
}
