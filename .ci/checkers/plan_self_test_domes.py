"""Checks of plan_dome.py, plan_frame.py, plan_job.py and plan_alike.py, run with those of plan_self_test.py.

Beside each check stands its source; "computed" and "from memory" mean what they mean there.
"""
import contextlib
import copy
import io
import itertools
import os
import tempfile
from math import asin, atan, atan2, cos, degrees, hypot, radians, sin, sqrt

import plan_alike
import plan_dome
import plan_frame
import plan_model as model
import plan_self_test
from plan_job import Refused, job_inputs
from plan_self_test import check, chords, dome, sample, shell


def hulls():
    # All points of a sphere are corners of their convex hull, which has F = 2V - 4 triangles (Euler's formula); 20T for the
    # icosahedron: A. Siber, "Icosadeltahedral Geometry of Geodesic Domes, Fullerenes and Viruses: A Tutorial on the
    # T-Number", Symmetry 12(4):556 (2020). So each triangle of the net with all points on one side is a face of the hull,
    # and there must be that many. No lattice is used here.
    for base, steps in itertools.product(("icosahedron", "octahedron"), ((1, 0), (2, 0), (1, 1), (2, 1), (1, 2), (3, 0))):
        sphere = plan_dome.Sphere(base, steps, "chords", "vertex")
        points, near = sphere.points, [set() for _ in sphere.points]
        for a, b in sphere.edges:
            near[a].add(b)
            near[b].add(a)
        faces = 0
        for a, b in sphere.edges:
            for c in near[a] & near[b]:
                normal = model.cross(model.minus(points[b], points[a]), model.minus(points[c], points[a]))
                sides = [model.dot(normal, model.minus(p, points[a])) for p in points]
                faces += c > max(a, b) and (max(sides) < 1e-9 or min(sides) > -1e-9)
        t = steps[0] ** 2 + steps[0] * steps[1] + steps[1] ** 2
        check("hulls", f"{base} {steps}", faces, {"icosahedron": 20, "octahedron": 8}[base] * t)
    # The class I sphere made from shared edges of triangles is the same dome, node for node.
    for n, rows in ((2, 3), (3, 5), (4, 7)):
        one, other = model.Dome(n, rows), shell(breakdown=[n, 0], tiers=rows)
        apart = max(abs(x) for p, q in zip(one.points, other.points) for x in model.minus(p, q))
        check("hulls", f"{n}v {rows} nodes", apart, 0.0, 1e-12)
        check("hulls", f"{n}v {rows} edges", one.edges, other.edges)
    # Chords of finer solids: computed.
    table = {.338204: 12, .517638: 24, .57735: 12, .605811: 12, .765367: 24, 1.0: 12}
    check("hulls", "tetrahedron 4v", dict(sorted(chords(shell(base="tetrahedron", breakdown=[4, 0], cutHeight=-1)).items())), table)
    table = {.18106: 60, .211974: 60, .221252: 60, .228406: 120, .230525: 30, .232791: 240, .246769: 120, .248699: 120}
    check("hulls", "class II 3", dict(sorted(chords(shell(breakdown=[3, 3], cutHeight=-1)).items())), table)


def turned():
    # A proper turn keeps the handedness: up changes no distance and no turning sense (definition of a rotation).
    for base in plan_dome.BASES:
        upright = plan_dome.Sphere(base, [2, 1], "chords", "vertex")
        for up in ("edge", "face"):
            sphere = plan_dome.Sphere(base, [2, 1], "chords", up)
            trio = lambda s: model.dot(s.points[0], model.cross(s.points[1], s.points[2]))
            check("turned", f"{base} {up}", trio(sphere), trio(upright), 1e-12)
        # The middle of an edge, or of a face, of the base is at the top: its corners are equally high (symmetry).
        corners = plan_dome.base(base)[0]
        edge = plan_dome.turned("edge", corners, corners)
        check("turned", f"{base} edge level", edge[0][2] - edge[1][2], 0.0, 1e-12)
        check("turned", f"{base} edge on the meridian", (abs(edge[1][1]) < 1e-12, edge[1][0] > 0), (True, True))
        face = plan_dome.turned("face", corners, corners)
        top = sorted(p[2] for p in face)[-3:]
        check("turned", f"{base} face level", max(top) - min(top), 0.0, 1e-12)
        check("turned", f"{base} face on the meridian", (abs(face[0][1]) < 1e-12, face[0][0] > 0), (True, True))


