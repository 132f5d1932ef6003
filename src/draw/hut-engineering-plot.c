/* src/draw/hut-engineering-plot.c: the curves that the engineering shows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-engineering-plot.h"
#include "physics/hut-unit.h"
#include <glib/gi18n-lib.h>

/* The system's curve is cut off so far over the fans' peak. Own choice. */
#define OVER_PEAK_RATIO 1.15

HutPlot *
hut_engineering_plot_air (const HutEngineering *self,
                          HutTranslate translate,
                          const char *decimal_point)
{
  g_autoptr(HutPlot) plot = NULL;
  GArray *fans, *system;
  double peak_pa = 0;

  g_return_val_if_fail (self != NULL, NULL);

  if (self->air_curves->len == 0)
    return NULL;
  plot = hut_plot_new (N_ ("Fan against duct and openings"), N_ ("Flow, m³/h"),
                       N_ ("Pressure, Pa"));
  fans = hut_plot_add_series (plot, N_ ("what the fan makes"), HUT_LINE_SOLID);
  system = hut_plot_add_series (plot, N_ ("what duct and openings take"), HUT_LINE_HIDDEN);
  for (guint i = 0; i < self->air_curves->len; i++)
    {
      const HutAirCurvePoint *point = &g_array_index (self->air_curves, HutAirCurvePoint, i);
      const double flow_m3_h = point->flow_m3_s / HUT_M3_H_M3_S;
      const HutPoint made = { flow_m3_h, point->fans_pa };
      const HutPoint taken = { flow_m3_h, point->system_pa };

      g_array_append_val (fans, made);
      g_array_append_val (system, taken);
      peak_pa = MAX (peak_pa, point->fans_pa);
    }
  plot->v_top = peak_pa * OVER_PEAK_RATIO;
  if (self->air.moves)
    {
      const double flow_m3_h = self->air.point.flow_m3_s / HUT_M3_H_M3_S;

      hut_plot_add_mark (plot, (HutPoint) { flow_m3_h, self->air.point.pressure_pa },
                         hut_figure_dup_number (flow_m3_h, HUT_FIGURE_M3_H, translate,
                                                decimal_point));
    }
  return g_steal_pointer (&plot);
}

HutPlot *
hut_engineering_plot_lid (const HutEngineering *self,
                          HutTranslate translate,
                          const char *decimal_point)
{
  g_autoptr(HutPlot) plot = NULL;
  GArray *bare, *held;
  guint worst = 0;

  g_return_val_if_fail (self != NULL, NULL);

  if (self->hand->len == 0)
    return NULL;
  plot = hut_plot_new (N_ ("Force of a hand at the lid's far end"), N_ ("Lid open by, degrees"),
                       N_ ("Force, N (over 0: lift)"));
  bare = hut_plot_add_series (plot, N_ ("lid alone"),
                              self->spring.found ? HUT_LINE_HIDDEN : HUT_LINE_SOLID);
  held = self->spring.found ? hut_plot_add_series (plot, N_ ("with gas springs"), HUT_LINE_SOLID)
                            : bare;
  for (guint i = 0; i < self->hand->len; i++)
    {
      const HutHandPoint *point = &g_array_index (self->hand, HutHandPoint, i);
      const HutPoint alone = { point->angle_deg, point->bare_n };
      const HutPoint helped = { point->angle_deg, point->held_n };

      g_array_append_val (bare, alone);
      if (held != bare)
        g_array_append_val (held, helped);
      if (fabs (point->held_n) > fabs (g_array_index (self->hand, HutHandPoint, worst).held_n))
        worst = i;
    }
  const HutHandPoint *most = &g_array_index (self->hand, HutHandPoint, worst);

  hut_plot_add_mark (plot, (HutPoint) { most->angle_deg, most->held_n },
                     hut_figure_dup_number (most->held_n, HUT_FIGURE_N, translate,
                                            decimal_point));
  return g_steal_pointer (&plot);
}
