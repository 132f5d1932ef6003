/* src/app/hut-session-edit.c: what keys, menus and drags do to openings and windows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session.h"
#include <glib/gi18n.h>

/* Where a duplicate lies from its original: right and down. Own choice: it shows that there are
 * two. */
#define DUPLICATE_SHIFT_MM 10.0

/* Offsets from the far edge run inwards: there a move to the right or up makes them smaller. */
static double
shift_offset_mm (double offset_mm,
                 HutAnchorKind anchor,
                 double by_mm)
{
  const double shifted_mm = hut_snap_mm (offset_mm + (anchor == HUT_ANCHOR_END ? -by_mm : by_mm));

  return CLAMP (shifted_mm, -HUT_SIZE_MAX_MM, HUT_SIZE_MAX_MM);
}

static void
shift_position (HutPosition *at,
                double du_mm,
                double dv_mm)
{
  at->u_offset_mm = shift_offset_mm (at->u_offset_mm, at->u_anchor, du_mm);
  at->v_offset_mm = shift_offset_mm (at->v_offset_mm, at->v_anchor, dv_mm);
}

static gboolean
remove_by_id (GPtrArray *items,
              gpointer item)
{
  return item != NULL && g_ptr_array_remove (items, item);
}

static gboolean
delete_item (HutDesign *design,
             gpointer user_data)
{
  const char *item = user_data;

  if (remove_by_id (design->hardware, hut_design_get_hardware (design, item)))
    {
      hut_design_drop_unused_items (design);
      return TRUE;
    }
  return remove_by_id (design->openings, hut_design_get_opening (design, item))
         || remove_by_id (design->windows, hut_design_get_window (design, item));
}

static const char *
delete_label (const HutDesign *design,
              const char *item)
{
  if (hut_design_get_window (design, item) != NULL)
    /* Translators: what Undo takes back. */
    return _("Delete Window");
  if (hut_design_get_hardware (design, item) != NULL)
    /* Translators: what Undo takes back. */
    return _("Delete Hardware");
  /* Translators: what Undo takes back. */
  return _("Delete Opening");
}

gboolean
hut_session_delete_selected (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autofree char *item = g_strdup (hut_session_get_selected (self));

  if (item == NULL)
    return FALSE;
  return hut_session_edit (self, delete_label (hut_session_get_design (self), item), delete_item,
                           item);
}

typedef struct
{
  const char *item; /* the original */
  char *new_id;     /* (out) */
} HutDuplicate;

static char *
dup_copy_name (const char *name)
{
  if (name == NULL || *name == '\0')
    return g_strdup ("");
  /* Translators: name of the duplicate of an opening; %s is the name of the original. */
  return g_strdup_printf (_("%s, copy"), name);
}

/* Makes a copy another thing than its original. */
static void
set_apart (char **id,
           char **name,
           HutPosition *at,
           const char *new_id)
{
  g_autofree char *old_name = *name;

  g_free (*id);
  *id = g_strdup (new_id);
  *name = dup_copy_name (old_name);
  shift_position (at, DUPLICATE_SHIFT_MM, -DUPLICATE_SHIFT_MM);
}

static gboolean
duplicate_item (HutDesign *design,
                gpointer user_data)
{
  HutDuplicate *duplicate = user_data;
  const HutOpening *opening = hut_design_get_opening (design, duplicate->item);
  const HutWindow *window = hut_design_get_window (design, duplicate->item);
  const HutHardware *hardware = hut_design_get_hardware (design, duplicate->item);

  if (opening == NULL && window == NULL && hardware == NULL)
    return FALSE;
  duplicate->new_id = hut_design_dup_free_id (design, duplicate->item);
  if (opening != NULL)
    {
      HutOpening *copy = hut_opening_copy (opening);

      set_apart (&copy->id, &copy->name, &copy->at, duplicate->new_id);
      g_ptr_array_add (design->openings, copy);
    }
  else if (window != NULL)
    {
      HutWindow *copy = hut_window_copy (window);

      set_apart (&copy->id, &copy->name, &copy->at, duplicate->new_id);
      g_ptr_array_add (design->windows, copy);
    }
  else
    {
      HutHardware *copy = hut_hardware_copy (hardware);

      set_apart (&copy->id, &copy->name, &copy->at, duplicate->new_id);
      g_ptr_array_add (design->hardware, copy);
    }
  return TRUE;
}

