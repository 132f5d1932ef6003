/* src/app/hut-form.c: binds the controls of a page to members of the design.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-form.h"
#include "app/hut-choice-list.h"
#include <glib/gi18n.h>

typedef enum
{
  BINDING_NUMBER,
  BINDING_COUNT,
  BINDING_DERIVED,
  BINDING_SWITCH,
  BINDING_CHOICE,
  BINDING_DERIVED_CHOICE,
  BINDING_TEXT,
  BINDING_REFERENCE,
} HutBindingKind;

/* One control and the member that it shows. */
typedef struct
{
  HutForm *form; /* lent: the form owns the binding */
  HutBindingKind kind;
  GtkWidget *control; /* weak */
  gsize offset;
  HutFormGet get;
  HutFormSet set;
  HutFormChoices choices;
  HutFormGetChoice get_choice;
  HutFormSetChoice set_choice;
  GArray *values; /* of a derived choice: int, parallel to the list shown; NULL for a fixed list */
  HutFormList list;
  const char *none;  /* msgid or NULL; static */
  const char *label; /* msgid; static */
  GPtrArray *ids;    /* of a reference: char *, NULL for none; parallel to the list shown */
  gboolean typing;   /* of a text: not yet applied */
} HutBinding;

struct _HutForm
{
  GObject parent_instance;

  HutSession *session;
  HutFormLocate locate;
  HutFormRepair repair;
  char *item;
  GPtrArray *bindings; /* HutBinding */
  gboolean filling;    /* the form changes controls, not the user */
};

/* A value on its way into the design. */
typedef struct
{
  HutBinding *binding;
  double number;
  int choice;
  const char *text;
} HutFormEdit;

G_DEFINE_TYPE (HutForm, hut_form, G_TYPE_OBJECT)

static gpointer
locate (HutForm *self,
        const HutDesign *design)
{
  if (self->locate == NULL)
    return (gpointer)design;
  return self->item != NULL ? self->locate (design, self->item) : NULL;
}

static gboolean
apply_edit (HutDesign *design,
            gpointer user_data)
{
  const HutFormEdit *edit = user_data;
  const HutBinding *binding = edit->binding;
  gpointer target = locate (binding->form, design);

  if (target == NULL)
    return FALSE;
  switch (binding->kind)
    {
    case BINDING_NUMBER:
      G_STRUCT_MEMBER (double, target, binding->offset) = edit->number;
      break;
    case BINDING_COUNT:
      G_STRUCT_MEMBER (guint, target, binding->offset) = (guint)edit->number;
      break;
    case BINDING_DERIVED:
      binding->set (target, edit->number);
      break;
    case BINDING_SWITCH:
    case BINDING_CHOICE:
      G_STRUCT_MEMBER (int, target, binding->offset) = edit->choice;
      break;
    case BINDING_DERIVED_CHOICE:
      binding->set_choice (binding->form, target, edit->choice);
      break;
    case BINDING_TEXT:
    case BINDING_REFERENCE:
      g_free (G_STRUCT_MEMBER (char *, target, binding->offset));
      G_STRUCT_MEMBER (char *, target, binding->offset) = g_strdup (edit->text);
      break;
    default:
      g_assert_not_reached ();
    }
  if (binding->form->repair != NULL)
    binding->form->repair (design);
  return TRUE;
}

static void
run_edit (HutBinding *binding,
          HutFormEdit edit)
{
  HutForm *self = binding->form;

  if (self->filling)
    return;
  g_object_ref (self);
  edit.binding = binding;
  if (!hut_session_edit (self->session, _(binding->label), apply_edit, &edit))
    hut_form_fill (self);
  g_object_unref (self);
}

/* ---- from the design to the controls --------------------------------------------------------- */

static void
fill_reference (HutForm *self,
                HutBinding *binding,
                const char *id)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  guint position = GTK_INVALID_LIST_POSITION;

  g_ptr_array_set_size (binding->ids, 0);
  if (binding->none != NULL)
    {
      g_ptr_array_add (binding->ids, NULL);
      g_ptr_array_add (names, g_strdup (_(binding->none)));
    }
  binding->list (hut_session_get_design (self->session), binding->ids, names);
  for (guint i = 0; i < binding->ids->len && position == GTK_INVALID_LIST_POSITION; i++)
    if (g_strcmp0 (g_ptr_array_index (binding->ids, i), id) == 0)
      position = i;
  if (position == GTK_INVALID_LIST_POSITION)
    {
      position = binding->ids->len;
      g_ptr_array_add (binding->ids, g_strdup (id));
      /* Translators: choice for something that the design refers to but that does not exist; %s its
       * id */
      g_ptr_array_add (names, g_strdup_printf (_("Missing: %s"), id != NULL ? id : "?"));
    }
  hut_choice_list_set (GTK_DROP_DOWN (binding->control), names);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (binding->control), position);
}

