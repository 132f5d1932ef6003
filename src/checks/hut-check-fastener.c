/* src/checks/hut-check-fastener.c: screws and bolts of the hardware: length, edges, heads, webs.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-check-fastener.h"
#include "assembly/hut-hardware-placing.h"
#include "checks/hut-check-hole.h"
#include "checks/hut-hardware-room.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Wood or plastic under a countersunk head, beside its height, mm (common practice, no source). */
#define SUNK_WOOD_MM 1.0
#define SUNK_PLASTIC_MM 2.0
/* Steps in which a cutout is narrowed, mm. Own choice. */
#define NARROW_STEP_MM 0.1
/* A hole for air is narrowed by this share of itself at most: then half of its area is left. Own
 * choice. */
#define NARROW_MOST_RATIO 0.3
/* A web under this share of what the stock holds will not survive the cut. Own choice, as for
 * parts. */
#define WEB_BLOCKS_RATIO 0.5

static gboolean
is_plastic (const HutStock *stock)
{
  return stock->material == HUT_MATERIAL_ACRYLIC || stock->material == HUT_MATERIAL_POLYCARBONATE;
}

/* ---- edges ---------------------------------------------------------------------------------- */

double
hut_fastener_edge_mm (const HutFastener *fastener,
                      const HutPanel *panel,
                      HutEdge edge)
{
  const gboolean grain_along_u = panel->width_mm >= panel->height_mm;
  const gboolean at_side = edge == HUT_EDGE_LEFT || edge == HUT_EDGE_RIGHT;

  if (is_plastic (panel->stock))
    return HUT_SCREW_PLASTIC_RATIO * fastener->hole_mm;
  /* A screw splits along the grain; a bolt is held by its nut and washer, and by the veneers that
   * lie across. */
  if (fastener->wood && panel->stock->material == HUT_MATERIAL_PLYWOOD
      && at_side == grain_along_u)
    return MAX (HUT_SCREW_END_RATIO * fastener->thread_mm, HUT_SCREW_END_MM);
  return MAX (HUT_SCREW_EDGE_RATIO * fastener->thread_mm, HUT_SCREW_EDGE_MM);
}

HutRect
hut_fastener_room (const HutFastener *fastener,
                   const HutPanel *panel)
{
  return (HutRect) { hut_fastener_edge_mm (fastener, panel, HUT_EDGE_LEFT),
                     hut_fastener_edge_mm (fastener, panel, HUT_EDGE_BOTTOM),
                     panel->width_mm - hut_fastener_edge_mm (fastener, panel, HUT_EDGE_RIGHT),
                     panel->height_mm - hut_fastener_edge_mm (fastener, panel, HUT_EDGE_TOP) };
}

static double
edge_distance_mm (const HutFastener *fastener,
                  const HutPanel *panel,
                  HutEdge edge)
{
  switch (edge)
    {
    case HUT_EDGE_BOTTOM:
      return fastener->at.v;
    case HUT_EDGE_RIGHT:
      return panel->width_mm - fastener->at.u;
    case HUT_EDGE_TOP:
      return panel->height_mm - fastener->at.v;
    default:
      return fastener->at.u;
    }
}

/* ---- one finding for all screws of a leaf ---------------------------------------------------- */

typedef struct
{
  const char *check, *message;
  HutSeverity severity;
  double is, must, worst; /* worst: of is - must */
  const HutFastener *fastener;
} Worst;

static void
mind (Worst *worst,
      const HutFastener *fastener,
      double is,
      double must)
{
  const double lack = is - must;

  if (lack >= -HUT_CHECK_TOLERANCE_MM || (worst->fastener != NULL && lack >= worst->worst))
    return;
  *worst = (Worst) { worst->check, worst->message, worst->severity, is, must, lack, fastener };
}

static HutFinding *
add_worst (HutChecking *self,
           const Worst *worst,
           const HutPlacedHardware *placed)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  HutFinding *finding;

  if (worst->fastener == NULL)
    return NULL;
  finding = hut_checking_add (self, worst->check, worst->severity, worst->message);
  hut_finding_set_names (finding, hut_check_name (placed->hardware->name, placed->hardware->id),
                         hut_panel_name (panel->id));
  hut_finding_set_item (finding, placed->hardware->id);
  hut_finding_set_numbers (finding, worst->is, worst->must);
  hut_finding_add_gap (finding, panel, worst->fastener->at, worst->fastener->at);
  return finding;
}

/* The longest standard bolt under a length that has none any more. */
static double
longest_bolt_mm (double thread_mm,
                 double need_mm)
{
  double longest_mm = 0.0, next_mm;

  while ((next_mm = hut_screw_length_mm (thread_mm, longest_mm + HUT_GRID_MM)) > longest_mm
         && next_mm < need_mm)
    longest_mm = next_mm;
  return longest_mm;
}

