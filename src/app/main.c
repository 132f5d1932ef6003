/* src/app/main.c: the program: commands without a window, else the window.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-application.h"
#include "cli/hut-cli-locale.h"
#include "cli/hut-cli.h"

int
main (int argc,
      char **argv)
{
  hut_cli_use_locale ();
  if (hut_cli_handles (argc, argv))
    return hut_cli_run (argc, argv);

  g_autoptr (HutApplication) application = hut_application_new ();
  return g_application_run (G_APPLICATION (application), argc, argv);
}
