from __future__ import annotations

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtTest import QTest
from shiboken6 import isValid

from app.guide.blocks import Figure, Terms, html_of
from app.guide.chapters import chapters
from app.guide.figures import WIDTH, figure
from app.guide.window import GuideWindow
from app.widgets.buttons import EdgeButton
from core.reading.wheel import FAMILIES
from core.reading.wording import Wording

CHAPTERS = chapters()


@pytest.fixture
def guide(qtbot, plain_look):
    window = GuideWindow(Wording())
    window.resize(980, 680)
    yield window
    if isValid(window):  # it deletes itself when it is closed
        window.close()


@pytest.mark.parametrize("chapter", CHAPTERS, ids=lambda chapter: chapter.key)
def test_every_chapter_shows_all_its_text(guide, chapter):
    guide.open_at(chapter.key)
    assert guide.chapter.key == chapter.key
    shown = guide.page.toPlainText()
    for block in chapter.blocks:
        for text in _texts(block):
            assert text in shown


def _texts(block):
    if isinstance(block, Terms):
        return [text for row in block.rows for text in row]
    if isinstance(block, Figure):
        return [block.caption]
    return [block.text] if hasattr(block, "text") else list(block.texts)


def test_figures_are_drawn(qapp, plain_look):
    names = {b.name for chapter in CHAPTERS for b in chapter.blocks if isinstance(b, Figure)}
    assert names == {"sky", "charts", "toning", "board", "scale", "viewfinder"}
    for name in names:
        image = figure(name, Wording())
        middle = image.height() // 2
        rows = (middle // 2, middle, middle + middle // 3)
        colours = {image.pixel(x, y) for x in range(0, image.width(), 7) for y in rows}
        assert len(colours) > 3
        assert image.width() == WIDTH


def test_a_narrow_window_draws_the_whole_figure_smaller(qapp, plain_look):
    for name in ("sky", "charts", "board", "viewfinder"):
        wide, narrow = figure(name, Wording()), figure(name, Wording(), WIDTH / 2)
        assert narrow.width() == WIDTH // 2
        assert abs(narrow.height() - wide.height() / 2) <= 1


@pytest.mark.parametrize("width", [760, 980, 1600])
def test_no_line_is_longer_than_is_read_with_ease(guide, width):
    """About 45 to 75 letters a line are read best (Bringhurst, The Elements of Typographic Style;
    from memory); ours may reach 95 in a narrow face."""
    guide.resize(width, 680)
    for chapter in CHAPTERS:
        guide.open_at(chapter.key)
        assert guide.page.horizontalScrollBar().maximum() == 0, chapter.key
        block = guide.page.document().begin()
        while block.isValid():
            layout = block.layout()
            for number in range(layout.lineCount()):
                assert layout.lineAt(number).textLength() <= 95
            block = block.next()


def test_the_first_page_leads_to_the_chapters(guide):
    guide.open_at("job")
    page = guide.page.toHtml()
    for key in ("read", "mix", "class view", "worksheet", "sheets"):
        assert f"chapter:{key}" in page or f"chapter:{key.replace(' ', '%20')}" in page
        guide.page.anchorClicked.emit(QUrl(f"chapter:{key}"))
        assert guide.chapter.key == key
        guide.open_at("job")
    guide.page.anchorClicked.emit(QUrl("file:///etc/hostname"))
    assert guide.chapter.key == "job"


def test_pictures_come_from_nowhere_else(guide):
    for address in ("file:///etc/hostname", "http://localhost/x.png", "x.png"):
        assert guide.page.loadResource(2, QUrl(address)) is None


def test_markup_in_a_text_is_text():
    from app.guide.blocks import Chapter, Text

    assert "&lt;b&gt;" in html_of(Chapter("x", "x", (Text("<b>"),)))


def test_the_glossary_has_the_trades_words():
    terms = next(chapter for chapter in CHAPTERS if chapter.key == "glossary").blocks[0].rows
    words = " ".join(term for term, _ in terms).lower()
    for word in ("hue", "value", "intensity", "complement", "wash", "bloom", "granulating"):
        assert word in words
    assert len(FAMILIES) == 12


def test_escape_closes(guide, qtbot):
    guide.open_at("keys")
    with qtbot.waitSignal(guide.closed):
        QTest.keyClick(guide, Qt.Key.Key_Escape)


def test_f1_opens_the_guide(window, qtbot):
    QTest.keyClick(window, Qt.Key.Key_F1)
    assert window.help.guide.chapter.key == "job"
    window.help.guide.close()
    window.help.show_chapter("keys")
    assert window.help.guide.chapter.key == "keys"
    window.help.guide.close()


def test_about_names_the_licence_and_leads_to_the_others(window, qtbot):
    from app.window.help_menu import show_about

    seen = []
    dialog = show_about(window, lambda: seen.append(True))
    button = next(b for b in dialog.findChildren(EdgeButton) if b.text() == "Licences")
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert seen == [True]


def test_the_guide_opens_as_large_as_the_screen_lets_it(qtbot, plain_look):
    """Qt alone would give it two thirds of the screen at most."""
    window = GuideWindow(Wording())  # it deletes itself when it is closed
    room = window.screen().availableSize()
    window.open_at("job")
    for wanted, found, there in (
        (window.sizeHint().width(), window.width(), room.width()),
        (window.sizeHint().height(), window.height(), room.height()),
    ):
        assert found >= min(wanted, 0.85 * there)
    window.close()
