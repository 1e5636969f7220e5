"""Every text a user reads is in the Spanish catalogue, translated, and compiled as it stands."""

from __future__ import annotations

import ast
import re
import string
import sys
import xml.etree.ElementTree as ET
from functools import cache
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator

from app.state.language import FOLDER

sys.path.insert(0, str(Path(__file__).parents[2] / "tools"))
import translations

SOURCE = FOLDER / "gradewash_es.ts"
COMPILED = FOLDER / "gradewash_es.qm"

Text = tuple[str, str]


@cache
def texts_of_the_sources() -> tuple[set[Text], list[str]]:
    """(context, text) of every call of `translate`, and the calls that cannot be collected."""
    found: set[Text] = set()
    odd: list[str] = []
    for name in translations.sources():
        path = translations.ROOT / name
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not (isinstance(call, ast.Call) and isinstance(call.func, ast.Name)):
                continue
            if call.func.id != "translate":
                continue
            values = [arg.value for arg in call.args if isinstance(arg, ast.Constant)]
            if call.keywords or len(call.args) != 2 or list(map(type, values)) != [str, str]:
                odd.append(f"{name}:{call.lineno} {ast.unparse(call)}")
            else:
                found.add((values[0], values[1]))
    return found, odd


def translated() -> dict[Text, str]:
    """The finished translations."""
    found = {}
    for context in ET.parse(SOURCE).iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            if translation is not None and translation.get("type") is None:
                key = context.findtext("name", ""), message.findtext("source", "")
                found[key] = translation.text or ""
    return found


@pytest.fixture(scope="module")
def spanish() -> dict[Text, str]:
    return translated()


def slots(text: str) -> list[tuple[str, str]]:
    """Names and formats of the values that go in; the same value may stand twice."""
    parsed = string.Formatter().parse(text)
    return sorted({(name, spec or "") for _, name, spec, _ in parsed if name is not None})


def test_every_text_can_be_collected():
    assert texts_of_the_sources()[1] == []


def test_every_text_is_translated_and_none_is_left_over(spanish):
    wanted, _ = texts_of_the_sources()
    assert len(wanted) > 1000
    assert sorted(wanted - set(spanish)) == []
    assert sorted(set(spanish) - wanted) == []
    assert [key for key, text in spanish.items() if not text] == []


def test_the_tool_finds_the_same(capsys):
    assert translations.check() == 0, capsys.readouterr().out


def test_values_keys_and_edges_are_kept(spanish):
    for (context, text), said in spanish.items():
        where = f"[{context}] {text!r}: {said!r}"
        assert slots(said) == slots(text), where
        assert len(re.findall("&(?=.)", said)) == len(re.findall("&(?=.)", text)), where
        assert text[:1].isspace() == said[:1].isspace(), where
        assert text[-1:].isspace() == said[-1:].isspace(), where
        assert text.count("\n") == said.count("\n"), where


def test_questions_are_opened_as_they_are_closed(spanish):
    for key, said in spanish.items():
        assert said.count("¿") == said.count("?"), (key, said)
        assert said.count("¡") == said.count("!"), (key, said)


def test_options_of_the_command_line_stay(spanish):
    for (_, text), said in spanish.items():
        option = r"(?<!\w)--?[a-z]+"
        assert sorted(re.findall(option, said)) == sorted(re.findall(option, text)), said


def test_what_is_compiled_is_what_is_written(spanish):
    translator = QTranslator()
    assert translator.load(str(COMPILED))
    stale = [key for key, said in spanish.items() if translator.translate(*key) != said]
    assert stale == []
