package turnheel.cli;

import turnheel.exchange.BatchListener;
import turnheel.exchange.BatchOutcome;

/**
 * Shows on a terminal how far a batch is, and lets a person stop it: on an interrupt of the process the files that are
 * being written are finished first.
 */
final class BatchWatch implements BatchListener {

    private final Output output;
    private final Object finish = new Object();
    private final Thread onInterrupt = new Thread(this::stop, "turnheel-stop");
    private volatile boolean cancelled;
    private boolean ended;

    private BatchWatch(Output output) {
        this.output = output;
    }

    static BatchWatch start(Output output) {
        BatchWatch watch = new BatchWatch(output);
        Runtime.getRuntime().addShutdownHook(watch.onInterrupt);
        return watch;
    }

    @Override
    public void finished(BatchOutcome outcome, int finished, int all) {
        output.progress(Words.BATCH_PROGRESS.with(finished, all, outcome.source()));
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }

    /** Runs while the process goes down; without waiting, files would be left half written beside their places. */
    private void stop() {
        cancelled = true;
        synchronized (finish) {
            while (!ended) {
                try {
                    finish.wait();
                } catch (InterruptedException hurry) {
                    return;
                }
            }
        }
    }

    /** The batch has written its last file. */
    void end() {
        output.progress("");
        synchronized (finish) {
            ended = true;
            finish.notifyAll();
        }
        if (!cancelled) {
            try {
                Runtime.getRuntime().removeShutdownHook(onInterrupt);
            } catch (IllegalStateException goingDown) {
                // The interrupt came just now; the hook sees that the batch has ended.
                cancelled = true;
            }
        }
    }
}
