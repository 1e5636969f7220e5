"""What was seen of a sky, in a line."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from core.choosing.look import SkyLook
from core.choosing.through import Looked, Sorting
from core.file_sentences import shown_name
from core.i18n import translate
from core.reading.wording import Wording
from core.words.lists import listed
from core.words.names import class_word, family_name


def sorting_word(sorting: Sorting) -> str:
    """What the photos are sorted by."""
    match sorting:
        case "folder":
            return translate("choosing", "as in the folder")
        case "bands":
            return translate("choosing", "most bands first")
        case "hues":
            return translate("choosing", "most classes of hue first")
        case "reach":
            return translate("choosing", "what the box reaches first")
        case _:
            assert_never(sorting)


def look_text(look: SkyLook, wording: Wording) -> str:
    """All of it, as "5 bands: blue and orange (primary and secondary). B is dull. ..."."""
    return " ".join((*sky_sentences(look, wording), *against(look)))


def sky_sentences(look: SkyLook, wording: Wording) -> tuple[str, ...]:
    """How many bands, which hues, which are dull, what the box does not reach."""
    if not look.families:  # greys are as dull as can be
        return (_bands(look, wording), _reach(look))
    return (_bands(look, wording), _dull(look), _reach(look))


def refusal_text(looked: Looked) -> str:
    """Why a file could not be looked at, with its name."""
    name = shown_name(looked.path)
    return looked.sentence if name in looked.sentence else f"{name}: {looked.sentence}"


def against(look: SkyLook) -> tuple[str, ...]:
    """What speaks against this photo, a sentence each; often nothing."""
    found = list(look.remarks)
    if look.clipped:
        text = (
            translate("choosing", "In band {letters} the photo has lost light or detail.")
            if len(look.clipped) == 1
            else translate("choosing", "In bands {letters} the photo has lost light or detail.")
        )
        found.append(text.format(letters=listed(look.clipped)))
    if look.doubt:
        found.append(look.doubt)
    return tuple(found)


def _bands(look: SkyLook, wording: Wording) -> str:
    number = look.bands.count
    if number == 1:
        count = translate("choosing", "1 band")
    else:
        count = translate("choosing", "{n} bands").format(n=number)
    if not look.families:
        return translate("choosing", "{count}, all greys.").format(count=count)
    hues = listed([family_name(family) for family in look.families])
    if not look.classes:
        return translate("choosing", "{count}: {hues}.").format(count=count, hues=hues)
    classes = listed([class_word(each, wording) for each in look.classes])
    return translate("choosing", "{count}: {hues} ({classes}).").format(
        count=count, hues=hues, classes=classes
    )


def _dull(look: SkyLook) -> str:
    if not look.dull:
        return translate("choosing", "None is dull.")
    return _of_letters(
        look.dull,
        translate("choosing", "{letters} is dull."),
        translate("choosing", "{letters} are dull."),
    )


def _reach(look: SkyLook) -> str:
    if not look.beyond:
        return translate("choosing", "The box reaches all.")
    return translate("choosing", "The box does not reach {letters}.").format(
        letters=listed(look.beyond)
    )


def _of_letters(letters: Sequence[str], one: str, several: str) -> str:
    return (one if len(letters) == 1 else several).format(letters=listed(letters))
