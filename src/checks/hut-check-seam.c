/* src/checks/hut-check-seam.c: openings and windows against the splices of their panel and its
 * straps. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-strap.h"
#include "checks/hut-border.h"
#include "checks/hut-check-hole.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Room between a cutout and the strap of a seam, mm: common practice, no source. */
#define STRAP_ROOM_MM 5.0

/* A splice may run into a window from both sides: it then parts the two legs of the frame. */
static gboolean
is_crossed_on_purpose (const HutPlacedHole *hole,
                       const HutSplice *splice)
{
  const double from_mm = splice->vertical ? hole->bounds.u0 : hole->bounds.v0;
  const double to_mm = splice->vertical ? hole->bounds.u1 : hole->bounds.v1;

  return hole->source == HUT_HOLE_WINDOW && from_mm < splice->at_mm && splice->at_mm < to_mm;
}

static HutSegment
splice_line (const HutSplice *splice)
{
  return splice->vertical ? (HutSegment) { { splice->at_mm, splice->from_mm },
                                          { splice->at_mm, splice->to_mm } }
                          : (HutSegment) { { splice->from_mm, splice->at_mm },
                                          { splice->to_mm, splice->at_mm } };
}

static gboolean
find_splice_gap (const HutCheckHole *hole,
                 const HutSplice *splice,
                 double limit_mm,
                 HutWeb *gap)
{
  const HutSegment line = splice_line (splice);
  const HutRect bounds = hut_segment_bounds (&line);
  gboolean found = FALSE;

  if (is_crossed_on_purpose (hole->placed, splice))
    return FALSE;
  for (guint i = 0; i < hole->placed->paths->len; i++)
    if (hut_check_rects_apart_mm (&bounds, &hole->bounds[i]) < limit_mm
        && hut_border_find_segment_gap (&line, g_ptr_array_index (hole->placed->paths, i),
                                        limit_mm, gap))
      {
        limit_mm = gap->width_mm;
        found = TRUE;
      }
  return found;
}

/* The nearest splice of the panel: its fingers need their reach and a web; the strap behind it
 * its half width. */
static void
check_splices (HutChecking *self,
               const HutCheckHole *hole)
{
  const HutJoints *joints = &self->assembly->design->joints;
  const double web_mm = hole->panel->stock->smallest_web_mm;
  /* The frame of a window ends the strap before its screws do. */
  const double strap_mm
      = joints->straps && hole->placed->source != HUT_HOLE_SCREWS
            ? hut_strap_width_mm (self->assembly->design, hole->panel) / 2.0 + STRAP_ROOM_MM
            : 0.0;
  const HutSplice *nearest = NULL;
  HutFinding *finding;
  gboolean in_reach;
  HutWeb gap = { .width_mm = INFINITY };

  for (guint i = 0; i < self->parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (self->parts->splices, HutSplice, i);
      const double limit_mm = MAX (splice->reach_mm + web_mm, strap_mm) - HUT_CHECK_TOLERANCE_MM;

      if (splice->panel == hole->placed->panel && splice->of == HUT_PART_PANEL
          && find_splice_gap (hole, splice, MIN (limit_mm, gap.width_mm), &gap))
        nearest = splice;
    }
  if (nearest == NULL)
    return;
  in_reach = gap.width_mm < nearest->reach_mm + web_mm - HUT_CHECK_TOLERANCE_MM;
  finding = hut_check_hole_add (
      hole, self, "opening.splice", in_reach ? HUT_SEVERITY_WARNS : HUT_SEVERITY_NOTES,
      in_reach
          ? N_ ("{what} is {is} mm from a splice of {other}; its fingers need {must} mm.")
          : N_ ("{what} is {is} mm from a splice of {other} and interrupts its strap; {must} "
                "mm would leave it whole."),
      hut_panel_name (hole->panel->id));
  hut_finding_set_numbers (finding, gap.width_mm,
                           in_reach ? nearest->reach_mm + web_mm : strap_mm);
  hut_finding_add_gap (finding, hole->panel, gap.a, gap.b);
}

/* A strap over a hole closes it. */
static void
check_strap (HutChecking *self,
             const HutCheckHole *hole,
             const HutPart *strap)
{
  const HutRect bounds = hut_region_bounds (strap->region);

  for (guint i = 0; i < hole->placed->paths->len; i++)
    {
      HutFinding *finding;
      HutWeb gap;

      if (hut_check_rects_apart_mm (&bounds, &hole->bounds[i]) > 0.0
          || !hut_check_material_between (g_ptr_array_index (hole->placed->paths, i),
                                          strap->region->outer, HUT_CHECK_TOLERANCE_MM, &gap))
        continue;
      finding = hut_check_hole_add (hole, self, "opening.splice", HUT_SEVERITY_BLOCKS,
                                    N_ ("A strap behind {other} lies over {what}: {is} mm are "
                                        "between them, {must} mm are wanted."),
                                    hut_panel_name (hole->panel->id));
      hut_finding_set_numbers (finding, gap.width_mm, HUT_STRAP_GAP_MM);
      hut_finding_add_place (finding, hole->panel, hole->placed->bounds);
      return;
    }
}

void
hut_check_seam (HutChecking *self)
{
  g_autoptr(GPtrArray) holes = hut_check_holes_new (self->assembly);

  for (guint i = 0; i < holes->len; i++)
    {
      const HutCheckHole *hole = g_ptr_array_index (holes, i);

      if (!hole->placed->cut)
        continue;
      check_splices (self, hole);
      for (guint k = 0; k < self->parts->parts->len; k++)
        {
          const HutPart *part = g_ptr_array_index (self->parts->parts, k);

          if (part->kind == HUT_PART_STRAP && part->panel == hole->placed->panel)
            check_strap (self, hole, part);
        }
    }
}
