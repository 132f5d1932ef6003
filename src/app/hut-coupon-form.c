/* src/app/hut-coupon-form.c: writes the coupon of a stock and takes what was read off it.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-coupon-form.h"
#include "app/hut-checked-entry.h"
#include "app/hut-coupon-job.h"
#include "app/hut-field.h"
#include "app/hut-number-entry.h"
#include "app/hut-readings.h"
#include "app/hut-settings.h"
#include "sheets/hut-coupon-fit.h"
#include <glib/gi18n.h>

struct _HutCouponForm
{
  GtkWidget parent_instance;

  GtkWidget *content, *write, *take;
  GtkLabel *written, *outcome;
  HutCheckedEntry *play;
  HutNumberEntry *drawn_kerf, *reading_error;
  GtkDropDown *press, *slip, *glue, *loose;

  HutSession *session;
  char *stock;
  GArray *plays_mm;          /* double */
  HutCouponPlan plan;        /* whose teeth the lists show */
  GCancellable *cancellable; /* of the writing; NULL while nothing is written */
  HutCouponResult result;
  gboolean has_result;
  gboolean filling;
};

G_DEFINE_TYPE (HutCouponForm, hut_coupon_form, GTK_TYPE_WIDGET)

static HutUnits
units (void)
{
  return hut_settings_get_units (hut_settings_get_default ());
}

static const HutStock *
peek_stock (HutCouponForm *self)
{
  return hut_design_get_stock (hut_session_get_design (self->session), self->stock);
}

/* ---- what the readings say ------------------------------------------------------------------- */

/* Place 0 of a list is "not found". */
static guint
chosen_tooth (GtkDropDown *list)
{
  const guint place = gtk_drop_down_get_selected (list);

  return place == 0 || place == GTK_INVALID_LIST_POSITION ? HUT_COUPON_NONE : place - 1;
}

static char *
dup_length (double value_mm)
{
  return hut_quantity_dup_text_with_unit (HUT_QUANTITY_LENGTH, units (), value_mm);
}

static void
show_result (HutCouponForm *self)
{
  g_autofree char *kerf = dup_length (self->result.kerf_mm);
  g_autofree char *kerf_error = dup_length (self->result.kerf_error_mm);
  g_autofree char *allowance = dup_length (self->result.allowance_mm);
  g_autofree char *allowance_error = dup_length (self->result.allowance_error_mm);
  g_autoptr (GString) text = g_string_new (NULL);

  /* Translators: a kerf and how far it may be off */
  g_string_append_printf (text, _("Kerf %s ± %s"), kerf, kerf_error);
  g_string_append_c (text, '\n');
  if (self->result.has_allowance)
    /* Translators: a fit allowance and how far it may be off */
    g_string_append_printf (text, _("Fit allowance %s ± %s"), allowance, allowance_error);
  else
    g_string_append (text, _("The comb says too little for a fit allowance; it stays as it is."));
  gtk_label_set_text (self->outcome, text->str);
}

static void
work_out (HutCouponForm *self)
{
  const HutStock *stock = peek_stock (self);
  HutCouponPlan plan = self->plan;
  const HutCouponReadings readings = {
    .plays_mm = (const double *)self->plays_mm->data,
    .play_count = self->plays_mm->len,
    .reading_error_mm = hut_number_entry_get_value (self->reading_error),
    .first_tooth = { [HUT_FEEL_PRESS] = chosen_tooth (self->press),
                     [HUT_FEEL_SLIP] = chosen_tooth (self->slip),
                     [HUT_FEEL_GLUE] = chosen_tooth (self->glue),
                     [HUT_FEEL_LOOSE] = chosen_tooth (self->loose) },
  };
  g_autoptr (GError) error = NULL;

  if (stock == NULL || self->filling)
    return;
  plan.kerf_mm = hut_number_entry_get_value (self->drawn_kerf);
  self->has_result
      = self->plays_mm->len > 0
        && hut_coupon_fit (&plan, stock,
                           hut_session_get_design (self->session)->cutter.kind, &readings,
                           &self->result, &error);
  gtk_widget_set_sensitive (self->take, self->has_result);
  if (self->has_result)
    show_result (self);
  else if (error != NULL)
    gtk_label_set_text (self->outcome, _("These readings do not go together: each tooth must be "
                                         "looser than the one before, and the kerf it was drawn "
                                         "for must be the one scored on it."));
  else
    gtk_label_set_text (self->outcome, _("Nothing read yet."));
}

