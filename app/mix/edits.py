"""What can be asked on the Mix page, each as one undoable edit of the study."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QElapsedTimer

from app.services.notices import Notices
from app.state.document import Document, Gesture
from core import mixing
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.wash.amounts import SHEETS
from core.study import Study

RUN_MS = 1500
"""Presses on a stepper nearer to each other than this are undone together."""


class MixEdits:
    """The page's edits; one that is not allowed is said in the notice bar."""

    def __init__(self, document: Document, notices: Notices) -> None:
        self._document = document
        self._notices = notices
        self._run: tuple[object, Gesture] | None = None
        self._run_clock = QElapsedTimer()

    def choose_box(self, box: Box) -> None:
        """Take another box."""
        text = translate("undo", "choose another box")
        self._change(text, lambda study: mixing.choose_box(study, box))

    def tick(self, key: str, owned: bool) -> None:
        """Put a paint into the box, or take it out."""
        text = (
            translate("undo", "put paint into the box")
            if owned
            else translate("undo", "take paint out of the box")
        )
        self._change(text, lambda study: mixing.tick_paint(study, key, owned))

    def leave_out(self, key: str, on: bool) -> None:
        """Leave a paint of the box out of every mix, or use it again."""
        text = (
            translate("undo", "leave paint out of every mix")
            if on
            else translate("undo", "use paint again")
        )
        self._change(text, lambda study: mixing.forbid_everywhere(study, key, on))

    def allow_white(self, allowed: bool) -> None:
        """Allow white paint in washes, or forbid it."""
        text = translate("undo", "allow white paint")
        self._change(text, lambda study: mixing.allow_white(study, allowed))

    def choose_sheet(self, number: int) -> None:
        """Take the sheet size of a number in the list."""
        sheet = list(SHEETS.values())[number]
        text = translate("undo", "choose sheet size")
        self._change(text, lambda study: mixing.set_sheet(study, sheet))

    def set_figure(self, ml: float | None) -> None:
        """Reckon with what the class measured; None is the rule of thumb."""
        text = translate("undo", "set your own figure")
        gesture = self._gesture("figure")
        self._change(text, lambda study: mixing.set_own_figure(study, ml), gesture)

    def use_mix(self, letter: str, mix: Mix) -> None:
        """Take another mix for a band."""
        text = translate("undo", "take another mix")
        self._change(text, lambda study: mixing.use_mix(study, letter, mix))

    def set_part(self, letter: str, mix: Mix, key: str, count: int) -> None:
        """Count one paint's parts by hand, in a mix as it is now."""
        text = translate("undo", "set parts by hand")
        self._change(
            text,
            lambda study: mixing.set_part(study, letter, mix, key, count),
            self._gesture((letter, key)),
        )

    def set_load(self, letter: str, mix: Mix, steps: int) -> None:
        """Make a band's wash stronger or weaker by hand."""
        text = translate("undo", "set the wash's strength")
        self._change(
            text,
            lambda study: mixing.set_load(study, letter, mix, steps),
            self._gesture((letter, "load")),
        )

    def _change(
        self, text: str, edit: Callable[[Study], Study], gesture: Gesture | None = None
    ) -> None:
        with self._notices.reporting():
            self._document.change(text, edit(self._document.study), gesture)

    def _gesture(self, what: object) -> Gesture:
        """One gesture for a run of presses on the same thing."""
        rested = not self._run_clock.isValid() or self._run_clock.elapsed() > RUN_MS
        if self._run is None or self._run[0] != what or rested:
            self._run = (what, Gesture())
        self._run_clock.restart()
        return self._run[1]
