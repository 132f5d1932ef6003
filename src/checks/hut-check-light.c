/* src/checks/hut-check-light.c: light that gets out in a straight line.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The design does not say what the machine shines with, so these are notes. They never say that
 * what they do not name is tight, or harmless. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "physics/hut-leak.h"
#include <glib/gi18n-lib.h>

static const char *
source_name (const HutLeak *leak)
{
  return hut_check_name (leak->body->name, leak->body->id);
}

/* The first leak of an opening; others of it come from other bodies. */
static gboolean
is_first_of_hole (const GArray *leaks,
                  guint index)
{
  const HutPlacedHole *hole = g_array_index (leaks, HutLeak, index).hole;

  for (guint i = 0; i < index; i++)
    if (g_array_index (leaks, HutLeak, i).hole == hole)
      return FALSE;
  return TRUE;
}

static void
add_opening (HutChecking *self,
             const HutLeak *leak)
{
  HutFinding *finding = hut_checking_add (self, "light.opening", HUT_SEVERITY_NOTES,
                                          N_ ("Light from {what} gets out through {other} in a "
                                              "straight line. With laser light or an arc "
                                              "that is dangerous: a plate before it, inside, with "
                                              "room for air at the sides, shades it."));

  hut_finding_set_names (finding, source_name (leak),
                         hut_check_item_name (self->assembly->design, leak->hole->item));
  hut_finding_set_item (finding, leak->hole->item);
  hut_finding_add_place (finding, hut_check_panel (self->assembly, leak->hole->panel),
                         leak->hole->bounds);
}

/* The panel that a leak comes out beside: the nearer one of its side. */
static const HutPanel *
panel_beside (const HutAssembly *assembly,
              const HutLeak *leak)
{
  const HutBox3 point = { leak->to, leak->to };
  const HutPanel *nearest = NULL;
  double nearest_mm = INFINITY;

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);
      const HutBox3 box = hut_frame3_box (
          &panel->frame, (HutRect) { 0, 0, panel->width_mm, panel->height_mm }, 0, 0);
      const double apart_mm = hut_box3_distance_mm (&box, &point);

      if (panel->id.side == leak->side && apart_mm < nearest_mm)
        {
          nearest = panel;
          nearest_mm = apart_mm;
        }
    }
  return nearest;
}

/* One finding for all gaps: they are cured alike. */
static void
add_gaps (HutChecking *self,
          const GArray *leaks)
{
  HutFinding *finding = NULL;
  gboolean marked[HUT_SIDE_COUNT] = { FALSE };

  for (guint i = 0; i < leaks->len; i++)
    {
      const HutLeak *leak = &g_array_index (leaks, HutLeak, i);
      const HutPanel *panel;
      HutBox3 spot;

      if (leak->hole != NULL || marked[leak->side])
        continue;
      marked[leak->side] = TRUE;
      if (finding == NULL)
        {
          finding = hut_checking_add (
              self, "light.gap", HUT_SEVERITY_NOTES,
              N_ ("Light from {what} gets out between base and lid in a straight line: the gap is "
                  "{is} mm. With laser light or an arc that is dangerous: a baffle along the seam "
                  "shades it."));
          hut_finding_set_names (finding, source_name (leak), NULL);
          hut_finding_set_numbers (finding, self->assembly->design->shell.seam_gap_mm, 0);
        }
      panel = panel_beside (self->assembly, leak);
      spot = (HutBox3) { leak->to, leak->to };
      if (panel != NULL)
        hut_finding_add_shadow (finding, panel, &spot);
    }
}

void
hut_check_light (HutChecking *self)
{
  g_autoptr(GArray) leaks = NULL;

  if (!self->assembly->whole)
    return;
  leaks = hut_leaks_find (self->assembly, self->parts);
  for (guint i = 0; i < leaks->len; i++)
    {
      const HutLeak *leak = &g_array_index (leaks, HutLeak, i);

      if (leak->hole != NULL && is_first_of_hole (leaks, i))
        add_opening (self, leak);
    }
  add_gaps (self, leaks);
}
