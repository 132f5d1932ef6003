/* src/app/hut-sheets-view-move.c: parts selected, moved and turned on the sheets by hand.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While a part is dragged only the view's own copy of the sheets changes; the design does once,
 * when it is let go: one undo step. Escape puts it back. */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-session-spots.h"
#include "app/hut-sheets-view-private.h"
#include "app/hut-widget-look.h"
#include "assembly/hut-spot-place.h"
#include "draw/hut-palette.h"
#include <glib/gi18n.h>
#include <math.h>

/* How far an arrow key moves the part, mm: as on the flat view. */
#define NUDGE_MM 1.0
#define NUDGE_FAR_MM 10.0
#define SNAP_REACH_PX 8.0 /* own choice: as on the flat view */
#define DRAG_STEP_MM 0.1  /* a dragged part lies on multiples of it; own choice */
#define TOLERANCE_MM 0.005 /* as the checks have it: half of the last digit shown */
#define GUIDE_LINE_PX 1.0

/* ---- looking up ------------------------------------------------------------------------------ */

/* The laid part of that id; lent until the layout changes. */
static HutLaidPart *
find_laid (HutSheetsView *self,
           const char *id,
           guint *sheet_index)
{
  const GPtrArray *sheets
      = id != NULL && self->packed != NULL ? self->packed->sheets->sheets : NULL;

  for (guint i = 0; sheets != NULL && i < sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (sheets, i);

      for (guint k = 0; k < sheet->laid->len; k++)
        {
          HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *part = g_ptr_array_index (self->packed->parts->parts, laid->part);

          if (!g_str_equal (part->id, id))
            continue;
          *sheet_index = i;
          return laid;
        }
    }
  return NULL;
}

static const HutPart *
part_of (HutSheetsView *self,
         const HutLaidPart *laid)
{
  return g_ptr_array_index (self->packed->parts->parts, laid->part);
}

static void
mark_pair (HutSheetsView *self,
           const HutLaidPart *a,
           const HutLaidPart *b,
           const HutLaidCut *cut_a,
           gboolean *wrong)
{
  const double gap_mm = self->packed->assembly->design->cutter.part_gap_mm - TOLERANCE_MM;
  g_auto (HutLaidCut) cut_b = { NULL };

  hut_laid_cut_init (&cut_b, part_of (self, b), &b->placement);
  if (hut_laid_cut_gap_mm (cut_a, &cut_b, gap_mm) < MAX (gap_mm, TOLERANCE_MM))
    wrong[a->part] = wrong[b->part] = TRUE;
}

/* Only what lies by hand can be wrong: what is selected and the kept ones against all on their
 * sheet. */
gboolean *
hut_sheets_view_dup_wrong (HutSheetsView *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  gboolean *wrong;

  if (self->packed == NULL)
    return NULL;
  wrong = g_new0 (gboolean, self->packed->parts->parts->len + 1);
  for (guint i = 0; i < self->packed->sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (self->packed->sheets->sheets, i);
      const HutRect usable
          = hut_cutter_usable (&self->packed->assembly->design->cutter, sheet->stock);

      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, k);
          const HutPart *part = part_of (self, laid);
          const HutSpot *spot = hut_design_get_spot (design, part->id);
          g_auto (HutLaidCut) cut = { NULL };

          if (g_strcmp0 (part->id, self->chosen) != 0 && (spot == NULL || !spot->kept))
            continue;
          hut_laid_cut_init (&cut, part, &laid->placement);
          if (hut_laid_cut_out_mm (&cut, usable) > TOLERANCE_MM)
            wrong[laid->part] = TRUE;
          for (guint m = 0; m < sheet->laid->len; m++)
            if (m != k)
              mark_pair (self, laid, &g_array_index (sheet->laid, HutLaidPart, m), &cut, wrong);
        }
    }
  return wrong;
}

/* ---- telling --------------------------------------------------------------------------------- */