static void
fill_derived_choice (HutForm *self,
                     HutBinding *binding,
                     int value)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  guint position = GTK_INVALID_LIST_POSITION;

  if (binding->values == NULL)
    {
      gtk_drop_down_set_selected (GTK_DROP_DOWN (binding->control), (guint)value);
      return;
    }
  g_array_set_size (binding->values, 0);
  binding->choices (hut_session_get_design (self->session), binding->values, names);
  for (guint i = 0; i < binding->values->len && position == GTK_INVALID_LIST_POSITION; i++)
    if (g_array_index (binding->values, int, i) == value)
      position = i;
  if (position == GTK_INVALID_LIST_POSITION)
    {
      position = binding->values->len;
      g_array_append_val (binding->values, value);
      /* Translators: choice that the design holds but that this enclosure does not have */
      g_ptr_array_add (names, g_strdup (_("Not in this enclosure")));
    }
  hut_choice_list_set (GTK_DROP_DOWN (binding->control), names);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (binding->control), position);
}

static void
fill_text (HutBinding *binding,
           const char *text)
{
  if (text == NULL)
    text = "";
  if (!binding->typing
      && g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (binding->control)), text) != 0)
    gtk_editable_set_text (GTK_EDITABLE (binding->control), text);
}

static void
fill_number (HutBinding *binding,
             double value,
             gboolean reset)
{
  HutNumberEntry *entry = HUT_NUMBER_ENTRY (binding->control);

  if (reset)
    hut_number_entry_reset (entry, value);
  else
    hut_number_entry_set_value (entry, value);
}

static void
fill_binding (HutForm *self,
              HutBinding *binding,
              gconstpointer target,
              gboolean reset)
{
  switch (binding->kind)
    {
    case BINDING_NUMBER:
      fill_number (binding, G_STRUCT_MEMBER (double, target, binding->offset), reset);
      break;
    case BINDING_COUNT:
      fill_number (binding, G_STRUCT_MEMBER (guint, target, binding->offset), reset);
      break;
    case BINDING_DERIVED:
      fill_number (binding, binding->get (target), reset);
      break;
    case BINDING_SWITCH:
      gtk_switch_set_active (GTK_SWITCH (binding->control),
                             G_STRUCT_MEMBER (gboolean, target, binding->offset));
      break;
    case BINDING_CHOICE:
      gtk_drop_down_set_selected (GTK_DROP_DOWN (binding->control),
                                  G_STRUCT_MEMBER (guint, target, binding->offset));
      break;
    case BINDING_DERIVED_CHOICE:
      fill_derived_choice (self, binding, binding->get_choice (target));
      break;
    case BINDING_TEXT:
      if (reset)
        binding->typing = FALSE;
      fill_text (binding, G_STRUCT_MEMBER (const char *, target, binding->offset));
      break;
    case BINDING_REFERENCE:
      fill_reference (self, binding, G_STRUCT_MEMBER (const char *, target, binding->offset));
      break;
    default:
      g_assert_not_reached ();
    }
}

static void
fill_all (HutForm *self,
          gboolean reset)
{
  gconstpointer target = locate (self, hut_session_get_design (self->session));

  if (target == NULL || self->filling)
    return;
  self->filling = TRUE;
  for (guint i = 0; i < self->bindings->len; i++)
    {
      HutBinding *binding = g_ptr_array_index (self->bindings, i);

      if (binding->control != NULL)
        fill_binding (self, binding, target, reset);
    }
  self->filling = FALSE;
}

/* ---- from the controls to the design --------------------------------------------------------- */

static void
on_number_committed (HutNumberEntry *entry,
                     double value,
                     HutBinding *binding)
{
  run_edit (binding, (HutFormEdit){ .number = value });
}

/* A held key changes a number many times; that is one step of undo. */
static void
on_number_spinning (HutNumberEntry *entry,
                    gboolean spinning,
                    HutBinding *binding)
{
  if (spinning)
    hut_session_begin_gesture (binding->form->session, _(binding->label));
  else
    hut_session_end_gesture (binding->form->session);
}

static void
on_switch_changed (GtkSwitch *control,
                   GParamSpec *pspec,
                   HutBinding *binding)
{
  run_edit (binding, (HutFormEdit){ .choice = gtk_switch_get_active (control) });
}

