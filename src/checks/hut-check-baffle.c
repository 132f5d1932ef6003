/* src/checks/hut-check-baffle.c: strips along the seam: overlap, and what stands in their way.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-strip.h"
#include "checks/hut-check-hole.h"
#include <glib/gi18n-lib.h>

/* A baffle overlaps by this much of its gap, and by this much at least, mm: common practice, no
 * source. */
#define OVERLAP_RATIO 3.0
#define OVERLAP_LEAST_MM 12.0

/* Overlaps that are not deeper than this are touches, mm. */
#define TOUCH_MM HUT_GRID_MM

static HutFinding *
add_finding (HutChecking *self,
             const HutStrip *strip,
             const char *check,
             HutSeverity severity,
             const char *message,
             const char *other)
{
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, hut_baffle_name (strip->baffle->side), other);
  return finding;
}

static void
check_overlap (HutChecking *self,
               const HutStrip *strip)
{
  const double must_mm = MAX (OVERLAP_LEAST_MM, OVERLAP_RATIO * strip->gap_mm);
  HutFinding *finding;

  if (strip->baffle->overlap_mm >= must_mm - HUT_CHECK_TOLERANCE_MM)
    return;
  finding = add_finding (self, strip, "baffle.overlap", HUT_SEVERITY_WARNS,
                         N_ ("The {what} reaches {is} mm past the seam; with a gap of {at} mm, "
                             "{must} mm keep light from passing straight through."),
                         NULL);
  hut_finding_set_numbers (finding, strip->baffle->overlap_mm, must_mm);
  finding->at = strip->gap_mm;
  hut_finding_add_place (finding, hut_check_panel (self->assembly, strip->panel), strip->rect);
}

/* Plates of windows are told by the glazing check, the next strip by the earlier one. */
static gboolean
is_told_elsewhere (const HutAssembly *assembly,
                   guint index,
                   const HutSolid *solid)
{
  const HutStrip *strip = &g_array_index (assembly->strips, HutStrip, index);

  if (solid->kind == HUT_SOLID_GLAZING || solid->kind == HUT_SOLID_FRAME)
    return TRUE;
  if (solid->kind != HUT_SOLID_BAFFLE)
    return FALSE;
  for (guint i = 0; i <= index; i++)
    if (g_array_index (assembly->strips, HutStrip, i).panel == solid->panel)
      return TRUE;
  return strip->panel == solid->panel;
}

static void
check_solids (HutChecking *self,
              guint index,
              const GArray *solids)
{
  const HutStrip *strip = &g_array_index (self->assembly->strips, HutStrip, index);

  for (guint i = 0; i < solids->len; i++)
    {
      const HutSolid *solid = &g_array_index (solids, HutSolid, i);
      const double deep_mm = hut_box3_overlap_mm (&strip->box, &solid->box);
      HutFinding *finding;

      if (deep_mm <= TOUCH_MM || is_told_elsewhere (self->assembly, index, solid))
        continue;
      finding = add_finding (
          self, strip, "baffle.place", HUT_SEVERITY_BLOCKS,
          solid->kind == HUT_SOLID_STRAP
              ? N_ ("The {what} runs {is} mm into a strap on {other}; {must} mm is allowed.")
          : solid->kind == HUT_SOLID_LEDGE
              ? N_ ("The {what} runs {is} mm into the ledge on {other}; {must} mm is allowed.")
              : N_ ("The {what} runs {is} mm into {other}; {must} mm is allowed."),
          hut_check_solid_name (self->assembly, solid));
      hut_finding_set_numbers (finding, deep_mm, 0.0);
      hut_finding_add_shadow (finding, hut_check_panel (self->assembly, solid->panel),
                              &strip->box);
    }
}

/* Openings of both shells' walls on that side. */
static void
check_holes (HutChecking *self,
             const HutStrip *strip,
             const GPtrArray *holes)
{
  for (guint i = 0; i < holes->len; i++)
    {
      const HutCheckHole *hole = g_ptr_array_index (holes, i);
      const HutRect bounds = hole->placed->bounds;
      HutFinding *finding;
      HutRect shadow;
      double deep_mm;

      if (hole->panel->id.side != strip->baffle->side || !hole->placed->cut)
        continue;
      shadow = hut_frame3_shadow (&hole->panel->frame, &strip->box);
      deep_mm = MIN (MIN (bounds.u1 - shadow.u0, shadow.u1 - bounds.u0),
                     MIN (bounds.v1 - shadow.v0, shadow.v1 - bounds.v0));
      if (deep_mm <= TOUCH_MM)
        continue;
      finding = add_finding (self, strip, "baffle.opening", HUT_SEVERITY_WARNS,
                             N_ ("The {what} stands {is} mm in front of {other} and covers it; "
                                 "{must} mm is allowed."),
                             hut_check_hole_name (hole, self->assembly));
      hut_finding_set_numbers (finding, deep_mm, 0.0);
      hut_finding_set_item (finding, hole->placed->item);
      hut_finding_add_place (finding, hole->panel, bounds);
    }
}

/* One note for all: they are filled alike. */
static void
tell_beads (HutChecking *self,
            const GArray *strips)
{
  HutFinding *finding = NULL;
  HutBox3 beads[2];

  for (guint i = 0; i < strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (strips, HutStrip, i);

      if (hut_strip_find_beads (self->assembly, strip, beads) == 0)
        continue;
      if (finding == NULL)
        {
          finding = hut_checking_add (self, "baffle.bead", HUT_SEVERITY_NOTES,
                                      N_ ("Fill the {is} mm between the ends of the baffles with "
                                          "black sealant: through an open slot light reaches the "
                                          "seam in a straight line."));
          hut_finding_set_numbers (finding, HUT_STRIP_JOIN_MM, 0.0);
        }
      hut_finding_add_place (finding, hut_check_panel (self->assembly, strip->panel), strip->rect);
    }
}

void
hut_check_baffle (HutChecking *self)
{
  const GArray *strips = self->assembly->strips;
  g_autoptr(GPtrArray) holes = NULL;

  if (strips->len == 0)
    return;
  holes = hut_check_holes_new (self->assembly);
  for (guint i = 0; i < strips->len; i++)
    {
      const HutStrip *strip = &g_array_index (strips, HutStrip, i);

      check_overlap (self, strip);
      check_solids (self, i, self->assembly->solids);
      check_solids (self, i, self->parts->solids);
      check_holes (self, strip, holes);
    }
  tell_beads (self, strips);
}
