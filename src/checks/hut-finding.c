/* src/checks/hut-finding.c: a finding, its text, and the list of findings.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-checks"
#include "config.h"
#include "checks/hut-checking.h"
#include "format/hut-number.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define TEXT_DECIMALS 2u

static const char *const check_ids[] = {
  "air.ajar",
  "air.duct",
  "air.hold",
  "air.intake",
  "air.purge",
  "air.short-cut",
  "baffle.bead",
  "baffle.opening",
  "baffle.overlap",
  "baffle.place",
  "bed.part",
  "bed.size",
  "clearance.keep-out",
  "clearance.motion",
  "clearance.room",
  "clearance.static",
  "cut.hole",
  "cut.kerf",
  "cut.web",
  "depth.hardware",
  "depth.keep-out",
  "depth.machine",
  "depth.motion",
  "depth.solid",
  "extra.hole",
  "extra.outline",
  "fastener.edge",
  "fastener.length",
  "fastener.short",
  "fastener.sunk",
  "fastener.through",
  "fastener.web",
  "fastener.window",
  "hardware.item",
  "hardware.leaf",
  "heat.limit",
  "joint.butt",
  "joint.fit",
  "joint.web",
  "lid.falls",
  "lid.force",
  "lid.hinge",
  "lid.latch",
  "lid.lift",
  "lid.swing",
  "lid.tip",
  "light.gap",
  "light.opening",
  "light.window",
  "machine.missing",
  "mount.bit",
  "mount.face",
  "mount.floor",
  "mount.plate",
  "mount.pocket",
  "mount.thin",
  "mount.way",
  "noise.gap",
  "opening.anchor",
  "opening.edge",
  "opening.glazing",
  "opening.joint",
  "opening.outside",
  "opening.overlap",
  "opening.panel",
  "opening.splice",
  "safety.caution",
  "service.doubled",
  "service.line",
  "service.mains",
  "service.missing",
  "service.tight",
  "sheet.changed",
  "sheet.gap",
  "sheet.gone",
  "sheet.outside",
  "sheet.overlap",
  "shell.inside",
  "shell.seam",
  "shell.size",
  "splice.butt",
  "splice.place",
  "splice.stagger",
  "splice.strap",
  "stiffness.bottom",
  "stiffness.pane",
  "stiffness.sag",
  "stock.grain",
  "stock.missing",
  "stock.sheet",
  "trap.flow",
  "trap.opening",
  "trap.place",
  "window.bonded",
  "window.overlap",
  "window.screw",
  NULL,
};

static const char *const panel_names[HUT_SHELL_COUNT][HUT_SIDE_COUNT] = {
  [HUT_SHELL_BASE] = {
    [HUT_SIDE_FRONT] = N_ ("base front"),
    [HUT_SIDE_BACK] = N_ ("base back"),
    [HUT_SIDE_LEFT] = N_ ("base left"),
    [HUT_SIDE_RIGHT] = N_ ("base right"),
    [HUT_SIDE_BOTTOM] = N_ ("base bottom"),
    [HUT_SIDE_TOP] = N_ ("base top"),
  },
  [HUT_SHELL_LID] = {
    [HUT_SIDE_FRONT] = N_ ("lid front"),
    [HUT_SIDE_BACK] = N_ ("lid back"),
    [HUT_SIDE_LEFT] = N_ ("lid left"),
    [HUT_SIDE_RIGHT] = N_ ("lid right"),
    [HUT_SIDE_BOTTOM] = N_ ("lid bottom"),
    [HUT_SIDE_TOP] = N_ ("lid top"),
  },
};

static const char *const baffle_names[HUT_SIDE_COUNT] = {
  [HUT_SIDE_FRONT] = N_ ("baffle at the front"),
  [HUT_SIDE_BACK] = N_ ("baffle at the back"),
  [HUT_SIDE_LEFT] = N_ ("baffle on the left"),
  [HUT_SIDE_RIGHT] = N_ ("baffle on the right"),
  [HUT_SIDE_BOTTOM] = N_ ("baffle at the bottom"),
  [HUT_SIDE_TOP] = N_ ("baffle at the top"),
};

/* ---- one finding --------------------------------------------------------------------------- */

HutFinding *
hut_checking_add (HutChecking *self,
                  const char *check,
                  HutSeverity severity,
                  const char *message)
{
  HutFinding *finding = g_new0 (HutFinding, 1);

  finding->check = check;
  finding->severity = severity;
  finding->message = message;
  finding->places = g_array_new (FALSE, TRUE, sizeof (HutPlace));
  g_ptr_array_add (self->findings, finding);
  return finding;
}

