/* src/export/hut-formats.h: the files that a set can hold, and who writes them.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The functions on HutFormats themselves are in hut-export.h. */
#pragma once
#include "export/hut-write.h"

/* A kind of file of which each sheet, and each coupon, has one. */
typedef struct
{
  const char *name; /* in lists: "svg" */
  HutFormats format;
  const char *suffix;
  HutPageWriter write;
} HutSheetFormat;

/* (transfer none) (array length=count): static */
const HutSheetFormat *hut_sheet_formats (guint *count);
