#!/usr/bin/python3
"""A second model of the main job, to check plan.json without any of the program's own code.

    plan_model.py PLAN.json [--verbose]      recompute everything from the plan's "inputs" and compare
    plan_model.py PLAN.json --fewest         the same, and search the fewest patterns where hub types share them
    plan_model.py PLAN.json --job JOB.toml   the same, but with the inputs derived from the job file (and the
                                             plan's own "inputs" compared with them)
    plan_model.py --job JOB.toml [--cutters LIST] [--verbose]   print the model's plan as JSON
    plan_model.py --self-test                check this model against figures from outside it

LIST is "ID=SIZE,ID=SIZE..." (as-drilled = marked size) or a JSON file: a list like inputs.cutters, or a plan.
Exit codes: 0 all agrees, 1 something does not (or the input cannot be used), 2 wrong command line.
Lengths agree within 1e-6 mm, angles within 1e-6 degrees, everything else exactly.

Frame: origin at the sphere's centre, +z through the apex, +x through T1-1. Azimuths are clockwise seen from outside.
Inside this file: millimetres and radians; names ending in Deg hold degrees.
Methods on purpose other than closed forms: all face grids are projected and welded, azimuths come from turning the
hub's axis upright, contact from searching both rims of the hole. Domes and frames are in plan_dome.py.
"""
import argparse
import itertools
import json
import os
import sys
import tomllib
from bisect import bisect_right
from collections import Counter
from math import acos, asin, atan2, ceil, cos, degrees, hypot, inf, pi, radians, sin, sqrt, tan

sys.dont_write_bytecode = True
from plan_compare import compare, compare_whole   # noqa: E402
from plan_job import Refused, job_inputs, piece_of, read_cutters   # noqa: E402 (no cache files beside the checkers)
import plan_buy   # noqa: E402
import plan_dome   # noqa: E402
import plan_contact   # noqa: E402
import plan_fewest   # noqa: E402
import plan_frame   # noqa: E402
import plan_shared   # noqa: E402

SAME = 1e-9                  # two computed values this close are one value
LETTERS = "ABCDEFGHJKLMNPRTUVWXY"   # no I, O, Q, S, Z
GOLDEN = (sqrt(5) - 1) / 2


# ---------------------------------------------------------------- numbers and vectors

def dot(a, b):
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def minus(a, b):
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def unit(a):
    length = sqrt(dot(a, a))
    return (a[0] / length, a[1] / length, a[2] / length)


def least(f, low, high, samples=24, steps=34):
    """Least value of a smooth f on [low, high]: dense samples, then golden section around the best one."""
    width = (high - low) / samples
    best = min(range(samples + 1), key=lambda k: f(low + k * width))
    a, b = max(low, low + (best - 1) * width), min(high, low + (best + 1) * width)
    value = f(low + best * width)
    c, d = b - GOLDEN * (b - a), a + GOLDEN * (b - a)
    fc, fd = f(c), f(d)
    for _ in range(steps):
        if fc < fd:
            b, d, fd = d, c, fc
            c = b - GOLDEN * (b - a)
            fc = f(c)
        else:
            a, c, fc = c, d, fd
            d = a + GOLDEN * (b - a)
            fd = f(d)
    return min(value, fc, fd, f(a), f(b))


def bisect(f, low, high):
    """Where f changes from >= 0 (at low) to < 0 (at high), to the last bit or so."""
    for _ in range(60):
        middle = (low + high) / 2
        if f(middle) >= 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def turn(angle):
    """The angle in [0, 2 pi); what lies a hair under a full turn is 0."""
    angle %= 2 * pi
    return 0.0 if angle > 2 * pi - SAME else angle


def ranks(values, same=SAME):
    """A function value -> rank, values this close sharing one; refuses values that are neither equal nor apart."""
    ordered = sorted(values)
    starts = ordered[:1]
    for before, value in zip(ordered, ordered[1:]):
        # What is computed is equal or apart; what is measured starts a new kind once it is too far from the first of one.
        if value - (before if same == SAME else starts[-1]) > same:
            if value - before < 10 * same and same == SAME:
                raise Refused([f"values {before!r} and {value!r} are neither equal nor apart"])
            starts.append(value)

    def rank(value):
        at = bisect_right(starts, value)
        near = [k for k in (at - 1, at) if 0 <= k < len(starts)]
        # Below its own start by rounding, or anywhere up to the next one.
        return at if at < len(starts) and starts[at] - value <= SAME else near[0]
    return rank


def letters(prefix, index):
    """HA, HB ... HY, HAA ...: counting without a zero in the 21 letters."""
    text = ""
    index += 1
    while index:
        index, digit = divmod(index - 1, len(LETTERS))
        text = LETTERS[digit] + text
    return prefix + text


# ---------------------------------------------------------------- sphere and dome

