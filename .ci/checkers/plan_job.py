"""Reads a job file that names no profile into the inputs of plan_model.py, and a list of cutters.

Knows every dome and frame of the model, with stock given in place. A key in the dome that it does not know is refused,
all of them at once, so that nothing is silently left out. Frames are read by plan_frame.py.
"""
import json
import re
from fractions import Fraction
from math import ceil, floor, pi


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


SIZES = ("radius", "floor-diameter", "height", "longest-strut", "pieces-per-stock")


class Reads:
    """How lengths and numbers of a job are read, and where its faults go."""

    def __init__(self, lengths, number, wrong):
        self.lengths, self.number, self.wrong = lengths, number, wrong

    def length(self, place, value):
        return self.lengths(place, value)[1]

    def word(self, table, key, allowed):
        """One of the allowed words; the first is taken where none is said."""
        value = table.get(key, allowed[0])
        if value not in allowed:
            self.wrong.append(f"dome.{key}: expected {', '.join(allowed)}, found {value!r}")
        return value

    def known(self, table, place, keys):
        for key in sorted(set(table) - set(keys)):
            self.wrong.append(f"{place}.{key}: this model does not know it")


def frame_inputs(dome, reads):
    """inputs.dome of a frame from outside."""
    reads.known(dome, "dome", {"frame", "frame-unit", "merge", "alike", "feet-within", "axes", "axis", "up"})
    axes = dome.get("axes", {})
    return {"axis": reads.word(dome, "axis", ("fitted", "even-tilts")),
            "frame": {"mergeMm": reads.length("dome.merge", dome.get("merge", "0.1 mm")),
                      "alikeMm": reads.length("dome.alike", dome.get("alike", "0.1 mm")),
                      "feetWithinMm": reads.length("dome.feet-within", dome.get("feet-within", "1 mm")),
                      "axes": [{"node": name, "axis": scaled(axes[name])} for name in sorted(axes)]}}


def scaled(axis):
    size = sum(x * x for x in axis) ** 0.5
    return [x / size for x in axis]


def dome_inputs(dome, reads):
    """inputs.dome of a dome that is computed."""
    reads.known(dome, "dome", {"base", "frequency", "breakdown", "subdivision", "up", "keep", "tiers", "cut-height",
                               "height-factor", "foot", "foot-plane", "riser-height", "riser-diagonals", "axis",
                               "count-tiers-from", "opening", *SIZES})
    base = reads.word(dome, "base", ("icosahedron", "octahedron", "tetrahedron"))
    if ("frequency" in dome) == ("breakdown" in dome):
        reads.wrong.append("dome: expected frequency or breakdown")
    steps = dome["breakdown"] if "breakdown" in dome else [dome.get("frequency", 1), 0]
    whole = isinstance(steps, list) and len(steps) == 2 and all(type(step) is int for step in steps)
    if not whole or steps[0] < 1 or steps[1] < 0:
        reads.wrong.append(f"dome.breakdown: expected two whole numbers from 1 and from 0, found {steps}")
        steps = [1, 0]
    subdivision = reads.word(dome, "subdivision", ("chords", "arcs"))
    if subdivision == "arcs" and steps[1]:
        reads.wrong.append("dome.subdivision: equal arcs are for class I")
    up = reads.word(dome, "up", ("vertex", "edge", "face"))
    foot = reads.word(dome, "foot", ("natural", "level", "riser"))
    out = {"base": base, "breakdown": steps, "subdivision": subdivision, "up": up, **kept(dome, base, steps, up, reads),
           "heightFactor": float(dome.get("height-factor", 1)), "axis": reads.word(dome, "axis", ("fitted", "even-tilts")),
           "foot": foot, "tiersFrom": reads.word(dome, "count-tiers-from", ("apex", "foot"))}
    if foot != "natural":
        out["footPlane"] = reads.word(dome, "foot-plane", ("least-move", "fewest-types"))
    if foot == "riser":
        if "riser-height" not in dome:
            reads.wrong.append("dome.riser-height: expected a length, found none")
        out["riserHeightMm"] = reads.length("dome.riser-height", dome.get("riser-height", 1))
        out["riserDiagonals"] = bool(dome.get("riser-diagonals", False))
    if dome.get("opening"):
        out["openings"] = [opening_inputs(one, reads) for one in dome["opening"]]
    return out


def kept(dome, base, steps, up, reads):
    """Where the dome is cut: the last tier or a height over the centre."""
    said = [key for key in ("keep", "tiers", "cut-height") if key in dome]
    if len(said) != 1:
        reads.wrong.append(f"dome: expected one of keep, tiers and cut-height, found {said}")
        return {"tiers": 1}
    if said == ["cut-height"]:
        return {"cutHeight": float(dome["cut-height"])}
    if said == ["tiers"]:
        return {"tiers": dome["tiers"]}
    if (base, up, steps[1]) != ("icosahedron", "vertex", 0):
        reads.wrong.append("dome.keep: rows are for vertex-up class I icosahedra")
    n = steps[0]
    trade = {"3/8": "4/9", "5/8": "5/9"} if n == 3 else {}
    text = str(trade.get(dome["keep"], dome["keep"]))
    if text == "all":
        return {"tiers": 3 * n}
    part = Fraction(text) * 3 * n if re.fullmatch(r"\d+/[1-9]\d*", text) else Fraction(1, 2)
    if part != int(part):
        reads.wrong.append(f"dome.keep: expected whole rows of {3 * n}, found {dome['keep']}")
    return {"tiers": int(part)}


