/* src/export/hut-dxf-pair.h: the pairs of code and value that a DXF file is made of.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "geom/hut-geom.h"

/* Decimals of a bulge: a ratio, times a radius of up to metres still right to 1e-9 mm. */
#define HUT_DXF_BULGE_DECIMALS 12

/* A group code and its value, each on a line of its own. */
void hut_dxf_pair (GString *file, int code, const char *value);
/* Many pairs in a short notation: '|' ends a pair, the first blank parts its code from its value.
 * */
void hut_dxf_short (GString *file, const char *notation);
/* A real number always has a decimal mark, so that strict readers see its type. @value: any unit,
 * @decimals of it at most. */
void hut_dxf_real (GString *file, int code, double value, guint decimals);
/* Codes @code and @code + 10; the other one has a zero as third coordinate. */
void hut_dxf_point (GString *file, int code, HutPoint p);
void hut_dxf_point_3 (GString *file, int code, HutPoint p);
/* Plain ASCII on one line: what it does not have becomes '?'. */
void hut_dxf_comment (GString *file, const char *text);
