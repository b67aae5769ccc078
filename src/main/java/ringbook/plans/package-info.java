/**
 * Which photographs to take: the plan the ledger's numbers describe, and plans worked out for the
 * object and the room.
 *
 * <p><b>Contract.</b> Functions from a scene to an immutable {@link ringbook.shots.ShotPlan}. The
 * same scene gives the same plan on every platform: ties go to what comes first.
 *
 * <p><b>Layer.</b> Above the ledger, whose entries say what is wanted; pure Java, also compiled for
 * the browser.
 *
 * <p><b>Start at</b> {@link ringbook.plans.StandardPlan}.
 */
package ringbook.plans;
