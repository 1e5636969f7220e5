"""A band's menu: paints to use always, paints to leave out here or everywhere, parts by hand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QMenu, QWidget

from app.mix.edits import MixEdits
from app.mix.left_out import add_left_out
from app.services.notices import Notices
from app.state.document import Document
from core import mixing
from core.i18n import translate
from core.paint.box.names import paint_name
from core.paint.options import BandChoice
from core.study import Study
from core.words.lists import sentence_case


class WishesMenu:
    """Fills the menu of a band; made once by the page."""

    def __init__(self, document: Document, notices: Notices, edits: MixEdits) -> None:
        self._document = document
        self._notices = notices
        self._edits = edits

    def menu(self, letter: str, by_hand: Callable[[], None], parent: QWidget) -> QMenu:
        """The menu of one band.

        Parameters
        ----------
        by_hand : callable
            Shows the steppers.
        """
        study = self._document.study
        choice = study.mix.choice(letter)
        title = translate("mix page", "Paints of band {letter}").format(letter=letter)
        menu = QMenu(title, parent)
        always = menu.addMenu(translate("mix page", "Always use"))
        without = menu.addMenu(translate("mix page", "Leave out of this band"))
        add_left_out(menu, study, self._edits)
        for paint in study.box.paints:
            name = sentence_case(paint_name(paint))
            for sub, keys, act in (
                (always, choice.pinned, self.pin),
                (without, choice.forbidden, self.forbid),
            ):
                action = sub.addAction(name)
                action.setCheckable(True)
                action.setChecked(paint.key in keys)
                action.setData(paint.key)
                action.triggered.connect(
                    lambda checked, act=act, key=paint.key: act(letter, key, checked)
                )
        menu.addSeparator()
        menu.addAction(translate("mix page", "Set the parts by hand")).triggered.connect(by_hand)
        back = menu.addAction(translate("mix page", "Back to the proposed mix"))
        back.setEnabled(choice.parts is not None)
        back.triggered.connect(lambda: self.search_again(letter))
        forget = menu.addAction(translate("mix page", "Forget what was asked here"))
        forget.setEnabled(choice != BandChoice())
        forget.triggered.connect(lambda: self.forget(letter))
        return menu

    def pin(self, letter: str, key: str, on: bool) -> None:
        """Pin a paint, or let it go."""
        text = translate("undo", "pin paint") if on else translate("undo", "let go of paint")
        self._change(text, lambda study: mixing.pin(study, letter, key, on))

    def forbid(self, letter: str, key: str, on: bool) -> None:
        """Leave a paint out, or allow it again."""
        text = translate("undo", "leave out paint") if on else translate("undo", "allow paint")
        self._change(text, lambda study: mixing.forbid(study, letter, key, on))

    def search_again(self, letter: str) -> None:
        """Give up the parts set by hand."""
        text = translate("undo", "go back to the proposed mix")
        self._change(text, lambda study: mixing.search_again(study, letter))

    def forget(self, letter: str) -> None:
        """Ask nothing any more for a band."""
        text = translate("undo", "forget what was asked")
        self._change(text, lambda study: mixing.forget_wishes(study, letter))

    def _change(self, text: str, edit: Callable[[Study], Study]) -> None:
        with self._notices.reporting():
            self._document.change(text, edit(self._document.study))
