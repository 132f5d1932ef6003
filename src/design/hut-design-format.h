/* src/design/hut-design-format.h: the tables of a design's file.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * design.rng says the same once more in RELAX NG, less the ranges of numbers. */
#pragma once
#include "design/hut-design.h"
#include "format/hut-format.h"

/* The stock of one panel, which a HutShell keeps in its table. */
typedef struct
{
  HutPanelId panel;
  char *stock;
} HutPanelStock;

/* Reads and writes a HutPanelId. */
extern const HutWordFormat hut_panel_word;

#define HUT_PANEL(Type, member, name_, label_)                                                    \
  {                                                                                               \
    .name = name_, .kind = HUT_VALUE_WORD, .offset = offsetof (Type, member), .label = label_,     \
    .word = &hut_panel_word                                                                       \
  }

/* Root element, whose struct is a HutDesign. */
extern const HutElementFormat hut_design_format;
extern const HutElementFormat hut_machine_format;
extern const HutElementFormat hut_stock_format;
extern const HutElementFormat hut_baffle_format;
extern const HutElementFormat hut_extra_format;
extern const HutElementFormat hut_window_format;
extern const HutElementFormat hut_opening_format;

/* What is wrong between the baffles of a design, as of HutElementFormat's dup_fault. */
char *hut_baffles_dup_fault (const GPtrArray *baffles) G_GNUC_WARN_UNUSED_RESULT;
/* Likewise between its spots. */
char *hut_spots_dup_fault (const GPtrArray *spots) G_GNUC_WARN_UNUSED_RESULT;
extern const HutElementFormat hut_hardware_format;
extern const HutElementFormat hut_spot_format;
extern const HutElementFormat hut_bit_format;
