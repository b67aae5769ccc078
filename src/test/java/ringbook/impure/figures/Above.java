package ringbook.impure.figures;

/** Something of an upper layer. */
public final class Above {}
