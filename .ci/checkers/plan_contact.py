"""Contact of a round strut in a round hole of a curved wall, for a strut that leans in any direction.

Frame of a hole: x along its axis, outward from the collar's axis; y to the side, clockwise seen from above; z up, along
the collar's axis. A strut's direction away from the hub is (cos lean, sin lean sin bearing, -sin lean cos bearing): the
bearing is 0 where the strut leans straight down (tilt alone) and grows to the side. Millimetres and radians.

Method: both rims are looked at along the strut. The strut fits where a circle of its radius fits inside both outlines.
The largest such circle is a linear programme of three unknowns (its middle and radius) with one inequality for each
tangent of the outlines; it is solved by exchanging tangents, and ends when the tangents' bound from above and the
circle that truly fits agree.
"""
from math import acos, asin, atan2, cos, hypot, inf, pi, sin, sqrt, tan

AGREE = 3e-10                # mm between the two bounds
SAMPLES = 48                 # points of a rim at which nearest points are looked for first
STEPS = [2 * pi * k / SAMPLES for k in range(SAMPLES)]
SINES = [(sin(f), cos(f)) for f in STEPS]


def direction(tilt, swing):
    """Lean and bearing of a strut that is tilted down and swung to the side."""
    d = (cos(tilt) * cos(swing), cos(tilt) * sin(swing), -sin(tilt))
    if hypot(d[1], d[2]) < 1e-9:
        return 0.0, 0.0              # straight in: the bearing would be rounding alone
    return atan2(hypot(d[1], d[2]), d[0]), atan2(d[1], -d[2])


class Outline:
    """A rim seen along the strut: points in the plane across it, with first and second derivatives."""

    def __init__(self, lean, bearing, p, radius):
        self.p, self.radius = p, radius
        self.c, self.s = cos(lean), sin(lean)
        self.cb, self.sb = cos(bearing), sin(bearing)

    def flat(self, x, y, z):
        # Axes across the strut: one in the plane of lean, one square to it.
        w = y * self.sb - z * self.cb
        return x * self.s - w * self.c, y * self.cb + z * self.sb

    def at(self, sine, cosine):
        y = self.p * sine
        return self.flat(sqrt(self.radius * self.radius - y * y), y, self.p * cosine)

    def full(self, f):
        """Point, first and second derivative at the angle f round the rim."""
        sine, cosine = sin(f), cos(f)
        y, y1, y2 = self.p * sine, self.p * cosine, -self.p * sine
        x = sqrt(self.radius * self.radius - y * y)
        x1 = -y * y1 / x
        x2 = -(y1 * y1 + y * y2 + x1 * x1) / x
        return self.flat(x, y, self.p * cosine), self.flat(x1, y1, -self.p * sine), self.flat(x2, y2, -self.p * cosine)

    def valleys(self, middle, f):
        """The angles of all points near f that are locally nearest to the middle: two may lie close together."""
        fine = [f + k * 2 * pi / SAMPLES / 5 for k in range(-10, 11)]
        far = [(x - middle[0]) ** 2 + (y - middle[1]) ** 2 for x, y in (self.at(sin(g), cos(g)) for g in fine)]
        return [self.nearest(middle, fine[k]) for k in range(1, 20) if far[k] <= far[k - 1] and far[k] <= far[k + 1]]

    def nearest(self, middle, f):
        """The angle of the rim's point that is locally nearest to the middle, from a start close by."""
        a, b = middle
        for _ in range(30):
            at, d1, d2 = self.full(f)
            u, v = at[0] - a, at[1] - b
            slope = u * d1[0] + v * d1[1]
            bend = d1[0] * d1[0] + d1[1] * d1[1] + u * d2[0] + v * d2[1]
            most = 2 * pi / SAMPLES / 5
            step = -slope / bend if bend > 0 else -most if slope > 0 else most
            step = max(-most, min(most, step))
            f += step
            if abs(step) < 1e-13:
                break
        return f

    def tangent(self, f):
        """The outward normal, its distance from the origin, and where it touches."""
        at, d1, _ = self.full(f)
        size = hypot(*d1)
        v = (d1[1] / size, -d1[0] / size)
        reach = v[0] * at[0] + v[1] * at[1]
        inside = self.inside
        if v[0] * (at[0] - inside[0]) + v[1] * (at[1] - inside[1]) < 0:
            v, reach = (-v[0], -v[1]), -reach
        return v[0], v[1], reach, at


def circle_in(three):
    """The weights, middle and radius of the circle that touches three lines (normal, reach)."""
    (a, b, h, _), (c, d, g, _), (e, f, k, _) = three
    w = (c * f - d * e, e * b - f * a, a * d - b * c)
    total = w[0] + w[1] + w[2]
    if total < 0:
        w, total = tuple(-x for x in w), -total
    if total < 1e-12:
        return None
    radius = (w[0] * h + w[1] * g + w[2] * k) / total
    # The middle from the two lines that cross best.
    _, first, second = max((abs(x[0] * y[1] - x[1] * y[0]), x, y) for x, y in
                           ((three[0], three[1]), (three[1], three[2]), (three[0], three[2])))
    det = first[0] * second[1] - first[1] * second[0]
    r, q = first[2] - radius, second[2] - radius
    middle = ((r * second[1] - q * first[1]) / det, (q * first[0] - r * second[0]) / det)
    return tuple(x / total for x in w), middle, radius


