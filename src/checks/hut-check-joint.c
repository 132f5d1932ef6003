/* src/checks/hut-check-joint.c: finger joints: fit, butt joints, narrow fingers.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "assembly/hut-finger.h"
#include "checks/hut-checking.h"
#include "checks/hut-joint-fit.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* ---- fit ----------------------------------------------------------------------------------- */

/* Two stocks that meet in a joint; the same one twice for joints within a stock. */
typedef struct
{
  const HutStock *a, *b;
} Pair;

/* What is outside of the usual range, and by how much. */
typedef struct
{
  const HutStock *stock; /* whose range it is */
  HutFitRange range;
  gboolean loose; /* over the upper limit, else under the lower one */
  double excess_mm;
} Miss;

/* Too tight, too loose. */
static const char *const set_messages[] = {
  N_ ("Slots in {what} are set {is} mm wider than tongues; for {other} at least {must} mm is "
      "usual."),
  N_ ("Slots in {what} are set {is} mm wider than tongues; for {other} at most {must} mm is "
      "usual."),
};

static const char *const spread_messages[] = {
  N_ ("Slots in {what} may come out {is} mm wider than tongues ({at} mm at worst); for {other} "
      "at "
      "least {must} mm is usual. Cut the coupon first."),
  N_ ("Slots in {what} may come out {is} mm wider than tongues ({at} mm at worst); for {other} "
      "at "
      "most {must} mm is usual. Cut the coupon first."),
};

static const char *
fit_name (HutFitKind fit)
{
  switch (fit)
    {
    case HUT_FIT_PRESS:
      return N_ ("a press fit");
    case HUT_FIT_SLIP:
      return N_ ("a slip fit");
    default:
      return N_ ("a glued fit");
    }
}

static char *
dup_pair_name (const Pair *pair)
{
  const char *a = hut_check_name (pair->a->name, pair->a->id),
             *b = hut_check_name (pair->b->name, pair->b->id);

  return pair->a == pair->b ? g_strdup (a) : g_strdup_printf ("%s + %s", a, b);
}

/* The stock whose range the fit misses most when it is @around_mm off its setting. */
static Miss
worst_miss (const HutChecking *self,
            const Pair *pair,
            const HutJointFit *fit,
            double around_mm)
{
  const HutStock *stocks[] = { pair->a, pair->b };
  Miss worst = { .excess_mm = 0.0 };

  for (guint i = 0; i < G_N_ELEMENTS (stocks); i++)
    {
      const HutFitRange range = hut_fit_range (
          stocks[i]->material, self->assembly->design->cutter.kind, stocks[i]->fit);
      const double over_mm = fit->centre_mm + around_mm - range.high_mm;
      const double under_mm = range.low_mm - fit->centre_mm + around_mm;

      if (range.known && !range.never && MAX (over_mm, under_mm) > worst.excess_mm)
        worst = (Miss) { stocks[i], range, over_mm >= under_mm, MAX (over_mm, under_mm) };
    }
  return worst;
}

static HutFinding *
add_fit (HutChecking *self,
         const Pair *pair,
         HutSeverity severity,
         const char *message,
         const HutStock *stock)
{
  HutFinding *finding = hut_checking_add (self, "joint.fit", severity, message);
  g_autofree char *name = dup_pair_name (pair);

  hut_finding_set_names (finding, name, fit_name (stock->fit));
  hut_finding_set_item (finding, stock->id);
  return finding;
}

static void
check_never (HutChecking *self,
             const Pair *pair,
             const HutJointFit *fit)
{
  const HutStock *stocks[] = { pair->a, pair->b };

  for (guint i = 0; i < (pair->a == pair->b ? 1 : G_N_ELEMENTS (stocks)); i++)
    {
      const HutFitRange range = hut_fit_range (
          stocks[i]->material, self->assembly->design->cutter.kind, stocks[i]->fit);

      if (range.known && range.never)
        hut_finding_set_numbers (
            add_fit (self, pair, HUT_SEVERITY_WARNS,
                     N_ ("{what} is to have {other} of {is} mm, which cracks "
                         "it; {must} mm or more is usual."),
                     stocks[i]),
            fit->centre_mm, range.low_mm);
    }
}