static char *
dup_status (HutSheetsView *self)
{
  guint index = 0;
  const HutLaidPart *laid = find_laid (self, self->chosen, &index);
  const HutSheet *sheet;
  const HutSpot *spot;
  g_autofree gboolean *wrong = NULL;
  g_autoptr (HutRegion) placed = NULL;
  HutRect box;

  if (laid == NULL)
    return g_strdup (_ ("Click a part or press Tab; then drag it, or use the arrow keys."));
  sheet = g_ptr_array_index (self->packed->sheets->sheets, index);
  spot = hut_design_get_spot (hut_session_get_design (self->session), self->chosen);
  wrong = hut_sheets_view_dup_wrong (self);
  placed = hut_region_dup_placed (part_of (self, laid)->region, &laid->placement);
  box = hut_region_bounds (placed);
  /* Translators: name of a part, number of its sheet, distances in mm; the last %s is one of the
   * sentences "Too little room.", "It stays where you laid it.", or empty */
  return g_strdup_printf (_ ("%s: sheet %u, %.1f mm from the left, %.1f mm from the front. %s"),
                          self->chosen, sheet->number, box.u0, box.v0,
                          wrong[laid->part]
                              ? _ ("Too little room.")
                          : spot != NULL && spot->kept ? _ ("It stays where you laid it.")
                                                       : "");
}

void
hut_sheets_view_tell (HutSheetsView *self)
{
  const HutDesign *design = hut_session_get_design (self->session);
  const HutSpot *spot = self->chosen != NULL ? hut_design_get_spot (design, self->chosen) : NULL;
  g_autofree char *status = dup_status (self);
  guint index;

  gtk_label_set_text (self->status, status);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->status), status);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->area), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  status, -1);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "sheets.turn",
                                 find_laid (self, self->chosen, &index) != NULL);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "sheets.release", spot != NULL && spot->kept);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "sheets.release-all", design->spots->len > 0);
  gtk_widget_queue_draw (GTK_WIDGET (self->area));
}

static void
choose (HutSheetsView *self,
        const char *id)
{
  g_autofree char *old = self->chosen;

  self->chosen = g_strdup (id);
  hut_sheets_view_tell (self);
}

/* ---- moving ---------------------------------------------------------------------------------- */

static HutRect
placed_box (const HutPart *part,
            const HutPlacement *placement)
{
  g_auto (HutLaidCut) cut = { NULL };

  hut_laid_cut_init (&cut, part, placement);
  return cut.box;
}

/* The nearest stop for one side of a box: low and high edge to a line at each of theirs. */
static void
try_stop (double edge_mm,
          double stop_mm,
          double *best_mm,
          double *guide_mm,
          gboolean *has_guide)
{
  if (fabs (stop_mm - edge_mm) >= fabs (*best_mm))
    return;
  *best_mm = stop_mm - edge_mm;
  *guide_mm = stop_mm;
  *has_guide = TRUE;
}

/* Shifts the part to the edges of the usable sheet, of other parts, and the asked gap from them. */
static void
snap (HutSheetsView *self,
      const HutSheet *sheet,
      guint part,
      double reach_mm,
      HutPlacement *placement)
{
  HutSheetDrag *drag = &self->drag;
  const double gap_mm = self->packed->assembly->design->cutter.part_gap_mm;
  const HutRect usable = hut_cutter_usable (&self->packed->assembly->design->cutter, sheet->stock);
  const HutRect box
      = placed_box (g_ptr_array_index (self->packed->parts->parts, part), placement);
  double du_mm = reach_mm, dv_mm = reach_mm;

  try_stop (box.u0, usable.u0, &du_mm, &drag->guide_u_mm, &drag->has_guide_u);
  try_stop (box.u1, usable.u1, &du_mm, &drag->guide_u_mm, &drag->has_guide_u);
  try_stop (box.v0, usable.v0, &dv_mm, &drag->guide_v_mm, &drag->has_guide_v);
  try_stop (box.v1, usable.v1, &dv_mm, &drag->guide_v_mm, &drag->has_guide_v);
  for (guint i = 0; i < sheet->laid->len; i++)
    {
      const HutLaidPart *laid = &g_array_index (sheet->laid, HutLaidPart, i);
      const HutRect other = placed_box (part_of (self, laid), &laid->placement);

      if (laid->part == part)
        continue;
      try_stop (box.u0, other.u0, &du_mm, &drag->guide_u_mm, &drag->has_guide_u);
      try_stop (box.u0, other.u1 + gap_mm, &du_mm, &drag->guide_u_mm, &drag->has_guide_u);
      try_stop (box.u1, other.u0 - gap_mm, &du_mm, &drag->guide_u_mm, &drag->has_guide_u);
      try_stop (box.v0, other.v0, &dv_mm, &drag->guide_v_mm, &drag->has_guide_v);
      try_stop (box.v0, other.v1 + gap_mm, &dv_mm, &drag->guide_v_mm, &drag->has_guide_v);
      try_stop (box.v1, other.v0 - gap_mm, &dv_mm, &drag->guide_v_mm, &drag->has_guide_v);
    }
  placement->shift.u += drag->has_guide_u ? du_mm : 0.0;
  placement->shift.v += drag->has_guide_v ? dv_mm : 0.0;
}

