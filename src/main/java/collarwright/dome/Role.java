package collarwright.dome;

/** What a member is there for. */
public enum Role {
    /** A member of the shell itself. */
    SHELL,
    /** A vertical strut under a foot hub. */
    RISER,
    /** A member of the ring that the risers stand on. */
    SECOND_RING,
    /** A diagonal of a quad between two risers. */
    RISER_DIAGONAL,
    /** A member added to close the rim of an opening. */
    RIM
}
