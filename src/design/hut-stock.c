/* src/design/hut-stock.c: a sheet material as measured, and its recipe on the cutter.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

/* A new stock is laser-cut 6 mm plywood, as small shops sell it. All common practice, no source:
 * the numbers are where an owner starts measuring, not where he ends. */
#define NOMINAL_MM 6.0
#define READING_MM 5.95
#define SHEET_WIDTH_MM 1200.0
#define SHEET_DEPTH_MM 600.0
#define DENSITY_KG_M3 680.0
#define WEB_MM 6.0 /* one thickness */
#define KERF_MM 0.2
#define KERF_ERROR_MM 0.03
#define SPEED_MM_MIN 300.0
#define POWER_PERCENT 90.0

HutStock *
hut_stock_new (const char *id)
{
  g_return_val_if_fail (id != NULL, NULL);

  HutStock *self = g_new0 (HutStock, 1);
  const double reading_mm = READING_MM;

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->material = HUT_MATERIAL_PLYWOOD;
  self->nominal_mm = NOMINAL_MM;
  self->readings_mm = g_array_new (FALSE, FALSE, sizeof (double));
  g_array_append_val (self->readings_mm, reading_mm);
  self->sheet_width_mm = SHEET_WIDTH_MM;
  self->sheet_depth_mm = SHEET_DEPTH_MM;
  self->density_kg_m3 = DENSITY_KG_M3;
  self->smallest_web_mm = WEB_MM;
  self->fit = HUT_FIT_GLUE;
  self->allowance_mm = 0.1;
  self->kerf_mm = KERF_MM;
  self->kerf_error_mm = KERF_ERROR_MM;
  self->speed_mm_min = SPEED_MM_MIN;
  self->power_percent = POWER_PERCENT;
  self->passes = 1;
  return self;
}

HutStock *
hut_stock_copy (const HutStock *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutStock *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->readings_mm = g_array_copy (self->readings_mm);
  return copy;
}

void
hut_stock_free (HutStock *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_array_unref (self->readings_mm);
  g_free (self);
}

static gboolean
readings_equal (const GArray *a,
                const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    if (g_array_index (a, double, i) != g_array_index (b, double, i))
      return FALSE;
  return TRUE;
}

static gboolean
recipe_equal (const HutStock *a,
              const HutStock *b)
{
  return a->allowance_error_mm == b->allowance_error_mm && a->fit_shift_mm == b->fit_shift_mm
         && a->kerf_mm == b->kerf_mm && a->kerf_error_mm == b->kerf_error_mm
         && a->speed_mm_min == b->speed_mm_min && a->power_percent == b->power_percent
         && a->passes == b->passes;
}

gboolean
hut_stock_equal (const HutStock *a,
                 const HutStock *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && a->material == b->material && a->nominal_mm == b->nominal_mm
         && readings_equal (a->readings_mm, b->readings_mm)
         && a->sheet_width_mm == b->sheet_width_mm && a->sheet_depth_mm == b->sheet_depth_mm
         && a->grain == b->grain && a->grain_rule == b->grain_rule
         && a->price == b->price && a->density_kg_m3 == b->density_kg_m3
         && a->smallest_web_mm == b->smallest_web_mm && a->fit == b->fit
         && a->allowance_mm == b->allowance_mm && recipe_equal (a, b);
}

/**
 * hut_stock_mean_mm:
 * @self: a stock; without a reading its nominal thickness stands in
 *
 * Returns: mean of the readings on the HUT_GRID_MM grid, mm
 */
double
hut_stock_mean_mm (const HutStock *self)
{
  g_return_val_if_fail (self != NULL, 0.0);

  const guint n = self->readings_mm->len;
  double sum_mm = 0.0;

  if (n == 0)
    return hut_snap_mm (self->nominal_mm);
  for (guint i = 0; i < n; i++)
    sum_mm += g_array_index (self->readings_mm, double, i);
  return hut_snap_mm (sum_mm / n);
}

double
hut_stock_min_mm (const HutStock *self)
{
  g_return_val_if_fail (self != NULL, 0.0);

  if (self->readings_mm->len == 0)
    return self->nominal_mm;

  double least_mm = g_array_index (self->readings_mm, double, 0);

  for (guint i = 1; i < self->readings_mm->len; i++)
    least_mm = MIN (least_mm, g_array_index (self->readings_mm, double, i));
  return least_mm;
}

double
hut_stock_max_mm (const HutStock *self)
{
  g_return_val_if_fail (self != NULL, 0.0);

  if (self->readings_mm->len == 0)
    return self->nominal_mm;

  double most_mm = g_array_index (self->readings_mm, double, 0);

  for (guint i = 1; i < self->readings_mm->len; i++)
    most_mm = MAX (most_mm, g_array_index (self->readings_mm, double, i));
  return most_mm;
}
