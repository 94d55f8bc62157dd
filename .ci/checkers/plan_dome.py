"""Domes and frames for plan_model.py: nodes, hub axes, members with their roles, feet and ids, from inputs.dome.

Frame: origin at the sphere's centre, +z up through the apex, +x the stated meridian. Unit: the horizontal radius (mm for
a frame from outside). Places count clockwise seen from above.

Methods on purpose other than whole-number bookkeeping: the lattice of a breakdown is laid on every face with complex
numbers and points are welded by their position; a neighbour beyond an edge is found by turning the plane of the face
about that edge; hub axes come from an eigenvalue in closed form and one step of inverse iteration.
"""
import heapq
import itertools
from math import acos, asin, atan2, cos, degrees, hypot, inf, pi, radians, sin, sqrt

from plan_job import Refused

SAME = 1e-9
BASES = {"icosahedron": 10, "octahedron": 4, "tetrahedron": 2}


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def plus(*vectors):
    return tuple(sum(v[i] for v in vectors) for i in range(3))


def minus(a, b):
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def times(k, a):
    return (k * a[0], k * a[1], k * a[2])


def length(a):
    return sqrt(dot(a, a))


def unit(a):
    return times(1 / length(a), a)


def turn(angle):
    """The angle in [0, 2 pi); what lies a hair under a full turn, or over none, is 0."""
    angle %= 2 * pi
    return 0.0 if angle > 2 * pi - SAME or angle < SAME else angle


def clockwise(p):
    return turn(-atan2(p[1], p[0])) if hypot(p[0], p[1]) > SAME else 0.0


# ---------------------------------------------------------------- sphere

def base(name):
    """Corners with the first at +z and the second on the +x meridian, and faces counter-clockwise seen from outside."""
    if name == "icosahedron":
        z, r = 1 / sqrt(5), 2 / sqrt(5)
        ring = [(r * cos(radians(-72 * k)), r * sin(radians(-72 * k)), z) for k in range(5)]
        corners = [(0.0, 0.0, 1.0), *ring, *[(x * cos(pi / 5) + y * sin(pi / 5), -x * sin(pi / 5) + y * cos(pi / 5), -z)
                                             for x, y, _ in ring], (0.0, 0.0, -1.0)]
    elif name == "octahedron":
        corners = [(0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, -1.0)]
    else:
        r = sqrt(8) / 3
        corners = [(0.0, 0.0, 1.0), *[(r * cos(radians(-120 * k)), r * sin(radians(-120 * k)), -1 / 3) for k in range(3)]]
    edge = min(length(minus(a, b)) for a, b in itertools.combinations(corners, 2))
    near = lambda a, b: abs(length(minus(corners[a], corners[b])) - edge) < 1e-9
    faces = []
    for a, b, c in itertools.combinations(range(len(corners)), 3):
        if near(a, b) and near(b, c) and near(a, c):
            out = dot(cross(minus(corners[b], corners[a]), minus(corners[c], corners[a])), corners[a])
            faces.append((a, b, c) if out > 0 else (a, c, b))
    return corners, faces


def turned(up, corners, points):
    """The points after the turn that brings the middle of an edge or a face up."""
    if up == "vertex":
        return points
    side = corners[1] if up == "edge" else corners[0]
    if up == "edge":
        z = unit(plus(corners[0], corners[1]))
    else:
        # The first face below corner 0, clockwise from the meridian: corner 0, corner 2, corner 1.
        z = unit(plus(corners[0], corners[1], corners[2]))
    x = unit(minus(side, times(dot(side, z), z)))
    y = cross(z, x)
    return [(dot(p, x), dot(p, y), dot(p, z)) for p in points]


