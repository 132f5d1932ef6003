/* src/cli/hut-cli-coupon.c: hutchwright coupon: the test piece, and what it says.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-cli"
#include "config.h"
#include "cli/hut-cli-command.h"

#include <glib/gi18n-lib.h>

#include "cli/hut-cli-model.h"
#include "cli/hut-cli-output.h"
#include "design/hut-file.h"
#include "export/hut-coupon-set.h"
#include "format/hut-number.h"
#include "sheets/hut-coupon-fit.h"

#define RESULT_DECIMALS 3

typedef struct
{
  char *to, *formats, *stock, *play, *comb, *error, *drawn, *save;
} Call;

static const char *const feels[HUT_FEEL_COUNT] = {
  [HUT_FEEL_PRESS] = "press",
  [HUT_FEEL_SLIP] = "slip",
  [HUT_FEEL_GLUE] = "glue",
  [HUT_FEEL_LOOSE] = "loose",
};

static gboolean
parse_number (const char *text,
              double *value)
{
  char *end = NULL;

  *value = g_ascii_strtod (text, &end);
  return end != text && *end == '\0';
}

/* ---- the test piece -------------------------------------------------------------------------- */

static HutCliStatus
write_set (const HutCliCommand *self,
           const HutDesign *design,
           const Call *call)
{
  HutFormats formats = hut_formats_usual (design);
  g_auto(GStrv) written = NULL;
  g_autoptr(GError) error = NULL;

  if (call->formats != NULL && !hut_formats_parse (call->formats, &formats, &error))
    return hut_cli_refuse (self, "%s", error->message);
  if (!hut_coupon_set (design, call->stock, formats, call->to, NULL, &written, &error))
    {
      if (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_FORMAT))
        return hut_cli_refuse (self, "%s", error->message);
      if (g_error_matches (error, HUT_EXPORT_ERROR, HUT_EXPORT_ERROR_BLOCKED))
        {
          hut_cli_print_error (_("%s; allowed: a larger bed or thinner stock"), error->message);
          return HUT_CLI_BLOCKED;
        }
      return hut_cli_refuse_folder (error);
    }
  return hut_cli_print_paths (call->to, (const char *const *) written);
}

/* ---- what it says ---------------------------------------------------------------------------- */

/* "2.41,2.44" to numbers; NULL when a word is none. (transfer full) */
static GArray *
parse_plays (const char *text)
{
  g_auto(GStrv) words = g_strsplit_set (text, ", ", -1);
  g_autoptr(GArray) plays_mm = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; words[i] != NULL; i++)
    {
      double play_mm;

      if (*words[i] == '\0')
        continue;
      if (!parse_number (words[i], &play_mm))
        return NULL;
      g_array_append_val (plays_mm, play_mm);
    }
  return g_steal_pointer (&plays_mm);
}

/* "press=-12": the label of the first tooth that feels so. */
static gboolean
parse_tooth (const char *text,
             const HutCouponPlan *plan,
             HutCouponReadings *readings)
{
  g_auto(GStrv) sides = g_strsplit (text, "=", 2);
  double label;

  if (g_strv_length (sides) != 2 || !parse_number (sides[1], &label) || !(ABS (label) < 1000.0)
      || label != (int) label)
    return FALSE;
  for (guint i = 0; i < HUT_FEEL_COUNT; i++)
    if (g_str_equal (sides[0], feels[i]))
      return hut_coupon_find_tooth (plan, (int) label, &readings->first_tooth[i]);
  return FALSE;
}

static HutCliStatus
read_comb (const HutCliCommand *self,
           const char *text,
           const HutCouponPlan *plan,
           HutCouponReadings *readings)
{
  g_auto(GStrv) words = g_strsplit_set (text != NULL ? text : "", ", ", -1);

  for (guint i = 0; i < HUT_FEEL_COUNT; i++)
    readings->first_tooth[i] = HUT_COUPON_NONE;
  for (guint i = 0; words[i] != NULL; i++)
    if (*words[i] != '\0' && !parse_tooth (words[i], plan, readings))
      return hut_cli_refuse (self,
                             _("“%s” is no reading of the comb; allowed: press, slip, glue or "
                               "loose, = and what is scored under the first tooth that feels so: "
                               "%d to %d"),
                             words[i], hut_coupon_tooth_label (plan, 0),
                             hut_coupon_tooth_label (plan, plan->tooth_count - 1));
  return HUT_CLI_DONE;
}

