/* src/cli/hut-cli.h: the program without a window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/**
 * hut_cli_handles:
 * @argv: (array length=argc): as main () got it
 *
 * A command word wins over a file of the same name; "./check" is the file.
 *
 * Returns: TRUE when the call is for hut_cli_run (): a command, --help, --version, an option that
 *   does not exist, or several words of which the first is no file. FALSE when a window is wanted
 */
gboolean hut_cli_handles (int argc,
                          char **argv);

/**
 * hut_cli_run:
 * @argv: (array length=argc): as main () got it, the locale is already set; not changed
 *
 * Ignores SIGPIPE from here on, so that a closed pipe is an error and not the end.
 *
 * Returns: exit status: 0 done, 1 something blocks, 2 the input or the call is wrong, 3 reading or
 *   writing failed
 */
int hut_cli_run (int argc,
                 char **argv);
