package collarwright.testing.house.drawer;

/** Stands in a package that the map does not have. */
public final class Anything {
    private Anything() {}
}
