/* src/app/hut-number-entry.c: a field for one number with its unit and range.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-app"
#include "config.h"
#include "app/hut-number-entry.h"
#include "app/hut-settings.h"
#include <glib/gi18n.h>
#include <math.h>

/* Own choice: Page Up and Page Down go ten steps, as in other number fields. */
#define PAGE_STEPS 10.0

struct _HutNumberEntry
{
  GtkWidget parent_instance;

  GtkWidget *line, *entry, *unit, *problem_label;

  HutQuantity quantity;
  double lower, upper, value, step; /* kept unit */
  double blank_value;
  char *blank_text, *title, *problem;
  gboolean shows_problem, shows_unit;

  gboolean pending;  /* the text is not the value */
  gboolean filling;  /* the program changes the text, not the user */
  gboolean spinning; /* a key is held */
};

enum
{
  PROP_0,
  PROP_QUANTITY,
  PROP_LOWER,
  PROP_UPPER,
  PROP_VALUE,
  PROP_STEP,
  PROP_BLANK_TEXT,
  PROP_BLANK_VALUE,
  PROP_TITLE,
  PROP_PROBLEM,
  PROP_SHOWS_PROBLEM,
  PROP_SHOWS_UNIT,
  PROP_COUNT
};

enum
{
  SIGNAL_COMMITTED,
  SIGNAL_SPINNING,
  SIGNAL_COUNT
};

static GParamSpec *properties[PROP_COUNT];
static guint signals[SIGNAL_COUNT];

G_DEFINE_TYPE (HutNumberEntry, hut_number_entry, GTK_TYPE_WIDGET)

static HutUnits
units (void)
{
  return hut_settings_get_units (hut_settings_get_default ());
}

static gboolean
is_blank (HutNumberEntry *self,
          double value)
{
  return self->blank_text != NULL && value == self->blank_value;
}

static void
set_problem (HutNumberEntry *self,
             const char *problem)
{
  if (g_strcmp0 (problem, self->problem) == 0)
    return;
  g_free (self->problem);
  self->problem = g_strdup (problem);
  gtk_label_set_text (GTK_LABEL (self->problem_label), problem != NULL ? problem : "");
  gtk_widget_set_visible (self->problem_label, problem != NULL && self->shows_problem);
  if (problem != NULL)
    {
      gtk_widget_add_css_class (self->entry, "error");
      gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                                   GTK_ACCESSIBLE_INVALID_TRUE, -1);
    }
  else
    {
      gtk_widget_remove_css_class (self->entry, "error");
      gtk_accessible_reset_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID);
    }
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_PROBLEM]);
}

/* Shows the value as text. */
static void
show_value (HutNumberEntry *self)
{
  g_autofree char *text = is_blank (self, self->value)
                              ? g_strdup ("")
                              : hut_quantity_dup_text (self->quantity, units (), self->value);

  self->filling = TRUE;
  if (g_strcmp0 (text, gtk_editable_get_text (GTK_EDITABLE (self->entry))) != 0)
    gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  self->filling = FALSE;
  self->pending = FALSE;
  set_problem (self, NULL);
}

/* The range in words, for the tooltip. */
static char *
dup_range_text (HutNumberEntry *self)
{
  g_autofree char *lower = NULL, *upper = NULL;

  if (self->lower > -G_MAXDOUBLE)
    lower = hut_quantity_dup_text (self->quantity, units (), self->lower);
  if (self->upper < G_MAXDOUBLE)
    upper = hut_quantity_dup_text_with_unit (self->quantity, units (), self->upper);
  if (lower != NULL && upper != NULL)
    /* Translators: range of a number field, e.g. "0 to 100 mm" */
    return g_strdup_printf (_("%s to %s"), lower, upper);
  if (lower != NULL)
    /* Translators: range of a number field, e.g. "at least 0" */
    return g_strdup_printf (_("At least %s"), lower);
  if (upper != NULL)
    /* Translators: range of a number field, e.g. "at most 100 mm" */
    return g_strdup_printf (_("At most %s"), upper);
  return NULL;
}

static void
show_unit_and_range (HutNumberEntry *self)
{
  const char *unit = hut_quantity_unit (self->quantity, units ());
  g_autofree char *range = dup_range_text (self);
  g_autofree char *tip = NULL;

  gtk_label_set_text (GTK_LABEL (self->unit), unit);
  gtk_widget_set_visible (self->unit, self->shows_unit && *unit != '\0');
  if (self->title != NULL && range != NULL)
    /* Translators: tooltip of a number field: its name, and its range on the next line */
    tip = g_strdup_printf (_("%s\nRange: %s"), self->title, range);
  gtk_widget_set_tooltip_text (self->line, tip != NULL ? tip : range);
  if (self->title != NULL)
    {
      g_autofree char *label
          = *unit == '\0' ? g_strdup (self->title) : g_strdup_printf ("%s, %s", self->title, unit);

      gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                      label, -1);
    }
  if (range != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry),
                                    GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, range, -1);
}

