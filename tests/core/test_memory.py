"""The one memory of results."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

from core.memory import Memory


def test_what_was_asked_for_longest_ago_goes_first() -> None:
    memory: Memory[str] = Memory(2)
    memory.put_all([("a", "A"), ("b", "B")])
    assert memory.get("a") == "A"
    assert memory.put("c", "C") == "C"
    assert [memory.get(key) for key in "abc"] == ["A", None, "C"]
    assert len(memory) == 2


def test_putting_again_counts_as_asking() -> None:
    memory: Memory[str] = Memory(2)
    memory.put_all([("a", "A"), ("b", "B"), ("a", "new"), ("c", "C")])
    assert [memory.get(key) for key in "abc"] == ["new", None, "C"]


def test_a_result_is_made_once() -> None:
    memory: Memory[int] = Memory(4)
    made = []

    def make() -> int:
        made.append(1)
        return 0  # what is false is a result too

    assert [memory.either("key", make) for _ in range(3)] == [0, 0, 0]
    assert len(made) == 1
    memory.forget()
    assert memory.get("key") is None


def test_workers_may_share_it() -> None:
    memory: Memory[int] = Memory(50)

    def work(start: int) -> bool:
        for number in range(start, start + 2000):
            memory.put(number % 200, number % 200)
            found = memory.get((number * 7) % 200)
            if found is not None and found != (number * 7) % 200:
                return False
        return True

    with ThreadPoolExecutor(4) as pool:
        assert all(pool.map(work, range(4)))
    assert len(memory) == 50
