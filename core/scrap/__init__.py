"""A scrap held against its band: what a dried stroke of a mix is, and what to add to the puddle.

    strokes    the dried strokes on white paper in a picture, and the colour of each
    paints     the paints that may be in the puddle, and how well each is known
    puddle     what the puddle is likely to hold, from the planned parts and the strokes
    additions  what may be added, each judged at its best thinning
    advice     the smallest addition that helps, or to begin again
    against    the stroke against the band: hue, value, intensity
    words      all of it in sentences

May import `sheet`, `paint`, `words`, `photo`, `reading`; the study keeps its `kept`.
"""