/* What is typed, in the kept unit. Returns: FALSE with the reason in @problem. */
static gboolean
read_text (HutNumberEntry *self,
           double *value,
           char **problem)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_autofree char *plain = g_strstrip (g_strdup (text));
  g_autofree char *range = NULL;
  g_autoptr (GError) error = NULL;
  double typed = 0.0;

  if (*plain == '\0' && self->blank_text != NULL)
    {
      *value = self->blank_value;
      return TRUE;
    }
  if (!hut_quantity_parse (self->quantity, units (), plain, &typed, &error))
    {
      *problem = g_strdup (error->message);
      return FALSE;
    }
  if (typed < self->lower || typed > self->upper)
    {
      range = dup_range_text (self);
      /* Translators: a number out of its range; %s is "0 to 100 mm", "At least 0", "At most 100 mm"
       */
      *problem = g_strdup_printf (_("Out of range: %s"), range);
      return FALSE;
    }
  *value = typed;
  return TRUE;
}

static void
take_value (HutNumberEntry *self,
            double value)
{
  const gboolean changed = value != self->value;

  self->value = value;
  show_value (self);
  if (!changed)
    return;
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_VALUE]);
  g_signal_emit (self, signals[SIGNAL_COMMITTED], 0, value);
}

static void
stop_spinning (HutNumberEntry *self)
{
  if (!self->spinning)
    return;
  self->spinning = FALSE;
  g_signal_emit (self, signals[SIGNAL_SPINNING], 0, FALSE);
}

static void
spin (HutNumberEntry *self,
      double step_count)
{
  const double step = self->step > 0.0 ? self->step : hut_quantity_step (self->quantity, units ());
  g_autofree char *problem = NULL;
  double value = self->value;

  if (self->pending && !read_text (self, &value, &problem))
    {
      set_problem (self, problem);
      return;
    }
  if (is_blank (self, value))
    value = self->lower;
  else
    value = CLAMP (value + step * step_count, self->lower, self->upper);
  if (!self->spinning)
    {
      self->spinning = TRUE;
      g_signal_emit (self, signals[SIGNAL_SPINNING], 0, TRUE);
    }
  take_value (self, value);
}

static void
on_activate (HutNumberEntry *self)
{
  if (hut_number_entry_commit (self))
    gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, -1);
}

static void
on_changed (HutNumberEntry *self)
{
  if (self->filling)
    return;
  self->pending = TRUE;
  /* A mark that is there goes as soon as the text is right; a new one waits for Enter. */
  if (self->problem != NULL)
    {
      g_autofree char *problem = NULL;
      double value = 0.0;

      set_problem (self, read_text (self, &value, &problem) ? NULL : problem);
    }
}

static void
on_focus_leave (HutNumberEntry *self)
{
  stop_spinning (self);
  hut_number_entry_commit (self);
  gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, 0);
}

static gboolean
on_key_pressed (GtkEventControllerKey *keys,
                guint key,
                guint code,
                GdkModifierType modifiers,
                HutNumberEntry *self)
{
  if ((modifiers & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)) != 0)
    return GDK_EVENT_PROPAGATE;
  switch (key)
    {
    case GDK_KEY_Up:
    case GDK_KEY_KP_Up:
      spin (self, 1.0);
      return GDK_EVENT_STOP;
    case GDK_KEY_Down:
    case GDK_KEY_KP_Down:
      spin (self, -1.0);
      return GDK_EVENT_STOP;
    case GDK_KEY_Page_Up:
      spin (self, PAGE_STEPS);
      return GDK_EVENT_STOP;
    case GDK_KEY_Page_Down:
      spin (self, -PAGE_STEPS);
      return GDK_EVENT_STOP;
    case GDK_KEY_Escape:
      if (!self->pending)
        return GDK_EVENT_PROPAGATE;
      show_value (self);
      gtk_editable_select_region (GTK_EDITABLE (self->entry), 0, -1);
      return GDK_EVENT_STOP;
    default:
      return GDK_EVENT_PROPAGATE;
    }
}

static void
on_key_released (GtkEventControllerKey *keys,
                 guint key,
                 guint code,
                 GdkModifierType modifiers,
                 HutNumberEntry *self)
{
  stop_spinning (self);
}

static void
on_units_changed (HutNumberEntry *self)
{
  show_unit_and_range (self);
  if (!self->pending)
    show_value (self);
}

