package collarwright.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Finds the fewest patterns that serve all hub types.
 *
 * <p>Hub types are taken by the number of their struts, the fullest first, so that the first of a group uses every hole of
 * its pattern. A first pass puts each into the first group that takes it. No set of hub types can share fewer patterns than
 * the largest set found of which no two can share one; where that is as many as were found, they are the fewest. Else all
 * other ways to part the hub types are tried, up to a stated number of trials.
 */
final class PatternSearch {

    /** Struts that the search tries in holes at most, after the first pass. */
    static final int MOST_TRIALS = 200_000;

    /** Hub types beyond which pairs are not compared: a frame in which hardly two hubs are alike. */
    private static final int MOST_COMPARED = 400;

    private final SharingRule rule;
    private final List<Integer> order;
    private final int[][] shared;
    private List<PatternGroup> best;
    private int atLeast;
    private final Set<List<Integer>> impossible = new HashSet<>();
    private final int before;
    private boolean complete = true;

    private PatternSearch(SharingRule rule) {
        this.rule = rule;
        this.order = IntStream.range(0, rule.types())
                .boxed()
                .sorted(Comparator.comparing((Integer type) -> -rule.struts(type)))
                .toList();
        this.shared = new int[rule.types()][rule.types()];
        this.best = firstFit();
        this.atLeast = StrictMath.max(1, apart());
        this.before = rule.trials();
    }

    /**
     * What was found.
     *
     * @param groups the groups, each in the order its members joined
     * @param atLeast no fewer groups serve all hub types
     */
    record Found(List<PatternGroup> groups, int atLeast) {}

    static Found search(SharingRule rule) {
        PatternSearch search = new PatternSearch(rule);
        search.branch(0, List.of());
        return new Found(search.best, search.complete ? search.best.size() : search.atLeast);
    }

    private List<PatternGroup> firstFit() {
        List<PatternGroup> groups = new ArrayList<>();
        for (int type : order) {
            boolean placed = false;
            for (int i = 0; i < groups.size() && !placed; i++) {
                List<PatternGroup> with = groups.get(i).with(type);
                if (!with.isEmpty()) {
                    groups.set(i, with.get(0));
                    placed = true;
                }
            }
            if (!placed) {
                groups.add(PatternGroup.of(rule, type));
            }
        }
        return groups;
    }

    // Each of which can share with none of the others, taken greedily.
    private int apart() {
        List<Integer> chosen = new ArrayList<>();
        for (int type : order.subList(0, StrictMath.min(order.size(), MOST_COMPARED))) {
            if (chosen.stream().noneMatch(other -> share(other, type))) {
                chosen.add(type);
            }
        }
        return chosen.size();
    }

    // Whether some pattern serves both. Where both have fewer struts than the fullest hub, a third might host them.
    private boolean share(int fuller, int type) {
        if (shared[fuller][type] == 0) {
            boolean together = !PatternGroup.of(rule, fuller).with(type).isEmpty();
            shared[fuller][type] = together || hosted(fuller, type) ? 1 : -1;
        }
        return shared[fuller][type] > 0;
    }

    private boolean hosted(int fuller, int type) {
        for (int host : order) {
            if (rule.struts(host) <= rule.struts(fuller)) {
                return false;
            }
            for (PatternGroup both : PatternGroup.of(rule, host).with(fuller)) {
                if (!both.with(type).isEmpty()) {
                    return true;
                }
            }
        }
        return false;
    }

    // Tries all ways to part the hub types from one on
    private void branch(int at, List<PatternGroup> groups) {
        if (groups.size() >= best.size() || best.size() == atLeast) {
            return;
        }
        if (at == order.size()) {
            best = List.copyOf(groups);
            return;
        }
        if (rule.trials() - before >= MOST_TRIALS) {
            complete = false;
            return;
        }
        int type = order.get(at);
        for (int i = 0; i < groups.size(); i++) {
            Optional<PatternGroup> joined = joined(groups.get(i), type);
            if (joined.isPresent()) {
                List<PatternGroup> next = new ArrayList<>(groups);
                next.set(i, joined.get());
                branch(at + 1, next);
            }
        }
        List<PatternGroup> more = new ArrayList<>(groups);
        more.add(PatternGroup.of(rule, type));
        branch(at + 1, more);
    }

    // The group with one more hub type, if need be with its members turned in another way.
    private Optional<PatternGroup> joined(PatternGroup group, int type) {
        List<PatternGroup> asTurned = group.with(type);
        if (!asTurned.isEmpty()) {
            return Optional.of(asTurned.get(0));
        }
        List<Integer> types = new ArrayList<>(
                group.members().stream().map(PatternGroup.Member::type).toList());
        types.add(type);
        types.sort(Comparator.comparingInt(order::indexOf));
        if (impossible.contains(types)) {
            return Optional.empty();
        }
        Optional<PatternGroup> turned = arranged(PatternGroup.of(rule, types.get(0)), types.subList(1, types.size()));
        if (turned.isEmpty()) {
            impossible.add(types);
        }
        return turned;
    }

    // Puts hub types on a group in any way that takes all of them, the one with the fewest ways first.
    private Optional<PatternGroup> arranged(PatternGroup group, List<Integer> types) {
        if (types.isEmpty()) {
            return Optional.of(group);
        }
        if (rule.trials() - before >= MOST_TRIALS) {
            complete = false;
            return Optional.empty();
        }
        int narrowest = types.get(0);
        List<PatternGroup> ways = group.with(narrowest);
        for (int type : types.subList(1, types.size())) {
            List<PatternGroup> other = group.with(type);
            if (other.size() < ways.size()) {
                narrowest = type;
                ways = other;
            }
        }
        List<Integer> rest = new ArrayList<>(types);
        rest.remove(Integer.valueOf(narrowest));
        for (PatternGroup way : ways) {
            Optional<PatternGroup> all = arranged(way, rest);
            if (all.isPresent()) {
                return all;
            }
        }
        return Optional.empty();
    }
}
