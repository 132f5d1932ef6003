/* src/sheets/hut-shelf-pack.c: boxes of parts on shelves.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: every part is the box of its cut lines, lying flat (wider than high) where it may. The
 * boxes, highest first, fill shelves from left to right; a box that finds room on no shelf opens a
 * new one on top, or a new sheet. Invariants: boxes keep the part gap from each other and lie
 * inside the usable area; each part is laid once; the order depends on sizes and ids only. Not
 * promised: the fewest sheets. */
#define G_LOG_DOMAIN "hut-sheets"
#include "config.h"
#include "sheets/hut-shelf-pack.h"
#include "assembly/hut-part-grain.h"
#include <math.h>

/* A box may stick out by this much, mm. Own choice: a thousandth of the grid, takes up rounding. */
#define SLACK_MM 1e-6

/* A part to be laid: the box of its cut lines as it prefers to lie, and a quarter turn on. */
typedef struct
{
  guint part;
  const char *id;
  double turn_rad[2];
  HutRect box[2];      /* bounds about the panel frame's origin when turned, mm */
  gboolean allowed[2];
} Item;

/* A row of boxes on a sheet. */
typedef struct
{
  HutSheet *sheet;
  double v_mm, height_mm; /* where it stands, and how high its first box is */
  double next_u_mm;       /* where the next box may begin */
} Shelf;

static double
rect_width (HutRect rect)
{
  return rect.u1 - rect.u0;
}

static double
rect_height (HutRect rect)
{
  return rect.v1 - rect.v0;
}

static HutRect
turned_bounds (const HutRegion *shape,
               double turn_rad,
               double grow_mm)
{
  const HutPlacement placement = { .turn_rad = turn_rad };
  g_autoptr(HutPath) outer = hut_path_dup_placed (shape->outer, &placement);
  const HutRect bounds = hut_path_bounds (outer);

  return (HutRect) {
    bounds.u0 - grow_mm, bounds.v0 - grow_mm, bounds.u1 + grow_mm, bounds.v1 + grow_mm
  };
}

static gboolean
box_fits (HutRect box,
          HutRect usable)
{
  return rect_width (box) <= rect_width (usable) + SLACK_MM
         && rect_height (box) <= rect_height (usable) + SLACK_MM;
}

/* Takes the part as it lies best; FALSE when it fits at no angle that the cutter allows. */
static gboolean
item_init (Item *self,
           const HutPart *part,
           const HutCutter *cutter,
           HutRect usable)
{
  /* A cut that kerf would swallow is reported elsewhere; here it only needs room. */
  g_autoptr(HutRegion) cut = hut_part_dup_cut (part, NULL);
  const HutRegion *shape = cut != NULL ? cut : part->region;
  const double grow_mm = cut != NULL ? 0.0 : part->stock->kerf_mm / 2.0;
  const HutRect straight = turned_bounds (shape, 0.0, grow_mm);
  const gboolean flat = rect_width (straight) >= rect_height (straight);

  self->id = part->id;
  for (guint way = 0; way < 2; way++)
    {
      self->turn_rad[way] = flat == (way == 0) ? 0.0 : G_PI_2;
      self->box[way] = turned_bounds (shape, self->turn_rad[way], grow_mm);
      self->allowed[way] = box_fits (self->box[way], usable)
                           && hut_part_may_turn (part, cutter, flat == (way == 0) ? 0 : 1);
    }
  if (self->allowed[0] || self->allowed[1])
    return TRUE;
  if (!cutter->any_angle
      || !hut_rect_fits_turned (rect_width (straight), rect_height (straight),
                                rect_width (usable) + SLACK_MM, rect_height (usable) + SLACK_MM,
                                &self->turn_rad[0]))
    return FALSE;
  self->box[0] = turned_bounds (shape, self->turn_rad[0], grow_mm);
  self->allowed[0] = box_fits (self->box[0], usable);
  return self->allowed[0];
}

/* The way up that decides how early an item is laid and how high a shelf it opens. */
static guint
item_first_way (const Item *self)
{
  return self->allowed[0] ? 0 : 1;
}

static int
compare_items (gconstpointer a_,
               gconstpointer b_)
{
  const Item *a = a_, *b = b_;
  const double a_mm = rect_height (a->box[item_first_way (a)]);
  const double b_mm = rect_height (b->box[item_first_way (b)]);

  if (fabs (a_mm - b_mm) > SLACK_MM)
    return a_mm > b_mm ? -1 : 1;
  return strcmp (a->id, b->id);
}

