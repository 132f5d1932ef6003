/* src/format/hut-id-book.h: which ids a file has given, and which it names.
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>

typedef struct _HutIdBook HutIdBook;

HutIdBook *hut_id_book_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hut_id_book_free (HutIdBook *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HutIdBook, hut_id_book_free)

/* Notes that the <element> in @line has that id. Returns: (transfer full) (nullable): what is wrong,
 * when another one has it already. */
char *hut_id_book_add (HutIdBook *self,
                       const char *element,
                       const char *id,
                       long line) G_GNUC_WARN_UNUSED_RESULT;

/* Notes that @what ("stock of panel 'lid-top'") in @line is the id of an <element>, which may be given
 * later in the file. */
void hut_id_book_refer (HutIdBook *self,
                        const char *element,
                        const char *id,
                        const char *what,
                        long line);

/* To be asked at the end. Returns: (transfer full) (nullable): what is wrong with the first reference to
 * an id that nothing has, with its line in @line. */
char *hut_id_book_dup_fault (const HutIdBook *self, long *line) G_GNUC_WARN_UNUSED_RESULT;
