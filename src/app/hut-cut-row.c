/* src/app/hut-cut-row.c: one hole of an item that is being measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-cut-row.h"
#include "app/hut-choice-list.h"
#include "app/hut-number-entry.h"
#include <glib/gi18n.h>

struct _HutCutRow
{
  HutDraftRow parent_instance;

  GtkLabel *number;
  GtkDropDown *role, *shape, *thread, *leaf;
  GtkWidget *remove;

  HutItemCut cut;
};

G_DEFINE_FINAL_TYPE (HutCutRow, hut_cut_row, HUT_TYPE_DRAFT_ROW)

/* The numbers of a hole: entry NAME in NAME_box. */
static const struct
{
  const char *name;
  gsize offset;
} entries[] = {
  { "across", offsetof (HutItemCut, at.u) },       { "up", offsetof (HutItemCut, at.v) },
  { "diameter", offsetof (HutItemCut, diameter_mm) }, { "width", offsetof (HutItemCut, width_mm) },
  { "height", offsetof (HutItemCut, height_mm) },  { "radius", offsetof (HutItemCut, radius_mm) },
  { "grip", offsetof (HutItemCut, grip_mm) },      { "tapped", offsetof (HutItemCut, tapped_mm) },
};

enum
{
  ENTRY_DIAMETER = 2,
  ENTRY_WIDTH,
  ENTRY_HEIGHT,
  ENTRY_RADIUS,
  ENTRY_GRIP,
  ENTRY_TAPPED,
};

static HutNumberEntry *
get_entry (HutCutRow *self,
           gsize index)
{
  return HUT_NUMBER_ENTRY (
      gtk_widget_get_template_child (GTK_WIDGET (self), HUT_TYPE_CUT_ROW, entries[index].name));
}

/* ---- threads: bolts first, then wood screws; in the order of the table ----------------------- */

/* Wood screws that the editor offers, mm. Own choice: those with a pilot in the chart. */
static const double wood_mm[] = { 2.5, 3.0, 3.5, 4.0, 4.5, 5.0 };

static void
fill_threads (HutCutRow *self)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; i < count; i++)
    {
      g_autofree char *size
          = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, screws[i].thread_mm);

      /* Translators: a metric thread, such as M4 */
      g_ptr_array_add (names, g_strdup_printf (_ ("M%s"), size));
    }
  for (guint i = 0; i < G_N_ELEMENTS (wood_mm); i++)
    {
      g_autofree char *size
          = hut_quantity_dup_text (HUT_QUANTITY_LENGTH, HUT_UNITS_MM, wood_mm[i]);

      /* Translators: a wood screw of that diameter in mm */
      g_ptr_array_add (names, g_strdup_printf (_ ("Wood %s"), size));
    }
  hut_choice_list_set (self->thread, names);
}

static guint
find_thread (const HutItemCut *cut)
{
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  for (guint i = 0; !cut->wood_screw && i < count; i++)
    if (screws[i].thread_mm == cut->thread_mm)
      return i;
  for (guint i = 0; cut->wood_screw && i < G_N_ELEMENTS (wood_mm); i++)
    if (wood_mm[i] == cut->thread_mm)
      return count + i;
  return GTK_INVALID_LIST_POSITION; /* an item of another size keeps it until one is chosen */
}

static void
on_thread_changed (HutCutRow *self)
{
  const guint position = gtk_drop_down_get_selected (self->thread);
  guint count = 0;
  const HutScrew *screws = hut_screw_list (&count);

  if (hut_draft_row_is_filling (HUT_DRAFT_ROW (self)) || position == GTK_INVALID_LIST_POSITION)
    return;
  self->cut.wood_screw = position >= count;
  self->cut.thread_mm = position < count ? screws[position].thread_mm : wood_mm[position - count];
  hut_draft_row_changed (HUT_DRAFT_ROW (self));
}

/* ---- the rest -------------------------------------------------------------------------------- */

static void
show_fields (HutCutRow *self)
{
  const gboolean screw = self->cut.role == HUT_CUT_SCREW;
  const HutCutShape shape = self->cut.shape;
  const gboolean wanted[] = {
    [ENTRY_DIAMETER] = !screw && hut_item_draft_shape_has (shape, HUT_SIZE_DIAMETER),
    [ENTRY_WIDTH] = !screw && hut_item_draft_shape_has (shape, HUT_SIZE_WIDTH),
    [ENTRY_HEIGHT] = !screw && hut_item_draft_shape_has (shape, HUT_SIZE_HEIGHT),
    [ENTRY_RADIUS] = !screw && hut_item_draft_shape_has (shape, HUT_SIZE_RADIUS),
    [ENTRY_GRIP] = screw || self->cut.grip_mm > 0.0,
    [ENTRY_TAPPED] = (screw && !self->cut.wood_screw) || self->cut.tapped_mm > 0.0,
  };

  for (gsize i = ENTRY_DIAMETER; i < G_N_ELEMENTS (entries); i++)
    gtk_widget_set_visible (gtk_widget_get_parent (GTK_WIDGET (get_entry (self, i))), wanted[i]);
  gtk_widget_set_visible (GTK_WIDGET (self->shape), !screw);
  gtk_widget_set_visible (GTK_WIDGET (self->thread), screw);
}

