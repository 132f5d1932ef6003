/* src/app/hut-built-page.c: the built view with its sliders.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-built-page.h"
#include "app/hut-panel-choices.h"
#include "app/hut-refresh.h"
#include "app/hut-settings.h"
#include "checks/hut-swing.h"
#include <glib/gi18n.h>

#define DEGREES_PER_RADIAN (180.0 / G_PI)
#define PERCENT 100.0
#define LIFTED_DEG 90.0 /* of the slider when a loose lid is at its highest: see HutBuiltPose */

struct _HutBuiltPage
{
  GtkWidget parent_instance;

  HutBuiltArea *area;
  GtkLabel *lid_label, *approach;
  GtkScale *lid;
  GtkAdjustment *lid_angle, *motion, *apart;
  GtkCheckButton *show_lid, *show_machine;

  HutSession *session;
};

G_DEFINE_TYPE (HutBuiltPage, hut_built_page, GTK_TYPE_WIDGET)

static void
show_pose (HutBuiltPage *self)
{
  const HutBuiltPose pose = {
    .lid_rad = gtk_adjustment_get_value (self->lid_angle) / DEGREES_PER_RADIAN,
    .motion_ratio = gtk_adjustment_get_value (self->motion) / PERCENT,
    .explode_ratio = gtk_adjustment_get_value (self->apart) / PERCENT,
    .hide_lid = !gtk_check_button_get_active (self->show_lid),
    .hide_machine = !gtk_check_button_get_active (self->show_machine),
  };

  hut_built_area_set_pose (self->area, &pose);
}

/* A lid that is lifted off has no angle: the same slider lifts it. */
static char *
dup_lid_text (GtkScale *scale, double value, gpointer user_data)
{
  HutBuiltPage *self = user_data;

  if (self->session == NULL || hut_session_get_assembly (self->session)->hinged)
    /* Translators: an angle in degrees */
    return g_strdup_printf (_ ("%.0f°"), value);
  /* Translators: a share in per cent */
  return g_strdup_printf (_ ("%.0f %%"), value / LIFTED_DEG * PERCENT);
}

/* ---- the closest approach -------------------------------------------------------------------- */

static const char *
around_name (const HutDesign *design, HutAround around, const HutApproach *approach)
{
  const HutBody *body;

  switch (around)
    {
    case HUT_AROUND_MACHINE:
      body = hut_design_get_body (design, approach->other);
      return body != NULL && body->name != NULL && *body->name != '\0' ? body->name
                                                                       : approach->other;
    case HUT_AROUND_WALL:
      return _ ("the wall of the room");
    case HUT_AROUND_SHELF:
      return _ ("the shelf");
    case HUT_AROUND_BASE:
    case HUT_AROUND_BAFFLE:
    case HUT_AROUND_COUNT:
    default:
      return _ ("the base");
    }
}

/* The base is left out while nothing collides: its nearest is always the closed seam. */
static HutAround
nearest_around (const HutApproach approaches[HUT_AROUND_COUNT])
{
  HutAround best = HUT_AROUND_COUNT;

  for (HutAround i = HUT_AROUND_MACHINE; i < HUT_AROUND_COUNT; i++)
    {
      const HutApproach *a = &approaches[i];

      if (!a->exists || (!a->collides && (i == HUT_AROUND_BASE || i == HUT_AROUND_BAFFLE)))
        continue;
      if (best == HUT_AROUND_COUNT || a->distance_mm < approaches[best].distance_mm)
        best = i;
    }
  return best;
}

static char *
dup_approach_text (HutBuiltPage *self)
{
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  HutApproach approaches[HUT_AROUND_COUNT];
  HutAround around;
  g_autofree char *distance = NULL;
  const char *name;
  double angle_deg;

  if (!assembly->whole || !assembly->hinged)
    return g_strdup ("");
  hut_swing_find (assembly, hut_session_get_parts (self->session), approaches);
  around = nearest_around (approaches);
  if (around == HUT_AROUND_COUNT)
    return g_strdup (_ ("Nothing stands in the lid's way."));
  name = around_name (assembly->design, around, &approaches[around]);
  angle_deg = approaches[around].angle_rad * DEGREES_PER_RADIAN;
  if (approaches[around].collides)
    /* Translators: what the lid hits, angle in degrees */
    return g_strdup_printf (_ ("The lid hits %s at %.0f°."), name, angle_deg);
  distance = hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH,
                                              hut_settings_get_units (hut_settings_get_default ()),
                                              approaches[around].distance_mm);
  /* Translators: distance with its unit, what the lid comes near to, angle in degrees */
  return g_strdup_printf (_ ("Nearest: %s to %s, at %.0f°."), distance, name, angle_deg);
}

static void
refresh (GtkWidget *widget)
{
  HutBuiltPage *self = HUT_BUILT_PAGE (widget);
  const HutAssembly *assembly = hut_session_get_assembly (self->session);
  const HutShell *shell = &hut_session_get_design (self->session)->shell;
  g_autofree char *text = dup_approach_text (self);

  gtk_label_set_text (self->approach, text);
  gtk_label_set_text (self->lid_label, assembly->hinged ? _ ("Lid") : _ ("Lift the lid"));
  gtk_adjustment_set_upper (self->lid_angle,
                            assembly->hinged ? shell->opening_angle_deg : LIFTED_DEG);
}

static void
on_derived (HutBuiltPage *self)
{
  hut_refresh_queue (GTK_WIDGET (self), refresh);
}

/* ---- the widget ------------------------------------------------------------------------------ */

static void
hut_built_page_dispose (GObject *object)
{
  HutBuiltPage *self = HUT_BUILT_PAGE (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_built_page_parent_class)->dispose (object);
}

static void
hut_built_page_class_init (HutBuiltPageClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_built_page_dispose;
  g_type_ensure (HUT_TYPE_BUILT_AREA);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-built-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, area);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, lid_label);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, approach);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, lid);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, lid_angle);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, motion);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, apart);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, show_lid);
  gtk_widget_class_bind_template_child (widget_class, HutBuiltPage, show_machine);
  gtk_widget_class_bind_template_callback (widget_class, show_pose);
}

static void
hut_built_page_init (HutBuiltPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_scale_set_format_value_func (self->lid, dup_lid_text, self, NULL);
}

GtkWidget *
hut_built_page_new (HutSession *session)
{
  g_return_val_if_fail (HUT_IS_SESSION (session), NULL);

  HutBuiltPage *self = g_object_new (HUT_TYPE_BUILT_PAGE, NULL);

  self->session = g_object_ref (session);
  hut_built_area_set_session (self->area, session);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  on_derived (self);
  return GTK_WIDGET (self);
}

HutBuiltArea *
hut_built_page_get_area (HutBuiltPage *self)
{
  g_return_val_if_fail (HUT_IS_BUILT_PAGE (self), NULL);
  return self->area;
}
