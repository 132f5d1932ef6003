/* src/app/hut-item-draft.c: an item of hardware that is being measured, as plain numbers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-draft.h"
#include <math.h>
#include <string.h>

/* Own choice, mm: what a new cutout, notch or hole starts with. */
#define NEW_SIZE_MM 16.0
#define NEW_NOTCH_MM 3.0
#define NEW_FLANGE_MM 20.0
#define NEW_PATTERN_MM 60.0
#define NEW_THREAD_MM 4.0
#define NEW_STEP_MM 10.0
/* Share of the diameter that a new flat leaves. Own choice. */
#define NEW_FLAT_RATIO 0.9

/* ---- cutout ---------------------------------------------------------------------------------- */

static HutItemCut *
get_cutout (const HutItem *item)
{
  for (guint i = 0; i < item->cuts->len; i++)
    {
      HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);

      if (cut->role == HUT_CUT_BODY && cut->leaf == 0)
        return cut;
    }
  return NULL;
}

int
hut_item_draft_get_shape (const HutItem *item)
{
  g_return_val_if_fail (item != NULL, -1);

  const HutItemCut *cut = get_cutout (item);

  return cut != NULL ? (int)cut->shape : -1;
}

gboolean
hut_item_draft_shape_has (int shape,
                          HutMeasure measure)
{
  switch (measure)
    {
    case HUT_MEASURE_DIAMETER:
      return shape == HUT_CUT_ROUND || shape == HUT_CUT_FLATTED || shape == HUT_CUT_TWO_FLATS
             || shape == HUT_CUT_KEYED;
    case HUT_MEASURE_WIDTH:
      return shape == HUT_CUT_RECTANGLE || shape == HUT_CUT_SLOT || shape == HUT_CUT_KEYED;
    case HUT_MEASURE_HEIGHT:
      return shape >= 0 && shape != HUT_CUT_ROUND;
    case HUT_MEASURE_RADIUS:
      return shape == HUT_CUT_RECTANGLE;
    default:
      return TRUE;
    }
}

/* Sizes that a cutout of its shape cannot have. */
static void
repair_sizes (HutItemCut *cut)
{
  const double largest_mm = MAX (cut->diameter_mm, MAX (cut->width_mm, cut->height_mm));
  const double size_mm = largest_mm > 0.0 ? largest_mm : NEW_SIZE_MM;

  if (hut_item_draft_shape_has ((int)cut->shape, HUT_MEASURE_DIAMETER) && cut->diameter_mm <= 0.0)
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
hut_item_draft_set_shape (HutItem *item,
                          int shape)
{
  g_return_if_fail (item != NULL && shape <= HUT_CUT_KEYED);

  HutItemCut *cut = get_cutout (item);

  if (shape < 0)
    {
      if (cut != NULL)
        g_array_remove_index (item->cuts,
                              (guint)(cut - &g_array_index (item->cuts, HutItemCut, 0)));
      return;
    }
  if (cut == NULL)
    {
      const HutItemCut fresh = { .role = HUT_CUT_BODY };

      g_array_prepend_val (item->cuts, fresh);
      cut = &g_array_index (item->cuts, HutItemCut, 0);
    }
  cut->shape = (HutCutShape)shape;
  repair_sizes (cut);
}

/* ---- bodies ---------------------------------------------------------------------------------- */

static HutItemBody *
get_body (const HutItem *item,
          HutItemSide side,
          gboolean soft)
{
  for (guint i = 0; i < item->bodies->len; i++)
    {
      HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);

      if (body->side == side && !body->soft == !soft && body->leaf == 0)
        return body;
    }
  return NULL;
}

static HutRect
flange_rect (const HutItem *item)
{
  return (HutRect){ -item->flange_width_mm / 2.0, -item->flange_height_mm / 2.0,
                    item->flange_width_mm / 2.0, item->flange_height_mm / 2.0 };
}

