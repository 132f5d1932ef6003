/* src/checks/hut-check-engineering.c: figures of the engineering that want a look, as findings.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the design does not say is no finding: the step Engineering asks for it. */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "engineering/hut-engineering.h"
#include <glib/gi18n-lib.h>

#define RAD_PER_DEG (G_PI / 180.0)

/* One row for each figure that becomes a finding as it stands: its value and limit are the two
 * numbers. */
static const struct
{
  const char *figure, *check;
  HutSeverity severity;
  const char *message;
} rows[] = {
  { "air.ajar", "air.ajar", HUT_SEVERITY_NOTES,
    N_ ("Smoke may come out as soon as the lid is ajar: the fan is too weak for what is open "
        "already.") },
  { "air.purge", "air.purge", HUT_SEVERITY_NOTES,
    /* xgettext:no-c-format */
    N_ ("After the work it takes {is} s until 99 % of the smoke is gone; after more than {must} s "
        "somebody opens the lid too early: a stronger fan or a wider duct helps.") },
  { "air.short-cut", "air.short-cut", HUT_SEVERITY_NOTES,
    N_ ("{what} is {is} mm from the fan; nearer than {must} mm fresh air goes straight out again, "
        "and the far corners stay full of smoke.") },
  { "heat.fan-inside", "heat.limit", HUT_SEVERITY_WARNS,
    N_ ("Even with the fan on it gets {is} °C inside on a warm day; the machine may have {must} "
        "°C: more air, or electronics outside, helps.") },
  { "lid.whole", "lid.lift", HUT_SEVERITY_NOTES,
    N_ ("The empty enclosure weighs {is} kg; more than {must} kg is too much for one person.") },
  { "noise.worst", "noise.gap", HUT_SEVERITY_NOTES,
    /* xgettext:no-c-format */
    N_ ("{is} % of the sound that gets out comes through {what}; over {must} % closing it, or a "
        "baffle, helps more than heavier sheet.") },
  { "stiffness.bottom", "stiffness.bottom", HUT_SEVERITY_NOTES,
    N_ ("On feet at its edges the bottom sags {is} mm under the machine in the long run; up to "
        "{must} mm is not seen: put feet under the middle.") },
  { "stiffness.window", "stiffness.pane", HUT_SEVERITY_NOTES,
    N_ ("The pane of {what} sags {is} mm in the long run; up to {must} mm is not seen: thicker "
        "glazing helps.") },
};

static HutFinding *
add (HutChecking *self,
     const HutFigure *figure,
     const char *check,
     HutSeverity severity,
     const char *message)
{
  HutFinding *finding = hut_checking_add (self, check, severity, message);

  hut_finding_set_names (finding, figure->what, NULL);
  hut_finding_set_numbers (finding, figure->has_value ? figure->value : 0,
                           isfinite (figure->limit) ? figure->limit : 0);
  return finding;
}

static const HutFigure *
find_concern (const HutEngineering *all,
              const char *id)
{
  const HutFigure *figure = hut_engineering_get (all, id);

  return figure != NULL && figure->concern ? figure : NULL;
}

static void
check_duct (HutChecking *self,
            const HutEngineering *all)
{
  const HutFigure *figure = find_concern (all, "air.duct-speed");

  if (figure == NULL)
    return;
  add (self, figure, "air.duct", HUT_SEVERITY_NOTES,
       figure->value < figure->limit
           ? N_ ("Air moves at {is} m/s in the duct; under {must} m/s smoke settles there: a "
                 "narrower duct or a stronger fan carries it along.")
           : N_ ("Air moves at {is} m/s in the duct; over {must} m/s it is heard: a wider duct is "
                 "quieter."));
}

/* Too warm without the fan: a warning where there is none, else something to know. */
static void
check_still (HutChecking *self,
             const HutEngineering *all)
{
  const HutFigure *figure = find_concern (all, "heat.still-inside");

  if (figure == NULL || find_concern (all, "heat.fan-inside") != NULL)
    return;
  if (all->air.moves)
    add (self, figure, "heat.limit", HUT_SEVERITY_NOTES,
         N_ ("With the fan off it gets {is} °C inside on a warm day; the machine may have {must} "
             "°C: it must not run without the fan."));
  else if (all->air.fans == 0)
    add (self, figure, "heat.limit", HUT_SEVERITY_WARNS,
         N_ ("Without a fan it gets {is} °C inside on a warm day; the machine may have {must} "
             "°C: put a fan on a panel."));
}

static void
check_window (HutChecking *self,
              const HutEngineering *all)
{
  const HutFigure *scattered = hut_engineering_get (all, "light.density");
  const HutFigure *beam = hut_engineering_get (all, "light.beam");
  HutFinding *finding;

  if (scattered == NULL || beam == NULL || !scattered->has_value || !beam->has_value)
    return;
  finding = hut_checking_add (
      self, "light.window", HUT_SEVERITY_NOTES,
      N_ ("For the laser as entered, ask for a window whose certificate gives an optical density "
          "of at least {is} against scattered light, and {must} against the beam itself. Coloured "
          "sheet is no laser filter until its maker certifies it for this wavelength."));
  hut_finding_set_numbers (finding, scattered->value, beam->value);
}

/* Whether two springs would hold the lid open: then that is the fix. */
static gboolean
springs_hold (HutChecking *self)
{
  const HutSpringLid lid = {
    .assembly = self->assembly,
    .balance = hut_lid_balance_new (self->assembly, self->parts),
    .end_rad = self->assembly->design->shell.opening_angle_deg * RAD_PER_DEG,
  };
  const HutSpring spring = hut_spring_choose (&lid, HUT_STAYS_USUAL, HUT_UNKNOWN);

  return spring.found && spring.holds;
}

static void
check_lid (HutChecking *self,
           const HutEngineering *all)
{
  const HutFigure *falls = find_concern (all, "lid.stays-open");
  const HutFigure *pops = find_concern (all, "lid.stays-shut");
  HutFinding *finding;

  if (falls != NULL)
    {
      finding = add (self, falls, "lid.falls", HUT_SEVERITY_WARNS,
                     N_ ("Open, the lid falls shut with {is} N m when it is let go, and hands get "
                         "caught: gas springs or a stay hold it."));
      if (springs_hold (self))
        finding->fix.kind = HUT_FIX_SPRINGS;
    }
  if (pops != NULL)
    add (self, pops, "lid.latch", HUT_SEVERITY_NOTES,
         N_ ("Shut, the gas springs push the lid open with up to {is} N: it needs a latch."));
}

void
hut_check_engineering (HutChecking *self)
{
  g_autoptr(HutEngineering) all = hut_engineering_new (self->assembly, self->parts);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const HutFigure *figure = find_concern (all, rows[i].figure);

      if (figure != NULL)
        add (self, figure, rows[i].check, rows[i].severity, rows[i].message);
    }
  check_duct (self, all);
  check_still (self, all);
  check_window (self, all);
  check_lid (self, all);
}
