/* src/catalog/hut-item-fault.c: items whose numbers cannot all be right.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each check is one sentence with what is and what is allowed; the first that fails is told. What
 * an item of this kind usually looks like is no concern of theirs: only what no part can be. */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-item-format.h"
#include "format/hut-number.h"
#include <math.h>

/* A cut may touch the rim of its flange, and sizes are typed with two decimals, mm. Own choice. */
#define RIM_SLACK_MM 0.01
/* Numbers of a message are shown to a thousandth. */
#define SHOWN_DECIMALS 3

static const char *const shape_rules[] = {
  "'diameter' over 0",
  "'width' and 'height' over 0",
  "'width' and 'height' over 0",
  "'diameter' over 0, 'height' across the flat under it",
  "'diameter' over 0, 'height' between the flats under it",
  "'diameter' over 0, 'width' of the notch under it, 'height' from the far side over it",
};

static char *
dup_mm (double value_mm)
{
  char buffer[HUT_NUMBER_SIZE];

  return g_strdup (hut_number_fixed (buffer, value_mm, SHOWN_DECIMALS));
}

/* ---- cuts ----------------------------------------------------------------------------------- */

static char *
dup_thread_list (void)
{
  g_autoptr(GString) list = g_string_new (NULL);
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; i < count; i++)
    {
      g_autofree char *thread = dup_mm (screws[i].thread_mm);

      g_string_append_printf (list, "%s%s", i > 0 ? ", " : "", thread);
    }
  return g_string_free (g_steal_pointer (&list), FALSE);
}

/* How far the flange goes in the direction of a point, less how far the point is: < 0 outside, mm.
 * */
static double
rim_distance_mm (const HutItem *self,
                 HutPoint p)
{
  const double half_width_mm = self->flange_width_mm / 2.0,
               half_height_mm = self->flange_height_mm / 2.0;

  if (self->flange_round)
    return MIN (half_width_mm, half_height_mm) - hypot (p.u, p.v);
  return MIN (half_width_mm - fabs (p.u), half_height_mm - fabs (p.v));
}

/* How far a cut reaches out of its flange, mm; not over 0: it does not. */
static double
outside_rim_mm (const HutItem *self,
                const HutItemCut *cut,
                const HutPath *path)
{
  const HutRect box = hut_path_bounds (path);
  const HutPoint middle = { (box.u0 + box.u1) / 2.0, (box.v0 + box.v1) / 2.0 };
  double least_mm = rim_distance_mm (self, middle);

  if (self->flange_width_mm <= 0.0 || self->flange_height_mm <= 0.0 || cut->leaf != 0
      || cut->role == HUT_CUT_PIN)
    return 0.0;
  /* Of a screw its middle must be on the flange, as slots and ears may be open. Of a cutout the
   * corners and the ends of its axes, which is all of a rectangle and of a round hole in the
   * middle. */
  if (cut->role == HUT_CUT_BODY)
    {
      const HutPoint ends[] = { { box.u0, middle.v }, { box.u1, middle.v }, { middle.u, box.v0 },
                                { middle.u, box.v1 } };

      for (gsize i = 0; i < G_N_ELEMENTS (ends); i++)
        least_mm = MIN (least_mm, rim_distance_mm (self, ends[i]));
      for (guint i = 0; i < hut_path_get_count (path); i++)
        least_mm = MIN (least_mm, rim_distance_mm (self, hut_path_get (path, i)->p));
    }
  return -least_mm;
}

static HutItemFaultKind
find_cut_fault (const HutItem *self,
                const HutItemCut *cut,
                double *by_mm)
{
  g_autoptr(HutPath) path
      = hut_item_cut_dup_path (cut, hut_item_cut_hole_mm (cut, HUT_HOLE_MEDIUM));

  if (cut->leaf > 0 && self->span == HUT_SPAN_PANEL)
    return HUT_ITEM_FAULT_CUT_LEAF;
  if (cut->role == HUT_CUT_SCREW && cut->shape != HUT_CUT_ROUND)
    return HUT_ITEM_FAULT_SCREW_SHAPE;
  if (cut->role == HUT_CUT_SCREW && cut->wood_screw && cut->thread_mm <= 0.0)
    return HUT_ITEM_FAULT_WOOD_SCREW;
  if (cut->role == HUT_CUT_SCREW && !cut->wood_screw && hut_screw_get (cut->thread_mm) == NULL)
    return HUT_ITEM_FAULT_THREAD;
  if (hut_path_get_count (path) == 0)
    return HUT_ITEM_FAULT_CUT_SIZE;
  *by_mm = outside_rim_mm (self, cut, path);
  return *by_mm > RIM_SLACK_MM ? HUT_ITEM_FAULT_CUT_RIM : HUT_ITEM_FAULT_NONE;
}

