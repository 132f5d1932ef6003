/* src/design/hut-work.h: what the engineering has to be told: machine at work, duct, coats, stay.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All of it may be unknown: then nothing is reckoned with a guess in its place, and whoever asks is
 * told what to enter. All-zero is no valid value of a struct here: use hut_..._unknown. */
#pragma once
#include <glib.h>

/* A number that nobody has entered. Every number here that is known is >= 0. */
#define HUT_UNKNOWN (-1.0)
/* TRUE for a number that somebody has entered. */
#define HUT_IS_KNOWN(number) ((number) >= 0.0)

/* What light the machine makes at work. */
typedef enum
{
  HUT_GLOW_UNKNOWN,
  HUT_GLOW_NONE,
  HUT_GLOW_LASER,
  HUT_GLOW_ARC, /* an arc, or a lamp of ultraviolet light */
} HutGlow;

/* The machine at work. */
typedef struct
{
  double power_w;    /* mean electric power of all that stays inside: it ends as heat */
  double lamp_w;     /* of lamps inside */
  double sound_db;   /* A-weighted level a metre away, without a house: a number, dB */
  double warmest_c;  /* highest temperature of the air inside that its maker allows, deg C */
  HutGlow glow;
  double laser_w;    /* optical power of the laser */
  double laser_nm;   /* its wavelength, nm */
  double exposure_s; /* how long somebody may look: the time base, s */
} HutWork;

typedef enum
{
  HUT_DUCT_UNKNOWN,
  HUT_DUCT_RIGID,
  HUT_DUCT_HOSE,       /* flexible, pulled out straight */
  HUT_DUCT_SLACK_HOSE, /* flexible, not pulled out */
} HutDuctKind;

typedef enum
{
  HUT_EXIT_OPEN,
  HUT_EXIT_FLAP,   /* falls shut when the fan stands */
  HUT_EXIT_GRILLE, /* against weather and birds */
} HutDuctExit;

/* The duct from the fans to the open; one for all fans. */
typedef struct
{
  HutDuctKind kind;
  double diameter_mm; /* unknown: that of the duct that leaves the machine */
  double length_mm;   /* 0: the fans blow into the room or the open */
  guint bends;        /* right angles in it */
  HutDuctExit exit;
} HutDuct;

typedef enum
{
  HUT_COAT_UNKNOWN,
  HUT_COAT_BARE,
  HUT_COAT_BLACK, /* matt black paint */
  HUT_COAT_WHITE, /* white or light paint */
  HUT_COAT_CLEAR, /* varnish, oil or wax */
} HutCoat;

typedef struct
{
  HutCoat inside, outside;
} HutFinishing;

typedef enum
{
  HUT_STAY_NONE,
  HUT_STAY_SPRING, /* gas springs */
  HUT_STAY_PROP,   /* a stay that is put under the lid by hand, or that catches by itself */
} HutStayKind;

#define HUT_STAYS_USUAL 2u

/* What holds the lid open. */
typedef struct
{
  HutStayKind kind;
  guint count;    /* 1 or 2 */
  double force_n; /* of each spring, as bought; unknown: the step that fits the lid */
} HutStay;

/* Nothing entered; no stay, two when there is one. */
extern const HutWork hut_work_unknown;
extern const HutDuct hut_duct_unknown;
extern const HutStay hut_stay_none;

/* TRUE when both say the same. */
gboolean hut_work_equal (const HutWork *a, const HutWork *b);
gboolean hut_duct_equal (const HutDuct *a, const HutDuct *b);
gboolean hut_finishing_equal (const HutFinishing *a, const HutFinishing *b);
gboolean hut_stay_equal (const HutStay *a, const HutStay *b);
