"""Tables and sentences keep to the terminal; what goes elsewhere stays as it is."""

from __future__ import annotations

import sys

import pytest

from core.cli import COMMANDS, run
from core.cli.layout import fold, say, table

ROWS = (
    ("Band", "Hue", "Lower line"),
    ("A", "2 steps towards yellow-orange", "cannot tell"),
    ("B", "matches", "6% high"),
)


def test_a_table_is_as_wide_as_its_words():
    assert table(ROWS) == [
        "Band  Hue                            Lower line",
        "A     2 steps towards yellow-orange  cannot tell",
        "B     matches                        6% high",
    ]


def test_a_table_is_squeezed_where_it_is_widest():
    assert table(ROWS, 35) == [
        "Band  Hue               Lower line",
        "A     2 steps towards   cannot tell",
        "      yellow-orange",
        "B     matches           6% high",
    ]


@pytest.mark.parametrize("width", [35, 60, 79, 200])
def test_no_word_of_a_table_is_lost(width):
    lines = table(ROWS, width)
    assert sorted(" ".join(lines).split()) == sorted(" ".join(map(" ".join, ROWS)).split())
    assert all(len(line) <= width for line in lines)


def test_sentences_are_folded_under_their_first_word():
    text = "  10. Peel the tape away from the painting, slowly.\nA     matches  in place  6% high"
    assert fold(text, 30).split("\n") == [
        "  10. Peel the tape away from",
        "      the painting, slowly.",
        "A     matches  in place  6% high",
    ]


def test_a_file_gets_whole_sentences(capsys):
    say("word " * 40)
    assert capsys.readouterr().out.count("\n") == 1


def test_a_terminal_gets_folded_ones(capsys, monkeypatch):
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True)
    monkeypatch.setenv("COLUMNS", "60")
    say("word " * 40)
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) > 1
    assert all(len(line) <= 60 for line in lines)


def test_the_overview_says_what_each_command_does(capsys):
    assert run(["--help"], {"card": "app.cards.command"}) == 0
    out = capsys.readouterr().out
    for name in (*COMMANDS, "card"):
        line = next(line for line in out.splitlines() if line.startswith(f"  {name} "))
        assert len(line.split()) > 3
    assert max(map(len, out.splitlines())) <= 80


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("read",), "Missing: PHOTO|STUDY (see gradewash read --help)"),
        (("read", "a.jpg", "b.jpg"), "Not understood: b.jpg (see gradewash read --help)"),
        (("read", "a.jpg", "--bands"), "--bands needs a value after it"),
    ],
)
def test_what_the_parser_refuses_is_said_plainly(capsys, arguments, says):
    assert run([*arguments]) == 2
    assert says in capsys.readouterr().err
