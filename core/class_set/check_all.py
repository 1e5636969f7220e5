"""Checking many pictures through any executor of `concurrent.futures`.

In order, in a pool of processes, or through an existing scheduler whose client gives such an
executor: the outcomes are the same. Nothing of our own is distributed.
"""

from __future__ import annotations

import logging
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, wait

from core.class_set.check_one import Job, Outcome, check_one, failed
from core.errors import Cancelled
from core.progress import ShouldStop
from core.sheet.match.reference import Reference

logger = logging.getLogger(__name__)

AHEAD = 4
"""Jobs handed to the executor at a time: enough to keep some workers busy, few to take back."""

_ASKED_EVERY = 0.1  # seconds: how soon a stop is noticed while workers work


def check_all(
    jobs: Iterable[Job],
    reference: Reference,
    executor: Executor | None = None,
    *,
    renew: Callable[[], Executor] | None = None,
    ahead: int = AHEAD,
    should_stop: ShouldStop | None = None,
) -> Iterator[Outcome]:
    """Check every picture; outcomes come as they are ready, in any order, one for each job.

    Parameters
    ----------
    jobs : iterable of Job
        Asked for the next one only when there is room for it.
    reference : Reference
    executor : Executor, optional
        Otherwise they are checked here, in order.
    renew : callable, optional
        Gives a fresh executor when a worker died and took the pool with it. What was under way
        is tried once more, alone; a picture that kills its worker again gets a sentence.
    ahead : int
        How many may be under way.
    should_stop : callable, optional
        Asked often. Jobs that wait are taken back; those that run end by themselves.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    BrokenExecutor
        A worker died and there is no `renew`.
    """
    if executor is None:
        for job in jobs:
            _refuse_stopped(should_stop)
            yield check_one(job, reference)
        return
    waiting = iter(jobs)
    under_way: dict[Future[Outcome], Job] = {}
    again: deque[Job] = deque()
    try:
        while True:
            _refuse_stopped(should_stop)
            broken = _fill(waiting, under_way, again, executor, reference, ahead)
            if not under_way and not again:
                return
            for future in _done(under_way) if under_way else ():
                job = under_way.pop(future)
                try:
                    yield future.result()
                except BrokenExecutor as error:
                    broken = error
                    again.append(job)
                except Exception:  # raised by the scheduler itself, or a worker lost for good
                    logger.exception("the check of %s was lost", job.digest)
                    again.append(job)
            if broken is not None:
                again.extend(under_way.values())
                under_way.clear()
                if renew is None:
                    raise broken
                executor = renew()
            while again and not under_way:
                outcome, executor = _alone(again.popleft(), reference, executor, renew, should_stop)
                yield outcome
    finally:
        for future in under_way:
            future.cancel()


def _fill(
    waiting: Iterator[Job],
    under_way: dict[Future[Outcome], Job],
    again: deque[Job],
    executor: Executor,
    reference: Reference,
    ahead: int,
) -> BrokenExecutor | None:
    """Hand on jobs while there is room; gives the error of an executor that takes no more."""
    while len(under_way) < ahead and not again:
        job = next(waiting, None)
        if job is None:
            return None
        try:
            under_way[executor.submit(check_one, job, reference)] = job
        except BrokenExecutor as error:
            again.append(job)
            return error
    return None


def _done(under_way: dict[Future[Outcome], Job]) -> set[Future[Outcome]]:
    return wait(under_way, timeout=_ASKED_EVERY, return_when=FIRST_COMPLETED).done


def _alone(
    job: Job,
    reference: Reference,
    executor: Executor,
    renew: Callable[[], Executor] | None,
    should_stop: ShouldStop | None,
) -> tuple[Outcome, Executor]:
    """Try a job once more with nothing else under way, so that only it can be to blame."""
    try:
        future = executor.submit(check_one, job, reference)
        while not wait([future], timeout=_ASKED_EVERY).done:
            if should_stop is not None and should_stop():
                future.cancel()
                raise Cancelled
        return future.result(), executor
    except BrokenExecutor:
        if renew is None:
            raise
        executor = renew()
    except Cancelled:
        raise
    except Exception:
        logger.exception("%s could not be checked, twice", job.digest)
    return Outcome(job.key, job.digest, sentence=failed()), executor


def _refuse_stopped(should_stop: ShouldStop | None) -> None:
    if should_stop is not None and should_stop():
        raise Cancelled
