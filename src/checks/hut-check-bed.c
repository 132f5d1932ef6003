/* src/checks/hut-check-bed.c: each part against the cutter's bed and its sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "assembly/hut-part-grain.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Steps that halve the search for the longest strip a bed takes; own choice: under 1 um of 10 m. */
#define HALVINGS 24

/* A rectangle that parts are laid on, less margins and kerf. */
typedef struct
{
  double width_mm, depth_mm;
} Room;

static Room
bed_room (const HutCutter *cutter,
          const HutStock *stock)
{
  return (Room) { hut_cutter_usable_width_mm (cutter) - stock->kerf_mm,
                 hut_cutter_usable_depth_mm (cutter) - stock->kerf_mm };
}

static Room
sheet_room (const HutCutter *cutter,
            const HutStock *stock)
{
  const double around_mm = 2.0 * cutter->margin_mm + stock->kerf_mm;

  return (Room) { stock->sheet_width_mm - around_mm, stock->sheet_depth_mm - around_mm };
}

static gboolean
room_takes (const Room *room,
            gboolean any_angle,
            double width_mm,
            double height_mm)
{
  const HutCutter flat = { .bed_width_mm = room->width_mm,
                           .bed_depth_mm = room->depth_mm,
                           .any_angle = any_angle };

  return hut_cutter_takes (&flat, width_mm, height_mm);
}

/* The two numbers of a part that does not go into a room: its breadth and the room's breadth, or,
 * when that is no problem, its length and the greatest length that the room takes at that
 * breadth. */
static void
find_numbers (const Room *room,
              gboolean any_angle,
              double width_mm,
              double height_mm,
              double *is_mm,
              double *must_mm)
{
  const double breadth_mm = MIN (width_mm, height_mm), length_mm = MAX (width_mm, height_mm);
  double takes_mm = MAX (room->width_mm, room->depth_mm), misses_mm = length_mm;

  *is_mm = breadth_mm;
  *must_mm = MAX (MIN (room->width_mm, room->depth_mm), 0.0);
  if (breadth_mm > *must_mm)
    return;
  *is_mm = length_mm;
  for (guint i = 0; any_angle && i < HALVINGS; i++)
    {
      const double middle_mm = (takes_mm + misses_mm) / 2.0;

      if (room_takes (room, any_angle, breadth_mm, middle_mm))
        takes_mm = middle_mm;
      else
        misses_mm = middle_mm;
    }
  *must_mm = takes_mm;
}

void
hut_check_bed_numbers (const HutCutter *cutter,
                       const HutPart *part,
                       double *is_mm,
                       double *must_mm)
{
  const HutRect bounds = hut_region_bounds (part->region);
  Room room;

  hut_cutter_room (cutter, part->stock, &room.width_mm, &room.depth_mm);
  find_numbers (&room, cutter->any_angle, bounds.u1 - bounds.u0, bounds.v1 - bounds.v0, is_mm,
                must_mm);
}

static HutRect
part_bounds (const HutPart *part)
{
  return hut_region_bounds (part->region);
}

static const char *
message_for (const HutPart *part,
             gboolean sheet)
{
  if (sheet)
    return N_ ("{what} measures {is} mm; a sheet of {other} takes {must} mm.");
  if (part->kind == HUT_PART_GLAZING)
    return N_ (
        "The glazing of {what} measures {is} mm, the bed takes {must} mm, and it cannot be "
        "spliced: buy it cut to size.");
  return N_ ("{what} measures {is} mm; the bed takes {must} mm.");
}

static void
add_part_finding (HutChecking *self,
                  const HutPart *part,
                  const Room *room,
                  gboolean sheet)
{
  const HutAssembly *assembly = self->assembly;
  const HutPanel *panel = hut_check_part_panel (assembly, part);
  const HutRect bounds = part_bounds (part);
  HutFinding *finding = hut_checking_add (self, sheet ? "stock.sheet" : "bed.part",
                                          HUT_SEVERITY_BLOCKS, message_for (part, sheet));
  double is_mm, must_mm;

  find_numbers (room, assembly->design->cutter.any_angle, bounds.u1 - bounds.u0,
                bounds.v1 - bounds.v0, &is_mm, &must_mm);
  hut_finding_set_numbers (finding, is_mm, must_mm);
  hut_finding_set_names (finding,
                         hut_check_part_name (assembly, part),
                         hut_check_name (part->stock->name, part->stock->id));
  hut_finding_set_item (finding, part->item != NULL ? part->item
                                 : sheet            ? part->stock->id
                                                    : NULL);
  if (panel != NULL)
    hut_finding_add_place (finding, panel, bounds);
}

