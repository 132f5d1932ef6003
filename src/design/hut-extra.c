/* src/design/hut-extra.c: flat parts that the user draws.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

/* What a new plate starts from, mm: a foot with two screw holes. Own choice. */
#define WIDTH_MM 80.0
#define HEIGHT_MM 30.0
#define RADIUS_MM 3.0
#define HOLE_AT_MM 25.0
#define HOLE_MM 4.5 /* M4, ISO 273 medium */

HutExtra *
hut_extra_new (const char *id)
{
  HutExtra *self = g_new0 (HutExtra, 1);
  const HutExtraRect rect = { 0.0, 0.0, WIDTH_MM, HEIGHT_MM };
  const HutExtraHole holes[] = {
    { -HOLE_AT_MM, 0.0, HOLE_MM, HOLE_MM, HOLE_MM / 2.0 },
    { HOLE_AT_MM, 0.0, HOLE_MM, HOLE_MM, HOLE_MM / 2.0 },
  };

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->stock = g_strdup ("");
  self->count = 1;
  self->radius_mm = RADIUS_MM;
  self->rects = g_array_new (FALSE, TRUE, sizeof (HutExtraRect));
  self->holes = g_array_new (FALSE, TRUE, sizeof (HutExtraHole));
  g_array_append_val (self->rects, rect);
  g_array_append_vals (self->holes, holes, G_N_ELEMENTS (holes));
  return self;
}

HutExtra *
hut_extra_copy (const HutExtra *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutExtra *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  copy->stock = g_strdup (self->stock);
  copy->rects = g_array_copy (self->rects);
  copy->holes = g_array_copy (self->holes);
  return copy;
}

static gboolean
rects_equal (const GArray *a,
             const GArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    {
      const HutExtraRect *p = &g_array_index (a, HutExtraRect, i);
      const HutExtraRect *q = &g_array_index (b, HutExtraRect, i);

      if (p->u_mm != q->u_mm || p->v_mm != q->v_mm || p->width_mm != q->width_mm
          || p->height_mm != q->height_mm)
        return FALSE;
    }
  return a->len == b->len;
}

static gboolean
holes_equal (const GArray *a,
             const GArray *b)
{
  for (guint i = 0; a->len == b->len && i < a->len; i++)
    {
      const HutExtraHole *p = &g_array_index (a, HutExtraHole, i);
      const HutExtraHole *q = &g_array_index (b, HutExtraHole, i);

      if (p->u_mm != q->u_mm || p->v_mm != q->v_mm || p->width_mm != q->width_mm
          || p->height_mm != q->height_mm || p->radius_mm != q->radius_mm)
        return FALSE;
    }
  return a->len == b->len;
}

gboolean
hut_extra_equal (const HutExtra *a,
                 const HutExtra *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0
         && g_strcmp0 (a->stock, b->stock) == 0 && a->count == b->count
         && a->radius_mm == b->radius_mm && rects_equal (a->rects, b->rects)
         && holes_equal (a->holes, b->holes);
}

void
hut_extra_free (HutExtra *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_free (self->stock);
  g_clear_pointer (&self->rects, g_array_unref);
  g_clear_pointer (&self->holes, g_array_unref);
  g_free (self);
}

HutExtra *
hut_design_get_extra (const HutDesign *self,
                      const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);

  for (guint i = 0; id != NULL && i < self->extras->len; i++)
    {
      HutExtra *extra = g_ptr_array_index (self->extras, i);

      if (g_strcmp0 (extra->id, id) == 0)
        return extra;
    }
  return NULL;
}
