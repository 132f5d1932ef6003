/* src/app/hut-shape-page.c: the step Shape: size, lid, bottom, stock per panel, joints.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-shape-page.h"
#include "app/hut-baffle-row.h"
#include "app/hut-extra-row.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-item-rows.h"
#include "app/hut-panel-choices.h"
#include "app/hut-refresh.h"
#include "app/hut-session-extras.h"
#include "app/hut-settings.h"
#include "app/hut-stock-list.h"
#include <glib/gi18n.h>

struct _HutShapePage
{
  GtkWidget parent_instance;

  GtkWidget *scroller;
  GtkEntry *design_name;
  GtkSwitch *fitted, *straps;
  GtkLabel *fitted_size;
  HutNumberEntry *inside_x, *inside_y, *inside_z;
  GtkDropDown *lid, *hinge, *bottom, *default_stock;
  HutNumberEntry *seam_height, *seam_gap, *hinge_offset, *opening_angle, *swing_clearance, *ledge;
  HutNumberEntry *finger_ratio, *splice_length_ratio, *splice_width_ratio, *strap_ratio;
  GtkWidget *inside_x_field, *inside_y_field, *inside_z_field;
  GtkWidget *hinge_field, *seam_height_field, *hinge_offset_field, *opening_angle_field,
      *swing_clearance_field, *ledge_field, *strap_ratio_field;
  GtkBox *panel_stocks, *baffles, *extras;
  GtkWidget *panel_stock_fields[HUT_SHELL_COUNT][HUT_SIDE_COUNT];

  HutSession *session;
  HutForm *form;
  gboolean filling;
};

G_DEFINE_TYPE (HutShapePage, hut_shape_page, GTK_TYPE_WIDGET)

/* ---- choices that depend on others ---------------------------------------------------------- */

static void
list_hinges (const HutDesign *design,
             GArray *values,
             GPtrArray *names)
{
  static const char *const hinge_names[] = {
    /* Translators: where the hinge line is */
    [HUT_HINGE_BACK] = N_ ("Back"),
    [HUT_HINGE_LEFT] = N_ ("Left"),
    [HUT_HINGE_RIGHT] = N_ ("Right"),
    [HUT_HINGE_TOP] = N_ ("Top, opens upwards"),
  };

  for (int hinge = 0; hinge < (int)G_N_ELEMENTS (hinge_names); hinge++)
    if (hut_lid_allows_hinge (design->shell.lid, (HutHinge)hinge))
      {
        g_array_append_val (values, hinge);
        g_ptr_array_add (names, g_strdup (_(hinge_names[hinge])));
      }
}

static int
get_hinge (gconstpointer target)
{
  return (int)((const HutDesign *)target)->shell.hinge;
}

static void
set_hinge (HutForm *form,
           gpointer target,
           int hinge)
{
  ((HutDesign *)target)->shell.hinge = (HutHinge)hinge;
}

static int
get_lid (gconstpointer target)
{
  return (int)((const HutDesign *)target)->shell.lid;
}

/* A lid that cannot turn on the old hinge line gets the first one that it can turn on. */
static void
set_lid (HutForm *form,
         gpointer target,
         int lid)
{
  HutShell *shell = &((HutDesign *)target)->shell;

  shell->lid = (HutLidKind)lid;
  if (shell->lid == HUT_LID_LIFT_OFF || hut_lid_allows_hinge (shell->lid, shell->hinge))
    return;
  for (int hinge = HUT_HINGE_BACK; hinge <= (int)HUT_HINGE_TOP; hinge++)
    if (hut_lid_allows_hinge (shell->lid, (HutHinge)hinge))
      {
        shell->hinge = (HutHinge)hinge;
        return;
      }
}

/* ---- size ------------------------------------------------------------------------------- */

/* The free room between the walls as it is derived now. */
static HutVec3
inside_now (HutSession *session)
{
  const HutAssembly *assembly = hut_session_get_assembly (session);
  const HutBox3 *inside = &assembly->inside;

  return (HutVec3){ hut_snap_mm (inside->max.x - inside->min.x),
                    hut_snap_mm (inside->max.y - inside->min.y),
                    hut_snap_mm (inside->max.z - inside->min.z) };
}

typedef struct
{
  gboolean fitted;
  gboolean has_inside;
  HutVec3 inside_mm;
} HutFittedEdit;

static gboolean
set_fitted (HutDesign *design,
            gpointer user_data)
{
  const HutFittedEdit *edit = user_data;

  design->shell.fitted = edit->fitted;
  if (edit->has_inside)
    design->shell.inside_mm = edit->inside_mm;
  return TRUE;
}

