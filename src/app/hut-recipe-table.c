/* src/app/hut-recipe-table.c: how the cutter cuts each stock, as one table.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-recipe-table.h"
#include "app/hut-form.h"
#include "design/hut-recipe.h"
#include <glib/gi18n.h>

/* A number of a recipe: its column, and the member that it edits. */
typedef struct
{
  const char *heading; /* msgid */
  const char *undo;    /* msgid: what Undo shows */
  HutQuantity quantity;
  double lower, upper, step;
  gsize offset;
} Column;

/* Ranges as in a design file. */
static const Column COLUMNS[] = {
  { N_ ("Kerf"), N_ ("Kerf"), HUT_QUANTITY_LENGTH, 0, 20, 0.01,
    G_STRUCT_OFFSET (HutStock, kerf_mm) },
  { N_ ("Kerf error"), N_ ("Kerf Error"), HUT_QUANTITY_LENGTH, 0, 5, 0.01,
    G_STRUCT_OFFSET (HutStock, kerf_error_mm) },
  { N_ ("Fit allowance"), N_ ("Fit Allowance"), HUT_QUANTITY_LENGTH, -2, 2, 0.05,
    G_STRUCT_OFFSET (HutStock, allowance_mm) },
  { N_ ("Cutting speed"), N_ ("Cutting Speed"), HUT_QUANTITY_SPEED, 0.1, 1e6, 0,
    G_STRUCT_OFFSET (HutStock, speed_mm_min) },
  { N_ ("Power"), N_ ("Power"), HUT_QUANTITY_PERCENT, 0, 100, 0,
    G_STRUCT_OFFSET (HutStock, power_percent) },
  { N_ ("Passes"), N_ ("Passes"), HUT_QUANTITY_COUNT, 1, 1000, 0,
    G_STRUCT_OFFSET (HutStock, passes) },
};

/* Columns of the grid: name, numbers, where they come from. */
#define NAME_COLUMN 0
#define FIRST_COLUMN 1
#define ORIGIN_COLUMN ((int)(FIRST_COLUMN + G_N_ELEMENTS (COLUMNS)))

typedef struct
{
  HutForm *form; /* of one stock */
  GtkLabel *name, *origin;
} Row;

struct _HutRecipeTable
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkLabel *cutter;
  GtkGrid *grid;

  HutSession *session;
  GArray *rows; /* Row */
};

G_DEFINE_TYPE (HutRecipeTable, hut_recipe_table, GTK_TYPE_WIDGET)

static void
clear_row (gpointer data)
{
  g_clear_object (&((Row *)data)->form);
}

static gpointer
locate_stock (const HutDesign *design,
              const char *item)
{
  return hut_design_get_stock (design, item);
}

static const char *
origin_of (const HutStock *stock,
           HutCutterKind cutter)
{
  if (hut_recipe_is_start (stock, cutter))
    return _("Start value: make the coupon first");
  /* Translators: where the numbers of a recipe come from: a test piece that was cut */
  return stock->allowance_error_mm > 0.0 ? _("Measured with a coupon")
                                         /* Translators: where the numbers of a recipe come from */
                                         : _("Typed by you");
}

static void
add_label (HutRecipeTable *self,
           GtkLabel *label,
           int column,
           int row)
{
  gtk_label_set_xalign (label, 0.0f);
  gtk_grid_attach (self->grid, GTK_WIDGET (label), column, row, 1, 1);
}

