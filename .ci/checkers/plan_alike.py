"""Checks a plan of a frame from outside whatever way its struts and hubs were grouped within the tolerance "alike".

Which struts make one type is not pinned down where lengths and angles differ a little. So the plan's own groups are held
against the geometry of the frame: no two struts of a type and no two gaps of a hub type may differ by more than the
tolerance, no printed value may be further than that from those it stands for, and all that follows from the printed
values is worked out again. Not checked: that there are no more types than need be, and which of a hub's holes is number 1.
"""
from collections import Counter
from math import atan2, degrees, hypot, pi, radians, tan

import plan_dome
import plan_model as model
from plan_compare import compare, compare_whole

HAIR = 1e-8                  # rounding, in mm and in radians


def wrapped(angle, period=2 * pi):
    """The angle from -period/2 to period/2."""
    return (angle + period / 2) % period - period / 2


class Groups:
    """Values by what they stand for, and the printed value of each."""

    def __init__(self, lines):
        self.lines, self.values, self.printed = lines, {}, {}

    def add(self, key, printed, value, period=None):
        # Angles that wrap are taken next to the printed one.
        self.printed[key] = printed
        self.values.setdefault(key, []).append(printed + wrapped(value - printed, period) if period else value)

    def check(self, allowed, slack=0.0):
        for key, values in self.values.items():
            low, high, said = min(values), max(values), self.printed[key]
            if not high - low <= allowed + HAIR:
                self.lines.append(f"{key}: values from {low!r} to {high!r} differ by more than {allowed!r}")
            if not max(high - said, said - low) <= allowed + slack + HAIR:
                self.lines.append(f"{key}: expected within {allowed!r} of {low!r} to {high!r}, found {said!r}")

    def beyond(self):
        """How far a printed value lies outside all values that it stands for, at most."""
        return max((max(min(v) - self.printed[k], self.printed[k] - max(v), 0.0) for k, v in self.values.items()), default=0.0)


def whole(given, plan, drawn):
    """The comparison: all that does not agree, one line each."""
    given = model.whole_inputs(given)
    holes = model.Holes(given)
    frame = plan_dome.outside(given["dome"], drawn)
    out = compare_whole({}, plan)
    out.lines += placed(frame, plan)
    if out.lines:
        return out               # without the nodes and members nothing else can be said
    near = given["dome"]["frame"]["alikeMm"]
    struts(given, frame, plan, near, near / holes.outer, out.lines)
    hubs(frame, plan, near / holes.outer, out.lines)
    worked_out = compare(follows(given, frame, plan, holes), plan)
    out.lines += worked_out.lines
    out.largest = worked_out.largest
    return out


def placed(frame, plan):
    """Nodes and members by themselves, in order, with their ids."""
    nodes = [{"id": name, "xyzMm": list(p), "axis": list(n), "flipped": False}
             for name, p, n in zip(frame.ids, frame.points, frame.axes)]
    width = len(str(len(frame.edges)))
    members = [{"id": f"M{k + 1:0{width}d}"} for k in range(len(frame.edges))]
    out = compare({"nodes": nodes, "members": members}, plan).lines
    for k, (edge, member) in enumerate(zip(frame.edges, plan["members"])):
        there = {member[end]["node"] for end in "ab"}
        if there != {frame.ids[n] for n in edge}:
            out.append(f"members[{k}]: expected {sorted(frame.ids[n] for n in edge)}, found {sorted(there)}")
    return out


def struts(given, frame, plan, near, level, out):
    """Every member against its strut type."""
    number = {name: k for k, name in enumerate(frame.ids)}
    types = {t["id"]: t for t in plan["strutTypes"]}
    chords, angles = Groups(out), Groups(out)
    for member in plan["members"]:
        kind, ends = types[member["strutType"]], [number[member[end]["node"]] for end in "ab"]
        a, b = ends
        along = model.minus(frame.points[b], frame.points[a])
        q = model.unit(along)
        chords.add(f"strutTypes {kind['id']} chordMm", kind["chordMm"], plan_dome.length(along))
        for end, n, way in ((0, a, q), (1, b, tuple(-x for x in q))):
            angles.add(f"strutTypes {kind['id']} end {'ab'[end]}", radians(kind["ends"][end]["axialDeg"]),
                       model.lean(frame.axes[n], way))
        if kind["ends"][0]["axialDeg"] == kind["ends"][1]["axialDeg"] and a > b:
            out.append(f"members {member['id']}: expected end a at the first node, found {frame.ids[a]}")
        if given["strut"].get("tieHole"):
            first, second = model.cross(frame.axes[a], q), model.cross(frame.axes[b], q)
            twist = atan2(model.dot(model.cross(first, second), q), model.dot(first, second))
            angles.add(f"strutTypes {kind['id']} twist", radians(kind["twistDeg"]), twist, pi)
    chords.check(near)
    angles.check(level)
    print(f"note: printed lengths lie up to {chords.beyond():.2e} mm and angles up to {degrees(angles.beyond()):.2e} degrees "
          "outside the struts that they stand for")
    order = [(t["chordMm"], *(e["axialDeg"] for e in t["ends"]), t["twistDeg"]) for t in plan["strutTypes"]]
    if order != sorted(order):
        out.append("strutTypes: expected by chord, axial angles, twist, found another order")
    for t in plan["strutTypes"]:
        if t["ends"][0]["axialDeg"] > t["ends"][1]["axialDeg"]:
            out.append(f"strutTypes {t['id']}: expected the smaller axial angle at end a")


