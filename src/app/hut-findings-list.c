/* src/app/hut-findings-list.c: what the checks say, always in sight.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-findings-list.h"
#include "app/hut-finding-row.h"
#include "app/hut-pick-list.h"
#include "app/hut-refresh.h"
#include "app/hut-session-hardware.h"
#include <glib/gi18n.h>
#include <locale.h>

struct _HutFindingsList
{
  GtkWidget parent_instance;

  GtkWidget *content;
  GtkLabel *counts;
  GtkStack *stack;
  GtkListView *list;

  HutSession *session;
  HutPickList *picks;
};

static guint chosen_signal;

/* How each severity looks: the shape is that of its mark on the canvas. */
static const struct
{
  const char *icon_name, *style, *word;
} looks[] = {
  /* Translators: severity of a finding */
  [HUT_SEVERITY_BLOCKS] = { "hut-severity-blocks-symbolic", "hut-blocks", N_ ("Blocks") },
  /* Translators: severity of a finding */
  [HUT_SEVERITY_WARNS] = { "hut-severity-warns-symbolic", "hut-warns", N_ ("Warns") },
  /* Translators: severity of a finding */
  [HUT_SEVERITY_NOTES] = { "hut-severity-notes-symbolic", "hut-notes", N_ ("Notes") },
};

G_DEFINE_TYPE (HutFindingsList, hut_findings_list, GTK_TYPE_WIDGET)

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

static void
show_counts (HutFindingsList *self,
             const GPtrArray *findings)
{
  guint counts[G_N_ELEMENTS (looks)] = { 0 };
  g_autofree char *text = NULL;

  for (guint i = 0; i < findings->len; i++)
    counts[((const HutFinding *)g_ptr_array_index (findings, i))->severity]++;
  /* Translators: how many findings of each severity there are */
  text = g_strdup_printf (_("%u block, %u warn, %u note"), counts[HUT_SEVERITY_BLOCKS],
                          counts[HUT_SEVERITY_WARNS], counts[HUT_SEVERITY_NOTES]);
  gtk_label_set_text (self->counts, text);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->counts), text);
}

static void
show_selected (HutFindingsList *self)
{
  const int selected = hut_session_get_selected_finding (self->session);

  hut_pick_list_show (self->picks, selected >= 0 ? (guint)selected : GTK_INVALID_LIST_POSITION);
}

static void
refresh (GtkWidget *widget)
{
  HutFindingsList *self = HUT_FINDINGS_LIST (widget);
  const GPtrArray *findings = hut_session_get_findings (self->session);
  g_autofree HutListContent *contents = g_new0 (HutListContent, MAX (findings->len, 1));
  g_autoptr (GPtrArray) texts = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) fixes = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);

      g_ptr_array_add (texts,
                       hut_finding_dup_text (finding, translate, localeconv ()->decimal_point));
      g_ptr_array_add (
          fixes, hut_finding_dup_fix_text (finding, translate, localeconv ()->decimal_point));
      contents[i] = (HutListContent){
        .id = finding->item,
        .icon_name = looks[finding->severity].icon_name,
        .style = looks[finding->severity].style,
        .heading = _(looks[finding->severity].word),
        .text = g_ptr_array_index (texts, i),
        .number = i + 1,
        .fix = g_ptr_array_index (fixes, i),
      };
    }
  hut_pick_list_sync (self->picks, contents, findings->len);
  show_counts (self, findings);
  gtk_stack_set_visible_child_name (self->stack, findings->len > 0 ? "list" : "empty");
  show_selected (self);
}

static void
on_derived (HutFindingsList *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

/* Until the list is made anew its positions are those of findings that are gone. */
static void
on_session_selection_changed (HutFindingsList *self)
{
  if (!hut_refresh_is_queued (GTK_WIDGET (self)))
    show_selected (self);
}

static void
choose (HutFindingsList *self,
        guint position)
{
  if (hut_refresh_is_queued (GTK_WIDGET (self)))
    return;
  hut_session_select_finding (self->session, (int)position);
  g_signal_emit (self, chosen_signal, 0, (int)position);
}

/* The list may be a frame behind the findings: then what was pressed is no longer there. */
static void
fix_action (GtkWidget *widget,
            const char *name,
            GVariant *parameter)
{
  HutFindingsList *self = HUT_FINDINGS_LIST (widget);
  const GPtrArray *findings = hut_session_get_findings (self->session);
  const guint index = g_variant_get_uint32 (parameter);

  if (!hut_refresh_is_queued (widget) && index < findings->len)
    hut_session_apply_fix (self->session, g_ptr_array_index (findings, index));
}

static void
hut_findings_list_dispose (GObject *object)
{
  HutFindingsList *self = HUT_FINDINGS_LIST (object);

  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_object (&self->picks);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_findings_list_parent_class)->dispose (object);
}

static void
hut_findings_list_class_init (HutFindingsListClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_findings_list_dispose;
  chosen_signal = g_signal_new ("chosen", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_INT);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-findings-list.ui");
  gtk_widget_class_install_action (widget_class, "findings.fix", "u", fix_action);
  gtk_widget_class_bind_template_child (widget_class, HutFindingsList, content);
  gtk_widget_class_bind_template_child (widget_class, HutFindingsList, counts);
  gtk_widget_class_bind_template_child (widget_class, HutFindingsList, stack);
  gtk_widget_class_bind_template_child (widget_class, HutFindingsList, list);
}

static void
hut_findings_list_init (HutFindingsList *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  self->picks = hut_pick_list_new (self->list, HUT_TYPE_FINDING_ROW);
  g_signal_connect_object (self->picks, "picked", G_CALLBACK (choose), self, G_CONNECT_SWAPPED);
}

GtkWidget *
hut_findings_list_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutFindingsList *self = g_object_new (HUT_TYPE_FINDINGS_LIST, NULL);

  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (on_session_selection_changed),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

void
hut_findings_list_step (HutFindingsList *self,
                        gboolean forward)
{
  g_return_if_fail (HUT_IS_FINDINGS_LIST (self));

  const int count = (int)hut_pick_list_get_count (self->picks);
  const int selected = hut_session_get_selected_finding (self->session);

  if (count == 0)
    return;
  if (selected < 0)
    choose (self, forward ? 0 : (guint)count - 1);
  else
    choose (self, (guint)((selected + (forward ? 1 : count - 1)) % count));
}