static gboolean
check_play (const char *text,
            GError **error)
{
  g_autoptr (GArray) plays_mm = *text != '\0' ? hut_readings_parse (text, units (), error) : NULL;

  return *text == '\0' || plays_mm != NULL;
}

static void
show_play (HutCouponForm *self)
{
  g_autofree char *text = hut_readings_dup_text (self->plays_mm, units ());

  hut_checked_entry_set_text (self->play, text);
}

static void
on_play (HutCouponForm *self,
         const char *text)
{
  g_autoptr (GArray) plays_mm = *text != '\0' ? hut_readings_parse (text, units (), NULL) : NULL;

  g_array_set_size (self->plays_mm, 0);
  if (plays_mm != NULL)
    g_array_append_vals (self->plays_mm, plays_mm->data, plays_mm->len);
  show_play (self);
  work_out (self);
}

static void
on_number (HutCouponForm *self,
           double value,
           HutNumberEntry *entry)
{
  hut_number_entry_set_value (entry, value);
  work_out (self);
}

/* ---- teeth ----------------------------------------------------------------------------------- */

static void
fill_teeth (HutCouponForm *self)
{
  GtkDropDown *const lists[] = { self->press, self->slip, self->glue, self->loose };

  for (guint k = 0; k < G_N_ELEMENTS (lists); k++)
    {
      g_autoptr (GtkStringList) teeth = gtk_string_list_new (NULL);

      /* Translators: no tooth of the comb felt so */
      gtk_string_list_append (teeth, _("Not found"));
      for (guint i = 0; i < self->plan.tooth_count; i++)
        gtk_string_list_take (teeth,
                              g_strdup_printf ("%d", hut_coupon_tooth_label (&self->plan, i)));
      gtk_drop_down_set_model (lists[k], G_LIST_MODEL (teeth));
    }
}

static void
on_derived (HutCouponForm *self)
{
  const HutStock *stock = peek_stock (self);
  HutCouponPlan plan;

  if (stock == NULL)
    return;
  hut_coupon_plan_init (&plan, stock, &hut_session_get_design (self->session)->cutter);
  self->filling = TRUE;
  if (plan.tooth_count != self->plan.tooth_count || plan.tightest_mm != self->plan.tightest_mm)
    {
      self->plan = plan;
      fill_teeth (self);
    }
  self->plan = plan;
  if (self->plays_mm->len == 0) /* nothing read: it is not cut yet */
    hut_number_entry_set_value (self->drawn_kerf, plan.kerf_mm);
  show_play (self);
  self->filling = FALSE;
  work_out (self);
}

static gboolean
take_result (HutDesign *design,
             gpointer user_data)
{
  HutCouponForm *self = user_data;
  HutStock *stock = hut_design_get_stock (design, self->stock);

  if (stock == NULL)
    return FALSE;
  hut_coupon_result_apply (&self->result, stock);
  return TRUE;
}

static void
on_take (HutCouponForm *self)
{
  /* Typed numbers count too; leaving a field applies them, pressing a button by key does not. */
  if (!hut_checked_entry_commit (self->play) || !hut_number_entry_commit (self->drawn_kerf)
      || !hut_number_entry_commit (self->reading_error) || !self->has_result)
    return;
  /* Translators: what Undo takes back. */
  hut_session_edit (self->session, _("Coupon Readings"), take_result, self);
}

/* ---- writing --------------------------------------------------------------------------------- */

static void
on_write (HutCouponForm *self)
{
  gtk_widget_activate_action (GTK_WIDGET (self), "win.write-coupon", "s", self->stock);
}

static void
show_written (HutCouponForm *self,
              const char *text)
{
  gtk_label_set_text (self->written, text);
  gtk_widget_set_visible (GTK_WIDGET (self->written), TRUE);
}