static HutCliStatus
print_result (const HutStock *stock,
              const HutCouponResult *result)
{
  char kerf[HUT_NUMBER_SIZE], kerf_error[HUT_NUMBER_SIZE];
  char allowance[HUT_NUMBER_SIZE], allowance_error[HUT_NUMBER_SIZE];
  g_autofree char *line = hut_cli_dup_line (stock->name);
  g_autoptr(GString) text = g_string_new (NULL);

  hut_number_fixed (kerf, result->kerf_mm, RESULT_DECIMALS);
  hut_number_fixed (kerf_error, result->kerf_error_mm, RESULT_DECIMALS);
  hut_number_fixed (allowance, result->allowance_mm, RESULT_DECIMALS);
  hut_number_fixed (allowance_error, result->allowance_error_mm, RESULT_DECIMALS);
  /* Translators: name of a stock; kerf and its error */
  g_string_append_printf (text, _("%s: kerf %s ± %s mm\n"), line, kerf, kerf_error);
  if (result->has_allowance)
    /* Translators: name of a stock; fit allowance and its error */
    g_string_append_printf (text, _("%s: fit allowance %s ± %s mm\n"), line, allowance,
                            allowance_error);
  else
    /* Translators: name of a stock */
    g_string_append_printf (text, _("%s: the comb says too little for a fit allowance; it stays\n"),
                            line);
  return hut_cli_print (text->str);
}

static HutCliStatus
save_design (const HutCliCommand *self,
             const HutDesign *design,
             const char *path)
{
  const HutCliStatus status = hut_cli_check_target (self, path, HUT_CLI_TARGET_PLAIN);
  g_autoptr(GError) error = NULL;

  if (status != HUT_CLI_DONE)
    return status;
  if (hut_design_save (design, path, &error))
    return HUT_CLI_DONE;
  hut_cli_print_error (_("%s; allowed: a folder that can be written and has room"), error->message);
  return HUT_CLI_IO;
}

static HutCliStatus
take_readings (const HutCliCommand *self,
               HutDesign *design,
               const Call *call)
{
  HutStock *stock = call->stock != NULL ? hut_design_get_stock (design, call->stock) : NULL;
  g_autoptr(GArray) plays_mm = parse_plays (call->play);
  HutCouponReadings readings = { .reading_error_mm = HUT_COUPON_READING_ERROR_MM };
  HutCouponPlan plan;
  HutCouponResult result;
  HutCliStatus status;
  g_autoptr(GError) error = NULL;

  if (stock == NULL)
    return hut_cli_refuse (self, _("no stock of the design was named; allowed: --stock ID"));
  if (plays_mm == NULL
      || (call->error != NULL && !parse_number (call->error, &readings.reading_error_mm)))
    return hut_cli_refuse (self, _("“%s” are no readings; allowed: numbers in mm with a point, "
                                   "separated by commas"),
                           plays_mm == NULL ? call->play : call->error);
  hut_coupon_plan_init (&plan, stock, &design->cutter);
  if (call->drawn != NULL && !(parse_number (call->drawn, &plan.kerf_mm) && plan.kerf_mm >= 0.0))
    return hut_cli_refuse (self, _("“%s” is no kerf; allowed: what is scored on the test piece, "
                                   "mm"), call->drawn);
  status = read_comb (self, call->comb, &plan, &readings);
  if (status != HUT_CLI_DONE)
    return status;
  readings.plays_mm = (const double *) plays_mm->data;
  readings.play_count = plays_mm->len;
  if (!hut_coupon_fit (&plan, stock, design->cutter.kind, &readings, &result, &error))
    return hut_cli_refuse (self, "%s", error->message);
  status = print_result (stock, &result);
  hut_coupon_result_apply (&result, stock);
  return status == HUT_CLI_DONE && call->save != NULL ? save_design (self, design, call->save)
                                                      : status;
}

