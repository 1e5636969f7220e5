"""The class view as the class sees it: what is drawn, when, and how large."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise, product
from math import hypot

import pytest
from class_tools import LEAST_TEXT, SCREENS, SKY, readings_of, texts_of
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtTest import QTest

from app.classview import content
from app.classview.keys import COMMANDS, key_list
from app.drawing.classview import layout as layouts
from app.drawing.classview.lines import room_for
from app.drawing.classview.names import WedgeName, name_places
from app.guide.blocks import Terms
from app.guide.keys import keys as guide_keys
from core.lesson.lesson import QUESTIONS
from core.reading.reading import SecondColour
from core.reading.wheel import FAMILIES
from core.reading.wording import Wording
from core.words import family_name


@pytest.mark.parametrize(("size", "shape"), list(product(SCREENS, ((400, 600), (600, 400)))))
def test_all_text_is_four_percent_and_on_the_screen(make_view, drawn, size, shape):
    view = make_view(size=size, shape=shape)
    for _ in range(len(QUESTIONS) + 1):
        for text, height, left, right, y in texts_of(view, drawn):
            assert height > LEAST_TEXT * size[1] - 1, text
            assert left >= 0, text
            assert right <= size[0], text
            assert height / 2 <= y <= size[1] - height / 2, text
        view.run("answer")
    for command in ("tally", "keys"):
        view.run(command)
        for text, height, left, right, _ in texts_of(view, drawn):
            assert height > LEAST_TEXT * size[1] - 1, text
            assert left >= 0, text
            assert right <= size[0], text


@pytest.mark.parametrize("size", SCREENS)
def test_a_second_colour_has_a_question_and_a_mark_of_its_own(make_view, drawn, size):
    view = make_view(size=size)
    first, *others = readings_of(SKY)
    second = SecondColour(others[-1].colour, 0.3, soft=True)
    view.show_readings((replace(first, second=second), *others), Wording())
    asked = "There is a second colour: what is it?"
    for shown in range(len(view.lesson.questions) + 1):
        drawn_now = texts_of(view, drawn)
        words = above_the_strip(view, drawn_now)
        assert all(height > LEAST_TEXT * size[1] - 1 for _, height, *_ in drawn_now)
        assert all(left >= 0 and right <= size[0] for _, _, left, right, _ in drawn_now)
        # Beside the photo, on the wheel and the ladder; and once more on both for the second.
        assert words.count("A") == 1 + (shown > 0) + (shown > 2) + 2 * (shown > 4)
        view.run("answer")
    assert asked in view.accessibleName()
    view.run("next band")
    assert asked not in view.accessibleName()
    assert len(view.lesson.questions) == len(QUESTIONS)


def above_the_strip(view, texts):
    """The words on wall and paper: the strip below names the bands in laying order."""
    foot = view._layout().strip.top()
    return [text for text, _, _, _, y in texts if y < foot]


def test_nothing_of_an_answer_is_told_early(make_view, drawn):
    view = make_view()
    known = content.answers(view.lesson, view.reading, Wording(), view._plan)
    answers = [known[question].text for question in QUESTIONS]
    for shown in range(len(QUESTIONS) + 1):
        words = above_the_strip(view, texts_of(view, drawn))
        seen = [answer in words for answer in answers]
        assert seen == [number < shown for number in range(len(QUESTIONS))]
        # The letter stands beside the photo; on the wheel and the ladder with their answers.
        assert words.count("A") == 1 + (shown > 0) + (shown > 2)
        for number, answer in enumerate(answers):
            assert (f" {answer}" in view.accessibleName().split("?", number + 1)[-1]) == (
                number < shown
            )
        view.run("answer")


def test_keys_lead_through_the_lesson(make_view, qtbot):
    view = make_view()
    press = lambda key: QTest.keyClick(view, key)  # noqa: E731
    press(Qt.Key.Key_Space)
    assert view.lesson.shown == 1
    press(Qt.Key.Key_Backspace)
    assert view.lesson.shown == 0
    press(Qt.Key.Key_Down)
    assert view.reading.letter == "B"
    press(Qt.Key.Key_Up)
    assert view.reading.letter == "A"
    for _ in range(len(QUESTIONS) + 1):
        press(Qt.Key.Key_PageDown)
    assert view.reading.letter == "B"
    press(Qt.Key.Key_P)
    assert view.pacing.present == 0
    QTest.keyClick(view, Qt.Key.Key_P, Qt.KeyboardModifier.ShiftModifier)
    assert view.pacing.present is None
    with qtbot.waitSignal(view.left):
        press(Qt.Key.Key_Escape)


def test_hands_are_counted_by_keys(make_view, drawn):
    view = make_view()
    QTest.keyClick(view, Qt.Key.Key_T)
    QTest.keyClicks(view, "12")
    QTest.keyClick(view, Qt.Key.Key_Down)
    QTest.keyClicks(view, "7")
    QTest.keyClicks(view, "+")
    assert view.lesson.hands_for("hue", "yellow") == 12
    assert view.lesson.hands_for("hue", "yellow-orange") == 8
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert view.tally is None
    assert any("20 hands" in text for text, *_ in texts_of(view, drawn))
    # Against the answer: this band is blue, for which nobody put a hand up.
    view.run("answer")
    assert any("0 of 20 hands" in text for text, *_ in texts_of(view, drawn))
    QTest.keyClick(view, Qt.Key.Key_T)
    QTest.keyClick(view, Qt.Key.Key_Left)
    view.tally.choose(view.tally.keys.index(view.reading.colour.hue.family))
    view._set(view.tally.add(view.lesson, 9))
    QTest.keyClick(view, Qt.Key.Key_T)
    assert any("9 of 29 hands" in text for text, *_ in texts_of(view, drawn))


def test_the_mouse_reaches_the_same(make_view):
    view = make_view()
    view.show()
    layout = view._layout()
    QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=layout.paper.center().toPoint())
    assert view.lesson.shown == 1
    spot = layout.band(view._edges[3], view._edges[4]).center().toPoint()
    QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=spot)
    assert view.reading.letter == "D"
    QTest.mouseClick(
        view, Qt.MouseButton.LeftButton, pos=QPoint(int(0.04 * 768), int(layout.strip.center().y()))
    )
    assert view.pacing.present == 0


def test_the_drying_clock_runs_and_ends(make_view, qtbot, monkeypatch):
    view = make_view()
    view.pacing.minutes = 1
    view.pacing.go_to(len(view.pacing.steps) - 1)
    assert view.pacing.left_s in (59, 60)
    assert view.pacing.texts()[-1].endswith(("1:00", "0:59"))
    # A clock that began a minute ago.
    clock = type(
        "Clock",
        (),
        {"elapsed": staticmethod(lambda: 60_000), "isValid": staticmethod(lambda: True)},
    )
    monkeypatch.setattr(view.pacing, "_since", clock())
    with qtbot.waitSignal(view.pacing.dried, timeout=3000):
        pass
    assert view.pacing.left_s == 0
    assert "Feel it" in view.pacing.texts()[-1]
    view.pacing.stop()


def test_lines_changed_meanwhile_begin_anew(make_view):
    view = make_view()
    view.run("answer")
    view.show_readings(readings_of(SKY[:3]), Wording())
    assert view.lesson.bands == 3
    assert view.lesson.shown == 0
    view.show_readings((), Wording())
    assert view.lesson is None
    view.grab()


@pytest.mark.parametrize("count", [1, 2, 7, 20])
def test_letters_never_overlap(make_view, count):
    view = make_view(tuple(SKY[i % 5] for i in range(count)))
    layout = view._layout()
    for chosen in range(count):
        places = layouts.letter_places(layout, view._edges, chosen)
        assert chosen in [band for band, _ in places]
        ys = [place.y() for _, place in places]
        assert all(b - a >= 2 * layout.letter_radius for a, b in pairwise(ys))


@pytest.mark.parametrize(
    ("size", "shape", "count"), list(product(SCREENS, ((400, 600), (600, 400), (90, 900)), (1, 7)))
)
def test_the_lit_band_has_a_chip_of_a_fifth_of_the_height(make_view, size, shape, count):
    view = make_view(tuple(SKY[i % 5] for i in range(count)), size=size, shape=shape)
    layout = view._layout()
    assert layout.chip.height() >= 0.2 * size[1]
    assert layout.chip.width() >= 0.08 * size[1]
    assert layout.wall.contains(layout.chip)
    for other in (layout.sky, layout.ladder, layout.wheel, *layout.names):
        assert not layout.chip.intersects(other)
    assert not layout.wheel.intersects(layout.sky)
    # It is the band's own colour, as read.
    pixel = view.grab().toImage().pixelColor(layout.chip.center().toPoint())
    assert pixel.name() == view.reading.colour.hex


@pytest.mark.parametrize(("size", "shape"), list(product(SCREENS, ((400, 600), (600, 400)))))
def test_nothing_below_the_horizon_is_shown(make_view, size, shape):
    view = make_view(size=size, shape=shape)
    layout = view._layout()
    assert layout.band(view._edges[0], view._edges[-1]).bottom() == pytest.approx(
        layout.sky.bottom()
    )
    assert layout.wall.contains(layout.sky)


@pytest.mark.parametrize("size", [(1366, 768), (1920, 1080)])
def test_seven_letters_all_stand_beside_their_bands(make_view, size):
    view = make_view(tuple(SKY[i % 5] for i in range(7)), size=size)
    assert len(layouts.letter_places(view._layout(), view._edges, 0)) == 7


@pytest.mark.parametrize("size", SCREENS)
@pytest.mark.parametrize("wedge", range(12))
def test_the_answered_name_stands_outside_the_wheel(qapp, size, wedge):
    layout = layouts.class_layout(*size, 1.5, horizon=0.6, bands=7)
    name = WedgeName(wedge, family_name(FAMILIES[wedge]))
    ((_, tag, foot),) = name_places(layout.wheel, layout.names, layout.height, [name])
    assert not layout.chip.intersects(tag)
    assert not layout.ladder.intersects(tag)
    assert layout.wall.contains(tag)
    centre, radius = layout.wheel.center(), layout.wheel.width() / 2
    nearest = QPointF(
        min(max(centre.x(), tag.left()), tag.right()), min(max(centre.y(), tag.top()), tag.bottom())
    )
    assert dist(nearest, centre) >= radius
    assert 0.65 * radius < dist(foot, centre) < radius


def dist(one: QPointF, other: QPointF) -> float:
    return hypot(one.x() - other.x(), one.y() - other.y())


@pytest.mark.parametrize("size", SCREENS)
def test_long_mixes_stay_above_the_strip(make_view, drawn, size):
    view = make_view(((97, 113, 122), (120, 110, 100), (130, 110, 140)), size=size)
    first, *others = readings_of(((97, 113, 122), (120, 110, 100), (130, 110, 140)))
    second = SecondColour(others[-1].colour, 0.3, soft=True)
    for readings in ((first, *others), (replace(first, second=second), *others)):
        view.show_readings(readings, Wording())
        view.begin(0)
        for _ in range(len(view.lesson.questions) + 1):
            foot = view._layout().strip.top()
            for text, height, _, _, y in texts_of(view, drawn):
                assert y > foot or y + 0.4 * height <= foot, text
            view.run("answer")


def test_a_question_takes_the_room_others_can_spare():
    slots = [QRectF(0, 0, 10, 20), QRectF(0, 22, 10, 20), QRectF(0, 44, 10, 20)]
    assert room_for(slots, [20, 10, 5]) == tuple(slots)
    places = room_for(slots, [30, 10, 10])
    assert [place.height() for place in places] == [30, 15, 15]
    assert places[1].top() - places[0].bottom() == 2
    assert places[-1].bottom() == slots[-1].bottom()
    assert [place.height() for place in room_for(slots, [60, 15, 15])] == [30, 15, 15]


def test_every_key_is_in_the_list_and_in_the_guide(qapp):
    listed = " ".join(key for key, _ in key_list(can_speak=True))
    terms = [block for block in guide_keys().blocks if isinstance(block, Terms)]
    told = " ".join(key for key, _ in terms[-1].rows)
    # Keys that do the same as one that is told.
    same = ("Left", "Right", "Return", "Enter", "PageUp", "F5")
    shown = {"Plus": "+", "Minus": "-", "PageDown": "Page Down", "Escape": "Esc"}
    for key, command in COMMANDS.items():
        name = key.name.removeprefix("Key_")
        if name in same:
            continue
        words = shown.get(name, name)
        assert words in listed or command == "keys", command
        assert words in told or name in ("Up", "Down", "PageDown"), command
