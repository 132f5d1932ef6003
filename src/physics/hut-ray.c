/* src/physics/hut-ray.c: whether a ray through the enclosure meets sheet.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-physics"
#include "config.h"
#include "physics/hut-ray.h"

gboolean
hut_ray_passes (const GArray *blockers,
                HutVec3 from,
                HutVec3 to,
                guint *first)
{
  g_return_val_if_fail (blockers != NULL && first != NULL, FALSE);

  if (*first < blockers->len
      && hut_blocker_meets (&g_array_index (blockers, HutBlocker, *first), from, to))
    return FALSE;
  for (guint i = 0; i < blockers->len; i++)
    if (i != *first && hut_blocker_meets (&g_array_index (blockers, HutBlocker, i), from, to))
      {
        *first = i;
        return FALSE;
      }
  return TRUE;
}

gboolean
hut_ray_is_free (const HutAssembly *assembly,
                 const HutPartSet *parts,
                 HutVec3 from,
                 HutVec3 to)
{
  g_autoptr(GArray) blockers = hut_blockers_new (assembly, parts);
  guint first = 0;

  return hut_ray_passes (blockers, from, to, &first);
}
