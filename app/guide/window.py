"""The guide's window: chapters at the left, the chapter at the right. It stays beside the work."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QSize, Qt, QUrl, Signal
from PySide6.QtGui import QCloseEvent, QImage, QKeyEvent, QResizeEvent, QTextDocument
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QListWidget,
    QSizePolicy,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from app.guide.blocks import Chapter, html_of
from app.guide.chapters import chapters
from app.guide.figures import WIDTH, figure
from app.look import look
from app.look.space import GROUP, MARGIN
from app.look.type import FIRST, SECOND
from app.widgets.buttons import EdgeButton
from app.widgets.focus import FocusRing
from app.widgets.screens import open_large
from core.i18n import translate
from core.reading.wording import Wording

_LEAST = 760
_SIDE, _RIGHT, _TOP = 44, 16, 36
"""Paper left of the text, right of it at least, and above it."""


class GuideWindow(QWidget):
    """Shows the chapters; Escape closes it, and it can be opened at any of them.

    Signals
    -------
    closed()
    """

    closed = Signal()

    def __init__(self, wording: Wording, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(translate("guide", "Guide"))
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._wording = wording
        self._chapters = chapters()
        self._bar = QWidget(self)
        self._bar.setProperty("ground", "bar")
        self._bar.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        title = QLabel(translate("guide", "Guide"), self._bar)
        title.setProperty("role", "heading")
        self.list = QListWidget(self._bar)
        self.list.setProperty("role", "chapters")
        self.list.setAccessibleName(translate("guide", "Chapters"))
        self.list.addItems([chapter.title for chapter in self._chapters])
        self.list.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.page = _Page(self)
        self.page.setOpenLinks(False)
        self.page.anchorClicked.connect(self._follow)
        self.page.setAccessibleName(translate("guide", "Chapter"))
        self.close_button = EdgeButton(translate("guide", "Close"), "", self._bar)
        self.close_button.clicked.connect(self.close)
        self.list.currentRowChanged.connect(self._show)
        self._left = QVBoxLayout(self._bar)
        self._left.setContentsMargins(0, MARGIN, 0, MARGIN)
        self._left.setSpacing(GROUP)
        inset = QHBoxLayout()
        inset.setContentsMargins(MARGIN, 0, MARGIN, 0)
        inset.addWidget(title)
        self._left.addLayout(inset)
        self._left.addWidget(self.list, 1)
        foot = QHBoxLayout()
        foot.setContentsMargins(MARGIN, 0, MARGIN, 0)
        foot.addWidget(self.close_button)
        foot.addStretch(1)
        self._left.addLayout(foot)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._bar)
        row.addWidget(self.page, 1)
        self._fit()
        self.setMinimumWidth(_LEAST)
        self.list.setCurrentRow(0)
        self._ring = FocusRing(self)
        open_large(self)

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(1040), look().type.grow(720))

    def open_at(self, key: str) -> None:
        """Show a chapter by its key, and the window."""
        keys = [chapter.key for chapter in self._chapters]
        self._fit()
        self.list.setCurrentRow(keys.index(key))
        self.show()
        self.activateWindow()
        self.list.setFocus()

    @property
    def chapter(self) -> Chapter:
        """The chapter that is shown."""
        return self._chapters[self.list.currentRow()]

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_ring"):
            self._fit()
            self._show()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()
        self._show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        self._ring.stop()
        super().closeEvent(event)
        self.closed.emit()

    def _follow(self, address: QUrl) -> None:
        """A link leads to another chapter."""
        if address.scheme() == "chapter":
            keys = [chapter.key for chapter in self._chapters]
            self.list.setCurrentRow(keys.index(address.path()))

    def _fit(self) -> None:
        widest = self.list.sizeHintForColumn(0)
        self.list.setFixedWidth(max(widest + look().type.grow(40), look().type.grow(210)))

    def _show(self) -> None:
        scale, theme = look().type, look().theme
        for row in range(self.list.count()):
            chosen = row == self.list.currentRow()
            self.list.item(row).setFont(scale.font("control", FIRST if chosen else SECOND))
        document = self.page.document()
        document.setDefaultFont(scale.font("control"))
        first = self.list.currentRow() == 0
        title, gap = scale.px("aloud" if first else "heading"), scale.grow(8)
        document.setDefaultStyleSheet(
            f"h1 {{ margin-bottom: {2 * gap}px; }}"
            f"h2 {{ margin-top: {3 * gap}px; margin-bottom: {gap}px; }}"
            f".title {{ font-size: {title}px; font-weight: 700; }}"
            f".heading {{ font-size: {scale.px('label')}px; font-weight: 700; }}"
            f"table {{ margin-top: {gap}px; margin-bottom: {2 * gap}px; }}"
            f"p, li, td {{ color: {theme.ink}; line-height: 130%; }}"
            f"p, ul {{ margin-top: 0; margin-bottom: {round(1.5 * gap)}px; }}"
            f"li {{ margin-bottom: {gap}px; }}"
            f"ul {{ -qt-list-indent: 0; margin-left: {2 * gap}px; }}"
            f"a {{ color: {theme.ink}; }}"
            f".lead {{ font-size: {scale.px('label')}px; margin-bottom: {3 * gap}px; }}"
            f".figure {{ margin-top: {gap}px; margin-bottom: {gap}px; line-height: 100%; }}"
            f".caption {{ color: {theme.second};"
            f" margin-bottom: {3 * gap}px; }}"
            f".term {{ font-weight: 600; white-space: nowrap; padding-right: {scale.grow(20)}px; }}"
            f".number {{ font-weight: 700; padding-right: {gap}px; }}"
        )
        margin, room = scale.grow(_SIDE), self._room()
        self.page.draw = lambda name: figure(name, self._wording, room, self.devicePixelRatioF())
        self.page.setHtml(html_of(self.chapter))
        frame = document.rootFrame().frameFormat()
        frame.setLeftMargin(margin)
        frame.setRightMargin(max(self._paper() - margin - room, scale.grow(_RIGHT)))
        frame.setTopMargin(scale.grow(_TOP))
        frame.setBottomMargin(scale.grow(_TOP))
        document.rootFrame().setFrameFormat(frame)

    def _paper(self) -> int:
        """Width of the page without its scroll bar, whether it shows or not."""
        return self.page.width() - self.page.verticalScrollBar().sizeHint().width()

    def _room(self) -> int:
        """How wide a line is: no wider than is read with ease."""
        scale = look().type
        beside = self._paper() - scale.grow(_SIDE) - scale.grow(_RIGHT)
        return max(min(beside, scale.grow(WIDTH)), 240)


class _Page(QTextBrowser):
    """A text browser whose pictures are drawn, never read from a file or the network."""

    draw: Callable[[str], QImage] | None = None

    def loadResource(self, kind: int, name: QUrl | str) -> object:
        image = kind == QTextDocument.ResourceType.ImageResource.value
        url = QUrl(name)
        if image and url.scheme() == "figure" and self.draw is not None:
            return self.draw(url.path())
        return None
