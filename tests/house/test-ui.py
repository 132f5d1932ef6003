#!/usr/bin/env python3
# tests/house/test-ui.py: templates are compiled in, fit their class, and show no text that gettext does not know.
# SPDX-License-Identifier: GPL-3.0-or-later
import re
import unittest
import xml.etree.ElementTree as ET

import house

LIST = "ui/hutchwright.gresource.xml"
# Properties that a person reads or hears.
VISIBLE = {"label", "title", "subtitle", "tooltip-text", "tooltip-markup", "placeholder-text", "text", "help"}
WORD = re.compile(r"[A-Za-z]{2,}")
BOUND = re.compile(r"gtk_widget_class_bind_template_child(?:_private)?\s*\(\s*\w+,\s*(\w+),\s*(\w+)\)")
BOUND_CALLBACK = re.compile(r"gtk_widget_class_bind_template_callback\s*\(\s*\w+,\s*(\w+)\)")
TYPE_NAME = re.compile(r"G_D(?:EFINE|ECLARE)_\w*TYPE\w*\s*\(\s*(Hut\w+)")


def stem_of(class_name):
    """hut-openings-page for HutOpeningsPage."""
    return re.sub(r"(?<!^)(?=[A-Z])", "-", class_name).lower()


def own_types(root):
    return {name for path in house.sources(root, ".c", ".h") for name in
            TYPE_NAME.findall(house.without_comments(house.read(root, path)))}


def find_text_faults(path, tree):
    for element in tree.iter():
        visible = element.tag == "property" and element.get("name", "").replace("_", "-") in VISIBLE
        visible = visible or (element.tag == "attribute" and element.get("name") == "label") \
            or (element.tag == "item" and element.text is not None)
        if visible and WORD.search(element.text or "") and element.get("translatable") != "yes":
            yield f"{path}: {element.text!r} is not marked translatable"


def find_code_faults(root, path, tree, template):
    """Children and callbacks that the class binds and the template has not, or the other way."""
    code_path = root / "src" / "app" / f"{path.stem}.c"
    if not code_path.exists():
        yield f"{path}: no src/app/{path.stem}.c"
        return
    ids = {element.get("id") for element in tree.iter("object") if element.get("id")}
    handlers = {element.get("handler") for element in tree.iter("signal")}
    handlers |= {element.get("function") for element in tree.iter("closure")}
    code = house.without_comments(code_path.read_text(encoding="utf-8"))
    bound = {child for class_name, child in BOUND.findall(code) if class_name == template}
    yield from (f"{path}: {code_path.name} binds {name}, which the template has not"
                for name in sorted(bound - ids))
    called = set(BOUND_CALLBACK.findall(code))
    yield from (f"{path}: handler {name} is not bound in {code_path.name}"
                for name in sorted(handlers - called))


def find_faults(root):
    complaints = []
    listed = {element.text for element in ET.parse(root / LIST).iter("file")}
    types = own_types(root)
    for path in sorted((root / "ui").glob("*.ui")):
        name = path.relative_to(root)
        tree = ET.parse(path).getroot()
        if path.name not in listed:
            complaints.append(f"{name}: not in {LIST}")
        complaints += find_text_faults(name, tree)
        complaints += [f"{name}: no type {element.get('class')} in src"
                       for element in tree.iter("object")
                       if (element.get("class") or "").startswith("Hut") and element.get("class") not in types]
        template = tree.find("template")
        if template is not None:
            if stem_of(template.get("class")) != path.stem:
                complaints.append(f"{name}: is the template of {template.get('class')}, so its stem must be "
                                  f"{stem_of(template.get('class'))}")
            complaints += find_code_faults(root, name, tree, template.get("class"))
    complaints += [f"{LIST}: {name} is not there" for name in sorted(listed)
                   if not (root / "ui" / name).exists()]
    return complaints


class Ui(unittest.TestCase):
    def test_templates_fit_their_classes_and_are_translatable(self):
        complaints = find_faults(house.ROOT)
        self.assertEqual(complaints, [], house.report(complaints))

    GOOD_UI = ('<interface><template class="HutAView" parent="GtkWidget"><child>'
               '<object class="GtkLabel" id="name"><property name="label" translatable="yes">Name</property>'
               '<signal name="notify" handler="on_notify"/></object></child></template></interface>')
    GOOD_CODE = ("G_DEFINE_FINAL_TYPE (HutAView, hut_a_view, GTK_TYPE_WIDGET)\n"
                 "gtk_widget_class_bind_template_child (widget_class, HutAView, name);\n"
                 "gtk_widget_class_bind_template_callback (widget_class, on_notify);\n")

    def find_in(self, ui, code, listed="hut-a-view.ui"):
        files = {"ui/hut-a-view.ui": ui, "src/app/hut-a-view.c": code,
                 LIST: f"<gresources><gresource><file>{listed}</file></gresource></gresources>"}
        with house.small_tree(files) as root:
            return find_faults(root)

    def test_a_good_template_passes(self):
        self.assertEqual(self.find_in(self.GOOD_UI, self.GOOD_CODE), [])

    def test_each_fault_is_caught(self):
        for ui, code in (
                (self.GOOD_UI.replace(' translatable="yes"', ""), self.GOOD_CODE),
                (self.GOOD_UI.replace('id="name"', 'id="other"'), self.GOOD_CODE),
                (self.GOOD_UI.replace('"GtkLabel"', '"HutNothing"'), self.GOOD_CODE),
                (self.GOOD_UI, self.GOOD_CODE.replace("on_notify", "on_other")),
                (self.GOOD_UI.replace("HutAView", "HutBView"), self.GOOD_CODE.replace("HutAView", "HutBView"))):
            self.assertEqual(len(self.find_in(ui, code)), 1, ui + code)

    def test_a_template_that_is_not_compiled_in_is_caught(self):
        self.assertEqual(len(self.find_in(self.GOOD_UI, self.GOOD_CODE, "hut-gone.ui")), 2)


if __name__ == "__main__":
    unittest.main()
