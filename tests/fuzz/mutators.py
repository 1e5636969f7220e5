"""Ways to damage a file, each decided by the generator alone: a seed gives the same again."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable
from typing import Any

import numpy as np

Rng = np.random.Generator
Mutator = Callable[[bytes, Rng], bytes]

_EDGES = (0, 1, 0x7F, 0x80, 0xFF, 0x7FFF, 0xFFFF, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFF)
_HEAD = 700
"""Most of what a decoder believes stands in the first bytes."""


def flip(data: bytes, rng: Rng) -> bytes:
    """Single bits, anywhere."""
    hurt = bytearray(data)
    for at in rng.integers(0, len(hurt), rng.integers(1, 20)):
        hurt[at] ^= 1 << int(rng.integers(8))
    return bytes(hurt)


def head(data: bytes, rng: Rng) -> bytes:
    """Bytes of the head."""
    hurt = bytearray(data)
    for at in rng.integers(0, min(len(hurt), _HEAD), rng.integers(1, 8)):
        hurt[at] = int(rng.integers(256))
    return bytes(hurt)


def number(data: bytes, rng: Rng) -> bytes:
    """A number of the head at the edge of its range, in either order of bytes."""
    hurt = bytearray(data)
    size = int(rng.choice([1, 2, 4]))
    at = int(rng.integers(0, max(1, min(len(hurt), _HEAD) - size)))
    value = int(rng.choice(_EDGES)) & ((1 << 8 * size) - 1)
    hurt[at : at + size] = value.to_bytes(size, "big" if rng.integers(2) else "little")
    return bytes(hurt)


def cut(data: bytes, rng: Rng) -> bytes:
    """The end is missing."""
    return data[: int(rng.integers(len(data)))]


def hole(data: bytes, rng: Rng) -> bytes:
    """A stretch is missing."""
    a, b = sorted(rng.integers(0, len(data), 2).tolist())
    return data[:a] + data[b:]


def zeros(data: bytes, rng: Rng) -> bytes:
    """A stretch is blank, as a disk that gave up leaves it."""
    a = int(rng.integers(len(data)))
    b = min(len(data), a + int(rng.integers(1, 600)))
    return data[:a] + bytes(b - a) + data[b:]


def repeat(data: bytes, rng: Rng) -> bytes:
    """A stretch comes several times."""
    a = int(rng.integers(len(data)))
    part = data[a : a + int(rng.integers(1, 200))]
    return data[:a] + part * int(rng.integers(2, 60)) + data[a:]


def turn_round(data: bytes, rng: Rng) -> bytes:
    """A stretch stands backwards."""
    a, b = sorted(rng.integers(0, len(data), 2).tolist())
    return data[:a] + data[a:b][::-1] + data[b:]


def touch(data: bytes, rng: Rng) -> bytes:
    """One bit."""
    hurt = bytearray(data)
    hurt[int(rng.integers(len(hurt)))] ^= 1 << int(rng.integers(8))
    return bytes(hurt)


MUTATORS: tuple[Mutator, ...] = (touch, flip, head, number, cut, hole, zeros, repeat, turn_round)


def damaged(data: bytes, rng: Rng, others: tuple[bytes, ...] = ()) -> bytes:
    """One to three damages; now and then a stretch of another file is put in."""
    for _ in range(int(rng.integers(1, 4))):
        if not data:
            break
        if others and rng.integers(12) == 0:
            other = others[int(rng.integers(len(others)))]
            a, b = int(rng.integers(len(data))), int(rng.integers(len(other)))
            data = data[:a] + other[b : b + int(rng.integers(1, 400))] + data[a:]
        else:
            data = MUTATORS[int(rng.integers(len(MUTATORS)))](data, rng)
    return data


_STRANGE: tuple[object, ...] = (
    *(None, True, 0, -1, 1, 11, 2**31, 2**63, 1e308, -1e308, 5e-324, 0.5, float("nan")),
    *(float("inf"), "", "x", "x" * 9000, "\ud83d", "\x1b[31m", "a\0b", "../x", "ultramarine"),
    *([], [[]], {}, {"a": 1}, [0.1] * 40, ["ultramarine"] * 3, [None, None]),
)


def strange_value(text: bytes, rng: Rng) -> bytes:
    """JSON with one value, or one name, put in another's place, dropped or doubled."""
    value = json.loads(text)
    places: list[tuple[Any, Any]] = []
    _places(value, places)
    if not places:
        return text
    where, key = places[int(rng.integers(len(places)))]
    strange = _STRANGE[int(rng.integers(len(_STRANGE)))]
    if rng.integers(6) == 0 and isinstance(where, dict):
        where[f"{key} "] = where.pop(key)
    elif rng.integers(6) == 0:
        del where[key]
    elif rng.integers(40) == 0:
        for _ in range(int(rng.integers(10, 3000))):
            strange = [strange]
        where[key] = strange
    else:
        where[key] = strange
    return _dumped(value)


def _dumped(value: object) -> bytes:
    limit = sys.getrecursionlimit()
    sys.setrecursionlimit(20_000)
    try:
        return json.dumps(value).encode()
    finally:
        sys.setrecursionlimit(limit)


def _places(value: Any, found: list[tuple[Any, Any]]) -> None:
    keys = list(value) if isinstance(value, dict) else range(len(value))
    for key in keys:
        found.append((value, key))
        if isinstance(value[key], dict | list):
            _places(value[key], found)
