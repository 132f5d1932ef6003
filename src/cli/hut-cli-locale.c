/* src/cli/hut-cli-locale.c: the language of the process.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-locale.h"

#include <locale.h>

#include <glib.h>
#include <libintl.h>

void
hut_cli_use_locale (void)
{
  const char *folder = g_getenv (HUT_LOCALE_DIR_VARIABLE);

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, folder != NULL && *folder != '\0' ? folder : HUT_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
}
