"""A strip for one score, set with one stroke: ten radio buttons painted as one drawing."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QLabel, QMenu, QSizePolicy, QWidget

from app.drawing.brush_scale import (
    BrushScaleView,
    ScaleInks,
    brush_scale_height,
    paint_anchor_words,
    paint_brush_scale,
    score_cells,
)
from app.drawing.score_scale import COUNT
from app.look import look
from app.look.space import WITHIN
from app.state.document import Gesture
from app.worksheet.score_target import ScoreTarget
from core.i18n import translate
from core.reading.quality import Quality
from core.worksheet.words import ANCHORS, anchor_word, quality_title, score_hint

STRIP = 30
"""Height of a strip; the page may give it more."""
_HEAD = 18
_LEAST_PITCH, _PITCH = 26, 32

_DIGITS = {Qt.Key(Qt.Key.Key_0.value + digit): digit or COUNT for digit in range(COUNT)}
_CLEARING = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
_CHOOSING = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class ScoreScale(QWidget):
    """The student's own score for one quality of one sheet.

    A press, or a stroke of the mouse along the strip, chooses. Digits choose (0 is 10), Delete
    takes the score back. The arrow keys walk along the scale without choosing: the third score
    opens the findings, and must not do so on the way.

    Signals
    -------
    scored(score: int or None, gesture: Gesture)
        The score the user chose, or took back; not sent by `set_score`. Key presses while the
        scale keeps the focus share a gesture.
    """

    scored = Signal(object, object)

    def __init__(self, quality: Quality, sheet: str, parent: QWidget | None = None) -> None:
        """`sheet` names the sheet to a screen reader."""
        super().__init__(parent)
        self._quality = quality
        self._strip = float(STRIP)
        self._stroke: int | None = None
        self._own: int | None = None
        self._measured: int | None = None
        self._asked = False
        self._pointed: int | None = None
        self._run: Gesture | None = None
        self._label_width = 0
        self._label = QLabel(quality_title(quality), self)
        self._label.setProperty("role", "label")
        self._label.setAlignment(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
        name = translate("worksheet", "{quality}, {sheet}, own score").format(
            quality=quality_title(quality), sheet=sheet
        )
        self.setAccessibleName(name)
        keys = translate(
            "worksheet", "Type 1 to 9, or 0 for 10. Delete takes the score back. {meaning}"
        )
        self.targets = tuple(ScoreTarget(score, self, self) for score in range(1, COUNT + 1))
        for target in self.targets:
            meaning = score_hint(quality, target.score)
            target.setAccessibleName(f"{name} {target.score}")
            target.setAccessibleDescription(keys.format(meaning=meaning))
            target.setToolTip(meaning)
            target.clicked.connect(
                lambda _checked=False, score=target.score: self._choose(score, Gesture())
            )
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._tell_tab()

    @property
    def quality(self) -> Quality:
        """What is scored."""
        return self._quality

    @property
    def score(self) -> int | None:
        """The score shown."""
        return self._own

    @property
    def measured(self) -> int | None:
        """The measured score shown."""
        return self._measured

    def set_score(self, own: int | None, measured: int | None, *, asked: bool) -> None:
        """Show the own score, the measured one if it may be seen, and whether it is asked for."""
        self._own, self._measured, self._asked = own, measured, asked and own is None
        self._tick()
        self._tell_tab()
        description = ""
        if measured is not None:
            description = _measured_text(measured)
        elif self._asked:
            description = _still_to_score()
        self.setAccessibleDescription(description)
        self.update()

    def set_label_width(self, width: int) -> None:
        """Room for the label, the same in all scales above each other."""
        self._label_width = width
        self._place()

    def label_width(self) -> int:
        """Room the label needs."""
        return self._label.sizeHint().width() + 2 * WITHIN

    def set_strip(self, height: float) -> None:
        """How high the strip is at 100 %."""
        if height != self._strip:
            self._strip = height
            self._place()
            self.updateGeometry()

    # What the targets report

    def point_at(self, score: int | None) -> None:
        """The mouse is over a score, or over none."""
        self._pointed = score
        self.update()

    def stroke_to(self, x: float) -> None:
        """The mouse is drawn along the strip: the stroke follows it."""
        area = self._area()
        at = int((x - area.left()) / max(area.width(), 1.0) * COUNT) + 1
        self._stroke = min(max(at, 1), COUNT)
        self.update()

    def lift(self) -> None:
        """The mouse button went up: the stroke is the score."""
        score, self._stroke = self._stroke, None
        if score is not None:
            self._choose(score, Gesture())
        self.update()

    def end_run(self) -> None:
        """The focus left: the next key press is a new undo step."""
        self._run = None

    def press(self, key: Qt.Key, at: int) -> bool:
        """A key on the target of score `at`; False if it means nothing here."""
        moves = {
            Qt.Key.Key_Left: max(at - 1, 1),
            Qt.Key.Key_Right: min(at + 1, COUNT),
            Qt.Key.Key_Home: 1,
            Qt.Key.Key_End: COUNT,
        }
        if key in moves:
            self.targets[moves[key] - 1].setFocus(Qt.FocusReason.TabFocusReason)
        elif key in _DIGITS:
            self._choose(_DIGITS[key], self._key_run())
            self.targets[_DIGITS[key] - 1].setFocus(Qt.FocusReason.TabFocusReason)
        elif key in _CHOOSING:
            self._choose(at, self._key_run())
        elif key in _CLEARING:
            self._choose(None, self._key_run())
        else:
            return False
        return True

    def _key_run(self) -> Gesture:
        if self._run is None:
            self._run = Gesture()
        return self._run

    def _choose(self, score: int | None, gesture: Gesture) -> None:
        self._tick()
        if gesture is not self._run:
            self.end_run()
        self.scored.emit(score, gesture)

    def _tick(self) -> None:
        for target in self.targets:
            # Exclusive to a screen reader, but it must be possible to have none.
            target.setAutoExclusive(False)
            target.setChecked(target.score == self._own)
        for target in self.targets:
            target.setAutoExclusive(True)

    def _tell_tab(self) -> None:
        # Tab goes to the chosen score, or to the first; the arrow keys go on from there.
        stop = self._own or 1
        for target in self.targets:
            here = target.score == stop
            policy = Qt.FocusPolicy.StrongFocus if here else Qt.FocusPolicy.ClickFocus
            target.setFocusPolicy(policy)

    # Drawing

    def _view(self) -> BrushScaleView:
        theme = look().theme
        focused = next((t.score for t in self.targets if t.hasFocus()), None)
        own = self._own if self._stroke is None else self._stroke
        shown = next(
            (n for n in (self._stroke, self._pointed, focused, own) if n is not None), None
        )
        note, strong = "", False
        if shown is not None:
            note = score_hint(self._quality, shown)
        elif self._asked:
            note, strong = _still_to_score(), True
        measured = self._measured if self._stroke is None else None
        return BrushScaleView(
            own=own,
            measured=measured,
            measured_text="" if measured is None else _measured_text(measured),
            note=note,
            strong=strong,
            pointed=self._pointed,
            anchors=ANCHORS,
            words=look().type.px("note"),
            inks=ScaleInks(
                theme.ink, theme.on_ink, theme.raised, theme.second, theme.edge, theme.rule
            ),
        )

    def _area(self) -> QRectF:
        left = self._label_width
        height = brush_scale_height(look().type.scale * self._strip)
        return QRectF(left, 0, self.width() - left, height)

    def _place(self) -> None:
        self._label.setGeometry(0, 0, self._label_width, round(look().type.scale * self._strip))
        for target, spot in zip(self.targets, score_cells(self._area()), strict=True):
            left, right = round(spot.left()), round(spot.right())
            place = QRect(left, round(spot.top()), right - left, round(spot.height()))
            target.setGeometry(place & self.rect())

    def sizeHint(self) -> QSize:
        scale = look().type
        high = round(brush_scale_height(scale.scale * self._strip))
        return QSize(self._label_width + COUNT * scale.grow(_PITCH), high)

    def minimumSizeHint(self) -> QSize:
        hint = self.sizeHint()
        return QSize(self._label_width + COUNT * look().type.grow(_LEAST_PITCH), hint.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "targets"):
            self._place()
            self.updateGeometry()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        menu = QMenu(self)
        take_back = menu.addAction(translate("worksheet", "Take the score back"))
        take_back.setEnabled(self._own is not None)
        take_back.triggered.connect(lambda: self._choose(None, Gesture()))
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(event.globalPos())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_brush_scale(painter, self._area(), self._view())
        painter.end()


class AnchorWords(QWidget):
    """What 1, 4, 7 and 10 stand for, above all the scales they are true of."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._left = 0
        said = (f"{score}: {anchor_word(score)}" for score in ANCHORS)
        self.setAccessibleName(", ".join(said))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_label_width(self, width: int) -> None:
        """Where the scales begin."""
        self._left = width
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(200), look().type.grow(_HEAD))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        area = QRectF(self._left, 0, self.width() - self._left, self.height())
        words = tuple((score, anchor_word(score)) for score in ANCHORS)
        paint_anchor_words(painter, area, words, look().type.px("note"), look().theme.second)
        painter.end()


def _measured_text(measured: int) -> str:
    return translate("worksheet", "measured {score}").format(score=measured)


def _still_to_score() -> str:
    return translate("worksheet", "Still to score")


def _preview() -> QWidget:
    from PySide6.QtWidgets import QVBoxLayout

    page = QWidget()
    column = QVBoxLayout(page)
    first = ScoreScale("hue", "Sheet 1", page)
    second = ScoreScale("value", "Sheet 1", page)
    third = ScoreScale("intensity", "Sheet 1", page)
    first.set_score(6, 7, asked=True)
    second.set_score(7, 10, asked=True)
    third.set_score(None, None, asked=True)
    width = max(scale.label_width() for scale in (first, second, third))
    words = AnchorWords(page)
    words.set_label_width(width)
    column.addWidget(words)
    for scale in (first, second, third):
        scale.set_label_width(width)
        column.addWidget(scale)
    third.scored.connect(lambda score, gesture: third.set_score(score, None, asked=True))
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 460, 260))
