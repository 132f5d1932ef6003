/* src/engineering/hut-heat-report.c: how warm it gets inside.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-air.h"
#include "physics/hut-heat.h"
#include "physics/hut-unit.h"
#include <glib/gi18n-lib.h>

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6

static double
conducts_w_mk (HutMaterial material)
{
  switch (material)
    {
    case HUT_MATERIAL_PLYWOOD:
      return HUT_CONDUCTS_PLYWOOD_W_MK;
    case HUT_MATERIAL_ACRYLIC:
      return HUT_CONDUCTS_ACRYLIC_W_MK;
    case HUT_MATERIAL_POLYCARBONATE:
      return HUT_CONDUCTS_POLYCARBONATE_W_MK;
    case HUT_MATERIAL_MDF:
    case HUT_MATERIAL_HDF:
    case HUT_MATERIAL_OTHER:
    default:
      return HUT_CONDUCTS_BOARD_W_MK;
    }
}

/* Of all panels but the bottom, which stands on the bench; W/K. Windows count as their panel: thin
 * glazing lets a little more through. */
static double
walls_w_k (const HutAssembly *assembly)
{
  double sum_w_k = 0;

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (panel->id.side != HUT_SIDE_BOTTOM)
        sum_w_k += panel->width_mm * panel->height_mm * M2_PER_MM2
                   * hut_wall_u_w_m2k (panel->thickness_mm * M_PER_MM,
                                       conducts_w_mk (panel->stock->material),
                                       HUT_FILM_STILL_M2K_W, HUT_FILM_STILL_M2K_W);
    }
  return sum_w_k;
}

#define FORMULA "dT = P / (rho cp Q + sum U A)"

static void
put_inputs (HutFigure *figure,
            double heat_w,
            double flow_m3_s,
            double walls,
            double density_kg_m3)
{
  hut_figure_explain (figure, FORMULA,
                      N_ ("Energy balance, steady state, air well mixed; walls after ASHRAE "
                          "Fundamentals as reproduced in R-value tables."));
  hut_figure_put (figure, "P", N_ ("heat inside"), heat_w, HUT_FIGURE_W);
  hut_figure_put (figure, "Q", N_ ("flow of air"), flow_m3_s / HUT_M3_H_M3_S, HUT_FIGURE_M3_H);
  hut_figure_put (figure, "rho", N_ ("density of air"), density_kg_m3, HUT_FIGURE_KG_M3);
  hut_figure_put (figure, "sum U A", N_ ("all walls but the bottom"), walls, HUT_FIGURE_W_K);
}

static void
add_inside (HutReport *self,
            const char *id,
            const char *good,
            const char *bad,
            double rise_k)
{
  const double room_c = self->design->room_mm.temperature_c;
  const double limit_c = self->design->machine.work.warmest_c;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_HEAT, id);
  gboolean over;

  if (!HUT_IS_KNOWN (room_c))
    {
      hut_figure_ask (figure, N_ ("Enter the room's temperature on a warm day."), "measure");
      return;
    }
  if (!HUT_IS_KNOWN (limit_c))
    {
      hut_figure_ask (figure, N_ ("Enter up to what temperature of the air the machine may work."),
                      "measure");
      return;
    }
  over = room_c + rise_k > limit_c;
  hut_figure_say (figure, over ? bad : good, room_c + rise_k, HUT_FIGURE_C, over);
  figure->limit = limit_c;
  hut_figure_explain (figure, "T = T room + dT",
                      N_ ("The limit is what you entered from the maker of the machine."));
  hut_figure_put (figure, "T room", N_ ("the room on a warm day"), room_c, HUT_FIGURE_C);
  hut_figure_put (figure, "dT", N_ ("rise inside"), rise_k, HUT_FIGURE_K);
  hut_figure_put (figure, "T max", N_ ("what the machine may have"), limit_c, HUT_FIGURE_C);
}

void
hut_report_heat (HutReport *self)
{
  const HutWork *work = &self->design->machine.work;
  const HutAirGuess guess = hut_air_guess_of (self->design);
  const double density_kg_m3
      = hut_air_in_room (guess.temperature_c, guess.altitude_m).density_kg_m3;
  const double walls = walls_w_k (self->assembly), flow_m3_s = self->out->air.point.flow_m3_s;
  const double heat_w = work->power_w + MAX (work->lamp_w, 0);
  GArray *figures = self->out->figures;
  double still_k, moving_k;
  HutFigure *figure = hut_figure_add (figures, HUT_SUBJECT_HEAT, "heat.still");

  if (!HUT_IS_KNOWN (work->power_w))
    {
      hut_figure_ask (figure, N_ ("Enter the mean power of the machine: it ends as heat inside."),
                      "measure");
      return;
    }
  still_k = hut_heat_rise_k (heat_w, 0, walls, density_kg_m3);
  hut_figure_say (figure,
                  N_ ("With the fan off, the air inside gets so much warmer than the room."),
                  still_k, HUT_FIGURE_K, FALSE);
  put_inputs (figure, heat_w, 0, walls, density_kg_m3);
  add_inside (self, "heat.still-inside",
              N_ ("With the fan off it gets this warm inside: within what the machine may have."),
              N_ ("With the fan off it gets too warm inside for the machine."), still_k);
  if (!self->out->air.moves)
    return;
  moving_k = hut_heat_rise_k (heat_w, flow_m3_s, walls, density_kg_m3);
  figure = hut_figure_add (figures, HUT_SUBJECT_HEAT, "heat.fan");
  hut_figure_say (figure, N_ ("With the fan on, the air inside gets so much warmer than the room."),
                  moving_k, HUT_FIGURE_K, FALSE);
  put_inputs (figure, heat_w, flow_m3_s, walls, density_kg_m3);
  add_inside (self, "heat.fan-inside",
              N_ ("With the fan on it gets this warm inside: within what the machine may have."),
              N_ ("Even with the fan on it gets too warm inside for the machine."), moving_k);
}
