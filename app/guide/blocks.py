"""What a chapter of the guide is made of, and its HTML."""

from __future__ import annotations

from dataclasses import dataclass
from html import escape


@dataclass(frozen=True)
class Text:
    """A paragraph."""

    text: str


@dataclass(frozen=True)
class Steps:
    """Numbered steps."""

    texts: tuple[str, ...]


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


Block = Text | Steps | Points | Terms | Heading | Figure


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
    parts = [f"<h1>{escape(chapter.title)}</h1>"]
    parts += [_html(block) for block in chapter.blocks]
    return "\n".join(parts)


def _html(block: Block) -> str:
    if isinstance(block, Text):
        return f"<p>{escape(block.text)}</p>"
    if isinstance(block, Heading):
        return f"<h2>{escape(block.text)}</h2>"
    if isinstance(block, Steps | Points):
        tag = "ol" if isinstance(block, Steps) else "ul"
        items = "".join(f"<li>{escape(text)}</li>" for text in block.texts)
        return f"<{tag}>{items}</{tag}>"
    if isinstance(block, Terms):
        rows = "".join(
            f'<tr><td class="term">{escape(term)}</td><td>{escape(meaning)}</td></tr>'
            for term, meaning in block.rows
        )
        return f'<table cellspacing="0" cellpadding="6">{rows}</table>'
    return (
        f'<p><img src="figure:{escape(block.name)}"></p>'
        f'<p class="caption">{escape(block.caption)}</p>'
    )
