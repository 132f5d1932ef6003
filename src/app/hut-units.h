/* src/app/hut-units.h: numbers as the user reads and types them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib-object.h>

/* What lengths are shown in. Designs and files are always mm. */
typedef enum
{
  HUT_UNITS_MM,
  HUT_UNITS_INCH,
} HutUnits;

#define HUT_TYPE_UNITS (hut_units_get_type ())
GType hut_units_get_type (void);

/* What a number measures; the unit it is kept in beside it. */
typedef enum
{
  HUT_QUANTITY_LENGTH,  /* mm */
  HUT_QUANTITY_SPEED,   /* mm/min */
  HUT_QUANTITY_MASS,    /* kg */
  HUT_QUANTITY_DENSITY, /* kg/m3 */
  HUT_QUANTITY_ANGLE,   /* degrees */
  HUT_QUANTITY_PERCENT, /* % */
  HUT_QUANTITY_RATIO,   /* times the thickness of the stock */
  HUT_QUANTITY_COUNT,   /* whole number, no unit */
  HUT_QUANTITY_PRICE,   /* the owner's currency, not named */
  HUT_QUANTITY_POWER,   /* W */
  HUT_QUANTITY_FORCE,   /* N */
  HUT_QUANTITY_TEMPERATURE, /* degrees Celsius */
  HUT_QUANTITY_ALTITUDE,    /* m */
  HUT_QUANTITY_SOUND,       /* dB, A-weighted */
  HUT_QUANTITY_WAVELENGTH,  /* nm */
  HUT_QUANTITY_TIME,        /* s */
  HUT_QUANTITY_FLOW,    /* m3/h */
  HUT_QUANTITY_PRESSURE, /* Pa */
} HutQuantity;

#define HUT_TYPE_QUANTITY (hut_quantity_get_type ())
GType hut_quantity_get_type (void);

typedef enum
{
  HUT_UNITS_ERROR_NUMBER, /* not a number, or one that is not finite */
  HUT_UNITS_ERROR_UNIT,   /* a unit that does not fit the quantity */
} HutUnitsError;

#define HUT_UNITS_ERROR (hut_units_error_quark ())
GQuark hut_units_error_quark (void);

/* Short unit for display, "" if there is none; translated, static. */
const char *hut_quantity_unit (HutQuantity quantity, HutUnits units);
/* How many of the displayed unit are one of the kept unit: 1/25.4 for lengths in inches, else 1. */
double hut_quantity_scale_ratio (HutQuantity quantity, HutUnits units);
/* How far an arrow key goes, in the kept unit. */
double hut_quantity_step (HutQuantity quantity, HutUnits units);

/* (transfer full): the number alone, in the displayed unit, with the decimal mark of the locale. */
char *hut_quantity_dup_text (HutQuantity quantity,
                             HutUnits units,
                             double value) G_GNUC_WARN_UNUSED_RESULT;
/* (transfer full): with its unit. */
char *hut_quantity_dup_text_with_unit (HutQuantity quantity,
                                       HutUnits units,
                                       double value) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hut_quantity_parse:
 * @text: what was typed; comma or point as decimal mark; lengths may end in mm, cm, in or " and
 *   may be fractions such as 3/4 or 1 1/2
 * @value: (out): in the kept unit
 * @error: HUT_UNITS_ERROR_*; the message is translated and fits under a field
 *
 * Returns: FALSE, with @value untouched, on error
 */
gboolean hut_quantity_parse (HutQuantity quantity,
                             HutUnits units,
                             const char *text,
                             double *value,
                             GError **error);
