package leverwright.run.wire;

import java.math.BigDecimal;

/** Shapes of plain values. */
enum Scalars implements Shape {
    /** Raw bits, so that every double arrives as it was. */
    DOUBLE(8) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putLong(Double.doubleToRawLongBits((Double) value));
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            return Double.longBitsToDouble(in.getLong());
        }
    },
    INT(4) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putInt((Integer) value);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            return in.getInt();
        }
    },
    LONG(8) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putLong((Long) value);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            return in.getLong();
        }
    },
    BOOLEAN(1) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putByte((Boolean) value ? 1 : 0);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            int value = in.getByte();
            if (value > 1) {
                throw new WireException("unknown truth value " + value);
            }
            return value == 1;
        }
    },
    TEXT(5) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putText((String) value);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            return in.getText();
        }
    },
    /** Digits and exponent as text, both bounded. */
    DECIMAL(6) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putText(value.toString());
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            String text = in.getText();
            try {
                BigDecimal number = text.length() > MOST_DIGITS ? null : new BigDecimal(text);
                if (number != null && Math.abs((long) number.scale()) <= MOST_DIGITS) {
                    return number;
                }
            } catch (NumberFormatException e) {
                // said below
            }
            throw new WireException("a decimal number of " + text.length() + " characters is none or too long");
        }
    },
    BYTES(4) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putBytes((byte[]) value);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            return in.getBytes();
        }
    },
    DOUBLES(4) {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            double[] values = (double[]) value;
            if (values.length > WireLimits.COUNT) {
                throw new WireException(values.length + " numbers are more than " + WireLimits.COUNT);
            }
            out.putInt(values.length);
            for (double each : values) {
                out.putLong(Double.doubleToRawLongBits(each));
            }
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            double[] values = new double[in.getCount(8)];
            for (int i = 0; i < values.length; i++) {
                values[i] = Double.longBitsToDouble(in.getLong());
            }
            return values;
        }
    };

    private static final int MOST_DIGITS = 1000;

    private final int leastBytes;

    Scalars(int leastBytes) {
        this.leastBytes = leastBytes;
    }

    @Override
    public int leastBytes() {
        return leastBytes;
    }
}