def sphere(n):
    """Nodes (unit vectors) and small triangles of the class I sphere of frequency n, equal chords on the flat face."""
    low, wide = 1 / sqrt(5), 2 / sqrt(5)
    corners = [(0.0, 0.0, 1.0), (0.0, 0.0, -1.0)]
    for k in range(5):
        upper, lower = radians(72 * k), radians(72 * k + 36)
        corners += [(wide * cos(upper), wide * sin(upper), low), (wide * cos(lower), wide * sin(lower), -low)]
    edge = 4 / sqrt(10 + 2 * sqrt(5))
    near = lambda a, b: abs(sqrt(dot(minus(a, b), minus(a, b))) - edge) < 1e-9
    faces = [f for f in itertools.combinations(corners, 3) if near(f[0], f[1]) and near(f[0], f[2]) and near(f[1], f[2])]
    nodes, cells, triangles = [], {}, []

    def weld(p):
        key = tuple(round(x * 1e5) for x in p)
        for step in itertools.product((0, -1, 1), repeat=3):
            index = cells.get((key[0] + step[0], key[1] + step[1], key[2] + step[2]))
            if index is not None and max(abs(x) for x in minus(nodes[index], p)) < SAME:
                return index
        cells[key] = len(nodes)
        nodes.append(p)
        return len(nodes) - 1

    for a, b, c in faces:
        grid = {(i, j): weld(unit(tuple(((n - i - j) * a[k] + i * b[k] + j * c[k]) / n for k in range(3))))
                for i in range(n + 1) for j in range(n + 1 - i)}
        for i, j in grid:
            if i + j < n:
                triangles.append((grid[i, j], grid[i + 1, j], grid[i, j + 1]))
            if i + j < n - 1:
                triangles.append((grid[i + 1, j], grid[i + 1, j + 1], grid[i, j + 1]))
    return nodes, triangles


class Dome:
    """The unit dome: nodes in the order of (tier, place), edges as pairs of node numbers, first end first."""

    def __init__(self, frequency, rows):
        points, triangles = sphere(frequency)
        neighbours = {}
        for corner in triangles:
            for a, b in itertools.permutations(corner, 2):
                neighbours.setdefault(a, set()).add(b)
        tier = {max(range(len(points)), key=lambda k: points[k][2]): 0}
        front = list(tier)
        for distance in range(1, rows + 1):
            front = sorted({b for a in front for b in neighbours[a] if b not in tier})
            tier.update((b, distance) for b in front)
        kept = sorted(tier, key=lambda k: (tier[k], turn(-atan2(points[k][1], points[k][0])) if tier[k] else 0.0))
        number = {k: i for i, k in enumerate(kept)}
        self.points = [points[k] for k in kept]
        self.tiers = [tier[k] for k in kept]
        self.edges = sorted((number[a], number[b]) for a in kept for b in neighbours[a] if b in tier and number[a] < number[b])
        self.faces = [tuple(number[k] for k in t) for t in triangles if all(k in tier for k in t)]
        sizes = Counter(self.tiers)
        width = len(str(max(sizes.values())))
        self.ids = [f"T{t}-{place + 1:0{width}d}" for t in range(rows + 1) for place in range(sizes[t])]
        self.foot = [k for k, t in enumerate(self.tiers) if t == rows]
        self.axes = self.points
        self.sort_struts(SAME, SAME)

    def sort_struts(self, near, level, twists=True):
        """Strut types: equal chord, the same two axial angles, the same twist. End a has the smaller angle."""
        self.chords = [sqrt(dot(minus(self.points[a], self.points[b]), minus(self.points[a], self.points[b])))
                       for a, b in self.edges]
        both, twisted = [], []
        for a, b in self.edges:
            q = unit(minus(self.points[b], self.points[a]))
            both.append((lean(self.axes[a], q), lean(self.axes[b], tuple(-x for x in q))))
            first, second = cross(self.axes[a], q), cross(self.axes[b], q)
            angle = atan2(dot(cross(first, second), q), dot(first, second))
            angle = angle - pi if angle > pi / 2 + SAME else angle + pi if angle < -pi / 2 + SAME else angle
            twisted.append(angle if twists else 0.0)
        chord, angle, twist = ranks(self.chords, near), ranks([x for pair in both for x in pair], level), ranks(twisted, level)
        keys, self.reversed = [], []
        for c, (first, second), t in zip(self.chords, both, twisted):
            low, high = sorted((angle(first), angle(second)))
            self.reversed.append(angle(first) > angle(second))
            keys.append((chord(c), low, high, twist(t)))
        kinds = sorted(set(keys))
        at = {key: k for k, key in enumerate(kinds)}
        self.edge_types = [at[key] for key in keys]
        self.types = len(kinds)
        self.symmetric = [key[1] == key[2] for key in kinds]
        model = [self.edge_types.index(k) for k in range(self.types)]
        self.type_chords = [min(c for c, t in zip(self.chords, self.edge_types) if t == k) if self.types < 500
                            else self.chords[model[k]] for k in range(self.types)]
        self.type_axials = [both[k][::-1] if self.reversed[k] else both[k] for k in model]
        # Both ends of a symmetric strut are one end: the smaller value stands for both.
        self.type_axials = [(min(pair),) * 2 if even else pair for pair, even in zip(self.type_axials, self.symmetric)]
        self.type_twists = [twisted[k] for k in model]

    def end(self, edge, node):
        """Which end of its type an edge has at a node: 0 for a, 1 for b."""
        if self.symmetric[self.edge_types[edge]]:
            return 0
        return int((self.edges[edge][1] == node) != self.reversed[edge])


class Built(Dome):
    """Any frame of plan_dome.py."""

    def __init__(self, frame, near=SAME, level=SAME, twists=True):
        self.points, self.axes, self.edges, self.ids = frame.points, frame.axes, frame.edges, frame.ids
        self.foot, self.roles, self.moved = frame.feet, frame.roles, frame.moved
        self.sort_struts(near, level, twists)


def lean(axis, q):
    """Axial angle of a direction away from a hub: positive where it leans inward."""
    sine = cross(q, axis)
    return atan2(sqrt(dot(sine, sine)), dot(q, axis)) - pi / 2


# ---------------------------------------------------------------- hubs

