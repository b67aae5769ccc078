package ringbook.values;

/** A part of an expression that has been read. */
@FunctionalInterface
interface Part {

  /** What it stands for over a scene. */
  Operand over(SceneScope scene) throws ExpressionFault;
}
