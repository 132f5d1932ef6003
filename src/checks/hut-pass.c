/* src/checks/hut-pass.c: whether the head of a lead, hose or duct passes an opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-pass.h"
#include "geom/hut-geom.h"
#include <math.h>

#define ANGLE_STEPS 360u /* of a quarter turn; own choice: a millimetre at a head of 230 mm */
#define SCALE_STEPS 40u  /* halvings: far below the grid */
#define ROUNDING_MM 1e-9

HutHead
hut_head_of (const HutService *service)
{
  const double largest_mm = MAX (service->head_width_mm, service->head_height_mm);

  if (service->kind == HUT_SERVICE_LEAD)
    return (HutHead) { FALSE, service->head_width_mm, service->head_height_mm };
  return (HutHead) { TRUE, largest_mm, largest_mm };
}

double
hut_head_hole_mm (HutHead head)
{
  return (head.round ? head.width_mm : hypot (head.width_mm, head.height_mm)) + HUT_PASS_PLAY_MM;
}

HutGate
hut_gate_of (const HutOpening *opening)
{
  switch (opening->shape)
    {
    case HUT_SHAPE_ROUND:
    case HUT_SHAPE_PATTERN:
      return (HutGate) { TRUE, opening->diameter_mm, opening->diameter_mm,
                         opening->diameter_mm / 2.0 };
    case HUT_SHAPE_SLOT:
      return (HutGate) { FALSE, opening->width_mm, opening->height_mm,
                         MIN (opening->width_mm, opening->height_mm) / 2.0 };
    case HUT_SHAPE_RECTANGLE:
    default:
      return (HutGate) { FALSE, opening->width_mm, opening->height_mm,
                         MIN (opening->radius_mm,
                              MIN (opening->width_mm, opening->height_mm) / 2.0) };
    }
}

/* Whether a point, measured from the gate's middle, lies in a rectangle with rounded corners. */
static gboolean
is_inside (const HutGate *gate,
           double u_mm,
           double v_mm)
{
  const double over_u_mm = fabs (u_mm) - (gate->width_mm / 2.0 - gate->radius_mm);
  const double over_v_mm = fabs (v_mm) - (gate->height_mm / 2.0 - gate->radius_mm);

  if (over_u_mm > 0.0 && over_v_mm > 0.0)
    return hypot (over_u_mm, over_v_mm) <= gate->radius_mm + ROUNDING_MM;
  return MAX (over_u_mm, over_v_mm) <= gate->radius_mm + ROUNDING_MM;
}

/* A rectangle about the middle, turned: opposite corners are inside together. */
static gboolean
rectangle_fits (const HutGate *gate,
                double width_mm,
                double height_mm,
                double turn_rad)
{
  const double c = cos (turn_rad), s = sin (turn_rad);
  const double u_mm = width_mm / 2.0, v_mm = height_mm / 2.0;

  return is_inside (gate, u_mm * c - v_mm * s, u_mm * s + v_mm * c)
         && is_inside (gate, u_mm * c + v_mm * s, u_mm * s - v_mm * c);
}

gboolean
hut_pass_lets (const HutGate *gate,
               HutHead head)
{
  const double width_mm = head.width_mm + HUT_PASS_PLAY_MM;
  const double height_mm = head.height_mm + HUT_PASS_PLAY_MM;

  if (gate->round || head.round)
    return MIN (gate->width_mm, gate->height_mm) >= hut_head_hole_mm (head) - ROUNDING_MM;
  for (guint i = 0; i <= ANGLE_STEPS; i++)
    if (rectangle_fits (gate, width_mm, height_mm, G_PI / 2.0 * i / ANGLE_STEPS))
      return TRUE;
  return FALSE;
}

void
hut_pass_numbers (const HutGate *gate,
                  HutHead head,
                  double *is_mm,
                  double *must_mm)
{
  double least_ratio = 0.0, most_ratio = 1.0;

  if (gate->round || head.round)
    {
      *is_mm = MIN (gate->width_mm, gate->height_mm);
      *must_mm = hut_head_hole_mm (head);
      return;
    }
  *must_mm = *is_mm = MAX (head.width_mm, head.height_mm);
  if (hut_pass_lets (gate, head))
    return;
  for (guint i = 0; i < SCALE_STEPS; i++)
    {
      const double ratio = (least_ratio + most_ratio) / 2.0;
      const HutHead smaller = { FALSE, head.width_mm * ratio, head.height_mm * ratio };

      if (hut_pass_lets (gate, smaller))
        least_ratio = ratio;
      else
        most_ratio = ratio;
    }
  *is_mm = *must_mm * least_ratio;
}