static void
check_pair (HutChecking *self,
            const Pair *pair)
{
  const HutJointFit fit = hut_joint_fit_find (pair->a, pair->b);
  Miss miss = worst_miss (self, pair, &fit, 0.0);
  double around_mm = 0.0;
  HutFinding *finding;

  check_never (self, pair, &fit);
  if (miss.excess_mm > HUT_CHECK_TOLERANCE_MM)
    {
      finding = add_fit (self, pair, HUT_SEVERITY_WARNS, set_messages[miss.loose], miss.stock);
      hut_finding_set_numbers (finding, fit.centre_mm,
                               miss.loose ? miss.range.high_mm : miss.range.low_mm);
      return;
    }
  /* The likely spread; when that is no problem, the worst case. */
  around_mm = fit.rss_mm;
  miss = worst_miss (self, pair, &fit, around_mm);
  if (miss.excess_mm <= HUT_CHECK_TOLERANCE_MM)
    {
      around_mm = fit.worst_mm;
      miss = worst_miss (self, pair, &fit, around_mm);
    }
  if (miss.excess_mm <= HUT_CHECK_TOLERANCE_MM)
    return;
  finding = add_fit (self, pair, HUT_SEVERITY_NOTES, spread_messages[miss.loose], miss.stock);
  hut_finding_set_numbers (finding, fit.centre_mm + (miss.loose ? around_mm : -around_mm),
                           miss.loose ? miss.range.high_mm : miss.range.low_mm);
  finding->at = fit.centre_mm + (miss.loose ? fit.worst_mm : -fit.worst_mm);
}

static void
add_pair (GArray *pairs,
          const HutStock *a,
          const HutStock *b)
{
  const Pair pair = { a, b };

  for (guint i = 0; i < pairs->len; i++)
    {
      const Pair *known = &g_array_index (pairs, Pair, i);

      if ((known->a == a && known->b == b) || (known->a == b && known->b == a))
        return;
    }
  g_array_append_val (pairs, pair);
}

static void
check_fits (HutChecking *self)
{
  const HutAssembly *assembly = self->assembly;
  g_autoptr(GArray) pairs = g_array_new (FALSE, FALSE, sizeof (Pair));

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
        {
          const HutPanel *other = hut_assembly_get_panel (assembly, panel->edges[edge].other);

          if (panel->edges[edge].kind == HUT_JOINT_FINGERS && other != NULL)
            add_pair (pairs, panel->stock, other->stock);
        }
    }
  for (guint i = 0; i < self->parts->splices->len; i++)
    {
      const HutSplice *splice = &g_array_index (self->parts->splices, HutSplice, i);
      const HutPanel *panel = hut_check_panel (assembly, splice->panel);

      if (splice->finger_count > 0 && splice->of == HUT_PART_PANEL)
        add_pair (pairs, panel->stock, panel->stock);
    }
  for (guint i = 0; i < pairs->len; i++)
    check_pair (self, &g_array_index (pairs, Pair, i));
}

/* ---- edges --------------------------------------------------------------------------------- */

/* The edge prism in the panel's frame. */
static HutRect
edge_rect (const HutPanel *panel,
           HutEdge edge,
           double from_mm,
           double to_mm)
{
  const double depth_mm = panel->edges[edge].depth_mm;

  switch (edge)
    {
    case HUT_EDGE_BOTTOM:
      return (HutRect) { from_mm, 0.0, to_mm, depth_mm };
    case HUT_EDGE_TOP:
      return (HutRect) { from_mm, panel->height_mm - depth_mm, to_mm, panel->height_mm };
    case HUT_EDGE_LEFT:
      return (HutRect) { 0.0, from_mm, depth_mm, to_mm };
    default:
      return (HutRect) { panel->width_mm - depth_mm, from_mm, panel->width_mm, to_mm };
    }
}

/* The edge of @other that meets @panel; -1 when there is none. */
static int
edge_towards (const HutPanel *other,
              const HutPanel *panel)
{
  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    if (other->edges[edge].kind != HUT_JOINT_NONE
        && hut_panel_id_equal (other->edges[edge].other, panel->id))
      return edge;
  return -1;
}