void
hut_finding_free (HutFinding *self)
{
  if (self == NULL)
    return;
  g_clear_pointer (&self->what, g_free);
  g_clear_pointer (&self->other, g_free);
  g_clear_pointer (&self->item, g_free);
  g_clear_pointer (&self->places, g_array_unref);
  hut_fix_clear (&self->fix);
  g_free (self);
}

void
hut_finding_set_names (HutFinding *self,
                       const char *what,
                       const char *other)
{
  g_free (self->what);
  g_free (self->other);
  self->what = g_strdup (what);
  self->other = g_strdup (other);
}

void
hut_finding_set_numbers (HutFinding *self,
                         double is,
                         double must)
{
  self->is = is;
  self->must = must;
}

void
hut_finding_set_item (HutFinding *self,
                      const char *item)
{
  g_free (self->item);
  self->item = g_strdup (item);
}

void
hut_finding_add_place (HutFinding *self,
                       const HutPanel *panel,
                       HutRect rect)
{
  const HutPlace place = { .has_panel = TRUE, .panel = panel->id, .rect = rect };

  g_array_append_val (self->places, place);
}

void
hut_finding_add_gap (HutFinding *self,
                     const HutPanel *panel,
                     HutPoint a,
                     HutPoint b)
{
  const double margin_mm = HUT_PLACE_MARGIN_MM;
  const HutRect rect = { MIN (a.u, b.u) - margin_mm, MIN (a.v, b.v) - margin_mm,
                         MAX (a.u, b.u) + margin_mm, MAX (a.v, b.v) + margin_mm };

  hut_finding_add_place (self, panel, rect);
}

void
hut_finding_add_shadow (HutFinding *self,
                        const HutPanel *panel,
                        const HutBox3 *box)
{
  HutRect shadow = hut_frame3_shadow (&panel->frame, box);

  shadow.u0 = CLAMP (shadow.u0, 0.0, panel->width_mm);
  shadow.u1 = CLAMP (shadow.u1, 0.0, panel->width_mm);
  shadow.v0 = CLAMP (shadow.v0, 0.0, panel->height_mm);
  shadow.v1 = CLAMP (shadow.v1, 0.0, panel->height_mm);
  hut_finding_add_place (self, panel, shadow);
}

/* ---- names --------------------------------------------------------------------------------- */

const char *
hut_panel_name (HutPanelId id)
{
  g_return_val_if_fail ((guint)id.shell < HUT_SHELL_COUNT, NULL);
  g_return_val_if_fail ((guint)id.side < HUT_SIDE_COUNT, NULL);

  return panel_names[id.shell][id.side];
}

const char *
hut_baffle_name (HutSide side)
{
  g_return_val_if_fail ((guint)side < HUT_SIDE_COUNT, NULL);

  return baffle_names[side];
}

const char *
hut_check_name (const char *name,
                const char *id)
{
  return name != NULL && *name != '\0' ? name : id;
}

const char *
hut_check_item_name (const HutDesign *design,
                     const char *item)
{
  const HutOpening *opening = hut_design_get_opening (design, item);
  const HutWindow *window = hut_design_get_window (design, item);
  const HutHardware *hardware = hut_design_get_hardware (design, item);

  if (opening != NULL)
    return hut_check_name (opening->name, item);
  if (window != NULL)
    return hut_check_name (window->name, item);
  return hardware != NULL ? hut_check_name (hardware->name, item) : item;
}

const HutPanel *
hut_check_panel (const HutAssembly *assembly,
                 guint index)
{
  g_return_val_if_fail (index < assembly->panels->len, NULL);

  return g_ptr_array_index (assembly->panels, index);
}

const HutPanel *
hut_check_part_panel (const HutAssembly *assembly,
                      const HutPart *part)
{
  return part->panel != HUT_PART_NO_PANEL ? hut_check_panel (assembly, part->panel) : NULL;
}

const char *
hut_check_solid_name (const HutAssembly *assembly,
                      const HutSolid *solid)
{
  if (solid->item != NULL)
    return hut_check_item_name (assembly->design, solid->item);
  if (solid->kind == HUT_SOLID_TRAP)
    return hut_check_item_name (assembly->design, solid->item);
  if (solid->kind == HUT_SOLID_BAFFLE)
    return hut_baffle_name (hut_check_panel (assembly, solid->panel)->id.side);
  return hut_panel_name (hut_check_panel (assembly, solid->panel)->id);
}

