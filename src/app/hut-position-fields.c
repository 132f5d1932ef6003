/* src/app/hut-position-fields.c: where an opening or window sits: panel, anchors, offsets.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-position-fields.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-panel-choices.h"
#include <glib/gi18n.h>

struct _HutPositionFields
{
  GtkWidget parent_instance;

  GtkDropDown *panel, *u_anchor, *v_anchor, *body;
  HutNumberEntry *u_offset, *v_offset;
  GtkWidget *body_field;

  HutForm *form;
};

G_DEFINE_TYPE (HutPositionFields, hut_position_fields, GTK_TYPE_WIDGET)

static gpointer
locate_position (const HutDesign *design,
                 const char *item)
{
  return hut_design_get_position (design, item);
}

static int
get_panel (gconstpointer target)
{
  return hut_panel_to_choice (((const HutPosition *)target)->panel);
}

static void
set_panel (HutForm *form,
           gpointer target,
           int choice)
{
  ((HutPosition *)target)->panel = hut_panel_from_choice (choice);
}

/* A thing can be measured from a body only where there is one. */
static void
list_anchors (const HutDesign *design,
              GArray *values,
              GPtrArray *names,
              const char *const anchor_names[])
{
  for (int anchor = HUT_ANCHOR_START; anchor <= (int)HUT_ANCHOR_BODY; anchor++)
    if (anchor != (int)HUT_ANCHOR_BODY || design->machine.bodies->len > 0)
      {
        g_array_append_val (values, anchor);
        g_ptr_array_add (names, g_strdup (_(anchor_names[anchor])));
      }
}

static void
list_u_anchors (const HutDesign *design,
                GArray *values,
                GPtrArray *names)
{
  static const char *const anchor_names[] = {
    /* Translators: what an opening is measured from, across */
    [HUT_ANCHOR_START] = N_ ("Left edge"),
    [HUT_ANCHOR_CENTRE] = N_ ("Middle of panel"),
    [HUT_ANCHOR_END] = N_ ("Right edge"),
    [HUT_ANCHOR_BODY] = N_ ("Machine body"),
  };

  list_anchors (design, values, names, anchor_names);
}

static void
list_v_anchors (const HutDesign *design,
                GArray *values,
                GPtrArray *names)
{
  static const char *const anchor_names[] = {
    /* Translators: what an opening is measured from, upwards */
    [HUT_ANCHOR_START] = N_ ("Bottom edge"),
    [HUT_ANCHOR_CENTRE] = N_ ("Middle of panel"),
    [HUT_ANCHOR_END] = N_ ("Top edge"),
    [HUT_ANCHOR_BODY] = N_ ("Machine body"),
  };

  list_anchors (design, values, names, anchor_names);
}

/* The thing stays where it is; its offset is counted from the new anchor. */
static void
set_anchor (HutForm *form,
            HutPosition *at,
            HutAnchorKind *member,
            int anchor)
{
  HutSession *session = hut_form_get_session (form);
  const HutAssembly *assembly = hut_session_get_assembly (session);
  const GPtrArray *bodies = hut_session_get_design (session)->machine.bodies;
  HutPoint middle = { 0.0, 0.0 };
  const gboolean known = hut_assembly_locate (assembly, at, &middle);

  *member = (HutAnchorKind)anchor;
  if (at->u_anchor != HUT_ANCHOR_BODY && at->v_anchor != HUT_ANCHOR_BODY)
    g_clear_pointer (&at->body, g_free);
  else if (at->body == NULL && bodies->len > 0)
    at->body = g_strdup (((const HutBody *)g_ptr_array_index (bodies, 0))->id);
  if (known)
    hut_assembly_position_for (assembly, middle, at);
}

static int
get_u_anchor (gconstpointer target)
{
  return (int)((const HutPosition *)target)->u_anchor;
}

static void
set_u_anchor (HutForm *form,
              gpointer target,
              int anchor)
{
  set_anchor (form, target, &((HutPosition *)target)->u_anchor, anchor);
}

static int
get_v_anchor (gconstpointer target)
{
  return (int)((const HutPosition *)target)->v_anchor;
}

static void
set_v_anchor (HutForm *form,
              gpointer target,
              int anchor)
{
  set_anchor (form, target, &((HutPosition *)target)->v_anchor, anchor);
}

static void
list_bodies (const HutDesign *design,
             GPtrArray *ids,
             GPtrArray *names)
{
  for (guint i = 0; i < design->machine.bodies->len; i++)
    {
      const HutBody *body = g_ptr_array_index (design->machine.bodies, i);

      g_ptr_array_add (ids, g_strdup (body->id));
      g_ptr_array_add (names, g_strdup (body->name));
    }
}

static void
on_derived (HutPositionFields *self)
{
  const HutPosition *at = hut_form_peek (self->form);

  gtk_widget_set_visible (self->body_field, at != NULL && at->body != NULL);
}

static void
hut_position_fields_dispose (GObject *object)
{
  HutPositionFields *self = HUT_POSITION_FIELDS (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_position_fields_parent_class)->dispose (object);
}

static void
hut_position_fields_class_init (HutPositionFieldsClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_position_fields_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (
      widget_class, "/org/hutchwright/Hutchwright/hut-position-fields.ui");
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, panel);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, u_anchor);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, u_offset);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, v_anchor);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, v_offset);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, body);
  gtk_widget_class_bind_template_child (widget_class, HutPositionFields, body_field);
}

static void
hut_position_fields_init (HutPositionFields *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_position_fields_bind (HutPositionFields *self,
                          HutSession *session)
{
  g_return_if_fail (HUT_IS_POSITION_FIELDS (self) && HUT_IS_SESSION (session));
  g_return_if_fail (self->form == NULL);

  HutForm *form = hut_form_new (session, locate_position);

  self->form = form;
  hut_form_add_derived_choice (form, self->panel, hut_panel_list_choices, get_panel, set_panel,
                               N_ ("Move to Panel"));
  hut_form_add_derived_choice (form, self->u_anchor, list_u_anchors, get_u_anchor, set_u_anchor,
                               N_ ("Measure From"));
  hut_form_add_derived_choice (form, self->v_anchor, list_v_anchors, get_v_anchor, set_v_anchor,
                               N_ ("Measure From"));
  hut_form_add_number (form, self->u_offset, G_STRUCT_OFFSET (HutPosition, u_offset_mm),
                       N_ ("Move"));
  hut_form_add_number (form, self->v_offset, G_STRUCT_OFFSET (HutPosition, v_offset_mm),
                       N_ ("Move"));
  hut_form_add_reference (form, self->body, G_STRUCT_OFFSET (HutPosition, body), list_bodies, NULL,
                          N_ ("Measure From Body"));
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
}

void
hut_position_fields_set_item (HutPositionFields *self,
                              const char *item)
{
  g_return_if_fail (HUT_IS_POSITION_FIELDS (self) && self->form != NULL);

  hut_form_set_item (self->form, item);
  on_derived (self);
}
