"""Readings become words here: window, cards and command line say the same.

Mixes, sheets and worksheets have their words beside them (`core.paint.words`,
`core.sheet.findings`, `core.worksheet.words`), made of these. May import `reading` and below.
"""

from core.words.names import (
    class_with_article,
    class_word,
    family_name,
    hue_short,
    intensity_text,
    neutral_name,
    second_line,
    value_end,
    value_number,
    value_word_text,
)
from core.words.phrases import colour_sentence_part, hue_phrase, intensity_phrase, value_phrase
from core.words.second import second_sentence, second_short, share_text
from core.words.sentences import band_notes, band_sentence
from core.words.toning import (
    box_family,
    first_on_wheel,
    tone_down_sentence,
    tones_on_wheel,
    touch_family,
    way_on_wheel_sentence,
)
from core.words.toning_planned import PlannedToning

__all__ = [
    "PlannedToning",
    "band_notes",
    "band_sentence",
    "box_family",
    "class_with_article",
    "class_word",
    "colour_sentence_part",
    "family_name",
    "first_on_wheel",
    "hue_phrase",
    "hue_short",
    "intensity_phrase",
    "intensity_text",
    "neutral_name",
    "second_line",
    "second_sentence",
    "second_short",
    "share_text",
    "tone_down_sentence",
    "tones_on_wheel",
    "touch_family",
    "value_end",
    "value_number",
    "value_phrase",
    "value_word_text",
    "way_on_wheel_sentence",
]
