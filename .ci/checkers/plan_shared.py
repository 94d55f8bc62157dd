"""Collars whose pattern is shared by several hub types, and holes at different heights, for plan_model.py.

Which pattern a hub type takes, how far it is turned on it and where the holes lie is the plan's choice, as the nodes of a
frame from outside are; everything that follows from the choice is worked out here, and the choice is held against its
rules. Lines are laid in space, through the two hole centres of every member; nothing is taken from angles alone.

Millimetres and radians; a hub's frame: its axis outward, azimuths clockwise seen from above.
"""
from math import acos, asin, atan2, cos, degrees, hypot, inf, pi, radians, sin, sqrt, tan

import plan_contact
from plan_dome import cross, dot, length, minus, plus, times, unit
from plan_job import Refused

SAME = 1e-9


class Choice:
    """What the plan chose: per hub type its pattern, its turn, which way up, and the holes of its struts; per pattern its
    azimuths."""

    def __init__(self, plan, models):
        self.by_agreement = "sharing" in plan
        wrong = []
        patterns = {p["id"]: k for k, p in enumerate(plan["patterns"])}
        self.azimuths = [[radians(h["azimuthDeg"]) for h in p["holes"]] for p in plan["patterns"]]
        self.pattern, self.turn, self.holes, self.flipped = [], [], [], []
        for k, model in enumerate(models):
            hub = plan["hubTypes"][k] if k < len(plan["hubTypes"]) else {}
            at = patterns.get(hub.get("pattern"))
            holes = [s.get("hole") for s in hub.get("struts", ())]
            if at is None or len(holes) != len(model):
                raise Refused([f"hubTypes[{k}]: expected a pattern and {len(model)} struts, found {hub.get('pattern')!r}, "
                               f"{len(holes)}"])
            count = len(self.azimuths[at])
            if any(not isinstance(h, int) or not 1 <= h <= count for h in holes) or len(set(holes)) != len(holes):
                raise Refused([f"hubTypes[{k}]: expected a hole of its own from 1 to {count} for each strut, found {holes}"])
            self.pattern.append(at)
            self.turn.append(radians(hub["turnOnPatternDeg"]))
            self.holes.append([h - 1 for h in holes])
            self.flipped.append(hub.get("flipped", False) is True)
        for k, azimuths in enumerate(self.azimuths):
            if azimuths[0] != 0 or any(not a < b for a, b in zip(azimuths, azimuths[1:] + [2 * pi])):
                wrong.append(f"patterns[{k}]: expected azimuths from 0, ascending, below a full turn")
            users = [t for t, p in enumerate(self.pattern) if p == k]
            if not any(len(self.holes[t]) == len(azimuths) for t in users):
                wrong.append(f"patterns[{k}]: expected a hub that uses every hole")
            for t in users:
                # In cyclic order: the hub's struts go round once.
                steps = [(b - a) % len(azimuths) for a, b in zip(self.holes[t], self.holes[t][1:] + self.holes[t][:1])]
                if self.flipped[t]:          # seen from outside its holes go round the other way
                    steps = [len(azimuths) - step for step in steps]
                if len(steps) > 1 and sum(steps) != len(azimuths):
                    wrong.append(f"hubTypes[{t}]: expected its holes in cyclic order, found {self.holes[t]}")
        if wrong:
            raise Refused(wrong)


def half_turn(point):
    """A collar turned over about its line ahead: (ahead, clockwise, up)."""
    return point[0], -point[1], -point[2]


def on_node(point, turn, flipped):
    """A point of a collar (toward its 0 line, clockwise seen on TOP, toward TOP) as it comes to lie on the node, in the hub
    type's own frame (toward its 0 line, clockwise seen from outside, outward): turned until the hub type's 0 line lies
    ahead, and then turned over about that line if it is put on upside down."""
    c, s = cos(turn), sin(turn)
    turned = point[0] * c + point[1] * s, point[1] * c - point[0] * s, point[2]
    return half_turn(turned) if flipped else turned


