"""Keeping less: once all is marked, of each sheet only the straightened painting stays.

The photo around a painting may show a hand, a desk, a room. Its check stays as it was found; should
the lines move later, what is checked then is the painting alone, without the paper around it that
tells the light.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from core.class_set.folder import ClassFolder
from core.class_set.kept_checks import Kept, KeptChecks, check_key, check_to_json
from core.class_set.kept_scores import scores_key
from core.class_set.model import Brought
from core.class_set.placing import place_all
from core.photo import strip_private
from core.pictures import Picture
from core.sheet.options import SheetOptions

_WHOLE = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))


@dataclass(frozen=True)
class Tidied:
    """What was done.

    Attributes
    ----------
    straightened : int
        Sheets of which only the painting is kept now.
    removed : int
        Pictures laid aside that are gone.
    left : int
        Sheets that stay as they are: not checked, or nothing readable was found.
    """

    straightened: int
    removed: int
    left: int


def tidy(folder: ClassFolder, checks: Mapping[str, Kept], language: str = "en") -> Tidied:
    """Keep of every placed and checked sheet its painting alone; drop what was laid aside.

    Parameters
    ----------
    folder : ClassFolder
        Saved once, at the end; until then nothing is removed.
    checks : mapping
        From `core.class_set.kept_checks.found_checks`.
    language : str
        Of the sentences in them.

    Raises
    ------
    ClassSetError
        The disk is full or gone: the class set is as it was.
    """
    class_set = folder.class_set
    placed = {
        place.digest: place.slot
        for place in place_all(class_set).places.values()
        if place.slot.what == "sheet"
    }
    brought: list[Brought] = []
    straightened = removed = left = 0
    for each in class_set.brought:
        if each.aside:
            removed += 1
        elif each.digest not in placed or each.options.corners == _WHOLE:
            brought.append(each)
        elif (painting := _painting(folder, each, checks)) is None:
            left += 1
            brought.append(each)
        else:
            # By hand: what its ticket or its order said must not be asked again.
            kept = replace(painting, hand=placed[each.digest])
            _keep_check(folder, kept, checks[each.digest], language)
            brought.append(kept)
            straightened += 1
    folder.save(replace(class_set, brought=tuple(brought)))
    folder.clear_leftovers()
    keys = {check_key(each, class_set.exercise, language) for each in folder.class_set.brought}
    keys |= {scores_key(each.digest, page) for each in folder.class_set.brought for page in (0, 1)}
    KeptChecks(folder.path).keep_only(keys)
    return Tidied(straightened, removed, left)


def _painting(folder: ClassFolder, each: Brought, checks: Mapping[str, Kept]) -> Brought | None:
    """The picture as its straightened painting; None where there is none to trust."""
    kept = checks.get(each.digest)
    if kept is None or kept.check is None or not kept.check.readable:
        return None
    jpeg = KeptChecks(folder.path).jpeg(kept.key)
    if jpeg is None:
        return None
    digest = folder.keep_picture(strip_private(jpeg))
    options = SheetOptions(_WHOLE, 0, each.options.scan, each.options.aspect)
    return replace(each, picture=Picture(each.picture.name, digest), options=options)


def _keep_check(folder: ClassFolder, painting: Brought, kept: Kept, language: str) -> None:
    checks = KeptChecks(folder.path)
    key = check_key(painting, folder.class_set.exercise, language)
    jpeg = checks.jpeg(kept.key) or b""
    assert kept.check is not None
    checks.keep(key, check_to_json(kept.check), jpeg, kept.grain, "")