static void
add_row (HutRecipeTable *self,
         const HutStock *stock)
{
  const int place = (int)self->rows->len + 1; /* below the headings */
  Row row = { .form = hut_form_new (self->session, locate_stock),
              .name = GTK_LABEL (gtk_label_new (stock->name)),
              .origin = GTK_LABEL (gtk_label_new (NULL)) };

  add_label (self, row.name, NAME_COLUMN, place);
  for (guint i = 0; i < G_N_ELEMENTS (COLUMNS); i++)
    {
      const Column *column = &COLUMNS[i];
      g_autofree char *title = g_strdup_printf ("%s: %s", stock->name, _(column->heading));
      GtkWidget *entry = g_object_new (HUT_TYPE_NUMBER_ENTRY, "quantity", column->quantity, "lower",
                                       column->lower, "upper", column->upper, "step", column->step,
                                       "title", title, NULL);

      gtk_grid_attach (self->grid, entry, FIRST_COLUMN + (int)i, place, 1, 1);
      if (column->quantity == HUT_QUANTITY_COUNT)
        hut_form_add_count (row.form, HUT_NUMBER_ENTRY (entry), column->offset, column->undo);
      else
        hut_form_add_number (row.form, HUT_NUMBER_ENTRY (entry), column->offset, column->undo);
    }
  add_label (self, row.origin, ORIGIN_COLUMN, place);
  hut_form_set_item (row.form, stock->id);
  g_array_append_val (self->rows, row);
}

static void
build (HutRecipeTable *self,
       const HutDesign *design)
{
  GtkWidget *child;

  g_array_set_size (self->rows, 0);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->grid))) != NULL)
    gtk_grid_remove (self->grid, child);
  add_label (self, GTK_LABEL (gtk_label_new (_("Stock"))), NAME_COLUMN, 0);
  for (guint i = 0; i < G_N_ELEMENTS (COLUMNS); i++)
    add_label (self, GTK_LABEL (gtk_label_new (_(COLUMNS[i].heading))), FIRST_COLUMN + (int)i, 0);
  add_label (self, GTK_LABEL (gtk_label_new (_("Where from"))), ORIGIN_COLUMN, 0);
  for (guint i = 0; i < design->stocks->len; i++)
    add_row (self, g_ptr_array_index (design->stocks, i));
}

static gboolean
has_rows_of (HutRecipeTable *self,
             const HutDesign *design)
{
  if (self->rows->len != design->stocks->len)
    return FALSE;
  for (guint i = 0; i < self->rows->len; i++)
    if (g_strcmp0 (hut_form_get_item (g_array_index (self->rows, Row, i).form),
                   ((const HutStock *)g_ptr_array_index (design->stocks, i))->id)
        != 0)
      return FALSE;
  return TRUE;
}

static void
on_derived (HutRecipeTable *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  g_autofree char *cutter = NULL;

  if (!has_rows_of (self, design))
    build (self, design);
  for (guint i = 0; i < self->rows->len; i++)
    {
      const Row *row = &g_array_index (self->rows, Row, i);
      const HutStock *stock = g_ptr_array_index (design->stocks, i);

      gtk_label_set_text (row->name, stock->name);
      gtk_label_set_text (row->origin, origin_of (stock, design->cutter.kind));
    }
  /* Translators: name of a laser or router */
  cutter = g_strdup_printf (_("Recipes on %s"), design->cutter.name);
  gtk_label_set_text (self->cutter, cutter);
}

static void
hut_recipe_table_dispose (GObject *object)
{
  HutRecipeTable *self = HUT_RECIPE_TABLE (object);

  g_array_set_size (self->rows, 0);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_recipe_table_parent_class)->dispose (object);
}

static void
hut_recipe_table_finalize (GObject *object)
{
  g_array_unref (HUT_RECIPE_TABLE (object)->rows);
  G_OBJECT_CLASS (hut_recipe_table_parent_class)->finalize (object);
}

static void
hut_recipe_table_class_init (HutRecipeTableClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_recipe_table_dispose;
  G_OBJECT_CLASS (class)->finalize = hut_recipe_table_finalize;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-recipe-table.ui");
  gtk_widget_class_bind_template_child (widget_class, HutRecipeTable, content);
  gtk_widget_class_bind_template_child (widget_class, HutRecipeTable, cutter);
  gtk_widget_class_bind_template_child (widget_class, HutRecipeTable, grid);
}

static void
hut_recipe_table_init (HutRecipeTable *self)
{
  self->rows = g_array_new (FALSE, TRUE, sizeof (Row));
  g_array_set_clear_func (self->rows, clear_row);
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hut_recipe_table_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutRecipeTable *self = g_object_new (HUT_TYPE_RECIPE_TABLE, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}
