package ringbook.assess.coverage;

/**
 * What two photographs have in common. Shares are of what the lesser of the two sees well, so that
 * a photograph of a detail that lies wholly within another one shares all of it.
 *
 * @param shared share of the surface that both see well, 0 to 1: both could see it
 * @param frame share of what is in the picture of the lesser, however slanted or blurred, that the
 *     other has in its picture too
 * @param matchable like {@code shared}, each patch counted by how much of its look survives the
 *     turn between the two rays to it
 */
public record PairView(double shared, double frame, double matchable) {}
