/* src/app/hut-way-row.c: one line of the services ledger: its way out, and a button for it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-way-row.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include "app/hut-stockroom.h"
#include "checks/hut-ledger.h"
#include <glib/gi18n.h>

struct _HutWayRow
{
  GtkWidget parent_instance;

  GtkImage *state;
  GtkLabel *name, *way;
  GtkButton *make, *show;

  HutSession *session;
  char *service;
  gboolean no_room; /* the last press of the button found no place */
};

G_DEFINE_TYPE (HutWayRow, hut_way_row, GTK_TYPE_WIDGET)

/* "22 × 12 mm" of a lead's head, "8 mm" of a round one. */
static char *
dup_head (const HutService *service)
{
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());
  const HutHead head = hut_head_of (service);
  g_autofree char *height
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, head.height_mm);
  g_autofree char *width = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, head.width_mm);

  return head.round ? g_steal_pointer (&height) : g_strdup_printf ("%s × %s", width, height);
}

static char *
dup_servers (const HutLedgerRow *row)
{
  g_autoptr(GString) names = g_string_new (NULL);

  for (guint i = 0; i < row->servers->len; i++)
    {
      const HutServer *server = &g_array_index (row->servers, HutServer, i);

      g_string_append_printf (names, "%s%s", i > 0 ? ", " : "",
                              *server->name != '\0' ? server->name : server->id);
    }
  return g_string_free (g_steal_pointer (&names), FALSE);
}

static char *
dup_way (HutWayRow *self,
         const HutLedgerRow *row)
{
  g_autofree char *head = dup_head (row->service), *servers = dup_servers (row);

  if (row->servers->len == 0 && self->no_room)
    /* Translators: %s is the size of a plug or hose */
    return g_strdup_printf (_("Head %s: no wall has a free place for it."), head);
  if (row->servers->len == 0)
    /* Translators: %s is the size of a plug or hose */
    return g_strdup_printf (_("Head %s: no way out yet"), head);
  if (row->passing_count == 0)
    /* Translators: size of a plug or hose; names of openings */
    return g_strdup_printf (_("Head %s: does not pass %s"), head, servers);
  if (row->servers->len > 1)
    /* Translators: size of a plug or hose; names of openings */
    return g_strdup_printf (_("Head %s: more than one way, %s"), head, servers);
  /* Translators: size of a plug or hose; name of an opening */
  return g_strdup_printf (_("Head %s: through %s"), head, servers);
}

static void
show_state (HutWayRow *self,
            const HutLedgerRow *row)
{
  const gboolean done = row->passing_count > 0;
  const char *icon = !done                     ? "hut-severity-blocks-symbolic"
                     : row->servers->len > 1 ? "hut-severity-warns-symbolic"
                                              : "object-select-symbolic";

  gtk_image_set_from_icon_name (self->state, icon);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->state), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  /* Translators: state of a service in the ledger */
                                  done ? _("Done") : _("Not done"), -1);
  gtk_widget_set_visible (GTK_WIDGET (self->make), row->servers->len == 0);
  gtk_widget_set_visible (GTK_WIDGET (self->show), row->servers->len > 0);
}

static void
on_derived (HutWayRow *self)
{
  g_autoptr(GPtrArray) ledger = hut_ledger_new (hut_session_get_design (self->session));
  const HutLedgerRow *row = hut_ledger_find (ledger, self->service);
  g_autofree char *text = NULL;

  if (row == NULL)
    return;
  text = dup_way (self, row);
  gtk_label_set_text (self->name,
                      *row->service->name != '\0' ? row->service->name : row->service->id);
  gtk_label_set_text (self->way, text);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->way), text);
  show_state (self, row);
}

static void
on_make (HutWayRow *self)
{
  g_autofree char *opening = hut_session_add_way_out (
      self->session, self->service,
      hut_stockroom_get_catalog (hut_stockroom_get_default ()));

  self->no_room = opening == NULL;
  if (self->no_room)
    on_derived (self);
  else
    gtk_widget_grab_focus (GTK_WIDGET (self->show));
}

static void
on_show (HutWayRow *self)
{
  g_autoptr(GPtrArray) ledger = hut_ledger_new (hut_session_get_design (self->session));
  const HutLedgerRow *row = hut_ledger_find (ledger, self->service);

  if (row != NULL && row->servers->len > 0)
    hut_session_select (self->session, g_array_index (row->servers, HutServer, 0).id);
}

static void
hut_way_row_dispose (GObject *object)
{
  HutWayRow *self = HUT_WAY_ROW (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->session);
  g_clear_pointer (&self->service, g_free);
  G_OBJECT_CLASS (hut_way_row_parent_class)->dispose (object);
}

static void
hut_way_row_class_init (HutWayRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_way_row_dispose;
  gtk_widget_class_set_css_name (widget_class, "listed");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-way-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutWayRow, state);
  gtk_widget_class_bind_template_child (widget_class, HutWayRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutWayRow, way);
  gtk_widget_class_bind_template_child (widget_class, HutWayRow, make);
  gtk_widget_class_bind_template_child (widget_class, HutWayRow, show);
  gtk_widget_class_bind_template_callback (widget_class, on_make);
  gtk_widget_class_bind_template_callback (widget_class, on_show);
}

static void
hut_way_row_init (HutWayRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_way_row_new (HutSession *session,
                 const char *service)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && service != NULL, NULL);

  HutWayRow *self = g_object_new (HUT_TYPE_WAY_ROW, NULL);

  self->session = g_object_ref (session);
  self->service = g_strdup (service);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}
