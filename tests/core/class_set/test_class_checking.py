"""Checks of a whole class: the same through any executor, kept, and none lost with a worker."""

from __future__ import annotations

import logging
import os
import signal
import struct
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from concurrent.futures import BrokenExecutor, Executor, Future, ThreadPoolExecutor
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from class_set_tools import TAG, made_folder, sheet_jpeg
from sheet_pictures import plain_reference

from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.check_all import check_all
from core.class_set.check_one import Job, Outcome, check_one
from core.class_set.checking import check_folder, exercise_reference, still_to_check
from core.class_set.grain import alike
from core.class_set.kept_checks import KeptChecks, check_from_json, found_checks
from core.class_set.placing import place_all
from core.class_set.pool import CheckingPool
from core.class_set.questions import sort_pictures
from core.class_set.ticket import Slot, Ticket
from core.class_set.tidying import tidy
from core.errors import Cancelled
from core.photo import open_photo
from core.sheet import Reference, check_sheet
from core.sheet.match.reference import slim_reference


def job(number: int, *, seed: int = 1) -> Job:
    data = sheet_jpeg(None, seed=seed)
    return Job(f"{number:064x}", f"{number:064x}", data, "IMG_1.jpg")


def by_key(outcomes: list[Outcome]) -> dict[str, Outcome]:
    return {outcome.key: outcome for outcome in outcomes}


@pytest.fixture(scope="module")
def reference() -> Reference:
    return slim_reference(plain_reference())


@pytest.fixture(scope="module")
def jobs() -> list[Job]:
    bad = Job("f" * 64, "f" * 64, b"no picture", "IMG_9.jpg")
    return [job(1), job(2, seed=2), bad]


@pytest.fixture(scope="module")
def in_order(jobs: list[Job], reference: Reference) -> dict[str, Outcome]:
    return by_key(list(check_all(jobs, reference)))


@pytest.fixture(scope="module")
def pool() -> Iterator[CheckingPool]:
    """Two workers for several tests; who kills one renews it."""
    with CheckingPool(2) as made:
        yield made


def test_a_kept_check_is_the_check_without_its_pixels(
    reference: Reference, in_order: dict[str, Outcome]
) -> None:
    one = job(1)
    check = check_sheet(open_photo(one.source, name=one.name), reference)
    kept = check_from_json(in_order[one.key].check)
    assert kept.picture.size == 0
    for name in ("corners", "bands", "lines", "band_checks", "scores", "findings", "notices"):
        assert getattr(kept, name) == getattr(check, name)


def test_the_reference_is_light_enough_to_send_along(reference: Reference) -> None:
    import pickle

    assert reference.picture.size == reference.mask.size == 0
    assert len(pickle.dumps(reference)) < 2_000_000


def test_a_bad_picture_becomes_a_sentence(in_order: dict[str, Outcome]) -> None:
    bad = in_order["f" * 64]
    assert bad.sentence.endswith(".")
    assert (bad.check, bad.jpeg) == (b"", b"")
    assert all(not one.sentence for key, one in in_order.items() if key != bad.key)


def test_a_sheet_that_lies_turned_is_turned(reference: Reference) -> None:
    photo = open_photo(sheet_jpeg(None))
    turned = np.ascontiguousarray(photo.pixels[::-1, ::-1])
    from class_set_tools import as_png

    one = replace(job(1), source=as_png(turned / 255))
    check = check_from_json(check_one(one, reference).check)
    assert (check.turned, check.better_turn) == (2, None)


def test_processes_give_the_same_outcomes(
    pool: CheckingPool, jobs: list[Job], reference: Reference, in_order: dict[str, Outcome]
) -> None:
    found = list(check_all(jobs, reference, pool.executor, renew=pool.renew))
    assert by_key(found) == in_order


@pytest.mark.filterwarnings("ignore")  # the scheduler's own
def test_a_scheduler_gives_the_same_outcomes(
    jobs: list[Job], reference: Reference, in_order: dict[str, Outcome]
) -> None:
    """The same jobs through dask.distributed (https://distributed.dask.org): nothing is ours."""
    distributed = pytest.importorskip("distributed")
    with (
        distributed.LocalCluster(
            n_workers=1, threads_per_worker=1, processes=True, dashboard_address=None
        ) as cluster,
        distributed.Client(cluster) as client,
    ):
        found = list(check_all(jobs, reference, client.get_executor()))
    assert by_key(found) == in_order


class Dying(Executor):
    """An executor whose worker dies on one job, and takes the rest with it."""

    def __init__(self, deadly: set[str]) -> None:
        self._deadly = deadly
        self.broken = False

    def submit(self, fn: Callable, /, *args: object, **kwargs: object) -> Future:
        future: Future = Future()
        if self.broken:
            raise BrokenExecutor("a worker died")
        one = args[0]
        assert isinstance(one, Job)
        if one.key in self._deadly:
            self.broken = True
            future.set_exception(BrokenExecutor("a worker died"))
        else:
            future.set_result(Outcome(one.key, one.digest))
        return future