def opening_inputs(table, reads):
    """One opening: names are taken as they stand."""
    reads.known(table, "dome.opening", {"nodes", "struts", "box", "add", "corners"})
    out = {key: table.get(key, []) for key in ("nodes", "struts", "add", "corners")}
    if "box" in table:
        box = table["box"]
        out["box"] = {"widthMm": reads.length("dome.opening.box.width", box.get("width")),
                      "heightMm": reads.length("dome.opening.box.height", box.get("height")),
                      "azimuthDeg": reads.number("dome.opening.box.azimuth", box.get("azimuth", 0), "°|deg")}
    return out


def piece_of(stick, trim, kerf, pieces):
    """One of equal pieces of a stick, in whole thousandths of a millimetre: cuts and trim are counted up, the rest down."""
    up = lambda length: ceil(length * 1000 - 1e-6)
    return floor((floor(stick * 1000 + 1e-6) - up(trim) - (pieces - 1) * up(kerf)) / pieces) / 1000


def size_inputs(dome, strut, reads):
    """inputs.size: one rule and its length."""
    rules = [key for key in SIZES if key in dome]
    if len(rules) != 1:
        reads.wrong.append(f"dome: expected one size, found {rules}")
        return {"rule": "radius", "valueMm": 1.0}
    rule = rules[0]
    if rule != "pieces-per-stock":
        return {"rule": rule, "valueMm": reads.length(f"dome.{rule}", dome[rule])}
    pieces = dome[rule]
    stock, kerf = strut.get("lengths"), strut.get("kerf")
    if not stock or kerf is None:
        reads.wrong.append("strut: pieces-per-stock needs lengths and kerf")
        return {"rule": rule, "valueMm": 1.0}
    longest = max(reads.length("strut.lengths", one) for one in stock)
    kerf, trim = reads.length("strut.kerf", kerf), reads.length("strut.trim", strut.get("trim", 0))
    return {"rule": rule, "valueMm": piece_of(longest, trim, kerf, pieces), "pieces": pieces,
            "stockLengthMm": longest, "trimMm": trim, "kerfMm": kerf}


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
        found = re.fullmatch(rf"\s*(-?\d+(?:\.\d+)?)\s*(?:{mark})?\s*", str(value))
        if not found:
            wrong.append(f"{place}: expected a number ({mark}), found {value!r}")
        return float(found[1]) if found else 0.0
    dome, strut, hub = (job.get(k, {}) for k in ("dome", "strut", "hub"))
    chosen = {}
    for table, key, words in (("drilling", "patterns", ("exact", "shared")), ("hub", "heights", ("midplane", "converging"))):
        chosen[key] = job.get(table, {}).get(key, words[0])
        if chosen[key] not in words:
            wrong.append(f"{table}.{key}: expected {' or '.join(words)}, found {chosen[key]!r}")
    if job.get("drilling", {}).get("flip", False) is not False:
        chosen["flip"] = job["drilling"]["flip"]
        if chosen["flip"] is not True:
            wrong.append(f"drilling.flip: expected true or false, found {chosen['flip']!r}")
    if chosen["patterns"] == "shared":
        chosen["limits"] = {"extraLeanDeg": number("limits.extra-lean", job.get("limits", {}).get("extra-lean", 1), "°|deg"),
                            "missMm": lengths("limits.miss", job.get("limits", {}).get("miss", "6 mm"))[1]}
    reads = Reads(lengths, number, wrong)
    shape = frame_inputs(dome, reads) if "frame" in dome else dome_inputs(dome, reads)
    size = {"rule": "as-drawn"} if "frame" in dome else size_inputs(dome, strut, reads)
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
        "dome": shape, "size": size,
        "strut": {"odMinMm": od[0], "odMm": od[1], "odMaxMm": od[2]},
        "collar": {"outerRadiusMm": outer, "wallMinMm": wall[0], "wallMm": wall[1], "wallMaxMm": wall[2],
                   "widthMm": lengths("hub.width", get("hub", "width"))[1], "rimsMm": lengths("hub.rims", hub.get("rims", 0))[1]},
        "ring": {"radiusMm": ring, "widthMm": lengths("hub.ring-width", get("hub", "ring-width"))[1]},
        "endGapMm": lengths("hub.end-gap", get("hub", "end-gap"))[1], "fit": get("drilling", "fit", "reach"),
        "nearestBandDeg": number("limits.nearest-band", get("limits", "nearest-band", 0.5), "°|deg"),
        "leastClearanceMm": lengths("drilling.least-clearance", get("drilling", "least-clearance", "0.3 mm"))[1],
        **chosen, "cutters": cutters, "order": {"domes": get("order", "domes", 1),
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
