"""The race of our DXF writer against ezdxf: the same 10,000 holes in a frame, both in one run and by turns, so that a busy
moment of the machine meets both: dxf-race.py JAVA_CLASSES...

Ours draws the sheet, looks it through (lint) and writes the file; ezdxf builds its document and writes the file. "write
only" is what ezdxf takes when its document stands already.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time

import ezdxf

WARM_ROUNDS = 10
ROUNDS = 15
SIDE, PITCH, EDGE = 100, 25.0, 20.0


def document(version):
    """The holes and the frame of DxfRounds.java."""
    doc = ezdxf.new("R2000" if version == "r2000" else "R12")
    for name, colour in (("CUT_INSIDE", 1), ("CUT_OUTSIDE", 5)):
        doc.layers.add(name, color=colour)
    space = doc.modelspace()
    for row in range(SIDE):
        for column in range(SIDE):
            radius = 6 + (row * 7 + column * 3) % 50 * 0.1
            centre = (EDGE + PITCH * (column + 0.5), EDGE + PITCH * (row + 0.5))
            space.add_circle(centre, radius, dxfattribs={"layer": "CUT_INSIDE", "color": 1})
    far = EDGE + SIDE * PITCH
    corners = [(EDGE, EDGE), (far, EDGE), (far, far), (EDGE, far)]
    for start, end in zip(corners, corners[1:] + corners[:1]):
        space.add_line(start, end, dxfattribs={"layer": "CUT_OUTSIDE", "color": 5})
    return doc


def theirs(version, path):
    """Milliseconds of building and writing, and of writing alone."""
    start = time.perf_counter()
    doc = document(version)
    built = time.perf_counter()
    doc.saveas(path)
    end = time.perf_counter()
    return 1000 * (end - start), 1000 * (end - built)


def entities(path):
    """What a file holds, as ezdxf reads it."""
    found = []
    for entity in ezdxf.readfile(path).modelspace():
        kind = entity.dxftype()
        if kind == "CIRCLE":
            centre = entity.dxf.center
            found.append((kind, round(centre.x, 4), round(centre.y, 4), round(entity.dxf.radius, 4)))
        else:
            ends = sorted([tuple(round(v, 4) for v in p) for p in (entity.dxf.start, entity.dxf.end)])
            found.append((kind, *ends))
    return sorted(found, key=repr)


def main():
    command = ["java", "-Xmx1g", "-cp", os.pathsep.join(sys.argv[1:]), "collarwright.bench.DxfRounds"]
    with tempfile.TemporaryDirectory() as folder, subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as java:
        print(f"ezdxf {ezdxf.__version__}, Python {sys.version.split()[0]}; {SIDE * SIDE} holes; medians of {ROUNDS} "
              f"rounds by turns, after {WARM_ROUNDS} warm ones; milliseconds of wall time\n")
        for version in ("r2000", "r12"):
            ours_path = os.path.join(folder, f"ours-{version}.dxf")
            theirs_path = os.path.join(folder, f"theirs-{version}.dxf")
            ours, built, wrote = [], [], []
            for turn in range(WARM_ROUNDS + ROUNDS):
                java.stdin.write(f"{version} {ours_path}\n")
                java.stdin.flush()
                mine = float(java.stdout.readline())
                whole, write = theirs(version, theirs_path)
                if turn >= WARM_ROUNDS:
                    ours.append(mine)
                    built.append(whole)
                    wrote.append(write)
            if entities(ours_path) != entities(theirs_path):
                raise SystemExit(f"{version}: the two files do not hold the same entities")
            mine = statistics.median(ours)
            for name, taken in (("ezdxf", built), ("ezdxf, write only", wrote)):
                other = statistics.median(taken)
                print(f"{version:6} ours {mine:7.1f}   {name:18} {other:7.1f}   {other / mine:5.1f} times quicker (goal: 5)")
        java.stdin.close()


if __name__ == "__main__":
    main()
