/* tests/hut-run.h: runs the program as a user does, and keeps what it said.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The binary is HUT_BINARY of the environment. Messages are English whatever the locale. */
#pragma once
#include "hut-assert.h"
#include <gio/gio.h>

typedef struct
{
  int status;    /* exit status, or minus the signal that ended it */
  GBytes *out;   /* standard output */
  char *text;    /* the same as text */
  char *errors;  /* standard error */
} HutRun;

/* Arguments of the program, ended by NULL. (transfer full) */
HutRun *hut_run (const char *argument,
                 ...) G_GNUC_NULL_TERMINATED G_GNUC_WARN_UNUSED_RESULT;

typedef struct
{
  GBytes *input;             /* standard input; NULL: empty */
  const char *output;        /* path that standard output goes to; NULL: kept */
  const char *folder;        /* to run in; NULL: here */
  const char *const *changes; /* "NAME=value" of the environment; NULL: none */
} HutRunSetup;

HutRun *hut_run_argv (const char *const *arguments,
                      const HutRunSetup *setup) G_GNUC_WARN_UNUSED_RESULT;
void hut_run_free (HutRun *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutRun, hut_run_free)

/* Fails the test, with all that the program said, when it ended otherwise. */
void hut_run_assert_status (const HutRun *self,
                            int status);
/* The same, and standard error has one line "hutchwright: " with @part in it and "; " after it. */
void hut_run_assert_refused (const HutRun *self,
                             int status,
                             const char *part);

/* "FOLDER/NAME" after writing an example design there. (transfer full) */
char *hut_run_write_example (const char *folder,
                             const char *example,
                             const char *name) G_GNUC_WARN_UNUSED_RESULT;
void hut_run_write_text (const char *path,
                         const char *text);
char *hut_run_read_text (const char *path) G_GNUC_WARN_UNUSED_RESULT;
