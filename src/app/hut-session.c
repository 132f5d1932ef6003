/* src/app/hut-session.c: the design that is open, its history, and what is derived from it.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strategy: undo is a stack of whole designs (they are small). What is derived is computed when
 * somebody asks for it and dropped when the design changes, so that a drag which changes the design
 * several times per frame pays for one derivation.
 * Invariants: `derived` members belong to the present `design`; the selection names an item that
 * exists; an open gesture holds the design as it was at its begin. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session.h"
#include "design/hut-file.h"

/* Own choice: more steps than anybody takes back, and under some 10 MB of designs. */
#define HISTORY_STEPS_MAX 500

/* One state of the past or the future, and the label of the edit between it and the next. */
typedef struct
{
  HutDesign *design;
  char *label;
} HutStep;

/* What tells a finding from others when the list is made anew. */
typedef struct
{
  const char *check; /* static */
  char *item, *other;
  HutPlace place;
  guint nth; /* findings before it that are alike in all of the above */
} HutFindingKey;

struct _HutSession
{
  GObject parent_instance;

  HutDesign *design;
  HutDesign *saved; /* as last loaded or saved; NULL when it exists in no file */
  char *path;

  GPtrArray *past, *future; /* HutStep */
  HutDesign *gesture_start; /* NULL when no gesture is open */
  char *gesture_label;

  HutAssembly *assembly;
  HutPartSet *parts;
  GPtrArray *findings;

  char *selected;
  gboolean finding_selected;
  HutFindingKey finding_key;

  gboolean was_modified; /* as last told by "file-changed" */
};

enum
{
  SIGNAL_DERIVED,
  SIGNAL_SELECTION_CHANGED,
  SIGNAL_FILE_CHANGED,
  SIGNAL_COUNT
};

static guint signals[SIGNAL_COUNT];

G_DEFINE_TYPE (HutSession, hut_session, G_TYPE_OBJECT)

static HutStep *
hut_step_new (HutDesign *design,
              const char *label)
{
  HutStep *step = g_new0 (HutStep, 1);

  step->design = design;
  step->label = g_strdup (label);
  return step;
}

static void
hut_step_free (HutStep *step)
{
  hut_design_free (step->design);
  g_free (step->label);
  g_free (step);
}

static void
hut_finding_key_clear (HutFindingKey *key)
{
  g_clear_pointer (&key->item, g_free);
  g_clear_pointer (&key->other, g_free);
  *key = (HutFindingKey){ 0 };
}

static HutPlace
first_place (const HutFinding *finding)
{
  if (finding->places != NULL && finding->places->len > 0)
    return g_array_index (finding->places, HutPlace, 0);
  return (HutPlace){ 0 };
}

/* The same check about the same thing, wherever it moved on its panel. */
static gboolean
hut_finding_key_matches (const HutFindingKey *key,
                         const HutFinding *finding)
{
  const HutPlace place = first_place (finding);

  return g_strcmp0 (key->check, finding->check) == 0 && g_strcmp0 (key->item, finding->item) == 0
         && g_strcmp0 (key->other, finding->other) == 0 && key->place.has_panel == place.has_panel
         && (!place.has_panel || hut_panel_id_equal (key->place.panel, place.panel));
}

static void
hut_session_drop_derived (HutSession *self)
{
  g_clear_pointer (&self->findings, g_ptr_array_unref);
  g_clear_pointer (&self->parts, hut_part_set_free);
  g_clear_pointer (&self->assembly, hut_assembly_free);
}

static gboolean
has_item (const HutDesign *design,
          const char *item)
{
  return item != NULL
         && (hut_design_get_opening (design, item) != NULL
             || hut_design_get_window (design, item) != NULL
             || hut_design_get_hardware (design, item) != NULL);
}

static void
hut_session_tell_file (HutSession *self,
                       gboolean always)
{
  const gboolean modified = hut_session_is_modified (self);

  if (!always && modified == self->was_modified)
    return;
  self->was_modified = modified;
  g_signal_emit (self, signals[SIGNAL_FILE_CHANGED], 0);
}

/* Takes @design as the present one; the caller has put the old one where it belongs. */
static void
hut_session_take_design (HutSession *self,
                         HutDesign *design)
{
  gboolean selection_lost = FALSE;

  hut_session_drop_derived (self);
  self->design = design;
  if (self->selected != NULL && !has_item (design, self->selected))
    {
      g_clear_pointer (&self->selected, g_free);
      selection_lost = TRUE;
    }
  g_signal_emit (self, signals[SIGNAL_DERIVED], 0);
  if (selection_lost)
    g_signal_emit (self, signals[SIGNAL_SELECTION_CHANGED], 0);
  hut_session_tell_file (self, FALSE);
}

static void
hut_session_push_past (HutSession *self,
                       HutDesign *design,
                       const char *label)
{
  g_ptr_array_add (self->past, hut_step_new (design, label));
  if (self->past->len > HISTORY_STEPS_MAX)
    g_ptr_array_remove_index (self->past, 0);
  g_ptr_array_set_size (self->future, 0);
}

