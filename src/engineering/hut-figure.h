/* src/engineering/hut-figure.h: one thing that the engineering has to say: words, number, formula.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words come first and hold no number; the number stands for itself; the formula with what was
 * put into it is for whoever asks. What cannot be said is a figure, too: its words then are what to
 * enter. No figure says that anything is without danger. */
#pragma once
#include <glib.h>

typedef enum
{
  HUT_SUBJECT_AIR,
  HUT_SUBJECT_HEAT,
  HUT_SUBJECT_LIGHT,
  HUT_SUBJECT_LID,
  HUT_SUBJECT_STIFFNESS,
  HUT_SUBJECT_NOISE,
  HUT_SUBJECT_FINISH,
  HUT_SUBJECT_COUNT
} HutSubject;

/* What a number of a figure is in. */
typedef enum
{
  HUT_FIGURE_RATIO, /* nothing */
  HUT_FIGURE_COUNT,
  HUT_FIGURE_PERCENT,
  HUT_FIGURE_MM,
  HUT_FIGURE_M,
  HUT_FIGURE_M2,
  HUT_FIGURE_CM2,
  HUT_FIGURE_LITRE,
  HUT_FIGURE_DEG,
  HUT_FIGURE_KG,
  HUT_FIGURE_N,
  HUT_FIGURE_NM, /* newton metres */
  HUT_FIGURE_PA,
  HUT_FIGURE_S,
  HUT_FIGURE_M_S,
  HUT_FIGURE_M3_H,
  HUT_FIGURE_PER_HOUR,
  HUT_FIGURE_KG_M3,
  HUT_FIGURE_KG_M2,
  HUT_FIGURE_W,
  HUT_FIGURE_W_K,
  HUT_FIGURE_W_M2,
  HUT_FIGURE_K, /* a difference of temperatures */
  HUT_FIGURE_C, /* a temperature, deg C */
  HUT_FIGURE_DB,
  HUT_FIGURE_NANOMETRE,
  HUT_FIGURE_GPA,
  HUT_FIGURE_UNIT_COUNT
} HutFigureUnit;

/* Something put into a formula. */
typedef struct
{
  const char *symbol; /* as in the formula; static */
  const char *name;   /* msgid; static */
  double value;       /* in `unit` */
  HutFigureUnit unit;
  gboolean assumed;   /* the design does not say it */
} HutFigureInput;

#define HUT_FIGURE_INPUTS_MAX 8

typedef struct
{
  HutSubject subject;
  const char *id;      /* stable, "air.flow"; static */
  const char *words;   /* msgid with {what}; static */
  char *what;          /* a name that the user gave, or a msgid; or NULL; owned */
  gboolean known;      /* FALSE: the words say what to enter, and the rest is empty */
  gboolean has_value;  /* FALSE: the words are all there is to say */
  gboolean concern;    /* it wants a look */
  double value;        /* in `unit` */
  double limit;        /* likewise; what it is held against, or NAN */
  HutFigureUnit unit;
  const char *formula; /* or NULL; static */
  const char *source;  /* of the formula; msgid; static */
  const char *step;    /* where what is missing is entered: "measure", "openings", ...; or NULL */
  HutFigureInput inputs[HUT_FIGURE_INPUTS_MAX];
  guint n_inputs;
} HutFigure;

/* Frees what is in a figure, not the figure. */
void hut_figure_clear (HutFigure *self);

/* (transfer none): a new one at the end of @figures (element-type HutFigure), valid until the next
 * is added. */
HutFigure *hut_figure_add (GArray *figures, HutSubject subject, const char *id);
/* Its words and number. @concern: it wants a look. Fillers return @self. */
HutFigure *hut_figure_say (HutFigure *self,
                           const char *words,
                           double value, /* in @unit */
                           HutFigureUnit unit,
                           gboolean concern);
/* What to enter, and in which step. */
HutFigure *hut_figure_ask (HutFigure *self, const char *words, const char *step);
/* Its formula and where that comes from. */
HutFigure *hut_figure_explain (HutFigure *self, const char *formula, const char *source);
/* Something put into the formula; what is more than HUT_FIGURE_INPUTS_MAX is dropped. */
HutFigure *hut_figure_put (HutFigure *self,
                           const char *symbol,
                           const char *name,
                           double value, /* in @unit */
                           HutFigureUnit unit);
/* The last one put in was assumed. */
void hut_figure_assume (HutFigure *self, gboolean assumed);

/* (transfer none): "m3/h" as a person reads it, a msgid; "" for none. */
const char *hut_figure_unit_text (HutFigureUnit unit);
/* (transfer none): the same in files: "m3/h". */
const char *hut_figure_unit_name (HutFigureUnit unit);
/* (transfer none): msgid of a subject, "Air". */
const char *hut_subject_text (HutSubject subject);
/* (transfer none): the same in files: "air". */
const char *hut_subject_name (HutSubject subject);

/* gettext or NULL for English: see HutTranslate. */
typedef const char *(*HutFigureTranslate) (const char *msgid);
/* Its words with the name in them. (transfer full) */
char *hut_figure_dup_words (const HutFigure *self, HutFigureTranslate translate) G_GNUC_WARN_UNUSED_RESULT;
/* "118 m³/h": a number with as many digits as it is worth, and its unit. (transfer full) */
char *hut_figure_dup_number (double value, /* in @unit */
                             HutFigureUnit unit,
                             HutFigureTranslate translate,
                             const char *decimal_point) G_GNUC_WARN_UNUSED_RESULT;
