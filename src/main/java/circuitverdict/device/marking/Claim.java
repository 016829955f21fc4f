package circuitverdict.device.marking;

/**
 * What a mark says of the device, as far as the mark alone tells it.
 *
 * @param sort how it is to be taken
 * @param member the member it tells of; null where the rest of the face decides that
 * @param value what it says: a number, a word or a boolean
 * @param base the member whose multiple the value is, for {@link Sort#SHARE}
 */
record Claim(Sort sort, DeviceMember member, Object value, DeviceMember base) {
  enum Sort {
    /** The member has the value. */
    SAYS,
    /** A breaking capacity without a symbol: whose, the standard says. */
    CAPACITY,
    /** One, two or three alone: an energy limiting class on a device that has one. */
    DIGIT,
    /** The value times what another mark says. */
    SHARE,
    /** Type B: of the release or of the residual function. */
    TYPE_B,
    /** B that is not called a type: of the release, or not known. */
    LETTER_B,
    /** That the device has the member, its value unread. */
    DOUBT,
    /** S alone: a delay on a device that has a residual function. */
    LONE_S
  }

  static Claim says(DeviceMember member, Object value) {
    return new Claim(Sort.SAYS, member, value, null);
  }

  static Claim capacity(double ampere) {
    return new Claim(Sort.CAPACITY, null, ampere, null);
  }

  static Claim share(DeviceMember of, double factor, DeviceMember base) {
    return new Claim(Sort.SHARE, of, factor, base);
  }

  static Claim doubt(DeviceMember member) {
    return new Claim(Sort.DOUBT, member, null, null);
  }

  static Claim of(Sort sort, Object value) {
    return new Claim(sort, null, value, null);
  }
}
