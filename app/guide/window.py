"""The guide's window: chapters at the left, the chapter at the right. It stays beside the work."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QSize, Qt, QUrl, Signal
from PySide6.QtGui import QCloseEvent, QImage, QKeyEvent, QResizeEvent, QTextDocument
from PySide6.QtWidgets import (
    QHBoxLayout,
    QListWidget,
    QSizePolicy,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from app.guide.blocks import Chapter, html_of
from app.guide.chapters import chapters
from app.guide.figures import figure
from app.look import look
from app.look.space import GROUP, MARGIN
from app.widgets.buttons import EdgeButton
from app.widgets.focus import FocusRing
from core.i18n import translate
from core.reading.wording import Wording


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
        self.list = QListWidget(self)
        self.list.setAccessibleName(translate("guide", "Chapters"))
        self.list.addItems([chapter.title for chapter in self._chapters])
        self.list.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.page = _Page(self)
        self.page.setOpenLinks(False)
        self.page.setAccessibleName(translate("guide", "Chapter"))
        self.close_button = EdgeButton(translate("guide", "Close"), "", self)
        self.close_button.clicked.connect(self.close)
        self.list.currentRowChanged.connect(self._show)
        left = QVBoxLayout()
        left.setSpacing(GROUP)
        left.addWidget(self.list, 1)
        left.addWidget(self.close_button)
        row = QHBoxLayout(self)
        row.setContentsMargins(MARGIN, MARGIN, MARGIN, MARGIN)
        row.setSpacing(GROUP)
        row.addLayout(left)
        row.addWidget(self.page, 1)
        self._fit()
        self.list.setCurrentRow(0)
        self._ring = FocusRing(self)

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(980), look().type.grow(680))

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

    def _fit(self) -> None:
        widest = self.list.sizeHintForColumn(0)
        self.list.setFixedWidth(max(widest + look().type.grow(28), look().type.grow(190)))

    def _show(self) -> None:
        scale, theme = look().type, look().theme
        document = self.page.document()
        document.setDefaultFont(scale.font("control"))
        document.setDefaultStyleSheet(
            f"h1 {{ font-size: {scale.px('heading')}px; font-weight: 700; }}"
            f"h2 {{ font-size: {scale.px('label')}px; font-weight: 700; }}"
            f"p, li, td {{ color: {theme.ink}; line-height: 135%; }}"
            f".caption {{ color: {theme.second}; }}"
            ".term { font-weight: 600; white-space: nowrap; padding-right: 20px; }"
        )
        ratio = self.devicePixelRatioF()
        room = self.page.viewport().width() - look().type.grow(24)
        self.page.draw = lambda name: figure(name, self._wording, room, ratio)
        self.page.setHtml(html_of(self.chapter))


class _Page(QTextBrowser):
    """A text browser whose pictures are drawn, never read from a file or the network."""

    draw: Callable[[str], QImage] | None = None

    def loadResource(self, kind: int, name: QUrl | str) -> object:
        image = kind == QTextDocument.ResourceType.ImageResource.value
        url = QUrl(name)
        if image and url.scheme() == "figure" and self.draw is not None:
            return self.draw(url.path())
        return None
