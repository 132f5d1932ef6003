/* src/export/hut-tool-lead.h: where cuts begin in the waste.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "export/hut-tool-path.h"

/* Least distance of a lead-in from every other cut, mm. Own choice: what a line is off at most. */
#define HUT_LEAD_CLEAR_MM 0.2

/**
 * hut_tool_paths_add_leads:
 * @paths: (element-type HutToolPath): all closed, in their order
 * @cutter: its lead-in
 * @room: where the middle of the tool may go, mm
 *
 * Gives each path that is cut a lead-in on the side of the waste, straight away from a corner or
 * from the
 * middle of a line. Where the whole length finds no room, a half and a quarter are tried; a path
 * without room for these keeps beginning on its line. The path begins where its lead-in comes in,
 * as near
 * as may
 * be to where it began before. Does nothing for a lead-in of 0.
 */
void hut_tool_paths_add_leads (GPtrArray *paths,
                               const HutCutter *cutter,
                               HutRect room);
