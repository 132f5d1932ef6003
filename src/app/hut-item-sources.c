/* src/app/hut-item-sources.c: where the numbers of an item come from after some were measured.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-item-draft.h"
#include <string.h>

/* What a source of the user's own numbers says: in the file, where all text is English. */
#define MEASURED "measured"
#define SEPARATOR ", "

/* ---- what differs ---------------------------------------------------------------------------- */

static gboolean
cuts_differ (const HutItem *a,
             const HutItem *b,
             gboolean screws)
{
  guint i = 0, k = 0;

  for (;; i++, k++)
    {
      while (i < a->cuts->len
             && (g_array_index (a->cuts, HutItemCut, i).role == HUT_CUT_SCREW) != screws)
        i++;
      while (k < b->cuts->len
             && (g_array_index (b->cuts, HutItemCut, k).role == HUT_CUT_SCREW) != screws)
        k++;
      if (i >= a->cuts->len || k >= b->cuts->len)
        return i < a->cuts->len || k < b->cuts->len;
      if (!hut_item_cut_equal (&g_array_index (a->cuts, HutItemCut, i),
                               &g_array_index (b->cuts, HutItemCut, k)))
        return TRUE;
    }
}

static gboolean
spaces_differ (const HutItem *a,
               const HutItem *b,
               HutItemSide side)
{
  guint i = 0, k = 0;

  for (;; i++, k++)
    {
      while (i < a->bodies->len && g_array_index (a->bodies, HutItemBody, i).side != side)
        i++;
      while (k < b->bodies->len && g_array_index (b->bodies, HutItemBody, k).side != side)
        k++;
      if (i >= a->bodies->len || k >= b->bodies->len)
        return i < a->bodies->len || k < b->bodies->len;
      if (!hut_item_body_equal (&g_array_index (a->bodies, HutItemBody, i),
                                &g_array_index (b->bodies, HutItemBody, k)))
        return TRUE;
    }
}

static gboolean
curves_differ (const HutItem *a,
               const HutItem *b)
{
  for (guint i = 0; a->curve->len == b->curve->len && i < a->curve->len; i++)
    {
      const HutFanPoint *x = &g_array_index (a->curve, HutFanPoint, i),
                        *y = &g_array_index (b->curve, HutFanPoint, i);

      if (x->flow_m3_h != y->flow_m3_h || x->pressure_pa != y->pressure_pa)
        return TRUE;
    }
  return a->curve->len != b->curve->len;
}

static gboolean
measures_differ (const HutItem *a,
                 const HutItem *b,
                 HutMeasure first,
                 HutMeasure last)
{
  for (HutMeasure i = first; i <= last; i++)
    if (hut_item_draft_get (a, i) != hut_item_draft_get (b, i))
      return TRUE;
  return FALSE;
}

/* The words of the catalogue's files for what differs. (element-type utf8), static ones. */
static GPtrArray *
list_changed (const HutItem *a,
              const HutItem *b)
{
  const struct
  {
    const char *word;
    gboolean differs;
  } checks[] = {
    { "cutout", cuts_differ (a, b, FALSE) },
    { "holes", cuts_differ (a, b, TRUE) },
    { "front", spaces_differ (a, b, HUT_ITEM_FRONT) },
    { "behind", spaces_differ (a, b, HUT_ITEM_BEHIND) },
    { "thickness",
      measures_differ (a, b, HUT_MEASURE_THICKNESS_MIN, HUT_MEASURE_THICKNESS_MAX) },
    { "flange", measures_differ (a, b, HUT_MEASURE_FLANGE_WIDTH, HUT_MEASURE_FLANGE_HEIGHT)
                    || !a->flange_round != !b->flange_round },
    { "nut", measures_differ (a, b, HUT_MEASURE_NUT_CORNERS, HUT_MEASURE_NUT_HEIGHT) },
    { "body", measures_differ (a, b, HUT_MEASURE_BODY_DIAGONAL, HUT_MEASURE_BODY_DIAGONAL) },
    { "pass", measures_differ (a, b, HUT_MEASURE_PASS_WIDTH, HUT_MEASURE_PASS_HEIGHT)
                  || !a->pass_round != !b->pass_round },
    { "line", measures_differ (a, b, HUT_MEASURE_LINE_MIN, HUT_MEASURE_LINE_MAX) },
    { "mass", measures_differ (a, b, HUT_MEASURE_MASS, HUT_MEASURE_MASS) },
    { "free-area", measures_differ (a, b, HUT_MEASURE_FREE_AREA, HUT_MEASURE_FREE_AREA) },
    { "spring", measures_differ (a, b, HUT_MEASURE_STROKE, HUT_MEASURE_FORCE) },
    { "length", measures_differ (a, b, HUT_MEASURE_LENGTH, HUT_MEASURE_LENGTH) },
    { "curve", curves_differ (a, b) },
    { "noise", measures_differ (a, b, HUT_MEASURE_NOISE, HUT_MEASURE_NOISE) },
  };
  GPtrArray *words = g_ptr_array_new ();

  for (gsize i = 0; i < G_N_ELEMENTS (checks); i++)
    if (checks[i].differs)
      g_ptr_array_add (words, (gpointer)checks[i].word);
  return words;
}

/* ---- sources --------------------------------------------------------------------------------- */

static gboolean
sources_differ (const HutItem *a,
                const HutItem *b)
{
  for (guint i = 0; a->sources->len == b->sources->len && i < a->sources->len; i++)
    {
      const HutItemSource *x = g_ptr_array_index (a->sources, i),
                          *y = g_ptr_array_index (b->sources, i);

      if (strcmp (x->of, y->of) != 0 || strcmp (x->source, y->source) != 0)
        return TRUE;
    }
  return a->sources->len != b->sources->len;
}

/* Takes @words out of what a source is for. Returns: FALSE when nothing is left */
static gboolean
take_words (HutItemSource *source,
            const GPtrArray *words)
{
  g_auto (GStrv) of = g_strsplit (source->of, SEPARATOR, -1);
  g_autoptr (GPtrArray) left = g_ptr_array_new ();

  for (char **word = of; *word != NULL; word++)
    if (!g_ptr_array_find_with_equal_func ((GPtrArray *)words, *word, g_str_equal, NULL))
      g_ptr_array_add (left, *word);
  g_ptr_array_add (left, NULL);
  g_free (source->of);
  source->of = g_strjoinv (SEPARATOR, (char **)left->pdata);
  return left->len > 1;
}

static void
add_measured (HutItem *item,
              const char *words)
{
  for (guint i = 0; i < item->sources->len; i++)
    {
      HutItemSource *source = g_ptr_array_index (item->sources, i);

      if (strcmp (source->source, MEASURED) == 0)
        {
          char *all = g_strjoin (SEPARATOR, source->of, words, NULL);

          g_free (source->of);
          source->of = all;
          return;
        }
    }
  g_ptr_array_add (item->sources, hut_item_source_new (words, MEASURED));
}

void
hut_item_draft_mark_measured (HutItem *item,
                              const HutItem *before)
{
  g_return_if_fail (item != NULL && before != NULL);

  g_autoptr (GPtrArray) words = list_changed (item, before);
  g_autofree char *joined = NULL;

  if (words->len == 0 || sources_differ (item, before))
    return;
  for (guint i = item->sources->len; i-- > 0;)
    if (!take_words (g_ptr_array_index (item->sources, i), words))
      g_ptr_array_remove_index (item->sources, i);
  g_ptr_array_add (words, NULL);
  joined = g_strjoinv (SEPARATOR, (char **)words->pdata);
  add_measured (item, joined);
}
