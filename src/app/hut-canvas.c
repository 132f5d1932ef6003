/* src/app/hut-canvas.c: the flat view as a widget: its state, its picture, what a screen reader
 * hears. SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-canvas-private.h"
#include "app/hut-widget-look.h"
#include "draw/hut-flat-marks.h"
#include "draw/hut-ink.h"
#include "draw/hut-panel-title.h"
#include <glib/gi18n.h>
#include <langinfo.h>

#define PICK_REACH_PX 4.0
#define FOCUS_LINE_PX 2.0
/* How many reasons the empty state gives. Own choice: more would not calm anybody. */
#define REASONS_MOST 3

enum
{
  PROP_0,
  PROP_SESSION,
  PROP_SCALE,
  PROP_SNAP,
  PROP_SHOW_MACHINE,
  PROP_SHOW_SPLICES,
  PROP_SHOW_DIMENSIONS,
  PROP_SHOW_LEGEND,
  PROP_SHOW_GRID,
  PROP_UNITS,
  PROP_COUNT
};

static GParamSpec *properties[PROP_COUNT];
static guint activate_item_signal;

G_DEFINE_FINAL_TYPE (HutCanvas, hut_canvas, GTK_TYPE_WIDGET)

const HutAssembly *
hut_canvas_get_assembly (HutCanvas *self)
{
  return hut_session_get_assembly (self->session);
}

static const char *
translate (const char *msgid)
{
  return gettext (msgid);
}

/* ---- picture -------------------------------------------------------------------------------- */

static HutFlatStyle
make_style (HutCanvas *self)
{
  return (HutFlatStyle){
    .dark = hut_widget_is_dark (GTK_WIDGET (self)),
    .high_contrast = hut_widget_is_high_contrast (GTK_WIDGET (self)),
    .show_machine = self->show_machine,
    .show_splices = self->show_splices,
    .show_dimensions = self->show_dimensions,
    .show_legend = self->show_legend,
    .show_grid = self->show_grid,
    .show_distances = TRUE,
    .inches = self->units == HUT_UNITS_INCH,
    .selected = hut_session_get_selected (self->session),
    .hovered = self->drag.kind == HUT_DRAG_NONE ? self->hovered : NULL,
    .selected_finding = hut_session_get_selected_finding (self->session),
    .target = self->drag.has_target ? &self->drag.target : NULL,
    .guides = self->snapped.guides,
    .guide_count = self->snapped.guide_count,
    .text_px = hut_widget_text_px (GTK_WIDGET (self)),
    .decimal_point = nl_langinfo (RADIXCHAR),
    .translate = translate,
  };
}

static void
draw_focus (HutCanvas *self,
            cairo_t *cr,
            const HutFlatStyle *style,
            double width,
            double height)
{
  const HutColour c = hut_palette_get (style->dark, style->high_contrast)->selection;

  if (!gtk_widget_has_visible_focus (GTK_WIDGET (self)))
    return;
  cairo_set_source_rgb (cr, c.r, c.g, c.b);
  cairo_set_line_width (cr, FOCUS_LINE_PX);
  cairo_rectangle (cr, FOCUS_LINE_PX / 2.0, FOCUS_LINE_PX / 2.0, width - FOCUS_LINE_PX,
                   height - FOCUS_LINE_PX);
  cairo_stroke (cr);
}

static void
hut_canvas_snapshot (GtkWidget *widget,
                     GtkSnapshot *snapshot)
{
  HutCanvas *self = HUT_CANVAS (widget);
  const double width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  const HutFlatStyle style = make_style (self);
  cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0.0f, 0.0f, (float)width, (float)height));

  hut_flat_draw (cr, hut_canvas_get_assembly (self), hut_session_get_parts (self->session),
                 hut_session_get_findings (self->session), self->layout, &self->view, &style, width,
                 height);
  draw_focus (self, cr, &style, width, height);
  cairo_destroy (cr);
  GTK_WIDGET_CLASS (hut_canvas_parent_class)->snapshot (widget, snapshot);
}

