/* src/app/hut-session-hardware.c: edits of hardware; each is one undo step.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session-hardware.h"
#include <glib/gi18n.h>
#include <math.h>

#define RIGHT_ANGLE_DEG 90.0
#define WHOLE_TURN_DEG 360.0

typedef struct
{
  const HutAssembly *assembly;
  const HutItem *item;
  const char *name;
  HutPanelId panel;
  HutPoint at;
  char *new_id; /* (out) */
} HutAddition;

static gboolean
add_hardware (HutDesign *design,
              gpointer user_data)
{
  HutAddition *addition = user_data;
  g_autofree char *id = hut_design_dup_free_id (design, addition->item->id);
  g_autoptr(HutHardware) hardware
      = hut_hardware_new (id, hut_design_keep_item (design, addition->item), addition->panel);

  if (!hut_assembly_position_for (addition->assembly, addition->at, &hardware->at))
    return FALSE;
  hardware->face = addition->item->from_outside ? HUT_FACE_OUTSIDE : HUT_FACE_INSIDE;
  g_free (hardware->name);
  hardware->name = g_strdup (addition->name);
  g_ptr_array_add (design->hardware, g_steal_pointer (&hardware));
  addition->new_id = g_steal_pointer (&id);
  return TRUE;
}

const char *
hut_session_add_hardware (HutSession *self,
                          const HutItem *item,
                          const char *name,
                          HutPanelId panel,
                          HutPoint at)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && item != NULL && name != NULL, NULL);

  HutAddition addition = { hut_session_get_assembly (self), item, name, panel, at, NULL };

  /* Translators: what Undo takes back. */
  if (hut_session_edit (self, _("Add Hardware"), add_hardware, &addition))
    hut_session_select (self, addition.new_id);
  else
    g_clear_pointer (&addition.new_id, g_free);

  const gboolean added = addition.new_id != NULL;

  g_free (addition.new_id);
  return added ? hut_session_get_selected (self) : NULL;
}

static HutFace
other_face (HutFace face)
{
  return face == HUT_FACE_OUTSIDE ? HUT_FACE_INSIDE : HUT_FACE_OUTSIDE;
}

static gboolean
flip (HutDesign *design,
      gpointer user_data)
{
  HutOpening *opening = hut_design_get_opening (design, user_data);
  HutHardware *hardware = hut_design_get_hardware (design, user_data);
  const HutItem *item
      = hardware != NULL ? hut_design_get_hardware_item (design, hardware) : NULL;

  if (opening != NULL)
    opening->face = other_face (opening->face);
  else if (item == NULL
           || !(hardware->face == HUT_FACE_OUTSIDE ? item->from_inside : item->from_outside))
    return FALSE;
  else
    hardware->face = other_face (hardware->face);
  return TRUE;
}

gboolean
hut_session_flip_selected (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autofree char *item = g_strdup (hut_session_get_selected (self));

  /* Translators: what Undo takes back. */
  return item != NULL && hut_session_edit (self, _("Other Face"), flip, item);
}

static double
turned_deg (double turn_deg)
{
  return fmod (turn_deg + RIGHT_ANGLE_DEG, WHOLE_TURN_DEG);
}

static gboolean
turn (HutDesign *design,
      gpointer user_data)
{
  HutOpening *opening = hut_design_get_opening (design, user_data);
  HutHardware *hardware = hut_design_get_hardware (design, user_data);

  if (opening != NULL)
    opening->turn_deg = turned_deg (opening->turn_deg);
  if (hardware != NULL)
    hardware->turn_deg = turned_deg (hardware->turn_deg);
  return opening != NULL || hardware != NULL;
}

gboolean
hut_session_turn_selected (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autofree char *item = g_strdup (hut_session_get_selected (self));

  /* Translators: what Undo takes back. */
  return item != NULL && hut_session_edit (self, _("Turn"), turn, item);
}

static gboolean
apply_fix (HutDesign *design,
           gpointer user_data)
{
  return hut_finding_apply_fix (user_data, design);
}

gboolean
hut_session_apply_fix (HutSession *self,
                       const HutFinding *finding)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && finding != NULL, FALSE);

  /* Translators: what Undo takes back: the cure that a finding offers. */
  return hut_session_edit (self, _("Fix"), apply_fix, (gpointer) finding);
}
