package collarwright.tooling;

/** How a cutter is chosen for a hole. */
public enum Fit {
    /** The smallest as-drilled size that lets the thickest strut reach its angle. */
    REACH,
    /** The as-drilled size nearest in angle, which may come up short within a stated band. */
    NEAREST
}