def ellipsoids():
    # A 2v octahedron drawn out by f: by its four-fold symmetry the axes of the apex and of the corner on +x are +z and +x,
    # so the struts between them and the middle of the edge lean by right triangles (textbook).
    s = sqrt(.5)
    for f in (.6, 1.5):
        frame = shell(base="octahedron", breakdown=[2, 0], cutHeight=-1, heightFactor=f)
        built = model.Built(frame)
        at = {tuple(round(x, 9) for x in p): k for k, p in enumerate(frame.points)}
        apex, side = at[0.0, 0.0, f], at[1.0, 0.0, 0.0]
        middle = at[round(s, 9), 0.0, round(s * f, 9)]
        for corner, lean in ((apex, atan(f * (1 - s) / s)), (side, atan((1 - s) / (s * f)))):
            edge = built.edges.index(tuple(sorted((corner, middle))))
            found = built.type_axials[built.edge_types[edge]][built.end(edge, corner)]
            check("ellipsoids", f"{f} at {corner}", found, lean, 1e-9)
    # Making tilts as equal as can be is not radial on a sphere. How far off a 3v's six-way hubs come is searched for here:
    # 0.5923 degrees with the sines of the tilts as equal as can be, which is the rule; 0.5910 with the tilts themselves.
    frames_ = {kind: shell(breakdown=[3, 0], cutHeight=-1, axis=kind) for kind in ("fitted", "even-tilts")}
    off = {kind: [atan2(plan_dome.length(plan_dome.cross(p, n)), plan_dome.dot(p, n)) for p, n in zip(f.points, f.axes)]
           for kind, f in frames_.items()}
    check("ellipsoids", "fitted is radial", max(off["fitted"]), 0.0, 1e-9)
    frame = frames_["even-tilts"]
    hub = max(range(len(frame.points)), key=off["even-tilts"].__getitem__)
    spokes = [unit_to(frame, hub, a if b == hub else b) for a, b in frame.edges if hub in (a, b)]
    found = least_spread(frame.points[hub], spokes, lambda sine: sine)
    check("ellipsoids", "even tilts", degrees(off["even-tilts"][hub]), degrees(found), 1e-5)
    check("ellipsoids", "even tilts, printed", degrees(found), .5923, 5.1e-5)
    check("ellipsoids", "even angles, printed", degrees(least_spread(frame.points[hub], spokes, asin)), .5910, 5.1e-5)


def unit_to(frame, here, there):
    return model.unit(model.minus(frame.points[there], frame.points[here]))


def least_spread(point, spokes, measure):
    """How far from the radius the axis lies whose struts lean most alike, by stepping ever more finely downhill."""
    u = model.unit(model.cross(point, (.3, .5, .2)))
    v = model.cross(point, u)

    def spread(at):
        n = model.unit(plan_dome.plus(point, plan_dome.times(at[0], u), plan_dome.times(at[1], v)))
        leans = [measure(-model.dot(q, n)) for q in spokes]
        return sum((x - sum(leans) / len(leans)) ** 2 for x in leans)
    best, step = (0.0, 0.0), .01
    while step > 1e-8:
        near = min(((best[0] + i * step, best[1] + j * step) for i in (-1, 0, 1) for j in (-1, 0, 1)), key=spread)
        if near == best:
            step /= 2
        best = near
    return atan(hypot(*best))


