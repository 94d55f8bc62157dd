package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Holds the words of a program against the profile's allow-list and against the order that makes them safe. */
final class WordRules {

    /** Expected where a word has no meaning here. */
    static final String KNOWN = "a word that is known here";

    private static final List<String> CYCLES = List.of("G73", "G81", "G82", "G83");

    private final Machine.Post post;
    private final ProgramUnits units;
    private final boolean withoutY;
    private final boolean turnedByY;
    private final List<Fault> faults = new ArrayList<>();
    private boolean cycleActive;

    private WordRules(Machine machine, ProgramUnits units) {
        this.post = machine.post();
        this.units = units;
        this.turnedByY = machine.rotary().form().byY();
        this.withoutY = machine.withoutY() || turnedByY;
    }

    static List<Fault> check(Proof proof) {
        return check(proof.machine(), proof.settings().units(), proof.blocks());
    }

    static List<Fault> check(Machine machine, ProgramUnits units, List<Block> blocks) {
        WordRules rules = new WordRules(machine, units);
        rules.preamble(blocks.stream().filter(b -> !b.has("O")).toList());
        blocks.forEach(rules::block);
        rules.end(blocks);
        return List.copyOf(rules.faults);
    }

    private void preamble(List<Block> blocks) {
        String unit = units == ProgramUnits.INCH ? "G20" : "G21";
        Block first = blocks.isEmpty() ? new Block(1, List.of()) : blocks.get(0);
        List<Word> words = first.words().stream().filter(w -> w.letter() != 'N').toList();
        if (words.isEmpty() || !words.get(0).is(unit)) {
            fault(
                    first,
                    unit + " as the first word",
                    words.isEmpty() ? "none" : words.get(0).toString());
        }
        for (String word : List.of("G90", "G94", "G17")) {
            for (Block block : blocks) {
                if (block.has(word)) {
                    break;
                }
                if (block.moves() || block.hasAny("F", "M3")) {
                    fault(block, word + " before anything moves", "none");
                    break;
                }
            }
        }
        blocks.stream().skip(1).filter(b -> b.hasAny("G20", "G21")).forEach(b -> fault(b, "one unit", "a second one"));
    }

    private void block(Block block) {
        allowed(block);
        block.value('F').filter(f -> !(f > 0)).ifPresent(f -> fault(block, "F above 0", "F" + f));
        boolean cycle = CYCLES.stream().anyMatch(block::has);
        if (cycle) {
            cycle(block);
        } else if (block.has("G80")) {
            cycleActive = false;
        } else if (cycleActive && block.words().stream().anyMatch(w -> w.letter() != 'N')) {
            fault(block, "G80 before anything but a full cycle", text(block));
        }
    }

    private void cycle(Block block) {
        cycleActive = true;
        for (String word : List.of("X", "Y", "Z", "R", "F", "G98")) {
            if (!block.has(word) && !(withoutY && word.equals("Y"))) {
                fault(block, "a cycle with all its words: " + word, text(block));
            }
        }
        if (block.hasAny("G83", "G73") && !block.has("Q")) {
            fault(block, "a cycle with all its words: Q", text(block));
        }
        if (block.has("A") || (turnedByY && block.has("Y"))) {
            fault(block, "no turning in a cycle", text(block));
        }
    }

    private void allowed(Block block) {
        Set<String> words = post.words();
        for (Word word : block.words()) {
            boolean number = (word.letter() == 'N' && post.layout().numberStep() > 0)
                    || (word.letter() == 'O' && post.layout().habits().programNumber() > 0);
            if (!number && !words.contains(word.key())) {
                fault(block, "only words that the profile allows", word.toString());
            }
            if (!post.cycles() && CYCLES.contains(word.key())) {
                fault(block, "no drilling cycle on this machine", word.toString());
            }
        }
    }

    private void end(List<Block> blocks) {
        if (cycleActive && !blocks.isEmpty()) {
            fault(blocks.get(blocks.size() - 1), "G80 before the end", "an open cycle");
        }
        Block last = blocks.isEmpty() ? new Block(1, List.of()) : blocks.get(blocks.size() - 1);
        if (!last.has(post.endWord())) {
            fault(last, post.endWord() + " at the end", text(last));
        }
    }

    private static String text(Block block) {
        StringBuilder text = new StringBuilder();
        block.words().forEach(w -> text.append(text.isEmpty() ? "" : " ").append(w));
        return text.isEmpty() ? "nothing" : text.toString();
    }

    private void fault(Block block, String expected, String found) {
        faults.add(new Fault(block.line(), expected, found));
    }
}
