/* src/app/hut-item-editor.c: the window in which an item of hardware is measured.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All that is entered goes into a copy of the item, and the drawing shows it at once. What cannot
 * be is told beside its field, under the drawing, and as a mark on its page; then the item cannot
 * be saved. Controls of the template that follow a table are found by their names. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-editor.h"
#include "app/hut-choice-list.h"
#include "app/hut-draft-list.h"
#include "app/hut-field.h"
#include "app/hut-item-draft.h"
#include "app/hut-item-fault-text.h"
#include "app/hut-item-picture.h"
#include "app/hut-item-questions.h"
#include "app/hut-number-entry.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>

struct _HutItemEditor
{
  GtkWindow parent_instance;

  GtkStack *pages;
  GtkEditable *name, *words;
  GtkDropDown *group, *hold, *span;
  HutDraftList *cuts, *spaces, *curve, *sources;
  HutItemPicture *picture;
  GtkLabel *problem, *curve_problem;
  GtkWidget *save, *remove, *go;

  HutStockroom *stockroom;
  HutItem *item, *before; /* as it is entered, and as it was opened */
  HutUsualSpace usual;    /* of the item as it is shown */
  gboolean filling;
};

G_DEFINE_FINAL_TYPE (HutItemEditor, hut_item_editor, GTK_TYPE_WINDOW)

/* The controls of numbers and switches: each in a field of its name and "_field". */
static const char *const measure_names[HUT_MEASURE_COUNT] = {
  [HUT_MEASURE_FLANGE_WIDTH] = "flange_width",   [HUT_MEASURE_FLANGE_HEIGHT] = "flange_height",
  [HUT_MEASURE_THICKNESS_MIN] = "thickness_min", [HUT_MEASURE_THICKNESS_MAX] = "thickness_max",
  [HUT_MEASURE_NUT_CORNERS] = "nut_corners",     [HUT_MEASURE_NUT_HEIGHT] = "nut_height",
  [HUT_MEASURE_BODY_DIAGONAL] = "body_diagonal", [HUT_MEASURE_PASS_WIDTH] = "pass_width",
  [HUT_MEASURE_PASS_HEIGHT] = "pass_height",     [HUT_MEASURE_LINE_MIN] = "line_min",
  [HUT_MEASURE_LINE_MAX] = "line_max",           [HUT_MEASURE_MASS] = "mass",
  [HUT_MEASURE_FREE_AREA] = "free_area",         [HUT_MEASURE_STROKE] = "stroke",
  [HUT_MEASURE_FORCE] = "force",                 [HUT_MEASURE_LENGTH] = "length",
  [HUT_MEASURE_NOISE] = "noise",
};
static const char *const trait_names[HUT_TRAIT_COUNT] = {
  [HUT_TRAIT_FROM_OUTSIDE] = "from_outside", [HUT_TRAIT_FROM_INSIDE] = "from_inside",
  [HUT_TRAIT_FLANGE_ROUND] = "flange_round", [HUT_TRAIT_STRAINED] = "strained",
  [HUT_TRAIT_MAINS] = "mains",               [HUT_TRAIT_PASS_ROUND] = "pass_round",
};
static const char *const page_names[]
    = { "part", "panel", "holes", "room", "lines", "air", "spring", "sources" };

/* What tells a fault: a page, and a field or a list on it. */
static const struct
{
  const char *page, *field, *list;
} places[] = {
  [HUT_ITEM_FAULT_FACE] = { "panel", "from_outside", NULL },
  [HUT_ITEM_FAULT_THICKNESS] = { "panel", "thickness_max", NULL },
  [HUT_ITEM_FAULT_NUT] = { "panel", "nut_corners", NULL },
  [HUT_ITEM_FAULT_BODY] = { "panel", "body_diagonal", NULL },
  [HUT_ITEM_FAULT_CUT_LEAF] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_SCREW_SHAPE] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_WOOD_SCREW] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_THREAD] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_CUT_SIZE] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_CUT_RIM] = { "holes", NULL, "cuts" },
  [HUT_ITEM_FAULT_SPACE_SIZE] = { "room", NULL, "spaces" },
  [HUT_ITEM_FAULT_SPACE_LEAF] = { "room", NULL, "spaces" },
  [HUT_ITEM_FAULT_CURVE_MISSING] = { "air", NULL, NULL },
  [HUT_ITEM_FAULT_CURVE_ORDER] = { "air", NULL, "curve" },
  [HUT_ITEM_FAULT_CURVE_END] = { "air", NULL, NULL },
  [HUT_ITEM_FAULT_PASS] = { "lines", "pass_height", NULL },
  [HUT_ITEM_FAULT_LINE] = { "lines", "line_max", NULL },
};