def feet_and_openings():
    # A vertical riser at a hub with axis n leans arcsin(n_z) (geometry of a vertical line): in the whole plan.
    given = sample(3, 5)
    given["dome"] = dome(breakdown=[3, 0], tiers=5, foot="riser", footPlane="least-move", riserHeightMm=900.0, riserDiagonals=False)
    plan = model.build(given)[0]
    node = {n["id"]: n for n in plan["nodes"]}
    hub = {h["id"]: h for h in plan["hubTypes"]}
    risers = [m for m in plan["members"] if m.get("role") == "riser"]
    check("feet", "risers", len(risers), 15)
    for member in risers:
        upper = next(member[end] for end in "ab" if node[member[end]["node"]]["id"].startswith("T5"))
        hole = hub[node[upper["node"]]["hubType"]]["struts"][upper["hole"] - 1]
        check("feet", "riser's lean", hole["axialDeg"], degrees(asin(node[upper["node"]]["axis"][2])), 1e-9)
        check("feet", "riser's lean, printed", hole["axialDeg"], -10.35, 5.1e-3)      # computed
    check("feet", "height to the second ring", plan["dome"]["heightMm"], plan["dome"]["apexZMm"] - plan["dome"]["lowestNodeZMm"], 1e-9)
    # A doorway against many points of each strut (definition).
    frame = shell(breakdown=[4, 0], tiers=7)
    lowest = min(p[2] for p in frame.points)
    for azimuth in (0.0, 33.0, 200.0):
        box = {"widthMm": .4, "heightMm": .55, "azimuthDeg": azimuth}
        ahead, aside = (cos(radians(azimuth)), -sin(radians(azimuth))), (sin(radians(azimuth)), cos(radians(azimuth)))
        seen = [False, False]
        for a, b in frame.edges:
            p, q = frame.points[a], frame.points[b]
            points = [tuple(x + (y - x) * k / 600 for x, y in zip(p, q)) for k in range(601)]
            deep = max(min(ahead[0] * x + ahead[1] * y, .2 - abs(aside[0] * x + aside[1] * y), lowest + .55 - z) for x, y, z in points)
            if abs(deep) > 2e-3:             # nearer than the points can tell
                check("feet", f"doorway at {azimuth}", plan_dome.in_box(box, lowest, p, q), deep > 0)
                seen[deep > 0] = True
        check("feet", "struts in and out of the doorway", seen, [True, True])
    # pieces-per-stock by its definition: pieces, cuts between them and trim fill the stick.
    given = {**sample(2, 3), "size": {"rule": "pieces-per-stock", "pieces": 3, "stockLengthMm": 6000.0, "kerfMm": 2.5, "trimMm": 12.0}}
    given["size"]["valueMm"] = 1.0           # not what is used
    longest = max(t["cutMm"] for t in model.build(given)[0]["strutTypes"])
    check("feet", "pieces fill the stick, to a thousandth", 3 * longest + 2 * 2.5 + 12, 5999.999, 1e-8)
    # Least clearance: no hole is nearer to the strut than that, under both rules; without it some are.
    for fit in ("reach", "nearest"):
        for where in ({"leastClearanceMm": 3.5}, {"drilling": {"leastClearanceMm": 3.5}}):
            given = {**sample(6, 9), "fit": fit, **where}
            given["size"] = {"rule": "radius", "valueMm": 9000.0}
            gaps = [h["asDrilledMm"] - .1 - 40.2 for p in model.build(given)[0]["patterns"] for h in p["holes"]]
            check("feet", f"clearance {fit}", min(gaps) >= 3.5, True)
        free = {**sample(6, 9), "fit": fit, "size": {"rule": "radius", "valueMm": 9000.0}}
        gaps = [h["asDrilledMm"] - .1 - 40.2 for p in model.build(free)[0]["patterns"] for h in p["holes"]]
        check("feet", f"without clearance {fit}", min(gaps) < 3.5, True)


JOB = {"title": "Invented", "strut": {"od": "40 mm", "wall": "3 mm", "lengths": ["5 m", "6 m"], "kerf": "2 mm"},
       "hub": {"collar": {"od": "160 mm", "wall": "6 mm"}, "ring": {"od": "90 mm", "wall": "4 mm"}, "width": "80 mm",
               "ring-width": "40 mm", "end-gap": "2 mm"}}