def upright(axis, q):
    """q after the shortest turn that brings the hub's axis to +z (about +x for the antipode)."""
    if axis[2] < -1 + 1e-12:
        return (q[0], -q[1], -q[2])
    k = cross(axis, (0.0, 0.0, 1.0))       # Rodrigues' rotation, with 1 - cos = sin^2 / (1 + cos)
    kq = cross(k, q)
    along = dot(k, q) / (1 + axis[2])
    return tuple(q[i] * axis[2] + kq[i] + k[i] * along for i in range(3))


class Hubs:
    """Per node its struts in the order of hole numbers, its type and its turn; per type one model hub."""

    def __init__(self, dome, level=SAME):
        ends = [[] for _ in dome.points]
        for edge, (a, b) in enumerate(dome.edges):
            for here, there in ((a, b), (b, a)):
                axis, q = dome.axes[here], unit(minus(dome.points[there], dome.points[here]))
                flat = upright(axis, q)
                up = upright(axis, (0.0, 0.0, 1.0))
                if hypot(up[0], up[1]) < 1e-6:
                    up = (1.0, 0.0, 0.0)        # apex and antipode: the +x meridian
                from_up = turn(atan2(up[1], up[0]) - atan2(flat[1], flat[0]))     # clockwise from outside
                kind = (dome.edge_types[edge], dome.end(edge, here))
                axial = dome.type_axials[kind[0]][kind[1]]
                ends[here].append((from_up, axial, kind, edge))
        for end in ends:
            end.sort()
        gaps = [[turn(e[(k + 1) % len(e)][0] - e[k][0]) for k in range(len(e))] for e in ends]
        gap_rank = ranks([g for one in gaps for g in one], level)
        axial_rank = ranks([s[1] for e in ends for s in e], level)
        self.holes, self.turns, self.node_types, self.cycles = [], [], [], []
        for end, gap in zip(ends, gaps):
            cycle = [(gap_rank(g), axial_rank(s[1]), s[2]) for g, s in zip(gap, end)]
            turned = [tuple(cycle[k:] + cycle[:k]) for k in range(len(cycle))]
            first = min(turned)
            starts = [k for k, t in enumerate(turned) if t == first]
            start = min(starts, key=lambda k: turn(-end[k][0]))   # symmetric hubs: the least turn
            if first not in self.cycles:
                self.cycles.append(first)
            self.node_types.append(self.cycles.index(first))
            self.turns.append(turn(-end[start][0]))
            self.holes.append([(turn(s[0] - end[start][0]), s[1], s[2], s[3]) for s in end[start:] + end[:start]])
        self.models = [self.holes[self.node_types.index(k)] for k in range(len(self.cycles))]


# ---------------------------------------------------------------- contact of a round strut in a round hole

def clearance(tilt, hole, strut, inner, outer):
    """Play (mm) across the strut at this tilt, in the collar's axial plane; negative when it cannot lean so far.

    The strut's surface at angle psi round it has the lateral offset y = r sin(psi). Seen along the strut, the rim
    point over that y bounds where the axis may lie: from above and from below, at the inner and at the outer rim.
    """
    r, p, c, s = strut / 2, hole / 2, cos(tilt), sin(tilt)
    if p < r:
        return hole - strut

    def bound(radius, side):
        def room(psi):
            y2 = (r * sin(psi)) ** 2
            return side * sqrt(radius * radius - y2) * s + sqrt(p * p - y2) * c - r * cos(psi)
        return least(room, 0.0, pi / 2)
    return min(bound(inner, 1), bound(outer, 1)) + min(bound(inner, -1), bound(outer, -1))


def tilt_limit(hole, strut, inner, outer):
    """The lean at which the strut binds on both rims, or None where it does not enter or the hole is too large."""
    if hole < strut or hole >= 2 * inner:
        return None
    return bisect(lambda t: clearance(t, hole, strut, inner, outer), 0.0, pi / 2)


def required_hole(tilt, strut, inner, outer):
    """The smallest hole that lets the strut reach this lean, or None."""
    top = 2 * inner * (1 - 1e-12)
    if clearance(tilt, top, strut, inner, outer) < 0:
        return None
    return bisect(lambda size: -clearance(tilt, size, strut, inner, outer), strut, top)


def setback(tilt, strut, ring, gap):
    """From node to cut end, so that the nearest point of the end face is ring + gap from the hub's axis."""
    tilt, r = abs(tilt), strut / 2

    def short(s):
        face = lambda phi: hypot(s * cos(tilt) - r * cos(phi) * sin(tilt), r * sin(phi))
        return ring + gap - least(face, 0.0, pi, 48)
    return bisect(short, r * tan(tilt), 2 * (ring + gap + r) / cos(tilt))


def reach(tilt, hole, inner, middle):
    """Nearest point of the inner rim along the strut, measured from the node (no setback taken off)."""
    tilt, p = abs(tilt), hole / 2
    above = middle * tan(tilt)
    return least(lambda phi: sqrt(inner * inner - (p * sin(phi)) ** 2) * cos(tilt) - (p * cos(phi) - above) * sin(tilt),
                 0.0, pi, 48)


# ---------------------------------------------------------------- the plan

