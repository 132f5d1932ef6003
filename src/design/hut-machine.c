/* src/design/hut-machine.c: measured bodies, what crosses the wall, and the room they sweep.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-design.h"

/* Sizes of a new item, mm. Own choice: a box that is easily seen and easily changed. */
#define BODY_SIZE_MM 100.0
/* A mains lead with its three-pole connector (27 x 20): common practice, no source. */
#define LEAD_MM 8.0
#define LEAD_HEAD_WIDTH_MM 27.0
#define LEAD_HEAD_HEIGHT_MM 20.0
/* An air hose without a fitting. Common practice, no source. */
#define HOSE_MM 8.0
/* The common small duct and its hose with a clamp. Common practice, no source. */
#define DUCT_MM 100.0
#define DUCT_HEAD_MM 108.0

HutBody *
hut_body_new (const char *id,
              HutBodyKind kind)
{
  g_return_val_if_fail (id != NULL, NULL);

  HutBody *self = g_new0 (HutBody, 1);

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->kind = kind;
  self->box.max = (HutVec3) { BODY_SIZE_MM, BODY_SIZE_MM, BODY_SIZE_MM };
  return self;
}

HutBody *
hut_body_copy (const HutBody *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutBody *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  return copy;
}

void
hut_body_free (HutBody *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_free (self);
}

static gboolean
vec3_equal (HutVec3 a,
            HutVec3 b)
{
  return a.x == b.x && a.y == b.y && a.z == b.z;
}

gboolean
hut_body_equal (const HutBody *a,
                const HutBody *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0 && a->kind == b->kind
         && vec3_equal (a->box.min, b->box.min) && vec3_equal (a->box.max, b->box.max)
         && vec3_equal (a->travel, b->travel);
}

HutService *
hut_service_new (const char *id,
                 HutServiceKind kind)
{
  g_return_val_if_fail (id != NULL, NULL);

  HutService *self = g_new0 (HutService, 1);

  self->id = g_strdup (id);
  self->name = g_strdup (id);
  self->kind = kind;
  switch (kind)
    {
    case HUT_SERVICE_HOSE:
      self->line_mm = self->head_width_mm = self->head_height_mm = HOSE_MM;
      break;
    case HUT_SERVICE_DUCT:
      self->line_mm = DUCT_MM;
      self->head_width_mm = self->head_height_mm = DUCT_HEAD_MM;
      break;
    case HUT_SERVICE_LEAD:
    default:
      self->line_mm = LEAD_MM;
      self->head_width_mm = LEAD_HEAD_WIDTH_MM;
      self->head_height_mm = LEAD_HEAD_HEIGHT_MM;
      break;
    }
  return self;
}

HutService *
hut_service_copy (const HutService *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  HutService *copy = g_memdup2 (self, sizeof *self);

  copy->id = g_strdup (self->id);
  copy->name = g_strdup (self->name);
  return copy;
}

void
hut_service_free (HutService *self)
{
  if (self == NULL)
    return;
  g_free (self->id);
  g_free (self->name);
  g_free (self);
}

gboolean
hut_service_equal (const HutService *a,
                   const HutService *b)
{
  return g_strcmp0 (a->id, b->id) == 0 && g_strcmp0 (a->name, b->name) == 0 && a->kind == b->kind
         && a->line_mm == b->line_mm && a->head_width_mm == b->head_width_mm
         && a->head_height_mm == b->head_height_mm && vec3_equal (a->at, b->at);
}

HutBox3
hut_body_swept (const HutBody *self)
{
  g_return_val_if_fail (self != NULL, ((HutBox3) { { 0, 0, 0 }, { -1, -1, -1 } }));

  return hut_box3_sweep (&self->box, self->travel);
}

HutBox3
hut_machine_swept (const HutMachine *self)
{
  HutBox3 all = { { 0, 0, 0 }, { -1, -1, -1 } };

  g_return_val_if_fail (self != NULL, all);

  for (guint i = 0; i < self->bodies->len; i++)
    {
      const HutBox3 swept = hut_body_swept (g_ptr_array_index (self->bodies, i));

      all = hut_box3_union (&all, &swept);
    }
  return all;
}

double
hut_machine_clearance_mm (const HutMachine *self,
                          HutSide side)
{
  g_return_val_if_fail (self != NULL, 0.0);

  switch (side)
    {
    case HUT_SIDE_FRONT:
      return self->clearance_mm.front;
    case HUT_SIDE_BACK:
      return self->clearance_mm.back;
    case HUT_SIDE_LEFT:
      return self->clearance_mm.left;
    case HUT_SIDE_RIGHT:
      return self->clearance_mm.right;
    case HUT_SIDE_TOP:
      return self->clearance_mm.top;
    default:
      return 0.0;
    }
}
