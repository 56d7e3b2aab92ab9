package leverwright.run.wire;

/** Turns messages into bytes and back. */
final class Codec {

    private static final Shapes SHAPES = new Shapes();
    private final Shape messages = SHAPES.of(Message.class);

    void write(WireWriter out, Message message) throws WireException {
        messages.write(out, message, 0);
    }

    Message read(WireReader in) throws WireException {
        Message message = (Message) messages.read(in, 0);
        if (in.left() > 0) {
            throw new WireException(in.left() + " bytes are left over at the end of a frame");
        }
        return message;
    }
}
