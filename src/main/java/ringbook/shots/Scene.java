package ringbook.shots;

import ringbook.optics.Kit;

/**
 * Everything the course works its numbers out from: which camera, which object, which room, to what
 * end.
 *
 * @param kit camera and lens
 * @param subject the object
 * @param place the room
 * @param aim what is wanted
 */
public record Scene(Kit kit, Subject subject, Place place, Aim aim) {}
