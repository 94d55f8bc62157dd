package collarwright.dome;

/** Where a dome's nodes and members come from: a breakdown of a sphere, or a frame that somebody brings. */
public sealed interface DomeSource permits DomeSettings, FrameSettings {

    /**
     * Returns what is left open.
     *
     * @return the openings in their order
     */
    java.util.List<Opening> openings();
}