static void
hut_session_finalize (GObject *object)
{
  HutSession *self = HUT_SESSION (object);

  hut_session_drop_derived (self);
  g_clear_pointer (&self->design, hut_design_free);
  g_clear_pointer (&self->saved, hut_design_free);
  g_clear_pointer (&self->gesture_start, hut_design_free);
  g_clear_pointer (&self->gesture_label, g_free);
  g_clear_pointer (&self->path, g_free);
  g_clear_pointer (&self->selected, g_free);
  g_clear_pointer (&self->past, g_ptr_array_unref);
  g_clear_pointer (&self->future, g_ptr_array_unref);
  hut_finding_key_clear (&self->finding_key);
  G_OBJECT_CLASS (hut_session_parent_class)->finalize (object);
}

static void
hut_session_class_init (HutSessionClass *class)
{
  GType type = G_TYPE_FROM_CLASS (class);

  G_OBJECT_CLASS (class)->finalize = hut_session_finalize;
  signals[SIGNAL_DERIVED]
      = g_signal_new ("derived", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_SELECTION_CHANGED] = g_signal_new ("selection-changed", type, G_SIGNAL_RUN_LAST, 0,
                                                    NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SIGNAL_FILE_CHANGED]
      = g_signal_new ("file-changed", type, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hut_session_init (HutSession *self)
{
  self->past = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_step_free);
  self->future = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_step_free);
}

HutSession *
hut_session_new (HutDesign *design)
{
  g_return_val_if_fail (design != NULL, NULL);

  HutSession *self = g_object_new (HUT_TYPE_SESSION, NULL);

  self->design = design;
  self->saved = hut_design_copy (design);
  return self;
}

const HutDesign *
hut_session_get_design (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  return self->design;
}

const HutAssembly *
hut_session_get_assembly (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);

  if (self->assembly == NULL)
    self->assembly = hut_assembly_new (self->design);
  return self->assembly;
}

const HutPartSet *
hut_session_get_parts (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);

  if (self->parts == NULL)
    self->parts = hut_part_set_new (hut_session_get_assembly (self));
  return self->parts;
}

const GPtrArray *
hut_session_get_findings (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);

  if (self->findings == NULL)
    self->findings = hut_check_all (hut_session_get_assembly (self), hut_session_get_parts (self));
  return self->findings;
}

/* ---- edits and history ----------------------------------------------------------------------- */

gboolean
hut_session_edit (HutSession *self,
                  const char *label,
                  HutEdit edit,
                  gpointer user_data)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && label != NULL && edit != NULL, FALSE);

  g_autoptr (HutDesign) changed = hut_design_copy (self->design);
  g_autoptr (HutDesign) old = NULL;

  if (!edit (changed, user_data) || hut_design_equal (changed, self->design))
    return FALSE;
  old = g_steal_pointer (&self->design);
  if (self->gesture_start == NULL)
    hut_session_push_past (self, g_steal_pointer (&old), label);
  hut_session_take_design (self, g_steal_pointer (&changed));
  return TRUE;
}

void
hut_session_begin_gesture (HutSession *self,
                           const char *label)
{
  g_return_if_fail (HUT_IS_SESSION (self) && label != NULL);

  hut_session_end_gesture (self);
  self->gesture_start = hut_design_copy (self->design);
  self->gesture_label = g_strdup (label);
}

void
hut_session_end_gesture (HutSession *self)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  g_autoptr (HutDesign) start = g_steal_pointer (&self->gesture_start);
  g_autofree char *label = g_steal_pointer (&self->gesture_label);

  if (start == NULL || hut_design_equal (start, self->design))
    return;
  hut_session_push_past (self, g_steal_pointer (&start), label);
  /* Nothing is derived anew, but what undo says has changed. */
  hut_session_tell_file (self, TRUE);
}

void
hut_session_cancel_gesture (HutSession *self)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  g_autoptr (HutDesign) start = g_steal_pointer (&self->gesture_start);
  g_autoptr (HutDesign) dropped = NULL;

  g_clear_pointer (&self->gesture_label, g_free);
  if (start == NULL || hut_design_equal (start, self->design))
    return;
  dropped = g_steal_pointer (&self->design);
  hut_session_take_design (self, g_steal_pointer (&start));
}

/* Takes the last step of @from; the present design goes to @to under the same label. */
static void
hut_session_step (HutSession *self,
                  GPtrArray *from,
                  GPtrArray *to)
{
  HutStep *step;
  HutDesign *design;

  if (from->len == 0)
    return;
  step = g_ptr_array_steal_index (from, from->len - 1);
  design = step->design;
  step->design = g_steal_pointer (&self->design);
  g_ptr_array_add (to, step);
  hut_session_take_design (self, design);
}

