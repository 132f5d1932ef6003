/* tests/hut-random-openings.c: random openings and windows on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Panel sizes are only guessed here (the assembly is what knows them), so the distance kept from
 * edges is generous; "wild" items ignore it. */
#include "config.h"
#include "hut-random-openings.h"
#include <math.h>

#define OPENINGS_MAX 8
#define WINDOWS_MAX 2
#define WILD_SHARE_RATIO 0.15
#define TRIES_MAX 12

/* What is already on the panels: rectangles with the panel they are on. */
typedef struct
{
  HutPanelId panel;
  HutRect rect;
} Taken;

typedef struct
{
  HutRandom *random;
  HutDesign *design;
  HutVec3 inside_mm;
  gboolean may_be_wild;
  GArray *taken; /* Taken */
} Placing;

static HutPanelId
random_panel (Placing *self)
{
  HutPanelId panel;

  do
    {
      panel.shell = (HutShellId) hut_random_below (self->random, HUT_SHELL_COUNT);
      panel.side = (HutSide) hut_random_below (self->random, HUT_SIDE_COUNT);
    }
  while (!hut_shell_has_panel (&self->design->shell, panel));
  return panel;
}

/* Least size that the panel has, mm: without its walls' thickness. */
static HutPoint
panel_size_mm (const Placing *self,
               HutPanelId panel)
{
  const HutShell *shell = &self->design->shell;
  double height_mm = self->inside_mm.z;

  if (panel.side == HUT_SIDE_TOP || panel.side == HUT_SIDE_BOTTOM)
    return (HutPoint) { self->inside_mm.x, self->inside_mm.y };
  if (shell->lid == HUT_LID_HOOD || shell->lid == HUT_LID_LIFT_OFF)
    height_mm = panel.shell == HUT_SHELL_BASE ? shell->seam_height_mm
                                              : height_mm - shell->seam_height_mm;
  if (panel.side == HUT_SIDE_LEFT || panel.side == HUT_SIDE_RIGHT)
    return (HutPoint) { self->inside_mm.y, height_mm };
  return (HutPoint) { self->inside_mm.x, height_mm };
}

static gboolean
is_free (const Placing *self,
         HutPanelId panel,
         HutRect rect)
{
  for (guint i = 0; i < self->taken->len; i++)
    {
      const Taken *other = &g_array_index (self->taken, Taken, i);

      if (hut_panel_id_equal (other->panel, panel) && rect.u0 < other->rect.u1
          && other->rect.u0 < rect.u1 && rect.v0 < other->rect.v1 && other->rect.v0 < rect.v1)
        return FALSE;
    }
  return TRUE;
}

/* Sets one coordinate of a position so that the middle is @middle_mm from the start of @size_mm. */
static void
set_coordinate (HutRandom *random,
                double middle_mm,
                double size_mm,
                HutAnchorKind *anchor,
                double *offset_mm)
{
  *anchor = (HutAnchorKind) hut_random_below (random, 3);
  switch (*anchor)
    {
    case HUT_ANCHOR_CENTRE:
      *offset_mm = middle_mm - size_mm / 2.0;
      break;
    case HUT_ANCHOR_END:
      *offset_mm = size_mm - middle_mm;
      break;
    case HUT_ANCHOR_START:
    case HUT_ANCHOR_BODY:
    default:
      *offset_mm = middle_mm;
      break;
    }
  if (hut_random_chance (random, 0.9))
    *offset_mm = round (*offset_mm * 100.0) / 100.0;
}

static void
anchor_to_body (Placing *self,
                HutPosition *at)
{
  const GPtrArray *bodies = self->design->machine.bodies;
  const HutBody *body = g_ptr_array_index (bodies, hut_random_below (self->random, bodies->len));

  if (hut_random_chance (self->random, 0.5))
    at->u_anchor = HUT_ANCHOR_BODY;
  else
    at->v_anchor = HUT_ANCHOR_BODY;
  at->body = g_strdup (body->id);
}

/* Finds room for a thing of that half size on @at->panel; FALSE when there is none. */
static gboolean
place (Placing *self,
       HutPosition *at,
       HutPoint half_mm)
{
  const HutPoint size_mm = panel_size_mm (self, at->panel);
  const HutStock *stock = hut_design_get_panel_stock (self->design, at->panel);
  const double margin_mm = 2.5 * hut_stock_max_mm (stock) + stock->smallest_web_mm + 4.0;
  const gboolean wild
      = self->may_be_wild && hut_random_chance (self->random, WILD_SHARE_RATIO);
  const HutPoint reach_mm = wild ? (HutPoint) { 0.0, 0.0 }
                                 : (HutPoint) { half_mm.u + margin_mm, half_mm.v + margin_mm };

  if (2.0 * reach_mm.u > size_mm.u || 2.0 * reach_mm.v > size_mm.v)
    return FALSE;
  for (int i = 0; i < TRIES_MAX; i++)
    {
      const double u_mm = hut_random_typed (self->random, reach_mm.u, size_mm.u - reach_mm.u);
      const double v_mm = hut_random_typed (self->random, reach_mm.v, size_mm.v - reach_mm.v);
      const Taken taken = {
        at->panel,
        { u_mm - half_mm.u - margin_mm / 2.0, v_mm - half_mm.v - margin_mm / 2.0,
          u_mm + half_mm.u + margin_mm / 2.0, v_mm + half_mm.v + margin_mm / 2.0 },
      };

      if (!wild && !is_free (self, at->panel, taken.rect))
        continue;
      set_coordinate (self->random, u_mm, size_mm.u, &at->u_anchor, &at->u_offset_mm);
      set_coordinate (self->random, v_mm, size_mm.v, &at->v_anchor, &at->v_offset_mm);
      if (wild && hut_random_chance (self->random, 0.3))
        anchor_to_body (self, at);
      g_array_append_val (self->taken, taken);
      return TRUE;
    }
  return FALSE;
}

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
add_opening (Placing *self,
             guint number)
{
  g_autofree char *id = g_strdup_printf ("opening-%u", number);
  const HutPanelId panel = random_panel (self);
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
  if (place (self, &opening->at, half_mm))
    g_ptr_array_add (self->design->openings, g_steal_pointer (&opening));
}

static void
add_window (Placing *self,
            guint number)
{
  g_autofree char *id = g_strdup_printf ("window-%u", number);
  const HutPanelId panel = random_panel (self);
  const HutPoint size_mm = panel_size_mm (self, panel);
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
  if (place (self, &window->at,
             (HutPoint) { window->width_mm / 2.0 + window->overlap_mm,
                          window->height_mm / 2.0 + window->overlap_mm }))
    g_ptr_array_add (self->design->windows, g_steal_pointer (&window));
}

void
hut_random_add_openings (HutRandom *random,
                         HutDesign *design,
                         HutVec3 inside_mm,
                         HutRandomFlags flags)
{
  g_autoptr(GArray) taken = g_array_new (FALSE, FALSE, sizeof (Taken));
  Placing placing = { random, design, inside_mm, (flags & HUT_RANDOM_WILD) != 0, taken };
  const guint windows
      = (flags & HUT_RANDOM_WINDOWS) ? hut_random_below (random, WINDOWS_MAX + 1) : 0;
  const guint openings
      = (flags & HUT_RANDOM_OPENINGS) ? hut_random_below (random, OPENINGS_MAX + 1) : 0;

  for (guint i = 0; i < windows; i++)
    add_window (&placing, i + 1);
  for (guint i = 0; i < openings; i++)
    add_opening (&placing, i + 1);
}