/* A wood screw bites 4 d; a bolt needs a length that is sold. */
static void
mind_length (const HutFastener *fastener,
             Worst *bite,
             Worst *through,
             Worst *unsold)
{
  if (!fastener->wood)
    {
      if (fastener->length_mm <= 0.0)
        mind (unsold, fastener, longest_bolt_mm (fastener->thread_mm, fastener->need_mm),
              fastener->need_mm);
      return;
    }
  if (fastener->length_mm <= 0.0)
    mind (through, fastener, fastener->need_mm, HUT_WOOD_SCREW_SHORTEST_MM);
  else
    mind (bite, fastener, fastener->length_mm - fastener->grip_mm,
          HUT_SCREW_BITE_RATIO * fastener->thread_mm);
}

/* The nut behind the panel lies on glass or frame. */
static void
mind_window (const HutChecking *self,
             const HutFastener *fastener,
             Worst *worst)
{
  const HutAssembly *assembly = self->assembly;
  const HutScrew *screw = fastener->wood ? NULL : hut_screw_get (fastener->thread_mm);
  const double reach_mm = screw != NULL ? screw->washer_outer_mm / 2.0 : fastener->hole_mm / 2.0;

  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);
      const HutRect rect = hut_region_bounds (plate->region);
      const HutRect point
          = { fastener->at.u, fastener->at.v, fastener->at.u, fastener->at.v };

      if (plate->window != NULL && plate->panel == fastener->placed->panel)
        mind (worst, fastener, hut_check_rects_apart_mm (&rect, &point), reach_mm);
    }
}

static void
check_leaf (HutChecking *self,
            const HutPlacedHardware *placed,
            const GArray *fasteners)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  Worst edge = { "fastener.edge",
                 N_ ("A screw of {what} is {is} mm from the edge of {other}; {must} mm are usual."),
                 HUT_SEVERITY_WARNS };
  Worst bite = { "fastener.short",
                 N_ ("The longest screw of {what} that stays in {other} has {is} mm of thread in "
                     "the wood; {must} mm hold."),
                 HUT_SEVERITY_WARNS };
  Worst through = { "fastener.through",
                    N_ ("The shortest screw comes through {other} at {what}: there are {is} mm for "
                        "it; it needs {must} mm."),
                    HUT_SEVERITY_BLOCKS };
  Worst unsold = { "fastener.length",
                   N_ ("The bolts of {what} go through {must} mm on {other}; the longest standard "
                       "ones are {is} mm."),
                   HUT_SEVERITY_WARNS };
  Worst window = { "fastener.window",
                   N_ ("A screw of {what} is {is} mm from the plates of a window on {other}; its "
                       "nut needs {must} mm."),
                   HUT_SEVERITY_BLOCKS };
  Worst sunk = { "fastener.sunk",
                 N_ ("{other} is {is} mm thick; a countersunk head of {what} wants {must} mm."),
                 HUT_SEVERITY_BLOCKS };
  HutFinding *finding;

  for (guint i = 0; i < fasteners->len; i++)
    {
      const HutFastener *fastener = &g_array_index (fasteners, HutFastener, i);
      const HutScrew *screw = hut_screw_get (fastener->thread_mm);

      if (fastener->placed != placed)
        continue;
      for (int side = 0; side < HUT_EDGE_COUNT; side++)
        mind (&edge, fastener, edge_distance_mm (fastener, panel, (HutEdge)side),
              hut_fastener_edge_mm (fastener, panel, (HutEdge)side));
      mind_length (fastener, &bite, &through, &unsold);
      mind_window (self, fastener, &window);
      if (fastener->sunk && screw != NULL)
        mind (&sunk, fastener, fastener->sheet_mm,
              screw->sunk_head_height_mm
                  + (is_plastic (panel->stock) ? SUNK_PLASTIC_MM : SUNK_WOOD_MM));
    }
  finding = add_worst (self, &edge, placed);
  if (finding != NULL)
    hut_finding_set_place_fix (finding, self, placed);
  finding = add_worst (self, &bite, placed);
  if (finding != NULL)
    hut_finding_set_fix (finding, HUT_FIX_BOLTS, placed, 0.0);
  finding = add_worst (self, &through, placed);
  if (finding != NULL)
    hut_finding_set_fix (finding, HUT_FIX_BOLTS, placed, 0.0);
  add_worst (self, &unsold, placed);
  finding = add_worst (self, &window, placed);
  if (finding != NULL)
    hut_finding_set_place_fix (finding, self, placed);
  finding = add_worst (self, &sunk, placed);
  if (finding != NULL)
    hut_finding_set_fix (finding, HUT_FIX_PLAIN_HEADS, placed, 0.0);
}

/* ---- the web between air hole and screws -------------------------------------------------- */

/* One web of a leaf that is narrower than it must be. @fn may be NULL. */
typedef void (*WebFunc) (const HutPlacedHardware *placed,
                         const HutWeb *web,
                         gpointer data);

/* The narrowest web between the cutouts and screws of a leaf as @hardware has them, mm; @must_mm
 * when all have that. */
