package collarwright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The integer solver of the GNU Linear Programming Kit, on a model in the LP format. */
public final class Glpsol {
    private static final Pattern OBJECTIVE = Pattern.compile("Objective:.*= *(-?[0-9.e+-]+)");
    private static final Pattern STATUS = Pattern.compile("Status: +(.*)");

    private Glpsol() {}

    /**
     * Solves a model.
     *
     * @param model text in the LP format
     * @param whole whether variables named as integers are held whole
     * @return the proven optimum; empty where there is no solution or it was not proven
     */
    public static OptionalDouble optimum(String model, boolean whole) {
        try {
            Path folder = Files.createTempDirectory("glpsol");
            Path in = Files.writeString(folder.resolve("model.lp"), model);
            Path out = folder.resolve("out.txt");
            try {
                List<String> command = whole
                        ? List.of("glpsol", "--lp", in.toString(), "-o", out.toString(), "--tmlim", "60", "--cuts")
                        : List.of("glpsol", "--nomip", "--lp", in.toString(), "-o", out.toString());
                Run.of(command, Map.of(), Duration.ofSeconds(100)).orFail();
                return read(Files.exists(out) ? Files.readString(out) : "", whole ? "INTEGER OPTIMAL" : "OPTIMAL");
            } finally {
                Files.deleteIfExists(in);
                Files.deleteIfExists(out);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OptionalDouble read(String text, String good) {
        Matcher status = STATUS.matcher(text);
        Matcher objective = OBJECTIVE.matcher(text);
        return status.find() && status.group(1).strip().equals(good) && objective.find()
                ? OptionalDouble.of(Double.parseDouble(objective.group(1)))
                : OptionalDouble.empty();
    }
}