def jobs():
    # Keys, units and defaults as the manual states them (own convention).
    given = job_inputs({**JOB, "dome": {
        "base": "octahedron", "breakdown": [2, 1], "cut-height": -0.1, "up": "edge", "height-factor": 0.8, "foot": "riser",
        "riser-height": "1-1/2 in", "count-tiers-from": "foot", "pieces-per-stock": 4,
        "opening": [{"box": {"width": "1 m", "height": "2 m", "azimuth": -30}, "add": ["T1-01/T1-03"]}]}}, [])
    check("jobs", "dome", given["dome"], {
        "base": "octahedron", "breakdown": [2, 1], "subdivision": "chords", "up": "edge", "cutHeight": -0.1, "heightFactor": 0.8,
        "axis": "fitted", "foot": "riser", "tiersFrom": "foot", "footPlane": "least-move", "riserHeightMm": 38.1,
        "riserDiagonals": False, "openings": [{"nodes": [], "struts": [], "add": ["T1-01/T1-03"], "corners": [], "box": {
            "widthMm": 1000.0, "heightMm": 2000.0, "azimuthDeg": -30.0}}]})
    check("jobs", "longest cut", given["size"]["valueMm"], (6000 - 3 * 2) / 4, 1e-12)
    check("jobs", "clearance", given["leastClearanceMm"], 0.3, 1e-12)
    usual = {"frequency": 3, "keep": "5/8", "radius": "2 m"}
    check("jobs", "5/8 of a 3v", job_inputs({**JOB, "dome": usual}, [])["dome"]["tiers"], 5)
    for change, faults in (({"keep": "1/7"}, 1), ({"foot": "riser"}, 1), ({"up": "side"}, 2), ({"tiers": 5}, 1),
                           ({"colour": "green", "base": "cube"}, 3), ({"breakdown": [3, 1]}, 2)):
        try:
            found = f"accepted {job_inputs({**JOB, 'dome': {**usual, **change}}, [])['dome']}"
        except Refused as fault:
            found = len(fault.args[0])
        check("jobs", f"refuses {change}", found, faults)


def frames():
    # One octahedron written four ways: lines, faces with doubled corners, a table in inches, and with +y up.
    corners = [(0, 0, 1), (1, 0, 0), (0, -1, 0), (-1, 0, 0), (0, 1, 0), (0, 0, -1)]
    edges = [(a, b) for a, b in itertools.combinations(range(6), 2) if {a, b} not in ({0, 5}, {1, 3}, {2, 4})]
    faces = [f for f in itertools.combinations(range(6), 3) if all(p in edges for p in itertools.combinations(f, 2))]
    line = lambda p: "v {} {} {}\n".format(*p)
    ways = {
        "lines.obj": "".join(map(line, corners)) + "".join(f"l {a + 1} {b + 1}  # a strut\n" for a, b in edges),
        "faces.obj": "".join("".join(line(corners[k]) for k in f) + "f -3//1 -2 -1/4/5\n" for f in faces),
        "y.obj": "".join(line((x, z, -y)) for x, y, z in corners) + "".join(f"l {a + 1} {b + 1}\n" for a, b in edges),
        "table.csv": "unit,in\n" + "".join("node,{},{!r},{!r},{!r}\n".format("PQRSTU"[k], *(x / .0254 for x in p)) for k, p in enumerate(corners))
                     + "".join(f"member,{'PQRSTU'[a]},{'PQRSTU'[b]}\n" for a, b in edges)}
    with tempfile.TemporaryDirectory() as folder:
        for name, text in ways.items():
            path = os.path.join(folder, name)
            with open(path, "w", encoding="utf-8") as file:
                file.write(text)
            found, _ = plan_frame.frame(path, None if "csv" in name else "m", "y" if name[0] == "y" else "z", 0.1)
            at = {n["id"]: tuple(round(x, 6) + 0.0 for x in n["xyzMm"]) for n in found["nodes"]}
            check("frames", name, sorted(at.values()), sorted(tuple(1000.0 * x for x in p) for p in corners))
            check("frames", name + " first", at["N001"], (0.0, 0.0, 1000.0))
            check("frames", name + " members", len(found["members"]), 12)
    # A flat wheel of six spokes has its own normal as axis; outward is +z where the mean of the nodes is the hub itself.
    wheel = {"nodes": [{"id": f"N{k + 1:03d}", "xyzMm": [1000 * cos(k * 1.0472) * (k > 0), 1000 * sin(k * 1.0472) * (k > 0), 0.0]}
                       for k in range(7)],
             "members": [{"a": {"node": "N001"}, "b": {"node": f"N{k + 1:03d}"}} for k in range(1, 7)]
                        + [{"a": {"node": f"N{k:03d}"}, "b": {"node": f"N{k % 6 + 2:03d}"}} for k in range(2, 8)]}
    for one in wheel["members"]:
        if one["a"]["node"] > one["b"]["node"]:
            one["a"], one["b"] = one["b"], one["a"]
    given = {"axis": "fitted", "frame": {"alikeMm": 0.1, "axes": {"N002": [0, 0, 2]}}}
    frame = plan_dome.outside(given, wheel)
    check("frames", "axis of a flat hub", abs(frame.axes[0][2] - 1) < 1e-9, True)
    check("frames", "axis as said", frame.axes[1], (0.0, 0.0, 1.0))