static double
narrowest_web_mm (const HutPlacedHardware *placed,
                  const HutHardware *hardware,
                  double must_mm,
                  WebFunc fn,
                  gpointer data)
{
  const GArray *cuts = placed->item->cuts;
  double narrowest_mm = must_mm;

  for (guint i = 0; i < cuts->len; i++)
    for (guint k = 0; k < cuts->len; k++)
      {
        const HutItemCut *body = &g_array_index (cuts, HutItemCut, i),
                         *screw = &g_array_index (cuts, HutItemCut, k);
        g_autoptr(HutPath) a = NULL, b = NULL;
        HutWeb web;

        if (body->role != HUT_CUT_BODY || screw->role != HUT_CUT_SCREW
            || body->leaf != placed->leaf || screw->leaf != placed->leaf)
          continue;
        a = hut_hardware_dup_cut (hardware, body);
        b = hut_hardware_dup_cut (hardware, screw);
        if (!hut_check_material_between (a, b, must_mm - HUT_CHECK_TOLERANCE_MM, &web))
          continue;
        narrowest_mm = MIN (narrowest_mm, web.width_mm);
        if (fn != NULL)
          fn (placed, &web, data);
      }
  return narrowest_mm;
}

/* Its smallest cutout, mm; INFINITY without. */
static double
smallest_cutout_mm (const HutPlacedHardware *placed)
{
  double smallest_mm = INFINITY;

  for (guint i = 0; i < placed->item->cuts->len; i++)
    {
      const HutItemCut *cut = &g_array_index (placed->item->cuts, HutItemCut, i);
      g_autoptr(HutPath) path = NULL;
      HutRect rect;

      if (cut->role != HUT_CUT_BODY || cut->leaf != placed->leaf)
        continue;
      path = hut_item_cut_dup_path (cut, 0.0);
      rect = hut_path_bounds (path);
      smallest_mm = MIN (smallest_mm, MIN (rect.u1 - rect.u0, rect.v1 - rect.v0));
    }
  return smallest_mm;
}

/* A hole for air may be narrower; nothing that a connector's body goes through. Otherwise a plate
 * of another stock carries the screws. */
static void
set_web_fix (HutFinding *finding,
             HutChecking *self,
             const HutPlacedHardware *placed)
{
  const HutItemGroup group = placed->item->group;
  HutHardware as = *placed->hardware;

  if (group == HUT_ITEM_FAN || group == HUT_ITEM_AIR)
    {
      as.narrow_mm = hut_snap_mm (
          placed->hardware->narrow_mm
          + ceil (2.0 * (finding->must - finding->is) / NARROW_STEP_MM - HUT_GRID_MM)
                * NARROW_STEP_MM);
      if (as.narrow_mm <= NARROW_MOST_RATIO * smallest_cutout_mm (placed)
          && narrowest_web_mm (placed, &as, finding->must, NULL, NULL) >= finding->must)
        {
          hut_finding_set_fix (finding, HUT_FIX_NARROW, placed, as.narrow_mm);
          return;
        }
    }
  if (placed->plate < 0)
    hut_finding_set_plate_fix (finding, self->assembly, placed, finding->is);
}

typedef struct
{
  HutFinding *finding;
  const HutPanel *panel;
} WebPlaces;

static void
add_web_place (const HutPlacedHardware *placed,
               const HutWeb *web,
               gpointer data)
{
  const WebPlaces *places = data;

  hut_finding_add_gap (places->finding, places->panel,
                       hut_placement_apply (&placed->placement, web->a),
                       hut_placement_apply (&placed->placement, web->b));
}

/* All webs of a leaf are one finding with the narrowest's number. */
static void
check_web (HutChecking *self,
           const HutPlacedHardware *placed)
{
  const HutPanel *panel = hut_check_panel (self->assembly, placed->panel);
  const HutStock *stock
      = placed->plate >= 0
            ? ((const HutPlate *)g_ptr_array_index (self->assembly->plates, placed->plate))->stock
            : panel->stock;
  const double must_mm = stock->smallest_web_mm;
  const double is_mm = narrowest_web_mm (placed, placed->hardware, must_mm, NULL, NULL);
  HutFinding *finding;

  if (is_mm >= must_mm)
    return;
  finding = hut_checking_add (
      self, "fastener.web",
      is_mm < WEB_BLOCKS_RATIO * must_mm ? HUT_SEVERITY_BLOCKS : HUT_SEVERITY_WARNS,
      N_ ("{what} on {other} leaves {is} mm between its opening and its screws; the stock holds "
          "{must} mm."));
  hut_finding_set_names (finding, hut_check_name (placed->hardware->name, placed->hardware->id),
                         hut_panel_name (panel->id));
  hut_finding_set_item (finding, placed->hardware->id);
  hut_finding_set_numbers (finding, is_mm, must_mm);
  narrowest_web_mm (placed, placed->hardware, must_mm, add_web_place,
                    &(WebPlaces) { finding, panel });
  set_web_fix (finding, self, placed);
}

void
hut_check_fastener (HutChecking *self)
{
  const GPtrArray *hardware = self->assembly->hardware;
  g_autoptr(GArray) fasteners = NULL;

  if (hardware->len == 0)
    return;
  fasteners = hut_fasteners_new (self->assembly, self->parts);
  for (guint i = 0; i < hardware->len; i++)
    {
      const HutPlacedHardware *placed = g_ptr_array_index (hardware, i);

      check_leaf (self, placed, fasteners);
      check_web (self, placed);
    }
}
