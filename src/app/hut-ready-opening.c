/* src/app/hut-ready-opening.c: the openings that lie ready on the shelf.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-ready-opening.h"
#include <glib/gi18n.h>
#include <math.h>

typedef enum
{
  LAYOUT_NONE,
  LAYOUT_ROWS, /* columns x rows, pitch apart */
  LAYOUT_RING, /* columns holes on a circle of that diameter */
} Layout;

typedef struct
{
  const char *stem, *name, *words;
  HutShape shape;
  double diameter_mm;
  double width_mm, height_mm, radius_mm;
  Layout layout;
  guint columns, rows;
  double pitch_mm; /* of rows; diameter of a ring */
} Ready;

/* Sizes: own choice of what a workshop has bits, glands, hoses and ducts for. Four screws 105 mm
 * apart are the fixing of a 120 mm fan (common practice, 104.8 on drawings). */
static const Ready table[] = {
  { "hole", N_ ("Screw hole 5"), N_ ("round drill bolt"), HUT_SHAPE_ROUND, .diameter_mm = 5 },
  { "lead", N_ ("Lead hole 16"), N_ ("round cable wire gland"), HUT_SHAPE_ROUND,
    .diameter_mm = 16 },
  { "hose", N_ ("Hose hole 22"), N_ ("round pipe air water"), HUT_SHAPE_ROUND, .diameter_mm = 22 },
  { "hole", N_ ("Round hole 30"), N_ ("circle"), HUT_SHAPE_ROUND, .diameter_mm = 30 },
  { "hole", N_ ("Round hole 60"), N_ ("circle"), HUT_SHAPE_ROUND, .diameter_mm = 60 },
  { "duct", N_ ("Duct hole 100"), N_ ("round exhaust hose air"), HUT_SHAPE_ROUND,
    .diameter_mm = 100 },
  { "duct", N_ ("Duct hole 125"), N_ ("round exhaust hose air"), HUT_SHAPE_ROUND,
    .diameter_mm = 125 },

  { "plug", N_ ("Plug opening 30 × 20"), N_ ("rectangle socket connector switch"),
    HUT_SHAPE_RECTANGLE, .width_mm = 30, .height_mm = 20, .radius_mm = 2 },
  { "opening", N_ ("Rectangle 60 × 40"), N_ ("cutout display"), HUT_SHAPE_RECTANGLE, .width_mm = 60,
    .height_mm = 40, .radius_mm = 3 },
  { "opening", N_ ("Rectangle 120 × 80"), N_ ("cutout hatch panel"), HUT_SHAPE_RECTANGLE,
    .width_mm = 120, .height_mm = 80, .radius_mm = 5 },

  { "slot", N_ ("Slot 40 × 10"), N_ ("long hole flat lead"), HUT_SHAPE_SLOT, .width_mm = 40,
    .height_mm = 10 },
  { "slot", N_ ("Slot 80 × 15"), N_ ("long hole flat lead belt"), HUT_SHAPE_SLOT, .width_mm = 80,
    .height_mm = 15 },
  { "grip", N_ ("Grip hole 100 × 35"), N_ ("slot hand handle lift"), HUT_SHAPE_SLOT,
    .width_mm = 100, .height_mm = 35 },

  { "vent", N_ ("Vent pattern 5 × 5"), N_ ("air holes grid intake"), HUT_SHAPE_PATTERN,
    .diameter_mm = 8, .layout = LAYOUT_ROWS, .columns = 5, .rows = 5, .pitch_mm = 14 },
  { "vent", N_ ("Vent pattern 10 × 3"), N_ ("air holes grid intake"), HUT_SHAPE_PATTERN,
    .diameter_mm = 8, .layout = LAYOUT_ROWS, .columns = 10, .rows = 3, .pitch_mm = 14 },
  { "ring", N_ ("Ring of 8 holes 60"), N_ ("circle speaker air"), HUT_SHAPE_PATTERN,
    .diameter_mm = 6, .layout = LAYOUT_RING, .columns = 8, .pitch_mm = 60 },
  { "screws", N_ ("Four screws 105 apart"), N_ ("fan 120 fixing holes"), HUT_SHAPE_PATTERN,
    .diameter_mm = 4.5, .layout = LAYOUT_ROWS, .columns = 2, .rows = 2, .pitch_mm = 105 },
};

static const char *const groups[] = {
  [HUT_SHAPE_ROUND] = N_ ("Round"),
  [HUT_SHAPE_RECTANGLE] = N_ ("Rectangle"),
  [HUT_SHAPE_SLOT] = N_ ("Slot"),
  [HUT_SHAPE_PATTERN] = N_ ("Pattern of holes"),
};

guint
hut_ready_opening_get_count (void)
{
  return G_N_ELEMENTS (table);
}

const char *
hut_ready_opening_get_name (guint index)
{
  g_return_val_if_fail (index < G_N_ELEMENTS (table), NULL);

  return _ (table[index].name);
}

const char *
hut_ready_opening_get_group (guint index)
{
  g_return_val_if_fail (index < G_N_ELEMENTS (table), NULL);

  return _ (groups[table[index].shape]);
}

const char *
hut_ready_opening_get_words (guint index)
{
  g_return_val_if_fail (index < G_N_ELEMENTS (table), NULL);

  return _ (table[index].words);
}

static void
append_hole (GArray *holes,
             double u_mm,
             double v_mm)
{
  const HutPoint at = { hut_snap_mm (u_mm), hut_snap_mm (v_mm) };

  g_array_append_val (holes, at);
}

static void
append_holes (GArray *holes,
              const Ready *ready)
{
  if (ready->layout == LAYOUT_RING)
    for (guint i = 0; i < ready->columns; i++)
      {
        const double angle_rad = 2.0 * G_PI * i / ready->columns;

        append_hole (holes, ready->pitch_mm / 2.0 * cos (angle_rad),
                     ready->pitch_mm / 2.0 * sin (angle_rad));
      }
  else
    for (guint row = 0; row < ready->rows; row++)
      for (guint column = 0; column < ready->columns; column++)
        append_hole (holes, ready->pitch_mm * (column - (ready->columns - 1) / 2.0),
                     ready->pitch_mm * (row - (ready->rows - 1) / 2.0));
}

HutOpening *
hut_ready_opening_new (guint index)
{
  g_return_val_if_fail (index < G_N_ELEMENTS (table), NULL);

  const Ready *ready = &table[index];
  HutOpening *opening
      = hut_opening_new (ready->stem, (HutPanelId){ HUT_SHELL_BASE, HUT_SIDE_FRONT }, ready->shape);

  g_free (opening->name);
  opening->name = g_strdup (_ (ready->name));
  /* Measured from left and bottom, as one would with a rule. */
  opening->at.u_anchor = HUT_ANCHOR_START;
  opening->at.v_anchor = HUT_ANCHOR_START;
  opening->diameter_mm = ready->diameter_mm;
  opening->width_mm = ready->width_mm;
  opening->height_mm = ready->height_mm;
  opening->radius_mm = ready->radius_mm;
  if (ready->shape == HUT_SHAPE_PATTERN)
    {
      g_array_set_size (opening->holes, 0);
      append_holes (opening->holes, ready);
    }
  return opening;
}