def test_a_worker_that_dies_loses_no_sheet(reference: Reference) -> None:
    many = [Job(f"{k:064x}", f"{k:064x}", b"", "x.jpg") for k in range(12)]
    deadly = {many[5].key}
    made = []

    def renew() -> Executor:
        made.append(Dying(deadly))
        return made[-1]

    found = list(check_all(many, reference, Dying(deadly), renew=renew))
    assert sorted(one.key for one in found) == [one.key for one in many]
    assert [one.key for one in found if one.sentence] == sorted(deadly)
    assert len(made) == 2  # once after the death, once after its second


def test_without_renewal_a_dead_pool_is_an_error(reference: Reference) -> None:
    with pytest.raises(BrokenExecutor):
        list(check_all([Job("a", "a", b"", "x")], reference, Dying({"a"})))


def test_an_error_of_the_scheduler_itself_is_tried_once_more(
    reference: Reference, caplog: pytest.LogCaptureFixture
) -> None:
    class Odd(Executor):
        asked = 0

        def submit(self, fn: Callable, /, *args: object, **kwargs: object) -> Future:
            future: Future = Future()
            Odd.asked += 1
            if Odd.asked == 1:
                future.set_exception(RuntimeError("lost"))
            else:
                future.set_result(Outcome("a", "a"))
            return future

    with caplog.at_level(logging.CRITICAL):
        assert list(check_all([Job("a", "a", b"", "x")], reference, Odd())) == [Outcome("a", "a")]


def test_stop_is_noticed_while_workers_work(reference: Reference) -> None:
    import threading

    hold, one = threading.Event(), Job("a", "a", b"", "x.jpg")
    with ThreadPoolExecutor(1) as executor:
        try:
            executor.submit(hold.wait)  # nothing else can run
            stop = iter([False, False, False])
            outcomes = check_all([one], reference, executor, should_stop=lambda: next(stop, True))
            with pytest.raises(Cancelled):  # although the job never ends
                list(outcomes)
        finally:
            hold.set()


@pytest.mark.skipif(os.name == "nt", reason="kills as POSIX does")
def test_kill_of_a_worker_process_loses_no_sheet(
    pool: CheckingPool, reference: Reference, in_order: dict[str, Outcome], jobs: list[Job]
) -> None:
    killed = False
    found = []
    for outcome in check_all(jobs, reference, pool.executor, renew=pool.renew):
        found.append(outcome)
        if not killed:
            workers = list(pool.executor._processes)  # type: ignore[attr-defined]
            os.kill(workers[0], signal.SIGKILL)
            killed = True
    pool.renew()  # the kill may have come after the last job
    assert by_key(found) == in_order


def die_speaking() -> None:
    """In a worker: begin to hand over a result, and be killed."""
    frame = sys._getframe()
    while "result_queue" not in frame.f_locals:
        frame = frame.f_back
    half = struct.pack("!i", 100_000) + b"half a result"
    os.write(frame.f_locals["result_queue"]._writer.fileno(), half)
    os.kill(os.getpid(), signal.SIGKILL)


@pytest.mark.skipif(os.name == "nt", reason="kills as POSIX does")
def test_a_worker_killed_in_the_middle_of_a_word_hangs_nothing(pool: CheckingPool) -> None:
    with pytest.raises(BrokenExecutor):
        pool.executor.submit(die_speaking).result(timeout=60)
    assert pool.renew().submit(os.getpid).result(timeout=60) != os.getpid()


@pytest.mark.skipif(not Path("/proc/self").exists(), reason="looks for processes in /proc")
def test_workers_end_with_a_program_that_is_killed(tmp_path: Path) -> None:
    code = (
        "import os, signal\n"
        "from core.class_set.pool import CheckingPool\n"
        "if __name__ == '__main__':\n"
        "    pool = CheckingPool(2)\n"
        "    [pool.executor.submit(os.getpid).result() for _ in range(2)]\n"
        "    print(*pool.executor._processes, flush=True)\n"
        "    os.kill(os.getpid(), signal.SIGKILL)\n"
    )
    script = tmp_path / "killed.py"
    script.write_text(code)
    env = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[3])}
    done = subprocess.run(
        [sys.executable, script], capture_output=True, text=True, env=env, check=False, timeout=60
    )
    workers = [Path(f"/proc/{pid}") for pid in done.stdout.split()]
    assert workers
    for _ in range(100):
        if not any(worker.exists() for worker in workers):
            break
        time.sleep(0.1)
    assert not any(worker.exists() for worker in workers)