static HutRect
cutout_rect (const HutItem *item)
{
  const HutItemCut *cut = get_cutout (item);
  g_autoptr (HutPath) path = cut != NULL ? hut_item_cut_dup_path (cut, 0.0) : hut_path_new ();

  return hut_path_get_count (path) > 0 ? hut_path_bounds (path) : (HutRect){ 0, 0, 0, 0 };
}

static gboolean
is_flat (HutRect rect)
{
  return rect.u1 <= rect.u0 || rect.v1 <= rect.v0;
}

/* What a new body of that side is as wide as: the flange in front, the cutout behind, or what there
 * is. */
static HutRect
usual_rect (const HutItem *item,
            HutItemSide side)
{
  const HutRect flange = flange_rect (item), cutout = cutout_rect (item);
  const HutRect first = side == HUT_ITEM_FRONT ? flange : cutout,
                second = side == HUT_ITEM_FRONT ? cutout : flange;

  if (!is_flat (first))
    return first;
  return !is_flat (second) ? second : hut_item_bounds (item, 0, HUT_HOLE_MEDIUM);
}

static void
set_depth (HutItem *item,
           HutItemSide side,
           gboolean soft,
           double depth_mm)
{
  HutItemBody *body = get_body (item, side, soft);

  if (body != NULL && depth_mm > 0.0)
    body->depth_mm = depth_mm;
  else if (body != NULL)
    g_array_remove_index (item->bodies,
                          (guint)(body - &g_array_index (item->bodies, HutItemBody, 0)));
  else if (depth_mm > 0.0)
    {
      const HutItemBody fresh
          = { .side = side, .rect = usual_rect (item, side), .depth_mm = depth_mm, .soft = soft };

      g_array_append_val (item->bodies, fresh);
    }
}

static gboolean
is_same_rect (HutRect a,
              HutRect b)
{
  return a.u0 == b.u0 && a.v0 == b.v0 && a.u1 == b.u1 && a.v1 == b.v1;
}

/* Bodies that were as wide as flange or cutout are so again. */
static void
follow (HutItem *item,
        HutRect front_before,
        HutRect behind_before)
{
  for (guint i = 0; i < item->bodies->len; i++)
    {
      HutItemBody *body = &g_array_index (item->bodies, HutItemBody, i);
      const HutRect before = body->side == HUT_ITEM_FRONT ? front_before : behind_before;

      if (body->leaf == 0 && is_same_rect (body->rect, before))
        body->rect = usual_rect (item, body->side);
    }
}

/* ---- numbers --------------------------------------------------------------------------------- */

/* Where a plain number of the item or its cutout lies; NULL where it has none. */
static double *
get_member (const HutItem *item,
            HutMeasure measure)
{
  HutItem *self = (HutItem *)item; /* whoever asks decides whether to write */
  HutItemCut *cut = get_cutout (item);

  switch (measure)
    {
    case HUT_MEASURE_DIAMETER:
      return cut != NULL ? &cut->diameter_mm : NULL;
    case HUT_MEASURE_WIDTH:
      return cut != NULL ? &cut->width_mm : NULL;
    case HUT_MEASURE_HEIGHT:
      return cut != NULL ? &cut->height_mm : NULL;
    case HUT_MEASURE_RADIUS:
      return cut != NULL ? &cut->radius_mm : NULL;
    case HUT_MEASURE_FLANGE_WIDTH:
      return &self->flange_width_mm;
    case HUT_MEASURE_FLANGE_HEIGHT:
      return &self->flange_height_mm;
    case HUT_MEASURE_THICKNESS_MIN:
      return &self->thickness_min_mm;
    case HUT_MEASURE_THICKNESS_MAX:
      return &self->thickness_max_mm;
    case HUT_MEASURE_NUT_CORNERS:
      return &self->nut_corners_mm;
    case HUT_MEASURE_NUT_HEIGHT:
      return &self->nut_height_mm;
    case HUT_MEASURE_BODY_DIAGONAL:
      return &self->body_diagonal_mm;
    case HUT_MEASURE_MASS:
      return &self->mass_kg;
    case HUT_MEASURE_FRONT:
    case HUT_MEASURE_BEHIND:
    case HUT_MEASURE_LEADS:
    case HUT_MEASURE_COUNT:
    default:
      return NULL;
    }
}

