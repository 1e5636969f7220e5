"""Paint: from the readings of a sky to a plan of mixes, and its words.

`plan.py` plans a whole sky by its `options.py`; `planned.py` is what comes out, `reasons.py` why.

    pigment   what was measured, and the film over paper
    box       the paints of a class
    search    what comes nearest to a colour
    mixture   paints in parts at a strength, and how far off
    toning    towards grey, and with what
    wash      how much, in which order, what happens where two meet
    choice    what a teacher would mix, and why
    words     all of it in sentences

May import `words`, `reading`, `colour`; pages, cards and the command line import it.
"""
