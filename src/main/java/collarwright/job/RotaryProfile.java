package collarwright.job;

import collarwright.machining.Machine;
import collarwright.machining.RotaryForm;
import collarwright.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads the rotary axis of a machine profile. */
final class RotaryProfile {

    private static final List<String> FORMS = List.of("A", "Y-degrees", "Y-mm", "by-hand");

    private RotaryProfile() {}

    static Machine.Rotary read(MachinePart part) {
        boolean positive = part.word("sign", "which way A turns", List.of("rs274", "reversed"))
                .equals("rs274");
        boolean chuck = part.word("top", "where TOP of the collars faces", List.of("chuck", "free-end"))
                .equals("chuck");
        double rapid = part.number("rapid-deg-per-min", "rapid rate of A, degrees a minute", 1, 1e6, 2000);
        double acceleration = part.number("acceleration-deg-per-s2", "acceleration of A, degrees/s²", 1, 1e6, 100);
        double takeUp = part.number("take-up-deg", "how far below its angle A comes from, degrees", 0, 89, 2);
        double held = part.length("chuck-length", "pipe held inside the chuck", Length.Zero.ALLOWED);
        double clear = part.length("jaw-clear", "from the jaws to the first collar", Length.Zero.ALLOWED);
        double height = part.length("jaw-height", "how far the jaws stand out beyond the pipe", Length.Zero.ALLOWED);
        double kerf = part.length("parting-kerf", "width of the cut between collars", Length.Zero.ALLOWED);
        double trim = part.length("end-trim", "lost at the free end", Length.Zero.ALLOWED);
        double stick = part.length("longest-stick", "the longest pipe it can take", Length.Zero.REFUSED);
        part.ascending("chuck-length", held, "longest-stick", stick, "mm");
        Optional<Double> free = part.has("longest-free")
                ? Optional.of(part.length(
                        "longest-free", "how far a stick may stand out without a support", Length.Zero.REFUSED))
                : Optional.empty();
        return new Machine.Rotary(
                positive, chuck, rapid, acceleration, takeUp, held, clear, height, kerf, trim, stick, form(part), free);
    }

    private static RotaryForm form(MachinePart part) {
        String form = part.wordOrFirst("form", "the word that turns the pipe", FORMS);
        RotaryForm.Word word = switch (form) {
            case "Y-degrees" -> RotaryForm.Word.Y_DEGREES;
            case "Y-mm" -> RotaryForm.Word.Y_MM;
            case "by-hand" -> RotaryForm.Word.BY_HAND;
            default -> RotaryForm.Word.A;
        };
        Optional<Double> perTurn = Optional.empty();
        if (part.has("length-per-turn")) {
            double length = part.length("length-per-turn", "what Y counts for one turn", Length.Zero.REFUSED);
            if (word == RotaryForm.Word.Y_MM) {
                perTurn = Optional.of(length);
            } else {
                part.conflict(
                        "length-per-turn",
                        "only with rotary.form = Y-mm",
                        "rotary.form = " + form,
                        "take it out: degrees need no length");
            }
        }
        boolean feed = part.wordOrFirst("sweep", "the speed of a cut that turns", List.of("inverse-time", "feed"))
                .equals("feed");
        return new RotaryForm(word, perTurn, feed ? RotaryForm.Sweep.FEED : RotaryForm.Sweep.INVERSE_TIME);
    }

    /** A form as profiles name it. */
    static String name(RotaryForm form) {
        return switch (form.word()) {
            case A -> "A";
            case Y_DEGREES -> "Y-degrees";
            case Y_MM -> "Y-mm";
            case BY_HAND -> "by-hand";
        };
    }
}
