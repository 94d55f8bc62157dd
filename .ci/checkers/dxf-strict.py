"""Reads a DXF file strictly and prints it with all its faults as JSON: dxf-strict.py FILE

Exit code 0 whenever a verdict could be given; a file that is not sound has entries in "faults".
"""

import json
import math
import sys

import ezdxf
from ezdxf import bbox


def finite(*numbers):
    return all(math.isfinite(n) for n in numbers)


def tags_of(path, faults):
    """Group code and value pairs, as the bytes say; the reader's own clean-up comes later."""
    with open(path, "rb") as file:
        lines = file.read().decode("utf-8", "replace").replace("\r\n", "\n").split("\n")
    if lines and lines[-1] == "":
        lines.pop()
    if len(lines) % 2:
        faults.append("odd number of lines")
    pairs = []
    for i in range(0, len(lines) - 1, 2):
        try:
            pairs.append((int(lines[i]), lines[i + 1].strip()))
        except ValueError:
            faults.append(f"line {i + 1}: group code {lines[i]!r}")
            return pairs
    if not pairs or pairs[-1] != (0, "EOF"):
        faults.append("no EOF at the end")
    return pairs


def raw_faults(pairs):
    """What ezdxf repairs in silence: handles used twice, owners that are not there, counts of vertices."""
    faults, seen, owners = [], set(), []
    kind, count, vertices, section = "", None, 0, ""

    def close():
        if kind == "LWPOLYLINE" and count != vertices:
            faults.append(f"LWPOLYLINE says {count} vertices, has {vertices}")

    previous = (None, None)
    for code, value in pairs:
        if code == 0:
            close()
            kind, count, vertices = value, None, 0
        elif previous == (0, "SECTION") and code == 2:
            section = value
        elif section not in ("HEADER", "CLASSES"):
            if code == (105 if kind == "DIMSTYLE" else 5):
                if value.upper() in seen:
                    faults.append(f"handle {value} used twice")
                seen.add(value.upper())
            elif code == 330:
                owners.append((kind, value.upper()))
            elif code == 90 and kind == "LWPOLYLINE":
                count = int(value)
            elif code == 10 and kind == "LWPOLYLINE":
                vertices += 1
        if 10 <= code <= 59 or 140 <= code <= 147 or 210 <= code <= 239:
            try:
                if not math.isfinite(float(value)):
                    faults.append(f"{kind}: group {code} is {value}")
            except ValueError:
                faults.append(f"{kind}: group {code} is {value!r}, not a number")
        previous = (code, value)
    close()
    for kind, owner in owners:
        if owner != "0" and owner not in seen:
            faults.append(f"{kind}: owner or pointer {owner} does not exist")
    return faults


def describe(entity, faults, ascii_only):
    kind, dxf = entity.dxftype(), entity.dxf
    told = {"type": kind, "layer": dxf.layer, "points": []}
    if kind in ("CIRCLE", "ARC"):
        if not dxf.hasattr("radius"):
            faults.append(f"{kind} without radius")
            return told
        told["points"] = [[dxf.center.x, dxf.center.y]]
        told["radius"] = dxf.radius
        if not dxf.radius > 0:
            faults.append(f"{kind} of radius {dxf.radius}")
        if kind == "ARC":
            told["start"], told["end"] = dxf.start_angle, dxf.end_angle
            if dxf.start_angle == dxf.end_angle:
                faults.append("ARC of no length")
    elif kind == "LINE":
        told["points"] = [[dxf.start.x, dxf.start.y], [dxf.end.x, dxf.end.y]]
        if dxf.start.isclose(dxf.end):
            faults.append("LINE of no length")
    elif kind == "POINT":
        told["points"] = [[dxf.location.x, dxf.location.y]]
    elif kind in ("LWPOLYLINE", "POLYLINE"):
        if kind == "LWPOLYLINE":
            told["points"] = [[p[0], p[1], p[4]] for p in entity.get_points()]
            told["closed"] = entity.closed
        else:
            told["points"] = [[v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)] for v in entity.vertices]
            told["closed"] = entity.is_closed
        places = [tuple(p[:2]) for p in told["points"]]
        if len(places) < 2:
            faults.append(f"{kind} of {len(places)} vertices")
        if any(a == b for a, b in zip(places, places[1:])):
            faults.append(f"{kind} with a vertex twice in a row")
    elif kind in ("TEXT", "MTEXT"):
        told["text"] = dxf.text if kind == "TEXT" else entity.text
        told["points"] = [[dxf.insert.x, dxf.insert.y]]
        told["radius"] = dxf.get("height", 0) if kind == "TEXT" else dxf.get("char_height", 0)
        told["start"] = dxf.get("rotation", 0)
        if ascii_only and not told["text"].isascii():
            faults.append(f"text beyond ASCII in R12: {told['text']!r}")
    else:
        faults.append(f"unexpected entity {kind}")
    if not all(finite(*p) for p in told["points"]):
        faults.append(f"{kind} is not finite")
    return told


def read(path):
    faults = []
    pairs = tags_of(path, faults)
    faults += raw_faults(pairs)
    try:
        document = ezdxf.readfile(path)
    except Exception as e:  # every way to fail is a verdict here
        return {"version": "", "faults": faults + [f"not readable: {type(e).__name__}: {e}"]}
    audit = document.audit()
    faults += [f"audit error: {e.message}" for e in audit.errors]
    faults += [f"audit would fix: {e.message}" for e in audit.fixes]
    layers = [layer.dxf.name for layer in document.layers]
    defined = {name.lower() for name in layers}
    entities = []
    for entity in document.modelspace():
        if entity.dxf.layer.lower() not in defined:
            faults.append(f"layer {entity.dxf.layer} is not defined")
        entities.append(describe(entity, faults, document.dxfversion == "AC1009"))
    box = bbox.extents([e for e in document.modelspace() if e.dxftype() not in ("TEXT", "MTEXT")])
    extents = [box.extmin.x, box.extmin.y, box.size.x, box.size.y] if box.has_data else None
    return {
        "version": document.dxfversion,
        "insunits": document.header.get("$INSUNITS"),
        "layers": layers,
        "extents": extents,
        "entities": entities,
        "faults": faults,
    }


def whole(value):
    """Numbers that are not finite have no form in JSON; the fault is named already."""
    if isinstance(value, float) and not math.isfinite(value):
        return None
    if isinstance(value, dict):
        return {k: whole(v) for k, v in value.items()}
    if isinstance(value, (list, tuple)):
        return [whole(v) for v in value]
    return value


print(json.dumps(whole(read(sys.argv[1])), allow_nan=False))
