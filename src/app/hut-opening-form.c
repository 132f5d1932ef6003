/* src/app/hut-opening-form.c: the parameters of one opening.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-opening-form.h"
#include "app/hut-checked-entry.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-hole-grid.h"
#include "app/hut-position-fields.h"
#include "app/hut-stock-list.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

struct _HutOpeningForm
{
  GtkWidget parent_instance;

  GtkEntry *name;
  GtkDropDown *shape, *face, *serves, *trap, *trap_stock;
  HutNumberEntry *trap_depth;
  GtkWidget *trap_depth_field, *trap_stock_field;
  HutNumberEntry *diameter, *width, *height, *radius, *turn;
  HutNumberEntry *columns, *rows, *column_pitch, *row_pitch;
  HutCheckedEntry *holes;
  GtkWidget *diameter_field, *width_field, *height_field, *radius_field, *turn_field;
  GtkWidget *columns_field, *rows_field, *column_pitch_field, *row_pitch_field, *holes_field;
  HutPositionFields *position;

  HutForm *form;
};

G_DEFINE_TYPE (HutOpeningForm, hut_opening_form, GTK_TYPE_WIDGET)

static HutUnits
units (void)
{
  return hut_settings_get_units (hut_settings_get_default ());
}

static gpointer
locate_opening (const HutDesign *design,
                const char *item)
{
  return hut_design_get_opening (design, item);
}

/* ---- shape ----------------------------------------------------------------------------------- */

static int
get_shape (gconstpointer target)
{
  return (int)((const HutOpening *)target)->shape;
}

/* Sizes that the new shape uses and that were never set get those of a new opening. */
static void
set_shape (HutForm *form,
           gpointer target,
           int shape)
{
  HutOpening *opening = target;
  g_autoptr (HutOpening) fresh = hut_opening_new (opening->id, opening->at.panel, (HutShape)shape);

  opening->shape = (HutShape)shape;
  if (opening->diameter_mm <= 0.0)
    opening->diameter_mm = fresh->diameter_mm;
  if (opening->width_mm <= 0.0)
    opening->width_mm = fresh->width_mm;
  if (opening->height_mm <= 0.0)
    opening->height_mm = fresh->height_mm;
  if (opening->holes->len == 0)
    g_array_append_vals (opening->holes, fresh->holes->data, fresh->holes->len);
}

/* ---- pattern --------------------------------------------------------------------------------- */

static HutHoleGrid
read_grid (gconstpointer target)
{
  return hut_hole_grid_read (((const HutOpening *)target)->holes);
}

/* A pitch for a pattern that had a single column or row: holes with as much web between them. */
static double
default_pitch_mm (const HutOpening *opening)
{
  return hut_snap_mm (2.0 * opening->diameter_mm);
}

static void
write_grid (HutOpening *opening,
            HutHoleGrid grid)
{
  grid.columns = MAX (grid.columns, 1);
  grid.rows = MAX (grid.rows, 1);
  if (grid.columns > 1 && grid.column_pitch_mm <= 0.0)
    grid.column_pitch_mm = grid.row_pitch_mm > 0.0 ? grid.row_pitch_mm : default_pitch_mm (opening);
  if (grid.rows > 1 && grid.row_pitch_mm <= 0.0)
    grid.row_pitch_mm
        = grid.column_pitch_mm > 0.0 ? grid.column_pitch_mm : default_pitch_mm (opening);
  if (grid.columns * grid.rows > HUT_HOLES_MAX)
    return;
  g_array_unref (opening->holes);
  opening->holes = hut_hole_grid_dup_holes (&grid);
}

static double
get_columns (gconstpointer target)
{
  return read_grid (target).columns;
}

static void
set_columns (gpointer target,
             double count)
{
  HutHoleGrid grid = read_grid (target);

  grid.columns = (guint)count;
  write_grid (target, grid);
}

static double
get_rows (gconstpointer target)
{
  return read_grid (target).rows;
}

static void
set_rows (gpointer target,
          double count)
{
  HutHoleGrid grid = read_grid (target);

  grid.rows = (guint)count;
  write_grid (target, grid);
}

static double
get_column_pitch (gconstpointer target)
{
  return read_grid (target).column_pitch_mm;
}

static void
set_column_pitch (gpointer target,
                  double pitch_mm)
{
  HutHoleGrid grid = read_grid (target);

  grid.column_pitch_mm = pitch_mm;
  write_grid (target, grid);
}

static double
get_row_pitch (gconstpointer target)
{
  return read_grid (target).row_pitch_mm;
}

static void
set_row_pitch (gpointer target,
               double pitch_mm)
{
  HutHoleGrid grid = read_grid (target);

  grid.row_pitch_mm = pitch_mm;
  write_grid (target, grid);
}

