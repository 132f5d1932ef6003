/* tests/bench/hut-rect-instance.h: the published instances of rectangles to pack, and a check of layouts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "sheets/hut-rect-pack.h"
#include <stdio.h>

#define HUT_RECT_INSTANCE_MAX 100 /* items of an instance */
#define HUT_RECT_CLASSES 10       /* numbered from 1 */

typedef struct
{
  guint class_number, index;
  HutRectSize bin;
  guint best[2]; /* best known number of bins, oriented and turned */
  HutRectSize sizes[HUT_RECT_INSTANCE_MAX];
  guint count;
} HutRectInstance;

/* tests/bench/rectangles.txt under HUT_SOURCE_ROOT, or here; NULL when it is not there. */
FILE *hut_rect_instances_open (void);
/* The next one; FALSE at the end. Stops the program on a line that is not right. */
gboolean hut_rect_instances_next (FILE *file, HutRectInstance *instance);
/* FALSE when two rectangles overlap, or one sticks out of its bin. */
gboolean hut_rect_layout_is_right (const HutRectInstance *instance,
                                   const HutRectPlace *places,
                                   guint bin_count);
