/* src/app/hut-stock-row.c: one stock: its measured thickness, its sheet, and how the cutter cuts
 * it. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-stock-row.h"
#include "app/hut-checked-entry.h"
#include "app/hut-field.h"
#include "app/hut-form.h"
#include "app/hut-readings.h"
#include "app/hut-session-items.h"
#include "app/hut-settings.h"
#include "design/hut-recipe.h"
#include <glib/gi18n.h>

struct _HutStockRow
{
  GtkWidget parent_instance;

  GtkExpander *expander;
  GtkWidget *remove, *start, *start_mark;
  GtkLabel *summary, *thickness;
  GtkEntry *name;
  GtkDropDown *material, *fit, *grain, *grain_rule;
  HutCheckedEntry *readings;
  HutNumberEntry *nominal, *sheet_width, *sheet_depth, *price, *density, *smallest_web, *allowance,
      *kerf, *kerf_error, *speed, *power, *passes;
  HutCouponForm *coupon;

  HutForm *form;
};

G_DEFINE_TYPE (HutStockRow, hut_stock_row, GTK_TYPE_WIDGET)

static gpointer
locate_stock (const HutDesign *design,
              const char *item)
{
  return hut_design_get_stock (design, item);
}

static HutUnits
units (void)
{
  return hut_settings_get_units (hut_settings_get_default ());
}

static char *
dup_length (double value_mm)
{
  return hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units (), value_mm);
}

static gboolean
check_readings (const char *text,
                GError **error)
{
  g_autoptr (GArray) readings_mm = hut_readings_parse (text, units (), error);

  return readings_mm != NULL;
}

static void
show_start (HutStockRow *self,
            const HutStock *stock)
{
  const HutCutterKind cutter
      = hut_session_get_design (hut_form_get_session (self->form))->cutter.kind;
  const gboolean is_start = hut_recipe_is_start (stock, cutter);
  HutRecipe recipe;

  gtk_widget_set_visible (self->start_mark, is_start);
  gtk_widget_set_sensitive (
      self->start, !is_start
                       && hut_recipe_start (stock->material, hut_stock_mean_mm (stock), cutter,
                                            &recipe));
}

static void
on_derived (HutStockRow *self)
{
  const HutStock *stock = hut_form_peek (self->form);

  if (stock == NULL)
    return;
  g_autofree char *mean = dup_length (hut_stock_mean_mm (stock));
  g_autofree char *least = dup_length (hut_stock_min_mm (stock));
  g_autofree char *most = dup_length (hut_stock_max_mm (stock));
  g_autofree char *readings = hut_readings_dup_text (stock->readings_mm, units ());
  g_autofree char *text = NULL;

  hut_checked_entry_set_text (self->readings, readings);
  show_start (self, stock);
  gtk_label_set_text (self->summary, stock->name);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->summary), stock->name);
  if (stock->readings_mm->len == 1)
    /* Translators: thickness of a stock */
    text = g_strdup_printf (_("%s, one reading"), mean);
  else
    /* Translators: thickness of a stock: mean, least, most of several caliper readings */
    text = g_strdup_printf (_("%s (%s to %s)"), mean, least, most);
  gtk_label_set_text (self->thickness, text);
  gtk_widget_set_sensitive (GTK_WIDGET (self->grain_rule), stock->grain != HUT_GRAIN_NONE);
  gtk_widget_set_sensitive (
      self->remove, hut_session_get_design (hut_form_get_session (self->form))->stocks->len > 1);
}

typedef struct
{
  const char *item;
  const GArray *readings_mm;
} HutReadingsEdit;

static gboolean
set_readings (HutDesign *design,
              gpointer user_data)
{
  const HutReadingsEdit *edit = user_data;
  HutStock *stock = hut_design_get_stock (design, edit->item);

  if (stock == NULL)
    return FALSE;
  g_array_set_size (stock->readings_mm, 0);
  g_array_append_vals (stock->readings_mm, edit->readings_mm->data, edit->readings_mm->len);
  return TRUE;
}

static void
on_readings_committed (HutStockRow *self,
                       const char *text)
{
  g_autoptr (GArray) readings_mm = hut_readings_parse (text, units (), NULL); /* was checked */
  HutReadingsEdit edit = { hut_form_get_item (self->form), readings_mm };

  /* Translators: what Undo takes back. */
  if (readings_mm == NULL
      || !hut_session_edit (hut_form_get_session (self->form), _("Caliper Readings"), set_readings,
                            &edit))
    on_derived (self);
}

static gboolean
set_start (HutDesign *design,
           gpointer user_data)
{
  HutStock *stock = hut_design_get_stock (design, user_data);
  HutRecipe recipe;

  if (stock == NULL
      || !hut_recipe_start (stock->material, hut_stock_mean_mm (stock), design->cutter.kind,
                            &recipe))
    return FALSE;
  hut_recipe_apply (&recipe, stock);
  return TRUE;
}

static void
on_start (HutStockRow *self)
{
  /* Translators: what Undo takes back. */
  hut_session_edit (hut_form_get_session (self->form), _("Start Values"), set_start,
                    (gpointer)hut_form_get_item (self->form));
}