/* Which of the two is too small; FALSE when the part fits. */
static gboolean
part_misses (const HutCutter *cutter,
             const HutPart *part,
             Room *room,
             gboolean *sheet)
{
  const HutRect bounds = part_bounds (part);
  const double width_mm = bounds.u1 - bounds.u0, height_mm = bounds.v1 - bounds.v0;

  if (part->bought || hut_cutter_takes_stock (cutter, part->stock, width_mm, height_mm))
    return FALSE;
  *room = bed_room (cutter, part->stock);
  *sheet = FALSE;
  if (!room_takes (room, cutter->any_angle, width_mm, height_mm))
    return TRUE;
  *room = sheet_room (cutter, part->stock);
  *sheet = TRUE;
  if (!room_takes (room, cutter->any_angle, width_mm, height_mm))
    return TRUE;
  /* Bed and sheet each take it, but not the piece of the sheet that lies on the bed. */
  hut_cutter_room (cutter, part->stock, &room->width_mm, &room->depth_mm);
  return TRUE;
}

/* The smallest part to cut, when the bed takes none; else NULL. */
static const HutPart *
find_smallest_of_none (const HutChecking *self)
{
  const HutPart *smallest = NULL;
  double smallest_mm2 = INFINITY;
  gboolean sheet;
  Room room;

  for (guint i = 0; i < self->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (self->parts->parts, i);
      const HutRect bounds = part_bounds (part);
      const double area_mm2 = (bounds.u1 - bounds.u0) * (bounds.v1 - bounds.v0);

      if (part->bought)
        continue;
      if (!part_misses (&self->assembly->design->cutter, part, &room, &sheet) || sheet)
        return NULL;
      if (area_mm2 < smallest_mm2)
        {
          smallest = part;
          smallest_mm2 = area_mm2;
        }
    }
  return smallest;
}

/* A bed with no room at all, or one that takes none of the parts: one finding instead of one per
 * part. Returns: TRUE when that was told */
static gboolean
check_whole_bed (HutChecking *self)
{
  const HutCutter *cutter = &self->assembly->design->cutter;
  const double usable_mm
      = MIN (hut_cutter_usable_width_mm (cutter), hut_cutter_usable_depth_mm (cutter));
  const HutPart *smallest;
  HutFinding *finding;

  if (!(usable_mm > 0.0))
    {
      finding = hut_checking_add (self, "bed.size", HUT_SEVERITY_BLOCKS,
                                  N_ ("The margins leave {is} mm of the cutter's bed; it must be "
                                      "more than {must} mm."));
      hut_finding_set_numbers (finding, usable_mm, 0.0);
      return TRUE;
    }
  smallest = find_smallest_of_none (self);
  if (smallest == NULL)
    return FALSE;
  finding = hut_checking_add (self, "bed.size", HUT_SEVERITY_BLOCKS,
                              N_ ("No part goes on the bed: it takes {is} mm, and the smallest "
                                  "part is {must} mm."));
  hut_check_bed_numbers (cutter, smallest, &finding->must, &finding->is);
  return TRUE;
}

/* The part goes on the sheet, but only against the grain that is asked for. */
static void
add_grain_finding (HutChecking *self,
                   const HutPart *part)
{
  const HutPanel *panel = hut_check_part_panel (self->assembly, part);
  HutFinding *finding = hut_checking_add (
    self, "stock.grain", HUT_SEVERITY_WARNS,
    N_ ("{what} goes on a sheet of {other} only against the grain that is asked for."));

  hut_finding_set_names (finding, hut_check_part_name (self->assembly, part),
                         hut_check_name (part->stock->name, part->stock->id));
  hut_finding_set_item (finding, part->stock->id);
  if (panel != NULL)
    hut_finding_add_place (finding, panel, part_bounds (part));
}

void
hut_check_bed (HutChecking *self)
{
  if (check_whole_bed (self))
    return;
  for (guint i = 0; i < self->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (self->parts->parts, i);
      Room room;
      gboolean sheet;

      if (part_misses (&self->assembly->design->cutter, part, &room, &sheet))
        add_part_finding (self, part, &room, sheet);
      else if (!part->bought && !hut_part_keeps_grain (part, &self->assembly->design->cutter))
        add_grain_finding (self, part);
    }
}
