"""How few patterns can serve all hub types of a plan: an exhaustive search for plan_model.py.

A pattern serves a group of hub types when holes and hubs can be turned so that the azimuth error of every strut stays in
its window. That is a system of bounds on differences, which has a solution when no cycle of bounds is negative; so each
way to put struts into holes is decided exactly, and no grid of angles is searched. Which hub types go together is then
tried in full.

Two windows are taken. The swing of a strut is its azimuth error e at this hub, and what the line's two holes shift it
aside: e + k (e - e'), where e' is the error at the far end, k = middle radius / length between the holes. A strut misses
the hub's axis by the middle radius times the sine of its swing.
- "alone": the far end does its worst. Every hub can be judged by itself; this is the rule by which the plan counts.
- "helped": the far end helps as much as any can. Nothing beyond this window is within the limits, whatever the rest of
  the dome does, so fewer patterns than are found with it cannot serve.
"""
from itertools import combinations
from math import acos, asin, cos, inf, pi, radians

MOST = 12                    # hub types that are searched in full
HAIR = radians(0.02)         # by so much a strut's tilt along its line can differ from its axial angle, and more


class Strut:
    def __init__(self, azimuth, axial, between):
        self.azimuth, self.axial, self.between = azimuth, abs(axial), between


class Limits:
    """What may be: extra lean (radians), miss (mm), and the collar's middle radius."""

    def __init__(self, extra, miss, middle, struts):
        self.extra, self.middle = extra, middle
        # The furthest aside that a hole may lie: the miss, or half of what the leanest strut's swing allows at its length.
        self.aside = min(miss, min(swing_left(s.axial, s.axial, extra) * s.between / 2 for s in struts))
        self.miss = miss

    def window(self, strut, least, helped):
        """How far the azimuth of a strut may be off in a hole whose least axial angle this is; negative if not at all."""
        k = self.middle / strut.between
        if helped:
            swing = swing_left(strut.axial, least, self.extra + HAIR)
            widest = asin(min(1.0, self.miss / self.middle)) + HAIR
            return (min(swing, widest) + k * widest) / (1 + k) if swing >= 0 else -1.0
        swing = swing_left(strut.axial, least, self.extra)
        return min(asin(min(1.0, self.aside / self.middle)), (swing - self.aside / strut.between) / (1 + k))


def swing_left(axial, least, extra):
    """The swing at which a strut leans as far as the hole's least axial angle and the extra lean say."""
    ratio = cos(least + extra) / cos(axial)
    return acos(ratio) if ratio <= 1 else -1.0


def in_a_mirror(struts):
    """The struts of a hub as its collar has them when it is upside down: the other way round, from the same 0 line."""
    return sorted((Strut(-s.azimuth % (2 * pi), s.axial, s.between) for s in struts), key=lambda s: s.azimuth)


class Group:
    """Hub types in the holes of one pattern, as bounds on differences of angles."""

    def __init__(self, limits, helped, count):
        self.limits, self.helped, self.count = limits, helped, count
        self.users = [[] for _ in range(count)]      # per hole: (hub, full turns, strut)

    def with_hub(self, hub, struts, first, holes):
        """The group with one more hub, its struts from the first on in these ascending holes; or None if it does not fit."""
        out = Group(self.limits, self.helped, self.count)
        out.users = [list(users) for users in self.users]
        for n, hole in enumerate(holes):
            at = (first + n) % len(struts)
            unwrapped = struts[at].azimuth + (2 * pi if first + n >= len(struts) else 0.0)
            out.users[hole].append((hub, unwrapped, struts[at]))
        return out if out.fits() else None

    def fits(self):
        """Whether no cycle of bounds is negative (Bellman and Ford)."""
        edges = []
        for hole, users in enumerate(self.users):
            if not users:
                continue
            least = min(strut.axial for _, _, strut in users)
            for hub, azimuth, strut in users:
                window = self.limits.window(strut, least, self.helped)
                if window < 0:
                    return False
                # |hole - hub - azimuth| <= window
                edges.append((("hub", hub), hole, azimuth + window))
                edges.append((hole, ("hub", hub), window - azimuth))
        low = {}
        for _ in range(len(self.users) + 2 + len({e[1] for e in edges})):
            changed = False
            for a, b, bound in edges:
                if low.get(a, 0.0) + bound < low.get(b, 0.0) - 1e-12:
                    low[b] = low.get(a, 0.0) + bound
                    changed = True
            if not changed:
                return True
        return False


class Search:
    """Groups of hub types that one pattern can serve."""

    def __init__(self, hubs, limits, helped, flip=False):
        self.hubs, self.limits, self.helped, self.flip = hubs, limits, helped, flip
        self.known = {}

    def serves(self, group):
        """Whether one pattern can serve these hub types; its fullest hub uses every hole."""
        group = tuple(sorted(group, key=lambda k: (-len(self.hubs[k]), k)))
        if group not in self.known:
            # Without its last hub the group must do, too: the fullest stays.
            self.known[group] = (len(group) < 3 or self.serves(group[:-1]) and self.serves(group[:1] + group[-1:])) \
                and self.placed(group)
        return self.known[group]

    def placed(self, group):
        count = len(self.hubs[group[0]])
        start = Group(self.limits, self.helped, count).with_hub(group[0], self.hubs[group[0]], 0, range(count))
        return start is not None and self.go_on(start, group[1:])

    def go_on(self, made, rest):
        if not rest:
            return True
        seen = [self.hubs[rest[0]]]
        if self.flip:
            seen.append(in_a_mirror(seen[0]))
        for struts in seen:
            for holes in combinations(range(made.count), len(struts)):
                for first in range(len(struts)):
                    more = made.with_hub(rest[0], struts, first, holes)
                    if more is not None and self.go_on(more, rest[1:]):
                        return True
        return False

    def fewest(self):
        """The least number of groups that hold all hub types."""
        # The hubs with most struts first: they open the groups that smaller ones may join.
        order = sorted(range(len(self.hubs)), key=lambda k: (-len(self.hubs[k]), k))
        best = [len(order) + 1]

        def put(n, groups):
            if len(groups) >= best[0]:
                return
            if n == len(order):
                best[0] = len(groups)
                return
            for k, group in enumerate(groups):
                if self.serves(group + (order[n],)):
                    put(n + 1, groups[:k] + [group + (order[n],)] + groups[k + 1:])
            put(n + 1, groups + [(order[n],)])
        put(0, [])
        return best[0]


def struts_of(hubs, type_chords, radius, middle):
    """Per hub type its struts; between the holes of a strut lies its chord less twice the middle radius, in plan."""
    return [[Strut(h[0], h[1], radius * type_chords[h[2][0]] * cos(h[1]) - 2 * middle) for h in model] for model in hubs.models]


def fewest(hubs, dome, radius, middle, extra, miss, flip=False):
    """The fewest patterns by both windows, or None where there are too many hub types for a full search; with flip, hubs
    may take their collars upside down. The first hub of a group never has to: the whole group may be turned over."""
    found = struts_of(hubs, dome.type_chords, radius, middle)
    if len(found) > MOST:
        return None
    limits = Limits(extra, miss, middle, [s for hub in found for s in hub])
    return {"alone": Search(found, limits, False, flip).fewest(),
            "helped": Search(found, limits, True, flip).fewest()}