def groups():
    # A 3v whose hubs are up to 0.02 mm out of place: the model's own plan holds, member by member, and damage is seen.
    given = sample(3, 5)
    shape = model.build(given)[0]
    for k, node in enumerate(shape["nodes"]):
        node["xyzMm"] = [x + 0.02 * sin(12.9898 * k + 78.233 * i) for i, x in enumerate(node["xyzMm"])]
    shape["members"] = sorted(({"a": {"node": min(m[e]["node"] for e in "ab")}, "b": {"node": max(m[e]["node"] for e in "ab")}}
                               for m in shape["members"]), key=lambda m: (m["a"]["node"], m["b"]["node"]))
    name = {n["id"]: f"N{k + 1:03d}" for k, n in enumerate(shape["nodes"])}
    drawn = {"nodes": [{"id": name[n["id"]], "xyzMm": n["xyzMm"]} for n in shape["nodes"]],
             "members": [{e: {"node": name[m[e]["node"]]} for e in "ab"} for m in shape["members"]]}
    given = {**given, "size": {"rule": "as-drawn"},
             "dome": {"axis": "fitted", "frame": {"unit": "mm", "mergeMm": 0.1, "alikeMm": 0.2, "feetWithinMm": 25.0, "axes": []}}}
    plan = model.build(given, drawn)[0]
    plan["job"] = {"title": "Invented", "revision": "AAAAAAAA"}
    for k, pattern in enumerate(plan["patterns"]):
        pattern["fingerprint"] = f"P{k}"

    def lines(one):
        with contextlib.redirect_stdout(io.StringIO()):
            return plan_alike.whole({**given}, one, drawn).lines
    check("groups", "three struts", len(plan["strutTypes"]), 3)
    check("groups", "agrees", lines(plan), [])
    for path in (("nodes", 7, "axis", 0), ("nodes", 7, "turnDeg"), ("nodes", 7, "hubType"), ("members", 9, "strutType"),
                 ("members", 9, "a", "hole"), ("strutTypes", 0, "chordMm"), ("strutTypes", 1, "cutMm"), ("strutTypes", 1, "count"),
                 ("strutTypes", 1, "twistDeg"), ("strutTypes", 1, "ends", 0, "axialDeg"), ("strutTypes", 2, "ends", 1, "setbackMm"),
                 ("hubTypes", 1, "struts", 2, "azimuthDeg"), ("hubTypes", 1, "struts", 2, "axialDeg"), ("hubTypes", 1, "count"),
                 ("hubTypes", 1, "struts", 2, "strutType"), ("hubTypes", 1, "pattern"), ("hubTypes", 1, "collarBelowNodeMm"),
                 ("patterns", 1, "holes", 1, "requiredMm"), ("patterns", 1, "holes", 1, "cutter"), ("patterns", 0, "holes", 1, "arcMm"),
                 ("counts", "feet"), ("order", "collars"), ("dome", "heightMm"), ("job", "revision")):
        broken = copy.deepcopy(plan)
        part = broken
        for step in path[:-1]:
            part = part[step]
        value = part[path[-1]]
        other = {"strutType": lambda: next(t["id"] for t in plan["strutTypes"] if t["id"] != value),
                 "hubType": lambda: next(h["id"] for h in plan["hubTypes"] if h["id"] != value)}
        part[path[-1]] = other[path[-1]]() if path[-1] in other else value + "X" if isinstance(value, str) \
            else value + 1 if isinstance(value, int) else value + 0.3
        check("groups", f"damage {path}", len(lines(broken)) > 0, True)


PARTS = (hulls, turned, ellipsoids, feet_and_openings, jobs, frames, groups)