static void
on_choice_changed (GtkDropDown *control,
                   GParamSpec *pspec,
                   HutBinding *binding)
{
  const guint position = gtk_drop_down_get_selected (control);

  if (position == GTK_INVALID_LIST_POSITION || binding->form->filling)
    return;
  if (binding->values == NULL)
    run_edit (binding, (HutFormEdit){ .choice = (int)position });
  else if (position < binding->values->len)
    run_edit (binding, (HutFormEdit){ .choice = g_array_index (binding->values, int, position) });
}

static void
on_reference_changed (GtkDropDown *control,
                      GParamSpec *pspec,
                      HutBinding *binding)
{
  const guint position = gtk_drop_down_get_selected (control);

  if (!binding->form->filling && position < binding->ids->len)
    {
      /* The list is made anew while the edit runs. */
      g_autofree char *id = g_strdup (g_ptr_array_index (binding->ids, position));

      run_edit (binding, (HutFormEdit){ .text = id });
    }
}

static void
commit_text (HutBinding *binding)
{
  if (!binding->typing || binding->control == NULL)
    return;
  binding->typing = FALSE;
  g_autofree char *text
      = g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (binding->control))));
  run_edit (binding, (HutFormEdit){ .text = text });
}

static void
on_text_changed (GtkEditable *editable,
                 HutBinding *binding)
{
  if (!binding->form->filling)
    binding->typing = TRUE;
}

static void
on_text_activated (GtkEntry *entry,
                   HutBinding *binding)
{
  commit_text (binding);
}

static void
on_text_focus_leave (GtkEventControllerFocus *focus,
                     HutBinding *binding)
{
  commit_text (binding);
}

/* ---- the form -------------------------------------------------------------------------------- */

static void
hut_binding_free (HutBinding *binding)
{
  if (binding->control != NULL)
    {
      g_signal_handlers_disconnect_by_data (binding->control, binding);
      g_clear_weak_pointer (&binding->control);
    }
  g_clear_pointer (&binding->ids, g_ptr_array_unref);
  g_clear_pointer (&binding->values, g_array_unref);
  g_free (binding);
}

static void
hut_form_dispose (GObject *object)
{
  HutForm *self = HUT_FORM (object);

  g_clear_pointer (&self->bindings, g_ptr_array_unref);
  g_clear_object (&self->session);
  g_clear_pointer (&self->item, g_free);
  G_OBJECT_CLASS (hut_form_parent_class)->dispose (object);
}

static void
hut_form_class_init (HutFormClass *class)
{
  G_OBJECT_CLASS (class)->dispose = hut_form_dispose;
}

static void
hut_form_init (HutForm *self)
{
  self->bindings = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_binding_free);
}

HutForm *
hut_form_new (HutSession *session,
              HutFormLocate locate_item)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutForm *self = g_object_new (HUT_TYPE_FORM, NULL);

  self->session = g_object_ref (session);
  self->locate = locate_item;
  g_signal_connect_object (session, "derived", G_CALLBACK (hut_form_fill), self, G_CONNECT_SWAPPED);
  return self;
}

HutSession *
hut_form_get_session (HutForm *self)
{
  g_return_val_if_fail (HUT_IS_FORM (self), NULL);
  return self->session;
}

void
hut_form_set_item (HutForm *self,
                   const char *item)
{
  g_return_if_fail (HUT_IS_FORM (self));

  if (g_strcmp0 (item, self->item) == 0)
    {
      fill_all (self, FALSE);
      return;
    }
  g_autofree char *new_item = g_strdup (item);
  hut_form_commit (self);
  g_free (self->item);
  self->item = g_steal_pointer (&new_item);
  fill_all (self, TRUE);
}

const char *
hut_form_get_item (HutForm *self)
{
  g_return_val_if_fail (HUT_IS_FORM (self), NULL);
  return self->item;
}

gconstpointer
hut_form_peek (HutForm *self)
{
  g_return_val_if_fail (HUT_IS_FORM (self), NULL);
  return locate (self, hut_session_get_design (self->session));
}

static HutBinding *
add_binding (HutForm *self,
             HutBindingKind kind,
             gpointer control,
             gsize offset,
             const char *label)
{
  HutBinding *binding = g_new0 (HutBinding, 1);

  g_assert (GTK_IS_WIDGET (control) && label != NULL);
  binding->form = self;
  binding->kind = kind;
  g_set_weak_pointer (&binding->control, control);
  binding->offset = offset;
  binding->label = label;
  g_ptr_array_add (self->bindings, binding);
  return binding;
}

