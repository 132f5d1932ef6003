/* src/design/hut-position-format.c: attributes that say where a thing is on its panel.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "design/hut-position-format.h"

const char *const hut_anchor_choices[] = { "start", "centre", "end", "body", NULL };
const char *const hut_face_choices[] = { "outside", "inside", NULL };

char *
hut_position_dup_fault (const HutPosition *at,
                        const char *what,
                        const char *id)
{
  const gboolean needs_body = at->u_anchor == HUT_ANCHOR_BODY || at->v_anchor == HUT_ANCHOR_BODY;

  if (!needs_body || at->body != NULL)
    return NULL;
  return g_strdup_printf ("%s '%s' is anchored to a body but names none; "
                          "allowed: 'body' with the id of a <body>, or another anchor",
                          what, id);
}
