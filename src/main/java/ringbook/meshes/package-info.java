/**
 * Reads mesh files: OBJ, PLY (text and both binary orders) and STL (text and binary).
 *
 * <p><b>Contract.</b> A file is read in one pass through a small buffer; sizes are checked before
 * memory is taken ({@link ringbook.meshes.MeshLimits}). Every fault is a problem with file and
 * line, or with the byte where the file is binary. What a mesh may have but should not (holes,
 * doubled edges, surfaces that cross) is told as a note; the mesh can still be used.
 *
 * <p><b>Layer.</b> Above charts, below course; touches files.
 *
 * <p><b>Start at</b> {@link ringbook.meshes.MeshFile}.
 */
package ringbook.meshes;
