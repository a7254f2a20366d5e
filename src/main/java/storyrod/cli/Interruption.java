package storyrod.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C and the like while it is open: they are noted, and the program ends only when it is
 * closed, so that what was found is still written.
 */
final class Interruption implements AutoCloseable {
  private static final long LONGEST_WRITING_SECONDS = 60;

  private final CountDownLatch written = new CountDownLatch(1);
  private final Thread hook = new Thread(this::stop);
  private volatile boolean stopped;

  private Interruption() {}

  static Interruption watched() {
    Interruption interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(interruption.hook);
    return interruption;
  }

  boolean isStopped() {
    return stopped;
  }

  private void stop() {
    stopped = true;
    try {
      written.await(LONGEST_WRITING_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    written.countDown();
    if (!stopped) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        stopped = true;
      }
    }
  }
}
