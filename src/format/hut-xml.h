/* src/format/hut-xml.h: XML from outside, read as hostile.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <libxml/tree.h>

/* Largest file, bytes. Own choice: a design with 10,000 items is under 5 MiB. */
#define HUT_XML_SIZE_MAX_BYTES (64 * 1024 * 1024)
/* Most elements of a file, and most attributes of a tag. Own choice: ten times what the largest
 * design needs, and little enough that a hostile file costs neither memory nor time. */
#define HUT_XML_ELEMENTS_MAX 200000
#define HUT_XML_ATTRIBUTES_MAX 500

G_DEFINE_AUTOPTR_CLEANUP_FUNC (xmlDoc, xmlFreeDoc)

/**
 * hut_xml_parse:
 * @data: (array length=size): UTF-8 text
 * @name: what messages call it
 * @error: HUT_FILE_ERROR_SYNTAX: empty, not UTF-8, not well-formed, has a DOCTYPE, or over a limit
 *
 * Nothing is fetched, expanded or printed.
 *
 * Returns: (transfer full): a document with a root element, or NULL
 */
xmlDoc *hut_xml_parse (const char *data,
                       gsize size,
                       const char *name,
                       GError **error) G_GNUC_WARN_UNUSED_RESULT;
