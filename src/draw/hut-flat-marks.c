/* src/draw/hut-flat-marks.c: findings marked at their places.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-draw"
#include "config.h"
#include "draw/hut-flat-marks.h"
#include <math.h>

/* Own choice, px. */
#define BADGE_STEP_PX (2.0 * HUT_MARK_RADIUS_PX + 2.0)
#define BADGE_LINE_PX 1.2
#define BADGE_IN_PX (1.5 * HUT_MARK_RADIUS_PX)
#define PLACE_LEAST_PX 10.0
#define PLACE_LINE_PX 1.4
#define PLACE_LINE_SELECTED_PX 3.0
#define PLACE_ALPHA_RATIO 0.14
#define NUMBER_SIZE_PX 10.0
#define NUMBER_SIZE_LONG_PX 8.0
#define NUMBER_LONG 100
/* How often a badge steps aside before it overlaps after all. Own choice: one row on a wide screen.
 */
#define BADGE_STEPS_MOST 24

static HutPxRect
place_px (const HutFlatView *view,
          const HutFlatLayout *layout,
          guint panel,
          HutRect rect)
{
  HutPxRect px;

  hut_flat_view_to_px (view, layout, panel, (HutPoint){ rect.u0, rect.v1 }, &px.x, &px.y);
  px.width = (rect.u1 - rect.u0) * view->scale_px_per_mm;
  px.height = (rect.v1 - rect.v0) * view->scale_px_per_mm;
  if (px.width < PLACE_LEAST_PX)
    {
      px.x -= (PLACE_LEAST_PX - px.width) / 2.0;
      px.width = PLACE_LEAST_PX;
    }
  if (px.height < PLACE_LEAST_PX)
    {
      px.y -= (PLACE_LEAST_PX - px.height) / 2.0;
      px.height = PLACE_LEAST_PX;
    }
  return px;
}

static gboolean
badge_is_free (const GArray *marks,
               double x_px,
               double y_px)
{
  for (guint i = 0; i < marks->len; i++)
    {
      const HutMark *other = &g_array_index (marks, HutMark, i);

      if (fabs (other->x_px - x_px) < BADGE_STEP_PX && fabs (other->y_px - y_px) < BADGE_STEP_PX)
        return FALSE;
    }
  return TRUE;
}

/* A badge stays inside its panel, if that is large enough, so that it covers no caption. */
static double
keep_inside (double at_px,
             double low_px,
             double high_px)
{
  return high_px - low_px >= 2.0 * BADGE_STEP_PX
             ? CLAMP (at_px, low_px + BADGE_IN_PX, high_px - BADGE_IN_PX)
             : at_px;
}

/* On the upper right corner of its place, or beside it where that is taken. */
static void
add_mark (GArray *marks,
          HutMark mark,
          const HutAssembly *assembly,
          const HutFlatLayout *layout,
          const HutFlatView *view)
{
  const HutPanel *panel = g_ptr_array_index (assembly->panels, mark.panel);
  const HutPxRect px = place_px (view, layout, mark.panel, mark.rect);
  double left_px, top_px;

  hut_flat_view_to_px (view, layout, mark.panel, (HutPoint){ 0.0, panel->height_mm }, &left_px,
                       &top_px);
  mark.x_px
      = keep_inside (px.x + px.width, left_px, left_px + panel->width_mm * view->scale_px_per_mm);
  mark.y_px = keep_inside (px.y, top_px, top_px + panel->height_mm * view->scale_px_per_mm);
  for (int step = 0; step < BADGE_STEPS_MOST && !badge_is_free (marks, mark.x_px, mark.y_px);
       step++)
    mark.x_px += BADGE_STEP_PX;
  g_array_append_val (marks, mark);
}

GArray *
hut_flat_marks_new (const GPtrArray *findings,
                    const HutAssembly *assembly,
                    const HutFlatLayout *layout,
                    const HutFlatView *view)
{
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (HutMark));

  for (guint i = 0; findings != NULL && i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);

      for (guint k = 0; k < finding->places->len; k++)
        {
          const HutPlace *place = &g_array_index (finding->places, HutPlace, k);
          const int panel
              = place->has_panel ? hut_assembly_find_panel (assembly, place->panel) : -1;

          if (panel < 0 || (guint)panel >= layout->panel_count)
            continue;
          add_mark (marks,
                    (HutMark){ .finding = i,
                               .severity = finding->severity,
                               .panel = (guint)panel,
                               .rect = place->rect },
                    assembly, layout, view);
        }
    }
  return marks;
}

