"""`gradewash swatches`: print a card on which a class paints its own paints."""

from __future__ import annotations

import argparse
from pathlib import Path

from app.cards.command import PAPER_NAMES, begin_drawing
from core.cards.file import write_card
from core.cli.layout import say
from core.cli.mix import find_box
from core.cli.output import output_path
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.box.box_file import save_box
from core.swatches.asking import (
    MOST_PAINTS,
    box_with_cards,
    cards_for,
    paints_of_box,
    proposed_like,
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash swatches`."""
    parser.description = translate(
        "command line",
        "Print a card on which the class paints its own paints, so that plans know them: three "
        "strokes of each. Read it with gradewash paints.",
    )
    parser.add_argument(
        "names",
        metavar="PAINT",
        nargs="*",
        help=translate(
            "command line",
            "a paint's name, or NAME=LIKE with the paint it behaves like; all of the box without "
            "any",
        ),
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        help=translate("command line", "the box: school, primary, measured, or a box file"),
    )
    parser.add_argument(
        "-o",
        "--output",
        metavar="FILE",
        required=True,
        help=translate("command line", "the PDF to write"),
    )
    parser.add_argument(
        "--keep",
        metavar="BOX",
        help=translate(
            "command line",
            "also write the box with this card in it, for reading the card later",
        ),
    )
    parser.add_argument(
        "--paper",
        metavar="SIZE",
        default="a4",
        help=translate("command line", "a4 (the default) or letter"),
    )
    parser.add_argument(
        "--force",
        action="store_true",
        help=translate("command line", "replace a box file that is there already"),
    )


def run(args: argparse.Namespace) -> int:
    """Lay the card out, write it; keep it in a box."""
    paper_name = args.paper.strip().lower()
    if paper_name not in PAPER_NAMES:
        raise UsageError(
            translate(
                "command line", "{option} {asked} is not known: use one of {allowed}."
            ).format(option="--paper", asked=args.paper, allowed=", ".join(PAPER_NAMES))
        )
    box, source = find_box(args.box), Path(args.box or "")
    output = output_path(args.output, source, ".pdf", replace=True)
    asked = [_asked(name) for name in args.names] or list(paints_of_box(box)[:MOST_PAINTS])
    cards = cards_for(asked, box)
    keep = None
    if args.keep is not None:
        keep = output_path(args.keep, output, ".json", replace=args.force)
    begin_drawing()
    # deferred: start-up time - what is wrong with the arguments is said before
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of
    from app.cards.swatches import card_title, lay_out_swatches

    pages = lay_out_swatches(cards, box, PAPERS[paper_name])
    write_card(output, pdf_of(pages, card_title(cards)))
    say(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
    if keep is not None:
        save_box(box_with_cards(box, cards), keep)
        say(translate("command line", "Wrote {name}.").format(name=shown_name(keep)))
    return 0


def _asked(text: str) -> tuple[str, str]:
    name, _, like = text.partition("=")
    return name.strip(), like.strip() or proposed_like(name)
