package collarwright.cli;

import collarwright.finding.Code;
import java.util.Locale;

/** What a check is called where its value is told: its code names the fault, which a value that passes is not. */
final class CheckNames {

    private CheckNames() {}

    static String of(Code code) {
        return switch (code) {
            case HOLE_SHORT_OF_REACH -> "least slack, nominal";
            case HOLE_SLACK -> "most slack, nominal";
            case STRUT_TOO_SHORT -> "strut length";
            case STRUT_CROWDING -> "gap between ends";
            default -> code.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }
}