class Sphere:
    """Points and edges of a whole sphere."""

    def __init__(self, name, breakdown, subdivision, up):
        self.points, self.cells, edges = [], {}, set()
        b, c = (int(step) for step in breakdown)
        corners, faces = base(name)
        omega = complex(0.5, sqrt(3) / 2)
        step = 1 / (b + c * omega)
        across = {}
        for face in faces:
            for k in range(3):
                across[face[k], face[(k + 1) % 3]] = face
        for face in faces:
            a, second, third = (corners[k] for k in face)
            east = minus(second, a)
            north = times(length(east), unit(cross(unit(cross(east, minus(third, a))), east)))
            for i in range(-c - 1, b + 2):
                for j in range(-1, b + c + 2):
                    z = (i + j * omega) * step
                    if not self.inside(z):
                        continue
                    here = self.node(plus(a, times(z.real, east), times(z.imag, north)), face, corners, subdivision, b)
                    for direction in (1, omega, omega - 1, -1, -omega, 1 - omega):
                        there = self.reached(z + direction * step, face, corners, across, subdivision, b)
                        if there is not None and there != here:
                            edges.add((min(here, there), max(here, there)))
        self.edges = edges
        self.points = turned(up, corners, self.points)

    @staticmethod
    def weights(z):
        """Barycentric weights of a point of the plane in which a face is 0, 1 and exp(i pi/3)."""
        third = z.imag / (sqrt(3) / 2)
        second = z.real - third / 2
        return 1 - second - third, second, third

    def inside(self, z):
        return min(self.weights(z)) > -1e-9

    def node(self, flat, face, corners, subdivision, frequency):
        point = unit(flat)
        if subdivision == "arcs":
            point = arcs(flat, [corners[k] for k in face], frequency)
        key = tuple(round(x * 1e4) for x in point)
        for shift in itertools.product((0, -1, 1), repeat=3):
            for index in self.cells.get((key[0] + shift[0], key[1] + shift[1], key[2] + shift[2]), ()):
                if max(abs(x) for x in minus(self.points[index], point)) < SAME:
                    return index
        self.cells.setdefault(key, []).append(len(self.points))
        self.points.append(point)
        return len(self.points) - 1

    def reached(self, z, face, corners, across, subdivision, frequency):
        weights = self.weights(z)
        outside = [k for k in range(3) if weights[k] < -1e-9]
        at = [corners[k] for k in face]
        if not outside:
            return self.node(plus(*(times(w, p) for w, p in zip(weights, at))), face, corners, subdivision, frequency)
        if len(outside) > 1:
            return None
        # Turn the plane about the edge that is crossed until it lies in the face beyond.
        k = outside[0]
        p, q = face[(k + 1) % 3], face[(k + 2) % 3]
        other = across[q, p]
        apex = next(v for v in other if v not in (p, q))
        middle = times(0.5, plus(corners[p], corners[q]))
        flat = plus(*(times(w, v) for w, v in zip(weights, at)))
        along = unit(minus(corners[q], corners[p]))
        offset = minus(flat, middle)
        beyond = unit(minus(corners[apex], plus(middle, times(dot(minus(corners[apex], middle), along), along))))
        inward = unit(minus(corners[face[k]], plus(middle, times(dot(minus(corners[face[k]], middle), along), along))))
        folded = plus(middle, times(dot(offset, along), along), times(-dot(offset, inward), beyond))
        normal = cross(minus(corners[q], corners[p]), minus(corners[apex], corners[p]))
        areas = []
        tri = (corners[p], corners[q], corners[apex])
        for m in range(3):
            u, v = tri[(m + 1) % 3], tri[(m + 2) % 3]
            areas.append(dot(cross(minus(u, folded), minus(v, folded)), normal))
        if min(areas) < -1e-9:
            return None
        return self.node(folded, other, corners, subdivision, frequency)


