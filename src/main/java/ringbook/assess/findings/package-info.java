/**
 * What is wrong with a plan of shots, in words a newcomer can act on: what, how bad, where, and the
 * cheapest mend that was tried on the model and found to help.
 *
 * <p><b>Contract.</b> {@link ringbook.assess.findings.Assessment} takes a plan and gives its
 * findings, the gravest first. Numbers in them are those of the model; a mend says how much of the
 * trouble it takes away.
 *
 * <p><b>Layer.</b> In assess; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.assess.findings.Assessment}.
 */
package ringbook.assess.findings;