def check_inputs(given):
    """All that is wrong with the inputs, one line each."""
    wrong = []

    def need(path, kind, test, text):
        value = given
        for key in path.split("."):
            value = value.get(key) if isinstance(value, dict) else None
        good = isinstance(value, kind) and not isinstance(value, bool)
        if not (good and test(value)):
            wrong.append(f"inputs.{path}: expected {text}, found {value!r}")
        return value
    number = (int, float)
    need("dome", dict, lambda v: "base" in v or "frame" in v, "a dome or a frame (or the old frequency and rows)")
    need("size.rule", str, lambda v: v in ("radius", "floor-diameter", "height", "longest-strut", "pieces-per-stock",
                                              "as-drawn"), "a known rule")
    if (given.get("size") or {}).get("rule") != "as-drawn":
        need("size.valueMm", number, lambda v: 0 < v < inf, "a length above 0")
    for low, mid, high in (("strut.odMinMm", "strut.odMm", "strut.odMaxMm"),
                           ("collar.wallMinMm", "collar.wallMm", "collar.wallMaxMm")):
        a = need(low, number, lambda v: v > 0, "a length above 0")
        b = need(mid, number, lambda v: not isinstance(a, number) or v >= a, f"at least {a}" if a else "a length above 0")
        need(high, number, lambda v: not isinstance(b, number) or b <= v < inf, f"at least {b}" if b else "a length above 0")
    wall = (given.get("collar") or {}).get("wallMaxMm")
    need("collar.outerRadiusMm", number, lambda v: v > (wall if isinstance(wall, number) else 0), "above the wall")
    thin = (given.get("collar") or {}).get("wallMinMm")
    if (given.get("collar") or {}).get("rimsMm") is not None:
        need("collar.rimsMm", number, lambda v: 0 <= v < (thin / 2 if isinstance(thin, number) else inf),
             "from 0 to less than half the thinnest wall")
    if (given.get("collar") or {}).get("trialPiece") is not None:
        least = need("collar.trialPiece.bearingWallMinMm", number, lambda v: v >= 0, "a length from 0")
        mean = need("collar.trialPiece.bearingWallMm", number,
                    lambda v: not isinstance(least, number) or v >= least, f"at least {least}")
        need("collar.trialPiece.bearingWallMaxMm", number,
             lambda v: (not isinstance(mean, number) or v >= mean) and (not isinstance(wall, number) or v <= wall),
             f"from {mean} to the wall")
    need("collar.widthMm", number, lambda v: v > 0, "a length above 0")
    need("ring.radiusMm", number, lambda v: v >= 0, "a length from 0")
    need("endGapMm", number, lambda v: v >= 0, "a length from 0")
    if need("fit", str, lambda v: v in ("reach", "nearest"), "reach or nearest") == "nearest":
        need("nearestBandDeg", number, lambda v: v >= 0, "an angle from 0")
    need("order.domes", int, lambda v: v >= 1, "a whole number from 1")
    need("order.sparesPercent", number, lambda v: v >= 0, "a percentage from 0")
    if (given.get("strut") or {}).get("tieHole") is not None:
        need("strut.tieHole.fromEndMm", number, lambda v: v > 0, "a length above 0")
    for k, cutter in enumerate(given.get("cutters") or []):
        sizes = [cutter.get(key) for key in ("asDrilledMinMm", "asDrilledMm", "asDrilledMaxMm")]
        if not (all(isinstance(v, number) for v in sizes) and 0 < sizes[0] <= sizes[1] <= sizes[2] < inf):
            wrong.append(f"inputs.cutters[{k}]: expected as-drilled min <= mean <= max, found {sizes}")
    return wrong