gboolean
hut_session_duplicate_selected (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autofree char *item = g_strdup (hut_session_get_selected (self));
  HutDuplicate duplicate = { .item = item };

  if (item == NULL)
    return FALSE;
  /* Translators: what Undo takes back. */
  const gboolean done = hut_session_edit (self, _("Duplicate"), duplicate_item, &duplicate);
  if (done)
    hut_session_select (self, duplicate.new_id);
  g_free (duplicate.new_id);
  return done;
}

typedef struct
{
  const char *item;
  double du_mm, dv_mm;
} HutNudge;

static gboolean
nudge_item (HutDesign *design,
            gpointer user_data)
{
  const HutNudge *nudge = user_data;
  HutPosition *at = hut_design_get_position (design, nudge->item);

  if (at == NULL)
    return FALSE;
  shift_position (at, nudge->du_mm, nudge->dv_mm);
  return TRUE;
}

gboolean
hut_session_nudge_selected (HutSession *self,
                            double du_mm,
                            double dv_mm)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);

  g_autofree char *item = g_strdup (hut_session_get_selected (self));
  HutNudge nudge = { item, du_mm, dv_mm };

  if (item == NULL)
    return FALSE;
  /* Translators: what Undo takes back. */
  return hut_session_edit (self, _("Move"), nudge_item, &nudge);
}

typedef struct
{
  const HutAssembly *assembly;
  const char *item;
  HutPanelId panel;
  HutPoint at;
} HutMove;

static gboolean
move_item (HutDesign *design,
           gpointer user_data)
{
  const HutMove *move = user_data;
  HutPosition *at = hut_design_get_position (design, move->item);

  if (at == NULL)
    return FALSE;
  at->panel = move->panel;
  return hut_assembly_position_for (move->assembly, move->at, at);
}

gboolean
hut_session_move_item (HutSession *self,
                       const char *item,
                       HutPanelId panel,
                       HutPoint at)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && item != NULL, FALSE);

  HutMove move = { hut_session_get_assembly (self), item, panel, at };

  return hut_session_edit (self, _("Move"), move_item, &move);
}

typedef struct
{
  const HutAssembly *assembly;
  const HutOpening *model;
  HutPanelId panel;
  HutPoint at;
  char *new_id; /* (out) */
} HutAddition;

static gboolean
add_opening (HutDesign *design,
             gpointer user_data)
{
  HutAddition *addition = user_data;
  g_autoptr (HutOpening) opening = hut_opening_copy (addition->model);

  opening->at.panel = addition->panel;
  if (!hut_assembly_position_for (addition->assembly, addition->at, &opening->at))
    return FALSE;
  g_free (opening->id);
  opening->id = hut_design_dup_free_id (design, addition->model->id);
  addition->new_id = g_strdup (opening->id);
  g_ptr_array_add (design->openings, g_steal_pointer (&opening));
  return TRUE;
}

const char *
hut_session_add_opening (HutSession *self,
                         const HutOpening *model,
                         HutPanelId panel,
                         HutPoint at)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && model != NULL, NULL);

  HutAddition addition = { hut_session_get_assembly (self), model, panel, at, NULL };

  /* Translators: what Undo takes back. */
  if (!hut_session_edit (self, _("Add Opening"), add_opening, &addition))
    return NULL;
  hut_session_select (self, addition.new_id);
  g_free (addition.new_id);
  return hut_session_get_selected (self);
}
