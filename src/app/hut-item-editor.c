/* src/app/hut-item-editor.c: the window in which an item of hardware is measured.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All numbers are members of a copy of the item; each that is applied shows in the drawing at once.
 * What is wrong between them is told under the drawing, and then the item cannot be saved. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-editor.h"
#include "app/hut-choice-list.h"
#include "app/hut-field.h"
#include "app/hut-item-draft.h"
#include "app/hut-item-picture.h"
#include "app/hut-number-entry.h"
#include "app/hut-screw-row.h"
#include "catalog/hut-item-format.h"
#include <glib/gi18n.h>
#include <string.h>

/* What a source of the user's own numbers says: in the file, where all text is English. */
#define MEASURED_OF "cutout, holes, front, behind, thickness, flange, nut, body, mass"
#define MEASURED "measured"

typedef enum
{
  FACE_OUTSIDE,
  FACE_INSIDE,
  FACE_EITHER,
} FaceChoice;

struct _HutItemEditor
{
  GtkWindow parent_instance;

  GtkEntry *name;
  GtkDropDown *group, *hold, *face, *shape;
  GtkSwitch *flange_round;
  GtkWidget *diameter, *width, *height, *radius, *flange_width, *flange_height, *front, *behind,
      *leads, *thickness_min, *thickness_max, *nut_corners, *nut_height, *body_diagonal, *mass;
  GtkWidget *diameter_field, *width_field, *height_field, *radius_field, *nut_corners_field,
      *nut_height_field, *body_diagonal_field;
  GtkBox *screws;
  HutItemPicture *picture;
  GtkLabel *problem;
  GtkWidget *save, *remove, *add_screw;

  HutStockroom *stockroom;
  HutItem *item;
  gboolean filling;
};

G_DEFINE_TYPE (HutItemEditor, hut_item_editor, GTK_TYPE_WINDOW)

/* ---- measures -------------------------------------------------------------------------------- */

/* The field of each measure. */
static const gsize entry_offsets[HUT_MEASURE_COUNT] = {
  [HUT_MEASURE_DIAMETER] = G_STRUCT_OFFSET (HutItemEditor, diameter),
  [HUT_MEASURE_WIDTH] = G_STRUCT_OFFSET (HutItemEditor, width),
  [HUT_MEASURE_HEIGHT] = G_STRUCT_OFFSET (HutItemEditor, height),
  [HUT_MEASURE_RADIUS] = G_STRUCT_OFFSET (HutItemEditor, radius),
  [HUT_MEASURE_FLANGE_WIDTH] = G_STRUCT_OFFSET (HutItemEditor, flange_width),
  [HUT_MEASURE_FLANGE_HEIGHT] = G_STRUCT_OFFSET (HutItemEditor, flange_height),
  [HUT_MEASURE_FRONT] = G_STRUCT_OFFSET (HutItemEditor, front),
  [HUT_MEASURE_BEHIND] = G_STRUCT_OFFSET (HutItemEditor, behind),
  [HUT_MEASURE_LEADS] = G_STRUCT_OFFSET (HutItemEditor, leads),
  [HUT_MEASURE_THICKNESS_MIN] = G_STRUCT_OFFSET (HutItemEditor, thickness_min),
  [HUT_MEASURE_THICKNESS_MAX] = G_STRUCT_OFFSET (HutItemEditor, thickness_max),
  [HUT_MEASURE_NUT_CORNERS] = G_STRUCT_OFFSET (HutItemEditor, nut_corners),
  [HUT_MEASURE_NUT_HEIGHT] = G_STRUCT_OFFSET (HutItemEditor, nut_height),
  [HUT_MEASURE_BODY_DIAGONAL] = G_STRUCT_OFFSET (HutItemEditor, body_diagonal),
  [HUT_MEASURE_MASS] = G_STRUCT_OFFSET (HutItemEditor, mass),
};

