/* src/app/hut-hole-grid.c: the holes of a pattern as columns and rows, and as text.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A pattern counts as regular when its holes, in any order, are exactly the holes of a grid about
 * the middle of the opening: the grid that its extremes and the count of different heights suggest
 * is made and compared. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-hole-grid.h"
#include <glib/gi18n.h>
#include <math.h>

/* Holes that are nearer than this to their place in the grid are on it: the grid is snapped, so a
 * computed place may be off by one step. */
#define PLACE_TOLERANCE_MM (1.5 * HUT_GRID_MM)

static guint
count_different (const GArray *holes,
                 gboolean across)
{
  guint count = 0;

  for (guint i = 0; i < holes->len; i++)
    {
      const HutPoint *hole = &g_array_index (holes, HutPoint, i);
      gboolean seen = FALSE;

      for (guint k = 0; k < i && !seen; k++)
        {
          const HutPoint *other = &g_array_index (holes, HutPoint, k);

          seen = fabs (across ? hole->u - other->u : hole->v - other->v) < PLACE_TOLERANCE_MM;
        }
      count += seen ? 0 : 1;
    }
  return count;
}

static gboolean
has_hole_at (const GArray *holes,
             const HutPoint *at)
{
  for (guint i = 0; i < holes->len; i++)
    {
      const HutPoint *hole = &g_array_index (holes, HutPoint, i);

      if (fabs (hole->u - at->u) < PLACE_TOLERANCE_MM
          && fabs (hole->v - at->v) < PLACE_TOLERANCE_MM)
        return TRUE;
    }
  return FALSE;
}

HutHoleGrid
hut_hole_grid_read (const GArray *holes)
{
  HutHoleGrid grid = { 0 };
  double u_max_mm = 0.0, v_max_mm = 0.0;

  if (holes == NULL || holes->len == 0 || holes->len > HUT_HOLES_MAX)
    return grid;
  grid.columns = count_different (holes, TRUE);
  grid.rows = count_different (holes, FALSE);
  for (guint i = 0; i < holes->len; i++)
    {
      u_max_mm = MAX (u_max_mm, g_array_index (holes, HutPoint, i).u);
      v_max_mm = MAX (v_max_mm, g_array_index (holes, HutPoint, i).v);
    }
  if (grid.columns > 1)
    grid.column_pitch_mm = hut_snap_mm (2.0 * u_max_mm / (grid.columns - 1));
  if (grid.rows > 1)
    grid.row_pitch_mm = hut_snap_mm (2.0 * v_max_mm / (grid.rows - 1));
  if (grid.columns * grid.rows != holes->len)
    return (HutHoleGrid){ 0 };

  g_autoptr (GArray) regular = hut_hole_grid_dup_holes (&grid);
  for (guint i = 0; i < regular->len; i++)
    if (!has_hole_at (holes, &g_array_index (regular, HutPoint, i)))
      return (HutHoleGrid){ 0 };
  return grid;
}

GArray *
hut_hole_grid_dup_holes (const HutHoleGrid *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  GArray *holes = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  for (guint row = 0; row < self->rows; row++)
    for (guint column = 0; column < self->columns; column++)
      {
        const HutPoint hole = {
          hut_snap_mm ((column - 0.5 * (self->columns - 1)) * self->column_pitch_mm),
          hut_snap_mm ((row - 0.5 * (self->rows - 1)) * self->row_pitch_mm),
        };

        g_array_append_val (holes, hole);
      }
  return holes;
}

char *
hut_holes_dup_text (const GArray *holes,
                    HutUnits units)
{
  g_return_val_if_fail (holes != NULL, NULL);

  GString *text = g_string_new (NULL);

  for (guint i = 0; i < holes->len; i++)
    {
      const HutPoint *hole = &g_array_index (holes, HutPoint, i);
      g_autofree char *u = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, hole->u);
      g_autofree char *v = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, hole->v);

      g_string_append_printf (text, "%s%s %s", i > 0 ? "; " : "", u, v);
    }
  return g_string_free (text, FALSE);
}

/* One hole: two numbers parted by spaces. */
static gboolean
parse_hole (const char *text,
            HutUnits units,
            HutPoint *hole,
            GError **error)
{
  g_auto (GStrv) words = g_strsplit_set (text, " \t", -1);
  double values_mm[2] = { 0.0, 0.0 };
  guint count = 0;

  for (guint i = 0; words[i] != NULL; i++)
    {
      if (*words[i] == '\0')
        continue;
      if (count < G_N_ELEMENTS (values_mm)
          && !hut_quantity_parse (HUT_QUANTITY_LENGTH, units, words[i], &values_mm[count], error))
        return FALSE;
      count++;
    }
  if (count != G_N_ELEMENTS (values_mm))
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
                   /* Translators: %s is what was typed */
                   _("“%s” must be two numbers: across and up"), text);
      return FALSE;
    }
  if (fabs (values_mm[0]) > HUT_SIZE_MAX_MM || fabs (values_mm[1]) > HUT_SIZE_MAX_MM)
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER, _("“%s” is too far away"),
                   text);
      return FALSE;
    }
  *hole = (HutPoint){ hut_snap_mm (values_mm[0]), hut_snap_mm (values_mm[1]) };
  return TRUE;
}

GArray *
hut_holes_parse (const char *text,
                 HutUnits units,
                 GError **error)
{
  g_return_val_if_fail (text != NULL, NULL);

  g_auto (GStrv) pairs = g_strsplit (text, ";", -1);
  g_autoptr (GArray) holes = g_array_new (FALSE, FALSE, sizeof (HutPoint));

  for (guint i = 0; pairs[i] != NULL; i++)
    {
      const char *pair = g_strstrip (pairs[i]);
      HutPoint hole;

      if (*pair == '\0')
        continue;
      if (!parse_hole (pair, units, &hole, error))
        return NULL;
      g_array_append_val (holes, hole);
    }
  if (holes->len == 0 || holes->len > HUT_HOLES_MAX)
    {
      g_set_error (error, HUT_UNITS_ERROR, HUT_UNITS_ERROR_NUMBER,
                   /* Translators: %d is a number of holes */
                   _("1 to %d holes"), HUT_HOLES_MAX);
      return NULL;
    }
  return g_steal_pointer (&holes);
}
