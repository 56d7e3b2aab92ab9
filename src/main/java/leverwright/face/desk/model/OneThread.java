package leverwright.face.desk.model;

import java.util.concurrent.ScheduledThreadPoolExecutor;

/** Threads of their own for what does not belong on the window's. */
final class OneThread {

    private OneThread() {}

    /** Returns an executor with one thread, which keeps no program alive; what is due after its shutdown is not done. */
    static ScheduledThreadPoolExecutor named(String name) {
        ScheduledThreadPoolExecutor executor = new ScheduledThreadPoolExecutor(1, task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
        executor.setRemoveOnCancelPolicy(true);
        executor.setContinueExistingPeriodicTasksAfterShutdownPolicy(false);
        executor.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
        return executor;
    }
}
