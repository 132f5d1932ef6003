/* src/catalog/hut-item.c: one piece of hardware as data.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-catalog"
#include "config.h"
#include "catalog/hut-item.h"

HutItemSource *
hut_item_source_new (const char *of,
                     const char *source)
{
  HutItemSource *self = g_new0 (HutItemSource, 1);

  self->of = g_strdup (of);
  self->source = g_strdup (source);
  return self;
}

void
hut_item_source_free (HutItemSource *self)
{
  if (self == NULL)
    return;
  g_free (self->of);
  g_free (self->source);
  g_free (self);
}

HutItem *
hut_item_new (const char *id)
{
  HutItem *self = g_new0 (HutItem, 1);

  self->id = g_strdup (id);
  self->name = g_strdup ("");
  self->words = g_strdup ("");
  self->group = HUT_ITEM_MOUNT;
  self->from_outside = TRUE;
  self->from_inside = TRUE;
  self->cuts = g_array_new (FALSE, TRUE, sizeof (HutItemCut));
  self->bodies = g_array_new (FALSE, TRUE, sizeof (HutItemBody));
  self->curve = g_array_new (FALSE, TRUE, sizeof (HutFanPoint));
  self->sources = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_item_source_free);
  return self;
}

HutItem *
hut_item_copy (const HutItem *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutItem *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->words = g_strdup (self->words);
  copy->cuts = g_array_copy (self->cuts);
  copy->bodies = g_array_copy (self->bodies);
  copy->curve = g_array_copy (self->curve);
  copy->sources = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_item_source_free);
  for (guint i = 0; i < self->sources->len; i++)
    {
      const HutItemSource *source = g_ptr_array_index (self->sources, i);

      g_ptr_array_add (copy->sources, hut_item_source_new (source->of, source->source));
    }
  return copy;
}

void
hut_item_free (HutItem *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_free (self->words);
  g_array_unref (self->cuts);
  g_array_unref (self->bodies);
  g_array_unref (self->curve);
  g_ptr_array_unref (self->sources);
  g_free (self);
}

/* ---- equal ---------------------------------------------------------------------------------- */

gboolean
hut_item_cut_equal (const HutItemCut *a,
                    const HutItemCut *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return a->role == b->role && a->shape == b->shape && a->leaf == b->leaf && a->at.u == b->at.u
         && a->at.v == b->at.v && a->diameter_mm == b->diameter_mm && a->width_mm == b->width_mm
         && a->height_mm == b->height_mm && a->radius_mm == b->radius_mm
         && a->thread_mm == b->thread_mm && !a->wood_screw == !b->wood_screw
         && a->grip_mm == b->grip_mm && a->tapped_mm == b->tapped_mm;
}

gboolean
hut_item_body_equal (const HutItemBody *a,
                     const HutItemBody *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return a->side == b->side && a->leaf == b->leaf && a->rect.u0 == b->rect.u0
         && a->rect.v0 == b->rect.v0 && a->rect.u1 == b->rect.u1 && a->rect.v1 == b->rect.v1
         && a->depth_mm == b->depth_mm && !a->soft == !b->soft;
}

static gboolean
cuts_equal (const GArray *a,
            const GArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    if (!hut_item_cut_equal (&g_array_index (a, HutItemCut, i), &g_array_index (b, HutItemCut, i)))
      return FALSE;
  return a->len == b->len;
}

static gboolean
bodies_equal (const GArray *a,
              const GArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    if (!hut_item_body_equal (&g_array_index (a, HutItemBody, i),
                              &g_array_index (b, HutItemBody, i)))
      return FALSE;
  return a->len == b->len;
}

static gboolean
curves_equal (const GArray *a,
              const GArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    {
      const HutFanPoint *x = &g_array_index (a, HutFanPoint, i);
      const HutFanPoint *y = &g_array_index (b, HutFanPoint, i);

      if (x->flow_m3_h != y->flow_m3_h || x->pressure_pa != y->pressure_pa)
        return FALSE;
    }
  return a->len == b->len;
}

static gboolean
sources_equal (const GPtrArray *a,
               const GPtrArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    {
      const HutItemSource *x = g_ptr_array_index (a, i), *y = g_ptr_array_index (b, i);

      if (g_strcmp0 (x->of, y->of) != 0 || g_strcmp0 (x->source, y->source) != 0)
        return FALSE;
    }
  return a->len == b->len;
}

static gboolean
mounts_equal (const HutItem *a,
              const HutItem *b)
{
  return a->span == b->span && a->hold == b->hold && !a->from_outside == !b->from_outside
         && !a->from_inside == !b->from_inside && a->thickness_min_mm == b->thickness_min_mm
         && a->thickness_max_mm == b->thickness_max_mm && a->nut_corners_mm == b->nut_corners_mm
         && a->nut_height_mm == b->nut_height_mm && a->body_diagonal_mm == b->body_diagonal_mm
         && a->flange_width_mm == b->flange_width_mm && a->flange_height_mm == b->flange_height_mm
         && !a->flange_round == !b->flange_round && !a->strained == !b->strained
         && !a->mains == !b->mains;
}

static gboolean
numbers_equal (const HutItem *a,
               const HutItem *b)
{
  return a->pass_width_mm == b->pass_width_mm && a->pass_height_mm == b->pass_height_mm
         && !a->pass_round == !b->pass_round && a->line_min_mm == b->line_min_mm
         && a->line_max_mm == b->line_max_mm && a->mass_kg == b->mass_kg
         && a->free_area_ratio == b->free_area_ratio && a->stroke_mm == b->stroke_mm
         && a->force_n == b->force_n && a->length_mm == b->length_mm && a->noise_db == b->noise_db;
}

gboolean
hut_item_equal (const HutItem *a,
                const HutItem *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && g_strcmp0 (a->words, b->words) == 0 && a->group == b->group && mounts_equal (a, b)
         && numbers_equal (a, b) && cuts_equal (a->cuts, b->cuts)
         && bodies_equal (a->bodies, b->bodies) && curves_equal (a->curve, b->curve)
         && sources_equal (a->sources, b->sources);
}
