package circuitverdict.service.edge;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Well-formedness of UTF-8, strict: no overlong forms, no encoded surrogates. */
final class Utf8 {

  private Utf8() {}

  /** Index of the first byte that is not well-formed UTF-8, or -1. */
  static int firstFault(byte[] bytes) {
    int ascii = 0;
    while (ascii < bytes.length && bytes[ascii] >= 0) {
      ascii++;
    }
    if (ascii == bytes.length) {
      return -1;
    }
    ByteBuffer rest = ByteBuffer.wrap(bytes, ascii, bytes.length - ascii);
    try {
      StandardCharsets.UTF_8.newDecoder().decode(rest);
      return -1;
    } catch (CharacterCodingException e) {
      // The decoder leaves its position at the bytes that it could not decode.
      return rest.position();
    }
  }

  /** True where there is nothing but what JSON calls white space. */
  static boolean isBlank(byte[] bytes) {
    for (byte b : bytes) {
      if (b != ' ' && b != '\n' && b != '\r' && b != '\t') {
        return false;
      }
    }
    return true;
  }
}
