package circuitverdict.service.wire;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.io.OutputStream;
import java.util.Arrays;

/**
 * The bytes of an answer while it is written. What differs from answer to answer is written by the
 * generator; what recurs is put in as it was encoded once, of which an answer mostly consists.
 */
final class Out extends OutputStream {
  private static final int USUAL_SIZE = 32_768;

  /** A buffer that is greater is not kept for the next answer. */
  private static final int MOST_KEPT = 262_144;

  private static final ThreadLocal<byte[]> KEPT = new ThreadLocal<>();

  private byte[] bytes;
  private int size;

  Out() {
    byte[] kept = KEPT.get();
    // Taken, so that an answer within an answer has another.
    KEPT.remove();
    this.bytes = kept == null ? new byte[USUAL_SIZE] : kept;
  }

  /** What was written; nothing can be written any more. */
  byte[] finish() {
    byte[] all = Arrays.copyOf(bytes, size);
    if (bytes.length <= MOST_KEPT) {
      KEPT.set(bytes);
    }
    bytes = null;
    return all;
  }

  int size() {
    return size;
  }

  /** Writes again what stands there between two places. */
  Out again(int from, int to) {
    room(to - from);
    System.arraycopy(bytes, from, bytes, size, to - from);
    size += to - from;
    return this;
  }

  Out put(byte[] encoded) {
    write(encoded, 0, encoded.length);
    return this;
  }

  Out put(char ascii) {
    write(ascii);
    return this;
  }

  /** A text of ours in which there is nothing to escape: symbols, signs and digits. */
  Out plain(String text) {
    int length = text.length();
    room(3 * length);
    byte[] to = bytes;
    int at = size;
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (c < 0x80) {
        to[at++] = (byte) c;
      } else if (c < 0x800) {
        to[at++] = (byte) (0xC0 | c >> 6);
        to[at++] = (byte) (0x80 | c & 0x3F);
      } else {
        to[at++] = (byte) (0xE0 | c >> 12);
        to[at++] = (byte) (0x80 | c >> 6 & 0x3F);
        to[at++] = (byte) (0x80 | c & 0x3F);
      }
    }
    size = at;
    return this;
  }

  /** Any text, in quotes. */
  Out quoted(String text) {
    return put('"').put(JsonStringEncoder.getInstance().quoteAsUTF8(text)).put('"');
  }

  /** A number as JSON writes it: whole numbers without a fraction. */
  Out number(double value) {
    if (!Double.isFinite(value)) {
      // JSON has no such number: as the generator does, so that all else can still be read.
      return quoted(Double.toString(value));
    }
    return plain(
        value == Math.rint(value) && Math.abs(value) < 1e15
            ? Long.toString((long) value)
            : NumberOutput.toString(value, true));
  }

  @Override
  public void write(int one) {
    room(1);
    bytes[size++] = (byte) one;
  }

  @Override
  public void write(byte[] from, int offset, int length) {
    room(length);
    System.arraycopy(from, offset, bytes, size, length);
    size += length;
  }

  private void room(int more) {
    if (bytes.length - size < more) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
    }
  }
}