static void
put_on_shelf (Shelf *shelf,
              const Item *item,
              guint way,
              double gap_mm)
{
  const HutRect box = item->box[way];
  const HutLaidPart laid = {
    .part = item->part,
    .placement = {
      .turn_rad = item->turn_rad[way],
      .shift = { shelf->next_u_mm - box.u0, shelf->v_mm - box.v0 },
    },
  };

  g_array_append_val (shelf->sheet->laid, laid);
  shelf->next_u_mm += rect_width (box) + gap_mm;
}

/* Lays the item on the first shelf with room, the narrower way; FALSE when there is none. */
static gboolean
lay_on_a_shelf (GArray *shelves,
                const Item *item,
                HutRect usable,
                double gap_mm)
{
  for (guint i = 0; i < shelves->len; i++)
    {
      Shelf *shelf = &g_array_index (shelves, Shelf, i);
      int best = -1;

      for (int way = 0; way < 2; way++)
        {
          const HutRect box = item->box[way];

          if (item->allowed[way] && rect_height (box) <= shelf->height_mm + SLACK_MM
              && shelf->next_u_mm + rect_width (box) <= usable.u1 + SLACK_MM
              && (best < 0 || rect_width (box) < rect_width (item->box[best])))
            best = way;
        }
      if (best >= 0)
        {
          put_on_shelf (shelf, item, (guint) best, gap_mm);
          return TRUE;
        }
    }
  return FALSE;
}

/* Height that the shelves of a sheet already take, with the gap to the next one. */
static double
next_shelf_mm (const GArray *shelves,
               const HutSheet *sheet,
               HutRect usable,
               double gap_mm)
{
  double next_mm = usable.v0;

  for (guint i = 0; i < shelves->len; i++)
    {
      const Shelf *shelf = &g_array_index (shelves, Shelf, i);

      if (shelf->sheet == sheet)
        next_mm = MAX (next_mm, shelf->v_mm + shelf->height_mm + gap_mm);
    }
  return next_mm;
}

/* Opens a shelf for the item on one of the stock's sheets, or on a new sheet. */
static void
lay_on_a_new_shelf (GArray *shelves,
                    GPtrArray *sheets,
                    const Item *item,
                    const HutCutter *cutter,
                    const HutStock *stock)
{
  const HutRect usable = hut_sheet_usable (cutter, stock);
  const double gap_mm = cutter->part_gap_mm;

  for (guint i = 0; i < sheets->len; i++)
    {
      HutSheet *sheet = g_ptr_array_index (sheets, i);
      const double v_mm = next_shelf_mm (shelves, sheet, usable, gap_mm);

      for (guint way = 0; way < 2; way++)
        if (item->allowed[way] && v_mm + rect_height (item->box[way]) <= usable.v1 + SLACK_MM)
          {
            Shelf shelf = { sheet, v_mm, rect_height (item->box[way]), usable.u0 };

            put_on_shelf (&shelf, item, way, gap_mm);
            g_array_append_val (shelves, shelf);
            return;
          }
    }

  const guint way = item_first_way (item);
  HutSheet *sheet = hut_sheet_new (cutter, stock, sheets->len + 1);
  Shelf shelf = { sheet, usable.v0, rect_height (item->box[way]), usable.u0 };

  g_ptr_array_add (sheets, sheet);
  put_on_shelf (&shelf, item, way, gap_mm);
  g_array_append_val (shelves, shelf);
}

GPtrArray *
hut_shelf_pack (const HutPartSet *parts,
                const GArray *indices,
                const HutCutter *cutter,
                const HutStock *stock)
{
  g_return_val_if_fail (parts != NULL && indices != NULL && cutter != NULL && stock != NULL, NULL);

  const HutRect usable = hut_sheet_usable (cutter, stock);
  g_autoptr(GArray) items = g_array_new (FALSE, TRUE, sizeof (Item));
  g_autoptr(GArray) shelves = g_array_new (FALSE, FALSE, sizeof (Shelf));
  GPtrArray *sheets = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_sheet_free);

  for (guint i = 0; i < indices->len; i++)
    {
      Item item = { .part = g_array_index (indices, guint, i) };

      if (item_init (&item, g_ptr_array_index (parts->parts, item.part), cutter, usable))
        g_array_append_val (items, item);
    }
  g_array_sort (items, compare_items);
  for (guint i = 0; i < items->len; i++)
    {
      const Item *item = &g_array_index (items, Item, i);

      if (!lay_on_a_shelf (shelves, item, usable, cutter->part_gap_mm))
        lay_on_a_new_shelf (shelves, sheets, item, cutter, stock);
    }
  return sheets;
}
