package collarwright.finding;

import java.util.List;
import java.util.stream.Collectors;

/** Leaves a stage when its findings stop the work; any other exception is a fault of the program. */
public final class JobException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // List.copyOf is serializable; Finding is not meant to be serialized
    private final List<Finding> findings;

    /**
     * Makes the exception.
     *
     * @param findings all findings of the stage, at least one of them a stop
     */
    public JobException(List<Finding> findings) {
        super(findings.stream().map(f -> f.code() + " at " + f.where().text()).collect(Collectors.joining("; ")));
        this.findings = List.copyOf(findings);
        if (this.findings.stream().noneMatch(f -> f.level() == Level.STOP)) {
            throw new IllegalArgumentException("nothing stops here");
        }
    }

    /**
     * Returns the findings.
     *
     * @return all findings of the stage in their order, at least one of them a stop
     */
    public List<Finding> findings() {
        return findings;
    }
}
