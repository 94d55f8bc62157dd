"""Reads a job file that names no profile into the inputs of plan_model.py, and a list of cutters.

Knows only what the model knows: a vertex-up class I icosahedron on its natural foot, cut at a row, with its stock
given in place. Anything else in the dome is refused, all of it at once, so that nothing is silently left out.
"""
import json
import re
from fractions import Fraction
from math import pi


class Refused(Exception):
    """The input cannot be used; args[0] is the list of all reasons."""


UNITS = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "in": Fraction(254, 10), '"': Fraction(254, 10),
         "ft": Fraction(3048, 10), "'": Fraction(3048, 10)}
NUMBER = r"(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?)"


def length(text, bare):
    """A length such as 38 mm, 1-1/2 in, 1 15/16", 2' 6" or a bare number, in mm."""
    if isinstance(text, (int, float)) and not isinstance(text, bool):
        return float(Fraction(str(text)) * UNITS[bare])
    unit_names = "|".join(sorted(map(re.escape, UNITS), key=len, reverse=True))
    text = str(text).strip()
    if re.fullmatch(NUMBER, text):
        text += bare
    if not re.fullmatch(rf"(?:{NUMBER}\s*(?:{unit_names})\s*)+", text):
        raise ValueError(text)
    total = Fraction(0)
    for number, name in re.findall(rf"({NUMBER})\s*({unit_names})", text):
        total += sum(Fraction(part) for part in re.split("[ -]", number)) * UNITS[name]
    return float(total)


def job_inputs(job, cutters):
    """The inputs of a job that names no profile."""
    wrong, bare = [], job.get("units", "mm")

    def get(table, key, default=None):
        value = job.get(table, {}).get(key, default)
        if value is None:
            wrong.append(f"{table}.{key}: expected a value, found none")
        return value

    def lengths(place, value):
        """Least, middle and greatest of one length or a pair."""
        try:
            both = [length(v, bare) for v in (value if isinstance(value, list) else [value])]
            return min(both), (min(both) + max(both)) / 2, max(both)
        except (ValueError, KeyError):
            wrong.append(f"{place}: expected a length, found {value!r}")
            return 1.0, 1.0, 1.0

    def number(place, value, mark):
        found = re.fullmatch(rf"\s*(\d+(?:\.\d+)?)\s*(?:{mark})?\s*", str(value))
        if not found:
            wrong.append(f"{place}: expected a number ({mark}), found {value!r}")
        return float(found[1]) if found else 0.0
    dome, strut, hub = (job.get(k, {}) for k in ("dome", "strut", "hub"))
    sizes = [k for k in ("radius", "floor-diameter", "height", "longest-strut") if k in dome]
    if len(sizes) != 1:
        wrong.append(f"dome: expected one size, found {sizes}")
    for key in set(dome) - {"base", "frequency", "breakdown", "keep", "tiers", "foot", *sizes}:
        wrong.append(f"dome.{key}: this model does not know it")
    for place, value, only in (("dome.base", dome.get("base", "icosahedron"), "icosahedron"),
                               ("dome.foot", dome.get("foot", "natural"), "natural"),
                               ("drilling.patterns", job.get("drilling", {}).get("patterns", "exact"), "exact")):
        if value != only:
            wrong.append(f"{place}: expected {only}, found {value!r}")
    n = dome.get("frequency") or (dome.get("breakdown") or [0])[0]
    if "breakdown" in dome and dome["breakdown"][1:] != [0]:
        wrong.append(f"dome.breakdown: expected [n, 0], found {dome['breakdown']}")
    rows = dome.get("tiers")
    if "keep" in dome:
        trade = {"3/8": "4/9", "5/8": "5/9"} if n == 3 else {}
        kept = str(trade.get(dome["keep"], dome["keep"]))
        part = Fraction(kept) * 3 * n if re.fullmatch(r"\d+/[1-9]\d*", kept) else Fraction(1, 2)
        rows = int(part)
        if part != rows:
            wrong.append(f"dome.keep: expected whole rows of {3 * n}, found {dome['keep']}")
    stock = {"strut": strut, "collar": hub.get("collar"), "ring": hub.get("ring")}
    for name, value in list(stock.items()):
        if not isinstance(value, dict) or "stock" in value or "od" not in value:
            wrong.append(f"{name}: expected stock given in place (od, wall), found {value!r}")
            stock[name] = {"od": "1 m", "wall": "1 mm"}
    od = lengths("strut od", strut.get("measured-od", stock["strut"].get("od")))
    if "measured-circumference" in hub:
        outer = lengths("hub.measured-circumference", hub["measured-circumference"])[1] / pi / 2
    else:
        outer = lengths("collar od", hub.get("measured-od", stock["collar"].get("od")))[1] / 2
    wall = lengths("collar wall", hub.get("measured-wall", stock["collar"].get("wall")))
    ring = lengths("ring od", stock["ring"].get("od"))[1] / 2
    given = {
        "frequency": n, "rows": rows,
        "size": {"rule": (sizes or ["radius"])[0], "valueMm": lengths("dome size", dome[sizes[0]])[1] if sizes else 0},
        "strut": {"odMinMm": od[0], "odMm": od[1], "odMaxMm": od[2]},
        "collar": {"outerRadiusMm": outer, "wallMinMm": wall[0], "wallMm": wall[1], "wallMaxMm": wall[2],
                   "widthMm": lengths("hub.width", get("hub", "width"))[1], "rimsMm": lengths("hub.rims", hub.get("rims", 0))[1]},
        "ring": {"radiusMm": ring, "widthMm": lengths("hub.ring-width", get("hub", "ring-width"))[1]},
        "endGapMm": lengths("hub.end-gap", get("hub", "end-gap"))[1], "fit": get("drilling", "fit", "reach"),
        "nearestBandDeg": number("limits.nearest-band", get("limits", "nearest-band", 0.5), "°|deg"),
        "cutters": cutters, "order": {"domes": get("order", "domes", 1),
                                      "sparesPercent": number("order.spares", get("order", "spares", "3 %"), "%")}}
    if isinstance(strut.get("tie-hole"), dict):
        given["strut"]["tieHole"] = {"diameterMm": lengths("tie-hole", strut["tie-hole"].get("diameter"))[1],
                                     "fromEndMm": lengths("tie-hole", strut["tie-hole"].get("from-end"))[1]}
    if wrong:
        raise Refused(wrong)
    return given


def read_cutters(text):
    """Cutters from ID=SIZE,... or a JSON file."""
    if "=" not in text:
        with open(text, encoding="utf-8") as file:
            found = json.load(file)
        return found["inputs"]["cutters"] if isinstance(found, dict) else found
    out = []
    for item in text.split(","):
        name, size = item.split("=", 1)
        size = length(size, "mm")
        out.append({"id": name.strip(), "sizeMm": size, "asDrilledMinMm": size, "asDrilledMm": size, "asDrilledMaxMm": size})
    return out