static char *
dup_cut_text (const HutItem *self,
              const HutItemFault *fault)
{
  const HutItemCut *cut = &g_array_index (self->cuts, HutItemCut, fault->index);
  const guint number = fault->index + 1;
  g_autofree char *thread = dup_mm (cut->thread_mm), *threads = dup_thread_list (),
                  *by = dup_mm (fault->by_mm), *width = dup_mm (self->flange_width_mm),
                  *height = dup_mm (self->flange_height_mm);

  if (fault->kind == HUT_ITEM_FAULT_CUT_LEAF)
    return g_strdup_printf ("cut %u of item '%s' is of leaf 1, but the item lies on one panel; "
                            "allowed: leaf 0",
                            number, self->id);
  if (fault->kind == HUT_ITEM_FAULT_SCREW_SHAPE)
    return g_strdup_printf ("cut %u of item '%s' is a screw whose hole is not round; allowed: "
                            "round",
                            number, self->id);
  if (fault->kind == HUT_ITEM_FAULT_WOOD_SCREW)
    return g_strdup_printf ("cut %u of item '%s' is a wood screw without 'thread'; allowed: its "
                            "diameter",
                            number, self->id);
  if (fault->kind == HUT_ITEM_FAULT_THREAD)
    return g_strdup_printf ("thread of cut %u of item '%s' is %s; allowed: %s mm", number, self->id,
                            thread, threads);
  if (fault->kind == HUT_ITEM_FAULT_CUT_SIZE)
    return g_strdup_printf ("cut %u of item '%s' makes no hole; allowed: %s", number, self->id,
                            shape_rules[cut->shape]);
  return g_strdup_printf ("cut %u of item '%s' is %s mm outside its flange; allowed: within %s x "
                          "%s mm",
                          number, self->id, by, width, height);
}

/* ---- spaces --------------------------------------------------------------------------------- */

static HutItemFaultKind
find_space_fault (const HutItem *self,
                  const HutItemBody *body)
{
  if (body->rect.u1 < body->rect.u0 || body->rect.v1 < body->rect.v0)
    return HUT_ITEM_FAULT_SPACE_SIZE;
  return body->leaf > 0 && self->span == HUT_SPAN_PANEL ? HUT_ITEM_FAULT_SPACE_LEAF
                                                        : HUT_ITEM_FAULT_NONE;
}

static char *
dup_space_text (const HutItem *self,
                const HutItemFault *fault)
{
  if (fault->kind == HUT_ITEM_FAULT_SPACE_SIZE)
    return g_strdup_printf ("space %u of item '%s' ends before it starts; allowed: 'right' not "
                            "less "
                            "than 'left', 'top' not less than 'bottom'",
                            fault->index + 1, self->id);
  return g_strdup_printf ("space %u of item '%s' is of leaf 1, but the item lies on one panel; "
                          "allowed: leaf 0",
                          fault->index + 1, self->id);
}

/* ---- curve ---------------------------------------------------------------------------------- */

static HutItemFaultKind
find_curve_fault (const HutItem *self,
                  guint *index)
{
  const GArray *curve = self->curve;

  if (curve->len == 0)
    return self->group != HUT_ITEM_FAN ? HUT_ITEM_FAULT_NONE : HUT_ITEM_FAULT_CURVE_MISSING;
  for (guint i = 0; i < curve->len; i++)
    {
      const HutFanPoint *point = &g_array_index (curve, HutFanPoint, i);
      const HutFanPoint *before = i > 0 ? point - 1 : NULL;

      *index = i;
      if (before == NULL ? point->flow_m3_h != 0.0
                         : point->flow_m3_h <= before->flow_m3_h
                               || point->pressure_pa > before->pressure_pa)
        return HUT_ITEM_FAULT_CURVE_ORDER;
    }
  if (curve->len < 2 || g_array_index (curve, HutFanPoint, curve->len - 1).pressure_pa != 0.0)
    return HUT_ITEM_FAULT_CURVE_END;
  return HUT_ITEM_FAULT_NONE;
}

static char *
dup_curve_text (const HutItem *self,
                const HutItemFault *fault)
{
  if (fault->kind == HUT_ITEM_FAULT_CURVE_MISSING)
    return g_strdup_printf ("item '%s' is a fan without a curve; allowed: 2 or more <fan-point>",
                            self->id);
  if (fault->kind == HUT_ITEM_FAULT_CURVE_ORDER)
    return g_strdup_printf ("point %u of the curve of item '%s' is out of order; allowed: flow "
                            "rising from 0, pressure not rising",
                            fault->index + 1, self->id);
  return g_strdup_printf ("the curve of item '%s' does not end at free flow; allowed: a last "
                          "<fan-point> with 'pressure-pa' 0",
                          self->id);
}

/* ---- the rest ------------------------------------------------------------------------------- */