/* The empty state and the buttons lie over the picture, each where its alignment puts it. */
static void
hut_canvas_measure (GtkWidget *widget,
                    GtkOrientation orientation,
                    int for_size,
                    int *minimum,
                    int *natural,
                    int *minimum_baseline,
                    int *natural_baseline)
{
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      int child_minimum, child_natural;

      gtk_widget_measure (child, orientation, -1, &child_minimum, &child_natural, NULL, NULL);
      *minimum = MAX (*minimum, child_minimum);
      *natural = MAX (*natural, child_natural);
    }
}

static void
hut_canvas_size_allocate (GtkWidget *widget,
                          int width,
                          int height,
                          int baseline)
{
  HutCanvas *self = HUT_CANVAS (widget);

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    if (gtk_widget_should_layout (child))
      gtk_widget_allocate (child, width, height, baseline, NULL);
  if (self->fitted)
    hut_canvas_fit (self);
}

/* ---- accessibility -------------------------------------------------------------------------- */

char *
hut_canvas_dup_description (HutCanvas *self)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const char *item = hut_session_get_selected (self->session);
  const HutPlacedHole *hole = item != NULL ? hut_assembly_get_hole (assembly, item) : NULL;

  if (!assembly->whole)
    return g_strdup (_ ("There is no box to draw yet."));
  if (hole == NULL)
    return g_strdup (_ ("Nothing is selected. Tab goes from one opening to the next."));

  const HutPanel *panel = g_ptr_array_index (assembly->panels, hole->panel);
  const HutOpening *opening = hut_design_get_opening (assembly->design, item);
  const HutWindow *window = hut_design_get_window (assembly->design, item);
  const HutHardware *hardware = hut_design_get_hardware (assembly->design, item);
  const char *name = opening != NULL    ? opening->name
                     : window != NULL   ? window->name
                     : hardware != NULL ? hardware->name
                                        : item;
  g_autofree char *left
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, self->units, hole->centre.u);
  g_autofree char *bottom
      = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, self->units, hole->centre.v);
  g_autofree char *width = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, self->units,
                                                            hole->bounds.u1 - hole->bounds.u0);
  g_autofree char *height = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, self->units,
                                                             hole->bounds.v1 - hole->bounds.v0);

  /* Translators: name, width, height, panel, distance of the middle from the left and from the
   * bottom; lengths carry their unit. */
  return g_strdup_printf (_ ("%s, %s by %s, on %s: middle %s from the left, %s from the bottom"),
                          name, width, height, _ (hut_panel_id_title (panel->id)), left, bottom);
}

static void
update_accessible (HutCanvas *self)
{
  g_autofree char *description = hut_canvas_dup_description (self);

  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _ ("Panels, unfolded"), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  description, -1);
}

/* ---- following the session ------------------------------------------------------------------ */

/* Why there is nothing to draw, in the words of the findings. */
static char *
dup_reasons (HutCanvas *self)
{
  const GPtrArray *findings = hut_session_get_findings (self->session);
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < findings->len && i < REASONS_MOST; i++)
    {
      g_autofree char *line = hut_finding_dup_text (g_ptr_array_index (findings, i), translate,
                                                    nl_langinfo (RADIXCHAR));

      g_string_append_printf (text, "%s%s", i > 0 ? "\n" : "", line);
    }
  if (text->len == 0)
    g_string_append (
        text, _ ("Measure the machine or type the inside sizes, then the panels appear here."));
  return g_string_free (g_steal_pointer (&text), FALSE);
}

static void
update_empty (HutCanvas *self)
{
  const gboolean whole = hut_canvas_get_assembly (self)->whole;

  if (!whole)
    {
      g_autofree char *reasons = dup_reasons (self);

      gtk_label_set_text (GTK_LABEL (self->empty_text), reasons);
    }
  gtk_widget_set_visible (self->empty, !whole);
  gtk_widget_set_visible (self->controls, whole);
}

