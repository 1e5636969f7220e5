"""Texts that are remembered follow the language."""

from __future__ import annotations

import pytest

from core import i18n


@pytest.fixture
def english_again():
    yield
    i18n.set_catalogue(None)


def test_a_remembered_text_is_made_once_and_anew_in_another_language(english_again):
    made = []

    @i18n.remembered(8)
    def greeting(name: str) -> str:
        made.append(name)
        return i18n.translate("test", "blue")

    assert (greeting("A"), greeting("A")) == ("blue", "blue")
    assert made == ["A"]
    i18n.set_catalogue(lambda context, text: text.upper())
    assert greeting("A") == "BLUE"
    i18n.set_catalogue(None)
    assert greeting("A") == "blue"
