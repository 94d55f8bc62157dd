"""Reads a frame from outside for plan_model.py: OBJ (v, l and f lines) or CSV (rows node,ID,x,y,z and member,ID,ID).

The answer has the form of a plan: nodes N001, N002 ... in the file's order with their places in mm, +z up, and members as
pairs of them. Vertices nearer to an earlier one than the merging distance are that node; vertices without a member are
left out. Only what the checks need: other forms are refused.
"""
import csv
import itertools
from math import dist, floor

from plan_job import Refused, UNITS

# A frame drawn with +y up is turned about +x by a right angle: a turn, not a mirror.
UP = {"z": lambda p: p, "y": lambda p: (p[0], -p[2], p[1])}


def read_obj(text):
    """Places and pairs of their numbers, in the order of the file."""
    places, pairs = [], []
    for line in text.splitlines():
        words = line.split("#")[0].split()
        if words[:1] == ["v"]:
            places.append(tuple(float(word) for word in words[1:4]))
        elif words[:1] in (["l"], ["f"]):
            # A corner is 7, 7/1, 7/1/2 or 7//2; below 0 it counts back from the last place so far.
            at = [int(word.split("/")[0]) for word in words[1:]]
            at = [k - 1 if k > 0 else len(places) + k for k in at]
            pairs += zip(at, at[1:])
            if words[0] == "f":
                pairs.append((at[-1], at[0]))
    return places, pairs, None


def read_csv(text):
    """The same from a table; a row unit,mm says the unit."""
    places, pairs, number, unit = [], [], {}, None
    for row in csv.reader(text.splitlines()):
        words = [word.strip() for word in row]
        kind = words[0].lower() if words else ""
        if kind == "node":
            if words[1] in number:
                raise Refused([f"frame: node {words[1]} is there twice"])
            number[words[1]] = len(places)
            places.append(tuple(float(word) for word in words[2:5]))
        elif kind == "member":
            pairs.append((words[1], words[2]))
        elif kind == "unit":
            unit = words[1]
    unknown = sorted({name for pair in pairs for name in pair if name not in number})
    if unknown:
        raise Refused([f"frame: no node {name}" for name in unknown])
    return places, [(number[a], number[b]) for a, b in pairs], unit


def merged(places, near):
    """The number of the first place nearer than this, for each place, through a grid as wide as the distance."""
    grid, first = {}, []
    for k, p in enumerate(places):
        cell = tuple(floor(x / near) for x in p) if near else p
        around = [tuple(c + s for c, s in zip(cell, step)) for step in itertools.product((-1, 0, 1), repeat=3)] if near else [cell]
        close = [j for c in around for j in grid.get(c, ()) if j < k and (dist(places[j], p) < near or places[j] == p)]
        first.append(min(close, default=k))
        if first[k] == k:
            grid.setdefault(cell, []).append(k)
    return first


def frame(path, unit, up, near):
    """The frame of a file as {"nodes": ..., "members": ...}; the unit is the job's, or None for the file's own."""
    kind = path.lower().rsplit(".", 1)[-1]
    readers = {"obj": read_obj, "csv": read_csv}
    if kind not in readers:
        raise Refused([f"dome.frame: this model reads {' and '.join(sorted(readers))}, found {kind!r}"])
    with open(path, encoding="utf-8") as file:
        places, pairs, said = readers[kind](file.read())
    unit = unit or said
    if unit not in ("mm", "cm", "m", "in", "ft"):
        raise Refused([f"dome.frame-unit: expected mm, cm, m, in or ft, found {unit!r}"])
    scale = float(UNITS[unit])
    places = [UP[up](tuple(scale * x for x in p)) for p in places]
    first = merged(places, near)
    edges = {tuple(sorted((first[a], first[b]))) for a, b in pairs if first[a] != first[b]}
    used = sorted({k for edge in edges for k in edge})
    width = max(3, len(str(len(used))))
    name = {k: f"N{i + 1:0{width}d}" for i, k in enumerate(used)}
    return {"nodes": [{"id": name[k], "xyzMm": list(places[k])} for k in used],
            "members": [{"a": {"node": name[a]}, "b": {"node": name[b]}} for a, b in sorted(edges)]}, unit