class Line:
    """One end of a member's axis as it lies: tilt, swing and lean in its hole, how far it misses the hub's axis, and how
    far from its foot (its point nearest to the hub's axis) the strut begins."""

    def __init__(self, tilt, swing, lean, miss, begin, plan_foot):
        self.tilt, self.swing, self.lean, self.miss, self.begin = tilt, swing, lean, miss, begin
        self.plan_foot = plan_foot          # the foot in the hub's plane: along its 0 line and clockwise from it

    def on_collar(self, flipped):
        """The same line as the collar has it: where it is upside down, down is up and clockwise the other way."""
        if not flipped:
            return self
        ahead = cos(self.tilt) * cos(self.swing), cos(self.tilt) * sin(self.swing), -sin(self.tilt)
        x, y, z = half_turn(ahead)
        return Line(atan2(-z, hypot(x, y)), atan2(y, x), self.lean, self.miss, self.begin, self.plan_foot)


def radial(dome, node, first, azimuth):
    """The direction in the hub's plane at this azimuth from the direction called first."""
    return plus(times(cos(azimuth), first), times(sin(azimuth), cross(first, dome.axes[node])))


def member_lines(dome, hubs, radius, middle, choice, backs):
    """Per node, per strut in the order of its own holes, its Line."""
    slot = [{hole[3]: k for k, hole in enumerate(holes)} for holes in hubs.holes]
    first = []
    for node, holes in enumerate(hubs.holes):
        a, b = dome.edges[holes[0][3]]
        q = minus(dome.points[b if a == node else a], dome.points[node])
        n = dome.axes[node]
        first.append(unit(minus(q, times(dot(q, n), n))))
    out = [[None] * len(holes) for holes in hubs.holes]
    for edge, ends in enumerate(dome.edges):
        centres, spokes = [], []
        for node in ends:
            k = slot[node][edge]
            kind = hubs.node_types[node]
            azimuths = choice.azimuths[choice.pattern[kind]]
            at = azimuths[choice.holes[kind][k]]
            x, y, _ = on_node((cos(at), sin(at), 0.0), choice.turn[kind], choice.flipped[kind])
            e = radial(dome, node, first[node], atan2(y, x))
            axial = hubs.holes[node][k][1]
            spokes.append(e)
            centres.append(plus(times(radius, dome.points[node]), times(middle, e),
                                times(-middle * tan(axial), dome.axes[node])))
        along = unit(minus(centres[1], centres[0]))
        feet, here = [], []
        for node, centre, e, q in zip(ends, centres, spokes, (along, times(-1, along))):
            n, at = dome.axes[node], times(radius, dome.points[node])
            side = cross(e, n)
            # The point of the line nearest to the axis: square to both.
            flat = minus(q, times(dot(q, n), n))
            foot = plus(centre, times(-dot(minus(centre, at), flat) / dot(flat, flat), q))
            off = minus(foot, at)
            off = minus(off, times(dot(off, n), n))
            feet.append(foot)
            here.append((atan2(-dot(q, n), length(flat)), atan2(dot(q, side), dot(q, e)),
                         atan2(length(cross(q, e)), dot(q, e)), length(off), (dot(off, first[node]), dot(off, cross(first[node], n)))))
        chord = radius * dome.type_chords[dome.edge_types[edge]]
        extra = (length(minus(feet[1], feet[0])) - chord) / 2
        for node, (tilt, swing, lean, miss, flat_foot) in zip(ends, here):
            k = slot[node][edge]
            out[node][k] = Line(tilt, swing, lean, miss, backs(hubs.holes[node][k][1]) + extra, flat_foot)
    return out


class Shared:
    """The lines of a plan by hub type and by hole, and what follows from them."""

    def __init__(self, dome, hubs, radius, middle, choice, backs):
        self.choice, self.hubs = choice, hubs
        lines = member_lines(dome, hubs, radius, middle, choice, backs)
        self.by_type = [[[] for _ in model] for model in hubs.models]
        for node, kind in enumerate(hubs.node_types):
            for k, line in enumerate(lines[node]):
                self.by_type[kind][k].append(line)
        self.users = [[[] for _ in azimuths] for azimuths in choice.azimuths]
        for kind, model in enumerate(hubs.models):
            for k in range(len(model)):
                hole = choice.holes[kind][k]
                self.users[choice.pattern[kind]][hole] += [line.on_collar(choice.flipped[kind])
                                                           for line in self.by_type[kind][k]]
        self.needed = [[max(line.lean for line in lines) for lines in holes] for holes in self.users]
        self.lines = lines

    def strut(self, kind, k):
        """What hubTypes[].struts[] says of one strut."""
        lines, hole = self.by_type[kind][k], self.choice.holes[kind][k]
        return {"hole": hole + 1, "leanDeg": degrees(max(line.lean for line in lines)),
                "extraLeanDeg": degrees(self.needed[self.choice.pattern[kind]][hole] - abs(self.hubs.models[kind][k][1])),
                "missMm": max(line.miss for line in lines)}

    def furthest(self, pattern, hole, said):
        """The line that leans furthest in a hole; of those that lean alike, the one whose swing is nearest to what is said."""
        alike = [line for line in self.users[pattern][hole] if line.lean > self.needed[pattern][hole] - SAME]
        return min(alike, key=lambda line: abs(line.swing - said))

    def extremes(self):
        """The largest extra lean and miss of all."""
        struts = [self.strut(kind, k) for kind, model in enumerate(self.hubs.models) for k in range(len(model))]
        return max(s["extraLeanDeg"] for s in struts), max(s["missMm"] for s in struts)


