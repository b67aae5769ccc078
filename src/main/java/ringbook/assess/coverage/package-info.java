/**
 * What the cameras see of a shape: every patch of its surface from every station, then sets of
 * stations together.
 *
 * <p><b>Contract.</b> {@link ringbook.assess.coverage.Seeing} looks from one station and gives a
 * {@link ringbook.assess.coverage.View}, to be kept; {@link ringbook.assess.coverage.Coverage}
 * judges any set of views, and {@link ringbook.assess.coverage.Tally} does it view by view. Two
 * things are kept apart throughout: that two stations could both see a spot (shared), and that it
 * still looks alike to both (matchable, see {@link ringbook.assess.MatchSurvival}).
 *
 * <p><b>Layer.</b> In assess; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.assess.coverage.Seeing}.
 */
package ringbook.assess.coverage;
