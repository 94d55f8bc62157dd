package collarwright.job;

import collarwright.dome.Foot;
import collarwright.finding.Code;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads from {@code [dome]} how the dome stands. */
final class FootReader {

    private final TableView table;

    FootReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads the foot.
     *
     * @return how it stands, natural where nothing is said; empty after findings
     */
    Optional<Foot> read() {
        KeyView footKey = table.key("foot");
        Map<String, String> words = new LinkedHashMap<>();
        words.put("natural", "natural");
        words.put("level", "level");
        words.put("riser", "riser");
        Optional<String> foot = footKey.word(words);
        String word = footKey.present() ? foot.orElse("") : "natural";
        KeyView planeKey = table.key("foot-plane");
        KeyView heightKey = table.key("riser-height");
        KeyView diagonalsKey = table.key("riser-diagonals");
        boolean fits = !word.isEmpty() && belongs(planeKey, !word.equals("natural"), "foot = \"level\" or \"riser\"");
        fits &= word.isEmpty() || belongs(heightKey, word.equals("riser"), "foot = \"riser\"");
        fits &= word.isEmpty() || belongs(diagonalsKey, word.equals("riser"), "foot = \"riser\"");
        Optional<Foot.Plane> plane = planeKey.present() ? planeKey.word(planes()) : Optional.of(Foot.Plane.LEAST_MOVE);
        Optional<Boolean> diagonals = diagonalsKey.present() ? diagonalsKey.flag() : Optional.of(false);
        Optional<Double> height = heightKey.size();
        if (word.equals("riser") && !heightKey.present()) {
            table.need("riser-height", "how high the risers are, node to node", "riser-height = \"1.2 m\"");
        }
        if (!fits || plane.isEmpty() || diagonals.isEmpty()) {
            return Optional.empty();
        }
        return switch (word) {
            case "natural" -> Optional.of(new Foot.Natural());
            case "level" -> Optional.of(new Foot.Level(plane.get()));
            default -> height.map(h -> new Foot.Riser(plane.get(), h, diagonals.get()));
        };
    }

    private static Map<String, Foot.Plane> planes() {
        Map<String, Foot.Plane> words = new LinkedHashMap<>();
        words.put("least-move", Foot.Plane.LEAST_MOVE);
        words.put("fewest-types", Foot.Plane.FEWEST_TYPES);
        return words;
    }

    private static boolean belongs(KeyView key, boolean here, String with) {
        if (key.present() && !here) {
            key.stop(
                    Code.JOB_CONFLICT, "this key only with " + with, key.shown(), "write " + with + ", or take it out");
            return false;
        }
        return true;
    }
}
