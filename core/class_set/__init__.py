"""The class set: the studies of one class, from the pictures of an evening to a mark list.

| question | module |
|---|---|
| what is it? | `model` (frozen values), `edits` (a new one from the old) |
| who is in the class? | `students` (codes), `ticket` (what a printed code says) |
| whose is a picture? | `codes`, `moment` (the order), `placing` decides, `questions` asks |
| where is it kept? | `folder` (open, save), `schema`, `bringing` (in), `tidying`, `deleting` |
| how is it checked? | `check_one`, `check_all`, `pool`, `kept_checks`, `grain` |
| what did students cross? | `score_marks` reads scores, `kept_scores` keeps them until taken |
| what comes of it? | `drafts`, `spread`, `hard`, `table`, `studies`, `prints`, `page_crop` |

May import everything of `core` but `cli`, and never a window. Nothing is ranked, averaged or
marked by machine.
"""