def heights(tilts, middle, converging):
    """Heights of holes over the collar's mid-plane, so that the axes of all struts meet in one point."""
    if not converging:
        return [0.0] * len(tilts)
    rises = [middle * tan(tilt) for tilt in tilts]
    meet = (max(rises) + min(rises)) / 2
    return [meet - rise for rise in rises]


# ---------------------------------------------------------------- webs, engagement, crowding

def web(radius, gap, size_a, size_b, height_a, height_b):
    """Least distance between the outlines of two holes, developed on a cylinder: alternately the nearest point of one
    outline to a point of the other, then Newton's method on both angles."""
    if height_a == height_b:
        return radius * (gap - asin(size_a / 2 / radius) - asin(size_b / 2 / radius))

    def outline(f, at, height, p):
        return at + radius * asin(p * sin(f) / radius), height + p * cos(f)

    def apart(f, g):
        a, b = outline(f, 0.0, height_a, size_a / 2), outline(g, radius * gap, height_b, size_b / 2)
        return hypot(a[0] - b[0], a[1] - b[1])
    best = min(((apart(pi / 2 + i * pi / 60, -pi / 2 + j * pi / 60), pi / 2 + i * pi / 60, -pi / 2 + j * pi / 60)
                for i in range(-20, 21) for j in range(-20, 21)))
    at, step = best[1:], pi / 60
    value = best[0]
    while step > 1e-9:
        moved = False
        for df, dg in ((1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, -1), (1, -1), (-1, 1)):
            there = apart(at[0] + df * step, at[1] + dg * step)
            if there < value:
                value, at, moved = there, (at[0] + df * step, at[1] + dg * step), True
        if not moved:
            step /= 3
    return value


def engagement(line, hole, inner, middle):
    """How far the strut's end lies inside the inner rim, along the strut: least over the rim."""
    c, s = cos(line.tilt) * cos(line.swing), cos(line.tilt) * sin(line.swing)
    p = hole / 2
    foot = -middle * cos(line.swing) / cos(line.tilt)

    def along(f):
        return (sqrt(inner * inner - (p * sin(f)) ** 2) - middle) * c + p * sin(f) * s - p * cos(f) * sin(line.tilt)
    best = min(range(72), key=lambda k: along(2 * pi * k / 72))
    low, high = 2 * pi * (best - 1) / 72, 2 * pi * (best + 1) / 72
    for _ in range(60):
        a, b = low + (high - low) * 0.382, high - (high - low) * 0.382
        low, high = (low, b) if along(a) < along(b) else (a, high)
    return along((low + high) / 2) - foot - line.begin


def crowding(lines, azimuths, thick):
    """How much further in both of two neighbours could begin before they meet: they meet where their lines cross in plan.

    Struts that lie nearly opposite cross anywhere; they are taken from their feet, and never are the nearest."""
    one, other = lines
    ways = [(cos(a), sin(a)) for a in azimuths]
    apart = ways[0][0] * ways[1][0] + ways[0][1] * ways[1][1]
    begins = []
    for line, way, foot, across in ((one, ways[0], other.plan_foot, ways[1]), (other, ways[1], one.plan_foot, ways[0])):
        # From this line's foot to the crossing, in plan.
        off = (foot[0] - line.plan_foot[0], foot[1] - line.plan_foot[1])
        turned = way[0] * across[1] - way[1] * across[0]
        out = (off[0] * across[1] - off[1] * across[0]) / turned if apart > -0.866 else 0.0
        begins.append(line.begin - out / cos(line.tilt))
    between = acos(max(-1.0, min(1.0, sin(one.tilt) * sin(other.tilt)
                                 + cos(one.tilt) * cos(other.tilt) * cos(azimuths[1] - azimuths[0]))))
    return min(begins) - thick / 2 / tan(between / 2)