/* Puts the laid part on another sheet of the view's copy, or moves it on its own. */
static void
put (HutSheetsView *self,
     guint to,
     const HutPlacement *placement)
{
  guint from = 0;
  HutLaidPart *laid = find_laid (self, self->chosen, &from);
  HutSheet *source = g_ptr_array_index (self->packed->sheets->sheets, from);
  HutLaidPart moved = *laid;

  /* Last of its sheet: drawn over the others. */
  moved.placement = *placement;
  g_array_remove_index (source->laid, (guint) (laid - (HutLaidPart *)(void *)source->laid->data));
  g_array_append_val (((HutSheet *)g_ptr_array_index (self->packed->sheets->sheets, to))->laid,
                      moved);
}

void
hut_sheets_view_forget_drag (HutSheetsView *self)
{
  self->drag = (HutSheetDrag){ 0 };
}

static gboolean
cancel_drag (HutSheetsView *self)
{
  const HutSheetDrag drag = self->drag;

  if (!drag.active)
    return FALSE;
  hut_sheets_view_forget_drag (self);
  if (drag.moved)
    put (self, drag.start_sheet, &drag.start);
  hut_sheets_view_tell (self);
  return TRUE;
}

static void
on_drag_begin (HutSheetsView *self,
               double x,
               double y,
               GtkGestureDrag *gesture)
{
  const HutSheetGrid grid = hut_sheets_view_get_grid (self);
  HutPoint at;
  const HutSheet *sheet;
  const HutLaidPart *laid;
  int index, found;

  gtk_widget_grab_focus (GTK_WIDGET (self->area));
  hut_sheets_view_forget_drag (self);
  index = self->packed != NULL
              ? hut_sheet_grid_pick_sheet (&grid, self->packed->sheets, (HutPoint){ x, y }, &at)
              : -1;
  sheet = index >= 0 ? g_ptr_array_index (self->packed->sheets->sheets, (guint)index) : NULL;
  found = sheet != NULL ? hut_sheet_pick_part (sheet, self->packed->parts, at) : -1;
  if (found < 0)
    {
      choose (self, NULL);
      return;
    }
  laid = &g_array_index (sheet->laid, HutLaidPart, (guint)found);
  self->drag = (HutSheetDrag){
    .active = TRUE,
    .part = laid->part,
    .start_sheet = (guint)index,
    .start = laid->placement,
    .grab_mm = hut_point_minus (at, laid->placement.shift),
    .start_x = x,
    .start_y = y,
  };
  choose (self, part_of (self, laid)->id);
}

static double
to_step (double value_mm)
{
  return round (value_mm / DRAG_STEP_MM) * DRAG_STEP_MM;
}