static HutNumberEntry *
get_entry (HutItemEditor *self,
           int measure)
{
  return HUT_NUMBER_ENTRY (G_STRUCT_MEMBER (GtkWidget *, self, entry_offsets[measure]));
}

/* ---- showing --------------------------------------------------------------------------------- */

/* What keeps the item from being saved; NULL when nothing does. */
static char *
dup_problem (HutItemEditor *self)
{
  if (self->item->name[0] == '\0')
    return g_strdup (_ ("Give it a name."));
  return hut_item_dup_fault (self->item);
}

static void
show_fields (HutItemEditor *self)
{
  const int shape = hut_item_draft_get_shape (self->item);

  gtk_widget_set_visible (self->diameter_field,
                          hut_item_draft_shape_has (shape, HUT_MEASURE_DIAMETER));
  gtk_widget_set_visible (self->width_field, hut_item_draft_shape_has (shape, HUT_MEASURE_WIDTH));
  gtk_widget_set_visible (self->height_field, hut_item_draft_shape_has (shape, HUT_MEASURE_HEIGHT));
  gtk_widget_set_visible (self->radius_field, hut_item_draft_shape_has (shape, HUT_MEASURE_RADIUS));
  gtk_widget_set_visible (self->nut_corners_field, self->item->hold == HUT_HOLD_NUT);
  gtk_widget_set_visible (self->nut_height_field, self->item->hold == HUT_HOLD_NUT);
  gtk_widget_set_visible (self->body_diagonal_field, self->item->hold == HUT_HOLD_BODY);
}

static void
show (HutItemEditor *self)
{
  g_autofree char *problem = dup_problem (self);

  self->filling = TRUE;
  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    hut_number_entry_set_value (get_entry (self, i),
                                hut_item_draft_get (self->item, (HutMeasure)i));
  self->filling = FALSE;
  show_fields (self);
  hut_item_picture_set_item (self->picture, self->item);
  gtk_label_set_text (self->problem, problem != NULL ? problem : "");
  gtk_widget_set_sensitive (self->save, problem == NULL);
}

/* ---- screws ---------------------------------------------------------------------------------- */

static guint
find_row (HutItemEditor *self,
          HutScrewRow *row)
{
  guint index = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self->screws));
       child != NULL && child != GTK_WIDGET (row); child = gtk_widget_get_next_sibling (child))
    index++;
  return index;
}

static void
on_screw_changed (HutItemEditor *self,
                  HutScrewRow *row)
{
  HutItemCut *cut = hut_item_draft_get_screw (self->item, find_row (self, row));

  if (cut != NULL)
    *cut = *hut_screw_row_get_cut (row);
  show (self);
}

static void fill_screws (HutItemEditor *self);

static void
on_screw_removed (HutItemEditor *self,
                  HutScrewRow *row)
{
  hut_item_draft_remove_screw (self->item, find_row (self, row));
  fill_screws (self);
  show (self);
}

static void
fill_screws (HutItemEditor *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->screws))) != NULL)
    gtk_box_remove (self->screws, child);
  for (guint i = 0; i < hut_item_draft_count_screws (self->item); i++)
    {
      GtkWidget *row = hut_screw_row_new (i + 1, hut_item_draft_get_screw (self->item, i));

      g_signal_connect_swapped (row, "changed", G_CALLBACK (on_screw_changed), self);
      g_signal_connect_swapped (row, "removed", G_CALLBACK (on_screw_removed), self);
      gtk_box_append (self->screws, row);
    }
}

static void
on_add_screw (HutItemEditor *self)
{
  if (!hut_item_draft_add_screw (self->item))
    {
      gtk_widget_error_bell (GTK_WIDGET (self));
      return;
    }
  fill_screws (self);
  show (self);
}

/* ---- controls -------------------------------------------------------------------------------- */

static void
on_committed (HutNumberEntry *entry,
              double value,
              HutItemEditor *self)
{
  if (self->filling)
    return;
  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    if (get_entry (self, i) == entry)
      hut_item_draft_set (self->item, (HutMeasure)i, value);
  show (self);
}

