/* src/checks/hut-check-cut.c: what the cutter makes of each part: kerf, webs, small holes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-check-hole.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* A laser cuts holes round and usable from half a thickness on, and from 1 mm on; a router's tool
 * needs this much more than its own diameter. Common practice, no source. */
#define LASER_HOLE_RATIO 0.5
#define LASER_HOLE_LEAST_MM 1.0
#define ROUTER_HOLE_MORE_MM 0.2

/* A web under this share of what the stock holds will not survive the cut. Own choice. */
#define WEB_BLOCKS_RATIO 0.5

static HutFinding *
add_finding (HutChecking *self,
             const HutPart *part,
             const char *check,
             HutSeverity severity,
             const char *message)
{
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, hut_check_part_name (self->assembly, part), part->label);
  hut_finding_set_item (finding, part->item);
  return finding;
}

/* ---- webs ---------------------------------------------------------------------------------- */

static gboolean
rects_meet (const HutRect *a,
            const HutRect *b)
{
  return hut_check_rects_apart_mm (a, b) <= 0.0;
}

/* Whether another check has marked that web before: it says the same, by the opening's name.
 * @blocks: of a web that will not survive only one that blocks as well says the same. */
static gboolean
is_told_already (const HutChecking *self,
                 HutPanelId panel,
                 const HutWeb *web,
                 gboolean blocks)
{
  const HutRect rect = { MIN (web->a.u, web->b.u), MIN (web->a.v, web->b.v),
                         MAX (web->a.u, web->b.u), MAX (web->a.v, web->b.v) };

  for (guint i = 0; i < self->findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (self->findings, i);

      if (blocks && strcmp (finding->check, "fastener.web") != 0)
        continue;
      if (strcmp (finding->check, "opening.edge") != 0
          && strcmp (finding->check, "opening.overlap") != 0
          && strcmp (finding->check, "fastener.web") != 0)
        continue;
      for (guint k = 0; k < finding->places->len; k++)
        {
          const HutPlace *place = &g_array_index (finding->places, HutPlace, k);

          if (hut_panel_id_equal (place->panel, panel) && rects_meet (&place->rect, &rect))
            return TRUE;
        }
    }
  return FALSE;
}

static void
check_web (HutChecking *self,
           const HutPart *part)
{
  const double must_mm = part->stock->smallest_web_mm;
  const HutPanel *panel = hut_check_part_panel (self->assembly, part);
  HutFinding *finding;
  gboolean blocks;
  HutWeb web;

  if (!hut_region_find_web (part->region, must_mm - HUT_CHECK_TOLERANCE_MM, &web))
    return;
  blocks = web.width_mm < must_mm * WEB_BLOCKS_RATIO;
  if (panel != NULL && is_told_already (self, panel->id, &web, blocks))
    return;
  finding = add_finding (
      self, part, "cut.web", blocks ? HUT_SEVERITY_BLOCKS : HUT_SEVERITY_WARNS,
      N_ ("A web of {what} (part {other}) is {is} mm wide; its stock holds {must} mm."));
  hut_finding_set_numbers (finding, web.width_mm, must_mm);
  if (panel != NULL)
    hut_finding_add_gap (finding, panel, web.a, web.b);
}

/* ---- kerf ---------------------------------------------------------------------------------- */

/* The narrowest thing that the tool has to pass: a hole, else the part itself. */
static HutRect
narrowest (const HutPart *part,
           double *width_mm)
{
  HutRect found = hut_region_bounds (part->region);

  *width_mm = MIN (found.u1 - found.u0, found.v1 - found.v0);
  for (guint i = 0; i < part->region->holes->len; i++)
    {
      const HutRect hole = hut_path_bounds (g_ptr_array_index (part->region->holes, i));
      const double hole_mm = MIN (hole.u1 - hole.u0, hole.v1 - hole.v0);

      if (hole_mm < *width_mm)
        {
          found = hole;
          *width_mm = hole_mm;
        }
    }
  return found;
}

