/* tests/physics/hut-published.c: a table of computed against published values.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "physics/hut-published.h"
#include <math.h>
#include <stdio.h>

#define NUMBER_SIZE 32

void
hut_published_row (HutPublished *self,
                   const char *id,
                   double computed,
                   double published,
                   HutPublishedRoom room,
                   const char *source)
{
  const double off = computed - published;
  const double allowed = room.absolute + room.relative_ratio * fabs (published);
  const gboolean good = computed == published || fabs (off) <= allowed;
  char is[NUMBER_SIZE], must[NUMBER_SIZE], share[NUMBER_SIZE];

  g_ascii_formatd (is, sizeof is, "%.8g", computed);
  g_ascii_formatd (must, sizeof must, "%.8g", published);
  g_ascii_formatd (share, sizeof share, "%+.1e", published != 0 ? off / published : off);
  printf ("%-8s %14s %14s %9s  %s%s\n", id, is, must, share, source, good ? "" : "   <-- OFF");
  g_hash_table_add (self->ids, (gpointer)id);
  self->rows++;
  if (!good)
    self->bad++;
}
