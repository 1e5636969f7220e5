"""Menus about paints left out of every mix: they stay in the box, and no band uses them."""

from __future__ import annotations

from PySide6.QtWidgets import QMenu, QWidget

from app.mix.edits import MixEdits
from core.i18n import translate
from core.paint.box.names import paint_name
from core.study import Study
from core.words.lists import sentence_case


def add_left_out(menu: QMenu, study: Study, edits: MixEdits) -> QMenu:
    """Add the list of the box's paints, each to be left out of every mix."""
    every = menu.addMenu(translate("mix page", "Leave out of every mix"))
    for paint in study.box.paints:
        action = every.addAction(sentence_case(paint_name(paint)))
        action.setCheckable(True)
        action.setChecked(paint.key in study.mix.forbidden)
        action.setData(paint.key)
        action.triggered.connect(lambda checked, key=paint.key: edits.leave_out(key, checked))
    return every


def paint_menu(key: str, study: Study, edits: MixEdits, parent: QWidget) -> QMenu:
    """The menu of one paint: whether the class owns it, and whether it is used."""
    owned = key in study.box.by_key
    menu = QMenu(parent)
    has = menu.addAction(translate("mix page", "In this box"))
    has.setCheckable(True)
    has.setChecked(owned)
    has.triggered.connect(lambda checked: edits.tick(key, checked))
    out = menu.addAction(translate("mix page", "Leave out of every mix"))
    out.setCheckable(True)
    out.setChecked(key in study.mix.forbidden)
    out.setEnabled(owned)
    out.triggered.connect(lambda checked: edits.leave_out(key, checked))
    return menu
