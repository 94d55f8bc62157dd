package collarwright.kit;

import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.collar.Fix;
import collarwright.plan.FlatEntry;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a step card says, in {@value #MOST} words at most, its number among them. */
public final class CardWords {

    /** The most words on a card. */
    public static final int MOST = 12;

    private final Plan plan;
    private final PartNames names;

    /**
     * Prepares the words.
     *
     * @param plan the plan
     */
    public CardWords(Plan plan) {
        this.plan = plan;
        this.names = PartNames.of(plan);
    }

    /**
     * Words a card.
     *
     * @param card the card
     * @return its lines: which hubs; how many of which collar; places of its struts in the raising order, and how many of
     *     which; what to mind, such as to hold up where a strut of the card is held
     */
    public List<String> lines(StepCard card) {
        if (card.rings()) {
            String fix = (plan.job().hub().fix() == Fix.TIE ? "Tie" : "Pin") + " every strut end";
            return FlatEntry.inside(plan)
                    ? List.of("Flatten, drill every end", "Centre rings in", fix)
                    : List.of("Centre rings in", fix);
        }
        List<String> all = all(card, true);
        return words(all) <= MOST ? all : all(card, false);
    }

    /** Counts the words of a card with all its parts, its number among them. */
    int count(StepCard card) {
        return words(all(card, true));
    }

    /**
     * Counts words.
     *
     * @param lines a card's lines
     * @return words, and one for the card's number
     */
    public static int words(List<String> lines) {
        return 1 + lines.stream().mapToInt(line -> line.split(" ").length).sum();
    }

    private List<String> all(StepCard card, boolean parts) {
        List<String> lines = new ArrayList<>();
        if (!card.hubs().isEmpty()) {
            lines.add(hubs(card.hubs()));
            lines.add("Collars " + told(collars(card), parts));
        }
        lines.add("Struts " + orders(card) + ": " + told(struts(card), parts));
        long bowed = card.steps().stream().filter(s -> s.way() == Way.BOW).count();
        if (bowed > 0) {
            lines.add("Bow " + bowed);
        }
        if (card.steps().stream().anyMatch(RaisingStep::held)) {
            lines.add("Hold up");
        }
        return lines;
    }

    private static String told(Map<String, Integer> counts, boolean parts) {
        return parts
                ? counts.entrySet().stream()
                        .map(e -> e.getValue() + "×" + e.getKey())
                        .collect(Collectors.joining(" "))
                : Integer.toString(counts.values().stream().mapToInt(i -> i).sum());
    }

    /** Such as {@code 12–31}, the first and the last place in the raising order; or {@code 12} where it is one strut. */
    private static String orders(StepCard card) {
        return card.steps().size() == 1
                ? Integer.toString(card.firstOrder())
                : card.firstOrder() + "–" + card.lastOrder();
    }

    private String hubs(List<Integer> nodes) {
        String first = names.node(nodes.get(0));
        return nodes.size() == 1 ? first : first + "–" + names.node(nodes.get(nodes.size() - 1));
    }

    /**
     * Counts the collars that a card brings.
     *
     * @param card the card
     * @return by pattern id, in order
     */
    public Map<String, Integer> collars(StepCard card) {
        Map<String, Integer> counts = new TreeMap<>(CardWords::byLength);
        card.hubs().forEach(node -> counts.merge(names.pattern(plan.hubs().typeOf(node)), 1, Integer::sum));
        return counts;
    }

    /**
     * Counts the struts that a card brings.
     *
     * @param card the card
     * @return by strut type id, in order
     */
    public Map<String, Integer> struts(StepCard card) {
        Map<String, Integer> counts = new TreeMap<>(CardWords::byLength);
        card.steps()
                .forEach(
                        step -> counts.merge(names.strutType(plan.hubs().strutTypeOf(step.member())), 1, Integer::sum));
        return counts;
    }

    // SA, SB … SY, SAA: shorter ids come first.
    private static int byLength(String a, String b) {
        return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
    }
}