/* ---- the command ----------------------------------------------------------------------------- */

static HutCliStatus
run_call (const HutCliCommand *self,
          GStrv argv,
          Call *call)
{
  HutCliStatus status = HUT_CLI_WRONG;
  g_auto(GStrv) words = NULL;
  g_autoptr(HutDesign) design = NULL;
  const GOptionEntry options[] = {
    { "to", 0, 0, G_OPTION_ARG_FILENAME, &call->to, N_("Write the test pieces to that folder"),
      "DIR" },
    { "formats", 0, 0, G_OPTION_ARG_STRING, &call->formats,
      N_("Only these, separated by commas: svg, dxf, csv, gcode, dxf-r12, "
         "pdf-a4, pdf-a3, pdf-letter"), "LIST" },
    { "stock", 0, 0, G_OPTION_ARG_STRING, &call->stock, N_("Only for this stock"), "ID" },
    { "play", 0, 0, G_OPTION_ARG_STRING, &call->play,
      N_("What was read: play of all bars, mm, each time it was measured"), "MM,..." },
    { "comb", 0, 0, G_OPTION_ARG_STRING, &call->comb,
      N_("What was read: label of the first tooth that feels so"), "press=N,..." },
    { "error", 0, 0, G_OPTION_ARG_STRING, &call->error,
      N_("How far a reading may be off; 0.05 if not given"), "MM" },
    { "drawn-kerf", 0, 0, G_OPTION_ARG_STRING, &call->drawn,
      N_("Kerf that is scored on the test piece; that of the stock if not given"), "MM" },
    { "save", 0, 0, G_OPTION_ARG_FILENAME, &call->save,
      N_("Write the design with the measured numbers there"), "FILE" },
    { NULL },
  };

  if (!hut_cli_parse (self, options, argv, &words, &status))
    return status;
  if ((call->to == NULL || *call->to == '\0') == (call->play == NULL))
    return hut_cli_refuse (self, _("either the test piece or its readings; allowed: --to DIR, or "
                                   "--stock ID --play MM,..."));
  if (call->play == NULL && (call->comb != NULL || call->error != NULL || call->drawn != NULL
                             || call->save != NULL))
    return hut_cli_refuse (self, _("readings without the play of the bars; allowed: --play "
                                   "MM,..."));
  design = hut_cli_load (words[0], &status);
  if (design == NULL)
    return status;
  return call->play != NULL ? take_readings (self, design, call) : write_set (self, design, call);
}

static HutCliStatus
run (const HutCliCommand *self,
     GStrv argv)
{
  Call call = { NULL };
  const HutCliStatus status = run_call (self, argv, &call);

  g_free (call.to);
  g_free (call.formats);
  g_free (call.stock);
  g_free (call.play);
  g_free (call.comb);
  g_free (call.error);
  g_free (call.drawn);
  g_free (call.save);
  return status;
}

const HutCliCommand hut_cli_coupon = {
  .word = "coupon",
  .usage = "FILE --to DIR | FILE --stock ID --play MM,... [--comb press=N,...] [--save FILE]",
  .summary = N_("Writes a test piece for kerf and fit, or works out what its readings say."),
  .details = N_("Cut it with the recipe of the stock. Push all bars in the window to one end and "
                "measure what is free: --play. Push the teeth into the slot of the gauge, from the "
                "tightest on, and note what is scored under the first one that goes in with a "
                "mallet (press), by hand and holds (slip), with room for glue (glue), and that "
                "falls out (loose): --comb press=-12,slip=-4,glue=4,loose=16.\n"
                "Before you cut: stay with a running machine, keep the fire extinguisher at hand, "
                "wear what protects from its light, dust and fumes, and cut nothing of which you "
                "do not know what it gives off. The law and the standards of your place rule."),
  .least_words = 1,
  .most_words = 1,
  .run = run,
};
