"""A percentage is written one way, wherever it stands."""

from __future__ import annotations

import ast
import doctest
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path
from types import SimpleNamespace

import pytest

from core.reading import percent
from core.sheet.findings.advice_paint import _several_lines
from core.sheet.result import LineCheck

ROOT = Path(__file__).parents[3]
STYLE = re.compile(r"line-height: \d+%")


def texts(path: Path) -> Iterator[str]:
    """Every string of a module that is no docstring."""
    source = path.read_text(encoding="utf-8")
    lines, tree = source.splitlines(), ast.parse(source)
    lone = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):
        whole = isinstance(node, ast.Constant) and isinstance(node.value, str)
        if (whole or isinstance(node, ast.JoinedStr)) and id(node) not in lone:
            # Cutting a text out of its module takes a while: only where it may be wanted.
            if not any("%" in line for line in lines[node.lineno - 1 : node.end_lineno]):
                continue
            yield ast.get_source_segment(source, node) or ""


def test_examples():
    assert doctest.testmod(percent).failed == 0


@pytest.mark.parametrize("package", ["core", "app", "sample_scenes"])
def test_no_text_writes_a_percentage_by_itself(package):
    found = [
        (path.name, text)
        for path in sorted((ROOT / package).rglob("*.py"))
        if path != ROOT / "core" / "reading" / "percent.py"
        for text in texts(path)
        if re.search(r"[\d}]\s?%|\.\d%\}", STYLE.sub("", text))
    ]
    assert not found


def test_a_translation_writes_none_either():
    tree = ET.parse(ROOT / "app" / "translations" / "gradewash_es.ts")
    with_sign = [
        (message.findtext("source"), message.findtext("translation"))
        for message in tree.iter("message")
        if "%" in (message.findtext("translation") or "")
    ]
    assert with_sign == [("{number}%", "{number}\N{NO-BREAK SPACE}%")]


@pytest.mark.parametrize(
    ("shifts", "says"),
    [
        ((-6.2, -5.9), "Bands A and B end too high, by 6% each."),
        ((-6.2, -9.0), "Bands A and B end too high, by 6% and 9%."),
        ((4.1, 4.0), "Bands A and B end too low, by 4% each."),
    ],
)
def test_equal_shifts_are_said_once(shifts, says):
    lines = [
        LineCheck(letter, 0.3, 0.3 + shift / 100, shift, "off")
        for letter, shift in zip("AB", shifts, strict=True)
    ]
    of_no_size = SimpleNamespace(height_mm=None, planned=None)
    assert _several_lines(of_no_size, lines, shifts[0] < 0).startswith(says)
