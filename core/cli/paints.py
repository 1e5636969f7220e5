"""Read a painted swatch card into a box: its paints are then known by their own colours."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from core.cli.layout import say
from core.cli.mix import find_box
from core.cli.opening import naming
from core.cli.output import output_path
from core.errors import SwatchCardError, UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.box_file import save_box
from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.card_paint import Light
from core.photo import open_photo
from core.swatches.asking import cards_of_box, partner_name
from core.swatches.fitting import CardFit, fit_reading, into_box
from core.swatches.read import card_of_code, find_card, read_card
from core.swatches.words import another_card, fit_sentences, not_found, paint_sentence


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash paints`."""
    parser.description = translate(
        "command line",
        "Read a picture of a painted swatch card (see gradewash swatches), and put its paints into "
        "a box.",
    )
    parser.add_argument(
        "picture", metavar="CARD", help=translate("command line", "a photo or a scan of the card")
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        required=True,
        help=translate("command line", "the box the card was printed for"),
    )
    parser.add_argument(
        "-o",
        "--output",
        metavar="BOX",
        help=translate("command line", "the box file to write, with the paints of the card"),
    )
    parser.add_argument(
        "--force",
        action="store_true",
        help=translate("command line", "replace a box file that is there already"),
    )
    parser.add_argument(
        "--scan", action="store_true", help=translate("command line", "the picture is a flat scan")
    )
    parser.add_argument(
        "--lamps",
        action="store_true",
        help=translate("command line", "it was photographed under lamps, not by a window"),
    )
    parser.add_argument(
        "--page",
        metavar="N",
        type=int,
        help=translate("command line", "which page of the card it is, where its code is not read"),
    )
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "everything found, as JSON")
    )


def run(args: argparse.Namespace) -> int:
    """Find the card, read it, fit its paints; write the box."""
    if args.scan and args.lamps:
        raise UsageError(
            translate("command line", "A scan knows no lamps: use --scan or --lamps, not both.")
        )
    source = Path(args.picture)
    box = find_box(args.box)
    output = None
    if args.output is not None:
        output = output_path(args.output, source, ".json", replace=args.force)
    light: Light = "scan" if args.scan else "lamps" if args.lamps else "window"
    with naming(shown_name(source)):
        pixels = open_photo(source).pixels
        corners, code = find_card(pixels)
        if corners is None:
            raise SwatchCardError(not_found())
        card = chosen_card(cards_of_box(box), code, args.page)
        reading = read_card(pixels, corners, len(card.rows), code)
        fit = fit_reading(card, reading, box, light)
    if args.json:
        print(json.dumps(fit_as_json(fit, box), indent=2, ensure_ascii=False))
    else:
        say("\n".join((*map(paint_sentence, fit.paints), "", *fit_sentences(fit, box))).rstrip())
    if output is not None:
        save_box(into_box(box, fit), output)
        if not args.json:
            say(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
    return 0


def chosen_card(cards: tuple[SwatchCard, ...], code: str | None, page: int | None) -> SwatchCard:
    """The card of a box that the picture shows.

    Raises
    ------
    SwatchCardError
        Its code is another card's, or was not read and there are several pages.
    UsageError
        There is no such page.
    """
    if page is not None:
        if not 1 <= page <= len(cards):
            raise UsageError(
                translate(
                    "command line", "There is no page {page}: this box has {count} printed."
                ).format(page=page, count=len(cards))
            )
        return cards[page - 1]
    card = card_of_code(cards, code)
    if card is not None:
        return card
    if code is not None:
        raise SwatchCardError(another_card())
    raise SwatchCardError(
        translate(
            "command line",
            "The card's code could not be read: say which page it is with --page 1 to {count}.",
        ).format(count=len(cards))
    )


def fit_as_json(fit: CardFit, box: Box) -> dict[str, object]:
    """All that was found of a card, as JSON values."""
    rows = fit.card.rows
    return {
        "card": fit.card.code,
        "code_read": fit.reading.code is not None,
        "light": fit.light,
        "corners": [[round(v, 5) for v in corner] for corner in fit.reading.corners],
        "paints": [
            {
                "key": paint.key,
                "name": paint.name,
                "like": paint.measured_as,
                "group": paint.group,
                "leans": paint.leans,
                "trust": paint.card.trust,
                "spread": round(paint.card.spread, 2),
            }
            for paint in fit.paints
            if paint.card is not None
        ],
        "fields": [
            {
                "row": one.row + 1,
                "field": one.field + 1,
                "paint": rows[one.row].name,
                "partner": partner_name(rows[one.row].partners[one.field - 1], fit.card, box)
                if one.field
                else "",
                "word": one.word,
                "Lab": [[round(v, 2) for v in Lab] for Lab in one.Lab],
            }
            for one in fit.reading.fields
        ],
        "questions": [
            {"paint": doubt.paint, "kind": doubt.kind, "field": doubt.field + 1}
            for doubt in fit.doubts
        ],
        "said": list(fit_sentences(fit, box)),
    }