static void
on_choice_changed (HutCutRow *self)
{
  const HutItemCut before = self->cut;

  if (hut_draft_row_is_filling (HUT_DRAFT_ROW (self)))
    return;
  self->cut.role = (HutCutRole)gtk_drop_down_get_selected (self->role);
  self->cut.shape = (HutCutShape)gtk_drop_down_get_selected (self->shape);
  self->cut.leaf = gtk_drop_down_get_selected (self->leaf);
  if (hut_item_cut_equal (&before, &self->cut))
    return;
  if (self->cut.role != before.role || self->cut.shape != before.shape)
    hut_item_draft_repair_cut (&self->cut);
  hut_draft_row_changed (HUT_DRAFT_ROW (self));
}

static void
on_committed (HutNumberEntry *entry,
              double value,
              HutCutRow *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    if (get_entry (self, i) == entry)
      G_STRUCT_MEMBER (double, &self->cut, entries[i].offset) = value;
  hut_draft_row_changed (HUT_DRAFT_ROW (self));
}

static void
name_controls (HutCutRow *self,
               guint number)
{
  HutDraftRow *row = HUT_DRAFT_ROW (self);
  g_autofree char *count = g_strdup_printf ("%u", number),
                  *away = g_strdup_printf (_ ("Remove Hole %u"), number);

  gtk_label_set_text (self->number, count);
  /* Translators: names for screen readers; %u counts the entries of an item */
  hut_draft_row_name_control (row, GTK_WIDGET (self->role), _ ("Hole %u, what it is for"), number);
  hut_draft_row_name_control (row, GTK_WIDGET (self->shape), _ ("Hole %u, shape"), number);
  hut_draft_row_name_control (row, GTK_WIDGET (self->thread), _ ("Hole %u, screw"), number);
  hut_draft_row_name_control (row, GTK_WIDGET (self->leaf), _ ("Hole %u, leaf"), number);
  hut_draft_row_name_remover (row, self->remove, away);
}

static void
hut_cut_row_show (HutDraftRow *row,
                  const HutItem *item,
                  guint index)
{
  HutCutRow *self = HUT_CUT_ROW (row);

  self->cut = g_array_index (item->cuts, HutItemCut, index);
  gtk_drop_down_set_selected (self->role, self->cut.role);
  gtk_drop_down_set_selected (self->shape, self->cut.shape);
  gtk_drop_down_set_selected (self->thread, find_thread (&self->cut));
  gtk_drop_down_set_selected (self->leaf, self->cut.leaf);
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    hut_number_entry_set_value (get_entry (self, i),
                                G_STRUCT_MEMBER (double, &self->cut, entries[i].offset));
  gtk_widget_set_visible (GTK_WIDGET (self->leaf), item->span != HUT_SPAN_PANEL);
  name_controls (self, index + 1);
  show_fields (self);
}

static void
hut_cut_row_write (HutDraftRow *row,
                   HutItem *item,
                   guint index)
{
  g_array_index (item->cuts, HutItemCut, index) = HUT_CUT_ROW (row)->cut;
}

static gboolean
hut_cut_row_commit (HutDraftRow *row)
{
  gboolean ok = TRUE;

  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    ok = hut_number_entry_commit (get_entry (HUT_CUT_ROW (row), i)) && ok;
  return ok;
}

static void
hut_cut_row_class_init (HutCutRowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  HutDraftRowClass *row_class = HUT_DRAFT_ROW_CLASS (class);

  row_class->show = hut_cut_row_show;
  row_class->write = hut_cut_row_write;
  row_class->commit = hut_cut_row_commit;
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-cut-row.ui");
  for (gsize i = 0; i < G_N_ELEMENTS (entries); i++)
    gtk_widget_class_bind_template_child_full (widget_class, entries[i].name, FALSE, 0);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, number);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, role);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, shape);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, thread);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, leaf);
  gtk_widget_class_bind_template_child (widget_class, HutCutRow, remove);
  gtk_widget_class_bind_template_callback (widget_class, on_choice_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_thread_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_committed);
}

static void
hut_cut_row_init (HutCutRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hut_choice_list_style (self->role);
  hut_choice_list_style (self->shape);
  hut_choice_list_style (self->thread);
  hut_choice_list_style (self->leaf);
  fill_threads (self);
  hut_draft_row_set_remover (HUT_DRAFT_ROW (self), self->remove);
}
