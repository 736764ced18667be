package org.woodyield.job;

import java.io.Console;
import java.io.PrintStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Tells a person who watches how far the work is: each second after the first, on one line that is wiped at the end. */
final class Progress {

    private final CountDownLatch done = new CountDownLatch(1);
    private final AtomicInteger percent = new AtomicInteger();
    private final Thread teller;

    private Progress(String what, PrintStream messages) {
        teller = new Thread(() -> tell(what, messages), "progress");
    }

    /** Begins; nothing is told if nobody watches. */
    static Progress of(String what, PrintStream messages, boolean watched) {
        Progress progress = new Progress(what, messages);
        if (watched) {
            progress.teller.setDaemon(true);
            progress.teller.start();
        }
        return progress;
    }

    /** Whether a person sees the messages. */
    @SuppressWarnings("SystemConsoleNull") // that a console is there does not mean that somebody watches; asked below
    static boolean isWatched() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // From Java 22 on a console may be there though nobody watches; the method that tells is new, too.
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    private void tell(String what, PrintStream messages) {
        int seconds = 0;
        try {
            while (!done.await(1, TimeUnit.SECONDS)) {
                seconds++;
                messages.print("\r" + what + ": " + percent.get() + " % after " + seconds + " s");
                messages.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (seconds > 0) {
            messages.print("\r" + " ".repeat(what.length() + 40) + "\r");
            messages.flush();
        }
    }

    /** Takes note of how far the work is. */
    void reached(int part, int whole) {
        percent.set((int) (100L * part / Math.max(1, whole)));
    }

    /** Ends, and wipes what was told. */
    void end() {
        done.countDown();
        if (!teller.isAlive()) {
            return;
        }
        try {
            teller.join(1000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
