from __future__ import annotations

import gc
import threading
import time
import weakref

import pytest
import shiboken6
from PySide6.QtCore import QThread

from app.state.tasks import SHOW_PROGRESS_AFTER_MS, TELL_EACH_S, Latest, Task, wait_for_tasks
from core.errors import PhotoError
from core.progress import step


@pytest.fixture
def place(qapp) -> Latest:
    return Latest()


def test_result_arrives_in_the_gui_thread(qtbot) -> None:
    here, seen = QThread.currentThread(), []
    task = Task(lambda progress, should_stop: threading.get_ident())
    task.done.connect(lambda ident: seen.append((ident, QThread.currentThread())))
    with qtbot.waitSignal(task.done):
        task.start()
    assert seen[0][0] != threading.get_ident()
    assert seen[0][1] is here or seen[0][1] == here


def test_progress_is_relayed(qtbot) -> None:
    shares: list[float] = []

    def work(progress, should_stop):
        for share in (0.25, 0.5, 1.0):
            step(share, progress, should_stop)
            time.sleep(2 * TELL_EACH_S)

    task = Task(work)
    task.progressed.connect(shares.append)
    with qtbot.waitSignal(task.done):
        task.start()
    assert shares == [0.25, 0.5, 1.0]


def test_work_of_a_moment_does_not_flood_the_window(qtbot) -> None:
    """Nor do a hundred plans of some milliseconds, each from its own beginning to its end."""

    def work(progress, should_stop):
        began = time.monotonic()
        for number in range(2000):
            progress(number % 20 / 20)
        return time.monotonic() - began

    shares, took = [], []
    task = Task(work)
    task.progressed.connect(shares.append)
    task.done.connect(took.append)
    with qtbot.waitSignal(task.done):
        task.start()
    assert 1 <= len(shares) <= 1 + took[0] / TELL_EACH_S


def test_nothing_arrives_after_cancel(qtbot) -> None:
    arrived: list[object] = []
    task = Task(lambda progress, should_stop: progress(0.5) or "late")
    for signal in (task.done, task.progressed, task.failed):
        signal.connect(arrived.append)
    task.start()
    assert wait_for_tasks()  # the result is queued, the event loop has not run
    task.cancel()
    with qtbot.waitSignal(task.destroyed):
        pass
    assert arrived == []


def test_cancelled_work_stops(qtbot) -> None:
    begun = threading.Event()
    stopped = threading.Event()

    def work(progress, should_stop):
        begun.set()
        while not should_stop():
            stopped.wait(0.001)
        stopped.set()
        step(0.5, progress, should_stop)

    task = Task(work)
    task.start()
    assert begun.wait(5)
    task.cancel()
    assert stopped.wait(5)


def test_failure_is_handed_over(qtbot) -> None:
    def work(progress, should_stop):
        raise PhotoError("no picture")

    task = Task(work)
    with qtbot.waitSignal(task.failed) as failed:
        task.start()
    assert isinstance(failed.args[0], PhotoError)


def test_new_work_calls_off_the_old(qtbot, place: Latest) -> None:
    results: list[str] = []
    gate = threading.Event()
    place.run(lambda progress, should_stop: gate.wait(5) and "old", results.append)
    place.run(lambda progress, should_stop: "new", results.append)
    gate.set()
    qtbot.waitUntil(lambda: not place.running)
    assert wait_for_tasks()
    qtbot.waitUntil(lambda: results == ["new"])


def test_progress_shows_only_when_work_takes_long(qtbot, place: Latest) -> None:
    shares: list[float] = []
    place.busy.connect(shares.append)
    with qtbot.waitSignal(place.idle):
        place.run(lambda progress, should_stop: progress(0.5), lambda result: None)
    assert shares == []

    gate = threading.Event()

    def slow(progress, should_stop):
        progress(0.5)
        gate.wait(10)

    place.run(slow, lambda result: None)
    with qtbot.waitSignal(place.busy, timeout=SHOW_PROGRESS_AFTER_MS * 10):
        pass
    gate.set()
    with qtbot.waitSignal(place.idle):
        pass
    assert shares == [0.5]


def test_cancel_goes_idle(qtbot, place: Latest) -> None:
    gate = threading.Event()
    place.run(lambda progress, should_stop: gate.wait(5), lambda result: None)
    with qtbot.waitSignal(place.idle):
        place.cancel()
    gate.set()
    assert not place.running


def test_work_that_outlives_the_window_that_asked_is_dropped(qtbot) -> None:
    results: list[str] = []
    gate = threading.Event()
    place = Latest()
    place.run(lambda progress, should_stop: gate.wait(5), results.append)
    task = place._task
    shiboken6.delete(place)
    with qtbot.waitSignal(task.done):
        gate.set()
    assert results == []


def test_work_that_is_done_lets_go_of_what_it_held(qtbot):
    """A photo is held by its work; kept on, every photo opened would stay in memory."""

    class Heavy:
        pass

    heavy = Heavy()
    gone = weakref.ref(heavy)
    place, results = Latest(), []
    place.run(lambda progress, should_stop, held=heavy: 1, results.append)
    del heavy
    qtbot.waitUntil(lambda: results == [1])
    gc.collect()
    assert gone() is None


def test_work_that_has_ended_leaves_nothing_behind(qtbot) -> None:
    """A started QRunnable is kept by PySide6 for good: a long day would collect thousands."""

    class Payload:
        pass

    kept = []
    for _ in range(20):
        payload = Payload()
        kept.append(weakref.ref(payload))
        task = Task(lambda progress, should_stop, payload=payload: payload)
        with qtbot.waitSignal(task.done):
            task.start()
        runner = weakref.ref(task._runner)
        kept.append(runner)
        del task, payload
    qtbot.wait(20)
    gc.collect()
    assert sum(reference() is not None for reference in kept) <= 2  # the last may be on its way out
