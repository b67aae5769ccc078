/**
 * The named quantities: every number the course may state has one entry here, and everything else
 * is a use of it.
 *
 * <p><b>Contract.</b> An entry ({@link ringbook.ledger.Quantity}) has a key, a name, a symbol, a
 * unit, a formula, a source, a rounding for people and one method that computes it. The formula is
 * written once, as text over keys; its typeset form, its spoken form and its working with numbers
 * come from that text, and a test proves that it gives what the method gives. What cannot be had is
 * {@link ringbook.ledger.Outcome.Refused} with the reason, never NaN.
 *
 * <p><b>Layer.</b> Above assess; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.ledger.Ledger} and {@link ringbook.ledger.Reckoning}.
 */
package ringbook.ledger;
