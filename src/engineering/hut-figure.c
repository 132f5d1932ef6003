/* src/engineering/hut-figure.c: one thing that the engineering has to say: words, number, formula.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-engineering"
#include "config.h"
#include "engineering/hut-figure.h"
#include "format/hut-number.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define NAME_PLACE "{what}"
/* Significant digits that an estimate is worth: own choice. */
#define DIGITS 3
#define DECIMALS_MAX 3u
/* A no-break space keeps number and unit on one line. */
#define NO_BREAK "\302\240"

static const struct
{
  const char *text, *name;
} units[HUT_FIGURE_UNIT_COUNT] = {
  [HUT_FIGURE_RATIO] = { "", "" },
  [HUT_FIGURE_COUNT] = { "", "count" },
  [HUT_FIGURE_PERCENT] = { N_ ("%"), "%" },
  [HUT_FIGURE_MM] = { N_ ("mm"), "mm" },
  [HUT_FIGURE_M] = { N_ ("m"), "m" },
  [HUT_FIGURE_M2] = { N_ ("m²"), "m2" },
  [HUT_FIGURE_CM2] = { N_ ("cm²"), "cm2" },
  [HUT_FIGURE_LITRE] = { N_ ("l"), "l" },
  [HUT_FIGURE_DEG] = { N_ ("°"), "deg" },
  [HUT_FIGURE_KG] = { N_ ("kg"), "kg" },
  [HUT_FIGURE_N] = { N_ ("N"), "N" },
  [HUT_FIGURE_NM] = { N_ ("N m"), "N m" },
  [HUT_FIGURE_PA] = { N_ ("Pa"), "Pa" },
  [HUT_FIGURE_S] = { N_ ("s"), "s" },
  [HUT_FIGURE_M_S] = { N_ ("m/s"), "m/s" },
  [HUT_FIGURE_M3_H] = { N_ ("m³/h"), "m3/h" },
  [HUT_FIGURE_PER_HOUR] = { N_ ("an hour"), "1/h" },
  [HUT_FIGURE_KG_M3] = { N_ ("kg/m³"), "kg/m3" },
  [HUT_FIGURE_KG_M2] = { N_ ("kg/m²"), "kg/m2" },
  [HUT_FIGURE_W] = { N_ ("W"), "W" },
  [HUT_FIGURE_W_K] = { N_ ("W/K"), "W/K" },
  [HUT_FIGURE_W_M2] = { N_ ("W/m²"), "W/m2" },
  [HUT_FIGURE_K] = { N_ ("K"), "K" },
  [HUT_FIGURE_C] = { N_ ("°C"), "C" },
  [HUT_FIGURE_DB] = { N_ ("dB"), "dB" },
  [HUT_FIGURE_NANOMETRE] = { N_ ("nm"), "nm" },
  [HUT_FIGURE_GPA] = { N_ ("GPa"), "GPa" },
};

static const struct
{
  const char *text, *name;
} subjects[HUT_SUBJECT_COUNT] = {
  [HUT_SUBJECT_AIR] = { N_ ("Air"), "air" },
  [HUT_SUBJECT_HEAT] = { N_ ("Heat"), "heat" },
  [HUT_SUBJECT_LIGHT] = { N_ ("Light"), "light" },
  [HUT_SUBJECT_LID] = { N_ ("Lid"), "lid" },
  [HUT_SUBJECT_STIFFNESS] = { N_ ("Stiffness"), "stiffness" },
  [HUT_SUBJECT_NOISE] = { N_ ("Noise"), "noise" },
  [HUT_SUBJECT_FINISH] = { N_ ("Finish"), "finish" },
};

void
hut_figure_clear (HutFigure *self)
{
  g_clear_pointer (&self->what, g_free);
}