static gboolean
hut_number_entry_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (HUT_NUMBER_ENTRY (widget)->entry);
}

static void
hut_number_entry_get_property (GObject *object,
                               guint id,
                               GValue *value,
                               GParamSpec *pspec)
{
  const HutNumberEntry *self = HUT_NUMBER_ENTRY (object);

  switch (id)
    {
    case PROP_QUANTITY:
      g_value_set_enum (value, (int)self->quantity);
      break;
    case PROP_LOWER:
      g_value_set_double (value, self->lower);
      break;
    case PROP_UPPER:
      g_value_set_double (value, self->upper);
      break;
    case PROP_VALUE:
      g_value_set_double (value, self->value);
      break;
    case PROP_STEP:
      g_value_set_double (value, self->step);
      break;
    case PROP_BLANK_TEXT:
      g_value_set_string (value, self->blank_text);
      break;
    case PROP_BLANK_VALUE:
      g_value_set_double (value, self->blank_value);
      break;
    case PROP_TITLE:
      g_value_set_string (value, self->title);
      break;
    case PROP_PROBLEM:
      g_value_set_string (value, self->problem);
      break;
    case PROP_SHOWS_PROBLEM:
      g_value_set_boolean (value, self->shows_problem);
      break;
    case PROP_SHOWS_UNIT:
      g_value_set_boolean (value, self->shows_unit);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hut_number_entry_set_property (GObject *object,
                               guint id,
                               const GValue *value,
                               GParamSpec *pspec)
{
  HutNumberEntry *self = HUT_NUMBER_ENTRY (object);

  switch (id)
    {
    case PROP_QUANTITY:
      self->quantity = (HutQuantity)g_value_get_enum (value);
      break;
    case PROP_LOWER:
      self->lower = g_value_get_double (value);
      break;
    case PROP_UPPER:
      self->upper = g_value_get_double (value);
      break;
    case PROP_VALUE:
      hut_number_entry_set_value (self, g_value_get_double (value));
      break;
    case PROP_STEP:
      self->step = g_value_get_double (value);
      break;
    case PROP_BLANK_TEXT:
      g_free (self->blank_text);
      self->blank_text = g_value_dup_string (value);
      gtk_entry_set_placeholder_text (GTK_ENTRY (self->entry), self->blank_text);
      break;
    case PROP_BLANK_VALUE:
      self->blank_value = g_value_get_double (value);
      break;
    case PROP_TITLE:
      g_free (self->title);
      self->title = g_value_dup_string (value);
      break;
    case PROP_SHOWS_PROBLEM:
      self->shows_problem = g_value_get_boolean (value);
      gtk_widget_set_visible (self->problem_label, self->problem != NULL && self->shows_problem);
      break;
    case PROP_SHOWS_UNIT:
      self->shows_unit = g_value_get_boolean (value);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
      return;
    }
  show_unit_and_range (self);
  if (!self->pending)
    show_value (self);
}

static void
hut_number_entry_dispose (GObject *object)
{
  HutNumberEntry *self = HUT_NUMBER_ENTRY (object);

  g_clear_pointer (&self->line, gtk_widget_unparent);
  g_clear_pointer (&self->problem_label, gtk_widget_unparent);
  G_OBJECT_CLASS (hut_number_entry_parent_class)->dispose (object);
}

static void
hut_number_entry_finalize (GObject *object)
{
  HutNumberEntry *self = HUT_NUMBER_ENTRY (object);

  g_free (self->blank_text);
  g_free (self->title);
  g_free (self->problem);
  G_OBJECT_CLASS (hut_number_entry_parent_class)->finalize (object);
}

static void
install_properties (GObjectClass *object_class)
{
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS;

  properties[PROP_QUANTITY]
      = g_param_spec_enum ("quantity", NULL, NULL, HUT_TYPE_QUANTITY, HUT_QUANTITY_LENGTH, flags);
  properties[PROP_LOWER]
      = g_param_spec_double ("lower", NULL, NULL, -G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, flags);
  properties[PROP_UPPER]
      = g_param_spec_double ("upper", NULL, NULL, -G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE, flags);
  properties[PROP_VALUE]
      = g_param_spec_double ("value", NULL, NULL, -G_MAXDOUBLE, G_MAXDOUBLE, 0.0, flags);
  properties[PROP_STEP] = g_param_spec_double ("step", NULL, NULL, 0.0, G_MAXDOUBLE, 0.0, flags);
  properties[PROP_BLANK_TEXT] = g_param_spec_string ("blank-text", NULL, NULL, NULL, flags);
  properties[PROP_BLANK_VALUE]
      = g_param_spec_double ("blank-value", NULL, NULL, -G_MAXDOUBLE, G_MAXDOUBLE, -1.0, flags);
  properties[PROP_TITLE] = g_param_spec_string ("title", NULL, NULL, NULL, flags);
  properties[PROP_PROBLEM] = g_param_spec_string ("problem", NULL, NULL, NULL,
                                                  G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  properties[PROP_SHOWS_PROBLEM] = g_param_spec_boolean ("shows-problem", NULL, NULL, TRUE, flags);
  properties[PROP_SHOWS_UNIT] = g_param_spec_boolean ("shows-unit", NULL, NULL, TRUE, flags);
  g_object_class_install_properties (object_class, PROP_COUNT, properties);
}

static void
hut_number_entry_class_init (HutNumberEntryClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);

  object_class->get_property = hut_number_entry_get_property;
  object_class->set_property = hut_number_entry_set_property;
  object_class->dispose = hut_number_entry_dispose;
  object_class->finalize = hut_number_entry_finalize;
  widget_class->grab_focus = hut_number_entry_grab_focus;
  install_properties (object_class);
  signals[SIGNAL_COMMITTED]
      = g_signal_new ("committed", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                      NULL, G_TYPE_NONE, 1, G_TYPE_DOUBLE);
  signals[SIGNAL_SPINNING] = g_signal_new ("spinning", G_TYPE_FROM_CLASS (class), G_SIGNAL_RUN_LAST,
                                           0, NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_BOOLEAN);
  gtk_widget_class_set_css_name (widget_class, "number-entry");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hutchwright/Hutchwright/hut-number-entry.ui");
  gtk_widget_class_bind_template_child (widget_class, HutNumberEntry, line);
  gtk_widget_class_bind_template_child (widget_class, HutNumberEntry, entry);
  gtk_widget_class_bind_template_child (widget_class, HutNumberEntry, unit);
  gtk_widget_class_bind_template_child_full (widget_class, "problem", FALSE,
                                             G_STRUCT_OFFSET (HutNumberEntry, problem_label));
  gtk_widget_class_bind_template_callback (widget_class, on_activate);
  gtk_widget_class_bind_template_callback (widget_class, on_changed);
  gtk_widget_class_bind_template_callback (widget_class, on_focus_leave);
  gtk_widget_class_bind_template_callback (widget_class, on_key_pressed);
  gtk_widget_class_bind_template_callback (widget_class, on_key_released);
}

static void
hut_number_entry_init (HutNumberEntry *self)
{
  self->lower = -G_MAXDOUBLE;
  self->upper = G_MAXDOUBLE;
  self->blank_value = -1.0;
  self->shows_problem = TRUE;
  self->shows_unit = TRUE;
  gtk_widget_init_template (GTK_WIDGET (self));
  show_unit_and_range (self);
  show_value (self);
  g_signal_connect_object (hut_settings_get_default (), "notify::units",
                           G_CALLBACK (on_units_changed), self, G_CONNECT_SWAPPED);
}

double
hut_number_entry_get_value (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), 0.0);
  return self->value;
}

