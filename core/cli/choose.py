"""Look through a folder of sky photos: what each would teach, and what speaks against it."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import Any

from core.choosing.look import SkyLook
from core.choosing.through import look_through, photos_in
from core.choosing.words import against, look_text, refusal_text
from core.cli.layout import complain, fold, say, terminal_width
from core.cli.mix import find_box
from core.file_sentences import shown_name
from core.i18n import translate
from core.reading.wording import Wording


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash choose`."""
    parser.description = translate(
        "command line",
        "Look through a folder of sky photos: how many bands each has, which hues, what the box "
        "does not reach, and what speaks against it. Nothing is scored.",
    )
    parser.add_argument(
        "folder", metavar="FOLDER", help=translate("command line", "the folder with the photos")
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        help=translate(
            "command line",
            "the paints: school (a set of twelve), primary (six), measured (thirteen), or a box "
            "file; otherwise school",
        ),
    )
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Print each as it is looked at; 1 where none of the files could be read."""
    box = find_box(args.box)
    paths = photos_in(Path(args.folder))
    read, refused = [], []
    for looked in look_through(paths, box):
        if looked.look is None:
            refused.append(looked)
            complain(refusal_text(looked))
            continue
        read.append(looked.look)
        if not args.json:
            text = f"{shown_name(looked.path)}: {look_text(looked.look, Wording())}"
            say(fold(text, terminal_width()))
    if args.json:
        found = {
            "skies": [_as_json(look) for look in read],
            "refused": [{"file": shown_name(each.path), "why": each.sentence} for each in refused],
        }
        print(json.dumps(found, indent=2, ensure_ascii=False))
    return 0 if read else 1


def _as_json(look: SkyLook) -> dict[str, Any]:
    return {
        "file": shown_name(look.path),
        "bands": look.bands.count,
        "lines": [round(line, 4) for line in look.bands.lines],
        "horizon": round(look.bands.horizon, 4),
        "horizon_sure": look.sure,
        "hues": list(look.families),
        "classes": list(look.classes),
        "dull": list(look.dull),
        "beyond_box": list(look.beyond),
        "clipped": list(look.clipped),
        "against": list(against(look)),
    }
