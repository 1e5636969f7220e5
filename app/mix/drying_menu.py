"""How much darker wet paint looks: the class's own figure, in the Edit menu of the Mix page."""

from __future__ import annotations

from functools import partial

from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from app.state.document import Document
from app.widgets.actions import make_action
from core import mixing
from core.i18n import translate

STEPS = (0.0, 0.25, 0.5, 1.0)
"""Munsell steps that are offered; a quarter is what was measured on average."""


class DryingMenu:
    """One choice of the study's, kept in step with it."""

    def __init__(self, document: Document, parent: QWidget) -> None:
        self._document = document
        self._menu = QMenu(translate("mix page", "&Wet paint looks darker by"), parent)
        group = QActionGroup(self._menu)
        texts = (
            translate("mix page", "Nothing"),
            translate("mix page", "A quarter of a step"),
            translate("mix page", "Half a step"),
            translate("mix page", "A whole step"),
        )
        self._actions: dict[float, QAction] = {}
        for steps, text in zip(STEPS, texts, strict=True):
            action = make_action(self._menu, text, partial(self._choose, steps))
            action.setCheckable(True)
            group.addAction(action)
            self._menu.addAction(action)
            self._actions[steps] = action
        document.study_changed.connect(lambda before, after: self._follow())
        self._follow()

    @property
    def action(self) -> QAction:
        """The entry that opens the choices."""
        return self._menu.menuAction()

    def _choose(self, steps: float) -> None:
        study = self._document.study
        text = translate("undo", "change how wet paint looks")
        self._document.change(text, mixing.set_drying(study, steps))

    def _follow(self) -> None:
        steps = self._document.study.mix.drying_steps
        nearest = min(STEPS, key=lambda offered: abs(offered - steps))
        self._actions[nearest].setChecked(True)
