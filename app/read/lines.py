"""What the user does to the lines of the Read page: each is one step that can be undone."""

from __future__ import annotations

from app.state.document import Gesture
from app.workspace import Workspace
from core import study as edits
from core.bands.lines import Bands
from core.i18n import translate
from core.study import Study


class LineEdits:
    """The edits of the bands, by mouse, keys, menus and number boxes alike."""

    def __init__(self, workspace: Workspace) -> None:
        self._workspace = workspace

    def move(self, edge: int, y: float, gesture: Gesture) -> None:
        """Move the edge below band `edge` to `y` of the photo's height; the last is the horizon."""
        bands = self._bands
        if bands is None:
            return
        if edge < len(bands.lines):
            after = edits.move_line(self._study, edge, y)
            self._change(translate("undo", "move line"), after, gesture)
        else:
            after = edits.move_horizon(self._study, y)
            self._change(translate("undo", "move horizon"), after, gesture)

    def add(self, y: float) -> None:
        """Add a line at `y` of the photo's height."""
        with self._workspace.notices.reporting():
            self._change(translate("undo", "add line"), edits.add_line(self._study, y))

    def split(self, band: int) -> None:
        """Split a band in two."""
        with self._workspace.notices.reporting():
            self._change(translate("undo", "split band"), edits.split_band(self._study, band))

    def remove(self, edge: int) -> None:
        """Remove the line below a band; the horizon cannot be removed."""
        bands = self._bands
        if bands is None:
            return
        if edge >= len(bands.lines):
            self._workspace.notices.hint(
                translate("read page", "The horizon line can be moved but not removed.")
            )
            return
        self._change(translate("undo", "remove line"), edits.remove_line(self._study, edge))

    def propose_again(self) -> None:
        """Look for horizon and lines again."""
        self._workspace.reader.propose(translate("undo", "propose bands"))

    def ask_count(self, count: int) -> None:
        """Look for so many bands."""
        reader, bands = self._workspace.reader, self._bands
        # A horizon set by hand stays; a proposed one may be looked for again.
        horizon = None
        if bands is not None and bands.horizon != reader.proposed_horizon:
            horizon = bands.horizon
        text = translate("undo", "change number of bands")
        reader.propose(text, count, horizon)

    def accept_rival(self, y: float) -> None:
        """Let the sky end at the other height that was thought of."""
        self._workspace.reader.propose(translate("undo", "move horizon"), horizon=y)

    @property
    def _study(self) -> Study:
        return self._workspace.document.study

    @property
    def _bands(self) -> Bands | None:
        return self._study.bands

    def _change(self, text: str, after: Study, gesture: Gesture | None = None) -> None:
        self._workspace.document.change(text, after, gesture)