void
hut_number_entry_set_value (HutNumberEntry *self,
                            double value)
{
  g_return_if_fail (HUT_IS_NUMBER_ENTRY (self));

  const gboolean changed = value != self->value;
  const gboolean typing
      = self->pending
        && (gtk_widget_get_state_flags (self->entry) & GTK_STATE_FLAG_FOCUS_WITHIN) != 0;

  self->value = value;
  if (changed)
    g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_VALUE]);
  /* What cannot be applied stays until the value itself changes. */
  if (!typing && (changed || !self->pending))
    show_value (self);
}

void
hut_number_entry_reset (HutNumberEntry *self,
                        double value)
{
  g_return_if_fail (HUT_IS_NUMBER_ENTRY (self));

  self->pending = FALSE;
  hut_number_entry_set_value (self, value);
}

gboolean
hut_number_entry_is_pending (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), FALSE);
  return self->pending;
}

gboolean
hut_number_entry_commit (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), FALSE);

  g_autofree char *problem = NULL;
  double value = 0.0;

  if (!self->pending)
    return TRUE;
  if (!read_text (self, &value, &problem))
    {
      set_problem (self, problem);
      return FALSE;
    }
  take_value (self, value);
  return TRUE;
}

const char *
hut_number_entry_get_problem (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), NULL);
  return self->problem;
}

GtkEditable *
hut_number_entry_get_editable (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), NULL);
  return GTK_EDITABLE (self->entry);
}

double
hut_number_entry_get_lower (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), 0.0);
  return self->lower;
}

double
hut_number_entry_get_upper (HutNumberEntry *self)
{
  g_return_val_if_fail (HUT_IS_NUMBER_ENTRY (self), 0.0);
  return self->upper;
}