int
hut_flat_marks_pick (const GArray *marks,
                     double x_px,
                     double y_px)
{
  for (guint i = 0; i < marks->len; i++)
    {
      const HutMark *mark = &g_array_index (marks, HutMark, i);

      if (hypot (mark->x_px - x_px, mark->y_px - y_px) <= HUT_MARK_RADIUS_PX + BADGE_LINE_PX)
        return (int)mark->finding;
    }
  return -1;
}

/* A regular polygon round (x, y); the first corner at @first_rad. */
static void
trace_polygon (cairo_t *cr,
               int corners,
               double first_rad,
               double radius_px,
               HutPoint at)
{
  for (int i = 0; i < corners; i++)
    {
      const double angle_rad = first_rad + 2.0 * G_PI * i / corners;

      cairo_line_to (cr, at.u + radius_px * cos (angle_rad), at.v + radius_px * sin (angle_rad));
    }
  cairo_close_path (cr);
}

static void
trace_badge (cairo_t *cr,
             HutSeverity severity,
             HutPoint at)
{
  const double r = HUT_MARK_RADIUS_PX;

  cairo_new_path (cr);
  switch (severity)
    {
    case HUT_SEVERITY_BLOCKS:
      trace_polygon (cr, 8, G_PI / 8.0, r * 1.06, at);
      break;
    case HUT_SEVERITY_WARNS: /* larger, and hung lower: the number sits in its wide part */
      trace_polygon (cr, 3, -G_PI_2, r * 1.45, (HutPoint){ at.u, at.v + 1.0 });
      break;
    case HUT_SEVERITY_NOTES:
    default:
      cairo_arc (cr, at.u, at.v, r, 0.0, 2.0 * G_PI);
      cairo_close_path (cr);
      break;
    }
}

void
hut_flat_mark_badge (HutInk *ink,
                     HutSeverity severity,
                     guint number,
                     double x_px,
                     double y_px)
{
  trace_badge (ink->cr, severity, (HutPoint){ x_px, y_px });
  hut_ink_colour (ink, ink->palette->mark_fill[severity]);
  cairo_fill_preserve (ink->cr);
  hut_ink_line (ink, HUT_LINE_SOLID, BADGE_LINE_PX);
  hut_ink_colour (ink, ink->palette->outline);
  cairo_stroke (ink->cr);
  if (number == 0)
    return;

  g_autofree char *text = g_strdup_printf ("%u", number);
  hut_ink_text (ink, text,
                &(HutInkText){
                    .x_px = x_px,
                    .y_px = y_px + (severity == HUT_SEVERITY_WARNS ? 3.0 : 0.0),
                    .size_px = number >= NUMBER_LONG ? NUMBER_SIZE_LONG_PX : NUMBER_SIZE_PX,
                    .align = HUT_TEXT_MIDDLE,
                    .bold = TRUE,
                    .colour = ink->palette->mark_text[severity],
                });
}

static void
draw_place (const HutFlatScene *scene,
            const HutMark *mark)
{
  const gboolean selected = (int)mark->finding == scene->style->selected_finding;
  const HutPxRect px = place_px (&scene->view, scene->layout, mark->panel, mark->rect);
  const HutColour colour = mark->severity == HUT_SEVERITY_WARNS
                               ? scene->ink->palette->outline
                               : scene->ink->palette->mark_fill[mark->severity];

  if (!hut_flat_scene_sees (scene, px, PLACE_LINE_SELECTED_PX))
    return;
  hut_ink_line (scene->ink, HUT_LINE_SOLID, selected ? PLACE_LINE_SELECTED_PX : PLACE_LINE_PX);
  hut_ink_colour_alpha (scene->ink, scene->ink->palette->mark_fill[mark->severity],
                        PLACE_ALPHA_RATIO);
  cairo_rectangle (scene->ink->cr, px.x, px.y, px.width, px.height);
  cairo_fill (scene->ink->cr);
  hut_ink_colour (scene->ink, colour);
  hut_flat_scene_stroke_rect (scene, px);
}

void
hut_flat_marks_draw (const HutFlatScene *scene)
{
  g_autoptr (GArray) marks
      = hut_flat_marks_new (scene->findings, scene->assembly, scene->layout, &scene->view);

  for (guint i = marks->len; i-- > 0;)
    draw_place (scene, &g_array_index (marks, HutMark, i));
  for (guint i = marks->len; i-- > 0;) /* the most severe last: on top */
    {
      const HutMark *mark = &g_array_index (marks, HutMark, i);
      const double r = 2.0 * HUT_MARK_RADIUS_PX;

      if (hut_flat_scene_sees (
              scene, (HutPxRect){ mark->x_px - r, mark->y_px - r, 2.0 * r, 2.0 * r }, 0.0))
        hut_flat_mark_badge (scene->ink, mark->severity, mark->finding + 1, mark->x_px, mark->y_px);
    }
}
