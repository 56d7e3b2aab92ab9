package leverwright.face.desk.model;

import java.time.Duration;

/**
 * How long the desk waits before it acts.
 *
 * @param settle how long typing must rest before the script is compiled
 * @param rest how long a dial must rest before a replay confirms what it shows
 * @param journal how long unsaved text may stay out of the journal
 * @param poll how often the file on the disk is looked at
 * @param typingPause the longest pause within one step of the history
 */
public record DeskTiming(Duration settle, Duration rest, Duration journal, Duration poll, Duration typingPause) {

    /** Returns the waits of the window: 350 ms, 200 ms, 1.2 s, 1 s and 1.2 s. */
    public static DeskTiming standard() {
        return new DeskTiming(
                Duration.ofMillis(350),
                Duration.ofMillis(200),
                Duration.ofMillis(1200),
                Duration.ofSeconds(1),
                Duration.ofMillis(1200));
    }
}