def exchange(three, line):
    """The three of four lines that bound the circle most, among those that hold it from all sides."""
    best = None
    for k in range(3):
        held = three[:k] + [line] + three[k + 1:]
        found = circle_in(held)
        if found and min(found[0]) >= -1e-12 and (best is None or found[2] < best[1][2]):
            best = held, found
    return best


def largest_circle(lean, bearing, hole, inner, outer):
    """Radius of the largest round strut that can lie in this direction in the hole."""
    rims = [Outline(lean, bearing, hole / 2, radius) for radius in (inner, outer)]
    for rim in rims:
        # Inside of an outline: the middle of four of its points.
        corners = [rim.at(s, c) for s, c in ((0, 1), (0, -1), (1, 0), (-1, 0))]
        rim.inside = (sum(x for x, _ in corners) / 4, sum(y for _, y in corners) / 4)
    points = [[rim.at(s, c) for s, c in SINES] for rim in rims]
    middle = tuple(sum(rim.inside[k] for rim in rims) / 2 for k in (0, 1))
    three, found = None, None
    low, high = -inf, inf
    for turn in range(200):
        lines = []
        near = inf
        for rim, at in zip(rims, points):
            far = [(x - middle[0]) ** 2 + (y - middle[1]) ** 2 for x, y in at]
            for k in range(SAMPLES):
                if far[k] <= far[k - 1] and far[k] <= far[(k + 1) % SAMPLES]:
                    for f in rim.valleys(middle, STEPS[k]):
                        line = rim.tangent(f)
                        lines.append(line)
                        near = min(near, hypot(line[3][0] - middle[0], line[3][1] - middle[1]))
        low = max(low, near)
        if three is None:
            three, found = start(rims)
            high = found[2]
        lines.sort(key=lambda line: line[2] - line[0] * middle[0] - line[1] * middle[1])
        for line in lines:
            if line[2] - line[0] * found[1][0] - line[1] * found[1][1] < found[2] - 1e-13:
                changed = exchange(three, line)
                if changed and changed[1][2] <= found[2] + 1e-12:
                    three, found = changed
        high = min(high, found[2])
        if high - low < AGREE:
            break
        # Where two lines alone bound the circle, its middle lies half way between the points that they touch.
        light = min(range(3), key=lambda k: found[0][k])
        middle = found[1]
        if turn % 2 and found[0][light] < 0.1:
            one, other = (three[k][3] for k in range(3) if k != light)
            middle = ((one[0] + other[0]) / 2, (one[1] + other[1]) / 2)
    if not high - low < 30 * AGREE:
        raise ValueError(f"no circle found at lean {lean!r}, bearing {bearing!r}, hole {hole!r}: {low!r} to {high!r}")
    return (low + high) / 2


def start(rims):
    """Three tangents of the inner outline that hold a circle between them."""
    three = [rims[0].tangent(STEPS[k * SAMPLES // 3]) for k in range(3)]
    return three, circle_in(three)


def solve(f, at, step, within):
    """Where the growing f is 0: secants, kept inside a bracket once there is one."""
    low, high = -inf, inf
    x0, f0 = at, f(at)
    x1 = at + step
    for _ in range(60):
        if f0 < 0:
            low = max(low, x0)
        else:
            high = min(high, x0)
        f1 = f(x1)
        if abs(x1 - x0) < within:
            return x1
        following = x1 - f1 * (x1 - x0) / (f1 - f0) if f1 != f0 and f1 < inf else (x1 + x0) / 2
        if f1 < 0:
            low = max(low, x1)
        else:
            high = min(high, x1)
        if not low < following < high and low > -inf and high < inf:
            following = (low + high) / 2
        x0, f0, x1 = x1, f1, following
    raise ValueError(f"no root found from {at!r}")


def lean_limit(bearing, hole, strut, inner, outer):
    """The lean at which the strut binds in this bearing, or None where it does not enter or the hole is too large."""
    if hole < strut or hole >= 2 * inner:
        return None
    # From the flat wall's answer, which is near.
    guess = acos(strut / hypot(hole, outer - inner)) - atan2(outer - inner, hole)
    return solve(lambda lean: strut / 2 - largest_circle(max(lean, 0.0), bearing, hole, inner, outer),
                 max(guess, 1e-4), 1e-4, 1e-11)


def required(lean, bearing, strut, inner, outer):
    """The smallest hole that lets the strut reach this lean in this bearing, or None."""
    top = 2 * inner * (1 - 1e-9)
    guess = strut / cos(lean) + (outer - inner) * tan(lean)
    size = solve(lambda hole: largest_circle(lean, bearing, hole, inner, outer) - strut / 2 if hole < top else inf,
                 guess, 1e-3, 1e-10) if guess < top else inf
    return size if size < top - 1e-6 else None