class Holes:
    """Sizes, cutters and limits of holes in one collar stock; remembers what it has worked out."""

    def __init__(self, given):
        collar, strut = given["collar"], given["strut"]
        self.outer = collar["outerRadiusMm"]
        self.wall = {"min": collar["wallMinMm"], "mid": collar["wallMm"], "max": collar["wallMaxMm"]}
        self.rims = collar.get("rimsMm", 0)     # eased this far at 45 degrees, where the strut bears
        piece = collar.get("trialPiece")        # what bears of the wall, measured, in the middle of its nominal thickness
        self.bears = piece and {"min": piece["bearingWallMinMm"], "mid": piece["bearingWallMm"],
                                "max": piece["bearingWallMaxMm"]}
        self.strut = {"min": strut["odMinMm"], "mid": strut["odMm"], "max": strut["odMaxMm"]}
        self.cutters = sorted(given.get("cutters") or [], key=lambda c: c["asDrilledMm"])
        self.mills, self.boring = given.get("endMills") or [], given.get("bore") or "never"
        self.fit, self.band = given["fit"], radians(given.get("nearestBandDeg") or 0)
        self.clearance = given.get("leastClearanceMm") or (given.get("drilling") or {}).get("leastClearanceMm") or 0
        self.known = {}

    def bore(self, wall):
        return self.outer - self.wall[wall]

    def edges(self, bears):
        """Radii at which a strut touches inside and outside, where so much of the wall bears."""
        if not self.bears:
            return self.outer - bears + self.rims, self.outer - self.rims
        middle = self.outer - self.wall["mid"] / 2
        return middle - bears / 2, middle + bears / 2

    def bearing_wall(self):
        """What bears of the wall: measured, or all of it."""
        return self.bears or self.wall

    def limit(self, size, strut, wall, bearing=0.0):
        return self.limit_at(size, self.strut[strut], self.bearing_wall()[wall], bearing)

    def limit_at(self, size, strut, bears, bearing=0.0):
        """The lean at which a strut of this diameter binds in this bearing, or None."""
        side = abs(sin(bearing))           # alike to both sides, and up as down
        key = (size, strut, bears, round(side, 12))
        if key not in self.known:
            inner, outer = self.edges(bears)
            bore = self.bore("max") if self.bears else self.outer - bears
            self.known[key] = (None if size >= 2 * bore else
                               tilt_limit(size, strut, inner, outer) if side < 1e-12
                               else plan_contact.lean_limit(asin(side), size, strut, inner, outer))
        return self.known[key]

    def required(self, tilt):
        key = ("required", tilt)
        if key not in self.known:
            size = required_hole(tilt, self.strut["max"], *self.edges(self.bearing_wall()["max"]))
            self.known[key] = None if size is None or size >= 2 * self.bore("max") else size
        return self.known[key]

    def required_in(self, lines):
        """The least hole for struts that lie along these lines, or None."""
        sizes = []
        for lean, bearing in {(round(line.lean, 12), round(abs(sin(plan_contact.direction(line.tilt, line.swing)[1])), 12))
                              for line in lines}:
            key = ("required", lean, bearing)
            if key not in self.known:
                room = (self.strut["max"], *self.edges(self.bearing_wall()["max"]))
                size = (required_hole(lean, *room) if bearing < 1e-9 else
                        plan_contact.required(lean, asin(bearing), *room))
                self.known[key] = None if size is None or size >= 2 * self.bore("max") else size
            sizes.append(self.known[key])
        return None if None in sizes else max(sizes)

    def choose(self, tilt, size, bearing=0.0):
        """The cutter by the fit rule for a lean and the least hole that allows it, bored where that is the rule, or None."""
        drilled = self.drilled(tilt, size, bearing)
        bored = self.bored(tilt, size, bearing)
        return (bored or drilled) if self.boring == "always" else (drilled or bored)

    def bored(self, tilt, size, bearing):
        """The thickest end mill that goes round at a tenth of its diameter or more, with the least size in hundredths."""
        if size is None or self.boring == "never":
            return None
        least = max(size, self.strut["max"] + self.clearance)
        if self.fit != "reach":
            nominal = required_hole(tilt, self.strut["mid"], *self.edges(self.bearing_wall()["mid"])) \
                if abs(sin(bearing)) < 1e-9 else \
                plan_contact.required(tilt, asin(bearing), self.strut["mid"], *self.edges(self.bearing_wall()["mid"]))
            if nominal is None:
                return None
            least = max(nominal, self.strut["max"] + self.clearance)
        hundredths = int(least * 100)
        while hundredths / 100 < least - 1e-9:
            hundredths += 1
        wide, inner = hundredths / 100, self.bore("max")
        if wide >= 2 * inner:
            return None
        deep = self.outer - sqrt(inner * inner - least * least / 4)
        mills = [m for m in self.mills if wide - m["sizeMm"] >= 0.2 * m["sizeMm"]]
        if not mills:
            return None
        mill = min(mills, key=lambda m: (m["depthMm"] < deep, -m["sizeMm"], m["id"]))
        return {"id": f"{mill['id']}-{wide:.2f}", "asDrilledMinMm": wide, "asDrilledMm": wide, "asDrilledMaxMm": wide}

    def drilled(self, tilt, size, bearing):
        if size is None:
            return None
        if self.fit == "reach":
            return next((c for c in self.cutters if size <= c["asDrilledMinMm"]
                         and c["asDrilledMinMm"] >= self.strut["max"] + self.clearance
                         and c["asDrilledMaxMm"] < 2 * (self.outer - self.wall["max"])), None)
        best, miss = None, inf
        for cutter in self.cutters:
            shortest = self.limit(cutter["asDrilledMinMm"], "max", "max", bearing)
            limit = self.limit(cutter["asDrilledMm"], "mid", "mid", bearing)
            if shortest is None or limit is None or limit < tilt - self.band:
                continue
            if cutter["asDrilledMinMm"] < self.strut["max"] + self.clearance:
                continue
            if abs(limit - tilt) < miss - SAME:
                best, miss = cutter, abs(limit - tilt)
            elif limit > tilt:
                break
        return best

    def hole(self, number, azimuth, axial, height=0.0):
        """A hole for struts of one axial angle, straight in."""
        return self.sized(number, azimuth, height, abs(axial), 0.0, self.required(abs(axial)), 0.0)

    def shared_hole(self, number, azimuth, height, lines, furthest):
        """A hole for struts along several lines, and the one of them that leans furthest."""
        lean, bearing = plan_contact.direction(furthest.tilt, furthest.swing)
        return self.sized(number, azimuth, height, lean, bearing, self.required_in(lines), furthest.swing)

    def sized(self, number, azimuth, height, lean, bearing, size, swing):
        out = {"n": number, "azimuthDeg": degrees(azimuth), "heightMm": height, "arcMm": azimuth * self.outer,
               "neededLeanDeg": degrees(lean), "requiredMm": size}
        cutter = self.choose(lean, size, bearing)
        if cutter:
            limit = self.limit(cutter["asDrilledMm"], "mid", "mid", bearing)
            lowest = self.limit(cutter["asDrilledMinMm"], "max", "max", bearing)
            highest = self.limit(cutter["asDrilledMaxMm"], "min", "min", bearing)
            out.update({"cutter": cutter["id"], "asDrilledMm": cutter["asDrilledMm"], "tiltLimitDeg": degrees(limit),
                        "tiltMinDeg": degrees(lowest), "tiltMaxDeg": degrees(highest) if highest is not None else None,
                        "slackDeg": degrees(limit) - degrees(lean), "swingDeg": degrees(swing),
                        **self.by_chance(cutter, bearing)})
        return out

    def by_chance(self, cutter, bearing):
        """How the limit moves with hole, strut and wall: for 0.1 mm of each, and with all spreads together by chance."""
        nominal = (cutter["asDrilledMm"], self.strut["mid"], self.bearing_wall()["mid"])
        spans = ((cutter["asDrilledMinMm"], cutter["asDrilledMaxMm"]), (self.strut["min"], self.strut["max"]),
                 (self.bearing_wall()["min"], self.bearing_wall()["max"]))

        def moved(which, low, high):
            ends = [self.limit_at(*(size if k == which else nominal[k] for k in range(3)), bearing) for size in (low, high)]
            return None if None in ends else ends[1] - ends[0]
        slopes = [moved(k, nominal[k] - 0.05, nominal[k] + 0.05) for k in range(3)]
        alone = [moved(k, *span) if span[0] < span[1] else 0.0 for k, span in enumerate(spans)]
        out = {name: degrees(slope) for name, slope in zip(("perHoleDeg", "perStrutDeg", "perWallDeg"), slopes) if slope is not None}
        if None not in alone:
            out["tiltSpreadDeg"] = degrees(sqrt(sum((change / 2) ** 2 for change in alone)))
        return out


