/* src/draw/hut-flat.h: the flat view: all panels unfolded, drawn with Cairo. Shared by screen and
 * files. SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "checks/hut-finding.h"
#include "draw/hut-flat-layout.h"
#include <cairo.h>

/* A guide line that snapping shows, in a panel's frame. */
typedef struct
{
  guint panel;
  gboolean vertical;
  double at_mm;
} HutGuide;

/* How it shall look. Start from hut_flat_style_plain (). All pointers are lent. */
typedef struct
{
  gboolean dark;
  gboolean high_contrast;
  gboolean show_machine, show_splices, show_dimensions, show_legend, show_grid;
  gboolean inches;          /* lengths in inches; else mm */
  gboolean show_distances;  /* from the selected item to the borders of its panel */
  const char *selected;     /* item id or NULL */
  const char *hovered;      /* item id or NULL */
  int selected_finding;     /* index or -1 */
  const HutPanelId *target; /* panel that a drop would go to, or NULL */
  const HutGuide *guides;
  guint guide_count;
  double text_px;            /* 0: default */
  const char *decimal_point; /* NULL: "." */
  HutTranslate translate;    /* or NULL */
} HutFlatStyle;

/* Everything shown but the legend, nothing selected, light, English. */
HutFlatStyle hut_flat_style_plain (void);

/**
 * hut_flat_draw:
 * @cr: user space in pixels, y down; (0,0) .. (@width_px, @height_px) is what is visible
 * @parts: (nullable): without it no splices and straps
 * @findings: (nullable) (element-type HutFinding): marked with their place in this list, from 1
 *
 * Fills the ground and draws what is visible of all panels. Pure but for @cr.
 */
void hut_flat_draw (cairo_t *cr,
                    const HutAssembly *assembly,
                    const HutPartSet *parts,
                    const GPtrArray *findings,
                    const HutFlatLayout *layout,
                    const HutFlatView *view,
                    const HutFlatStyle *style,
                    double width_px,
                    double height_px);