HutFigure *
hut_figure_add (GArray *figures,
                HutSubject subject,
                const char *id)
{
  const HutFigure figure = { .subject = subject, .id = id, .value = NAN, .limit = NAN };

  g_return_val_if_fail (figures != NULL && id != NULL, NULL);

  g_array_append_val (figures, figure);
  return &g_array_index (figures, HutFigure, figures->len - 1);
}

HutFigure *
hut_figure_say (HutFigure *self,
                const char *words,
                double value,
                HutFigureUnit unit,
                gboolean concern)
{
  self->known = TRUE;
  self->has_value = isfinite (value);
  self->words = words;
  self->value = value;
  self->unit = unit;
  self->concern = concern;
  return self;
}

HutFigure *
hut_figure_ask (HutFigure *self,
                const char *words,
                const char *step)
{
  self->words = words;
  self->step = step;
  return self;
}

HutFigure *
hut_figure_explain (HutFigure *self,
                    const char *formula,
                    const char *source)
{
  self->formula = formula;
  self->source = source;
  return self;
}

HutFigure *
hut_figure_put (HutFigure *self,
                const char *symbol,
                const char *name,
                double value,
                HutFigureUnit unit)
{
  if (self->n_inputs < HUT_FIGURE_INPUTS_MAX)
    self->inputs[self->n_inputs++] = (HutFigureInput) { symbol, name, value, unit, FALSE };
  return self;
}

void
hut_figure_assume (HutFigure *self,
                   gboolean assumed)
{
  if (self->n_inputs > 0)
    self->inputs[self->n_inputs - 1].assumed = assumed;
}

const char *
hut_figure_unit_text (HutFigureUnit unit)
{
  g_return_val_if_fail ((guint)unit < HUT_FIGURE_UNIT_COUNT, "");
  return units[unit].text;
}

const char *
hut_figure_unit_name (HutFigureUnit unit)
{
  g_return_val_if_fail ((guint)unit < HUT_FIGURE_UNIT_COUNT, "");
  return units[unit].name;
}

const char *
hut_subject_text (HutSubject subject)
{
  g_return_val_if_fail ((guint)subject < HUT_SUBJECT_COUNT, "");
  return subjects[subject].text;
}

const char *
hut_subject_name (HutSubject subject)
{
  g_return_val_if_fail ((guint)subject < HUT_SUBJECT_COUNT, "");
  return subjects[subject].name;
}

static const char *
translated (HutFigureTranslate translate,
            const char *text)
{
  if (text == NULL)
    return "";
  return translate != NULL && *text != '\0' ? translate (text) : text;
}

char *
hut_figure_dup_words (const HutFigure *self,
                      HutFigureTranslate translate)
{
  GString *text;

  g_return_val_if_fail (self != NULL, NULL);

  text = g_string_new (translated (translate, self->words));
  g_string_replace (text, NAME_PLACE, translated (translate, self->what), 0);
  return g_string_free (text, FALSE);
}

static guint
decimals_of (double value)
{
  const double size = fabs (value);
  const int before = size > 0 ? (int)floor (log10 (size)) + 1 : 1;

  return (guint)CLAMP (DIGITS - before, 0, (int)DECIMALS_MAX);
}

char *
hut_figure_dup_number (double value,
                       HutFigureUnit unit,
                       HutFigureTranslate translate,
                       const char *decimal_point)
{
  const char *name = translated (translate, hut_figure_unit_text (unit));
  char buffer[HUT_NUMBER_SIZE];
  GString *text;

  g_return_val_if_fail (decimal_point != NULL, NULL);

  if (!isfinite (value))
    return g_strdup ("–");
  text = g_string_new (
      hut_number_fixed (buffer, value, unit == HUT_FIGURE_COUNT ? 0 : decimals_of (value)));
  g_string_replace (text, ".", decimal_point, 1);
  if (*name != '\0')
    g_string_append_printf (text, "%s%s", unit == HUT_FIGURE_DEG ? "" : NO_BREAK, name);
  return g_string_free (text, FALSE);
}
