/* tests/hut-random-openings.c: random openings and windows on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "config.h"
#include "hut-random-openings.h"
#include <math.h>

#define OPENINGS_MAX 8
#define WINDOWS_MAX 2
static HutPoint
fill_pattern (HutRandom *random,
              HutOpening *opening,
              double web_mm)
{
  const guint columns = 1 + hut_random_below (random, 6), rows = 1 + hut_random_below (random, 6);
  const double pitch_mm = opening->diameter_mm + web_mm + hut_random_typed (random, 0.5, 6.0);

  g_array_set_size (opening->holes, 0);
  for (guint row = 0; row < rows; row++)
    for (guint column = 0; column < columns; column++)
      {
        const HutPoint hole = { pitch_mm * (column - (columns - 1) / 2.0),
                                pitch_mm * (row - (rows - 1) / 2.0) };

        g_array_append_val (opening->holes, hole);
      }
  return (HutPoint) { (pitch_mm * (columns - 1) + opening->diameter_mm) / 2.0,
                      (pitch_mm * (rows - 1) + opening->diameter_mm) / 2.0 };
}

/* Sets the sizes of its shape; returns half of width and height before it is turned, mm. */
static HutPoint
fill_shape (HutRandom *random,
            HutOpening *opening,
            double web_mm)
{
  switch (opening->shape)
    {
    case HUT_SHAPE_RECTANGLE:
      opening->width_mm = hut_random_typed (random, 5.0, 90.0);
      opening->height_mm = hut_random_typed (random, 5.0, 60.0);
      opening->radius_mm
          = hut_random_chance (random, 0.3)
                ? 0.0
                : hut_random_typed (random, 0.5, MIN (opening->width_mm, opening->height_mm) / 2.0);
      break;
    case HUT_SHAPE_SLOT:
      opening->height_mm = hut_random_typed (random, 3.0, 25.0);
      opening->width_mm = opening->height_mm + hut_random_typed (random, 1.0, 80.0);
      opening->radius_mm = 0.0;
      break;
    case HUT_SHAPE_PATTERN:
      opening->diameter_mm = hut_random_typed (random, 3.0, 14.0);
      return fill_pattern (random, opening, web_mm);
    case HUT_SHAPE_ROUND:
    default:
      opening->diameter_mm = hut_random_typed (random, 4.0, 125.0);
      return (HutPoint) { opening->diameter_mm / 2.0, opening->diameter_mm / 2.0 };
    }
  return (HutPoint) { opening->width_mm / 2.0, opening->height_mm / 2.0 };
}

static void
set_turn (HutRandom *random,
          HutOpening *opening,
          HutPoint *half_mm)
{
  const double radius_mm = hypot (half_mm->u, half_mm->v);

  switch (hut_random_below (random, 4))
    {
    case 0:
      opening->turn_deg = 90.0 * hut_random_below (random, 4);
      if (opening->turn_deg == 90.0 || opening->turn_deg == 270.0)
        *half_mm = (HutPoint) { half_mm->v, half_mm->u };
      break;
    case 1:
      opening->turn_deg = hut_random_typed (random, -180.0, 360.0);
      *half_mm = (HutPoint) { radius_mm, radius_mm };
      break;
    default:
      break;
    }
}

static void
add_opening (HutRandomPlacing *self,
             guint number)
{
  g_autofree char *id = g_strdup_printf ("opening-%u", number);
  const HutPanelId panel = hut_random_placing_panel (self);
  const HutStock *stock = hut_design_get_panel_stock (self->design, panel);
  const GPtrArray *services = self->design->machine.services;
  g_autoptr(HutOpening) opening
      = hut_opening_new (id, panel, (HutShape) hut_random_below (self->random, 4));
  HutPoint half_mm = fill_shape (self->random, opening, stock->smallest_web_mm);

  set_turn (self->random, opening, &half_mm);
  opening->face = hut_random_chance (self->random, 0.2) ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
  if (services->len > 0 && hut_random_chance (self->random, 0.3))
    {
      const HutService *service
          = g_ptr_array_index (services, hut_random_below (self->random, services->len));

      opening->serves = g_strdup (service->id);
    }
  /* Under the machine there is no room for one. */
  if (hut_random_chance (self->random, 0.1) && panel.side != HUT_SIDE_BOTTOM)
    opening->trap_mm = hut_random_typed (self->random, 10.0, 60.0);
  if (hut_random_placing_find (self, &opening->at, half_mm))
    g_ptr_array_add (self->design->openings, g_steal_pointer (&opening));
}

static void
add_window (HutRandomPlacing *self,
            guint number)
{
  g_autofree char *id = g_strdup_printf ("window-%u", number);
  const HutPanelId panel = hut_random_placing_panel (self);
  const HutPoint size_mm = hut_random_placing_size_mm (self, panel);
  g_autoptr(HutWindow) window = hut_window_new (id, panel);

  window->width_mm = hut_random_typed (self->random, 30.0, MAX (31.0, 0.6 * size_mm.u));
  window->height_mm = hut_random_typed (self->random, 30.0, MAX (31.0, 0.6 * size_mm.v));
  window->radius_mm
      = hut_random_chance (self->random, 0.3) ? 0.0 : hut_random_typed (self->random, 1.0, 12.0);
  window->overlap_mm = hut_random_typed (self->random, 6.0, 20.0);
  window->glazing_bought = hut_random_chance (self->random, 0.3);
  if (hut_random_chance (self->random, 0.3))
    window->screw_mm = hut_random_chance (self->random, 0.5) ? 3.0 : 4.0;
  g_free (window->glazing_stock);
  g_free (window->frame_stock);
  window->glazing_stock = g_strdup ("clear");
  window->frame_stock = g_strdup ("wall-1");
  if (hut_random_placing_find (self, &window->at,
             (HutPoint) { window->width_mm / 2.0 + window->overlap_mm,
                          window->height_mm / 2.0 + window->overlap_mm }))
    g_ptr_array_add (self->design->windows, g_steal_pointer (&window));
}

void
hut_random_add_openings (HutRandomPlacing *placing,
                         HutRandomFlags    flags)
{
  HutRandom *random = placing->random;
  const guint windows
      = (flags & HUT_RANDOM_WINDOWS) ? hut_random_below (random, WINDOWS_MAX + 1) : 0;
  const guint openings
      = (flags & HUT_RANDOM_OPENINGS) ? hut_random_below (random, OPENINGS_MAX + 1) : 0;

  for (guint i = 0; i < windows; i++)
    add_window (placing, i + 1);
  for (guint i = 0; i < openings; i++)
    add_opening (placing, i + 1);
}