def made(needed, percent):
    """What is made of one type: what is needed and its spares."""
    return needed + (max(1, ceil(needed * percent / 100 - SAME)) if percent else 0)


def sized(given, shell, holes):
    """mm of the shell's unit, so that the given size comes out."""
    setbacks = lambda t: sum(setback(a, holes.strut["max"], given["ring"]["radiusMm"], given["endGapMm"])
                             for a in shell.type_axials[t])
    foot = [shell.points[k] for k in shell.foot]
    floor = 2 * max((hypot(p[0], p[1]) for p in foot), default=0.0)
    heights = [p[2] for p in shell.points]
    size = given["size"]
    value = size.get("valueMm")
    if size["rule"] == "pieces-per-stock":
        value = piece_of(size["stockLengthMm"], size["trimMm"], size["kerfMm"], size["pieces"])
    if size["rule"] == "floor-diameter" and floor < 1e-9:
        raise Refused(["inputs.size: a whole sphere has no floor diameter"])
    return {"radius": lambda: value, "floor-diameter": lambda: value / floor,
            "height": lambda: value / (max(heights) - min(heights))}.get(
        size["rule"], lambda: min((value + setbacks(t)) / shell.type_chords[t] for t in range(shell.types)))()


def framed(given, holes, plan):
    """The whole frame and mm of its unit."""
    dome, twists = given["dome"], bool(given["strut"].get("tieHole"))
    if "frame" in dome:
        if plan is None:
            raise Refused(["inputs.dome.frame: expected a plan or a file that holds the frame's nodes"])
        near = dome["frame"]["alikeMm"]
        level = near / holes.outer
        return Built(plan_dome.outside(dome, plan), near, level, twists), 1.0, level
    shell, tiers = plan_dome.shell(dome)
    radius = sized(given, Built(shell, twists=twists), holes)
    return Built(plan_dome.finished(shell, tiers, dome, radius, (holes.strut["max"] / 2, holes.outer)), twists=twists), radius, SAME


def whole_inputs(given):
    """The inputs with a dome in full: the old form with frequency and rows, or keys left out, are filled in."""
    dome = given.get("dome")
    if dome is None and isinstance(given.get("frequency"), int) and isinstance(given.get("rows"), int):
        dome = {"base": "icosahedron", "breakdown": [given["frequency"], 0], "tiers": given["rows"]}
    if not isinstance(dome, dict):
        return given
    usual = {"axis": "fitted"} if "frame" in dome else {
        "subdivision": "chords", "up": "vertex", "heightFactor": 1, "axis": "fitted", "foot": "natural",
        "footPlane": "least-move", "riserDiagonals": False, "tiersFrom": "apex"}
    return {**given, "dome": {**usual, **dome}}