/* Sizes by hand start from what fitted. */
static void
on_fitted_changed (HutShapePage *self)
{
  HutFittedEdit edit = { .fitted = gtk_switch_get_active (self->fitted) };

  if (self->filling)
    return;
  if (!edit.fitted && hut_session_get_assembly (self->session)->whole)
    {
      edit.has_inside = TRUE;
      edit.inside_mm = inside_now (self->session);
    }
  /* Translators: what Undo takes back. */
  hut_session_edit (self->session, _("Fitted or by Hand"), set_fitted, &edit);
}

static void
show_fitted_size (GtkWidget *widget)
{
  HutShapePage *self = HUT_SHAPE_PAGE (widget);
  const HutUnits units = hut_settings_get_units (hut_settings_get_default ());

  if (!hut_session_get_assembly (self->session)->whole)
    {
      gtk_label_set_text (self->fitted_size, _("No size yet: see the findings."));
      return;
    }
  const HutVec3 inside_mm = inside_now (self->session);
  g_autofree char *width = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, inside_mm.x);
  g_autofree char *depth = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, units, inside_mm.y);
  g_autofree char *height
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units, inside_mm.z);
  /* Translators: inside width × depth × height; the last one has the unit */
  g_autofree char *text = g_strdup_printf (_("Inside: %s × %s × %s"), width, depth, height);
  gtk_label_set_text (self->fitted_size, text);
}

/* ---- extra plates ----------------------------------------------------------------------- */

static GtkWidget *
new_extra_row (const char *item,
               gpointer user_data)
{
  return hut_extra_row_new (user_data, item);
}

static void
show_extras (HutShapePage *self)
{
  const GPtrArray *extras = hut_session_get_design (self->session)->extras;
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < extras->len; i++)
    g_ptr_array_add (ids, ((const HutExtra *)g_ptr_array_index (extras, i))->id);
  hut_item_rows_sync (self->extras, ids, new_extra_row, self->session);
}

static void
on_add_extra (HutShapePage *self)
{
  g_autofree char *extra = hut_session_add_extra (self->session);

  g_return_if_fail (extra != NULL);
}

/* ---- what is shown ---------------------------------------------------------------------- */

static void
on_derived (HutShapePage *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  const HutShell *shell = &design->shell;
  const gboolean hinged = shell->lid != HUT_LID_LIFT_OFF;
  const gboolean has_seam = shell->lid == HUT_LID_HOOD || shell->lid == HUT_LID_LIFT_OFF;

  show_extras (self);
  self->filling = TRUE;
  gtk_switch_set_active (self->fitted, shell->fitted);
  self->filling = FALSE;
  hut_refresh_queue (GTK_WIDGET (self), show_fitted_size);
  gtk_widget_set_visible (GTK_WIDGET (self->fitted_size), shell->fitted);
  gtk_widget_set_visible (self->inside_x_field, !shell->fitted);
  gtk_widget_set_visible (self->inside_y_field, !shell->fitted);
  gtk_widget_set_visible (self->inside_z_field, !shell->fitted);
  gtk_widget_set_visible (self->hinge_field, hinged);
  gtk_widget_set_visible (self->hinge_offset_field, hinged);
  gtk_widget_set_visible (self->opening_angle_field, hinged);
  gtk_widget_set_visible (self->swing_clearance_field, hinged);
  gtk_widget_set_visible (self->seam_height_field, has_seam);
  gtk_widget_set_visible (self->ledge_field, shell->bottom == HUT_BOTTOM_INSET);
  gtk_widget_set_visible (self->strap_ratio_field, design->joints.straps);
  for (guint shell_id = 0; shell_id < HUT_SHELL_COUNT; shell_id++)
    for (guint side = 0; side < HUT_SIDE_COUNT; side++)
      gtk_widget_set_visible (
          self->panel_stock_fields[shell_id][side],
          hut_shell_has_panel (shell, (HutPanelId){ (HutShellId)shell_id, (HutSide)side }));
}

static void
hut_shape_page_dispose (GObject *object)
{
  HutShapePage *self = HUT_SHAPE_PAGE (object);

  g_clear_object (&self->form);
  g_clear_pointer (&self->scroller, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_shape_page_parent_class)->dispose (object);
}

static void
bind_lid_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, lid);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, hinge);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, hinge_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, seam_height);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, seam_height_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, seam_gap);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, hinge_offset);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, hinge_offset_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, opening_angle);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, opening_angle_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, swing_clearance);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, swing_clearance_field);
}

