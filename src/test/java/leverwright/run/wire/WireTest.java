package leverwright.run.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import leverwright.run.result.Result;
import org.junit.jupiter.api.Test;

class WireTest {

    private static final long SEED = 20261125;

    private static byte[] frames(Message... messages) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        FrameOutput out = new FrameOutput(bytes);
        for (Message message : messages) {
            out.write(message);
        }
        out.flush();
        return bytes.toByteArray();
    }

    private static List<Message> read(byte[] bytes) throws IOException {
        FrameInput in = new FrameInput(new ByteArrayInputStream(bytes));
        List<Message> messages = new ArrayList<>();
        for (Message message = in.read(); message != null; message = in.read()) {
            messages.add(message);
        }
        return messages;
    }

    @Test
    void everyResultComesBackAsItWas() throws IOException {
        RandomResults results = new RandomResults(SEED);
        Set<Class<?>> kinds = new LinkedHashSet<>();
        for (int i = 0; i < 2000; i++) {
            Result result = results.next();
            kinds.add(result.getClass());
            Message message = new Message.CellResult(i, "cell", result);
            assertEquals(List.of(message), read(frames(message)), "seed " + SEED + " result " + i);
            byte[] bytes = ResultBytes.of(result);
            assertArrayEquals(bytes, ResultBytes.of(ResultBytes.read(bytes)), "seed " + SEED + " result " + i);
        }
        assertEquals(Set.of(Result.class.getPermittedSubclasses()), kinds);
    }

    @Test
    void everyMessageComesBackAsItWas() throws IOException {
        Message[] messages = {
            new Message.Begin("secret", true),
            new Message.Classes(List.of("cells.A"), List.of()),
            new Message.Run(
                    Long.MIN_VALUE,
                    Message.Mode.SHORT,
                    7,
                    List.of(new Message.Setting("Torso lean", "45 ± 5 deg")),
                    List.of(new Message.Step("a", "cells.A", List.of("b", "c")))),
            new Message.Stop(3),
            new Message.Ready("secret", "17"),
            new Message.CellStarted(1, "a"),
            new Message.CellProgress(1, "a", "31 %, about 4 s left"),
            new Message.CellText(1, "a", "\u0000\uFFFF"),
            new Message.CellEnded(
                    1, "a", Message.Ending.FAILED, "why", List.of(new Message.Trace("a", 3)), 5, 1_000, true),
            new Message.RunEnded(1),
        };
        assertEquals(List.of(messages), read(frames(messages)));
        Message.Classes classes = (Message.Classes) read(frames(new Message.Classes(
                        List.of(), List.of(new Message.ClassBytes("cells.A", new byte[] {1, -2, 3})))))
                .get(0);
        assertArrayEquals(new byte[] {1, -2, 3}, classes.add().get(0).bytes());
    }

    @Test
    void endBetweenFramesIsAnEndAndInsideOneIsNot() throws IOException {
        byte[] whole = frames(new Message.Stop(3));
        assertNull(new FrameInput(new ByteArrayInputStream(new byte[0])).read());
        for (int length = 1; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            assertThrows(WireException.class, () -> read(cut), "cut after " + length);
        }
    }

    @Test
    void unknownTagIsRefused() {
        byte[] frame = {0, 0, 0, 1, 99};
        assertTrue(assertThrows(WireException.class, () -> read(frame))
                .getMessage()
                .contains("unknown tag 99"));
    }

    @Test
    void lengthThatLiesCostsNoMemory() {
        byte[] tooLong =
                ByteBuffer.allocate(8).putInt(WireLimits.FRAME_BYTES + 1).array();
        assertThrows(WireException.class, () -> read(tooLong));
        byte[] negative = ByteBuffer.allocate(8).putInt(-5).array();
        assertThrows(WireException.class, () -> read(negative));
        byte[] promised = ByteBuffer.allocate(8).putInt(WireLimits.FRAME_BYTES).array();
        assertThrows(WireException.class, () -> read(promised));
    }

    @Test
    void resultBeyondTheLimitsIsNotSent() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        FrameOutput out = new FrameOutput(bytes);
        String tooLong = "x".repeat(WireLimits.TEXT_LENGTH + 1);
        assertThrows(WireException.class, () -> out.write(new Message.CellText(1, "a", tooLong)));
        out.write(new Message.Stop(3));
        out.flush();
        assertEquals(List.of(new Message.Stop(3)), read(bytes.toByteArray()));
    }

    @Test
    void damagedFramesGiveOneKindOfException() throws IOException {
        Random random = new Random(SEED);
        RandomResults results = new RandomResults(SEED + 1);
        int damaged = 0;
        for (int i = 0; i < 20_000; i++) {
            byte[] bytes = frames(new Message.CellResult(i, "cell", results.next()));
            for (int k = 0; k <= random.nextInt(4); k++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
            }
            try {
                read(bytes);
            } catch (WireException e) {
                damaged++;
            } catch (RuntimeException | IOException e) {
                fail("seed " + SEED + " frame " + i + " gave " + e, e);
            }
        }
        assertTrue(damaged > 5_000, "only " + damaged + " frames were seen to be damaged");
    }
}