void
hut_session_undo (HutSession *self)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  /* In the middle of a drag, undo means "not this drag". */
  if (self->gesture_start != NULL)
    {
      hut_session_cancel_gesture (self);
      return;
    }
  hut_session_step (self, self->past, self->future);
}

void
hut_session_redo (HutSession *self)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  if (self->gesture_start == NULL)
    hut_session_step (self, self->future, self->past);
}

gboolean
hut_session_can_undo (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);
  return self->past->len > 0 || self->gesture_start != NULL;
}

gboolean
hut_session_can_redo (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);
  return self->future->len > 0 && self->gesture_start == NULL;
}

static const char *
last_label (const GPtrArray *steps)
{
  if (steps->len == 0)
    return NULL;
  return ((const HutStep *)g_ptr_array_index (steps, steps->len - 1))->label;
}

const char *
hut_session_get_undo_label (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  return self->gesture_start != NULL ? self->gesture_label : last_label (self->past);
}

const char *
hut_session_get_redo_label (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  return self->gesture_start != NULL ? NULL : last_label (self->future);
}

/* ---- selection ------------------------------------------------------------------------------- */

const char *
hut_session_get_selected (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  return self->selected;
}

void
hut_session_select (HutSession *self,
                    const char *item)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  const char *known = has_item (self->design, item) ? item : NULL;

  if (g_strcmp0 (known, self->selected) == 0)
    return;
  g_autofree char *old = self->selected;
  self->selected = g_strdup (known);
  g_signal_emit (self, signals[SIGNAL_SELECTION_CHANGED], 0);
}

int
hut_session_get_selected_finding (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), -1);

  if (!self->finding_selected)
    return -1;
  const GPtrArray *findings = hut_session_get_findings (self);
  guint alike = 0;
  for (guint i = 0; i < findings->len; i++)
    if (hut_finding_key_matches (&self->finding_key, g_ptr_array_index (findings, i))
        && alike++ == self->finding_key.nth)
      return (int)i;
  return -1;
}

void
hut_session_select_finding (HutSession *self,
                            int index)
{
  g_return_if_fail (HUT_IS_SESSION (self));

  const GPtrArray *findings = hut_session_get_findings (self);

  if (index == hut_session_get_selected_finding (self) && (index >= 0 || !self->finding_selected))
    return;
  hut_finding_key_clear (&self->finding_key);
  self->finding_selected = index >= 0 && (guint)index < findings->len;
  if (self->finding_selected)
    {
      const HutFinding *finding = g_ptr_array_index (findings, (guint)index);

      self->finding_key.check = finding->check;
      self->finding_key.item = g_strdup (finding->item);
      self->finding_key.other = g_strdup (finding->other);
      self->finding_key.place = first_place (finding);
      for (int i = 0; i < index; i++)
        if (hut_finding_key_matches (&self->finding_key, g_ptr_array_index (findings, i)))
          self->finding_key.nth++;
      if (has_item (self->design, finding->item))
        {
          g_free (self->selected);
          self->selected = g_strdup (finding->item);
        }
    }
  g_signal_emit (self, signals[SIGNAL_SELECTION_CHANGED], 0);
}

/* ---- file ------------------------------------------------------------------------------------ */

const char *
hut_session_get_path (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), NULL);
  return self->path;
}

gboolean
hut_session_is_modified (HutSession *self)
{
  g_return_val_if_fail (HUT_IS_SESSION (self), FALSE);
  return self->saved == NULL || !hut_design_equal (self->saved, self->design);
}

gboolean
hut_session_save (HutSession *self,
                  const char *path,
                  GError **error)
{
  g_return_val_if_fail (HUT_IS_SESSION (self) && path != NULL, FALSE);

  if (!hut_design_save (self->design, path, error))
    return FALSE;
  g_autofree char *old_path = self->path;
  self->path = g_strdup (path);
  g_clear_pointer (&self->saved, hut_design_free);
  self->saved = hut_design_copy (self->design);
  hut_session_tell_file (self, TRUE);
  return TRUE;
}

void
hut_session_replace (HutSession *self,
                     HutDesign *design,
                     const char *path,
                     gboolean unsaved)
{
  g_return_if_fail (HUT_IS_SESSION (self) && design != NULL);

  g_autofree char *old_path = self->path;
  g_autoptr (HutDesign) old = g_steal_pointer (&self->design);

  self->path = g_strdup (path);
  g_ptr_array_set_size (self->past, 0);
  g_ptr_array_set_size (self->future, 0);
  g_clear_pointer (&self->gesture_start, hut_design_free);
  g_clear_pointer (&self->gesture_label, g_free);
  g_clear_pointer (&self->selected, g_free);
  hut_finding_key_clear (&self->finding_key);
  self->finding_selected = FALSE;
  g_clear_pointer (&self->saved, hut_design_free);
  self->saved = unsaved ? NULL : hut_design_copy (design);
  hut_session_take_design (self, design);
  g_signal_emit (self, signals[SIGNAL_SELECTION_CHANGED], 0);
  hut_session_tell_file (self, TRUE);
}
