package turnheel.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;

/**
 * Exports many patterns at once. As many are in memory as there are workers, each until its files are written; what stays
 * of a pattern is one {@link BatchOutcome}. Files are the same bytes as those of {@link Exports}, whatever the order.
 */
public final class Batch {

    /** A workbook of 24 sizes with all its sheets was made in a heap of a quarter of it; the rest is for larger patterns. */
    private static final long BYTES_FOR_A_WORKER = 256_000_000;

    private final BatchPlan plan;
    private final PatternSource source;
    private final Edition edition;
    private final boolean force;
    private final BatchListener listener;
    private final BatchOutcome[] outcomes;
    private int started;
    private int finished;

    private Batch(BatchPlan plan, PatternSource source, Edition edition, boolean force, BatchListener listener) {
        this.plan = plan;
        this.source = source;
        this.edition = edition;
        this.force = force;
        this.listener = listener;
        this.outcomes = new BatchOutcome[plan.items().size()];
    }

    /** As many workers as the machine has cores, fewer where they would not have the memory. */
    public static int usualWorkers() {
        Runtime machine = Runtime.getRuntime();
        return (int) Math.clamp(machine.maxMemory() / BYTES_FOR_A_WORKER, 1, machine.availableProcessors());
    }

    /**
     * Exports the patterns of a plan. One that fails does not stop the rest. Returns when every file that was begun is
     * whole or gone, also when the run is cancelled or this thread is interrupted.
     *
     * @param edition what of each pattern, as far as a format can leave something out
     * @param force whether files that exist are replaced; without it each is a failure of its pattern
     * @param workers how many patterns are worked on at once, at least 1
     * @return an outcome for each folder that was unreadable, then for each item, in the order of the plan
     */
    public static List<BatchOutcome> run(BatchPlan plan, PatternSource source, Edition edition, boolean force, int workers,
            BatchListener listener) throws InterruptedException {
        return new Batch(plan, source, edition, force, listener).run(workers);
    }

    private List<BatchOutcome> run(int workers) throws InterruptedException {
        List<Future<?>> running = new ArrayList<>();
        // closing waits for the workers; an interrupt makes it stop them
        try (ExecutorService pool = Executors.newFixedThreadPool(workers)) {
            for (int worker = 0; worker < workers; worker++) {
                running.add(pool.submit(this::work));
            }
        }
        for (Future<?> worker : running) {
            requireSound(worker);
        }
        List<BatchOutcome> all = new ArrayList<>(plan.unreadable());
        for (int i = 0; i < outcomes.length; i++) {
            all.add(outcomes[i] != null ? outcomes[i] : cancelled(plan.items().get(i), List.of()));
        }
        return all;
    }

    /** An error of the platform, such as a full memory, is nobody's outcome. */
    private static void requireSound(Future<?> worker) throws InterruptedException {
        try {
            worker.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a worker of the batch died", failed.getCause());
        }
    }

    private void work() {
        for (int next = next(); next < outcomes.length && !isCancelled(); next = next()) {
            BatchOutcome outcome = export(plan.items().get(next));
            synchronized (this) {
                outcomes[next] = outcome;
                finished++;
                listener.finished(outcome, finished, outcomes.length);
            }
        }
    }

    private synchronized int next() {
        return started++;
    }

    private boolean isCancelled() {
        return listener.isCancelled() || Thread.currentThread().isInterrupted();
    }

    private BatchOutcome export(BatchPlan.Item item) {
        List<Path> written = new ArrayList<>();
        try {
            Graded graded = source.read(plan.folder().resolve(item.source()));
            for (Path output : item.outputs()) {
                if (isCancelled()) {
                    return cancelled(item, written);
                }
                write(graded, plan.target().resolve(output));
                written.add(output);
            }
            return done(item, Checks.of(graded), written);
        } catch (IOException | ExportException failed) {
            // an interrupt closes the file that is being written
            return Thread.currentThread().isInterrupted() ? cancelled(item, written)
                    : BatchOutcome.failed(item.source(), failed.getMessage(), written);
        } catch (RuntimeException fault) {
            // A fault of the program in one pattern must not cost the others.
            return BatchOutcome.failed(item.source(), Words.text("batch.fault", item.source().toString(), fault.toString()),
                    written);
        }
    }

    private static BatchOutcome cancelled(BatchPlan.Item item, List<Path> written) {
        return new BatchOutcome(item.source(), BatchOutcome.State.CANCELLED, 0, 0, "", written);
    }

    private void write(Graded graded, Path target) throws ExportException {
        boolean isWhole = ExportFormat.of(target).kind() == ExportFormat.Kind.WHOLE;
        if (!isWhole && edition.size().isPresent()
                && graded.sizes().stream().noneMatch(size -> size.label().equals(edition.size().get()))) {
            throw new ExportException(Words.text("noSize", target.toString(), edition.size().get(),
                    String.join(", ", graded.sizes().stream().map(size -> size.label()).toList())));
        }
        try {
            Files.createDirectories(target.toAbsolutePath().getParent());
        } catch (IOException failed) {
            throw new ExportException(Words.text("failed", target.toString(), Words.reason(failed)), failed);
        }
        Exports.write(graded, edition, target, force);
    }

    private static BatchOutcome done(BatchPlan.Item item, List<Query> queries, List<Path> written) {
        List<Query> errors = queries.stream().filter(query -> query.severity() == Severity.ERROR).toList();
        String message = errors.stream().findFirst().or(() -> queries.stream().findFirst()).map(Sentences::of).orElse("");
        return new BatchOutcome(item.source(), BatchOutcome.State.DONE, errors.size(), queries.size() - errors.size(),
                message, written);
    }
}