def arcs(flat, corners, n):
    """The node of a class I grid with equal arcs on the edges, from its place on the flat face."""
    normal = cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]))
    steps = []
    for m in range(3):
        u, v = corners[(m + 1) % 3], corners[(m + 2) % 3]
        steps.append(round(n * dot(cross(minus(u, flat), minus(v, flat)), normal) / dot(normal, normal)))

    def on_edge(p, q, k):
        angle = acos(max(-1.0, min(1.0, dot(p, q))))
        return plus(times(sin(angle * (1 - k / n)) / sin(angle), p), times(sin(angle * k / n) / sin(angle), q))
    zero = [m for m in range(3) if steps[m] == 0]
    if len(zero) == 2:
        return next(corners[m] for m in range(3) if steps[m])
    if len(zero) == 1:
        p, q = (m for m in range(3) if m not in zero)
        return on_edge(corners[p], corners[q], steps[q])
    planes = [cross(on_edge(corners[(m + 1) % 3], corners[m], steps[m]), on_edge(corners[(m + 2) % 3], corners[m], steps[m]))
              for m in range(3)]
    total = (0.0, 0.0, 0.0)
    for m in range(3):
        at = unit(cross(planes[m], planes[(m + 1) % 3]))
        total = plus(total, at if dot(at, flat) > 0 else times(-1, at))
    return unit(total)


# ---------------------------------------------------------------- hub axes

def smallest(m):
    """Unit vector of the smallest eigenvalue of a symmetric 3 x 3 matrix, and the two larger eigenvalues."""
    off = m[0][1] ** 2 + m[0][2] ** 2 + m[1][2] ** 2
    q = (m[0][0] + m[1][1] + m[2][2]) / 3
    p = sqrt(((m[0][0] - q) ** 2 + (m[1][1] - q) ** 2 + (m[2][2] - q) ** 2 + 2 * off) / 6)
    b = [[(m[i][j] - (q if i == j else 0)) / p for j in range(3)] for i in range(3)]
    det = dot(b[0], cross(b[1], b[2]))
    phi = acos(max(-1.0, min(1.0, det / 2))) / 3
    high, low = q + 2 * p * cos(phi), q + 2 * p * cos(phi + 2 * pi / 3)
    rows = [tuple(m[i][j] - (low if i == j else 0) for j in range(3)) for i in range(3)]
    n = unit(max((cross(rows[i], rows[j]) for i, j in ((0, 1), (0, 2), (1, 2))), key=length))
    # One step of inverse iteration, a hair off the eigenvalue, takes the rounding of the closed form out.
    for _ in range(2):
        shift = low - 1e-7 * high
        rows = [tuple(m[i][j] - (shift if i == j else 0) for j in range(3)) for i in range(3)]
        inverse = (cross(rows[1], rows[2]), cross(rows[2], rows[0]), cross(rows[0], rows[1]))
        n = unit(tuple(sum(inverse[k][i] * n[k] for k in range(3)) for i in range(3)))
    return n


def one_side(points, edges, lines):
    """The lines turned to one side of the frame: from hub to hub along the member that tells its two ends' sides best
    among all that lead on, then each connected part as a whole away from its middle where it is round, or else up."""
    turned_ = list(lines)
    around = [[] for _ in points]
    for a, b in edges:
        around[a].append(b)
        around[b].append(a)

    def facing(a, b):
        along = unit(minus(points[b], points[a]))
        return dot(turned_[a], minus(turned_[b], times(2 * dot(turned_[b], along), along)))
    seen = set()
    for first in range(len(points)):
        if first in seen:
            continue
        part, ways = [first], []
        seen.add(first)

        def lead(k):
            for other in around[k]:
                if other not in seen:
                    heapq.heappush(ways, (-abs(facing(k, other)), k, other))
        lead(first)
        while ways:
            _, k, other = heapq.heappop(ways)
            if other in seen:
                continue
            if facing(k, other) < 0:
                turned_[other] = times(-1, turned_[other])
            seen.add(other)
            part.append(other)
            lead(other)
        middle = times(1 / len(part), plus(*(points[k] for k in part)))
        reach = sum(length(minus(points[k], middle)) for k in part)
        out = sum(dot(turned_[k], minus(points[k], middle)) for k in part) / reach if reach else 0.0
        x, y, z = (total / len(part) for total in plus(*(turned_[k] for k in part)))
        if abs(out) > 0.5:
            sense = out
        else:
            sense = z if abs(z) > 0.1 else next((way for way in (out, x, y) if abs(way) > 1e-6), 1.0)
        if sense < 0:
            for k in part:
                turned_[k] = times(-1, turned_[k])
    return turned_


