package collarwright.job;

import collarwright.stock.Material;
import java.util.Optional;

/** Reads a material from a profile file. */
final class MaterialReader {

    private MaterialReader() {}

    /**
     * Reads one material.
     *
     * @param entry its table with name, title and source
     * @return the material, or empty after findings
     */
    static Optional<MaterialProfile> read(ProfileFile.Entry entry) {
        TableView table = entry.table();
        Optional<Boolean> chlorinated = table.need(
                        "chlorinated",
                        "whether it gives off chlorine when burnt (PVC, CPVC, vinyl)",
                        "chlorinated = false")
                .flag();
        Optional<Double> density = table.need(
                        "density-kg-per-m3", "kilograms in a cubic metre", "density-kg-per-m3 = 1400")
                .number(1, 30_000);
        Given<Double> strain = new Given<>(
                table.key("strain-limit-percent"), key -> key.number(0.001, 20), 100 * Material.USUAL_STRAIN_LIMIT);
        String cutting = table.key("cutting").text().orElse(entry.name());
        KeyView growthKey = table.key("growth-per-million-kelvin");
        Optional<Double> growth = growthKey.number(0, 1000);
        KeyView sourceKey = table.key("growth-source");
        String source = sourceKey.text().orElse("not told");
        if (chlorinated.isEmpty()
                || growthKey.present() != growth.isPresent()
                || density.isEmpty()
                || !strain.good()
                || entry.name().isEmpty()
                || entry.title().isBlank()) {
            return Optional.empty();
        }
        Material material = new Material(
                entry.name(),
                entry.title(),
                chlorinated.get(),
                density.get(),
                strain.value() / 100,
                growth.map(g -> new Material.Growth(g, source.isBlank() ? "not told" : source)));
        return Optional.of(new MaterialProfile(material, cutting));
    }
}
