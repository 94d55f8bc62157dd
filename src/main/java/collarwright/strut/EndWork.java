package collarwright.strut;

import java.util.Optional;

/**
 * What is done to the ends of struts besides cutting them square and drilling them.
 *
 * @param flat ends that are pressed flat; empty for ends that stay round
 * @param plugs what is put into the ends; empty for nothing
 * @param caps whether each end gets a cap
 */
public record EndWork(Optional<FlatEnds> flat, Optional<EndPlugs> plugs, boolean caps) {

    /** Cut square, nothing else. */
    public static final EndWork NONE = new EndWork(Optional.empty(), Optional.empty(), false);
}
