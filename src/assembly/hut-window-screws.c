/* src/assembly/hut-window-screws.c: where the screws of a window's frame go.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-window-screws.h"
#include "catalog/hut-screw.h"
#include "geom/hut-path.h"
#include <math.h>

/* Edge distance of a bolt in sheet, in thread diameters: common practice, no source. */
#define EDGE_RATIO 1.5
/* What stands out of the nut, mm: two turns of a coarse thread, rounded up. Own choice. */
#define STANDS_OUT_MM 2.0

static double
thickness_mm (const HutStock *stock)
{
  return stock != NULL ? hut_stock_mean_mm (stock) : 0.0;
}

static double
least_length_mm (const HutDesign *design,
                 const HutWindow *window,
                 const HutScrew *screw)
{
  return thickness_mm (hut_design_get_panel_stock (design, window->at.panel))
         + thickness_mm (hut_design_get_stock (design, window->glazing_stock))
         + thickness_mm (hut_design_get_stock (design, window->frame_stock))
         + 2.0 * screw->washer_thickness_mm + screw->nut_height_mm + STANDS_OUT_MM;
}

/* Half of the rectangle that the screws stand on. */
static double
half_mm (double clear_mm,
         const HutWindow *window,
         double rim_mm)
{
  return hut_snap_mm (clear_mm / 2.0 + window->overlap_mm + rim_mm / 2.0);
}

static guint
spaces (double half_mm_)
{
  return (guint) MAX (1.0, ceil (2.0 * half_mm_ / HUT_WINDOW_SCREWS_APART_MM - 1e-9));
}

HutWindowScrews
hut_window_screws_find (const HutDesign *design,
                        const HutWindow *window)
{
  const HutScrew *screw = window->screw_mm > 0.0 ? hut_screw_get (window->screw_mm) : NULL;
  const HutStock *frame = hut_design_get_stock (design, window->frame_stock);
  HutWindowScrews self = { 0 };

  if (screw == NULL || frame == NULL)
    return self;
  self.hole_mm = screw->hole_mm[HUT_HOLE_MEDIUM];
  self.rim_mm = 2.0
                * hut_snap_mm (MAX (frame->smallest_web_mm + self.hole_mm / 2.0,
                                    EDGE_RATIO * screw->thread_mm)
                               + HUT_GRID_MM);
  self.across = spaces (half_mm (window->width_mm, window, self.rim_mm));
  self.up = spaces (half_mm (window->height_mm, window, self.rim_mm));
  self.count = 2 * (self.across + self.up);
  self.least_mm = least_length_mm (design, window, screw);
  self.length_mm = hut_screw_length_mm (screw->thread_mm, self.least_mm);
  return self;
}

static void
add_hole (GPtrArray *paths,
          double u_mm,
          double v_mm,
          double hole_mm)
{
  const HutPoint at = { hut_snap_mm (u_mm), hut_snap_mm (v_mm) };

  g_ptr_array_add (paths, hut_path_new_circle (at, hole_mm / 2.0));
}

/* From corner to corner in equal spaces; the corners belong to the rows across. */
GPtrArray *
hut_window_screws_dup_paths (const HutDesign *design,
                             const HutWindow *window)
{
  const HutWindowScrews screws = hut_window_screws_find (design, window);
  const double u_mm = half_mm (window->width_mm, window, screws.rim_mm);
  const double v_mm = half_mm (window->height_mm, window, screws.rim_mm);
  GPtrArray *paths = g_ptr_array_new_with_free_func ((GDestroyNotify) hut_path_free);

  if (screws.count == 0)
    return paths;
  for (guint i = 0; i <= screws.across; i++)
    {
      add_hole (paths, -u_mm + 2.0 * u_mm * i / screws.across, -v_mm, screws.hole_mm);
      add_hole (paths, -u_mm + 2.0 * u_mm * i / screws.across, v_mm, screws.hole_mm);
    }
  for (guint i = 1; i < screws.up; i++)
    {
      add_hole (paths, -u_mm, -v_mm + 2.0 * v_mm * i / screws.up, screws.hole_mm);
      add_hole (paths, u_mm, -v_mm + 2.0 * v_mm * i / screws.up, screws.hole_mm);
    }
  return paths;
}