def test_checks_are_kept_found_again_and_follow_the_lines(tmp_path: Path) -> None:
    (tmp_path / "in").mkdir()
    for k, ticket in enumerate((Ticket(TAG, 1, "1"), Ticket(TAG, 1, "2"))):
        (tmp_path / "in" / f"IMG_{k}.jpg").write_bytes(sheet_jpeg(ticket, seed=k))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
        assert len(list(check_folder(folder))) == 2
        assert list(check_folder(folder)) == []
        found = found_checks(folder.path, folder.class_set)
        assert all(kept.check is not None for kept in found.values())
        kept = KeptChecks(folder.path)
        (key, *_) = {one.key for one in found.values()}
        assert (kept.jpeg(key) or b"").startswith(b"\xff\xd8")
        # Thrown away: made again. Other lines: not found any more.
        kept.picture(key).unlink()
        assert len(still_to_check(folder)) == 1
        moved = replace(folder.class_set.exercise.bands, lines=(0.3, 0.6))
        exercise = replace(folder.class_set.exercise, bands=moved)
        folder.save(edits.with_exercise(folder.class_set, exercise))
        assert len(still_to_check(folder)) == 2
        kept.keep_only(set())
        assert list((folder.path / "checks").iterdir()) == []


def test_the_same_sheet_twice_is_told_and_never_removed(tmp_path: Path) -> None:
    (tmp_path / "in").mkdir()
    pictures = [(Ticket(TAG, 1, "1"), 1), (Ticket(TAG, 2, "1"), 1), (Ticket(TAG, 3, "1"), 2)]
    for k, (ticket, seed) in enumerate(pictures):
        (tmp_path / "in" / f"IMG_{k}.jpg").write_bytes(sheet_jpeg(ticket, seed=seed))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
        list(check_folder(folder))
        found = sort_pictures(folder.class_set, found_checks(folder.path, folder.class_set))
    (question,) = found.questions
    assert (question.reason, question.place) == ("same sheet", Slot(2, 0))
    assert len(found.placement.places) == 3


def test_a_sheet_of_another_sky_is_asked_about(tmp_path: Path) -> None:
    from class_set_tools import as_png
    from sheet_pictures import sheet_picture
    from simulator.camera import encode

    other = ((0.05, 0.3, 0.05), (0.3, 0.05, 0.3), (0.02, 0.02, 0.02))
    file = tmp_path / "IMG_1.png"
    file.write_bytes(as_png(encode(sheet_picture(other))))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([file])))
        digest = folder.class_set.brought[0].digest
        list(check_folder(folder))
        checks = found_checks(folder.path, folder.class_set)
        assert "other sky" in {n.key for n in checks[digest].check.notices}
        named = replace(folder.class_set.brought[0], tickets=(Ticket(TAG, 1, "1"),))
        class_set = replace(folder.class_set, brought=(named,))
        (question,) = sort_pictures(class_set, checks).questions
    assert (question.reason, question.place) == ("other sky", Slot(1, 0))


def test_exercise_without_lines_is_said(tmp_path: Path) -> None:
    from core.errors import ClassSetError

    with made_folder(tmp_path) as folder:
        exercise = replace(folder.class_set.exercise, bands=None)
        with pytest.raises(ClassSetError, match="no lines"):
            exercise_reference(exercise, b"")


def test_grains_of_nothing_agree_with_nothing() -> None:
    assert alike(b"", b"") == 0.0


def test_tidy_keeps_the_painting_its_place_and_its_check(tmp_path: Path) -> None:
    (tmp_path / "in").mkdir()
    for k, ticket in enumerate((Ticket(TAG, 1, "1"), Ticket(TAG, 2, "1"), None)):
        (tmp_path / "in" / f"IMG_{k}.jpg").write_bytes(sheet_jpeg(ticket, seed=k))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
        folder.save(edits.lay_aside(folder.class_set, folder.class_set.brought[2].digest))
        list(check_folder(folder))
        before = found_checks(folder.path, folder.class_set)
        was = place_all(folder.class_set).places
        checks = {slot: before[place.digest].check for slot, place in was.items()}
        done = tidy(folder, before)
        assert (done.straightened, done.removed, done.left) == (2, 1, 0)
        after = found_checks(folder.path, folder.class_set)
        now = place_all(folder.class_set)
        assert now.asked == ()
        for slot, check in checks.items():
            digest = now.digest_at(slot)
            assert after[digest].check.findings == check.findings
            painting = open_photo(folder.read_picture(digest))
            assert painting.height < 800  # the photo was 960 high, the painting is 680 of it
        # Only two paintings and the exercise's photo are left, and only their checks.
        assert len(list((folder.path / "pictures").iterdir())) == 3
        assert len(list((folder.path / "checks").iterdir())) == 4
        assert still_to_check(folder) == ()
        assert tidy(folder, after).straightened == 0
