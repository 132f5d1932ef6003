/* src/cli/hut-cli-main.c: the command line alone, as a program.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-cli.h"

#include "cli/hut-cli-locale.h"

int
main (int argc,
      char **argv)
{
  hut_cli_use_locale ();
  return hut_cli_run (argc, argv);
}
