/* src/app/hut-session-extras.c: plates that the user draws come, go, and get their shapes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session-extras.h"
#include <glib/gi18n.h>

/* A new rectangle or hole stands in the middle, mm. Own choice. */
#define RECTANGLE_MM 20.0
#define HOLE_MM 4.5

typedef struct
{
  const char *extra;
  HutExtraShapeKind kind;
  guint index;
  char *id; /* (out) */
} Edit;

static gboolean
add_extra (HutDesign *design,
           gpointer user_data)
{
  Edit *edit = user_data;
  HutExtra *extra;

  edit->id = hut_design_dup_free_id (design, "plate");
  extra = hut_extra_new (edit->id);
  g_free (extra->name);
  extra->name = g_strdup (_("New plate"));
  g_free (extra->stock);
  extra->stock = g_strdup (design->shell.default_stock);
  g_ptr_array_add (design->extras, extra);
  return TRUE;
}

char *
hut_session_add_extra (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);

  Edit edit = { NULL };

  /* Translators: what Undo takes back. */
  if (!hut_session_edit (self, _("Add Plate"), add_extra, &edit))
    g_clear_pointer (&edit.id, g_free);
  return edit.id;
}

static gboolean
remove_extra (HutDesign *design,
              gpointer user_data)
{
  const Edit *edit = user_data;

  return g_ptr_array_remove (design->extras, hut_design_get_extra (design, edit->extra));
}

gboolean
hut_session_remove_extra (HutSession *self,
                          const char *extra)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && extra != NULL, FALSE);

  Edit edit = { .extra = extra };

  /* Translators: what Undo takes back. */
  return hut_session_edit (self, _("Remove Plate"), remove_extra, &edit);
}

static gboolean
add_shape (HutDesign *design,
           gpointer user_data)
{
  const Edit *edit = user_data;
  HutExtra *extra = hut_design_get_extra (design, edit->extra);
  const HutExtraRect rect = { 0.0, 0.0, RECTANGLE_MM, RECTANGLE_MM };
  const HutExtraHole hole = { 0.0, 0.0, HOLE_MM, HOLE_MM, HOLE_MM / 2.0 };

  if (extra == NULL)
    return FALSE;
  if (edit->kind == HUT_EXTRA_HOLE)
    g_array_append_val (extra->holes, hole);
  else
    g_array_append_val (extra->rects, rect);
  return TRUE;
}

gboolean
hut_session_add_extra_shape (HutSession *self,
                             const char *extra,
                             HutExtraShapeKind kind)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && extra != NULL, FALSE);

  Edit edit = { .extra = extra, .kind = kind };

  /* Translators: what Undo takes back. */
  return hut_session_edit (self, kind == HUT_EXTRA_HOLE ? _("Add Hole") : _("Add Rectangle"),
                           add_shape, &edit);
}

static gboolean
remove_shape (HutDesign *design,
              gpointer user_data)
{
  const Edit *edit = user_data;
  HutExtra *extra = hut_design_get_extra (design, edit->extra);
  GArray *shapes;

  if (extra == NULL)
    return FALSE;
  shapes = edit->kind == HUT_EXTRA_HOLE ? extra->holes : extra->rects;
  if (edit->index >= shapes->len || (edit->kind == HUT_EXTRA_RECTANGLE && shapes->len == 1))
    return FALSE;
  g_array_remove_index (shapes, edit->index);
  return TRUE;
}

gboolean
hut_session_remove_extra_shape (HutSession *self,
                                const char *extra,
                                HutExtraShapeKind kind,
                                guint index)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && extra != NULL, FALSE);

  Edit edit = { .extra = extra, .kind = kind, .index = index };

  /* Translators: what Undo takes back. */
  return hut_session_edit (self,
                           kind == HUT_EXTRA_HOLE ? _("Remove Hole") : _("Remove Rectangle"),
                           remove_shape, &edit);
}
