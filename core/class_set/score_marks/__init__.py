"""Reading the scores a student crossed on a photographed worksheet page; never taken by itself.

| question | module |
|---|---|
| what is printed where? | `form`: the boxes, and the page as it is without a mark |
| where does each row lie in the picture? | `rows`, by the page's codes; `settle`, box by box |
| what was written? | `ink`, judged against the paper around; `pieces` of a mark, joined |
| which number is it? | `decide`, or that it cannot be told; `words` says so |
| the whole page | `read` |

Marks that do not lie on one box to two thirds, a second mark, a dot, a smudge: all are "cannot
tell", and the teacher looks. May import what
`core.class_set` may, of it no more than `page_crop` and `ticket`; of libraries NumPy and
`scipy.ndimage`.
"""