static void
on_drag_update (HutSheetsView *self,
                double dx,
                double dy,
                GtkGestureDrag *gesture)
{
  const HutSheetGrid grid = hut_sheets_view_get_grid (self);
  const HutPoint px = { self->drag.start_x + dx, self->drag.start_y + dy };
  HutSheetDrag *drag = &self->drag;
  const HutPart *part;
  HutPlacement placement = drag->start;
  const HutSheet *sheet;
  HutPoint at, front_px;
  guint index = 0;
  int over;

  if (!drag->active || (!drag->moved && !gtk_drag_check_threshold (GTK_WIDGET (self->area), 0, 0,
                                                                    (int)dx, (int)dy)))
    return;
  if (!drag->moved)
    gtk_gesture_set_state (GTK_GESTURE (gesture), GTK_EVENT_SEQUENCE_CLAIMED);
  drag->moved = TRUE;
  drag->has_guide_u = drag->has_guide_v = FALSE;
  part = g_ptr_array_index (self->packed->parts->parts, drag->part);
  if (find_laid (self, self->chosen, &index) == NULL)
    return;
  over = hut_sheet_grid_pick_sheet (&grid, self->packed->sheets, px, &at);
  sheet = over >= 0 ? g_ptr_array_index (self->packed->sheets->sheets, (guint)over) : NULL;
  /* Between sheets, and over another stock, it stays on its sheet. */
  if (sheet != NULL && sheet->stock == part->stock)
    index = (guint)over;
  sheet = g_ptr_array_index (self->packed->sheets->sheets, index);
  front_px = hut_sheet_grid_front (&grid, self->packed->sheets, index);
  placement.shift.u = to_step ((px.u - front_px.u) / grid.scale_px_per_mm - drag->grab_mm.u);
  placement.shift.v = to_step ((front_px.v - px.v) / grid.scale_px_per_mm - drag->grab_mm.v);
  if ((gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture))
       & GDK_CONTROL_MASK)
      == 0)
    snap (self, sheet, drag->part, SNAP_REACH_PX / grid.scale_px_per_mm, &placement);
  put (self, index, &placement);
  hut_sheets_view_tell (self);
}

static void
on_drag_end (HutSheetsView *self)
{
  const HutSheetDrag drag = self->drag;

  hut_sheets_view_forget_drag (self);
  if (drag.active && drag.moved)
    hut_session_keep_part (self->session, self->packed->parts, self->packed->sheets, drag.part);
}

void
hut_sheets_view_draw_guides (HutSheetsView *self,
                             cairo_t *cr,
                             const HutSheetGrid *grid)
{
  static const double dashes_px[] = { 4.0, 3.0 };
  guint index = 0;
  const gboolean laid = self->drag.moved && find_laid (self, self->chosen, &index) != NULL;
  const HutSheet *sheet;
  HutPoint front_px;
  HutColour c;

  if (!laid || grid->columns == 0)
    return;
  sheet = g_ptr_array_index (self->packed->sheets->sheets, index);
  front_px = hut_sheet_grid_front (grid, self->packed->sheets, index);
  c = hut_palette_get (hut_widget_is_dark (GTK_WIDGET (self->area)),
                       hut_widget_is_high_contrast (GTK_WIDGET (self->area)))
          ->guide;
  cairo_set_source_rgb (cr, c.r, c.g, c.b);
  cairo_set_line_width (cr, GUIDE_LINE_PX);
  cairo_set_dash (cr, dashes_px, G_N_ELEMENTS (dashes_px), 0.0);
  if (self->drag.has_guide_u)
    {
      cairo_move_to (cr, front_px.u + self->drag.guide_u_mm * grid->scale_px_per_mm, front_px.v);
      cairo_rel_line_to (cr, 0.0, -sheet->depth_mm * grid->scale_px_per_mm);
    }
  if (self->drag.has_guide_v)
    {
      cairo_move_to (cr, front_px.u, front_px.v - self->drag.guide_v_mm * grid->scale_px_per_mm);
      cairo_rel_line_to (cr, sheet->width_mm * grid->scale_px_per_mm, 0.0);
    }
  cairo_stroke (cr);
}

/* ---- keys and commands ----------------------------------------------------------------------- */

static void
place_chosen (HutSheetsView *self,
              HutPoint by_mm,
              double turn_rad)
{
  guint index = 0;
  const HutLaidPart *laid = find_laid (self, self->chosen, &index);
  HutPlacement placement;
  HutRect before, after;
  guint part;

  if (laid == NULL || self->drag.active)
    return;
  part = laid->part;
  placement = laid->placement;
  before = placed_box (part_of (self, laid), &placement);
  placement.turn_rad += turn_rad;
  after = placed_box (part_of (self, laid), &placement);
  if (turn_rad != 0.0) /* about its middle */
    {
      placement.shift.u += (before.u0 + before.u1 - after.u0 - after.u1) / 2.0;
      placement.shift.v += (before.v0 + before.v1 - after.v0 - after.v1) / 2.0;
    }
  placement.shift.u += by_mm.u;
  placement.shift.v += by_mm.v;
  put (self, index, &placement);
  hut_session_keep_part (self->session, self->packed->parts, self->packed->sheets, part);
  hut_sheets_view_tell (self);
}

