package collarwright.job;

import collarwright.dome.Opening;
import collarwright.finding.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one table {@code [[dome.opening]]}. */
final class OpeningReader {

    private final TableView table;
    private boolean faulty;

    private OpeningReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads all openings.
     *
     * @param key {@code dome.opening}
     * @return the openings, none where nothing is said; empty after findings
     */
    static Optional<List<Opening>> all(KeyView key) {
        List<Opening> openings = new ArrayList<>();
        boolean faulty = false;
        for (KeyView item : key.items()) {
            Optional<Opening> opening = item.table().flatMap(table -> new OpeningReader(table).read());
            faulty |= opening.isEmpty();
            opening.ifPresent(openings::add);
        }
        return faulty ? Optional.empty() : Optional.of(openings);
    }

    private Optional<Opening> read() {
        List<String> nodes = ids("nodes");
        List<Opening.Between> struts = struts("struts");
        List<Opening.Between> added = struts("add");
        List<String> corners = ids("corners");
        KeyView boxKey = table.key("box");
        Optional<Opening.Box> box = boxKey.present() ? boxKey.table().flatMap(this::box) : Optional.empty();
        faulty |= boxKey.present() && box.isEmpty();
        if (!faulty && nodes.isEmpty() && struts.isEmpty() && added.isEmpty() && corners.isEmpty() && box.isEmpty()) {
            table.stop(
                    Code.JOB_KEY_MISSING,
                    "what is left open: box, nodes or struts; and what is added to its rim: add",
                    "an opening with nothing in it",
                    "write a line such as: box = { width = \"900 mm\", height = \"2 m\", azimuth = 0 }");
            faulty = true;
        }
        return faulty ? Optional.empty() : Optional.of(new Opening(nodes, struts, box, added, corners));
    }

    private Optional<Opening.Box> box(TableView box) {
        Optional<Double> width = box.need("width", "the doorway's clear width", "width = \"900 mm\"")
                .size();
        Optional<Double> height = box.need("height", "the doorway's height over the lowest hubs", "height = \"2 m\"")
                .size();
        Optional<Double> azimuth = box.need(
                        "azimuth",
                        "where its middle is, degrees clockwise from above, from the +x meridian",
                        "azimuth = 0")
                .angle(-360, 360);
        return width.isPresent() && height.isPresent() && azimuth.isPresent()
                ? Optional.of(new Opening.Box(width.get(), height.get(), azimuth.get()))
                : Optional.empty();
    }

    private List<String> ids(String name) {
        List<String> ids = new ArrayList<>();
        for (KeyView item : table.key(name).items()) {
            Optional<String> id = item.text().map(String::strip);
            faulty |= id.isEmpty();
            id.ifPresent(ids::add);
        }
        return ids;
    }

    private List<Opening.Between> struts(String name) {
        List<Opening.Between> struts = new ArrayList<>();
        for (KeyView item : table.key(name).items()) {
            Optional<String> text = item.text();
            faulty |= text.isEmpty();
            text.flatMap(t -> between(item, t)).ifPresent(struts::add);
        }
        return struts;
    }

    private Optional<Opening.Between> between(KeyView item, String text) {
        String[] ends = text.strip().split("\\s*/\\s*", -1);
        if (ends.length != 2 || ends[0].isEmpty() || ends[1].isEmpty()) {
            item.stop(
                    Code.JOB_WRONG_TYPE,
                    "a strut by its two hubs, such as \"T3-02/T4-03\"",
                    item.shown(),
                    "write the ids of its two hubs with / between them");
            faulty = true;
            return Optional.empty();
        }
        return Optional.of(new Opening.Between(ends[0], ends[1]));
    }
}