static HutItemFaultKind
find_mount_fault (const HutItem *self)
{
  if (!self->from_outside && !self->from_inside)
    return HUT_ITEM_FAULT_FACE;
  if (self->thickness_max_mm > 0.0 && self->thickness_max_mm < self->thickness_min_mm)
    return HUT_ITEM_FAULT_THICKNESS;
  if (self->hold == HUT_HOLD_NUT && self->nut_corners_mm <= 0.0)
    return HUT_ITEM_FAULT_NUT;
  if (self->hold == HUT_HOLD_BODY && self->body_diagonal_mm <= 0.0)
    return HUT_ITEM_FAULT_BODY;
  return HUT_ITEM_FAULT_NONE;
}

static HutItemFaultKind
find_way_fault (const HutItem *self)
{
  if ((self->pass_width_mm > 0.0) != (self->pass_height_mm > 0.0)
      || (self->pass_round && self->pass_width_mm != self->pass_height_mm))
    return HUT_ITEM_FAULT_PASS;
  return self->line_max_mm < self->line_min_mm ? HUT_ITEM_FAULT_LINE : HUT_ITEM_FAULT_NONE;
}

static char *
dup_whole_text (const HutItem *self,
                const HutItemFault *fault)
{
  g_autofree char *least = dup_mm (self->thickness_min_mm);
  g_autofree char *most = dup_mm (self->thickness_max_mm);

  if (fault->kind == HUT_ITEM_FAULT_FACE)
    return g_strdup_printf ("item '%s' can be mounted from no side; allowed: 'from-outside' or "
                            "'from-inside' yes",
                            self->id);
  if (fault->kind == HUT_ITEM_FAULT_THICKNESS)
    return g_strdup_printf ("'thickness-max' of item '%s' is %s; allowed: 0 for any, or not less "
                            "than "
                            "'thickness-min', which is %s mm",
                            self->id, most, least);
  if (fault->kind == HUT_ITEM_FAULT_NUT)
    return g_strdup_printf ("item '%s' is held by a nut without a size; allowed: 'nut-corners' "
                            "over 0",
                            self->id);
  if (fault->kind == HUT_ITEM_FAULT_BODY)
    return g_strdup_printf ("item '%s' is held by a body without a size; allowed: 'body-diagonal' "
                            "over 0",
                            self->id);
  if (fault->kind == HUT_ITEM_FAULT_PASS)
    return g_strdup_printf ("what passes item '%s' has no whole size; allowed: 'pass-width' and "
                            "'pass-height' both over 0, both the same where it is round",
                            self->id);
  return g_strdup_printf ("'line-max' of item '%s' is less than its 'line-min'; allowed: not "
                          "less",
                          self->id);
}

HutItemFault
hut_item_find_fault (const HutItem *self)
{
  HutItemFault fault = { .kind = HUT_ITEM_FAULT_NONE };

  g_return_val_if_fail (self != NULL, fault);

  fault.kind = find_mount_fault (self);
  for (guint i = 0; fault.kind == HUT_ITEM_FAULT_NONE && i < self->cuts->len; i++)
    {
      fault.index = i;
      fault.kind
          = find_cut_fault (self, &g_array_index (self->cuts, HutItemCut, i), &fault.by_mm);
    }
  for (guint i = 0; fault.kind == HUT_ITEM_FAULT_NONE && i < self->bodies->len; i++)
    {
      fault.index = i;
      fault.kind = find_space_fault (self, &g_array_index (self->bodies, HutItemBody, i));
    }
  if (fault.kind == HUT_ITEM_FAULT_NONE)
    fault.kind = find_curve_fault (self, &fault.index);
  if (fault.kind == HUT_ITEM_FAULT_NONE)
    fault.kind = find_way_fault (self);
  return fault;
}

char *
hut_item_dup_fault (const HutItem *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  const HutItemFault fault = hut_item_find_fault (self);

  switch (fault.kind)
    {
    case HUT_ITEM_FAULT_NONE:
      return NULL;
    case HUT_ITEM_FAULT_CUT_LEAF:
    case HUT_ITEM_FAULT_SCREW_SHAPE:
    case HUT_ITEM_FAULT_WOOD_SCREW:
    case HUT_ITEM_FAULT_THREAD:
    case HUT_ITEM_FAULT_CUT_SIZE:
    case HUT_ITEM_FAULT_CUT_RIM:
      return dup_cut_text (self, &fault);
    case HUT_ITEM_FAULT_SPACE_SIZE:
    case HUT_ITEM_FAULT_SPACE_LEAF:
      return dup_space_text (self, &fault);
    case HUT_ITEM_FAULT_CURVE_MISSING:
    case HUT_ITEM_FAULT_CURVE_ORDER:
    case HUT_ITEM_FAULT_CURVE_END:
      return dup_curve_text (self, &fault);
    case HUT_ITEM_FAULT_FACE:
    case HUT_ITEM_FAULT_THICKNESS:
    case HUT_ITEM_FAULT_NUT:
    case HUT_ITEM_FAULT_BODY:
    case HUT_ITEM_FAULT_PASS:
    case HUT_ITEM_FAULT_LINE:
    default:
      return dup_whole_text (self, &fault);
    }
}