static gpointer
get_child (HutItemEditor *self,
           const char *name,
           const char *suffix)
{
  g_autofree char *id = g_strconcat (name, suffix, NULL);

  return gtk_widget_get_template_child (GTK_WIDGET (self), HUT_TYPE_ITEM_EDITOR, id);
}

/* ---- what is wrong --------------------------------------------------------------------------- */

/* Only one thing at a time: the first. */
static void
show_fault (HutItemEditor *self)
{
  const HutItemFault fault = hut_item_find_fault (self->item);
  const gboolean unnamed = self->item->name[0] == '\0';
  g_autofree char *text = hut_item_fault_dup_text (
      self->item, &fault, hut_settings_get_units (hut_settings_get_default ()));
  const char *page = fault.kind != HUT_ITEM_FAULT_NONE ? places[fault.kind].page
                     : unnamed                         ? "part"
                                                       : NULL;
  const char *field = fault.kind != HUT_ITEM_FAULT_NONE ? places[fault.kind].field
                      : unnamed                         ? "name"
                                                        : NULL;
  const char *list = places[fault.kind].list;

  if (text == NULL && unnamed)
    text = g_strdup (_ ("Give it a name."));
  for (gsize i = 0; i < G_N_ELEMENTS (page_names); i++)
    gtk_stack_page_set_needs_attention (get_child (self, page_names[i], "_page"),
                                        g_strcmp0 (page, page_names[i]) == 0);
  hut_field_set_problem (get_child (self, "name", "_field"),
                         g_strcmp0 (field, "name") == 0 ? text : NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (measure_names); i++)
    hut_field_set_problem (get_child (self, measure_names[i], "_field"),
                           g_strcmp0 (field, measure_names[i]) == 0 ? text : NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (trait_names); i++)
    hut_field_set_problem (get_child (self, trait_names[i], "_field"),
                           g_strcmp0 (field, trait_names[i]) == 0 ? text : NULL);
  hut_draft_list_set_problem (self->cuts, fault.index, g_strcmp0 (list, "cuts") == 0 ? text : NULL);
  hut_draft_list_set_problem (self->spaces, fault.index,
                              g_strcmp0 (list, "spaces") == 0 ? text : NULL);
  hut_draft_list_set_problem (self->curve, fault.index,
                              g_strcmp0 (list, "curve") == 0 ? text : NULL);
  gtk_label_set_text (self->curve_problem, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (self->curve_problem),
                          fault.kind == HUT_ITEM_FAULT_CURVE_MISSING
                              || fault.kind == HUT_ITEM_FAULT_CURVE_END);
  gtk_label_set_text (self->problem, text != NULL ? text : "");
  gtk_widget_set_visible (self->go, page != NULL
                                        && g_strcmp0 (page, gtk_stack_get_visible_child_name (
                                                                self->pages))
                                               != 0);
  gtk_widget_set_sensitive (self->save, text == NULL);
}

static void
on_go (HutItemEditor *self)
{
  for (gsize i = 0; i < G_N_ELEMENTS (page_names); i++)
    if (gtk_stack_page_get_needs_attention (get_child (self, page_names[i], "_page")))
      gtk_stack_set_visible_child_name (self->pages, page_names[i]);
}

static void
on_page_changed (HutItemEditor *self)
{
  if (self->item != NULL)
    show_fault (self);
}

/* ---- showing --------------------------------------------------------------------------------- */

