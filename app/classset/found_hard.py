"""Found hard: what many sheets are off in the same way, with one thing to teach each."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QGuiApplication, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.classset.hard_screen import HardScreen
from app.classset.hard_views import Shown, field_view, spoken
from app.classset.part import ClassPart
from app.drawing.dots import paint_field
from app.look import look
from app.look.icons import pixmap
from app.look.space import GROUP, INSIDE, MARGIN, WITHIN
from app.widgets.buttons import InkButton
from app.widgets.layouts import clear
from app.widgets.screens import class_screen
from app.workspace import Workspace
from core.class_set.field_words import cell_sentence, field_note, why_silent
from core.class_set.hard import Hard, found_hard
from core.class_set.questions import Sorted
from core.class_set.spread import spreads_of
from core.i18n import translate


class FoundHardPart(ClassPart):
    """At most three sentences, one that came right, and the field of dots."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(workspace, parent)
        self.setProperty("ground", "paper")
        self.screen_of_class: HardScreen | None = None
        self._of: Sorted | None = None
        self.shown: Shown | None = None
        self.said = Sentences(self)
        self.field = FieldOfDots(self)
        self.button = InkButton(translate("class set page", "Show the class"), "class_view", self)
        self.button.setToolTip(
            translate("class set page", "One thing at a time over the whole screen (F5)")
        )
        self.button.clicked.connect(self.show_to_class)
        self.note = QLabel(field_note(), self)
        self.note.setProperty("role", "note")
        self.note.setWordWrap(True)
        self._lay_out()

    def begin(self) -> None:
        self._of = None
        if self.screen_of_class is not None:
            self.screen_of_class.hide()
            self.screen_of_class.begin()

    def refresh(self) -> None:
        class_set, found = self.desk.class_set, self.desk.sorted
        if class_set is None or found is None or found is self._of:
            return
        self._of = found
        bands = class_set.exercise.bands
        assert bands is not None, "a class set has lines"
        spreads = spreads_of(class_set, found.placement, self.desk.checks)
        sentences = found_hard(*spreads)
        silent = "" if sentences else why_silent(*spreads)
        self.shown = Shown(
            class_set.exercise.title, bands, self.desk.sky, spreads, sentences, silent
        )
        self.said.show_sentences(sentences, silent)
        self.field.show_class(self.shown)
        if self.screen_of_class is not None:
            self.screen_of_class.show_class(self.shown)

    def show_to_class(self) -> bool:
        """Over the screen the class looks at, and away again; it bears no code."""
        if self.screen_of_class is not None and self.screen_of_class.isVisible():
            self._leave()
            return True
        self.refresh()
        if self.shown is None:
            return False
        if self.screen_of_class is None:
            # A window of its own, that goes when this one does.
            self.screen_of_class = HardScreen()
            self.destroyed.connect(self.screen_of_class.deleteLater)
            self.screen_of_class.left.connect(self._leave)
        view = self.screen_of_class
        view.show_class(self.shown)
        view.begin()
        screen = class_screen(self.screen(), QGuiApplication.screens())
        view.setGeometry(screen.geometry())
        view.showFullScreen()
        view.activateWindow()
        view.setFocus()
        return True

    def take_focus(self) -> None:
        self.button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _leave(self) -> None:
        if self.screen_of_class is not None:
            self.screen_of_class.hide()
            self.window().activateWindow()
            self.button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        foot = QHBoxLayout()
        foot.addWidget(self.button)
        foot.addStretch(1)
        left = QVBoxLayout()
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(GROUP)
        left.addWidget(self.said, 1)
        left.addLayout(foot)
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(WITHIN)
        right.addWidget(self.field, 1)
        right.addWidget(self.note)
        row = QHBoxLayout(self)
        row.setContentsMargins(MARGIN, INSIDE, MARGIN, GROUP)
        row.setSpacing(INSIDE + WITHIN)
        row.addLayout(left, 36)
        row.addLayout(right, 64)


class Sentences(QScrollArea):
    """What is said of the class, one below the other; scrolls where it is too long."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(translate("class set page", "What the class found hard"))
        self._sentences: tuple[Hard, ...] = ()
        self._silent = ""
        self._inner = QWidget(self)
        self._inner.setProperty("ground", "paper")
        self._grid = QGridLayout(self._inner)
        self._grid.setContentsMargins(0, 0, WITHIN, 0)
        self._grid.setHorizontalSpacing(WITHIN)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(1, 1)
        self.setWidget(self._inner)

    def show_sentences(self, sentences: Sequence[Hard], silent: str) -> None:
        """Show them; `silent` where there is none."""
        self._sentences, self._silent = tuple(sentences), silent
        self._fill()
        self.setAccessibleDescription(" ".join(self.texts()))

    def texts(self) -> list[str]:
        """What can be read."""
        said = [part for one in self._sentences for part in (one.text, one.teach) if part]
        return said or [self._silent]

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_grid"):
            self._fill()

    def _fill(self) -> None:
        clear(self._grid)
        for other in range(self._grid.rowCount()):
            self._grid.setRowStretch(other, 0)
            self._grid.setRowMinimumHeight(other, 0)
        row, role = 0, "line" if look().type.wide else "label"
        if self._silent:
            self._grid.addWidget(self._label(self._silent, role), row, 0, 1, 2)
            row += 1
        for one in self._sentences:
            if row:
                self._grid.setRowMinimumHeight(row, GROUP)
                row += 1
            sign = QLabel(self._inner)
            name = "check" if one.kind == "praise" else "arrow_right"
            side = look().type.grow(20)
            sign.setPixmap(pixmap(name, look().theme.ink, side, self.devicePixelRatioF()))
            self._grid.addWidget(sign, row, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(self._label(one.text, role), row, 1)
            row += 1
            if one.teach:
                self._grid.addWidget(self._label(one.teach, "teach"), row, 1)
                row += 1
        self._grid.setRowStretch(row, 1)

    def _label(self, text: str, role: str) -> QLabel:
        label = QLabel(text, self._inner)
        label.setProperty("role", role)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        return label


class FieldOfDots(QWidget):
    """Every band's first and second sheets as dots; in words for a screen reader."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(translate("class set page", "How many sheets match, by band"))
        self.shown: Shown | None = None

    def show_class(self, shown: Shown) -> None:
        """Another class, or more of its sheets."""
        self.shown = shown
        cells = [cell_sentence(one, index) for index in (0, 1) for one in shown.spreads[index]]
        self.setAccessibleDescription(spoken(shown, cells))
        self.update()

    def minimumSizeHint(self) -> QSize:
        return QSize(look().type.grow(420), look().type.grow(260))

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.shown is None:
            return
        scale = look().type
        painter = QPainter(self)
        text, note = scale.px("row_second"), scale.px("control" if scale.wide else "note")
        view = field_view(self.shown, look().theme, text, note)
        area = QRectF(self.rect()).adjusted(0, 0, 0, -4)
        # Rows as tall as they are of use: a field stretched over a large screen reads worse.
        most = view.text * (4.5 + 8 * len(view.letters))
        area.setHeight(min(area.height(), most))
        paint_field(painter, area, view, self.devicePixelRatioF())
        painter.end()
