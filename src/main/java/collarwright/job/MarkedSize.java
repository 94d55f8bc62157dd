package collarwright.job;

import collarwright.finding.Code;
import collarwright.tooling.CutterKind;
import collarwright.units.Length;
import collarwright.units.Quoted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A cutter's size and what is stamped on the cutter: the size itself, or a name such as {@code #7} or {@code F} where the
 * trade has one for it.
 *
 * @param size the marked size
 * @param name the name in place of the size; empty where the size is stamped
 */
record MarkedSize(Length size, Optional<String> name) {

    /** Capitals only: names of files must not differ by small and large letters alone. */
    private static final Pattern NAME = Pattern.compile("#[0-9]{1,3}|[A-Z]{1,8}");

    /**
     * Gives sizes their names.
     *
     * @param key {@code marked}: one name, or a list with one for each size; may be absent
     * @param sizes the sizes
     * @return the sizes in their order, or empty after findings
     */
    static Optional<List<MarkedSize>> of(KeyView key, List<Length> sizes) {
        if (!key.present()) {
            return Optional.of(sizes.stream()
                    .map(size -> new MarkedSize(size, Optional.empty()))
                    .toList());
        }
        List<KeyView> items = key.items();
        List<String> names = new ArrayList<>();
        items.forEach(item -> name(item).ifPresent(names::add));
        if (names.size() < items.size()) {
            return Optional.empty();
        }
        if (names.size() != sizes.size()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "one name for each size, " + sizes.size(),
                    names.size() + "",
                    "write as many names as sizes, in the same order");
            return Optional.empty();
        }
        List<MarkedSize> marked = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            marked.add(new MarkedSize(sizes.get(i), Optional.of(names.get(i))));
        }
        return Optional.of(List.copyOf(marked));
    }

    /**
     * Tells a name from a size.
     *
     * @param text what may be stamped on a cutter
     * @return true for a name; every size begins with a digit
     */
    static boolean isName(String text) {
        return NAME.matcher(text).matches();
    }

    private static Optional<String> name(KeyView item) {
        Optional<String> name = item.text();
        if (name.isPresent() && !isName(name.get())) {
            item.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "# and one to three digits, or one to eight capital letters",
                    Quoted.text(name.get()),
                    "write it as it is stamped, such as \"#7\" or \"F\"; leave marked out where a size is stamped");
            return Optional.empty();
        }
        return name;
    }

    /**
     * Returns what a person reads on the cutter.
     *
     * @return such as {@code #7}, {@code F} or {@code 1-1/2 in}
     */
    String marked() {
        return name.orElseGet(size::stamped);
    }

    /**
     * Returns the cutter's id. A numbered drill is {@code No7}, so that it is never taken for 7 mm.
     *
     * @param kind what the cutter is
     * @return such as {@code TW-No7}, {@code TW-F}, {@code HS-44} or {@code EM-12}
     */
    String id(CutterKind kind) {
        String plain = name.map(n -> n.replace("#", "No"))
                .orElseGet(() -> size.stamped().replace(" mm", "").replace(" in", "in"));
        String front = switch (kind) {
            case TWIST -> "TW-";
            case HOLE_SAW -> "HS-";
            case END_MILL -> "EM-";
            case TUBE_CUTTER -> "TC-";
        };
        return front + plain;
    }
}
