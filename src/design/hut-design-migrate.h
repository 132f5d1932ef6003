/* src/design/hut-design-migrate.h: files of older versions as the newest one writes them.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <libxml/tree.h>

/**
 * hut_design_migrate:
 * @root: <enclosure>; changed in place, in the order of versions
 *
 * Version 1 knew no hardware; version 2 also holds the owner's flat-bottom bits, and a file of
 * version 1 gets those that are commonly stocked. What version 3 adds is optional, and absent means
 * what version 2 meant. A root of a version that is none, or is newer, stays as it is.
 */
void hut_design_migrate (xmlNode *root);
