/* tests/hut-random-placing.c: where things lie on the panels of a random design.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Panel sizes are only guessed here (the assembly is what knows them), so the distance kept from
 * edges is generous; "wild" items ignore it. */
#include "config.h"
#include "hut-random-placing.h"
#include <math.h>

#define WILD_SHARE_RATIO 0.15
#define TRIES_MAX 12

/* What is already on the panels: rectangles with the panel they are on. */
typedef struct
{
  HutPanelId panel;
  HutRect rect;
} Taken;

void
hut_random_placing_init (HutRandomPlacing *self,
                         HutRandom        *random,
                         HutDesign        *design,
                         HutVec3           inside_mm,
                         gboolean          may_be_wild)
{
  *self = (HutRandomPlacing) { random, design, inside_mm, may_be_wild,
                               g_array_new (FALSE, FALSE, sizeof (Taken)) };
}

void
hut_random_placing_clear (HutRandomPlacing *self)
{
  g_clear_pointer (&self->taken, g_array_unref);
}

HutPanelId
hut_random_placing_panel (HutRandomPlacing *self)
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

HutPoint
hut_random_placing_size_mm (const HutRandomPlacing *self,
                            HutPanelId              panel)
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
is_free (const HutRandomPlacing *self,
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
anchor_to_body (HutRandomPlacing *self,
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

gboolean
hut_random_placing_find (HutRandomPlacing *self,
                         HutPosition      *at,
                         HutPoint          half_mm)
{
  const HutPoint size_mm = hut_random_placing_size_mm (self, at->panel);
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
