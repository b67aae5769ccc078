/**
 * How good the photographs will be: what two of them share, whether they can still be matched, how
 * well every point is seen and how precisely it is measured.
 *
 * <p><b>Contract.</b> Functions of shots and sizes; each states its model, its source and its
 * range. What cannot be is an empty optional, or an exception where the caller should have asked
 * first.
 *
 * <p><b>Layer.</b> Above shots, below the ledger; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.assess.SharedSurface} and {@link
 * ringbook.assess.MatchSurvival}.
 */
package ringbook.assess;
