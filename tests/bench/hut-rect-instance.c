/* tests/bench/hut-rect-instance.c: the published instances of rectangles to pack, and a check of layouts.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/hut-rect-instance.h"
#include <stdlib.h>
#include <string.h>

#define LINE_MAX_BYTES 4096

FILE *
hut_rect_instances_open (void)
{
  const char *root = g_getenv ("HUT_SOURCE_ROOT");
  g_autofree char *path
      = g_build_filename (root != NULL ? root : ".", "tests", "bench", "rectangles.txt", NULL);

  return fopen (path, "r");
}

gboolean
hut_rect_instances_next (FILE *file,
                         HutRectInstance *self)
{
  char line[LINE_MAX_BYTES];
  guint wanted;
  const char *at;
  int used, width, height;

  do
    if (fgets (line, sizeof line, file) == NULL)
      return FALSE;
  while (line[0] == '#');
  memset (self, 0, sizeof *self);
  if (sscanf (line, "%u %u %u %d %d %u %u :%n", &self->class_number, &wanted, &self->index,
              &self->bin.width, &self->bin.height, &self->best[0], &self->best[1], &used)
      != 7)
    g_error ("not an instance: %s", line);
  for (at = line + used; sscanf (at, " %d,%d%n", &width, &height, &used) == 2; at += used)
    {
      g_assert (self->count < HUT_RECT_INSTANCE_MAX);
      self->sizes[self->count++] = (HutRectSize) { width, height };
    }
  g_assert (self->count == wanted);
  return TRUE;
}

static HutRectSize
lying (const HutRectInstance *self,
       const HutRectPlace *places,
       guint i)
{
  const HutRectSize size = self->sizes[i];

  return places[i].turned ? (HutRectSize) { size.height, size.width } : size;
}

gboolean
hut_rect_layout_is_right (const HutRectInstance *self,
                          const HutRectPlace *places,
                          guint bin_count)
{
  for (guint i = 0; i < self->count; i++)
    {
      const HutRectPlace *a = &places[i];
      const HutRectSize size_a = lying (self, places, i);

      if (a->bin >= bin_count || a->x < 0 || a->y < 0 || a->x + size_a.width > self->bin.width
          || a->y + size_a.height > self->bin.height)
        return FALSE;
      for (guint k = 0; k < i; k++)
        {
          const HutRectPlace *b = &places[k];
          const HutRectSize size_b = lying (self, places, k);

          if (a->bin == b->bin && a->x < b->x + size_b.width && b->x < a->x + size_a.width
              && a->y < b->y + size_b.height && b->y < a->y + size_a.height)
            return FALSE;
        }
    }
  return TRUE;
}