def axes(points, edges, kind, centre, instead=None):
    """Hub axes: unit n and kappa of least sum (v.n + kappa L^2/2)^2, or the n of least spread of q.n.

    Where two directions are as good, the axis is what instead says of the node's place."""
    around = [[] for _ in points]
    for a, b in edges:
        around[a].append(minus(points[b], points[a]))
        around[b].append(minus(points[a], points[b]))
    found = []
    for point, spokes in zip(points, around):
        mean = sum(length(v) for v in spokes) / len(spokes)
        if kind == "fitted":
            rows = [times(1 / mean, v) for v in spokes]
            weights = [dot(v, v) / 2 for v in rows]
        else:
            rows, weights = [unit(v) for v in spokes], [1.0] * len(spokes)
        square = sum(w * w for w in weights)
        pull = plus(*(times(w, v) for w, v in zip(weights, rows)))
        m = [[sum(v[i] * v[j] for v in rows) - pull[i] * pull[j] / square for j in range(3)] for i in range(3)]
        # The sum of the principal 2 x 2 minors over the trace is the second eigenvalue when the least is next to none.
        minors = sum(m[i][i] * m[j][j] - m[i][j] ** 2 for i, j in ((0, 1), (0, 2), (1, 2)))
        if instead and minors <= 1e-10 * (m[0][0] + m[1][1] + m[2][2]) ** 2:
            found.append(instead(point))
            continue
        n = smallest(m)
        out = minus(point, centre)
        sense = dot(n, out)
        if abs(sense) <= 1e-6 * length(out):
            sense = n[2]
        found.append(times(-1, n) if sense < 0 else n)
    return found


# ---------------------------------------------------------------- frames

class Frame:
    """Points, axes, edges (pairs of node numbers, lower first) with roles, ids, feet (node numbers), moved (lengths)."""

    def __init__(self, points, axes_, edges, roles, ids, feet, moved):
        self.points, self.axes, self.edges, self.roles = points, axes_, edges, roles
        self.ids, self.feet, self.moved = ids, feet, moved


def ids(tiers, from_foot):
    sizes = [tiers.count(t) for t in range(max(tiers) + 1)]
    width = len(str(max(sizes)))
    last, out, seen = max(tiers), [], {}
    for t in tiers:
        seen[t] = seen.get(t, 0) + 1
        out.append(f"{'F' if from_foot else 'T'}{last - t if from_foot else t}-{seen[t]:0{width}d}")
    return out


def shell(given):
    """The unit shell with its tiers: (Frame, tiers)."""
    sphere = Sphere(given["base"], given["breakdown"], given["subdivision"], given["up"])
    points = sphere.points
    neighbours = [set() for _ in points]
    for a, b in sphere.edges:
        neighbours[a].add(b)
        neighbours[b].add(a)
    top = max(p[2] for p in points)
    tier = {k: 0 for k, p in enumerate(points) if p[2] >= top - SAME}
    front = list(tier)
    while front:
        following = {b for a in front for b in neighbours[a] if b not in tier}
        tier.update((b, tier[front[0]] + 1) for b in following)
        front = list(following)
    if "tiers" in given:
        kept = {k for k in tier if tier[k] <= given["tiers"]}
    else:
        kept = {k for k, p in enumerate(points) if p[2] >= given["cutHeight"] - SAME}
        while True:
            loose = {k for k in kept if len(neighbours[k] & kept) < 2}
            if not loose:
                break
            kept -= loose
    # A foot is a node that the cut took a strut from.
    feet = {k for k in kept if neighbours[k] - kept}
    order = sorted(kept, key=lambda k: (tier[k], clockwise(points[k]), -points[k][2]))
    order = tie_break(order, tier, points)
    number = {k: i for i, k in enumerate(order)}
    at = [points[k] for k in order]
    edges = sorted((min(number[a], number[b]), max(number[a], number[b])) for a, b in sphere.edges if a in kept and b in kept)
    standing = sorted(number[k] for k in feet)
    tiers = [tier[k] for k in order]
    moved = [0.0] * len(at)
    if given["foot"] != "natural" and standing:
        at, moved = level(at, edges, standing, given["footPlane"])
    axis = at
    factor = given["heightFactor"]
    if factor != 1 or given["axis"] != "fitted":
        at = [(x, y, z * factor) for x, y, z in at]
        axis = axes(at, edges, given["axis"], (0.0, 0.0, 0.0), lambda p: unit((p[0], p[1], p[2] / factor ** 2)))
    return Frame(at, axis, edges, ["shell"] * len(edges), None, standing, moved), tiers


