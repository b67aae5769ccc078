/** A made-up pure layer that breaks every rule, for the proof that each breach is reported. */
package ringbook.impure.units;
