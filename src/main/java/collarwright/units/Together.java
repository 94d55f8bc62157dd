package collarwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;

/** Does independent things on all processors, one after the other from a single queue, so that none idles. */
public final class Together {

    private Together() {}

    /**
     * Does them all.
     *
     * @param <T> what comes of each
     * @param tasks none of which waits for another or changes what another reads
     * @return what came of them, in the order of the tasks
     * @throws RuntimeException what the first task that failed threw, in the order of the tasks
     */
    public static <T> List<T> all(List<Supplier<T>> tasks) {
        ExecutorService processors = Executors.newWorkStealingPool();
        try {
            List<CompletableFuture<T>> begun = new ArrayList<>();
            for (Supplier<T> task : tasks) {
                begun.add(CompletableFuture.supplyAsync(task, processors));
            }
            List<T> done = new ArrayList<>();
            for (CompletableFuture<T> each : begun) {
                done.add(result(each));
            }
            return List.copyOf(done);
        } finally {
            processors.shutdownNow();
        }
    }

    private static <T> T result(CompletableFuture<T> task) {
        try {
            return task.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw e;
        }
    }
}