static void
hut_shape_page_class_init (HutShapePageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_shape_page_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-shape-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, scroller);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, design_name);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, fitted);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, fitted_size);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_x);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_y);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_z);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_x_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_y_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, inside_z_field);
  bind_lid_children (widget_class);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, bottom);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, ledge);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, ledge_field);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, default_stock);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, panel_stocks);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, baffles);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, extras);
  gtk_widget_class_bind_template_callback (widget_class, on_add_extra);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, finger_ratio);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, splice_length_ratio);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, splice_width_ratio);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, straps);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, strap_ratio);
  gtk_widget_class_bind_template_child (widget_class, HutShapePage, strap_ratio_field);
}

static void
hut_shape_page_init (HutShapePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

#define BIND_NUMBER(control, member, label)                                                        \
  hut_form_add_number (self->form, self->control, G_STRUCT_OFFSET (HutDesign, member), label)

static void
bind_shell (HutShapePage *self)
{
  hut_form_add_text (self->form, self->design_name, G_STRUCT_OFFSET (HutDesign, name),
                     N_ ("Rename Design"));
  BIND_NUMBER (inside_x, shell.inside_mm.x, N_ ("Inside Width"));
  BIND_NUMBER (inside_y, shell.inside_mm.y, N_ ("Inside Depth"));
  BIND_NUMBER (inside_z, shell.inside_mm.z, N_ ("Inside Height"));
  hut_form_add_derived_choice (self->form, self->lid, NULL, get_lid, set_lid, N_ ("Kind of Lid"));
  hut_form_add_derived_choice (self->form, self->hinge, list_hinges, get_hinge, set_hinge,
                               N_ ("Hinge Line"));
  BIND_NUMBER (seam_height, shell.seam_height_mm, N_ ("Seam Height"));
  BIND_NUMBER (seam_gap, shell.seam_gap_mm, N_ ("Seam Gap"));
  BIND_NUMBER (hinge_offset, shell.hinge_offset_mm, N_ ("Hinge Offset"));
  BIND_NUMBER (opening_angle, shell.opening_angle_deg, N_ ("Opening Angle"));
  BIND_NUMBER (swing_clearance, shell.swing_clearance_mm, N_ ("Swing Clearance"));
  hut_form_add_choice (self->form, self->bottom, G_STRUCT_OFFSET (HutDesign, shell.bottom),
                       N_ ("Kind of Bottom"));
  BIND_NUMBER (ledge, shell.ledge_mm, N_ ("Ledge"));
}

static void
bind_joints (HutShapePage *self)
{
  BIND_NUMBER (finger_ratio, joints.finger_ratio, N_ ("Finger Width"));
  BIND_NUMBER (splice_length_ratio, joints.splice_length_ratio, N_ ("Splice Finger Length"));
  BIND_NUMBER (splice_width_ratio, joints.splice_width_ratio, N_ ("Splice Finger Width"));
  hut_form_add_switch (self->form, self->straps, G_STRUCT_OFFSET (HutDesign, joints.straps),
                       N_ ("Straps"));
  BIND_NUMBER (strap_ratio, joints.strap_ratio, N_ ("Strap Width"));
}

static void
bind_stocks (HutShapePage *self)
{
  hut_form_add_reference (self->form, self->default_stock,
                          G_STRUCT_OFFSET (HutDesign, shell.default_stock), hut_stock_list, NULL,
                          N_ ("Stock of All Panels"));
  for (guint shell = 0; shell < HUT_SHELL_COUNT; shell++)
    for (guint side = 0; side < HUT_SIDE_COUNT; side++)
      {
        const HutPanelId panel = { (HutShellId)shell, (HutSide)side };
        GtkWidget *control = gtk_drop_down_new (NULL, NULL);
        GtkWidget *field = hut_field_new (hut_panel_shown_name (panel), NULL, control);

        gtk_widget_set_size_request (control, 150, -1);
        gtk_box_append (self->panel_stocks, field);
        self->panel_stock_fields[shell][side] = field;
        hut_form_add_reference (self->form, GTK_DROP_DOWN (control),
                                G_STRUCT_OFFSET (HutDesign, shell.stock)
                                    + (shell * HUT_SIDE_COUNT + side) * sizeof (char *),
                                hut_stock_list, N_ ("As all panels"), N_ ("Stock of Panel"));
      }
}

GtkWidget *
hut_shape_page_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutShapePage *self = g_object_new (HUT_TYPE_SHAPE_PAGE, NULL);

  self->session = g_object_ref (session);
  self->form = hut_form_new (session, NULL);
  bind_shell (self);
  bind_joints (self);
  bind_stocks (self);
  for (int side = 0; side < HUT_SIDE_COUNT; side++)
    gtk_box_append (self->baffles, hut_baffle_row_new (session, (HutSide)side));
  hut_form_fill (self->form);
  g_signal_connect_object (self->fitted, "notify::active", G_CALLBACK (on_fitted_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}