static gboolean
check_holes (const char *text,
             GError **error)
{
  g_autoptr (GArray) holes = hut_holes_parse (text, units (), error);

  return holes != NULL;
}

typedef struct
{
  const char *item;
  const GArray *holes;
} HutHolesEdit;

static gboolean
set_holes (HutDesign *design,
           gpointer user_data)
{
  const HutHolesEdit *edit = user_data;
  HutOpening *opening = hut_design_get_opening (design, edit->item);

  if (opening == NULL)
    return FALSE;
  g_array_set_size (opening->holes, 0);
  g_array_append_vals (opening->holes, edit->holes->data, edit->holes->len);
  return TRUE;
}

/* ---- what is shown --------------------------------------------------------------------------- */

static void
show_sizes (HutOpeningForm *self,
            const HutOpening *opening)
{
  const gboolean pattern = opening->shape == HUT_SHAPE_PATTERN;
  const gboolean slot = opening->shape == HUT_SHAPE_SLOT;
  const gboolean rectangle = opening->shape == HUT_SHAPE_RECTANGLE;
  const HutHoleGrid grid = hut_hole_grid_read (opening->holes);

  gtk_widget_set_visible (self->diameter_field, opening->shape == HUT_SHAPE_ROUND || pattern);
  gtk_widget_set_visible (self->width_field, rectangle || slot);
  gtk_widget_set_visible (self->height_field, rectangle || slot);
  gtk_widget_set_visible (self->radius_field, rectangle);
  gtk_widget_set_visible (self->turn_field, opening->shape != HUT_SHAPE_ROUND);
  gtk_widget_set_visible (self->columns_field, pattern && grid.columns > 0);
  gtk_widget_set_visible (self->rows_field, pattern && grid.columns > 0);
  gtk_widget_set_visible (self->column_pitch_field, pattern && grid.columns > 1);
  gtk_widget_set_visible (self->row_pitch_field, pattern && grid.rows > 1);
  gtk_widget_set_visible (self->holes_field, pattern);
  g_object_set (self->width_field, "title", slot ? _ ("Length") : _ ("Width"), NULL);
  g_object_set (self->height_field, "title", slot ? _ ("Breadth") : _ ("Height"), NULL);
  g_object_set (self->diameter_field, "title", pattern ? _ ("Hole diameter") : _ ("Diameter"),
                NULL);
}

static void
on_derived (HutOpeningForm *self)
{
  const HutOpening *opening = hut_form_peek (self->form);

  if (opening == NULL)
    return;
  g_autofree char *holes = hut_holes_dup_text (opening->holes, units ());
  hut_checked_entry_set_text (self->holes, holes);
  show_sizes (self, opening);
}

static void
on_holes_committed (HutOpeningForm *self,
                    const char *text)
{
  g_autoptr (GArray) holes = hut_holes_parse (text, units (), NULL); /* was checked */
  HutHolesEdit edit = { hut_form_get_item (self->form), holes };

  /* Translators: what Undo takes back. */
  if (holes == NULL
      || !hut_session_edit (hut_form_get_session (self->form), _ ("Holes of Pattern"), set_holes,
                            &edit))
    on_derived (self);
}

static void
list_services (const HutDesign *design,
               GPtrArray *ids,
               GPtrArray *names)
{
  for (guint i = 0; i < design->machine.services->len; i++)
    {
      const HutService *service = g_ptr_array_index (design->machine.services, i);

      g_ptr_array_add (ids, g_strdup (service->id));
      g_ptr_array_add (names, g_strdup (service->name));
    }
}

/* ---- light trap ------------------------------------------------------------------------------ */

/* Clear depth of a new trap, mm. Own choice: slots of 15. */
#define TRAP_DEPTH_MM 45.0

static int
get_trap (gconstpointer target)
{
  return ((const HutOpening *)target)->trap_mm > 0.0 ? 1 : 0;
}

static void
set_trap (HutForm *form,
          gpointer target,
          int value)
{
  ((HutOpening *)target)->trap_mm = value > 0 ? TRAP_DEPTH_MM : HUT_ROOM_FREE;
}

/* Its depth counts only while there is one. */
static double
get_trap_depth (gconstpointer target)
{
  return MAX (((const HutOpening *)target)->trap_mm, 0.0);
}

static void
set_trap_depth (gpointer target,
                double depth_mm)
{
  HutOpening *opening = target;

  if (opening->trap_mm > 0.0)
    opening->trap_mm = depth_mm;
}

static void
show_trap (HutOpeningForm *self)
{
  const HutOpening *opening = hut_form_peek (self->form);
  const gboolean has_trap = opening != NULL && opening->trap_mm > 0.0;

  gtk_widget_set_visible (self->trap_depth_field, has_trap);
  gtk_widget_set_visible (self->trap_stock_field, has_trap);
}