def tie_break(order, tier, points):
    """Azimuths that differ by rounding alone are one; then the higher node comes first."""
    out, k = [], 0
    while k < len(order):
        run = [order[k]]
        while k + 1 < len(order) and tier[order[k + 1]] == tier[run[0]] and \
                abs(clockwise(points[order[k + 1]]) - clockwise(points[run[0]])) < SAME:
            k += 1
            run.append(order[k])
        out += sorted(run, key=lambda n: -points[n][2])
        k += 1
    return out


def level(points, edges, feet, plane):
    colatitude = {k: atan2(hypot(points[k][0], points[k][1]), points[k][2]) for k in feet}
    middle = (min(colatitude.values()) + max(colatitude.values())) / 2

    def to(target):
        at, moved = list(points), [0.0] * len(points)
        for k in feet:
            if abs(colatitude[k] - target) > 1e-12:
                angle = atan2(points[k][1], points[k][0])
                at[k] = (sin(target) * cos(angle), sin(target) * sin(angle), cos(target))
                moved[k] = length(minus(at[k], points[k]))
        return at, moved

    def kinds(target):
        at = to(target)[0]
        chords = sorted(length(minus(at[a], at[b])) for a, b in edges)
        return sum(1 for k, c in enumerate(chords) if k == 0 or c - chords[k - 1] > SAME)

    def largest(target):
        return max(abs(c - target) for c in colatitude.values())
    if plane == "least-move":
        return to(middle)
    planes = [middle]
    for c in sorted(colatitude.values()):
        if all(abs(c - p) > SAME for p in planes):
            planes.append(c)
    few = min(kinds(p) for p in planes)
    good = [p for p in planes if kinds(p) == few]
    least = min(largest(p) for p in good)
    return to(min(p for p in good if largest(p) < least + SAME))


def finished(frame, tiers, given, radius, thick=(0.0, 0.0)):
    """Risers, then openings; thick is the radius of a strut and of a collar."""
    points, axis, edges, roles = list(frame.points), list(frame.axes), list(frame.edges), list(frame.roles)
    feet, moved, tiers = list(frame.feet), list(frame.moved), list(tiers)
    if given["foot"] == "riser" and feet:
        below = {}
        for k in feet:
            below[k] = len(points)
            x, y, z = points[k]
            points.append((x, y, z - given["riserHeightMm"] / radius))
            axis.append(unit((x, y, 0.0)))
            moved.append(0.0)
            tiers.append(max(frame_tier for frame_tier in tiers[:len(frame.points)]) + 1)
        for k in feet:
            edges.append((k, below[k]))
            roles.append("riser")
        for a, b in frame.edges:
            if a in below and b in below:
                edges.append((min(below[a], below[b]), max(below[a], below[b])))
                roles.append("second-ring")
                if given["riserDiagonals"]:
                    # From the upper hub to the lower one at the next place clockwise.
                    ahead = turn(clockwise(points[b]) - clockwise(points[a])) < pi
                    first, lower = (a, below[b]) if ahead else (b, below[a])
                    edges.append((first, lower))
                    roles.append("riser-diagonal")
        feet = sorted(below.values())
    names = ids(tiers, given["tiersFrom"] == "foot")
    order = sorted(range(len(edges)), key=lambda k: edges[k])
    whole = Frame(points, axis, [edges[k] for k in order], [roles[k] for k in order], names, feet, moved)
    return opened(whole, given.get("openings") or [], radius, thick)


