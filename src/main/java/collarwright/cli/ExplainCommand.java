package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.job.Explanations;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells cause, example and cure of a kind of finding. */
@Command(name = "explain", description = "Cause, example and cure of a finding; without a code, the list of all.")
final class ExplainCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "CODE", arity = "0..1", description = "Such as WEB_BETWEEN_HOLES.")
    private String code = "";

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Explanations explanations = Explanations.bundled();
        terminal.print(code.isEmpty() ? list() : one(explanations, code.toUpperCase(Locale.ROOT)));
        return 0;
    }

    private static String list() {
        StringBuilder text = new StringBuilder();
        for (Code known : Code.values()) {
            text.append(known.name()).append('\n');
        }
        return text.append("\nOne of them: explain CODE\n").toString();
    }

    private static String one(Explanations explanations, String name) {
        return explanations
                .find(name)
                .map(e -> name + "\n  cause    " + e.cause() + "\n  example  " + e.example() + "\n  cure     "
                        + e.cure() + "\n")
                .orElseThrow(() -> unknown(name));
    }

    private static JobException unknown(String name) {
        List<String> near = Explanations.near(name);
        String hint = near.isEmpty()
                ? "see the list: collarwright explain"
                : "did you mean " + String.join(" or ", near) + "?";
        return new JobException(List.of(
                Finding.stop(Code.COMMAND_LINE, new Where.Part("explain"), "the code of a finding", name, hint)));
    }
}
