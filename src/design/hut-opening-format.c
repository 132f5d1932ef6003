/* src/design/hut-opening-format.c: <window> and <opening> as tables.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-design"
#include "config.h"
#include "catalog/hut-screw.h"
#include "design/hut-design-format.h"
#include "design/hut-position-format.h"
#include "format/hut-format-table.h"
#include "format/hut-number.h"

#define OVERLAP_MAX_MM 1000.0
#define TRAP_MIN_MM 3.0 /* own choice: slots of a millimetre */
#define TRAP_MAX_MM 500.0
#define SCREW_MIN_MM 2.0 /* the ends of the table of threads */
#define SCREW_MAX_MM 8.0

static const char *const shapes[] = { "round", "rectangle", "slot", "pattern", NULL };

static const HutAttributeFormat window_attributes[] = {
  HUT_ID (HutWindow),
  HUT_TEXT (HutWindow, name, "name", "name"),
  HUT_POSITION (HutWindow),
  HUT_SIZE (HutWindow, width_mm, "width", "width", HUT_CUT_MIN_MM),
  HUT_SIZE (HutWindow, height_mm, "height", "height", HUT_CUT_MIN_MM),
  HUT_SIZE (HutWindow, radius_mm, "radius", "corner radius", 0),
  HUT_REFERENCE (HutWindow, glazing_stock, "glazing-stock", "stock of the glazing", "stock"),
  HUT_REFERENCE (HutWindow, frame_stock, "frame-stock", "stock of the frame", "stock"),
  HUT_NUMBER (HutWindow, overlap_mm, "overlap", "overlap", "mm", 0, OVERLAP_MAX_MM),
  HUT_SWITCH (HutWindow, glazing_bought, "glazing-bought", "glazing bought cut to size"),
  HUT_MAYBE_NUMBER (HutWindow, screw_mm, "screw", "screw of the frame", "mm", SCREW_MIN_MM,
                    SCREW_MAX_MM, HUT_ROOM_FREE),
};

static char *
dup_window_fault (gconstpointer self)
{
  const HutWindow *window = self;

  if (window->screw_mm > 0.0 && hut_screw_get (window->screw_mm) == NULL)
    {
      char number[HUT_NUMBER_SIZE];

      return g_strdup_printf ("screw of window '%s' is %s; allowed: 2, 2.5, 3, 3.5, 4, 5, 6, 8 mm",
                              window->id, hut_number_exact (number, window->screw_mm));
    }
  return hut_position_dup_fault (&window->at, "window", window->id);
}

const HutElementFormat hut_window_format = {
  .name = "window",
  .size = sizeof (HutWindow),
  HUT_ATTRIBUTES (window_attributes),
  .dup_fault = dup_window_fault,
};

/* Sizes that a shape does not use may be anything from 0, so the least of those it uses is looked
 * at in dup_shape_fault (). */
static const HutAttributeFormat opening_attributes[] = {
  HUT_ID (HutOpening),
  HUT_TEXT (HutOpening, name, "name", "name"),
  HUT_POSITION (HutOpening),
  HUT_CHOICE (HutOpening, face, "face", "face", hut_face_choices),
  HUT_CHOICE (HutOpening, shape, "shape", "shape", shapes),
  HUT_SIZE (HutOpening, diameter_mm, "diameter", "diameter", 0),
  HUT_SIZE (HutOpening, width_mm, "width", "width", 0),
  HUT_SIZE (HutOpening, height_mm, "height", "height", 0),
  HUT_SIZE (HutOpening, radius_mm, "radius", "corner radius", 0),
  HUT_NUMBER (HutOpening, turn_deg, "turn", "turn", "degrees", -HUT_TURN_MAX_DEG, HUT_TURN_MAX_DEG),
  HUT_MAYBE_REFERENCE (HutOpening, serves, "serves", "service", "service"),
  HUT_MAYBE_NUMBER (HutOpening, trap_mm, "trap", "depth of the light trap", "mm", TRAP_MIN_MM,
                    TRAP_MAX_MM, HUT_ROOM_FREE),
  HUT_MAYBE_REFERENCE (HutOpening, trap_stock, "trap-stock", "stock of the light trap", "stock"),
};

static const HutAttributeFormat hole_attributes[] = {
  HUT_COORDINATE (HutPoint, u, "u", "hole's offset across"),
  HUT_COORDINATE (HutPoint, v, "v", "hole's offset upwards"),
};

static const HutElementFormat hole_format = {
  .name = "hole",
  .size = sizeof (HutPoint),
  HUT_ATTRIBUTES (hole_attributes),
};

static const HutChildFormat opening_children[] = {
  { &hole_format, HUT_CHILD_VALUES, offsetof (HutOpening, holes), 0, HUT_ITEMS_MAX, NULL },
};

static char *
dup_size_fault (const HutOpening *opening,
                const char *label,
                double size_mm)
{
  char size[HUT_NUMBER_SIZE], least[HUT_NUMBER_SIZE], most[HUT_NUMBER_SIZE];

  if (size_mm >= HUT_CUT_MIN_MM)
    return NULL;
  hut_number_exact (least, HUT_CUT_MIN_MM);
  hut_number_exact (most, HUT_LENGTH_MAX_MM);
  return g_strdup_printf ("%s of opening '%s', whose shape is %s, is %s; allowed: %s to %s mm",
                          label, opening->id, shapes[opening->shape],
                          hut_number_exact (size, size_mm), least, most);
}

static char *
dup_shape_fault (const HutOpening *opening)
{
  char *fault;

  switch (opening->shape)
    {
    case HUT_SHAPE_RECTANGLE:
    case HUT_SHAPE_SLOT:
      fault = dup_size_fault (opening, "width", opening->width_mm);
      return fault != NULL ? fault : dup_size_fault (opening, "height", opening->height_mm);
    case HUT_SHAPE_PATTERN:
      if (opening->holes->len == 0)
        return g_strdup_printf ("opening '%s' is a pattern without holes; allowed: 1 to %d <hole>",
                                opening->id, HUT_ITEMS_MAX);
      return dup_size_fault (opening, "diameter", opening->diameter_mm);
    case HUT_SHAPE_ROUND:
    default:
      return dup_size_fault (opening, "diameter", opening->diameter_mm);
    }
}

static char *
dup_opening_fault (gconstpointer self)
{
  const HutOpening *opening = self;
  char *fault = hut_position_dup_fault (&opening->at, "opening", opening->id);

  return fault != NULL ? fault : dup_shape_fault (opening);
}

const HutElementFormat hut_opening_format = {
  .name = "opening",
  .size = sizeof (HutOpening),
  HUT_ATTRIBUTES (opening_attributes),
  HUT_CHILDREN (opening_children),
  .dup_fault = dup_opening_fault,
};
