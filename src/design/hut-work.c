/* src/design/hut-work.c: what the engineering has to be told: machine at work, duct, coats, stay.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-work.h"

const HutWork hut_work_unknown = {
  .power_w = HUT_UNKNOWN,
  .lamp_w = HUT_UNKNOWN,
  .sound_db = HUT_UNKNOWN,
  .warmest_c = HUT_UNKNOWN,
  .glow = HUT_GLOW_UNKNOWN,
  .laser_w = HUT_UNKNOWN,
  .laser_nm = HUT_UNKNOWN,
  .exposure_s = HUT_UNKNOWN,
};

const HutDuct hut_duct_unknown = {
  .kind = HUT_DUCT_UNKNOWN,
  .diameter_mm = HUT_UNKNOWN,
  .length_mm = HUT_UNKNOWN,
};

const HutStay hut_stay_none = { HUT_STAY_NONE, HUT_STAYS_USUAL, HUT_UNKNOWN };

gboolean
hut_work_equal (const HutWork *a,
                const HutWork *b)
{
  return a->power_w == b->power_w && a->lamp_w == b->lamp_w && a->sound_db == b->sound_db
         && a->warmest_c == b->warmest_c && a->glow == b->glow && a->laser_w == b->laser_w
         && a->laser_nm == b->laser_nm && a->exposure_s == b->exposure_s;
}

gboolean
hut_duct_equal (const HutDuct *a,
                const HutDuct *b)
{
  return a->kind == b->kind && a->diameter_mm == b->diameter_mm && a->length_mm == b->length_mm
         && a->bends == b->bends && a->exit == b->exit;
}

gboolean
hut_finishing_equal (const HutFinishing *a,
                     const HutFinishing *b)
{
  return a->inside == b->inside && a->outside == b->outside;
}

gboolean
hut_stay_equal (const HutStay *a,
                const HutStay *b)
{
  return a->kind == b->kind && a->count == b->count && a->force_n == b->force_n;
}
