/* src/engineering/hut-report.h: the subjects, each of which adds its figures.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "engineering/hut-engineering.h"

/* A report under way; all but `out` is lent. */
typedef struct
{
  const HutAssembly *assembly;
  const HutPartSet *parts;
  const HutDesign *design;
  HutEngineering *out;
} HutReport;

/* Each subject adds its figures to `out`; air comes first, as heat needs it. */
void hut_report_air (HutReport *self);
void hut_report_heat (HutReport *self);
void hut_report_light (HutReport *self);
void hut_report_lid (HutReport *self);
void hut_report_stiffness (HutReport *self);
void hut_report_noise (HutReport *self);
void hut_report_finish (HutReport *self);