static void
on_written (GObject *source,
            GAsyncResult *result,
            gpointer user_data)
{
  g_autoptr (HutCouponForm) self = user_data;
  g_autoptr (GError) error = NULL;
  g_auto (GStrv) written = hut_coupon_job_run_finish (result, &error);
  g_autofree char *text = NULL;

  g_clear_object (&self->cancellable);
  if (self->session == NULL)
    return;
  gtk_widget_set_sensitive (self->write, TRUE);
  if (written == NULL)
    {
      show_written (self, error->message);
      return;
    }
  text = g_strdup_printf (ngettext ("%u file written.", "%u files written.",
                                    g_strv_length (written)),
                          g_strv_length (written));
  show_written (self, text);
}

void
hut_coupon_form_write (HutCouponForm *self,
                       const char *folder)
{
  g_return_if_fail (HUT_IS_COUPON_FORM (self) && self->session != NULL && folder != NULL);

  const HutDesign *design = hut_session_get_design (self->session);

  if (self->cancellable != NULL)
    return;
  self->cancellable = g_cancellable_new ();
  gtk_widget_set_sensitive (self->write, FALSE);
  g_array_set_size (self->plays_mm, 0);
  on_derived (self);
  hut_coupon_job_run_async (design, self->stock, hut_formats_usual (design), folder,
                            self->cancellable, on_written, g_object_ref (self));
}

/* ---- the widget ------------------------------------------------------------------------------ */

static void
hut_coupon_form_dispose (GObject *object)
{
  HutCouponForm *self = HUT_COUPON_FORM (object);

  if (self->cancellable != NULL)
    g_cancellable_cancel (self->cancellable);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (hut_coupon_form_parent_class)->dispose (object);
}

static void
hut_coupon_form_finalize (GObject *object)
{
  HutCouponForm *self = HUT_COUPON_FORM (object);

  g_clear_object (&self->cancellable);
  g_free (self->stock);
  g_array_unref (self->plays_mm);
  G_OBJECT_CLASS (hut_coupon_form_parent_class)->finalize (object);
}

static void
hut_coupon_form_class_init (HutCouponFormClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  G_OBJECT_CLASS (class)->dispose = hut_coupon_form_dispose;
  G_OBJECT_CLASS (class)->finalize = hut_coupon_form_finalize;
  g_type_ensure (HUT_TYPE_FIELD);
  g_type_ensure (HUT_TYPE_NUMBER_ENTRY);
  g_type_ensure (HUT_TYPE_CHECKED_ENTRY);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-coupon-form.ui");
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, content);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, write);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, take);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, written);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, outcome);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, play);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, drawn_kerf);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, reading_error);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, press);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, slip);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, glue);
  gtk_widget_class_bind_template_child (widget_class, HutCouponForm, loose);
  gtk_widget_class_bind_template_callback (widget_class, on_write);
  gtk_widget_class_bind_template_callback (widget_class, on_take);
  gtk_widget_class_bind_template_callback (widget_class, work_out);
}

static void
hut_coupon_form_init (HutCouponForm *self)
{
  self->plays_mm = g_array_new (FALSE, FALSE, sizeof (double));
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
hut_coupon_form_bind (HutCouponForm *self,
                      HutSession *session,
                      const char *stock)
{
  g_return_if_fail (HUT_IS_COUPON_FORM (self) && HUT_IS_SESSION (session) && stock != NULL);
  g_return_if_fail (self->session == NULL);

  self->session = g_object_ref (session);
  self->stock = g_strdup (stock);
  hut_checked_entry_set_check (self->play, check_play);
  hut_number_entry_set_value (self->reading_error, HUT_COUPON_READING_ERROR_MM);
  g_signal_connect_object (self->play, "committed", G_CALLBACK (on_play), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->drawn_kerf, "committed", G_CALLBACK (on_number), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (self->reading_error, "committed", G_CALLBACK (on_number), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "derived", G_CALLBACK (on_derived), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (hut_settings_get_default (), "notify::units", G_CALLBACK (on_derived),
                           self, G_CONNECT_SWAPPED);
  on_derived (self);
}