# ---------------------------------------------------------------- the collars of a plan

class Laid:
    """All collars: which pattern each hub type takes, where the holes lie, and what that does to its struts."""

    def __init__(self, holes, hubs, choice, shared, converging, backs):
        self.sizes, self.hubs, self.shared = holes, hubs, shared
        self.middle = holes.outer - holes.wall["mid"] / 2
        models = hubs.models
        self.pattern = choice.pattern if choice else list(range(len(models)))
        self.turn = choice.turn if choice else [0.0] * len(models)
        self.flipped = choice.flipped if choice else [False] * len(models)
        self.hosts = len(set(self.pattern)) < len(models) or shared is not None
        self.hole = choice.holes if choice else [list(range(len(model))) for model in models]
        self.azimuths = choice.azimuths if choice else [[h[0] for h in model] for model in models]
        # The tilts of all struts that use a hole, as the collar has them.
        used = [[[] for _ in azimuths] for azimuths in self.azimuths]
        for kind, model in enumerate(models):
            for k, strut in enumerate(model):
                tilt = half_turn((0.0, 0.0, strut[1]))[2] if self.flipped[kind] else strut[1]
                used[self.pattern[kind]][self.hole[kind][k]].append(tilt)
        tilts = [[(min(a) + max(a)) / 2 for a in pattern] for pattern in used]
        self.leans = [[sorted(map(abs, a)) for a in pattern] for pattern in used]
        self.heights = [heights(pattern, self.middle, converging) for pattern in tilts]
        self.backs = backs

    def lines(self, kind):
        """Per place of a hub type, the lines of its struts; where no pattern is shared they are all alike."""
        if self.shared:
            for node, one in enumerate(self.hubs.node_types):
                if one == kind:
                    yield self.shared.lines[node]
        else:
            yield [Line(h[1], 0.0, abs(h[1]), 0.0, self.backs(h[1]), (0.0, 0.0)) for h in self.hubs.models[kind]]

    def different(self, kind, k):
        """The lines of one strut that are not alike."""
        if not self.shared:
            return [next(iter(self.lines(kind)))[k]]
        return {tuple(round(x, 9) for x in (line.swing, line.begin, *line.plan_foot)): line
                for line in self.shared.by_type[kind][k]}.values()

    def seat(self, kind, setbacks, thick):
        """Where collar and ring of a hub type sit; struts end square, at their setback from the node."""
        tops, at = [], self.heights[self.pattern[kind]]
        up = [on_node((0.0, 0.0, at[hole]), self.turn[kind], self.flipped[kind])[2] for hole in self.hole[kind]]
        meets = [up[k] + self.middle * tan(h[1]) for k, h in enumerate(self.hubs.models[kind])]
        for meet, h, back in zip(meets, self.hubs.models[kind], setbacks):
            for side in (thick / 2 * cos(h[1]), -thick / 2 * cos(h[1])):
                tops.append(meet - back * sin(h[1]) + side)
        return {"collarBelowNodeMm": sum(meets) / len(meets), "nodeSpreadMm": max(meets) - min(meets),
                "ringMiddleMm": (max(tops) + min(tops)) / 2, "ringLeastWidthMm": max(tops) - min(tops)}

    def seen(self, kind, azimuth):
        """An azimuth of the collar, seen from outside from the hub type's own 0 line."""
        x, y, _ = on_node((cos(azimuth), sin(azimuth), 0.0), self.turn[kind], self.flipped[kind])
        return atan2(y, x)

    def up(self, kind, turn):
        """The azimuth on the collar of what lies at this azimuth from the hub type's 0 line: turned back over, then back."""
        x, y, z = cos(turn), sin(turn), 0.0
        if self.flipped[kind]:
            x, y, z = half_turn((x, y, z))
        x, y, z = on_node((x, y, z), -self.turn[kind], False)
        return atan2(y, x)

    def drilled_alike(self):
        """Where no pattern is shared by agreement: holes that do not lie where their struts point, and patterns that are the
        same after a turn, or turned over."""
        wrong = []
        for kind, model in enumerate(self.hubs.models):
            for k, strut in enumerate(model):
                off = self.seen(kind, self.azimuths[self.pattern[kind]][self.hole[kind][k]]) - strut[0]
                if abs(sin(off / 2)) > 1e-8:
                    wrong.append(f"hubTypes[{kind}].struts[{k}]: expected its hole where it points, found it {degrees(off)!r} off")
        for k, leans in enumerate(self.leans):
            if any(hole[-1] - hole[0] > 1e-8 for hole in leans):
                wrong.append(f"patterns[{k}]: expected struts that lean alike in each hole, found {leans}")
        whole = [[(cos(a), sin(a), h, t[-1]) for a, h, t in zip(*p)] for p in zip(self.azimuths, self.heights, self.leans)]
        for k, one in enumerate(whole):
            for n in range(k):
                if len(whole[n]) == len(one) and any(
                        self.same(one, whole[n], a, flipped) for a in self.azimuths[n] for flipped in (False, True)):
                    wrong.append(f"patterns[{k}]: expected another drilling than that of patterns[{n}], turned or turned over")
        return wrong

    @staticmethod
    def same(one, other, turn, flipped):
        moved = [(*on_node(hole[:3], turn, flipped), hole[3]) for hole in other]
        return all(any(max(abs(a - b) for a, b in zip(hole, there)) < 1e-7 for there in moved) for hole in one)

    def strut(self, kind, k):
        return self.shared.strut(kind, k) if self.shared else {"hole": self.hole[kind][k] + 1}

    def holes(self, pattern, plan):
        out = []
        for k, (azimuth, height) in enumerate(zip(self.azimuths[pattern], self.heights[pattern])):
            if self.shared:
                users = self.shared.users[pattern][k]
                said = radians(plan["patterns"][pattern]["holes"][k].get("swingDeg", 0.0))
                furthest = self.shared.furthest(pattern, k, said)
                out.append(self.sizes.shared_hole(k + 1, azimuth, height, users, furthest))
            else:
                out.append(self.sizes.hole(k + 1, azimuth, self.leans[pattern][k][-1], height))
        return out

    def sharing(self, given):
        extra, miss = self.shared.extremes()
        out = {"hubTypes": len(self.hubs.models), "patterns": len(self.azimuths), "extraLeanDeg": extra, "missMm": miss}
        for key, name in (("extraLeanLimitDeg", "extraLeanDeg"), ("missLimitMm", "missMm")):
            if name in given.get("limits", {}):
                out[key] = given["limits"][name]
        return out

    def checks(self, given, built):
        """Per check that the plan makes of collars: its code, part, whether the least or the largest counts, and the value of
        each place; where the warning limit differs from place to place, with that limit."""
        outer, width, thick = self.sizes.outer, given["collar"]["widthMm"], self.sizes.strut["max"]
        inner = outer - self.sizes.wall["max"]
        biggest = {c["id"]: c["asDrilledMaxMm"] for c in self.sizes.cutters}
        tie, warn = given["strut"].get("tieHole"), given.get("limits", {}).get("webWarnDiameters", 0.0)
        out, sizes = [], []
        for pattern in built["patterns"]:
            holes, part = pattern["holes"], f"pattern {pattern['id']}"
            sizes.append([biggest.get(h["cutter"], h["asDrilledMm"]) for h in holes] if all("cutter" in h for h in holes) else None)
            size = sizes[-1]
            if not size:
                continue
            slack = {f"hole {h['n']}": h["slackDeg"] for h in holes}
            out += [("HOLE_SLACK", part, max, slack), ("HOLE_SHORT_OF_REACH", part, min, slack)]
            out.append(("WEB_TO_EDGE", part, min, {f"hole {h['n']}": (width / 2 - abs(h["heightMm"]) - s / 2, warn * s)
                                                   for h, s in zip(holes, size)}))
            if max(size) < 2 * inner:
                webs = {}
                for a, b in self.pairs(len(holes)):
                    gap = radians(holes[b]["azimuthDeg"] - holes[a]["azimuthDeg"]) % (2 * pi)
                    webs[f"holes {a + 1} and {b + 1}"] = (web(inner, gap, size[a], size[b], holes[a]["heightMm"],
                                                              holes[b]["heightMm"]), warn * max(size[a], size[b]))
                out.append(("WEB_BETWEEN_HOLES", part, min, webs))
        for kind, hub in enumerate(built["hubTypes"]):
            part = f"hub {hub['id']} on pattern {hub['pattern']}" if self.hosts else f"pattern {hub['pattern']}"
            size, numbers, azimuths = sizes[self.pattern[kind]], self.hole[kind], self.azimuths[self.pattern[kind]]
            inside, crowd = {}, {}
            for lines in self.lines(kind):
                for k, line in enumerate(lines):
                    if size and max(size) < 2 * inner:
                        place = f"hole {numbers[k] + 1}"
                        inside[place] = min(inside.get(place, inf), engagement(line, size[numbers[k]], inner, self.middle))
            # Any line that a strut has at one place beside any that its neighbour has at another: on the safe side.
            for a, b in self.pairs(len(numbers)):
                crowd[f"holes {numbers[a] + 1} and {numbers[b] + 1}"] = min(
                    crowding((one, other), [self.seen(kind, azimuths[numbers[k]]) + line.swing
                                            for k, line in ((a, one), (b, other))], thick)
                    for one in self.different(kind, a) for other in self.different(kind, b))
            if inside:
                out.append(("STRUT_ENGAGEMENT", part, min, inside))
                if tie:
                    least = tie["fromEndMm"] + tie["diameterMm"] / 2
                    out.append(("STRUT_TIE_HOLE", part, min, {place: value - least for place, value in inside.items()}))
            out.append(("STRUT_CROWDING", part, min, crowd))
            out.append(("RING_COVER", part, min, {"centre ring": given["ring"]["widthMm"] - hub["ringLeastWidthMm"]}))
        if tie and "flatLengthMm" not in given["strut"]:
            out += [("TIE_HOLE_EDGE", "strut", min, {"tie hole": tie["fromEndMm"]}),
                    ("TIE_HOLE_SIDE", "strut", min, {"tie hole": given["strut"]["odMinMm"] / 2})]
        if self.shared:
            out += [("HOLE_EXTRA_LEAN", "shared patterns", max, {"": built["sharing"]["extraLeanDeg"]}),
                    ("HUB_MISS", "shared patterns", max, {"": built["sharing"]["missMm"]})]
        return out

    @staticmethod
    def pairs(n):
        return [(k, (k + 1) % n) for k in range(n)] if n > 1 else []


