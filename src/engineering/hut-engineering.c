/* src/engineering/hut-engineering.c: all that the engineering says of a design, at once.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-engineering.h"
#include "engineering/hut-report.h"
#include <string.h>

HutEngineering *
hut_engineering_new (const HutAssembly *assembly,
                     const HutPartSet *parts)
{
  HutEngineering *self;
  HutReport report;

  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  self = g_new0 (HutEngineering, 1);
  self->figures = g_array_new (FALSE, FALSE, sizeof (HutFigure));
  g_array_set_clear_func (self->figures, (GDestroyNotify)hut_figure_clear);
  self->air_curves = g_array_new (FALSE, FALSE, sizeof (HutAirCurvePoint));
  self->hand = g_array_new (FALSE, FALSE, sizeof (HutHandPoint));
  if (!assembly->whole)
    return self;
  report = (HutReport) { assembly, parts, assembly->design, self };
  hut_report_air (&report);
  hut_report_heat (&report);
  hut_report_light (&report);
  hut_report_lid (&report);
  hut_report_stiffness (&report);
  hut_report_noise (&report);
  hut_report_finish (&report);
  return self;
}

void
hut_engineering_free (HutEngineering *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->figures);
  g_array_unref (self->air_curves);
  g_array_unref (self->hand);
  g_free (self);
}

const HutFigure *
hut_engineering_get (const HutEngineering *self,
                     const char *id)
{
  g_return_val_if_fail (self != NULL && id != NULL, NULL);

  for (guint i = 0; i < self->figures->len; i++)
    {
      const HutFigure *figure = &g_array_index (self->figures, HutFigure, i);

      if (strcmp (figure->id, id) == 0)
        return figure;
    }
  return NULL;
}
