/* src/export/hut-xml-out.h: an XML text that is written from top to bottom.
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A thin layer over libxml2's writer: indented by two spaces, UTF-8, numbers with '.' whatever the
 * locale. A failure is kept and told by hut_xml_out_finish (), so that callers need one check. */
#pragma once
#include <glib.h>

typedef struct _HutXmlOut HutXmlOut;

/* @ns: (nullable): the namespace of the root and all below it. */
HutXmlOut *hut_xml_out_new (const char *root,
                            const char *ns) G_GNUC_WARN_UNUSED_RESULT;
void hut_xml_out_free (HutXmlOut *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutXmlOut, hut_xml_out_free)

/* Opens an element inside the one that is open; close ends the last one opened. */
void hut_xml_out_open (HutXmlOut *self,
                       const char *name);
void hut_xml_out_close (HutXmlOut *self);

/* Attributes of the element that was opened last, before anything is put into it. */

/* Characters that XML cannot hold become U+FFFD. */
void hut_xml_out_text (HutXmlOut *self,
                       const char *name,
                       const char *value);
/* Shortest decimal that reads back as the same double; @value is finite. */
void hut_xml_out_number (HutXmlOut *self,
                         const char *name,
                         double value);
/* The same for several numbers, parted by blanks. */
void hut_xml_out_numbers (HutXmlOut *self,
                          const char *name,
                          const double *values,
                          guint count);
void hut_xml_out_count (HutXmlOut *self,
                        const char *name,
                        guint value);
/* "true" or "false" */
void hut_xml_out_flag (HutXmlOut *self,
                       const char *name,
                       gboolean value);

/* Text inside the element that was opened last. */
void hut_xml_out_content (HutXmlOut *self,
                          const char *text);

/**
 * hut_xml_out_finish:
 * @error: G_IO_ERROR_NO_SPACE when memory ran out
 *
 * Closes what is open.
 *
 * Returns: (transfer full): the text; NULL on error
 */
GBytes *hut_xml_out_finish (HutXmlOut *self,
                            GError **error) G_GNUC_WARN_UNUSED_RESULT;
