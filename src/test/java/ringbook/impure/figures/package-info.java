/** A made-up upper layer, for the proof that the rules of the layers are kept. */
package ringbook.impure.figures;
