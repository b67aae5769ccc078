/**
 * Where things are: vectors in space, and what can be worked out from them alone.
 *
 * <p><b>Contract.</b> Immutable records over plain numbers, because a vector may be a position in
 * metres, a direction without a unit or a difference of pixels; each method says which it takes.
 * The frame of the room has its origin on the floor under the middle of the object: x to the right
 * and y away from the door side as in the ring plan, z up; azimuths count from +x towards +y.
 *
 * <p><b>Layer.</b> Above optics, below shots; pure Java, also compiled for the browser.
 *
 * <p>A {@link ringbook.geometry.Shape} is solids put together; its {@link ringbook.geometry.Mesh}
 * is cut into {@link ringbook.geometry.Patches}, and a {@link ringbook.geometry.RayTree} says which
 * of them a camera sees.
 *
 * <p><b>Start at</b> {@link ringbook.geometry.Vec3}, then {@link ringbook.geometry.Solid}.
 */
package ringbook.geometry;