def opened(frame, openings, radius, thick):
    if not openings:
        return frame
    number = {name: k for k, name in enumerate(frame.ids)}
    pair = lambda text: tuple(sorted(number[part.strip()] for part in text.split("/")))
    gone_nodes, gone = set(), set()
    floor = min(p[2] for p in frame.points) * radius
    for opening in openings:
        gone_nodes |= {number[name] for name in opening.get("nodes") or ()}
        gone |= {pair(text) for text in opening.get("struts") or ()}
        if opening.get("box"):
            strut, collar = thick
            gone |= {edge for edge in frame.edges
                     if in_box(opening["box"], floor, *(times(radius, frame.points[k]) for k in edge), strut)}
            # A collar is a ball about its node; a hub without one is the end of its struts.
            at = [times(radius, p) for p in frame.points]
            gone_nodes |= {k for k, p in enumerate(at) if collar > 0 and in_box(opening["box"], floor, p, p, collar)}
    kept = [(e, r) for e, r in zip(frame.edges, frame.roles)
            if e not in gone and not gone_nodes & set(e)]
    for opening in openings:
        kept += [(pair(text), "rim") for text in opening.get("add") or ()]
    kept.sort()
    used = sorted({k for e, _ in kept for k in e})
    at = {k: i for i, k in enumerate(used)}
    return Frame([frame.points[k] for k in used], [frame.axes[k] for k in used], [(at[a], at[b]) for (a, b), _ in kept],
                 [r for _, r in kept], [frame.ids[k] for k in used], [at[k] for k in frame.feet if k in at],
                 [frame.moved[k] for k in used])


def in_box(box, floor, a, b, thick=0.0):
    """Whether a strut comes into a doorway: it is cut into pieces at the planes of the doorway's sides, each moved out by
    the strut's radius."""
    angle = radians(box["azimuthDeg"])
    forward, side = (cos(angle), -sin(angle), 0.0), (sin(angle), cos(angle), 0.0)
    half, top = box["widthMm"] / 2 + thick, floor + box["heightMm"] + thick
    depth = lambda p: min(dot(forward, p) + thick, half - abs(dot(side, p)), top - p[2])
    cuts = {0.0, 1.0}
    for value in (lambda p: dot(forward, p) + thick, lambda p: half - dot(side, p), lambda p: half + dot(side, p), lambda p: top - p[2]):
        from_, to = value(a), value(b)
        if from_ != to and 0 < from_ / (from_ - to) < 1:
            cuts.add(from_ / (from_ - to))
    cuts = sorted(cuts)
    at = lambda t: plus(times(1 - t, a), times(t, b))
    return any(depth(at((s + t) / 2)) > SAME for s, t in zip(cuts, cuts[1:]))


def outside(given, plan):
    """A frame from outside: its nodes and members are the plan's own; all else is worked out."""
    number = {n["id"]: k for k, n in enumerate(plan["nodes"])}
    points = [tuple(n["xyzMm"]) for n in plan["nodes"]]
    edges = [tuple(sorted((number[m["a"]["node"]], number[m["b"]["node"]]))) for m in plan["members"]]
    mean = times(1 / len(points), plus(*points))
    axis = axes(points, edges, given.get("axis", "fitted"), mean)
    said = given["frame"].get("axes") or []
    said = {number[name]: unit(one)
            for name, one in (said.items() if isinstance(said, dict) else [(one["node"], one["axis"]) for one in said])}
    axis = one_side(points, edges, [said.get(k, n) for k, n in enumerate(axis)])
    axis = [said.get(k, n) for k, n in enumerate(axis)]
    width = max(3, len(str(len(points))))
    low = min(p[2] for p in points)
    within = given["frame"].get("feetWithinMm", 1e-6 * (max(p[2] for p in points) - low))
    feet = [k for k, p in enumerate(points) if p[2] <= low + within]
    return Frame(points, axis, edges, ["shell"] * len(edges), [f"N{k + 1:0{width}d}" for k in range(len(points))],
                 feet if len(feet) >= 3 else [], [0.0] * len(points))
