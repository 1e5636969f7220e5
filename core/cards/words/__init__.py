"""What cards say beyond readings, mixes and findings: one module a topic.

May import the words of paint, sheets and readings; cards alone import it.
"""

from core.cards.words.colours import (
    hue_piece,
    hue_pieces,
    scale_piece,
    scales_short,
    second_piece,
    sheet_readout,
    value_piece,
)
from core.cards.words.kit import (
    KitGroup,
    KitLine,
    kit_cautions,
    kit_groups,
    kit_heads,
    kit_intro,
    kit_title,
    paint_with_code,
)
from core.cards.words.labels import Label, label
from core.cards.words.plan import (
    amounts_text,
    caution_lines,
    down_head,
    materials_text,
    measure_lines,
    nearness_text,
    order_lines,
    table_heads,
    tried_text,
    wet_edge_text,
)
from core.cards.words.sheets import (
    field_names,
    scores_advice,
)
from core.cards.words.titles import (
    class_text,
    continued,
    findings_title,
    page_text,
    plan_title,
    student_text,
    worksheet_title,
)

__all__ = [
    "KitGroup",
    "KitLine",
    "Label",
    "amounts_text",
    "caution_lines",
    "class_text",
    "continued",
    "down_head",
    "field_names",
    "findings_title",
    "hue_piece",
    "hue_pieces",
    "kit_cautions",
    "kit_groups",
    "kit_heads",
    "kit_intro",
    "kit_title",
    "label",
    "materials_text",
    "measure_lines",
    "nearness_text",
    "order_lines",
    "page_text",
    "paint_with_code",
    "plan_title",
    "scale_piece",
    "scales_short",
    "scores_advice",
    "second_piece",
    "sheet_readout",
    "student_text",
    "table_heads",
    "tried_text",
    "value_piece",
    "wet_edge_text",
    "worksheet_title",
]
