/* src/sheets/hut-rect-room.c: the free room of one bin as all largest free rectangles.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-rect-room.h"

/* Room for so many free rectangles at first (count). */
#define FIRST_CAPACITY 16
/* What a rectangle leaves of one that it meets (count): left, right, below, above. */
#define REMAINDERS 4

void
hut_rect_room_clear (HutRectRoom *self)
{
  g_clear_pointer (&self->free, g_free);
  self->free_count = self->capacity = 0;
}

static void
append (HutRectRoom *self,
        HutRectBox box)
{
  if (self->free_count == self->capacity)
    {
      self->capacity = MAX (2 * self->capacity, FIRST_CAPACITY);
      self->free = g_renew (HutRectBox, self->free, self->capacity);
    }
  self->free[self->free_count++] = box;
}

static void
find_most (HutRectRoom *self)
{
  self->most_width = self->most_height = 0;
  self->most_area = 0;
  for (guint i = 0; i < self->free_count; i++)
    {
      const HutRectBox *free = &self->free[i];

      self->most_width = MAX (self->most_width, free->width);
      self->most_height = MAX (self->most_height, free->height);
      self->most_area = MAX (self->most_area, (gint64) free->width * free->height);
    }
}

gboolean
hut_rect_room_may_take (const HutRectRoom *self,
                        HutRectSize size,
                        gboolean may_turn)
{
  return (gint64) size.width * size.height <= self->most_area
         && ((size.width <= self->most_width && size.height <= self->most_height)
             || (may_turn && size.height <= self->most_width && size.width <= self->most_height));
}

void
hut_rect_room_reset (HutRectRoom *self,
                     HutRectSize bin)
{
  self->free_count = 0;
  append (self, (HutRectBox) { 0, 0, bin.width, bin.height });
  find_most (self);
}

static gboolean
holds (const HutRectBox *outer,
       const HutRectBox *inner)
{
  return inner->x >= outer->x && inner->y >= outer->y
         && inner->x + inner->width <= outer->x + outer->width
         && inner->y + inner->height <= outer->y + outer->height;
}

static gboolean
meet (const HutRectBox *a,
      const HutRectBox *b)
{
  return a->x < b->x + b->width && b->x < a->x + a->width && a->y < b->y + b->height
         && b->y < a->y + a->height;
}

/* The largest rectangles of @whole beside @taken. Returns: how many */
static guint
split (const HutRectBox *whole,
       const HutRectBox *taken,
       HutRectBox rests[REMAINDERS])
{
  const gint32 right = whole->x + whole->width, top = whole->y + whole->height;
  const gint32 taken_right = taken->x + taken->width, taken_top = taken->y + taken->height;
  guint count = 0;

  if (taken->x > whole->x)
    rests[count++] = (HutRectBox) { whole->x, whole->y, taken->x - whole->x, whole->height };
  if (taken_right < right)
    rests[count++] = (HutRectBox) { taken_right, whole->y, right - taken_right, whole->height };
  if (taken->y > whole->y)
    rests[count++] = (HutRectBox) { whole->x, whole->y, whole->width, taken->y - whole->y };
  if (taken_top < top)
    rests[count++] = (HutRectBox) { whole->x, taken_top, whole->width, top - taken_top };
  return count;
}

/* Whether another rectangle holds the one at @index, which ends or begins at a side of @taken. What
 * holds it is as near to @taken, neither of them reaches in, so it ends or begins there as well:
 * that alone rules out most. */
static gboolean
is_held (const HutRectRoom *self,
         guint index,
         const HutRectBox *taken)
{
  const HutRectBox *inner = &self->free[index];
  const gboolean left = inner->x + inner->width == taken->x;
  const gboolean right = inner->x == taken->x + taken->width;
  const gboolean below = inner->y + inner->height == taken->y;

  for (guint k = 0; k < self->free_count; k++)
    {
      const HutRectBox *outer = &self->free[k];
      const gboolean near = left    ? outer->x + outer->width == taken->x
                            : right ? outer->x == taken->x + taken->width
                            : below ? outer->y + outer->height == taken->y
                                    : outer->y == taken->y + taken->height;

      if (near && k != index && holds (outer, inner))
        return TRUE;
    }
  return FALSE;
}

/* Drops what lies in another rectangle, from @from on. What is older is in no newer one: it would
 * have been in the one that was split. */
static void
drop_held (HutRectRoom *self,
           guint from,
           const HutRectBox *taken)
{
  for (guint i = from; i < self->free_count;)
    {
      if (is_held (self, i, taken))
        self->free[i] = self->free[--self->free_count];
      else
        i++;
    }
}

void
hut_rect_room_take (HutRectRoom *self,
                    const HutRectBox *taken)
{
  const guint before = self->free_count;
  guint kept = 0;

  for (guint i = 0; i < before; i++)
    {
      const HutRectBox whole = self->free[i];
      HutRectBox rests[REMAINDERS];
      guint count;

      if (!meet (&whole, taken))
        {
          self->free[kept++] = whole;
          continue;
        }
      count = split (&whole, taken, rests);
      for (guint k = 0; k < count; k++)
        append (self, rests[k]);
    }
  /* New ones stand behind the old: close the gap. */
  if (kept < before)
    memmove (&self->free[kept], &self->free[before],
             (self->free_count - before) * sizeof *self->free);
  self->free_count -= before - kept;
  drop_held (self, kept, taken);
  find_most (self);
}

static void
rate (const HutRectBox *free,
      gint32 width,
      gint32 height,
      HutRectRule rule,
      gint64 *first,
      gint64 *second)
{
  const gint64 side = free->width - width, above = free->height - height;

  switch (rule)
    {
    case HUT_RECT_LONG_SIDE:
      *first = MAX (side, above);
      *second = MIN (side, above);
      break;
    case HUT_RECT_AREA:
      *first = (gint64) free->width * free->height - (gint64) width * height;
      *second = MIN (side, above);
      break;
    case HUT_RECT_LOW:
      *first = free->y + height;
      *second = free->x;
      break;
    case HUT_RECT_LEFT:
      *first = free->x + width;
      *second = free->y;
      break;
    case HUT_RECT_SHORT_SIDE:
    default:
      *first = MIN (side, above);
      *second = MAX (side, above);
      break;
    }
}

gboolean
hut_rect_room_find (const HutRectRoom *self,
                    HutRectSize size,
                    gboolean may_turn,
                    HutRectRule rule,
                    HutRectSpot *spot)
{
  gboolean found = FALSE;

  for (guint i = 0; i < self->free_count; i++)
    {
      const HutRectBox *free = &self->free[i];

      for (guint turned = 0; turned <= (may_turn ? 1 : 0); turned++)
        {
          const gint32 width = turned ? size.height : size.width;
          const gint32 height = turned ? size.width : size.height;
          gint64 first, second;

          if (width > free->width || height > free->height)
            continue;
          rate (free, width, height, rule, &first, &second);
          if (first > spot->first || (first == spot->first && second >= spot->second))
            continue;
          *spot = (HutRectSpot) { { free->x, free->y, width, height }, turned, first, second };
          found = TRUE;
        }
    }
  return found;
}
