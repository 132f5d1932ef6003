/* src/engineering/hut-stiffness-report.c: how far tops, windows and the bottom sag.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-panel-sag.h"
#include "physics/hut-plate-bend.h"
#include "physics/hut-stuff.h"
#include <glib/gi18n-lib.h>

#define M_PER_MM 1e-3
#define MM_PER_M 1000.0
#define PA_PER_GPA 1e9
/* Sag that the eye sees, as a share of the span: 1/32 inch a foot (article on shelves, 2019). */
#define SEEN_RATIO (1.0 / 384)

#define SOURCE                                                                                     \
  N_ ("Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 1959; seen from span / 384 " \
      "on (article on shelves, 2019); what it comes to over years is in it.")

static void
add (HutReport *self,
     const char *id,
     const char *good,
     const char *bad,
     const char *what,
     const HutStock *stock,
     double thickness_mm,
     double sag_mm,
     double span_mm)
{
  const gboolean seen = sag_mm > SEEN_RATIO * span_mm;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_STIFFNESS, id);

  hut_figure_say (figure, seen ? bad : good, sag_mm, HUT_FIGURE_MM, seen);
  figure->what = g_strdup (what);
  figure->limit = SEEN_RATIO * span_mm;
  hut_figure_explain (figure, "y = alpha q b4 / (E t3)", SOURCE);
  hut_figure_put (figure, "b", N_ ("shorter way between supports"), span_mm, HUT_FIGURE_MM);
  hut_figure_put (figure, "t", N_ ("thickness"), thickness_mm, HUT_FIGURE_MM);
  hut_figure_put (figure, "E", N_ ("stiffness of the stock, low end"),
                  hut_stuff_modulus_pa (stock->material) / PA_PER_GPA, HUT_FIGURE_GPA);
}

static void
add_tops (HutReport *self)
{
  for (guint i = 0; i < self->assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (self->assembly->panels, i);
      HutPanelSag sag;

      if (panel->id.side == HUT_SIDE_TOP
          && hut_panel_sag_find (self->assembly, self->parts, i, &sag))
        add (self, "stiffness.top", N_ ("The top sags less than the eye notices."),
             N_ ("The top sags so far that the eye notices."), NULL, panel->stock,
             panel->thickness_mm,
             sag.sag_m * MM_PER_M, sag.span_m * MM_PER_M);
    }
}

static double
plate_sag_mm (const HutStock *stock,
              double width_mm,
              double height_mm,
              double thickness_mm,
              double load_pa)
{
  const HutPlateSheet plate
      = { HUT_PLATE_SUPPORTED,
          width_mm * M_PER_MM,
          height_mm * M_PER_MM,
          thickness_mm * M_PER_MM,
          hut_stuff_modulus_pa (stock->material),
          hut_stuff_poisson_ratio (stock->material) };

  return hut_plate_sag_m (&plate, load_pa) * hut_stuff_creep_ratio (stock->material) * MM_PER_M;
}

static void
add_glazing (HutReport *self)
{
  for (guint i = 0; i < self->assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (self->assembly->plates, i);
      const HutPanel *panel = g_ptr_array_index (self->assembly->panels, plate->panel);
      const HutRect box = hut_region_bounds (plate->region);
      const double width_mm = box.u1 - box.u0, height_mm = box.v1 - box.v0;
      const double thickness_mm = plate->depth1_mm - plate->depth0_mm;
      double sag_mm;

      if (plate->kind != HUT_SOLID_GLAZING || panel->id.side != HUT_SIDE_TOP)
        continue;
      sag_mm = plate_sag_mm (
          plate->stock, width_mm, height_mm, thickness_mm,
          hut_own_weight_pa (plate->stock->density_kg_m3, thickness_mm * M_PER_MM));
      if (isfinite (sag_mm))
        add (self, "stiffness.window", N_ ("The pane of “{what}” sags less than the eye notices."),
             N_ ("The pane of “{what}” sags so far that the eye notices."),
             plate->window->name != NULL && *plate->window->name != '\0' ? plate->window->name
                                                                         : plate->window->id,
             plate->stock, thickness_mm, sag_mm, MIN (width_mm, height_mm));
    }
}

/* The machine's weight is spread over the bottom, which lies on its four edges: feet in the corners
 * and no bench under its middle. */
static void
add_bottom (HutReport *self)
{
  const HutPanel *panel
      = hut_assembly_get_panel (self->assembly, (HutPanelId) { HUT_SHELL_BASE, HUT_SIDE_BOTTOM });
  double area_m2, load_pa, sag_mm;

  if (panel == NULL)
    return;
  area_m2 = panel->width_mm * panel->height_mm * M_PER_MM * M_PER_MM;
  load_pa = self->design->machine.mass_kg * HUT_GRAVITY_M_S2 / area_m2
            + hut_own_weight_pa (panel->stock->density_kg_m3, panel->thickness_mm * M_PER_MM);
  sag_mm = plate_sag_mm (panel->stock, panel->width_mm, panel->height_mm, panel->thickness_mm,
                         load_pa);
  if (isfinite (sag_mm))
    add (self, "stiffness.bottom",
         N_ ("On feet at its edges, the bottom sags little under the machine."),
         N_ ("On feet at its edges, the bottom sags under the machine: put feet under the middle, "
             "or stand it on the bench."),
         NULL, panel->stock, panel->thickness_mm, sag_mm,
         MIN (panel->width_mm, panel->height_mm));
}

void
hut_report_stiffness (HutReport *self)
{
  add_tops (self);
  add_glazing (self);
  add_bottom (self);
}
