/**
 * What is photographed, where, and to what end: subject, place and aim, which with the kit make a
 * scene; and the stations the photographs are taken from.
 *
 * <p><b>Contract.</b> Immutable records; a {@link ringbook.shots.Scene} that exists is free of
 * contradictions: what a person wrote is checked by {@link ringbook.shots.SceneDraft}, which tells
 * every fault at once.
 *
 * <p><b>Layer.</b> Above optics and geometry; pure Java, also compiled for the browser.
 *
 * <p><b>Start at</b> {@link ringbook.shots.Scene} and {@link ringbook.shots.SceneField}.
 */
package ringbook.shots;
