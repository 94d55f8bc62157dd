package collarwright.bench;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.CuttingPlanner;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/**
 * Times cutting plans, ours beside glpsol and cbc on the same job in one run: the solvers get every filling without room for
 * another piece as a whole-number variable, ours the job. Called by {@code .ci/bench-stock.sh}.
 */
public final class StockRace {

    private static final int SECONDS = 60;
    private static final int KERF = 3;

    private StockRace() {}

    /**
     * Runs the race and prints a table.
     *
     * @param args none
     * @throws IOException if a model cannot be written
     * @throws InterruptedException if somebody stops it
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        System.out.println("job | ours: cost, proven, first ms, second ms | glpsol: cost, ms | cbc: cost, ms");
        int[][] jobs = {{250, 6, 1}, {250, 6, 2}, {500, 8, 1}, {500, 8, 4}, {1000, 8, 4}, {1000, 12, 1}, {1000, 12, 4}};
        for (int[] job : jobs) {
            race(job[0], job[1], job[2]);
        }
        large();
    }

    private static CuttingTask task(int pieces, int kinds, int stocks, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<CutPiece> all = new ArrayList<>();
        int left = pieces;
        for (int i = 0; i < kinds; i++) {
            int others = kinds - 1 - i;
            int count = others == 0 ? left : StrictMath.min(left - others, 1 + random.nextInt(2 * left / (others + 1)));
            left -= count;
            all.add(new CutPiece("P" + i, 700 + random.nextInt(1300), count));
        }
        double[] lengths = {6000, 5000, 4000, 3000};
        List<StockLength> sold = new ArrayList<>();
        for (int i = 0; i < stocks; i++) {
            double price = StrictMath.round(lengths[i] / 10 * (2 + 0.3 * random.nextDouble())) / 100.0;
            sold.add(new StockLength(lengths[i] + " mm", lengths[i], Optional.of(price), Optional.empty(), false));
        }
        return new CuttingTask(all, sold, new SawSettings(KERF, 0, 0, 0));
    }

    private static void race(int pieces, int kinds, int stocks) throws IOException, InterruptedException {
        CuttingTask task = task(pieces, kinds, stocks, 1);
        long start = System.nanoTime();
        CuttingPlanner.plan(task);
        long first = System.nanoTime() - start;
        start = System.nanoTime();
        CutPlan plan = CuttingPlanner.plan(task);
        long second = System.nanoTime() - start;
        Path model = Files.createTempFile("stock", ".lp");
        try {
            Files.writeString(model, model(task));
            String glpsol =
                    solved(List.of("glpsol", "--lp", model.toString(), "--tmlim", SECONDS + "", "--cuts", "-o"));
            String cbc = solved(List.of("cbc", model.toString(), "-seconds", SECONDS + "", "-solve", "-solution"));
            System.out.printf(
                    Locale.ROOT,
                    "%d pieces, %d lengths, %d stocks | %.2f, %s, %d, %d | %s | %s%n",
                    pieces,
                    kinds,
                    stocks,
                    plan.proof().cost(),
                    plan.proof().proven(),
                    first / 1_000_000,
                    second / 1_000_000,
                    glpsol,
                    cbc);
        } finally {
            Files.deleteIfExists(model);
        }
    }

    private static void large() {
        for (int run = 0; run < 2; run++) {
            CuttingTask task = task(5000, 60, 3, 2);
            long start = System.nanoTime();
            CutPlan plan = CuttingPlanner.plan(task);
            System.out.printf(
                    Locale.ROOT,
                    "5000 pieces, 60 lengths, 3 stocks | %.2f, %s, gap %.4f %%, %d ms%n",
                    plan.proof().cost(),
                    plan.proof().proven(),
                    100 * plan.proof().gap(),
                    (System.nanoTime() - start) / 1_000_000);
        }
    }

    /** Every filling of every stock without room for another piece. */
    private static String model(CuttingTask task) {
        List<CutPiece> pieces = task.pieces();
        List<StringBuilder> rows = new ArrayList<>();
        pieces.forEach(p -> rows.add(new StringBuilder()));
        StringBuilder cost = new StringBuilder();
        StringBuilder names = new StringBuilder();
        int[] at = {0};
        for (StockLength stock : task.stocks()) {
            fill(task, (int) stock.length() + KERF, 0, new int[pieces.size()], counts -> {
                String name = "x" + at[0]++;
                cost.append(" + ")
                        .append(stock.price().orElseThrow())
                        .append(' ')
                        .append(name)
                        .append('\n');
                names.append(' ').append(name).append('\n');
                for (int i = 0; i < counts.length; i++) {
                    if (counts[i] > 0) {
                        rows.get(i)
                                .append(" + ")
                                .append(counts[i])
                                .append(' ')
                                .append(name)
                                .append('\n');
                    }
                }
            });
        }
        StringBuilder model = new StringBuilder("Minimize\n obj:" + cost + "Subject To\n");
        for (int i = 0; i < pieces.size(); i++) {
            model.append(" d").append(i).append(':').append(rows.get(i)).append(" >= ");
            model.append(pieces.get(i).count()).append('\n');
        }
        return model.append("General\n").append(names).append("End\n").toString();
    }

    private static void fill(
            CuttingTask task, int room, int kind, int[] counts, java.util.function.Consumer<int[]> each) {
        if (kind == counts.length) {
            if (task.pieces().stream().allMatch(p -> p.length() + KERF > room)) {
                each.accept(counts);
            }
            return;
        }
        int each1 = (int) task.pieces().get(kind).length() + KERF;
        for (int n = room / each1; n >= 0; n--) {
            counts[kind] = n;
            fill(task, room - n * each1, kind + 1, counts, each);
        }
        counts[kind] = 0;
    }

    private static String solved(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("stock", ".txt");
        try {
            List<String> words = new ArrayList<>(command);
            words.add(out.toString());
            long start = System.nanoTime();
            Process process = new ProcessBuilder(words)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.waitFor(3 * SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly();
            long took = (System.nanoTime() - start) / 1_000_000;
            String objective = Files.readString(out)
                    .lines()
                    .filter(l -> l.contains("bjective"))
                    .findFirst()
                    .orElse("none");
            return objective.strip() + ", " + took;
        } catch (IOException e) {
            return "not here";
        } finally {
            Files.deleteIfExists(out);
        }
    }
}