static HutBinding *
add_number_binding (HutForm *self,
                    HutBindingKind kind,
                    HutNumberEntry *entry,
                    gsize offset,
                    const char *label)
{
  HutBinding *binding = add_binding (self, kind, entry, offset, label);

  g_signal_connect (entry, "committed", G_CALLBACK (on_number_committed), binding);
  g_signal_connect (entry, "spinning", G_CALLBACK (on_number_spinning), binding);
  return binding;
}

void
hut_form_add_number (HutForm *self,
                     HutNumberEntry *entry,
                     gsize offset,
                     const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));
  add_number_binding (self, BINDING_NUMBER, entry, offset, label);
}

void
hut_form_add_count (HutForm *self,
                    HutNumberEntry *entry,
                    gsize offset,
                    const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));
  add_number_binding (self, BINDING_COUNT, entry, offset, label);
}

void
hut_form_add_derived (HutForm *self,
                      HutNumberEntry *entry,
                      HutFormGet get,
                      HutFormSet set,
                      const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));

  HutBinding *binding = add_number_binding (self, BINDING_DERIVED, entry, 0, label);

  binding->get = get;
  binding->set = set;
}

void
hut_form_add_switch (HutForm *self,
                     GtkSwitch *control,
                     gsize offset,
                     const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));

  HutBinding *binding = add_binding (self, BINDING_SWITCH, control, offset, label);

  g_signal_connect (control, "notify::active", G_CALLBACK (on_switch_changed), binding);
}

void
hut_form_add_choice (HutForm *self,
                     GtkDropDown *control,
                     gsize offset,
                     const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));

  HutBinding *binding = add_binding (self, BINDING_CHOICE, control, offset, label);

  hut_choice_list_style (control);
  g_signal_connect (control, "notify::selected", G_CALLBACK (on_choice_changed), binding);
}

void
hut_form_add_derived_choice (HutForm *self,
                             GtkDropDown *control,
                             HutFormChoices choices,
                             HutFormGetChoice get,
                             HutFormSetChoice set,
                             const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self) && get != NULL && set != NULL);

  HutBinding *binding = add_binding (self, BINDING_DERIVED_CHOICE, control, 0, label);

  binding->choices = choices;
  binding->get_choice = get;
  binding->set_choice = set;
  if (choices != NULL)
    binding->values = g_array_new (FALSE, FALSE, sizeof (int));
  hut_choice_list_style (control);
  g_signal_connect (control, "notify::selected", G_CALLBACK (on_choice_changed), binding);
}

void
hut_form_add_text (HutForm *self,
                   GtkEntry *entry,
                   gsize offset,
                   const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self));

  HutBinding *binding = add_binding (self, BINDING_TEXT, entry, offset, label);
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect (entry, "changed", G_CALLBACK (on_text_changed), binding);
  g_signal_connect (entry, "activate", G_CALLBACK (on_text_activated), binding);
  g_signal_connect (focus, "leave", G_CALLBACK (on_text_focus_leave), binding);
  gtk_widget_add_controller (GTK_WIDGET (entry), focus);
}

void
hut_form_add_reference (HutForm *self,
                        GtkDropDown *control,
                        gsize offset,
                        HutFormList list,
                        const char *none,
                        const char *label)
{
  g_return_if_fail (HUT_IS_FORM (self) && list != NULL);

  HutBinding *binding = add_binding (self, BINDING_REFERENCE, control, offset, label);

  binding->list = list;
  binding->none = none;
  binding->ids = g_ptr_array_new_with_free_func (g_free);
  hut_choice_list_style (control);
  g_signal_connect (control, "notify::selected", G_CALLBACK (on_reference_changed), binding);
}

void
hut_form_set_repair (HutForm *self,
                     HutFormRepair repair)
{
  g_return_if_fail (HUT_IS_FORM (self));
  self->repair = repair;
}

void
hut_form_fill (HutForm *self)
{
  g_return_if_fail (HUT_IS_FORM (self));
  fill_all (self, FALSE);
}

void
hut_form_commit (HutForm *self)
{
  g_return_if_fail (HUT_IS_FORM (self));

  for (guint i = 0; i < self->bindings->len; i++)
    {
      HutBinding *binding = g_ptr_array_index (self->bindings, i);

      if (binding->control == NULL)
        continue;
      if (HUT_IS_NUMBER_ENTRY (binding->control))
        hut_number_entry_commit (HUT_NUMBER_ENTRY (binding->control));
      else if (binding->kind == BINDING_TEXT)
        commit_text (binding);
    }
}