/* Pages that mean nothing for an item of this kind are not there. */
static void
show_pages (HutItemEditor *self)
{
  const HutItem *item = self->item;
  const gboolean fan = item->group == HUT_ITEM_FAN || item->curve->len > 0;

  gtk_stack_page_set_visible (get_child (self, "air", "_page"),
                              fan || hut_item_draft_wants (item, HUT_MEASURE_FREE_AREA)
                                  || hut_item_draft_wants (item, HUT_MEASURE_NOISE));
  gtk_stack_page_set_visible (get_child (self, "spring", "_page"),
                              hut_item_draft_wants (item, HUT_MEASURE_LENGTH)
                                  || hut_item_draft_wants (item, HUT_MEASURE_STROKE)
                                  || hut_item_draft_wants (item, HUT_MEASURE_FORCE));
  gtk_widget_set_visible (get_child (self, "curve_title", NULL), fan);
  gtk_widget_set_visible (get_child (self, "curve_why", NULL), fan);
  gtk_widget_set_visible (get_child (self, "add_point", NULL), fan);
}

static void
show (HutItemEditor *self)
{
  self->filling = TRUE;
  for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
    {
      hut_number_entry_set_value (get_child (self, measure_names[i], NULL),
                                  hut_item_draft_get (self->item, i));
      gtk_widget_set_visible (get_child (self, measure_names[i], "_field"),
                              hut_item_draft_wants (self->item, i));
    }
  for (HutTrait i = 0; i < HUT_TRAIT_COUNT; i++)
    gtk_switch_set_active (get_child (self, trait_names[i], NULL),
                           hut_item_draft_has (self->item, i));
  hut_draft_list_show (self->cuts);
  hut_draft_list_show (self->spaces);
  hut_draft_list_show (self->curve);
  hut_draft_list_show (self->sources);
  self->filling = FALSE;
  show_pages (self);
  hut_item_picture_set_item (self->picture, self->item);
  show_fault (self);
}

/* After each edit of the item. */
static void
take_edit (HutItemEditor *self)
{
  hut_item_draft_follow (self->item, &self->usual);
  self->usual = hut_item_draft_usual_space (self->item);
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
  hut_choice_list_style (self->span);
  hut_choice_list_set (self->group, names);
  gtk_drop_down_set_selected (self->group, item->group);
  gtk_drop_down_set_selected (self->hold, item->hold);
  gtk_drop_down_set_selected (self->span, item->span);
  gtk_editable_set_text (self->name, item->name[0] != '\0' ? _(item->name) : "");
  gtk_editable_set_text (self->words, item->words);
  self->filling = FALSE;
}

/* ---- controls -------------------------------------------------------------------------------- */

static void
on_committed (HutNumberEntry *entry,
              double value,
              HutItemEditor *self)
{
  if (self->filling)
    return;
  for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
    if (get_child (self, measure_names[i], NULL) == (gpointer)entry)
      hut_item_draft_set (self->item, i, value);
  take_edit (self);
}

/* A shipped name is shown in the user's language and stays as it is until another one is typed. */
static void
on_text_changed (HutItemEditor *self)
{
  const char *shown = self->item->name[0] != '\0' ? _(self->item->name) : "";
  g_autofree char *name = g_strstrip (g_strdup (gtk_editable_get_text (self->name)));

  if (self->filling)
    return;
  if (g_strcmp0 (name, shown) != 0)
    {
      g_free (self->item->name);
      self->item->name = g_steal_pointer (&name);
    }
  g_free (self->item->words);
  self->item->words = g_strdup (gtk_editable_get_text (self->words));
  show_fault (self);
}

static void
on_choice_changed (HutItemEditor *self)
{
  const HutItemSpan span = (HutItemSpan)gtk_drop_down_get_selected (self->span);

  if (self->filling)
    return;
  self->item->group = (HutItemGroup)gtk_drop_down_get_selected (self->group);
  self->item->hold = (HutItemHold)gtk_drop_down_get_selected (self->hold);
  if (span != self->item->span)
    hut_item_draft_set_span (self->item, span);
  take_edit (self);
}

static void
on_trait_changed (HutItemEditor *self)
{
  if (self->filling)
    return;
  for (HutTrait i = 0; i < HUT_TRAIT_COUNT; i++)
    {
      const gboolean active = gtk_switch_get_active (get_child (self, trait_names[i], NULL));

      if (active != hut_item_draft_has (self->item, i))
        hut_item_draft_set_has (self->item, i, active);
    }
  take_edit (self);
}

