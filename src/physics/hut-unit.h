/* src/physics/hut-unit.h: units of catalogues and standards, in SI.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* Exact by the definitions of inch (0.0254 m), foot (12 in), pound (0.45359237 kg), US gallon (231
 * in3). */
#define HUT_INCH_M 0.0254
#define HUT_FOOT_M 0.3048
#define HUT_POUND_KG 0.45359237
#define HUT_US_GALLON_M3 3.785411784e-3
/* A cubic foot a minute, m3/s; a foot a minute, m/s. */
#define HUT_CFM_M3_S (HUT_FOOT_M * HUT_FOOT_M * HUT_FOOT_M / 60.0)
#define HUT_FPM_M_S (HUT_FOOT_M / 60.0)
#define HUT_M3_H_M3_S (1.0 / 3600.0)
/* Conventional columns of water of 1000 kg/m3 under standard gravity, Pa. */
#define HUT_MM_WATER_PA 9.80665
#define HUT_INCH_WATER_PA (25.4 * HUT_MM_WATER_PA)
/* Thermal resistance of 1 h ft2 F/Btu, m2 K/W. Source: 1 Btu (IT) = 1055.05585262 J, 1 F = 5/9 K.
 * */
#define HUT_R_VALUE_M2K_W (3600.0 * HUT_FOOT_M * HUT_FOOT_M * (5.0 / 9.0) / 1055.05585262)