const char *
hut_check_part_name (const HutAssembly *assembly,
                     const HutPart *part)
{
  if (part->kind == HUT_PART_EXTRA)
    {
      const HutExtra *extra = hut_design_get_extra (assembly->design, part->item);

      return hut_check_name (extra->name, extra->id);
    }
  if (part->item != NULL)
    return hut_check_item_name (assembly->design, part->item);
  if (part->kind == HUT_PART_BAFFLE)
    return hut_baffle_name (hut_check_panel (assembly, part->panel)->id.side);
  return hut_panel_name (hut_check_panel (assembly, part->panel)->id);
}

const char *
hut_severity_to_string (HutSeverity severity)
{
  switch (severity)
    {
    case HUT_SEVERITY_BLOCKS:
      return "blocks";
    case HUT_SEVERITY_WARNS:
      return "warns";
    default:
      return "notes";
    }
}

/* ---- text ---------------------------------------------------------------------------------- */

/* gettext answers the empty msgid with the catalogue's header, so that one is never asked for. */
static const char *
translated (HutTranslate translate,
            const char *text)
{
  if (text == NULL)
    return "";
  return translate != NULL && *text != '\0' ? translate (text) : text;
}

static void
append_number (GString *text,
               double value,
               const char *decimal_point)
{
  char buffer[HUT_NUMBER_SIZE];
  const char *number = hut_number_fixed (buffer, value, TEXT_DECIMALS);
  const char *point = strchr (number, '.');

  if (point == NULL)
    {
      g_string_append (text, number);
      return;
    }
  g_string_append_len (text, number, point - number);
  g_string_append (text, decimal_point);
  g_string_append (text, point + 1);
}

/* Appends what a placeholder of @length bytes at @start stands for; FALSE when it is none. */
static gboolean
append_placeholder (GString *text,
                    const HutFinding *self,
                    const char *start,
                    gsize length,
                    HutTranslate translate,
                    const char *decimal_point)
{
  const struct
  {
    const char *key, *name;
    double number;
  } keys[] = {
    { .key = "{what}", .name = translated (translate, self->what) },
    { .key = "{other}", .name = translated (translate, self->other) },
    { .key = "{is}", .number = self->is },
    { .key = "{must}", .number = self->must },
    { .key = "{at}", .number = self->at },
  };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (strlen (keys[i].key) == length && strncmp (keys[i].key, start, length) == 0)
      {
        if (keys[i].name != NULL)
          g_string_append (text, keys[i].name);
        else
          append_number (text, keys[i].number, decimal_point);
        return TRUE;
      }
  return FALSE;
}

