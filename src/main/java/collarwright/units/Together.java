package collarwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;

/** Does independent things on all processors, one after the other from a single queue, so that none idles. */
public final class Together implements AutoCloseable {

    private final ExecutorService processors = Executors.newWorkStealingPool();

    private Together() {}

    /**
     * Gets the processors ready.
     *
     * @return to be closed; what is not done by then is given up
     */
    public static Together open() {
        return new Together();
    }

    /** What will come of a task. */
    public static final class Later<T> {
        private final CompletableFuture<T> task;

        private Later(CompletableFuture<T> task) {
            this.task = task;
        }

        /**
         * Waits for the task.
         *
         * @return what came of it
         * @throws RuntimeException what the task threw, an Error too
         */
        public T get() {
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

    /**
     * Puts a task at the end of the queue.
     *
     * @param <T> what comes of it
     * @param task waits for no other, and changes nothing that another reads
     * @return to be asked for it
     */
    public <T> Later<T> begin(Supplier<T> task) {
        return new Later<>(CompletableFuture.supplyAsync(task, processors));
    }

    /**
     * Puts several at the end of the queue.
     *
     * @param <T> what comes of each
     * @param tasks none of which waits for another or changes what another reads
     * @return one for each, in their order
     */
    public <T> List<Later<T>> beginAll(List<Supplier<T>> tasks) {
        List<Later<T>> begun = new ArrayList<>();
        for (Supplier<T> task : tasks) {
            begun.add(begin(task));
        }
        return List.copyOf(begun);
    }

    /**
     * Does them all.
     *
     * @param <T> what comes of each
     * @param tasks none of which waits for another or changes what another reads
     * @return what came of them, in the order of the tasks
     * @throws RuntimeException what the first task that failed threw, in the order of the tasks
     */
    public static <T> List<T> all(List<Supplier<T>> tasks) {
        try (Together together = open()) {
            List<Later<T>> begun = together.beginAll(tasks);
            List<T> done = new ArrayList<>();
            for (Later<T> each : begun) {
                done.add(each.get());
            }
            return List.copyOf(done);
        }
    }

    @Override
    public void close() {
        processors.shutdownNow();
    }
}
