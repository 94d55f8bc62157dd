package collarwright.frame;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.OptionalDouble;

/** Where the numbers of a PLY file come from. */
sealed interface PlySource {

    /** Begins a record. */
    void record();

    /** The next number; anything once the source has ended. */
    double number(PlyType type);

    /** No list can be longer than this. */
    long mostLeft();

    /** Whether a number was missing or was none. */
    boolean ended();

    /** Says that what was read makes no sense. */
    void end();

    /** The line or the record. */
    int place();

    /** Words of lines; a record may go over several. */
    final class Text implements PlySource {
        private final Lines lines;
        private String[] words = {};
        private int at;
        private boolean ended;

        Text(Lines lines) {
            this.lines = lines;
        }

        @Override
        public void record() {
            // Records follow each other word by word.
        }

        @Override
        public double number(PlyType type) {
            while (!ended && at >= words.length) {
                ended = !lines.next();
                String line = lines.line().strip();
                words = ended || line.isEmpty() ? new String[0] : line.split("\\s+", -1);
                at = 0;
            }
            OptionalDouble number = ended ? OptionalDouble.empty() : Numbers.real(words[at++]);
            ended |= number.isEmpty();
            return number.orElse(0);
        }

        @Override
        public long mostLeft() {
            return 1_000_000;
        }

        @Override
        public boolean ended() {
            return ended;
        }

        @Override
        public void end() {
            ended = true;
        }

        @Override
        public int place() {
            return lines.number();
        }
    }

    /** Bytes. */
    final class Binary implements PlySource {
        private final ByteBuffer in;
        private int at;
        private int record;
        private boolean ended;

        Binary(byte[] bytes, int from, boolean bigEndian) {
            this.in = ByteBuffer.wrap(bytes).order(bigEndian ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
            this.at = from;
        }

        @Override
        public void record() {
            record++;
        }

        @Override
        public double number(PlyType type) {
            if (ended || at + type.size() > in.limit()) {
                ended = true;
                return 0;
            }
            double number = type.read(in, at);
            at += type.size();
            return number;
        }

        @Override
        public long mostLeft() {
            return (long) in.limit() - at;
        }

        @Override
        public boolean ended() {
            return ended;
        }

        @Override
        public void end() {
            ended = true;
        }

        @Override
        public int place() {
            return record;
        }
    }
}