static void
on_derived (HutCanvas *self)
{
  g_clear_pointer (&self->layout, hut_flat_layout_free);
  self->layout = hut_flat_layout_new (hut_canvas_get_assembly (self));
  if (self->fitted)
    hut_canvas_fit (self);
  update_empty (self);
  update_accessible (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
on_selection_changed (HutCanvas *self)
{
  const gboolean selected = hut_session_get_selected (self->session) != NULL;

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "canvas.delete", selected);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "canvas.duplicate", selected);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "canvas.zoom-selection", selected);
  update_accessible (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
set_session (HutCanvas *self,
             HutSession *session)
{
  self->session = g_object_ref (session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (on_selection_changed), self,
                           G_CONNECT_SWAPPED);
  on_derived (self);
  on_selection_changed (self);
}

/* ---- pointer -------------------------------------------------------------------------------- */

static const char *
cursor_name (HutCanvas *self)
{
  const HutAssembly *assembly = hut_canvas_get_assembly (self);
  const char *selected = hut_session_get_selected (self->session);
  const double x = self->pointer_x, y = self->pointer_y;
  g_autoptr (GArray) marks = NULL;

  if (self->drag.kind == HUT_DRAG_PAN)
    return "grabbing";
  if (self->space_held)
    return "grab";
  if (self->drag.kind == HUT_DRAG_MOVE)
    return "move";
  marks = hut_flat_marks_new (hut_session_get_findings (self->session), assembly, self->layout,
                              &self->view);
  if (hut_flat_marks_pick (marks, x, y) >= 0)
    return "pointer";
  switch (hut_flat_pick_handle (self->layout, assembly, &self->view, selected, x, y))
    {
    case HUT_HANDLE_LOWER_LEFT:
    case HUT_HANDLE_UPPER_RIGHT:
      return "nesw-resize";
    case HUT_HANDLE_LOWER_RIGHT:
    case HUT_HANDLE_UPPER_LEFT:
      return "nwse-resize";
    case HUT_HANDLE_NONE:
    default:
      return self->hovered != NULL ? "move" : "default";
    }
}

void
hut_canvas_update_cursor (HutCanvas *self)
{
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), cursor_name (self));
}

static void
on_motion (HutCanvas *self,
           double x,
           double y)
{
  const char *item = hut_flat_pick_item (self->layout, hut_canvas_get_assembly (self), &self->view,
                                         x, y, PICK_REACH_PX);

  self->pointer_x = x;
  self->pointer_y = y;
  if (g_strcmp0 (item, self->hovered) != 0)
    {
      g_free (self->hovered);
      self->hovered = g_strdup (item);
      gtk_widget_queue_draw (GTK_WIDGET (self));
    }
  hut_canvas_update_cursor (self);
}

static void
on_leave (HutCanvas *self)
{
  if (self->hovered == NULL)
    return;
  g_clear_pointer (&self->hovered, g_free);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* ---- object --------------------------------------------------------------------------------- */

static gboolean *
find_flag (HutCanvas *self,
           guint prop_id)
{
  switch (prop_id)
    {
    case PROP_SNAP:
      return &self->snap;
    case PROP_SHOW_MACHINE:
      return &self->show_machine;
    case PROP_SHOW_SPLICES:
      return &self->show_splices;
    case PROP_SHOW_DIMENSIONS:
      return &self->show_dimensions;
    case PROP_SHOW_LEGEND:
      return &self->show_legend;
    case PROP_SHOW_GRID:
      return &self->show_grid;
    default:
      return NULL;
    }
}

static void
hut_canvas_set_property (GObject *object,
                         guint prop_id,
                         const GValue *value,
                         GParamSpec *pspec)
{
  HutCanvas *self = HUT_CANVAS (object);
  gboolean *flag = find_flag (self, prop_id);

  if (prop_id == PROP_SESSION)
    {
      set_session (self, g_value_get_object (value));
      return;
    }
  if (flag != NULL && *flag != g_value_get_boolean (value))
    *flag = g_value_get_boolean (value);
  else if (prop_id == PROP_UNITS && self->units != (HutUnits)g_value_get_enum (value))
    self->units = (HutUnits)g_value_get_enum (value);
  else if (flag == NULL && prop_id != PROP_UNITS)
    {
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, prop_id, pspec);
      return;
    }
  else
    return;
  gtk_widget_queue_draw (GTK_WIDGET (self));
  g_object_notify_by_pspec (object, pspec);
}

static void
hut_canvas_get_property (GObject *object,
                         guint prop_id,
                         GValue *value,
                         GParamSpec *pspec)
{
  HutCanvas *self = HUT_CANVAS (object);
  const gboolean *flag = find_flag (self, prop_id);

  if (flag != NULL)
    g_value_set_boolean (value, *flag);
  else if (prop_id == PROP_SESSION)
    g_value_set_object (value, self->session);
  else if (prop_id == PROP_SCALE)
    g_value_set_double (value, self->view.scale_px_per_mm);
  else if (prop_id == PROP_UNITS)
    g_value_set_enum (value, self->units);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, prop_id, pspec);
}

