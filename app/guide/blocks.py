"""What a chapter of the guide is made of, and its HTML."""

from __future__ import annotations

from dataclasses import dataclass
from html import escape


@dataclass(frozen=True)
class Text:
    """A paragraph."""

    text: str


@dataclass(frozen=True)
class Lead:
    """The first words of the guide, larger than a paragraph."""

    text: str


@dataclass(frozen=True)
class Steps:
    """Numbered steps.

    Attributes
    ----------
    texts : tuple of str
        Words before a colon that are few are set bold: they name what the step is about.
    chapters : tuple of str
        For each text the key of the chapter its first words lead to; "" leads nowhere.
    """

    texts: tuple[str, ...]
    chapters: tuple[str, ...] = ()


@dataclass(frozen=True)
class Points:
    """A list without numbers."""

    texts: tuple[str, ...]


@dataclass(frozen=True)
class Terms:
    """Words or keys at the left, what they mean at the right."""

    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Heading:
    """A heading within a chapter."""

    text: str


@dataclass(frozen=True)
class Figure:
    """A drawing, by its name in `app.guide.figures`, with the words that go with it."""

    name: str
    caption: str


Block = Text | Lead | Steps | Points | Terms | Heading | Figure


@dataclass(frozen=True)
class Chapter:
    """One chapter.

    Attributes
    ----------
    key : str
        Its name in code and in tests.
    title : str
    blocks : tuple of Block
    """

    key: str
    title: str
    blocks: tuple[Block, ...]


def html_of(chapter: Chapter) -> str:
    """The chapter for a QTextDocument; figures are images named "figure:NAME"."""
    # Qt has sizes of its own for headings: only a span's are taken as they are given.
    parts = [f'<h1><span class="title">{escape(chapter.title)}</span></h1>']
    parts += [_html(block) for block in chapter.blocks]
    return "\n".join(parts)


def _html(block: Block) -> str:
    if isinstance(block, Text):
        return f"<p>{escape(block.text)}</p>"
    if isinstance(block, Heading):
        return f'<h2><span class="heading">{escape(block.text)}</span></h2>'
    if isinstance(block, Lead):
        return f'<p class="lead">{escape(block.text)}</p>'
    if isinstance(block, Steps):
        return _steps(block)
    if isinstance(block, Points):
        return f"<ul>{''.join(f'<li>{_named(text, _POINT)}</li>' for text in block.texts)}</ul>"
    if isinstance(block, Terms):
        rows = "".join(
            f'<tr><td class="term">{escape(term)}</td><td>{escape(meaning)}</td></tr>'
            for term, meaning in block.rows
        )
        return f'<table class="terms" cellspacing="0" cellpadding="6">{rows}</table>'
    return (
        f'<p class="figure"><img src="figure:{escape(block.name)}"></p>'
        f'<p class="caption">{escape(block.caption)}</p>'
    )


# What a step or a point may call itself by, in words.
_STEP, _POINT = 3, 2


def _named(text: str, most: int, chapter: str = "") -> str:
    """A text with the few words before its colon bold, or leading to a chapter."""
    name, colon, rest = text.partition(": ")
    if not colon or len(name.split()) > most:
        return escape(text)
    words = f"<b>{escape(name)}</b>"
    if chapter:
        words = f'<a href="chapter:{escape(chapter)}">{words}</a>'
    return f"{words}: {escape(rest)}"


def _steps(block: Steps) -> str:
    """Numbers in a column of their own: a list's would hang outside the text."""
    chapters = block.chapters or ("",) * len(block.texts)
    rows = "".join(
        f'<tr><td class="number">{number}</td><td>{_named(text, _STEP, chapter)}</td></tr>'
        for number, (text, chapter) in enumerate(zip(block.texts, chapters, strict=True), 1)
    )
    return f'<table class="steps" cellspacing="0" cellpadding="5">{rows}</table>'
