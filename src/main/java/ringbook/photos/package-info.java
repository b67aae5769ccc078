/**
 * One test photograph: what its settings and its pixels tell about the kit and the object.
 *
 * <p><b>Contract.</b> Reads one file, never writes, never sends. Make, model, serial numbers, names
 * and places in a photograph are not read. What a photograph leaves open or states doubtfully is
 * said in one sentence each ({@link ringbook.photos.PhotoFacts#doubts}); a file that is of no use
 * at all is a {@link ringbook.problems.Problem}. A setting that is doubtful beyond use counts as
 * unknown.
 *
 * <p><b>Layer.</b> Above output, below the command line.
 *
 * <p><b>Start at</b> {@link ringbook.photos.PhotoReader}, then {@link ringbook.photos.PhotoKit} for
 * the camera and {@link ringbook.photos.SurfaceFacts} for the object.
 */
package ringbook.photos;