static void
hut_canvas_dispose (GObject *object)
{
  HutCanvas *self = HUT_CANVAS (object);
  GtkWidget *child;

  if (self->session != NULL)
    hut_canvas_cancel_drag (self);
  gtk_widget_dispose_template (GTK_WIDGET (self), HUT_TYPE_CANVAS);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child); /* those without a name in the template */
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_canvas_parent_class)->dispose (object);
}

static void
hut_canvas_finalize (GObject *object)
{
  HutCanvas *self = HUT_CANVAS (object);

  g_clear_pointer (&self->layout, hut_flat_layout_free);
  g_clear_pointer (&self->hovered, g_free);
  G_OBJECT_CLASS (hut_canvas_parent_class)->finalize (object);
}

static void
install_properties (GObjectClass *object_class)
{
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY | G_PARAM_STATIC_STRINGS;

  properties[PROP_SESSION]
      = g_param_spec_object ("session", NULL, NULL, HUT_TYPE_SESSION,
                             G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS);
  properties[PROP_SCALE] = g_param_spec_double ("scale", NULL, NULL, 0.0, G_MAXDOUBLE, 1.0,
                                                G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  properties[PROP_SNAP] = g_param_spec_boolean ("snap", NULL, NULL, TRUE, flags);
  properties[PROP_SHOW_MACHINE] = g_param_spec_boolean ("show-machine", NULL, NULL, TRUE, flags);
  properties[PROP_SHOW_SPLICES] = g_param_spec_boolean ("show-splices", NULL, NULL, TRUE, flags);
  properties[PROP_SHOW_DIMENSIONS]
      = g_param_spec_boolean ("show-dimensions", NULL, NULL, TRUE, flags);
  properties[PROP_SHOW_LEGEND] = g_param_spec_boolean ("show-legend", NULL, NULL, TRUE, flags);
  properties[PROP_SHOW_GRID] = g_param_spec_boolean ("show-grid", NULL, NULL, FALSE, flags);
  properties[PROP_UNITS]
      = g_param_spec_enum ("units", NULL, NULL, HUT_TYPE_UNITS, HUT_UNITS_MM, flags);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);
}

static void
hut_canvas_class_init (HutCanvasClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->set_property = hut_canvas_set_property;
  object_class->get_property = hut_canvas_get_property;
  object_class->dispose = hut_canvas_dispose;
  object_class->finalize = hut_canvas_finalize;
  widget_class->snapshot = hut_canvas_snapshot;
  widget_class->measure = hut_canvas_measure;
  widget_class->size_allocate = hut_canvas_size_allocate;
  install_properties (object_class);
  activate_item_signal = g_signal_new ("activate-item", HUT_TYPE_CANVAS, G_SIGNAL_RUN_LAST, 0, NULL,
                                       NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);

  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-canvas.ui");
  gtk_widget_class_bind_template_child (widget_class, HutCanvas, empty);
  gtk_widget_class_bind_template_child (widget_class, HutCanvas, empty_text);
  gtk_widget_class_bind_template_child (widget_class, HutCanvas, controls);
  gtk_widget_class_set_css_name (widget_class, "hut-canvas");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  hut_canvas_view_class_init (widget_class);
  hut_canvas_keys_class_init (widget_class);
}

static void
hut_canvas_init (HutCanvas *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();

  self->fitted = TRUE;
  self->view.scale_px_per_mm = 1.0;
  self->snap = TRUE;
  self->show_machine = TRUE;
  self->show_splices = TRUE;
  self->show_dimensions = TRUE;
  self->show_legend = TRUE;
  gtk_widget_init_template (GTK_WIDGET (self));

  g_signal_connect_swapped (motion, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (on_leave), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  hut_canvas_view_init (self);
  hut_canvas_move_init (self);
  hut_canvas_drop_init (self);
  hut_canvas_keys_init (self);
}

GtkWidget *
hut_canvas_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  return g_object_new (HUT_TYPE_CANVAS, "session", session, NULL);
}