static void
check_butt (HutChecking *self,
            const HutPanel *panel,
            const HutPanel *other,
            HutEdge edge)
{
  const HutEdgeJoint *joint = &panel->edges[edge];
  const double thick_mm = MAX (panel->thickness_mm, other->thickness_mm);
  const double web_mm = MAX (panel->stock->smallest_web_mm, other->stock->smallest_web_mm);
  const double finger_mm = MAX (HUT_FINGER_MIN_RATIO * thick_mm, 2.0 * web_mm);
  HutFinding *finding = hut_checking_add (
      self, "joint.butt", HUT_SEVERITY_NOTES,
      N_ ("The edge of {what} and {other} is {is} mm, three fingers need {must} mm: it is "
          "butted, put a corner block behind it."));

  hut_finding_set_names (finding, hut_panel_name (panel->id), hut_panel_name (other->id));
  hut_finding_set_numbers (finding, joint->end_mm - joint->start_mm, 3.0 * finger_mm);
  hut_finding_add_place (finding, panel, edge_rect (panel, edge, joint->start_mm, joint->end_mm));
}

static void
check_fingers (HutChecking *self,
               const HutPanel *panel,
               const HutPanel *other,
               HutEdge edge)
{
  const HutEdgeJoint *joint = &panel->edges[edge];
  const double must_mm = 2.0 * MAX (panel->stock->smallest_web_mm, other->stock->smallest_web_mm);
  double narrowest_mm = INFINITY;
  guint at = 0;
  HutFinding *finding;

  for (guint i = 0; joint->cuts_mm != NULL && i + 1 < joint->cuts_mm->len; i++)
    {
      const double width_mm = g_array_index (joint->cuts_mm, double, i + 1)
                              - g_array_index (joint->cuts_mm, double, i);

      if (width_mm < narrowest_mm)
        {
          narrowest_mm = width_mm;
          at = i;
        }
    }
  if (narrowest_mm >= must_mm - HUT_CHECK_TOLERANCE_MM)
    return;
  finding
      = hut_checking_add (self, "joint.web", HUT_SEVERITY_WARNS,
                          N_ ("Fingers between {what} and {other} are {is} mm wide; twice the "
                              "smallest web is {must} mm."));
  hut_finding_set_names (finding, hut_panel_name (panel->id), hut_panel_name (other->id));
  hut_finding_set_numbers (finding, narrowest_mm, must_mm);
  hut_finding_add_place (finding, panel,
                         edge_rect (panel, edge, g_array_index (joint->cuts_mm, double, at),
                                    g_array_index (joint->cuts_mm, double, at + 1)));
}

/* Each joint is told once, from the panel that comes first; the other one's edge is marked as
 * well. */
static void
check_edges (HutChecking *self,
             guint index)
{
  const HutAssembly *assembly = self->assembly;
  const HutPanel *panel = hut_check_panel (assembly, index);

  for (int edge = 0; edge < HUT_EDGE_COUNT; edge++)
    {
      const HutEdgeJoint *joint = &panel->edges[edge];
      const int other_index = hut_assembly_find_panel (assembly, joint->other);
      const guint before = self->findings->len;
      const HutPanel *other;
      int back;

      if (joint->kind == HUT_JOINT_NONE || other_index <= (int)index)
        continue;
      other = hut_check_panel (assembly, (guint)other_index);
      if (joint->kind == HUT_JOINT_BUTT)
        check_butt (self, panel, other, (HutEdge)edge);
      else
        check_fingers (self, panel, other, (HutEdge)edge);
      back = edge_towards (other, panel);
      if (self->findings->len > before && back >= 0)
        hut_finding_add_place (g_ptr_array_index (self->findings, before), other,
                               edge_rect (other, (HutEdge)back, other->edges[back].start_mm,
                                          other->edges[back].end_mm));
    }
}

void
hut_check_joint (HutChecking *self)
{
  check_fits (self);
  for (guint i = 0; i < self->assembly->panels->len; i++)
    check_edges (self, i);
}