static void
on_remove (HutStockRow *self)
{
  g_autofree char *item = g_strdup (hut_form_get_item (self->form));

  hut_session_remove_stock (hut_form_get_session (self->form), item);
}

static void
hut_stock_row_dispose (GObject *object)
{
  HutStockRow *self = HUT_STOCK_ROW (object);
  GtkWidget *child;

  g_clear_object (&self->form);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hut_stock_row_parent_class)->dispose (object);
}

static void
hut_stock_row_class_init (HutStockRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_stock_row_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_CHECKED_ENTRY);
  g_type_ensure (HUT_TYPE_COUPON_FORM);
  gtk_widget_class_set_css_name (widget_class, "item");
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-stock-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, expander);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, remove);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, summary);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, thickness);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, name);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, material);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, fit);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, grain);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, grain_rule);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, readings);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, nominal);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, sheet_width);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, sheet_depth);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, price);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, density);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, smallest_web);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, allowance);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, kerf);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, kerf_error);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, speed);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, power);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, passes);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, coupon);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, start);
  gtk_widget_class_bind_template_child (widget_class, HutStockRow, start_mark);
  gtk_widget_class_bind_template_callback (widget_class, on_start);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_stock_row_init (HutStockRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
bind_sheet (HutStockRow *self)
{
  HutForm *form = self->form;

  hut_form_add_text (form, self->name, G_STRUCT_OFFSET (HutStock, name), N_ ("Rename Stock"));
  hut_form_add_choice (form, self->material, G_STRUCT_OFFSET (HutStock, material), N_ ("Material"));
  hut_form_add_number (form, self->nominal, G_STRUCT_OFFSET (HutStock, nominal_mm),
                       N_ ("Nominal Thickness"));
  hut_form_add_number (form, self->sheet_width, G_STRUCT_OFFSET (HutStock, sheet_width_mm),
                       N_ ("Sheet Width"));
  hut_form_add_number (form, self->sheet_depth, G_STRUCT_OFFSET (HutStock, sheet_depth_mm),
                       N_ ("Sheet Depth"));
  hut_form_add_choice (form, self->grain, G_STRUCT_OFFSET (HutStock, grain), N_ ("Grain"));
  hut_form_add_choice (form, self->grain_rule, G_STRUCT_OFFSET (HutStock, grain_rule),
                       N_ ("Grain of Panels"));
  hut_form_add_number (form, self->price, G_STRUCT_OFFSET (HutStock, price), N_ ("Price"));
  hut_form_add_number (form, self->density, G_STRUCT_OFFSET (HutStock, density_kg_m3),
                       N_ ("Density"));
  hut_form_add_number (form, self->smallest_web, G_STRUCT_OFFSET (HutStock, smallest_web_mm),
                       N_ ("Smallest Web"));
}

static void
bind_recipe (HutStockRow *self)
{
  HutForm *form = self->form;

  hut_form_add_choice (form, self->fit, G_STRUCT_OFFSET (HutStock, fit), N_ ("Joint Fit"));
  hut_form_add_number (form, self->allowance, G_STRUCT_OFFSET (HutStock, allowance_mm),
                       N_ ("Fit Allowance"));
  hut_form_add_number (form, self->kerf, G_STRUCT_OFFSET (HutStock, kerf_mm), N_ ("Kerf"));
  hut_form_add_number (form, self->kerf_error, G_STRUCT_OFFSET (HutStock, kerf_error_mm),
                       N_ ("Kerf Error"));
  hut_form_add_number (form, self->speed, G_STRUCT_OFFSET (HutStock, speed_mm_min),
                       N_ ("Cutting Speed"));
  hut_form_add_number (form, self->power, G_STRUCT_OFFSET (HutStock, power_percent), N_ ("Power"));
  hut_form_add_count (form, self->passes, G_STRUCT_OFFSET (HutStock, passes), N_ ("Passes"));
}

GtkWidget *
hut_stock_row_new (HutSession *session,
                   const char *stock)
{
  g_return_val_if_fail (HUT_IS_SESSION (session) && stock != NULL, NULL);

  HutStockRow *self = g_object_new (HUT_TYPE_STOCK_ROW, NULL);

  self->form = hut_form_new (session, locate_stock);
  bind_sheet (self);
  bind_recipe (self);
  hut_form_set_item (self->form, stock);
  hut_coupon_form_bind (self->coupon, session, stock);
  hut_checked_entry_set_check (self->readings, check_readings);
  g_signal_connect_object (self->readings, "committed", G_CALLBACK (on_readings_committed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

void
hut_stock_row_expand (HutStockRow *self)
{
  g_return_if_fail (HUT_IS_STOCK_ROW (self));
  gtk_expander_set_expanded (self->expander, TRUE);
}

HutCouponForm *
hut_stock_row_get_coupon (HutStockRow *self)
{
  g_return_val_if_fail (HUT_IS_STOCK_ROW (self), NULL);
  return self->coupon;
}
