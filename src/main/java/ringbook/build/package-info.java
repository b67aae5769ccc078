/**
 * Compiles the calculations into the script of the pages. Runs only while Ringbook itself is built
 * and is no part of the program.
 */
package ringbook.build;
