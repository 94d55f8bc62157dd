package collarwright.job;

import collarwright.stock.Material;

/**
 * A material with the cutting data that hold for it.
 *
 * @param material the material
 * @param cutting the name of its cutting data
 */
public record MaterialProfile(Material material, String cutting) {}
