"""Prints page and shapes of an SVG file in millimetres as JSON: svg-sizes.py FILE

Read at 96 pixels an inch, the CSS value, and turned back, so a length without a unit comes out too small.
"""

import json
import sys

from svgelements import SVG, Shape

MM = 25.4 / 96

drawing = SVG.parse(sys.argv[1], ppi=96)
boxes = {}
for element in drawing.elements():
    if isinstance(element, Shape) and element.id:
        left, top, right, bottom = element.bbox()
        boxes[element.id] = [left * MM, top * MM, (right - left) * MM, (bottom - top) * MM]
print(json.dumps({"page": [float(drawing.width) * MM, float(drawing.height) * MM], "boxes": boxes}, allow_nan=False))