static void
on_list_changed (HutItemEditor *self)
{
  take_edit (self);
}

/* @added: FALSE when the list is full */
static void
show_added (HutItemEditor *self,
            HutDraftList *list,
            gboolean added)
{
  if (!added)
    {
      gtk_widget_error_bell (GTK_WIDGET (self));
      return;
    }
  take_edit (self);
  hut_draft_list_focus_last (list);
}

static void
on_add_cutout (HutItemEditor *self)
{
  show_added (self, self->cuts, hut_item_draft_add_cut (self->item, HUT_CUT_BODY));
}

static void
on_add_screw (HutItemEditor *self)
{
  show_added (self, self->cuts, hut_item_draft_add_cut (self->item, HUT_CUT_SCREW));
}

static void
on_add_pin (HutItemEditor *self)
{
  show_added (self, self->cuts, hut_item_draft_add_cut (self->item, HUT_CUT_PIN));
}

static void
on_add_front (HutItemEditor *self)
{
  show_added (self, self->spaces, hut_item_draft_add_space (self->item, HUT_ITEM_FRONT, FALSE));
}

static void
on_add_behind (HutItemEditor *self)
{
  show_added (self, self->spaces, hut_item_draft_add_space (self->item, HUT_ITEM_BEHIND, FALSE));
}

static void
on_add_leads (HutItemEditor *self)
{
  show_added (self, self->spaces, hut_item_draft_add_space (self->item, HUT_ITEM_BEHIND, TRUE));
}

static void
on_add_point (HutItemEditor *self)
{
  show_added (self, self->curve, hut_item_draft_add_point (self->item));
}

static void
on_add_source (HutItemEditor *self)
{
  show_added (self, self->sources, hut_item_draft_add_source (self->item));
}

/* ---- saving ---------------------------------------------------------------------------------- */

static gboolean
commit_all (HutItemEditor *self)
{
  gboolean ok = TRUE;

  for (gsize i = 0; i < G_N_ELEMENTS (measure_names); i++)
    ok = hut_number_entry_commit (get_child (self, measure_names[i], NULL)) && ok;
  ok = hut_draft_list_commit (self->cuts) && ok;
  ok = hut_draft_list_commit (self->spaces) && ok;
  return hut_draft_list_commit (self->curve) && ok;
}

static void
on_save (HutItemEditor *self)
{
  g_autoptr (HutItem) item = NULL, blank = hut_item_new ("");
  g_autoptr (GError) error = NULL;

  if (!commit_all (self) || !gtk_widget_get_sensitive (self->save))
    {
      gtk_widget_error_bell (GTK_WIDGET (self));
      return;
    }
  item = hut_item_copy (self->item);
  hut_item_draft_mark_measured (item, self->before->sources->len > 0 ? self->before : blank);
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
on_remove (HutItemEditor *self)
{
  hut_item_ask_remove (GTK_WINDOW (self), self->stockroom, self->item->id, self->item->name);
}

/* An item that was removed is no longer measured. */
static void
on_stockroom_changed (HutItemEditor *self)
{
  const HutCatalog *catalog = hut_stockroom_get_catalog (self->stockroom);
  const HutItem *item = hut_catalog_get (catalog, self->item->id);

  if (gtk_widget_get_visible (self->remove)
      && (item == NULL || !hut_catalog_is_own (catalog, item)))
    gtk_window_destroy (GTK_WINDOW (self));
}

static gboolean
hut_item_editor_close_request (GtkWindow *window)
{
  HutItemEditor *self = HUT_ITEM_EDITOR (window);

  if (hut_item_equal (self->item, self->before))
    return GTK_WINDOW_CLASS (hut_item_editor_parent_class)->close_request (window);
  hut_item_ask_discard (window);
  return TRUE;
}

/* ---- window ---------------------------------------------------------------------------------- */

static void
hut_item_editor_dispose (GObject *object)
{
  HutItemEditor *self = HUT_ITEM_EDITOR (object);

  g_clear_object (&self->stockroom);
  g_clear_pointer (&self->item, hut_item_free);
  g_clear_pointer (&self->before, hut_item_free);
  G_OBJECT_CLASS (hut_item_editor_parent_class)->dispose (object);
}

/* Binds NAME and NAME_field of the controls that tables speak of. */
static void
bind_named (GtkWidgetClass *widget_class,
            const char *const *names,
            gsize count,
            const char *suffix)
{
  for (gsize i = 0; i < count; i++)
    {
      g_autofree char *id = g_strconcat (names[i], suffix, NULL);

      gtk_widget_class_bind_template_child_full (widget_class, id, FALSE, 0);
    }
}

static void
bind_children (GtkWidgetClass *widget_class)
{
  static const char *const others[]
      = { "name_field", "curve_title", "curve_why", "add_point", "add_screw" };

  bind_named (widget_class, measure_names, G_N_ELEMENTS (measure_names), "");
  bind_named (widget_class, measure_names, G_N_ELEMENTS (measure_names), "_field");
  bind_named (widget_class, trait_names, G_N_ELEMENTS (trait_names), "");
  bind_named (widget_class, trait_names, G_N_ELEMENTS (trait_names), "_field");
  bind_named (widget_class, page_names, G_N_ELEMENTS (page_names), "_page");
  bind_named (widget_class, others, G_N_ELEMENTS (others), "");
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, pages);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, name);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, words);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, group);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, hold);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, span);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, cuts);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, spaces);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, curve);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, sources);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, picture);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, problem);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, curve_problem);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, save);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, remove);
  gtk_widget_class_bind_template_child (widget_class, HutItemEditor, go);
}

