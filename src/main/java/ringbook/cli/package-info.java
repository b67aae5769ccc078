/**
 * The command line: one class a command, a thin shell over the layers below.
 *
 * <p><b>Contract.</b> Results go to standard output, all else to standard error. Exit codes: 0
 * done, 1 a file has problems, 2 the command was mistyped, 3 the machine failed (a file could not
 * be written and the like). No stack trace reaches a user. Nothing below this layer prints or
 * exits.
 *
 * <p><b>Layer.</b> Top.
 *
 * <p><b>Start at</b> {@link ringbook.cli.Main}.
 */
package ringbook.cli;
