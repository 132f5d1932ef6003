/* src/design/hut-opening.c: windows and openings, and where they sit.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-position.h"

/* Sizes of a new item, mm. Own choice: each fits a hand-sized panel and is easily changed. */
#define ROUND_MM 30.0
#define RECTANGLE_WIDTH_MM 60.0
#define RECTANGLE_HEIGHT_MM 40.0
#define RECTANGLE_RADIUS_MM 2.0
#define SLOT_LENGTH_MM 40.0
#define SLOT_BREADTH_MM 10.0
#define PATTERN_HOLE_MM 6.0
#define PATTERN_PITCH_MM 12.0
#define PATTERN_ROWS 5
#define WINDOW_WIDTH_MM 160.0
#define WINDOW_HEIGHT_MM 100.0
#define WINDOW_RADIUS_MM 8.0
#define WINDOW_OVERLAP_MM 12.0

/**
 * hut_window_new:
 * @id: its id
 * @panel: the panel in whose middle it sits
 *
 * Glazing and frame name no stock yet: the caller sets both.
 */
HutWindow *
hut_window_new (const char *id,
                HutPanelId panel)
{
  g_return_val_if_fail (id != NULL, NULL);

  HutWindow *self = g_new0 (HutWindow, 1);

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->at = hut_position_centre_of (panel);
  self->width_mm = WINDOW_WIDTH_MM;
  self->height_mm = WINDOW_HEIGHT_MM;
  self->radius_mm = WINDOW_RADIUS_MM;
  self->glazing_stock = g_strdup ("");
  self->frame_stock = g_strdup ("");
  self->overlap_mm = WINDOW_OVERLAP_MM;
  self->screw_mm = HUT_ROOM_FREE;
  return self;
}

HutWindow *
hut_window_copy (const HutWindow *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutWindow *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->at = hut_position_copy (&self->at);
  copy->glazing_stock = g_strdup (self->glazing_stock);
  copy->frame_stock = g_strdup (self->frame_stock);
  return copy;
}

void
hut_window_free (HutWindow *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  hut_position_clear (&self->at);
  g_free (self->glazing_stock);
  g_free (self->frame_stock);
  g_free (self);
}

gboolean
hut_window_equal (const HutWindow *a,
                  const HutWindow *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && hut_position_equal (&a->at, &b->at) && a->width_mm == b->width_mm
         && a->height_mm == b->height_mm && a->radius_mm == b->radius_mm
         && g_strcmp0 (a->glazing_stock, b->glazing_stock) == 0
         && g_strcmp0 (a->frame_stock, b->frame_stock) == 0 && a->overlap_mm == b->overlap_mm
         && !a->glazing_bought == !b->glazing_bought && a->screw_mm == b->screw_mm;
}

/* Square grid of holes about the middle. */
static void
fill_pattern (GArray *holes)
{
  const double first_mm = -PATTERN_PITCH_MM * (PATTERN_ROWS - 1) / 2.0;

  for (int row = 0; row < PATTERN_ROWS; row++)
    for (int column = 0; column < PATTERN_ROWS; column++)
      {
        const HutPoint hole = {
          first_mm + column * PATTERN_PITCH_MM,
          first_mm + row * PATTERN_PITCH_MM,
        };

        g_array_append_val (holes, hole);
      }
}

/**
 * hut_opening_new:
 * @id: its id
 * @panel: the panel in whose middle it sits
 * @shape: its shape; sizes that this shape has not are 0
 */
HutOpening *
hut_opening_new (const char *id,
                 HutPanelId panel,
                 HutShape shape)
{
  g_return_val_if_fail (id != NULL, NULL);

  HutOpening *self = g_new0 (HutOpening, 1);

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->at = hut_position_centre_of (panel);
  self->shape = shape;
  self->holes = g_array_new (FALSE, FALSE, sizeof (HutPoint));
  switch (shape)
    {
    case HUT_SHAPE_RECTANGLE:
      self->width_mm = RECTANGLE_WIDTH_MM;
      self->height_mm = RECTANGLE_HEIGHT_MM;
      self->radius_mm = RECTANGLE_RADIUS_MM;
      break;
    case HUT_SHAPE_SLOT:
      self->width_mm = SLOT_LENGTH_MM;
      self->height_mm = SLOT_BREADTH_MM;
      break;
    case HUT_SHAPE_PATTERN:
      self->diameter_mm = PATTERN_HOLE_MM;
      fill_pattern (self->holes);
      break;
    case HUT_SHAPE_ROUND:
    default:
      self->diameter_mm = ROUND_MM;
      break;
    }
  self->trap_mm = HUT_ROOM_FREE;
  return self;
}

HutOpening *
hut_opening_copy (const HutOpening *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutOpening *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->at = hut_position_copy (&self->at);
  copy->holes = g_array_copy (self->holes);
  copy->serves = g_strdup (self->serves);
  copy->trap_stock = g_strdup (self->trap_stock);
  return copy;
}

void
hut_opening_free (HutOpening *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  hut_position_clear (&self->at);
  g_array_unref (self->holes);
  g_free (self->serves);
  g_free (self->trap_stock);
  g_free (self);
}

static gboolean
holes_equal (const GArray *a,
             const GArray *b)
{
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    {
      const HutPoint p = g_array_index (a, HutPoint, i);
      const HutPoint q = g_array_index (b, HutPoint, i);

      if (p.u != q.u || p.v != q.v)
        return FALSE;
    }
  return TRUE;
}

gboolean
hut_opening_equal (const HutOpening *a,
                   const HutOpening *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && hut_position_equal (&a->at, &b->at) && a->face == b->face && a->shape == b->shape
         && a->diameter_mm == b->diameter_mm && a->width_mm == b->width_mm
         && a->height_mm == b->height_mm && a->radius_mm == b->radius_mm
         && holes_equal (a->holes, b->holes) && a->turn_deg == b->turn_deg
         && g_strcmp0 (a->serves, b->serves) == 0 && a->trap_mm == b->trap_mm
         && g_strcmp0 (a->trap_stock, b->trap_stock) == 0;
}