def hubs(frame, plan, level, out):
    """Every hub against its hub type: holes, gaps, and how far it is turned."""
    number = {name: k for k, name in enumerate(frame.ids)}
    kinds = {h["id"]: h for h in plan["hubTypes"]}
    there = [{} for _ in frame.points]
    for member in plan["members"]:
        for here, other in (("a", "b"), ("b", "a")):
            n = number[member[here]["node"]]
            there[n].setdefault(member[here]["hole"], []).append((number[member[other]["node"]], member["strutType"], here))
    gaps = Groups(out)
    for node, taken in zip(plan["nodes"], there):
        n, kind = number[node["id"]], kinds[node["hubType"]]
        count = len(kind["struts"])
        if sorted(taken) != list(range(1, count + 1)) or any(len(one) != 1 for one in taken.values()):
            out.append(f"nodes {node['id']}: expected one strut in each of {count} holes, found {sorted(taken)}")
            continue
        up = model.upright(frame.axes[n], (0.0, 0.0, 1.0))
        if hypot(up[0], up[1]) < 1e-6:
            up = model.upright(frame.axes[n], (1.0, 0.0, 0.0))
        azimuths = []
        for hole, (other, strut, end) in ((k, taken[k][0]) for k in sorted(taken)):
            said = kind["struts"][hole - 1]
            if said["strutType"] != strut or not same_end(plan, said, end):
                out.append(f"nodes {node['id']} hole {hole}: expected {strut} {end}, found {said['strutType']} {said['end']}")
            flat = model.upright(frame.axes[n], model.minus(frame.points[other], frame.points[n]))
            azimuths.append(atan2(up[1], up[0]) - atan2(flat[1], flat[0]))      # clockwise from up
        if not abs(wrapped(azimuths[0] + radians(node["turnDeg"]))) <= HAIR:
            out.append(f"nodes {node['id']} turnDeg: expected {degrees(model.turn(-azimuths[0]))!r}, found {node['turnDeg']!r}")
        for k in range(count):
            said = kind["struts"][(k + 1) % count]["azimuthDeg"] - kind["struts"][k]["azimuthDeg"]
            gap = azimuths[(k + 1) % count] - azimuths[k]
            gaps.add(f"hubTypes {kind['id']} gap after hole {k + 1}", radians(said), gap, 2 * pi)
    gaps.check(level, slack=level)       # the printed gaps must close to a full turn


def same_end(plan, said, end):
    kind = next(t for t in plan["strutTypes"] if t["id"] == said["strutType"])
    symmetric = kind["ends"][0]["axialDeg"] == kind["ends"][1]["axialDeg"]
    return said["end"] == ("a" if symmetric else end)


def follows(given, frame, plan, holes):
    """What follows from the printed chords, axial angles and azimuths, in the form of a plan."""
    thick, tie, middle = holes.strut["max"], given["strut"].get("tieHole"), holes.outer - holes.wall["mid"] / 2
    used, hub_count = Counter(m["strutType"] for m in plan["members"]), Counter(n["hubType"] for n in plan["nodes"])
    types, axials = [], {}
    for k, t in enumerate(plan["strutTypes"]):
        ends = []
        for end, said in zip("ab", t["ends"]):
            axials[t["id"], end] = radians(said["axialDeg"])
            ends.append({"setbackMm": model.setback(radians(said["axialDeg"]), thick, given["ring"]["radiusMm"], given["endGapMm"])})
            if tie:
                ends[-1]["drillMm"] = tie["fromEndMm"]
        types.append({"id": model.letters("S", k), "count": used[t["id"]], "ends": ends,
                      "cutMm": t["chordMm"] - ends[0]["setbackMm"] - ends[1]["setbackMm"]})
        if not tie:
            types[-1]["twistDeg"] = 0.0
    hub_types, patterns, first = [], [], []
    for node in plan["nodes"]:
        if node["hubType"] not in first:
            first.append(node["hubType"])
    for k, h in enumerate(plan["hubTypes"]):
        lean = [axials[s["strutType"], s["end"]] for s in h["struts"]]
        below = [middle * tan(a) for a in lean]
        name = first[k] if k < len(first) else None
        hub_types.append({"id": model.letters("H", k), "count": hub_count[name], "pattern": model.letters("C", k),
                          "collarBelowNodeMm": sum(below) / len(below), "nodeSpreadMm": max(below) - min(below),
                          "struts": [{"axialDeg": degrees(a)} for a in lean]})
        if name != h["id"]:
            hub_types[-1]["id"] = name          # hub types are named by their first nodes
        patterns.append({"id": model.letters("C", k), "count": hub_count[h["id"]],
                         "holes": [holes.hole(n + 1, radians(s["azimuthDeg"]), a) for n, (s, a) in enumerate(zip(h["struts"], lean))]})
    high, low = max(p[2] for p in frame.points), min(p[2] for p in frame.points)
    order, percent = given["order"], given["order"]["sparesPercent"]
    n, m, feet = len(frame.points), len(frame.edges), len(frame.feet)
    made = lambda needed: model.made(order["domes"] * needed, percent)
    return {"dome": {"heightMm": high - low, "apexZMm": high, "lowestNodeZMm": low,
                     "lowestCollarPointZMm": model.lowest_collar_point(given, plan)},
            "counts": {"hubs": n, "struts": m, "strutEnds": 2 * m, "collars": n, "rings": n, "ties": 2 * m, "feet": feet,
                       "maxwell": m - 3 * n + (3 * feet or 6)},
            "order": {"domes": order["domes"], "spares": percent, "collars": sum(made(p["count"]) for p in patterns),
                      "struts": sum(made(t["count"]) for t in types), "rings": made(n), "ties": made(2 * m)},
            "strutTypes": types, "hubTypes": hub_types, "patterns": patterns}
