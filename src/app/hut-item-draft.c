/* src/app/hut-item-draft.c: an item of hardware that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-draft.h"
#include <math.h>
#include <string.h>

/* Own choice, mm: what a new cutout, notch, hole or space starts with. */
#define NEW_SIZE_MM 16.0
#define NEW_NOTCH_MM 3.0
#define NEW_PIN_MM 2.0
#define NEW_FLANGE_MM 20.0
#define NEW_PATTERN_MM 60.0
#define NEW_THREAD_MM 4.0
#define NEW_STEP_MM 10.0
#define NEW_DEPTH_MM 10.0
/* Share of the diameter that a new flat leaves. Own choice. */
#define NEW_FLAT_RATIO 0.9
/* Own choice: a curve's first two points, and how far another one goes on. */
#define NEW_FLOW_M3_H 50.0
#define NEW_PRESSURE_PA 30.0

#define PERCENT 100.0

/* ---- numbers and switches -------------------------------------------------------------------- */

/* Ends of the ranges as src/catalog/hut-item-format.c has them. */
static const struct
{
  gsize offset;
  HutMeasureRange range;
  double shown_ratio; /* shown number over kept one */
} measures[HUT_MEASURE_COUNT] = {
  [HUT_MEASURE_FLANGE_WIDTH]
  = { offsetof (HutItem, flange_width_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_FLANGE_HEIGHT]
  = { offsetof (HutItem, flange_height_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_THICKNESS_MIN]
  = { offsetof (HutItem, thickness_min_mm), { HUT_QUANTITY_LENGTH, 100.0 }, 1.0 },
  [HUT_MEASURE_THICKNESS_MAX]
  = { offsetof (HutItem, thickness_max_mm), { HUT_QUANTITY_LENGTH, 100.0 }, 1.0 },
  [HUT_MEASURE_NUT_CORNERS]
  = { offsetof (HutItem, nut_corners_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_NUT_HEIGHT]
  = { offsetof (HutItem, nut_height_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_BODY_DIAGONAL]
  = { offsetof (HutItem, body_diagonal_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_PASS_WIDTH]
  = { offsetof (HutItem, pass_width_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_PASS_HEIGHT]
  = { offsetof (HutItem, pass_height_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_LINE_MIN]
  = { offsetof (HutItem, line_min_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_LINE_MAX]
  = { offsetof (HutItem, line_max_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_MASS] = { offsetof (HutItem, mass_kg), { HUT_QUANTITY_MASS, 100.0 }, 1.0 },
  [HUT_MEASURE_FREE_AREA]
  = { offsetof (HutItem, free_area_ratio), { HUT_QUANTITY_PERCENT, 100.0 }, PERCENT },
  [HUT_MEASURE_STROKE] = { offsetof (HutItem, stroke_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_FORCE] = { offsetof (HutItem, force_n), { HUT_QUANTITY_FORCE, 5000.0 }, 1.0 },
  [HUT_MEASURE_LENGTH] = { offsetof (HutItem, length_mm), { HUT_QUANTITY_LENGTH, 2000.0 }, 1.0 },
  [HUT_MEASURE_NOISE] = { offsetof (HutItem, noise_db), { HUT_QUANTITY_SOUND, 140.0 }, 1.0 },
};

static const gsize traits[HUT_TRAIT_COUNT] = {
  [HUT_TRAIT_FROM_OUTSIDE] = offsetof (HutItem, from_outside),
  [HUT_TRAIT_FROM_INSIDE] = offsetof (HutItem, from_inside),
  [HUT_TRAIT_FLANGE_ROUND] = offsetof (HutItem, flange_round),
  [HUT_TRAIT_STRAINED] = offsetof (HutItem, strained),
  [HUT_TRAIT_MAINS] = offsetof (HutItem, mains),
  [HUT_TRAIT_PASS_ROUND] = offsetof (HutItem, pass_round),
};

HutMeasureRange
hut_item_draft_get_range (HutMeasure measure)
{
  g_return_val_if_fail (measure < HUT_MEASURE_COUNT, measures[0].range);

  return measures[measure].range;
}

double
hut_item_draft_get (const HutItem *item,
                    HutMeasure measure)
{
  g_return_val_if_fail (item != NULL && measure < HUT_MEASURE_COUNT, 0.0);

  return G_STRUCT_MEMBER (const double, item, measures[measure].offset)
         * measures[measure].shown_ratio;
}

void
hut_item_draft_set (HutItem *item,
                    HutMeasure measure,
                    double value)
{
  g_return_if_fail (item != NULL && measure < HUT_MEASURE_COUNT && isfinite (value));

  G_STRUCT_MEMBER (double, item, measures[measure].offset) = value / measures[measure].shown_ratio;
  if (measure == HUT_MEASURE_PASS_WIDTH && item->pass_round)
    item->pass_height_mm = item->pass_width_mm;
}

gboolean
hut_item_draft_has (const HutItem *item,
                    HutTrait trait)
{
  g_return_val_if_fail (item != NULL && trait < HUT_TRAIT_COUNT, FALSE);

  return G_STRUCT_MEMBER (const gboolean, item, traits[trait]);
}

void
hut_item_draft_set_has (HutItem *item,
                        HutTrait trait,
                        gboolean has)
{
  g_return_if_fail (item != NULL && trait < HUT_TRAIT_COUNT);

  G_STRUCT_MEMBER (gboolean, item, traits[trait]) = has;
  if (trait == HUT_TRAIT_PASS_ROUND && has)
    item->pass_height_mm = item->pass_width_mm;
}

gboolean
hut_item_draft_wants (const HutItem *item,
                      HutMeasure measure)
{
  g_return_val_if_fail (item != NULL, FALSE);

  if (hut_item_draft_get (item, measure) != 0.0)
    return measure != HUT_MEASURE_PASS_HEIGHT || !item->pass_round;
  switch (measure)
    {
    case HUT_MEASURE_NUT_CORNERS:
    case HUT_MEASURE_NUT_HEIGHT:
      return item->hold == HUT_HOLD_NUT;
    case HUT_MEASURE_BODY_DIAGONAL:
      return item->hold == HUT_HOLD_BODY;
    case HUT_MEASURE_PASS_HEIGHT:
      return !item->pass_round;
    case HUT_MEASURE_FREE_AREA:
      return item->group == HUT_ITEM_AIR;
    case HUT_MEASURE_STROKE:
    case HUT_MEASURE_FORCE:
      return item->group == HUT_ITEM_STAY;
    case HUT_MEASURE_NOISE:
      return item->group == HUT_ITEM_FAN;
    case HUT_MEASURE_LENGTH:
      return item->group == HUT_ITEM_STAY || item->group == HUT_ITEM_LAMP
             || item->group == HUT_ITEM_HINGE || item->group == HUT_ITEM_HANDLE;
    default:
      return TRUE;
    }
}

/* ---- holes ----------------------------------------------------------------------------------- */

gboolean
hut_item_draft_shape_has (HutCutShape shape,
                          HutCutSize size)
{
  switch (size)
    {
    case HUT_SIZE_DIAMETER:
      return shape != HUT_CUT_RECTANGLE && shape != HUT_CUT_SLOT;
    case HUT_SIZE_WIDTH:
      return shape == HUT_CUT_RECTANGLE || shape == HUT_CUT_SLOT || shape == HUT_CUT_KEYED;
    case HUT_SIZE_HEIGHT:
      return shape != HUT_CUT_ROUND;
    case HUT_SIZE_RADIUS:
    default:
      return shape == HUT_CUT_RECTANGLE;
    }
}

static void
repair_sizes (HutItemCut *cut)
{
  const double largest_mm = MAX (cut->diameter_mm, MAX (cut->width_mm, cut->height_mm));
  const double size_mm = largest_mm > 0.0 ? largest_mm : NEW_SIZE_MM;

  if (hut_item_draft_shape_has (cut->shape, HUT_SIZE_DIAMETER) && cut->diameter_mm <= 0.0)
    cut->diameter_mm = size_mm;
  if (cut->shape == HUT_CUT_RECTANGLE || cut->shape == HUT_CUT_SLOT)
    {
      cut->width_mm = cut->width_mm > 0.0 ? cut->width_mm : size_mm;
      cut->height_mm = cut->height_mm > 0.0 ? cut->height_mm : size_mm;
    }
  if ((cut->shape == HUT_CUT_FLATTED || cut->shape == HUT_CUT_TWO_FLATS)
      && (cut->height_mm <= 0.0 || cut->height_mm >= cut->diameter_mm))
    cut->height_mm = cut->diameter_mm * NEW_FLAT_RATIO;
  if (cut->shape == HUT_CUT_KEYED)
    {
      if (cut->width_mm <= 0.0 || cut->width_mm >= cut->diameter_mm)
        cut->width_mm = MIN (NEW_NOTCH_MM, cut->diameter_mm / 2.0);
      if (cut->height_mm <= cut->diameter_mm)
        cut->height_mm = cut->diameter_mm + cut->width_mm / 2.0;
    }
}

void
hut_item_draft_repair_cut (HutItemCut *cut)
{
  g_return_if_fail (cut != NULL);

  if (cut->role == HUT_CUT_SCREW)
    {
      cut->shape = HUT_CUT_ROUND;
      if (cut->thread_mm <= 0.0)
        cut->thread_mm = NEW_THREAD_MM;
      return;
    }
  if (cut->role == HUT_CUT_PIN && cut->diameter_mm <= 0.0 && cut->width_mm <= 0.0)
    cut->diameter_mm = NEW_PIN_MM;
  repair_sizes (cut);
}

static const HutItemCut *
find_cut (const HutItem *item,
          HutCutRole role)
{
  for (guint i = item->cuts->len; i-- > 0;)
    if (g_array_index (item->cuts, HutItemCut, i).role == role)
      return &g_array_index (item->cuts, HutItemCut, i);
  return NULL;
}

gboolean
hut_item_draft_add_cut (HutItem *item,
                        HutCutRole role)
{
  g_return_val_if_fail (item != NULL, FALSE);

  const HutItemCut *last = find_cut (item, role);
  HutItemCut fresh = { .role = role };

  if (item->cuts->len >= HUT_DRAFT_CUTS_MAX)
    return FALSE;
  if (last != NULL)
    {
      fresh = *last;
      fresh.at.u += NEW_STEP_MM;
    }
  hut_item_draft_repair_cut (&fresh);
  g_array_append_val (item->cuts, fresh);
  return TRUE;
}

/* ---- spaces ---------------------------------------------------------------------------------- */

static gboolean
is_flat (HutRect rect)
{
  return rect.u1 <= rect.u0 || rect.v1 <= rect.v0;
}

static HutRect
cutout_rect (const HutItem *item)
{
  for (guint i = 0; i < item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);

      if (cut->role == HUT_CUT_BODY && cut->leaf == 0)
        {
          g_autoptr (HutPath) path = hut_item_cut_dup_path (cut, 0.0);

          return hut_path_get_count (path) > 0 ? hut_path_bounds (path) : (HutRect){ 0, 0, 0, 0 };
        }
    }
  return (HutRect){ 0, 0, 0, 0 };
}

HutUsualSpace
hut_item_draft_usual_space (const HutItem *item)
{
  HutUsualSpace usual = { { 0, 0, 0, 0 }, { 0, 0, 0, 0 } };

  g_return_val_if_fail (item != NULL, usual);

  const HutRect flange = { -item->flange_width_mm / 2.0, -item->flange_height_mm / 2.0,
                           item->flange_width_mm / 2.0, item->flange_height_mm / 2.0 };
  const HutRect cutout = cutout_rect (item);
  HutRect other = is_flat (flange) ? cutout : flange;

  if (is_flat (other))
    other = hut_item_bounds (item, 0, HUT_HOLE_MEDIUM);
  if (is_flat (other))
    other = (HutRect){ -NEW_SIZE_MM / 2.0, -NEW_SIZE_MM / 2.0, NEW_SIZE_MM / 2.0,
                       NEW_SIZE_MM / 2.0 };
  usual.front = is_flat (flange) ? other : flange;
  usual.behind = is_flat (cutout) ? other : cutout;
  return usual;
}

gboolean
hut_item_draft_add_space (HutItem *item,
                          HutItemSide side,
                          gboolean soft)
{
  g_return_val_if_fail (item != NULL, FALSE);

  const HutUsualSpace usual = hut_item_draft_usual_space (item);
  const HutItemBody fresh = { .side = side,
                              .rect = side == HUT_ITEM_FRONT ? usual.front : usual.behind,
                              .depth_mm = NEW_DEPTH_MM,
                              .soft = soft };

  if (item->bodies->len >= HUT_DRAFT_SPACES_MAX)
    return FALSE;
  g_array_append_val (item->bodies, fresh);
  return TRUE;
}

static gboolean
is_same_rect (HutRect a,
              HutRect b)
{
  return a.u0 == b.u0 && a.v0 == b.v0 && a.u1 == b.u1 && a.v1 == b.v1;
}

void
hut_item_draft_follow (HutItem *item,
                       const HutUsualSpace *before)
{
  g_return_if_fail (item != NULL && before != NULL);

  const HutUsualSpace now = hut_item_draft_usual_space (item);

  for (guint i = 0; i < item->bodies->len; i++)
    {
      HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);
      const gboolean front = body->side == HUT_ITEM_FRONT;

      if (body->leaf == 0 && is_same_rect (body->rect, front ? before->front : before->behind))
        body->rect = front ? now.front : now.behind;
    }
}

/* ---- the other lists ------------------------------------------------------------------------- */

gboolean
hut_item_draft_add_point (HutItem *item)
{
  g_return_val_if_fail (item != NULL, FALSE);

  HutFanPoint fresh = { 0.0, NEW_PRESSURE_PA };
  HutFanPoint *last = item->curve->len > 0
                          ? &g_array_index (item->curve, HutFanPoint, item->curve->len - 1)
                          : NULL;

  if (item->curve->len >= HUT_DRAFT_POINTS_MAX)
    return FALSE;
  if (last != NULL)
    fresh = (HutFanPoint){ last->flow_m3_h + NEW_FLOW_M3_H, 0.0 };
  g_array_append_val (item->curve, fresh);
  return TRUE;
}

gboolean
hut_item_draft_add_source (HutItem *item)
{
  g_return_val_if_fail (item != NULL, FALSE);

  if (item->sources->len >= HUT_DRAFT_SOURCES_MAX)
    return FALSE;
  g_ptr_array_add (item->sources, hut_item_source_new ("", ""));
  return TRUE;
}

void
hut_item_draft_set_span (HutItem *item,
                         HutItemSpan span)
{
  g_return_if_fail (item != NULL);

  item->span = span;
  if (span != HUT_SPAN_PANEL)
    return;
  for (guint i = 0; i < item->cuts->len; i++)
    g_array_index (item->cuts, HutItemCut, i).leaf = 0;
  for (guint i = 0; i < item->bodies->len; i++)
    g_array_index (item->bodies, HutItemBody, i).leaf = 0;
}

/* ---- new ones -------------------------------------------------------------------------------- */

HutItem *
hut_item_draft_new (void)
{
  HutItem *item = hut_item_new ("");

  item->group = HUT_ITEM_CONTROL;
  item->hold = HUT_HOLD_NUT;
  item->from_inside = FALSE;
  item->flange_round = TRUE;
  item->flange_width_mm = item->flange_height_mm = NEW_FLANGE_MM;
  item->nut_corners_mm = NEW_FLANGE_MM;
  hut_item_draft_add_cut (item, HUT_CUT_BODY);
  return item;
}

HutItem *
hut_item_draft_new_pattern (void)
{
  static const double signs[][2] = { { -1, -1 }, { 1, -1 }, { 1, 1 }, { -1, 1 } };
  HutItem *item = hut_item_new ("");

  for (gsize i = 0; i < G_N_ELEMENTS (signs); i++)
    {
      const HutItemCut screw = { .role = HUT_CUT_SCREW,
                                 .thread_mm = NEW_THREAD_MM,
                                 .at = { signs[i][0] * NEW_PATTERN_MM / 2.0,
                                         signs[i][1] * NEW_PATTERN_MM / 2.0 } };

      g_array_append_val (item->cuts, screw);
    }
  return item;
}

HutItem *
hut_item_draft_new_copy (const HutItem *item,
                         const char *name)
{
  g_return_val_if_fail (item != NULL && name != NULL, NULL);

  HutItem *copy = hut_item_copy (item);

  g_free (copy->id);
  g_free (copy->name);
  copy->id = g_strdup ("");
  copy->name = g_strdup (name);
  return copy;
}

char *
hut_item_draft_dup_id (const HutCatalog *catalog,
                       const char *name)
{
  g_return_val_if_fail (catalog != NULL && name != NULL, NULL);

  g_autoptr (GString) id = g_string_new ("own");
  gboolean gap = TRUE;

  for (const char *c = name; *c != '\0'; c++)
    {
      if (g_ascii_isalnum (*c))
        {
          if (gap)
            g_string_append_c (id, '-');
          g_string_append_c (id, g_ascii_tolower (*c));
        }
      gap = !g_ascii_isalnum (*c);
    }
  const gsize stem = id->len;

  for (guint n = 2; hut_catalog_get (catalog, id->str) != NULL; n++)
    {
      g_string_truncate (id, stem);
      g_string_append_printf (id, "-%u", n);
    }
  return g_string_free (g_steal_pointer (&id), FALSE);
}
