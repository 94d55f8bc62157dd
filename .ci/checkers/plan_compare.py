"""Compares a plan.json with the plan that plan_model.py works out: every key of the model must be there and agree.

Keys ending in Mm are lengths, in Deg angles; they agree within a tolerance, everything else exactly. Keys that the
model does not have are left alone, apart from those whose presence itself says something.
"""
import re

LENGTH_TOLERANCE = 1e-6      # mm
ANGLE_TOLERANCE = 1e-6       # degrees
AXIS_TOLERANCE = 1e-8        # coordinates of a unit vector; 1e-6 degrees is 1.7e-8

class Comparison:
    MUST_BE_ABSENT = {"drillMm", "movedMm", "role", "cutter", "asDrilledMm", "tiltLimitDeg", "tiltMinDeg", "tiltMaxDeg", "slackDeg",
                      "leanDeg", "extraLeanDeg", "missMm"}

    def __init__(self):
        self.lines, self.largest = [], {"mm": (0.0, "-"), "degrees": (0.0, "-")}

    def miss(self, path, expected, found, difference=None):
        more = "" if difference is None else f", difference {difference:.3e}"
        self.lines.append(f"{path}: expected {expected!r}, found {found!r}{more}")

    def value(self, model, plan, path, key):
        """Compares one value of the model with the plan's, and all that hangs below it."""
        if isinstance(model, dict):
            if not isinstance(plan, dict):
                return self.miss(path, "an object", plan)
            for name, one in model.items():
                if one is None and plan.get(name) is None:
                    continue
                if name not in plan:
                    self.miss(f"{path}.{name}", one if not isinstance(one, (dict, list)) else "present", "absent")
                else:
                    self.value(one, plan[name], f"{path}.{name}", name)
            for name in sorted(self.MUST_BE_ABSENT & set(plan) - set(model)):
                if plan[name] is not None:
                    self.miss(f"{path}.{name}", "absent", plan[name])
        elif isinstance(model, list):
            if not isinstance(plan, list) or len(plan) != len(model):
                self.miss(path, f"{len(model)} entries", f"{len(plan)} entries" if isinstance(plan, list) else plan)
            for k, (one, other) in enumerate(zip(model, plan if isinstance(plan, list) else [])):
                self.value(one, other, f"{path}[{k}]", key)
        elif key.endswith(("Mm", "Deg")) and model is not None:
            self.number(model, plan, path, key)
        elif key == "axis" and not isinstance(model, str):
            if not isinstance(plan, (int, float)) or not abs(plan - model) <= AXIS_TOLERANCE:
                self.miss(path, model, plan)
        elif isinstance(model, bool) or isinstance(plan, bool) or model != plan:
            if model is not plan:
                self.miss(path, model, plan)

    def number(self, model, plan, path, key):
        if isinstance(plan, bool) or not isinstance(plan, (int, float)):
            return self.miss(path, model, plan)
        difference = abs(plan - model)
        if key == "turnDeg" and 0 <= plan < 360:
            difference = min(difference, 360 - difference)
        kind, allowed = ("mm", LENGTH_TOLERANCE) if key.endswith("Mm") else ("degrees", ANGLE_TOLERANCE)
        if not difference <= self.largest[kind][0]:      # written so that NaN is caught
            self.largest[kind] = (difference, path)
        if not difference <= allowed:
            self.miss(path, model, plan, difference)

    def summary(self):
        (mm, at_mm), (deg, at_deg) = self.largest["mm"], self.largest["degrees"]
        return (f"{'agrees' if not self.lines else f'{len(self.lines)} mismatches'}; largest differences "
                f"{mm:.3e} mm at {at_mm}, {deg:.3e} degrees at {at_deg}")


def compare(model, plan):
    """Compares a model plan with a read plan.json."""
    out = Comparison()
    for name, part in model.items():
        if name not in plan:
            out.miss(name, "present", "absent")
        else:
            out.value(part, plan[name], name, name)
    return out


def compare_whole(model, plan):
    """The comparison, and what can be said of the parts that the model cannot compute."""
    out = compare(model, plan)
    job = plan.get("job") if isinstance(plan.get("job"), dict) else {}
    if not job.get("title"):
        out.miss("job.title", "a title", job.get("title"))
    if not re.fullmatch("[A-DF-HJ-NPRT-Y]{8}", str(job.get("revision"))):
        out.miss("job.revision", "8 letters without I, O, Q, S, Z, E", job.get("revision"))
    # Equal fingerprints say that the drilling is equal, though the struts that go in may differ.
    seen = {}
    for k, pattern in enumerate(p for p in plan.get("patterns") or [] if isinstance(p, dict)):
        mark = pattern.get("fingerprint")
        drilling = [[h.get(key) for key in ("azimuthDeg", "heightMm", "asDrilledMm")] for h in pattern.get("holes") or []]
        other = seen.setdefault(str(mark), drilling)
        same = len(other) == len(drilling) and all(abs(a - b) < 1e-3 for one, two in zip(other, drilling)
                                                   for a, b in zip(one, two) if a is not None and b is not None)
        if not isinstance(mark, str) or not mark or not same:
            out.miss(f"patterns[{k}].fingerprint", "a text of its own for this drilling", mark)
    return out
