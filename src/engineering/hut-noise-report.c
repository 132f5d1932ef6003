/* src/engineering/hut-noise-report.c: how much quieter it is outside, and what lets sound through.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-report.h"
#include "physics/hut-noise.h"
#include <glib/gi18n-lib.h>

#define M_PER_MM 1e-3
#define M2_PER_MM2 1e-6
#define CM2_PER_M2 1e4
#define PERCENT 100.0
/* One frequency stands for all: own choice, the middle of what motors and fans of a bench make. */
#define FREQUENCY_HZ 500.0
/* Share of sound that a bare, hard box swallows inside: own choice, hard surfaces are given 0.02 ..
 * 0.1 and openings count in full. */
#define ABSORBS_RATIO 0.1
/* An open gap lets more through than all sheet together from here on: then it wants a look. */
#define MOST_RATIO 0.5

/* Patches, with what each is called. */
typedef struct
{
  GArray *patches; /* HutSoundPatch */
  GPtrArray *names; /* lent or static */
} Skin;

/* What is called alike is one patch: its area grows, and its loss is the mean. */
static void
add_patch (Skin *self,
           const char *name,
           double area_m2,
           double loss_db)
{
  const HutSoundPatch patch = { area_m2, loss_db };

  if (!(area_m2 > 0))
    return;
  for (guint i = 0; i < self->names->len; i++)
    {
      HutSoundPatch *known = &g_array_index (self->patches, HutSoundPatch, i);
      const HutSoundPatch both[] = { *known, patch };

      if (g_ptr_array_index (self->names, i) != name)
        continue;
      *known = (HutSoundPatch) { known->area_m2 + area_m2, hut_sound_loss_db (both, 2) };
      return;
    }
  g_array_append_val (self->patches, patch);
  g_ptr_array_add (self->names, (gpointer)name);
}

static void
add_openings (Skin *self,
              const HutReport *report)
{
  for (guint i = 0; i < report->assembly->holes->len; i++)
    {
      const HutPlacedHole *hole = g_ptr_array_index (report->assembly->holes, i);
      const HutOpening *opening = hole->source == HUT_HOLE_OPENING && hole->cut
                                      ? hut_design_get_opening (report->design, hole->item)
                                      : NULL;
      double area_m2 = 0;

      if (opening == NULL || opening->serves != NULL)
        continue;
      for (guint k = 0; k < hole->paths->len; k++)
        area_m2 += fabs (hut_path_area_mm2 (hole->paths->pdata[k])) * M2_PER_MM2;
      add_patch (self, *opening->name != '\0' ? opening->name : opening->id, area_m2, 0);
    }
}

static void
fill (Skin *self,
      const HutReport *report)
{
  const HutAssembly *assembly = report->assembly;

  for (guint i = 0; i < assembly->panels->len; i++)
    {
      const HutPanel *panel = g_ptr_array_index (assembly->panels, i);

      if (panel->id.side != HUT_SIDE_BOTTOM)
        add_patch (self, N_ ("the walls"), hut_region_area_mm2 (panel->region) * M2_PER_MM2,
                   hut_mass_law_db (panel->stock->density_kg_m3 * panel->thickness_mm * M_PER_MM,
                                    FREQUENCY_HZ));
    }
  for (guint i = 0; i < assembly->plates->len; i++)
    {
      const HutPlate *plate = g_ptr_array_index (assembly->plates, i);

      if (plate->kind == HUT_SOLID_GLAZING)
        add_patch (self, N_ ("the windows"),
                   hut_region_area_mm2 (plate->region) * M2_PER_MM2,
                   hut_mass_law_db (plate->stock->density_kg_m3
                                        * (plate->depth1_mm - plate->depth0_mm) * M_PER_MM,
                                    FREQUENCY_HZ));
    }
  add_openings (self, report);
  add_patch (self, N_ ("gap between base and lid"),
             hut_enclosure_seam_m (assembly) * report->design->shell.seam_gap_mm * M_PER_MM, 0);
}