static void
hut_item_editor_class_init (HutItemEditorClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_item_editor_dispose;
  GTK_WINDOW_CLASS (class)->close_request = hut_item_editor_close_request;
  g_type_ensure (HUT_TYPE_DRAFT_LIST);
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_ITEM_PICTURE);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-item-editor.ui");
  bind_children (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, on_committed);
  gtk_widget_class_bind_template_callback (widget_class, on_text_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_choice_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_trait_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_list_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_page_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_add_cutout);
  gtk_widget_class_bind_template_callback (widget_class, on_add_screw);
  gtk_widget_class_bind_template_callback (widget_class, on_add_pin);
  gtk_widget_class_bind_template_callback (widget_class, on_add_front);
  gtk_widget_class_bind_template_callback (widget_class, on_add_behind);
  gtk_widget_class_bind_template_callback (widget_class, on_add_leads);
  gtk_widget_class_bind_template_callback (widget_class, on_add_point);
  gtk_widget_class_bind_template_callback (widget_class, on_add_source);
  gtk_widget_class_bind_template_callback (widget_class, on_go);
  gtk_widget_class_bind_template_callback (widget_class, on_save);
  gtk_widget_class_bind_template_callback (widget_class, on_remove);
}

static void
hut_item_editor_init (HutItemEditor *self)
{
  self->filling = TRUE;
  gtk_widget_init_template (GTK_WIDGET (self));
  for (HutMeasure i = 0; i < HUT_MEASURE_COUNT; i++)
    {
      const HutMeasureRange range = hut_item_draft_get_range (i);

      g_object_set (get_child (self, measure_names[i], NULL), "quantity", range.quantity, "lower",
                    0.0, "upper", range.upper, NULL);
    }
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
  self->before = hut_item_copy (item);
  self->usual = hut_item_draft_usual_space (item);
  hut_draft_list_set_item (self->cuts, self->item, HUT_DRAFT_CUTS);
  hut_draft_list_set_item (self->spaces, self->item, HUT_DRAFT_SPACES);
  hut_draft_list_set_item (self->curve, self->item, HUT_DRAFT_POINTS);
  hut_draft_list_set_item (self->sources, self->item, HUT_DRAFT_SOURCES);
  gtk_widget_set_visible (self->remove, item->id[0] != '\0' && hut_catalog_is_own (catalog, item));
  g_signal_connect_object (stockroom, "changed", G_CALLBACK (on_stockroom_changed), self,
                           G_CONNECT_SWAPPED);
  fill_choices (self);
  show (self);
  return GTK_WIDGET (self);
}
