package putback.store.books;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Lets those who wait for the one writer write together: who finds the writer free takes all that wait and commits them in
 * one go. Nobody is answered before what is his is on disk.
 */
final class GroupCommit<Q, A> {
    private final Function<List<Q>, List<A>> together;
    private final Object lock = new Object();
    private List<Waiting<Q, A>> queue = new ArrayList<>();
    private boolean writing;

    private static final class Waiting<Q, A> {
        final Q asked;

        @Nullable
        A answer;

        @Nullable
        RuntimeException failure;

        boolean done;

        Waiting(Q asked) {
            this.asked = asked;
        }

        A answer() {
            if (failure != null) {
                throw failure;
            }
            A kept = answer;
            if (kept == null) {
                throw new IllegalStateException("nobody wrote it");
            }
            return kept;
        }
    }

    /**
     * @param together writes all of a list in one transaction and answers each, in the same order
     */
    GroupCommit(Function<List<Q>, List<A>> together) {
        this.together = together;
    }

    /** Returns when it is on disk, alone or with others. */
    A write(Q asked) {
        Waiting<Q, A> mine = new Waiting<>(asked);
        List<Waiting<Q, A>> group = lead(mine);
        if (!group.isEmpty()) {
            try {
                commit(group);
            } finally {
                synchronized (lock) {
                    group.forEach(one -> one.done = true);
                    writing = false;
                    lock.notifyAll();
                }
            }
        }
        return mine.answer();
    }

    /** Waits until somebody else wrote it, or takes all that wait; empty in the first case. */
    private List<Waiting<Q, A>> lead(Waiting<Q, A> mine) {
        boolean interrupted = false;
        synchronized (lock) {
            queue.add(mine);
            while (writing && !mine.done) {
                try {
                    lock.wait();
                } catch (InterruptedException later) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
            if (mine.done) {
                return List.of();
            }
            writing = true;
            List<Waiting<Q, A>> group = queue;
            queue = new ArrayList<>();
            return group;
        }
    }

    private void commit(List<Waiting<Q, A>> group) {
        try {
            answer(group);
        } catch (RuntimeException failure) {
            if (group.size() == 1) {
                group.get(0).failure = failure;
            } else {
                group.forEach(one -> commit(List.of(one)));
            }
        }
    }

    private void answer(List<Waiting<Q, A>> group) {
        List<Q> asked = new ArrayList<>(group.size());
        group.forEach(one -> asked.add(one.asked));
        List<A> answers = together.apply(asked);
        for (int i = 0; i < group.size(); i++) {
            group.get(i).answer = answers.get(i);
        }
    }
}
