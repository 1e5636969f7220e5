"""Every window test has its own home, and ends with no work still running."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The offscreen platform says of every window that it cannot limit its size: no fault."""
    for item in items:
        if Path(__file__).parent in item.path.parents:
            item.add_marker(pytest.mark.qt_log_ignore("propagateSizeHints", extend=True))


@pytest.fixture(scope="session", autouse=True)
def work_once(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """What hundreds of tests open is worked out once."""
    from work_once import work_done_once

    ours = tmp_path_factory.getbasetemp()
    run = ours.parent if "PYTEST_XDIST_WORKER" in os.environ else ours
    with work_done_once(run / "shared_work"):
        yield


@pytest.fixture(autouse=True)
def own_home(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A fresh home and configuration folder, so that no test meets another's settings."""
    home = tmp_path_factory.mktemp("home")
    monkeypatch.setenv("HOME", str(home))
    monkeypatch.setenv("XDG_CONFIG_HOME", str(home / "config"))
    monkeypatch.setenv("XDG_DATA_HOME", str(home / "data"))
    monkeypatch.setenv("APPDATA", str(home / "roaming"))
    monkeypatch.setenv("LOCALAPPDATA", str(home / "local"))
    return home


@pytest.fixture(autouse=True)
def no_work_left(request: pytest.FixtureRequest) -> Iterator[None]:
    """After each test no task still runs."""
    yield
    from app.state.tasks import cancel_all, wait_for_tasks

    cancel_all()
    assert wait_for_tasks(), "a task still runs after the test"


@pytest.fixture(autouse=True)
def plain_look(request: pytest.FixtureRequest) -> None:
    """Tests that use Qt begin in the light theme at 100 %, with the program's own typeface."""
    if not {"qtbot", "qapp"} & set(request.fixturenames):
        return
    app = request.getfixturevalue("qapp")
    from app.fonts import load_fonts
    from app.look import Look, apply_look, look

    assert load_fonts()
    if look() != Look() or not app.styleSheet():
        apply_look(app, Look())


@pytest.fixture
def window(qtbot, tmp_path: Path) -> Iterator[object]:
    """The window, empty, with settings of its own."""
    from app.window.window import Window

    window = Window(tmp_path / "settings")
    qtbot.addWidget(window)
    window.resize(1366, 768)
    with qtbot.waitExposed(window):
        window.show()
    yield window
    window.document.mark_saved()  # or it would ask
    window.close()


@pytest.fixture
def sky_window(window, qtbot, tmp_path: Path):
    """The window with a small sky of four bands, read with care."""
    from window_tools import draw_sky, open_and_wait

    open_and_wait(window, draw_sky(tmp_path / "test_sky.png"), qtbot)
    return window


@pytest.fixture
def make_view(qtbot, plain_look):
    """Makes a class view of a sky in the colours given."""
    from class_tools import class_view

    def make(*args, **kwargs):
        view = class_view(*args, **kwargs)
        qtbot.addWidget(view)
        return view

    return make


@pytest.fixture
def drawn(monkeypatch):
    """Every text that is drawn, with its size and place, since the last `clear`."""
    from class_tools import record_texts

    return record_texts(monkeypatch)