/* What a patch lets through, m2 of open gap that would let as much. */
static double
open_m2 (const HutSoundPatch *patch)
{
  return patch->area_m2 * pow (10, -patch->loss_db / 10);
}

static void
add_worst (HutReport *self,
           const Skin *skin)
{
  const HutSoundPatch *patches = (const HutSoundPatch *)(gpointer)skin->patches->data;
  const guint worst = hut_sound_worst_patch (patches, skin->patches->len);
  const gboolean gap = patches[worst].loss_db == 0;
  double all_m2 = 0, share;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_NOISE, "noise.worst");

  for (guint i = 0; i < skin->patches->len; i++)
    all_m2 += open_m2 (&patches[i]);
  share = open_m2 (&patches[worst]) / all_m2;
  hut_figure_say (figure,
                  gap ? N_ ("Most of what gets out comes through “{what}”: close or baffle it.")
                      : N_ ("Most of what gets out comes through {what}: heavier sheet helps."),
                  share * PERCENT, HUT_FIGURE_PERCENT, gap && share > MOST_RATIO);
  figure->what = g_strdup (g_ptr_array_index (skin->names, worst));
  figure->limit = MOST_RATIO * PERCENT;
  hut_figure_explain (figure, "S 10^(-TL/10) / sum",
                      N_ ("Crocker and Arenas, Engineering Acoustics, 2021, ch. 12."));
  hut_figure_put (figure, "S", N_ ("its area"), patches[worst].area_m2 * CM2_PER_M2,
                  HUT_FIGURE_CM2);
  hut_figure_put (figure, "TL", N_ ("what it takes off"), patches[worst].loss_db, HUT_FIGURE_DB);
}

void
hut_report_noise (HutReport *self)
{
  g_autoptr(GArray) patches = g_array_new (FALSE, FALSE, sizeof (HutSoundPatch));
  g_autoptr(GPtrArray) names = g_ptr_array_new ();
  Skin skin = { patches, names };
  const double sound_db = self->design->machine.work.sound_db;
  double skin_db, less_db;
  HutFigure *figure = hut_figure_add (self->out->figures, HUT_SUBJECT_NOISE, "noise.less");

  fill (&skin, self);
  skin_db = hut_sound_loss_db ((const HutSoundPatch *)(gpointer)patches->data, patches->len);
  less_db = hut_enclosure_loss_db (skin_db, ABSORBS_RATIO);
  hut_figure_say (figure, N_ ("So much quieter it is outside, through the air."), less_db,
                  HUT_FIGURE_DB, FALSE);
  hut_figure_explain (figure, "IL = TL + 10 lg alpha; TL of a wall = 20 lg (f m) - 47",
                      N_ ("Mass law at 500 Hz, Crocker and Arenas, Engineering Acoustics, 2021, "
                          "ch. 12; gaps open; what the feet carry is not in it."));
  hut_figure_put (figure, "TL", N_ ("walls and gaps together"), skin_db, HUT_FIGURE_DB);
  hut_figure_put (figure, "alpha", N_ ("share that the inside swallows"), ABSORBS_RATIO,
                  HUT_FIGURE_RATIO);
  hut_figure_assume (figure, TRUE);
  figure = hut_figure_add (self->out->figures, HUT_SUBJECT_NOISE, "noise.outside");
  if (HUT_IS_KNOWN (sound_db))
    {
      hut_figure_say (figure, N_ ("So loud it is a metre away with the lid shut."),
                      MAX (sound_db - less_db, 0), HUT_FIGURE_DB, FALSE);
      hut_figure_explain (figure, "L = L machine - IL", N_ ("An estimate to plan with."));
      hut_figure_put (figure, "L machine", N_ ("machine without an enclosure"), sound_db,
                      HUT_FIGURE_DB);
    }
  else
    hut_figure_ask (figure, N_ ("Enter how loud the machine is at work."), "measure");
  add_worst (self, &skin);
}
