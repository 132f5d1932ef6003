/* src/cli/hut-cli-output.h: where the command line writes: standard output, standard error, a file.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "cli/hut-cli-command.h"

/* What stands for standard input or output in place of a file name. */
#define HUT_CLI_STREAM "-"

/* Writes data or text to standard output; says on standard error when that fails.
 * Returns: HUT_CLI_DONE or HUT_CLI_IO */
HutCliStatus hut_cli_print (const char *text);
HutCliStatus hut_cli_print_bytes (GBytes *bytes);

/* The files of a folder on standard output, one a line.
 * Returns: HUT_CLI_DONE or HUT_CLI_IO */
HutCliStatus hut_cli_print_paths (const char *folder,
                                  const char *const *names);
/* Says on standard error that a folder of files could not be written. Returns: HUT_CLI_IO */
HutCliStatus hut_cli_refuse_folder (const GError *error);

/* "hutchwright: ..." and a line end on standard error. */
void hut_cli_print_error (const char *format,
                          ...) G_GNUC_PRINTF (1, 2);
/* A line of standard error that belongs to the error before. */
void hut_cli_print_more (const char *line);

/**
 * hut_cli_dup_line:
 *
 * Returns: (transfer full): @text with every control character as a blank: names come from files and
 *   must not move the cursor of a terminal or break a line
 */
char *hut_cli_dup_line (const char *text);

typedef enum
{
  HUT_CLI_TARGET_NEW,   /* nothing may be there */
  HUT_CLI_TARGET_PLAIN, /* a plain file may be there: it will be replaced */
} HutCliTarget;

/**
 * hut_cli_check_target:
 * @path: where a file shall be written
 *
 * Devices, folders and pipes are never a target: replacing them would do harm.
 *
 * Returns: HUT_CLI_DONE, or HUT_CLI_WRONG with the error printed
 */
HutCliStatus hut_cli_check_target (const HutCliCommand *command,
                                   const char *path,
                                   HutCliTarget target);