char *
hut_finding_dup_text (const HutFinding *self,
                      HutTranslate translate,
                      const char *decimal_point)
{
  g_return_val_if_fail (self != NULL && decimal_point != NULL, NULL);

  g_autoptr(GString) text = g_string_new (NULL);
  const char *rest = translated (translate, self->message);

  while (*rest != '\0')
    {
      const char *end = *rest == '{' ? strchr (rest, '}') : NULL;

      if (end != NULL
          && append_placeholder (text, self, rest, (gsize)(end + 1 - rest), translate,
                                 decimal_point))
        rest = end + 1;
      else
        g_string_append_c (text, *rest++);
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* ---- the fix ------------------------------------------------------------------------------- */

static const char *
move_message (const HutFix *fix)
{
  if (fix->dv_mm == 0.0)
    return fix->du_mm < 0.0 ? N_ ("Move it {is} mm to the left")
                            : N_ ("Move it {is} mm to the right");
  if (fix->du_mm == 0.0)
    return fix->dv_mm < 0.0 ? N_ ("Move it {must} mm down") : N_ ("Move it {must} mm up");
  if (fix->du_mm < 0.0)
    return fix->dv_mm < 0.0 ? N_ ("Move it {is} mm to the left and {must} mm down")
                            : N_ ("Move it {is} mm to the left and {must} mm up");
  return fix->dv_mm < 0.0 ? N_ ("Move it {is} mm to the right and {must} mm down")
                          : N_ ("Move it {is} mm to the right and {must} mm up");
}

static const char *
fix_message (const HutFix *fix)
{
  switch (fix->kind)
    {
    case HUT_FIX_FACE:
      return N_ ("Mount it from the other face");
    case HUT_FIX_MOVE:
      return move_message (fix);
    case HUT_FIX_NARROW:
      return N_ ("Make its opening {is} mm narrower");
    case HUT_FIX_PLATE:
      return N_ ("Put it on a face plate");
    case HUT_FIX_BOLTS:
      return N_ ("Use bolts and nuts");
    case HUT_FIX_PLAIN_HEADS:
      return N_ ("Use heads that stand on the panel");
    case HUT_FIX_PANEL:
      return N_ ("Put it on {other}");
    case HUT_FIX_RELEASE:
      return N_ ("Let the program lay it");
    case HUT_FIX_SPRINGS:
      return N_ ("Hold it with two gas springs");
    case HUT_FIX_WAY_OUT:
      return N_ ("Make an opening for it");
    case HUT_FIX_NONE:
    default:
      return NULL;
    }
}

char *
hut_finding_dup_fix_text (const HutFinding *self,
                          HutTranslate translate,
                          const char *decimal_point)
{
  g_return_val_if_fail (self != NULL && decimal_point != NULL, NULL);

  const HutFix *fix = &self->fix;
  const HutFinding order = {
    .message = fix_message (fix),
    .other = fix->kind == HUT_FIX_PANEL ? (char *)hut_panel_name (fix->panel) : NULL,
    .is = fix->kind == HUT_FIX_MOVE ? fabs (fix->du_mm) : fix->value_mm,
    .must = fabs (fix->dv_mm),
  };

  return order.message != NULL ? hut_finding_dup_text (&order, translate, decimal_point) : NULL;
}

gboolean
hut_finding_apply_fix (const HutFinding *self,
                       HutDesign *design)
{
  g_return_val_if_fail (self != NULL && design != NULL, FALSE);

  return self->fix.kind != HUT_FIX_NONE && hut_fix_apply (&self->fix, design);
}

/* ---- the list ------------------------------------------------------------------------------ */

const char *const *
hut_check_ids (void)
{
  return check_ids;
}

static int
compare_numbers (double a,
                 double b)
{
  return (a > b) - (a < b);
}

static int
compare_places (const GArray *a,
                const GArray *b)
{
  if (a->len == 0 || b->len == 0)
    return (a->len > 0) - (b->len > 0);

  const HutPlace *p = &g_array_index (a, HutPlace, 0), *q = &g_array_index (b, HutPlace, 0);
  const int keys[] = {
    p->has_panel - q->has_panel,
    (int)p->panel.shell - (int)q->panel.shell,
    (int)p->panel.side - (int)q->panel.side,
    compare_numbers (p->rect.u0, q->rect.u0),
    compare_numbers (p->rect.v0, q->rect.v0),
    compare_numbers (p->rect.u1, q->rect.u1),
    compare_numbers (p->rect.v1, q->rect.v1),
  };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (keys[i] != 0)
      return keys[i];
  return 0;
}

/* g_ptr_array_sort () is stable: findings that are equal here stay in the order of the design. */
static int
compare_findings (gconstpointer a,
                  gconstpointer b)
{
  const HutFinding *p = *(HutFinding *const *)a, *q = *(HutFinding *const *)b;
  const int by_check = strcmp (p->check, q->check);

  if (p->severity != q->severity)
    return (int)p->severity - (int)q->severity;
  return by_check != 0 ? by_check : compare_places (p->places, q->places);
}

GPtrArray *
hut_check_all (const HutAssembly *assembly,
               const HutPartSet *parts)
{
  static void (*const families[]) (HutChecking *) = {
    hut_check_trouble, hut_check_bed,     hut_check_clearance, hut_check_room,
    hut_check_swing,   hut_check_joint,   hut_check_splice,    hut_check_opening,
    hut_check_seam,    hut_check_glazing, hut_check_window,    hut_check_baffle,
    hut_check_service, hut_check_trap,      hut_check_extra,   hut_check_depth,     hut_check_mount,
    hut_check_fastener,
    hut_check_air,     hut_check_lid,     hut_check_engineering,
    hut_check_stiffness, hut_check_light, hut_check_cut,     hut_check_spot,    hut_check_caution,
  };
  HutChecking checking = { .assembly = assembly, .parts = parts };

  g_return_val_if_fail (assembly != NULL && parts != NULL, NULL);

  checking.findings = g_ptr_array_new_with_free_func ((GDestroyNotify)hut_finding_free);
  for (guint i = 0; i < G_N_ELEMENTS (families); i++)
    families[i](&checking);
  g_ptr_array_sort (checking.findings, compare_findings);
  return checking.findings;
}

gboolean
hut_findings_block (const GPtrArray *findings,
                    const char *const *allowed)
{
  g_return_val_if_fail (findings != NULL, TRUE);

  for (guint i = 0; i < findings->len; i++)
    {
      const HutFinding *finding = g_ptr_array_index (findings, i);

      if (finding->severity == HUT_SEVERITY_BLOCKS
          && (allowed == NULL || !g_strv_contains (allowed, finding->check)))
        return TRUE;
    }
  return FALSE;
}