/* The place that an error of the offset names, "... at (u, v) mm": see hut_region_dup_offset (). */
static gboolean
find_named_place (const GError *error,
                  HutPoint *place)
{
  const char *start = error != NULL ? strrchr (error->message, '(') : NULL;
  char *comma, *end;

  if (start == NULL)
    return FALSE;
  place->u = g_ascii_strtod (start + 1, &comma);
  if (comma == start + 1 || *comma != ',')
    return FALSE;
  place->v = g_ascii_strtod (comma + 1, &end);
  return end != comma + 1 && *end == ')' && isfinite (place->u) && isfinite (place->v);
}

static void
check_kerf (HutChecking *self,
            const HutPart *part)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(HutRegion) cut = hut_part_dup_cut (part, &error);
  const HutPanel *panel = hut_check_part_panel (self->assembly, part);
  HutFinding *finding;
  HutRect narrow;
  HutPoint place;
  double width_mm;

  if (cut != NULL)
    return;
  narrow = narrowest (part, &width_mm);
  finding
      = add_finding (self, part, "cut.kerf", HUT_SEVERITY_BLOCKS,
                     N_ ("The cut swallows an edge, a hole or a web of {what} (part {other}), "
                         "whose narrowest hole or side "
                         "is {is} mm; the kerf is {must} mm."));
  hut_finding_set_numbers (finding, width_mm, part->stock->kerf_mm);
  if (panel == NULL)
    return;
  if (find_named_place (error, &place))
    hut_finding_add_gap (finding, panel, place, place);
  else
    hut_finding_add_place (finding, panel, narrow);
}

/* ---- small holes
 * -------------------------------------------------------------------------------- */

static double
least_hole_mm (const HutCutter *cutter,
               const HutPanel *panel)
{
  if (cutter->kind == HUT_CUTTER_ROUTER)
    return panel->stock->kerf_mm
           + ROUTER_HOLE_MORE_MM; /* the kerf of a router is its tool's diameter */
  return MAX (LASER_HOLE_RATIO * panel->thickness_mm, LASER_HOLE_LEAST_MM);
}

/* The narrowest breadth of an opening or window, mm. */
static double
breadth_mm (const HutDesign *design,
            const HutPlacedHole *hole)
{
  const HutOpening *opening
      = hole->source == HUT_HOLE_OPENING ? hut_design_get_opening (design, hole->item) : NULL;
  const HutWindow *window
      = hole->source == HUT_HOLE_WINDOW ? hut_design_get_window (design, hole->item) : NULL;

  if (window != NULL)
    return MIN (window->width_mm, window->height_mm);
  if (opening == NULL)
    return INFINITY;
  switch (opening->shape)
    {
    case HUT_SHAPE_ROUND:
    case HUT_SHAPE_PATTERN:
      return opening->diameter_mm;
    default:
      return MIN (opening->width_mm, opening->height_mm);
    }
}

static void
check_hole (HutChecking *self,
            const HutCheckHole *hole)
{
  const HutDesign *design = self->assembly->design;
  const double is_mm = breadth_mm (design, hole->placed),
               must_mm = least_hole_mm (&design->cutter, hole->panel);
  HutFinding *finding;

  if (is_mm >= must_mm - HUT_CHECK_TOLERANCE_MM)
    return;
  finding = hut_check_hole_add (
      hole, self, "cut.hole", HUT_SEVERITY_WARNS,
      design->cutter.kind == HUT_CUTTER_ROUTER
          ? N_ ("{what} is {is} mm across; the tool needs {must} mm.")
          : N_ (
              "{what} is {is} mm across; from {must} mm on a laser cuts holes round in {other}."),
      hut_panel_name (hole->panel->id));
  hut_finding_set_numbers (finding, is_mm, must_mm);
  hut_finding_add_place (finding, hole->panel, hole->placed->bounds);
}

void
hut_check_cut (HutChecking *self)
{
  g_autoptr(GPtrArray) holes = hut_check_holes_new (self->assembly);

  for (guint i = 0; i < holes->len; i++)
    check_hole (self, g_ptr_array_index (holes, i));
  for (guint i = 0; i < self->parts->parts->len; i++)
    {
      const HutPart *part = g_ptr_array_index (self->parts->parts, i);

      if (part->bought)
        continue;
      check_web (self, part);
      check_kerf (self, part);
    }
}
