package circuitverdict.circuit;

/**
 * Evidence that an upstream device backs up this one (434.5.1, 536.4).
 *
 * @param limitedLetThroughA2s let-through of the pair at the greatest fault current, A²s
 * @param combinationRatingA short-circuit rating declared for the pair, A
 * @param evidence where it is declared
 */
public record BackUp(Double limitedLetThroughA2s, Double combinationRatingA, String evidence) {}
