package collarwright.stock;

/**
 * What a stock is made of.
 *
 * @param name its name in job files and profiles, such as {@code pvc}
 * @param title its name for people
 * @param chlorinated whether it gives off corrosive, toxic gas under a laser or a plasma torch (PVC, CPVC, vinyl)
 * @param densityKgPerM3 mass by volume, kg/m³
 */
public record Material(String name, String title, boolean chlorinated, double densityKgPerM3) {
    /** Checks the values. */
    public Material {
        if (name.isBlank() || title.isBlank() || !(densityKgPerM3 > 0)) {
            throw new IllegalArgumentException("a material needs a name, a title and a density");
        }
    }
}
