"""The Class page: an evening's pictures sorted, pinned up, marked, and written into a list.

| question | module |
|---|---|
| what is the page? | `page` (header row and four parts), `part` (what a part is) |
| where does a picture belong? | `sort` and its `question_card`, `places` |
| how do the sheets look beside each other? | `pin_up`, its `wall` and `marking` |
| what did the class find hard? | `found_hard` |
| what is written down? | `mark_list` |
| what can be asked for by menus? | `actions`, with `new_class`, `exports`, `ask` |

Knows the class set by `workspace.desk` alone. May import `workspace` and all below, no other page.
"""
