package circuitverdict.service.wire;

import com.fasterxml.jackson.core.SerializableString;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** Bytes of JSON written before, for an answer that holds them whole. */
record RawJson(byte[] bytes) implements SerializableString {
  private static final int DOES_NOT_FIT = -1;

  @Override
  public String getValue() {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  @Override
  public int charLength() {
    return getValue().length();
  }

  @Override
  public char[] asQuotedChars() {
    return getValue().toCharArray();
  }

  @Override
  public byte[] asUnquotedUTF8() {
    return bytes;
  }

  @Override
  public byte[] asQuotedUTF8() {
    return bytes;
  }

  @Override
  public int appendQuotedUTF8(byte[] buffer, int offset) {
    return appendUnquotedUTF8(buffer, offset);
  }

  @Override
  public int appendQuoted(char[] buffer, int offset) {
    return appendUnquoted(buffer, offset);
  }

  @Override
  public int appendUnquotedUTF8(byte[] buffer, int offset) {
    if (bytes.length > buffer.length - offset) {
      return DOES_NOT_FIT;
    }
    System.arraycopy(bytes, 0, buffer, offset, bytes.length);
    return bytes.length;
  }

  @Override
  public int appendUnquoted(char[] buffer, int offset) {
    return DOES_NOT_FIT;
  }

  @Override
  public int writeQuotedUTF8(OutputStream out) throws IOException {
    return writeUnquotedUTF8(out);
  }

  @Override
  public int writeUnquotedUTF8(OutputStream out) throws IOException {
    out.write(bytes);
    return bytes.length;
  }

  @Override
  public int putQuotedUTF8(ByteBuffer buffer) {
    return putUnquotedUTF8(buffer);
  }

  @Override
  public int putUnquotedUTF8(ByteBuffer buffer) {
    if (bytes.length > buffer.remaining()) {
      return DOES_NOT_FIT;
    }
    buffer.put(bytes);
    return bytes.length;
  }
}