static void
bind_trap_children (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, trap);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, trap_depth);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, trap_depth_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, trap_stock);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, trap_stock_field);
}

static void
bind_trap (HutOpeningForm *self,
           HutSession *session)
{
  hut_form_add_derived_choice (self->form, self->trap, NULL, get_trap, set_trap,
                               N_ ("Light Trap"));
  hut_form_add_derived (self->form, self->trap_depth, get_trap_depth, set_trap_depth,
                        N_ ("Depth of Light Trap"));
  hut_form_add_reference (self->form, self->trap_stock, G_STRUCT_OFFSET (HutOpening, trap_stock),
                          hut_stock_list, N_ ("As its panel"), N_ ("Stock of Light Trap"));
  g_signal_connect_object (session, "derived", G_CALLBACK (show_trap), self, G_CONNECT_SWAPPED);
}

static void
hut_opening_form_dispose (GObject *object)
{
  HutOpeningForm *self = HUT_OPENING_FORM (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_opening_form_parent_class)->dispose (object);
}

static void
bind_fields_of_shape (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, diameter_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, width_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, height_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, radius_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, turn_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, columns);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, rows);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, column_pitch);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, row_pitch);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, columns_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, rows_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, column_pitch_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, row_pitch_field);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, holes_field);
}

static void
hut_opening_form_class_init (HutOpeningFormClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_opening_form_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_CHECKED_ENTRY);
  g_type_ensure (HUT_TYPE_POSITION_FIELDS);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-opening-form.ui");
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, name);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, shape);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, face);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, serves);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, diameter);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, width);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, height);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, radius);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, turn);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, holes);
  gtk_widget_class_bind_template_child (widget_class, HutOpeningForm, position);
  bind_fields_of_shape (widget_class);
  bind_trap_children (widget_class);
}

static void
hut_opening_form_init (HutOpeningForm *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
bind_sizes (HutOpeningForm *self)
{
  HutForm *form = self->form;

  hut_form_add_derived_choice (form, self->shape, NULL, get_shape, set_shape,
                               N_ ("Shape of Opening"));
  hut_form_add_number (form, self->diameter, G_STRUCT_OFFSET (HutOpening, diameter_mm),
                       N_ ("Diameter"));
  hut_form_add_number (form, self->width, G_STRUCT_OFFSET (HutOpening, width_mm), N_ ("Width"));
  hut_form_add_number (form, self->height, G_STRUCT_OFFSET (HutOpening, height_mm), N_ ("Height"));
  hut_form_add_number (form, self->radius, G_STRUCT_OFFSET (HutOpening, radius_mm),
                       N_ ("Corner Radius"));
  hut_form_add_derived (form, self->columns, get_columns, set_columns, N_ ("Holes of Pattern"));
  hut_form_add_derived (form, self->rows, get_rows, set_rows, N_ ("Holes of Pattern"));
  hut_form_add_derived (form, self->column_pitch, get_column_pitch, set_column_pitch,
                        N_ ("Holes of Pattern"));
  hut_form_add_derived (form, self->row_pitch, get_row_pitch, set_row_pitch,
                        N_ ("Holes of Pattern"));
}

GtkWidget *
hut_opening_form_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutOpeningForm *self = g_object_new (HUT_TYPE_OPENING_FORM, NULL);
  HutForm *form = hut_form_new (session, locate_opening);

  self->form = form;
  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutOpening, name), N_ ("Rename Opening"));
  bind_sizes (self);
  hut_form_add_number (form, self->turn, G_STRUCT_OFFSET (HutOpening, turn_deg), N_ ("Turn"));
  hut_form_add_choice (form, self->face, G_STRUCT_OFFSET (HutOpening, face), N_ ("Face"));
  hut_form_add_reference (form, self->serves, G_STRUCT_OFFSET (HutOpening, serves), list_services,
                          /* Translators: what passes through an opening */ N_ ("Nothing"),
                          N_ ("Service of Opening"));
  bind_trap (self, session);
  hut_checked_entry_set_check (self->holes, check_holes);
  g_signal_connect_object (self->holes, "committed", G_CALLBACK (on_holes_committed), self,
                           G_CONNECT_SWAPPED);
  hut_position_fields_bind (self->position, session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
hut_opening_form_set_item (HutOpeningForm *self,
                           const char *item)
{
  g_return_if_fail (HUT_IS_OPENING_FORM (self));

  g_autofree char *kept = g_strdup (item);

  hut_checked_entry_commit (self->holes);
  hut_position_fields_set_item (self->position, kept);
  hut_form_set_item (self->form, kept);
  on_derived (self);
  show_trap (self);
}
