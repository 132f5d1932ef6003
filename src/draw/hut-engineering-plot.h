/* src/draw/hut-engineering-plot.h: the curves that the engineering shows.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "draw/hut-plot.h"
#include "engineering/hut-engineering.h"

/* What the fans make against what the system takes, with the operating point. (transfer full)
 * (nullable): NULL while there is nothing to show. @translate, @decimal_point: of the labels. */
HutPlot *hut_engineering_plot_air (const HutEngineering *self,
                                   HutTranslate translate,
                                   const char *decimal_point) G_GNUC_WARN_UNUSED_RESULT;
/* Force of a hand over the angle of the lid, with and without springs. Likewise. */
HutPlot *hut_engineering_plot_lid (const HutEngineering *self,
                                   HutTranslate translate,
                                   const char *decimal_point) G_GNUC_WARN_UNUSED_RESULT;