def laid_out(holes, dome, hubs, radius, choice, converging, backs):
    middle = holes.outer - holes.wall["mid"] / 2
    shared = Shared(dome, hubs, radius, middle, choice, backs) if choice and choice.by_agreement else None
    return Laid(holes, hubs, choice, shared, converging, backs)


def worst_of(worst, values):
    """The value of the worst place, and how far each place is from being the worst."""
    pairs = {place: one if isinstance(one, tuple) else (one, 0.0) for place, one in values.items()}
    at = worst(pairs, key=lambda place: pairs[place][0] - pairs[place][1])
    least = pairs[at][0] - pairs[at][1]
    return pairs[at][0], {place: value - warn - least for place, (value, warn) in pairs.items()}


def compare_checks(found, plan, lines, length_tolerance=1e-6, angle_tolerance=1e-6):
    """Holds the model's checks against the plan's: each must be there, with the worst value, at a place that has it."""
    said = {(c["code"], c["where"].split(" / ")[0]): c for c in plan.get("checks") or []}
    largest = 0.0
    for code, part, worst, values in found:
        if not values:
            continue
        check = said.get((code, part))
        if check is None:
            lines.append(f"checks {code} {part}: expected one, found none")
            continue
        place = check["where"].partition(" / ")[2]
        # The worst place is the one with the least margin.
        value, margins = worst_of(worst, values)
        allowed = length_tolerance if check["unit"] == "mm" else angle_tolerance
        if "value" not in check or not abs(check["value"] - value) <= allowed:
            lines.append(f"checks {code} {part}: expected {value!r}, found {check.get('value')!r}")
        elif place not in margins or not abs(margins[place]) <= 2 * allowed:
            lines.append(f"checks {code} {part}: expected at {[p for p, m in margins.items() if abs(m) <= allowed]}, "
                         f"found at {place!r}")
        else:
            largest = max(largest, abs(check["value"] - value))
        if check["unit"] not in ("mm", "deg") or "warn" not in check:
            lines.append(f"checks {code} {part}: expected a unit and a limit")
        elif "value" in check:
            side = 1 if check["sense"] == "at-least" else -1
            good = lambda key: key not in check or side * (check["value"] - check[key]) >= 0
            verdict = "stop" if not good("stop") else "warn" if not good("warn") else "pass"
            if verdict != check["verdict"]:
                lines.append(f"checks {code} {part}: expected {verdict}, found {check['verdict']}")
    return largest
