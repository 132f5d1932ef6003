/* src/cli/hut-cli-main.c: the command line alone, as a program.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "cli/hut-cli.h"

#include <locale.h>

#include <glib/gi18n-lib.h>

int
main (int    argc,
      char **argv)
{
  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, HUT_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  return hut_cli_run (argc, argv);
}
