/* src/cli/hut-cli-locale.h: the language of the process.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* Names the folder with the translations (LANGUAGE/LC_MESSAGES/hutchwright.mo) of a program that runs
 * from its build folder; without it they are looked for where they get installed. */
#define HUT_LOCALE_DIR_VARIABLE "HUTCHWRIGHT_LOCALE_DIR"

/* First thing in main (): the locale of the environment, and where its translations are. */
void hut_cli_use_locale (void);
