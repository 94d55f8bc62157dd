package collarwright.job;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects findings while texts are read, so that one run tells a person all of them. */
public final class FindingList {

    private static final Comparator<Finding> BY_PLACE = Comparator.comparing(FindingList::file)
            .thenComparingInt(FindingList::line)
            .thenComparingInt(FindingList::column);

    private final List<Finding> findings = new ArrayList<>();

    /** An empty list. */
    public FindingList() {}

    /**
     * Adds a finding, once.
     *
     * @param finding the finding; one that is there already is left out
     */
    public void add(Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }

    /**
     * Adds findings.
     *
     * @param more the findings, in their order
     */
    public void addAll(List<Finding> more) {
        more.forEach(this::add);
    }

    /**
     * Tells whether the work has to stop.
     *
     * @return true if a finding is a stop
     */
    public boolean stopped() {
        return findings.stream().anyMatch(f -> f.level() == Level.STOP);
    }

    /**
     * Returns the findings in the order of their places.
     *
     * @return by file as first met, then line and column; what has no place in a text comes last
     */
    public List<Finding> sorted() {
        return findings.stream().sorted(BY_PLACE).toList();
    }

    private static String file(Finding finding) {
        // Sorts after every file name.
        return finding.where() instanceof Where.Text text ? text.file() : "\uffff";
    }

    private static int line(Finding finding) {
        return finding.where() instanceof Where.Text text ? text.line() : 0;
    }

    private static int column(Finding finding) {
        return finding.where() instanceof Where.Text text ? text.column() : 0;
    }
}