/* FALSE behind the last one: the focus moves on. */
static gboolean
step_part (HutSheetsView *self,
           gboolean forward)
{
  const char *before = NULL, *first = NULL;
  gboolean seen = FALSE;

  for (guint i = 0; self->packed != NULL && i < self->packed->sheets->sheets->len; i++)
    {
      const HutSheet *sheet = g_ptr_array_index (self->packed->sheets->sheets, i);

      for (guint k = 0; k < sheet->laid->len; k++)
        {
          const char *id = part_of (self, &g_array_index (sheet->laid, HutLaidPart, k))->id;

          if (first == NULL)
            first = id;
          if (seen && forward)
            {
              choose (self, id);
              return TRUE;
            }
          seen = seen || g_strcmp0 (id, self->chosen) == 0;
          if (!seen)
            before = id;
        }
    }
  if (seen && (forward || before == NULL))
    return FALSE;
  if (first == NULL)
    return FALSE;
  choose (self, forward ? first : before);
  return TRUE;
}

static gboolean
on_key_pressed (HutSheetsView *self,
                guint key,
                guint code,
                GdkModifierType state)
{
  const double step_mm = (state & GDK_SHIFT_MASK) != 0 ? NUDGE_FAR_MM : NUDGE_MM;
  HutPoint by_mm = { 0, 0 };

  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) != 0)
    return FALSE;
  switch (key)
    {
    case GDK_KEY_Tab:
      return step_part (self, TRUE);
    case GDK_KEY_ISO_Left_Tab:
      return step_part (self, FALSE);
    case GDK_KEY_Escape:
      if (!cancel_drag (self) && self->chosen == NULL)
        return FALSE;
      choose (self, NULL);
      return TRUE;
    case GDK_KEY_r:
      place_chosen (self, by_mm, G_PI_2);
      return self->chosen != NULL;
    case GDK_KEY_Left:
    case GDK_KEY_Right:
      by_mm.u = key == GDK_KEY_Right ? step_mm : -step_mm;
      break;
    case GDK_KEY_Up:
    case GDK_KEY_Down:
      by_mm.v = key == GDK_KEY_Up ? step_mm : -step_mm;
      break;
    default:
      return FALSE;
    }
  if (self->chosen == NULL)
    return FALSE;
  place_chosen (self, by_mm, 0.0);
  return TRUE;
}

static void
turn_action (GtkWidget *widget,
             const char *name,
             GVariant *parameter)
{
  place_chosen (HUT_SHEETS_VIEW (widget), (HutPoint){ 0, 0 }, G_PI_2);
}

static void
release_action (GtkWidget *widget,
                const char *name,
                GVariant *parameter)
{
  HutSheetsView *self = HUT_SHEETS_VIEW (widget);

  if (self->chosen != NULL)
    hut_session_release_part (self->session, self->chosen);
}

static void
release_all_action (GtkWidget *widget,
                    const char *name,
                    GVariant *parameter)
{
  hut_session_release_all (HUT_SHEETS_VIEW (widget)->session);
}

void
hut_sheets_view_move_class_init (GtkWidgetClass *class)
{
  gtk_widget_class_install_action (class, "sheets.turn", NULL, turn_action);
  gtk_widget_class_install_action (class, "sheets.release", NULL, release_action);
  gtk_widget_class_install_action (class, "sheets.release-all", NULL, release_all_action);
}

void
hut_sheets_view_move_init (HutSheetsView *self)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkEventController *keys = gtk_event_controller_key_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (drag), GDK_BUTTON_PRIMARY);
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (on_drag_begin), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (on_drag_update), self);
  g_signal_connect_swapped (drag, "drag-end", G_CALLBACK (on_drag_end), self);
  g_signal_connect_swapped (drag, "cancel", G_CALLBACK (cancel_drag), self);
  gtk_widget_add_controller (GTK_WIDGET (self->area), GTK_EVENT_CONTROLLER (drag));
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (on_key_pressed), self);
  gtk_widget_add_controller (GTK_WIDGET (self->area), keys);
}
