package collarwright.cli;

import collarwright.collar.Aperture;
import collarwright.collar.Bench;
import collarwright.collar.Countersunk;
import collarwright.collar.Direction;
import collarwright.collar.LeanEnvelope;
import collarwright.collar.Slot;
import collarwright.collar.TiltReport;
import collarwright.collar.TiltedDrilling;
import collarwright.units.Angles;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** What {@code tilt} answers, for programs. */
final class TiltJson {

    private TiltJson() {}

    /** What each cutter of some racks gives, where nothing else was asked. */
    static String of(TiltAsked asked, RackTilts table) {
        ObjectNode node = sizes(asked);
        table.json(node.putArray("rack"));
        return print(node);
    }

    private static ObjectNode sizes(TiltAsked asked) {
        ObjectNode node = new ObjectMapper().createObjectNode();
        Bench bench = asked.bench();
        node.put("strutMm", bench.strut().largest());
        if (!bench.strut().isRound()) {
            node.put("strutSmallestMm", bench.strut().smallest());
        }
        node.put("collarOdMm", asked.outsideDiameter());
        node.put("wallMm", asked.wall());
        node.put("rimsMm", bench.rims());
        return node;
    }

    private static String print(ObjectNode node) {
        return node.toPrettyString().replace(System.lineSeparator(), "\n") + "\n";
    }

    static String of(TiltAsked asked, TiltReport report, Optional<LeanEnvelope> envelope, Optional<RackTilts> table) {
        ObjectNode node = sizes(asked);
        Bench bench = asked.bench();
        shape(node, bench.hole());
        way(node, asked.way());
        asked.lean().ifPresent(lean -> node.put("neededLeanDeg", Angles.degrees(lean)));
        node.put("holeMm", bench.hole().size());
        node.put("tiltLimitDeg", Angles.degrees(report.tiltLimit()));
        node.put("binds", report.binds());
        node.put("passesFromDeg", Angles.degrees(report.leanFrom()));
        node.put(
                "leanInAllDeg",
                Angles.degrees(asked.way().at(report.tiltLimit()).lean()));
        asked.lean().ifPresent(lean -> node.put("slackDeg", Angles.degrees(report.tiltLimit() - lean)));
        if (!bench.strut().isRound()) {
            node.put("worstRollDeg", Angles.degrees(report.worstRoll()));
            node.put("bestTiltLimitDeg", Angles.degrees(report.best()));
            node.put("bestRollDeg", Angles.degrees(report.bestRoll()));
        }
        report.beside(bench, asked.way()).ifPresent(beside -> node.put("contactBesideMidPlane", beside));
        if (report.binds()) {
            node.put("degPerTenthMmHole", Angles.degrees(report.slopes().perHole()));
            node.put("degPerTenthMmStrut", Angles.degrees(report.slopes().perStrut()));
            node.put("degPerTenthMmWall", Angles.degrees(report.slopes().perWall()));
            node.put("bearingLengthMm", TiltText.bearingLength(asked, report));
        }
        envelope.ifPresent(found -> envelope(node.putArray("envelope"), found));
        table.ifPresent(found -> found.json(node.putArray("rack")));
        return print(node);
    }

    private static void shape(ObjectNode node, Aperture hole) {
        node.put("shape", TiltText.name(hole));
        if (hole instanceof TiltedDrilling tilted) {
            node.put("drillTiltDeg", Angles.degrees(tilted.drill().tilt()));
            node.put("drillSwingDeg", Angles.degrees(tilted.drill().swing()));
        } else if (hole instanceof Slot slot) {
            node.put("slotLengthMm", slot.length());
            node.put("slotAround", slot.around());
        } else if (hole instanceof Countersunk sunk) {
            node.put("countersinkMm", sunk.outside());
            node.put("countersinkInsideMm", sunk.inside());
        }
    }

    private static void way(ObjectNode node, Bench.Way way) {
        if (way instanceof Bench.Swung swung) {
            node.put("swingDeg", Angles.degrees(swung.swing()));
        } else if (way instanceof Bench.Toward toward) {
            node.put("bearingDeg", Angles.degrees(toward.bearing()));
        }
    }

    private static void envelope(ArrayNode points, LeanEnvelope envelope) {
        for (Direction limit : envelope.limits()) {
            ObjectNode point = points.addObject();
            point.put("bearingDeg", Angles.degrees(limit.bearing()));
            point.put("leanDeg", Angles.degrees(limit.lean()));
        }
    }
}