def build(given, plan=None, chosen=None):
    """The plan (a dict like plan.json), its checks of collars, and the lowest point of a collar.

    A frame from outside takes its nodes from a plan, shared patterns their choice from the plan that is checked."""
    chosen = chosen or plan
    given = whole_inputs(given)
    wrong = check_inputs(given)
    if wrong:
        raise Refused(wrong)
    holes = Holes(given)
    dome, radius, level = framed(given, holes, plan)
    hubs = Hubs(dome, level)
    thick, tie = holes.strut["max"], given["strut"].get("tieHole")
    type_count, hub_count = Counter(dome.edge_types), Counter(hubs.node_types)
    backs = {}

    def end(axial):
        if axial not in backs:
            backs[axial] = setback(axial, thick, given["ring"]["radiusMm"], given["endGapMm"])
        out = {"axialDeg": degrees(axial), "setbackMm": backs[axial]}
        if tie:
            out["drillMm"] = tie["fromEndMm"]
        return out
    strut_types = []
    for t, pair in enumerate(dome.type_axials):
        ends, chord = [end(a) for a in pair], radius * dome.type_chords[t]
        strut_types.append({"id": letters("S", t), "count": type_count[t], "chordMm": chord,
                            "cutMm": chord - ends[0]["setbackMm"] - ends[1]["setbackMm"],
                            "twistDeg": degrees(dome.type_twists[t]), "ends": ends})
    if min(t["cutMm"] for t in strut_types) <= 0:
        raise Refused(["inputs.size: struts come out with no length"])
    middle = holes.outer - holes.wall["mid"] / 2
    if given.get("patterns") == "shared" and not (chosen and "sharing" in chosen):
        raise Refused(["drilling.patterns: shared patterns are the plan's choice; expected a plan to hold against them"])
    if given.get("flip") and not chosen:
        raise Refused(["drilling.flip: which collars are turned over is the plan's choice; expected a plan to hold against it"])
    choice = plan_shared.Choice(chosen, hubs.models) if chosen and ("sharing" in chosen or given.get("flip")) else None
    if choice and any(choice.flipped) and not given.get("flip"):
        raise Refused(["hubTypes: expected no collar upside down without drilling.flip"])
    laid = plan_shared.laid_out(holes, dome, hubs, radius, choice, converging(given, chosen), lambda a: end(a)["setbackMm"])
    if choice and not choice.by_agreement:
        wrong = laid.drilled_alike()
        if wrong:
            raise Refused(wrong)
    hub_types = [{"id": letters("H", k), "count": hub_count[k], "pattern": letters("C", laid.pattern[k]),
                  **({"flipped": laid.flipped[k]} if given.get("flip") else {}),
                  "turnOnPatternDeg": degrees(laid.turn[k]), **laid.seat(k, [end(h[1])["setbackMm"] for h in model], thick),
                  "struts": [{"strutType": letters("S", h[2][0]), "end": "ab"[h[2][1]], "azimuthDeg": degrees(h[0]),
                              "axialDeg": degrees(h[1]), **laid.strut(k, n)} for n, h in enumerate(model)]}
                 for k, model in enumerate(hubs.models)]
    collars = Counter(laid.pattern[kind] for kind in hubs.node_types)
    patterns = [{"id": letters("C", k), "count": collars[k], "holes": laid.holes(k, chosen)} for k in range(len(collars))]
    nodes = []
    for k, (name, kind, point, axis, up) in enumerate(zip(dome.ids, hubs.node_types, dome.points, dome.axes, hubs.turns)):
        node = {"id": name, "hubType": letters("H", kind), "xyzMm": [radius * x for x in point], "axis": list(axis),
                "turnDeg": degrees(turn(laid.up(kind, up))), "flipped": laid.flipped[kind]}
        if dome.moved[k]:
            node["movedMm"] = radius * dome.moved[k]
        nodes.append(node)
    hole_of = {(node, h[3]): laid.hole[hubs.node_types[node]][n] + 1
               for node, model in enumerate(hubs.holes) for n, h in enumerate(model)}
    width = len(str(len(dome.edges)))
    members = []
    for k, (a, b) in enumerate(dome.edges):
        member = {"id": f"M{k + 1:0{width}d}", "strutType": letters("S", dome.edge_types[k])}
        if dome.roles[k] != "shell":
            member["role"] = dome.roles[k]
        first, second = (b, a) if dome.reversed[k] else (a, b)
        member["a"] = {"node": dome.ids[first], "hole": hole_of[first, k]}
        member["b"] = {"node": dome.ids[second], "hole": hole_of[second, k]}
        members.append(member)
    feet = len(dome.foot)
    count = {"hubs": len(nodes), "struts": len(members), "strutEnds": 2 * len(members), "collars": len(nodes),
             "rings": len(nodes), "ties": 2 * len(members), "feet": feet,
             "maxwell": len(members) - 3 * len(nodes) + (3 * feet or 6)}
    domes, percent = given["order"]["domes"], given["order"]["sparesPercent"]
    heights = [p[2] for p in dome.points]
    whole = {"heightMm": radius * (max(heights) - min(heights)), "apexZMm": radius * max(heights),
             "lowestNodeZMm": radius * min(heights)}
    if "frame" not in given["dome"]:
        whole["radiusMm"] = radius
        floor = 2 * max((hypot(*dome.points[k][:2]) for k in dome.foot), default=0.0)
        whole["floorDiameterMm"] = radius * floor if floor > SAME else None
        whole["tiers"] = max(int(name[1:].split("-")[0]) for name in dome.ids)
    built = {
        "dome": whole,
        "counts": count,
        "order": {"domes": domes, "spares": percent, "collars": sum(made(domes * p["count"], percent) for p in patterns),
                  "struts": sum(made(domes * t["count"], percent) for t in strut_types),
                  "rings": made(domes * count["rings"], percent), "ties": made(domes * count["ties"], percent)},
        "strutTypes": strut_types, "hubTypes": hub_types, "nodes": nodes, "members": members, "patterns": patterns}
    if choice and choice.by_agreement:
        built["sharing"] = laid.sharing(given)
    whole["lowestCollarPointZMm"] = lowest_collar_point(given, built)
    return built, laid.checks(given, built), whole["lowestCollarPointZMm"]


def converging(given, plan):
    """Whether the holes of a collar lie at heights that bring the struts to one point."""
    if "heights" in given:
        return given["heights"] == "converging"
    return any(h["heightMm"] != 0 for p in (plan or {}).get("patterns", ()) for h in p["holes"])


def lowest_collar_point(given, plan):
    """Lowest z of any collar: its mid-plane lies the mean of R_m tan(axial) inward of its node."""
    outer, half = given["collar"]["outerRadiusMm"], given["collar"]["widthMm"] / 2
    below = {h["id"]: h["collarBelowNodeMm"] for h in plan["hubTypes"]}
    lowest = inf
    for node in plan["nodes"]:
        n = node["axis"]
        lowest = min(lowest, node["xyzMm"][2] - n[2] * below[node["hubType"]] - abs(n[2]) * half - outer * hypot(n[0], n[1]))
    return lowest


# ---------------------------------------------------------------- command line

def print_margins(found, lowest):
    for code, part, worst, values in found:
        margins = plan_shared.worst_of(worst, values)[1] if values else {}
        for place, value in values.items():
            print(f"check {code} {part} {place} {value!r}{'' if margins[place] else ' *'}")
    print(f"margin all lowestCollarPointZMm {lowest!r} (z from the sphere's centre)")


def in_old_form(model):
    """Takes out what plans did not have that named only a frequency and rows."""
    for name in ("feet", "maxwell"):
        del model["counts"][name]
    for node in model["nodes"]:
        del node["axis"]
    for strut in (s for hub in model["hubTypes"] for s in hub["struts"]):
        del strut["end"]


