package collarwright.dome;

/** Where a dome's nodes and members come from: a breakdown of a sphere, or a frame that somebody brings. */
public sealed interface DomeSource permits DomeSettings {}