static void
on_name_changed (HutItemEditor *self)
{
  if (self->filling)
    return;
  g_free (self->item->name);
  self->item->name = g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->name))));
  show (self);
}

static void
on_choice_changed (HutItemEditor *self)
{
  const guint face = gtk_drop_down_get_selected (self->face);

  if (self->filling)
    return;
  self->item->group = (HutItemGroup)gtk_drop_down_get_selected (self->group);
  self->item->hold = (HutItemHold)gtk_drop_down_get_selected (self->hold);
  self->item->from_outside = face != FACE_INSIDE;
  self->item->from_inside = face != FACE_OUTSIDE;
  self->item->flange_round = gtk_switch_get_active (self->flange_round);
  show (self);
}

static void
on_shape_changed (HutItemEditor *self)
{
  if (self->filling)
    return;
  /* The list begins with "None". */
  hut_item_draft_set_shape (self->item, (int)gtk_drop_down_get_selected (self->shape) - 1);
  show (self);
}

static void
fill_choices (HutItemEditor *self)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  const HutItem *item = self->item;

  for (int i = 0; i < HUT_ITEM_GROUP_COUNT; i++)
    g_ptr_array_add (names, g_strdup (_(hut_item_group_title ((HutItemGroup)i))));
  self->filling = TRUE;
  hut_choice_list_style (self->group);
  hut_choice_list_style (self->hold);
  hut_choice_list_style (self->shape);
  hut_choice_list_set (self->group, names);
  gtk_drop_down_set_selected (self->group, item->group);
  gtk_drop_down_set_selected (self->hold, item->hold);
  gtk_drop_down_set_selected (self->face, item->from_outside && item->from_inside ? FACE_EITHER
                                          : item->from_inside                     ? FACE_INSIDE
                                                                                  : FACE_OUTSIDE);
  gtk_drop_down_set_selected (self->shape, (guint)(hut_item_draft_get_shape (item) + 1));
  gtk_switch_set_active (self->flange_round, item->flange_round);
  gtk_editable_set_text (GTK_EDITABLE (self->name), item->name[0] != '\0' ? _(item->name) : "");
  self->filling = FALSE;
}

/* ---- saving ---------------------------------------------------------------------------------- */

static gboolean
commit_all (HutItemEditor *self)
{
  gboolean ok = TRUE;

  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    if (!hut_number_entry_commit (get_entry (self, i)))
      ok = FALSE;
  for (GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (self->screws)); row != NULL;
       row = gtk_widget_get_next_sibling (row))
    if (!hut_screw_row_commit (HUT_SCREW_ROW (row)))
      ok = FALSE;
  return ok;
}

/* What was measured here has no other source any more; a fan's curve still has. */
static void
set_sources (HutItem *item)
{
  g_auto (GStrv) measured = g_strsplit (MEASURED_OF, ", ", -1);

  for (guint i = item->sources->len; i-- > 0;)
    {
      const HutItemSource *source = g_ptr_array_index (item->sources, i);
      gboolean mine = FALSE;

      for (char **word = measured; *word != NULL; word++)
        mine = mine || strstr (source->of, *word) != NULL;
      if (mine)
        g_ptr_array_remove_index (item->sources, i);
    }
  g_ptr_array_add (item->sources, hut_item_source_new (MEASURED_OF, MEASURED));
}

