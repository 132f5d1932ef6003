/* src/cli/hut-cli-command.h: a command word, what it takes and how it ends.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

/* Exit status of the program. */
typedef enum
{
  HUT_CLI_DONE = 0,
  HUT_CLI_BLOCKED = 1,
  HUT_CLI_WRONG = 2,
  HUT_CLI_IO = 3,
} HutCliStatus;

typedef struct _HutCliCommand HutCliCommand;

struct _HutCliCommand
{
  const char *word;
  const char *usage;   /* what follows the word */
  const char *summary; /* N_: one line */
  const char *details; /* N_: below the options; may be NULL */
  guint least_words, most_words; /* that are no options */
  HutCliStatus (*run) (const HutCliCommand *self,
                       GStrv argv); /* argv[0] is the word */
};

extern const HutCliCommand hut_cli_example;
extern const HutCliCommand hut_cli_check;
extern const HutCliCommand hut_cli_coupon;
extern const HutCliCommand hut_cli_describe;
extern const HutCliCommand hut_cli_export;
extern const HutCliCommand hut_cli_render;

/**
 * hut_cli_parse:
 * @options: the command's own, ended by a row of zeros; --help is added
 * @argv: argv[0] is the command word
 * @words: (out) (transfer full): what is no option, as many as the command wants
 * @status: (out): how the program ends, when this returns FALSE
 *
 * Prints the help or the error.
 *
 * Returns: TRUE when the command shall go on
 */
gboolean hut_cli_parse (const HutCliCommand *command,
                        const GOptionEntry *options,
                        GStrv argv,
                        GStrv *words,
                        HutCliStatus *status);

/* Says on standard error what is wrong with the call, and what is allowed. Returns: HUT_CLI_WRONG */
HutCliStatus hut_cli_refuse (const HutCliCommand *command,
                             const char *format,
                             ...) G_GNUC_PRINTF (2, 3);