static const HutItemBody *
get_measured_body (const HutItem *item,
                   HutMeasure measure)
{
  if (measure == HUT_MEASURE_FRONT)
    return get_body (item, HUT_ITEM_FRONT, FALSE);
  if (measure == HUT_MEASURE_BEHIND)
    return get_body (item, HUT_ITEM_BEHIND, FALSE);
  return measure == HUT_MEASURE_LEADS ? get_body (item, HUT_ITEM_BEHIND, TRUE) : NULL;
}

double
hut_item_draft_get (const HutItem *item,
                    HutMeasure measure)
{
  g_return_val_if_fail (item != NULL, 0.0);

  const double *member = get_member (item, measure);
  const HutItemBody *body = get_measured_body (item, measure);

  if (member != NULL)
    return *member;
  return body != NULL ? body->depth_mm : 0.0;
}

void
hut_item_draft_set (HutItem *item,
                    HutMeasure measure,
                    double value)
{
  g_return_if_fail (item != NULL && isfinite (value));

  const HutRect front = usual_rect (item, HUT_ITEM_FRONT),
                behind = usual_rect (item, HUT_ITEM_BEHIND);
  double *member = get_member (item, measure);

  if (member != NULL)
    *member = value;
  else if (measure == HUT_MEASURE_FRONT)
    set_depth (item, HUT_ITEM_FRONT, FALSE, value);
  else if (measure == HUT_MEASURE_BEHIND)
    set_depth (item, HUT_ITEM_BEHIND, FALSE, value);
  else if (measure == HUT_MEASURE_LEADS)
    set_depth (item, HUT_ITEM_BEHIND, TRUE, value);
  follow (item, front, behind);
}

/* ---- screws ---------------------------------------------------------------------------------- */

static gboolean
is_screw (const HutItemCut *cut)
{
  return cut->role == HUT_CUT_SCREW && cut->leaf == 0;
}

guint
hut_item_draft_count_screws (const HutItem *item)
{
  guint n = 0;

  g_return_val_if_fail (item != NULL, 0);

  for (guint i = 0; i < item->cuts->len; i++)
    n += is_screw (&g_array_index (item->cuts, HutItemCut, i));
  return n;
}

HutItemCut *
hut_item_draft_get_screw (const HutItem *item,
                          guint index)
{
  g_return_val_if_fail (item != NULL, NULL);

  for (guint i = 0; i < item->cuts->len; i++)
    {
      HutItemCut *cut = &g_array_index (item->cuts, HutItemCut, i);

      if (is_screw (cut) && index-- == 0)
        return cut;
    }
  return NULL;
}

gboolean
hut_item_draft_add_screw (HutItem *item)
{
  g_return_val_if_fail (item != NULL, FALSE);

  const guint n = hut_item_draft_count_screws (item);
  HutItemCut fresh = { .role = HUT_CUT_SCREW, .thread_mm = NEW_THREAD_MM };

  if (n >= HUT_DRAFT_SCREWS_MAX)
    return FALSE;
  if (n > 0)
    {
      fresh = *hut_item_draft_get_screw (item, n - 1);
      fresh.at.u += NEW_STEP_MM;
    }
  g_array_append_val (item->cuts, fresh);
  return TRUE;
}

void
hut_item_draft_remove_screw (HutItem *item,
                             guint index)
{
  g_return_if_fail (item != NULL);

  const HutItemCut *cut = hut_item_draft_get_screw (item, index);

  if (cut != NULL)
    g_array_remove_index (item->cuts, (guint)(cut - &g_array_index (item->cuts, HutItemCut, 0)));
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
  hut_item_draft_set_shape (item, HUT_CUT_ROUND);
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