def check_plan(options):
    """Compares a plan with the model; returns the exit code."""
    with open(options.plan, encoding="utf-8") as file:
        plan = json.load(file)
    if not isinstance(plan, dict) or not isinstance(plan.get("inputs"), dict):
        raise Refused(["expected an object with an object 'inputs'"])
    given, drawn, first = plan["inputs"], plan, []
    if options.job:
        given, drawn = read_job(options, plan["inputs"].get("cutters"))
        # What was chosen of patterns and heights, and the limits of sharing, show in the plan's parts.
        shown = {"patterns", "heights", "limits", "cutters"}
        first = compare({"inputs": {k: v for k, v in given.items() if k not in shown}}, plan).lines
        if (given["patterns"] == "shared") != ("sharing" in plan):
            first.append(f"sharing: expected {'present' if given['patterns'] == 'shared' else 'absent'} with patterns = "
                         f"{given['patterns']}")
    model, found, lowest = build(given, drawn, plan)
    if "dome" not in plan["inputs"]:
        in_old_form(model)
    out = compare_whole(model, plan)
    if out.lines and "frame" in given["dome"]:
        # Within a tolerance struts may be grouped otherwise: then the plan's groups are held against the frame itself.
        import plan_alike
        out = plan_alike.whole(given, plan, drawn)
        print("note: grouped otherwise than in the model; the groups were checked member by member")
    else:
        worst = plan_shared.compare_checks(found, plan, out.lines)
        print(f"note: {len(found)} checks of collars, largest difference {worst:.3e}")
    plan_buy.check_buy(plan, out.lines)
    if options.fewest and "sharing" in plan:
        fewest(given, plan, drawn, out.lines)
    out.lines[:0] = first
    for line in out.lines:
        print("MISMATCH " + line)
    if options.verbose:
        print_margins(found, lowest)
    print(out.summary())
    return 1 if out.lines else 0


def fewest(given, plan, drawn, lines):
    """Holds the numbers of patterns against a full search."""
    given = whole_inputs(given)
    holes = Holes(given)
    dome, radius, level = framed(given, holes, drawn)
    said = plan["sharing"]
    found = plan_fewest.fewest(Hubs(dome, level), dome, radius, holes.outer - holes.wall["mid"] / 2,
                               radians(said["extraLeanLimitDeg"]), said["missLimitMm"], bool(given.get("flip")))
    if found is None:
        print(f"note: more than {plan_fewest.MOST} hub types; the fewest patterns were not searched")
        return
    if said["atLeast"] > found["alone"]:
        lines.append(f"sharing.atLeast: expected at most {found['alone']}, found {said['atLeast']}")
    if said["patterns"] < found["helped"]:
        lines.append(f"sharing.patterns: expected at least {found['helped']}, found {said['patterns']}")
    print(f"note: fewest patterns {found['alone']} where the far end of a strut does its worst, {found['helped']} where it "
          f"helps; the plan has {said['patterns']}, and says at least {said['atLeast']}"
          + ("" if said["atLeast"] <= found["helped"] else ", which holds only if hubs are judged by themselves"))


def read_job(options, cutters):
    """The inputs from the job file named on the command line, and the frame of its file as a plan has it, or None."""
    with open(options.job, "rb") as file:
        job = tomllib.load(file)
    given, drawn = job_inputs(job, read_cutters(options.cutters) if options.cutters else cutters or []), None
    if "frame" in given["dome"]:
        dome = job["dome"]
        if dome.get("up", "z") not in plan_frame.UP:
            raise Refused([f"dome.up: expected z or y, found {dome['up']!r}"])
        drawn, unit_name = plan_frame.frame(os.path.join(os.path.dirname(options.job), dome["frame"]), dome.get("frame-unit"),
                                            dome.get("up", "z"), given["dome"]["frame"]["mergeMm"])
        given["dome"]["frame"]["unit"] = unit_name
    return given, drawn


def print_job(options):
    """Prints the model's plan of a job file as JSON."""
    given, drawn = read_job(options, None)
    with open(options.job, "rb") as file:
        title = tomllib.load(file).get("title")
    model, found, lowest = build(given, drawn)
    whole = {"job": {"title": title}, "inputs": given, **model}
    if options.verbose:
        whole["checks"] = [{"code": code, "where": part, "values": values} for code, part, _, values in found]
    json.dump(whole, sys.stdout, indent=1, ensure_ascii=True)
    print()
    return 0


def main():
    parser = argparse.ArgumentParser(description="An independent model of the main job; checks a plan.json.")
    parser.add_argument("plan", nargs="?", metavar="PLAN.json")
    parser.add_argument("--job", metavar="JOB.toml", help="derive the inputs from this job file")
    parser.add_argument("--cutters", metavar="LIST", help="with --job: ID=SIZE,... or a JSON file")
    parser.add_argument("--verbose", action="store_true", help="print the margins of each pattern too")
    parser.add_argument("--fewest", action="store_true", help="search the fewest patterns, too, where they are shared")
    parser.add_argument("--self-test", action="store_true", help="check the model itself")
    options = parser.parse_args()
    if options.self_test:
        import plan_self_test
        return plan_self_test.run()
    if not options.plan and not options.job:
        parser.error("name a plan or a job")
    try:
        return check_plan(options) if options.plan else print_job(options)
    except Refused as fault:
        for line in fault.args[0]:
            print("REFUSED " + line, file=sys.stderr)
    except (OSError, ValueError) as fault:        # unreadable files, JSON and TOML that do not parse
        print(f"REFUSED {fault}", file=sys.stderr)
    except (AttributeError, KeyError, TypeError) as fault:
        print(f"REFUSED the inputs are not of the expected form: {fault!r}", file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