static void
on_save (HutItemEditor *self)
{
  g_autoptr (HutItem) item = NULL;
  g_autoptr (GError) error = NULL;

  if (!commit_all (self) || !gtk_widget_get_sensitive (self->save))
    {
      gtk_widget_error_bell (GTK_WIDGET (self));
      return;
    }
  item = hut_item_copy (self->item);
  set_sources (item);
  if (item->id[0] == '\0')
    {
      g_free (item->id);
      item->id = hut_item_draft_dup_id (hut_stockroom_get_catalog (self->stockroom), item->name);
    }
  if (!hut_stockroom_save (self->stockroom, item, &error))
    {
      gtk_label_set_text (self->problem, error->message);
      return;
    }
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
on_remove_answered (GtkDialog *dialog,
                    int response,
                    HutItemEditor *self)
{
  g_autoptr (GError) error = NULL;

  gtk_window_destroy (GTK_WINDOW (dialog));
  if (response != GTK_RESPONSE_ACCEPT)
    return;
  if (!hut_stockroom_remove (self->stockroom, self->item->id, &error))
    {
      gtk_label_set_text (self->problem, error->message);
      return;
    }
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
on_remove (HutItemEditor *self)
{
  GtkWidget *dialog = gtk_message_dialog_new (
      GTK_WINDOW (self), GTK_DIALOG_MODAL | GTK_DIALOG_DESTROY_WITH_PARENT, GTK_MESSAGE_QUESTION,
      GTK_BUTTONS_NONE, _ ("Remove “%s” from the catalogue?"), self->item->name);
  GtkWidget *button;

  gtk_message_dialog_format_secondary_text (
      GTK_MESSAGE_DIALOG (dialog),
      _ ("Designs that use it keep their copy. If a shipped item has the same place in the "
         "catalogue, that one comes back."));
  gtk_dialog_add_button (GTK_DIALOG (dialog), _ ("_Cancel"), GTK_RESPONSE_CANCEL);
  button = gtk_dialog_add_button (GTK_DIALOG (dialog), _ ("_Remove"), GTK_RESPONSE_ACCEPT);
  gtk_widget_add_css_class (button, "destructive-action");
  g_signal_connect_object (dialog, "response", G_CALLBACK (on_remove_answered), self, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

/* ---- window ---------------------------------------------------------------------------------- */

static void
hut_item_editor_dispose (GObject *object)
{
  HutItemEditor *self = HUT_ITEM_EDITOR (object);

  g_clear_object (&self->stockroom);
  g_clear_pointer (&self->item, hut_item_free);
  G_OBJECT_CLASS (hut_item_editor_parent_class)->dispose (object);
}

static void
bind_measures (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, diameter);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, width);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, height);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, radius);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, flange_width);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, flange_height);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, front);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, behind);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, leads);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, thickness_min);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, thickness_max);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, nut_corners);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, nut_height);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, body_diagonal);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, mass);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, diameter_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, width_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, height_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, radius_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, nut_corners_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, nut_height_field);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, body_diagonal_field);
}

static void
hut_item_editor_class_init (HutItemEditorClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_item_editor_dispose;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_ITEM_PICTURE);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-item-editor.ui");
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, name);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, group);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, hold);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, face);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, shape);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, flange_round);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, screws);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, picture);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, problem);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, save);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, remove);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, add_screw);
  bind_measures (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, on_name_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_choice_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_shape_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_add_screw);
  gtk_widget_class_bind_template_callback (widget_class, on_save);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_item_editor_init (HutItemEditor *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  for (int i = 0; i < HUT_MEASURE_COUNT; i++)
    g_signal_connect (get_entry (self, i), "committed", G_CALLBACK (on_committed), self);
}

GtkWidget *
hut_item_editor_new (HutStockroom *stockroom,
                     const HutItem *item)
{
  g_return_val_if_fail (HUT_IS_STOCKROOM (stockroom) && item != NULL, NULL);

  HutItemEditor *self = g_object_new (HUT_TYPE_ITEM_EDITOR, NULL);
  const HutCatalog *catalog = hut_stockroom_get_catalog (stockroom);

  self->stockroom = g_object_ref (stockroom);
  self->item = hut_item_copy (item);
  gtk_widget_set_visible (self->remove, hut_catalog_is_own (catalog, item));
  fill_choices (self);
  fill_screws (self);
  show (self);
  return GTK_WIDGET (self);
}
