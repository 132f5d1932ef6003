/* src/assembly/hut-bed.c: what the cutter's bed takes.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#define G_LOG_DOMAIN "hut-assembly"
#include "config.h"
#include "assembly/hut-part.h"
#include <math.h>

/* Angles that are tried between 0 and 90 degrees. Own choice: 0.05 degree steps lose less than 0.01
 * % of the room that a turned strip could use. */
#define TURN_STEPS 1800

double
hut_cutter_usable_width_mm (const HutCutter *self)
{
  return self->bed_width_mm - 2.0 * self->margin_mm;
}

double
hut_cutter_usable_depth_mm (const HutCutter *self)
{
  return self->bed_depth_mm - 2.0 * self->margin_mm;
}

gboolean
hut_rect_fits_turned (double width_mm,
                      double height_mm,
                      double room_width_mm,
                      double room_height_mm,
                      double *angle_rad)
{
  for (int step = 0; step <= TURN_STEPS; step++)
    {
      const double turn_rad = G_PI / 2.0 * step / TURN_STEPS;
      const double c = step == TURN_STEPS ? 0.0 : cos (turn_rad),
                   s = step == 0 ? 0.0 : sin (turn_rad);

      if (width_mm * c + height_mm * s <= room_width_mm
          && width_mm * s + height_mm * c <= room_height_mm)
        {
          if (angle_rad != NULL)
            *angle_rad = turn_rad;
          return TRUE;
        }
    }
  return FALSE;
}

static gboolean
takes (double width_mm,
       double height_mm,
       double room_width_mm,
       double room_depth_mm,
       gboolean any_angle)
{
  if ((width_mm <= room_width_mm && height_mm <= room_depth_mm)
      || (height_mm <= room_width_mm && width_mm <= room_depth_mm))
    return TRUE;
  return any_angle
         && hut_rect_fits_turned (width_mm, height_mm, room_width_mm, room_depth_mm, NULL);
}

gboolean
hut_cutter_takes (const HutCutter *self,
                  double width_mm,
                  double height_mm)
{
  return takes (width_mm, height_mm, hut_cutter_usable_width_mm (self),
                hut_cutter_usable_depth_mm (self), self->any_angle);
}

gboolean
hut_cutter_turns_sheet (const HutCutter *self,
                        const HutStock *stock)
{
  const double straight_width_mm = MIN (stock->sheet_width_mm, self->bed_width_mm);
  const double straight_depth_mm = MIN (stock->sheet_depth_mm, self->bed_depth_mm);
  const double turned_width_mm = MIN (stock->sheet_depth_mm, self->bed_width_mm);
  const double turned_depth_mm = MIN (stock->sheet_width_mm, self->bed_depth_mm);

  return turned_width_mm * turned_depth_mm > straight_width_mm * straight_depth_mm;
}

void
hut_cutter_sheet (const HutCutter *self,
                  const HutStock *stock,
                  double *width_mm,
                  double *depth_mm)
{
  const gboolean turned = hut_cutter_turns_sheet (self, stock);

  *width_mm = MIN (turned ? stock->sheet_depth_mm : stock->sheet_width_mm, self->bed_width_mm);
  *depth_mm = MIN (turned ? stock->sheet_width_mm : stock->sheet_depth_mm, self->bed_depth_mm);
}

void
hut_cutter_room (const HutCutter *self,
                 const HutStock *stock,
                 double *width_mm,
                 double *depth_mm)
{
  /* The tool's path lies outside of the part by half the kerf, and where the fit is tight by half
   * of that more. */
  const double around_mm
      = 2.0 * self->margin_mm + stock->kerf_mm + MAX (0.0, -stock->allowance_mm);

  hut_cutter_sheet (self, stock, width_mm, depth_mm);
  *width_mm -= around_mm;
  *depth_mm -= around_mm;
}

gboolean
hut_cutter_takes_stock (const HutCutter *self,
                        const HutStock *stock,
                        double width_mm,
                        double height_mm)
{
  double room_width_mm, room_depth_mm;

  hut_cutter_room (self, stock, &room_width_mm, &room_depth_mm);
  return takes (width_mm, height_mm, room_width_mm, room_depth_mm, self->any_angle);
}
