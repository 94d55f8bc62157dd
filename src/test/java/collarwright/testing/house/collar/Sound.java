package collarwright.testing.house.collar;

import java.util.List;
import java.util.Locale;

/** Breaks no rule. */
public enum Sound {
    /** One. */
    ONE;

    static final List<String> NAMES = List.of("one");

    /** A word in small letters. */
    public String word() {
        return switch (this) {
            case ONE -> NAMES.get(0).toLowerCase(Locale.ROOT) + StrictMath.sin(1);
        };
    }
}
