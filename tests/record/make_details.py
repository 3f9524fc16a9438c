#!/usr/bin/python3
"""make_details.py PROGRAM: draws base details at random, keeps 100 of them in tests/record/details, says what it refused.

Run once, with the program of version 0.5.0. A detail is kept when that program reviews it (exit status 0 or 1) within
the time below; among those, the ones that show a check, a status or a finding seldom seen come first.
"""
import collections
import json
import pathlib
import resource
import subprocess
import sys

from random_detail import Base

DRAWN = 288
KEPT = 100
LONGEST_S = 1.0  # of processor time, on the machine that made them


def seconds():
    return resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime


def stop_when_slow():
    resource.setrlimit(resource.RLIMIT_CPU, (3, 3))


def shows(review):
    """What a review has that others may not have."""
    traits = {("verdict", review["verdict"]), ("demand", review["no_demand"] is None)}
    traits |= {("check", one["id"], one["status"]) for one in review["checks"]}
    traits |= {("steps", one["id"], len(one["steps"])) for one in review["checks"]}
    traits |= {("finding", one["id"]) for one in review["findings"]}
    traits |= {("remedy", one["id"], one["verdict"]) for one in review["remedies"]}
    return traits


def draw(program, seed, folder):
    """Outcome, processor time, traits and text of one detail; the last three only where it was reviewed in time."""
    text = Base(seed).text()
    trial = folder / "trial.xml"
    trial.write_text(text)
    before = seconds()
    ran = subprocess.run([program, "check", "--json", trial], capture_output=True, text=True, preexec_fn=stop_when_slow)
    took = seconds() - before
    trial.unlink()
    if ran.returncode not in (0, 1):
        return "refused" if ran.returncode == 2 else "too slow" if ran.returncode < 0 else "fault", took, None, text
    if took > LONGEST_S:
        return "too slow", took, None, text
    return "reviewed", took, shows(json.loads(ran.stdout)), text


def choose(found):
    """Those with seldom traits first; among alike the quick one."""
    seen, kept = collections.Counter(), []
    while found and len(kept) < KEPT:
        best = max(found, key=lambda one: (sum(1.0 / (1 + seen[trait]) ** 2 for trait in one[2]) - one[1], -one[0]))
        found.remove(best)
        seen.update(best[2])
        kept.append(best)
    return kept, seen


def main(program):
    folder = pathlib.Path(__file__).parent / "details"
    folder.mkdir(exist_ok=True)
    outcomes, found = collections.Counter(), []
    for seed in range(1, DRAWN + 1):
        outcome, took, traits, text = draw(program, seed, folder)
        outcomes[outcome] += 1
        if traits is not None:
            found.append((seed, took, traits, text))
    kept, seen = choose(found)
    for old in folder.glob("*.xml"):
        old.unlink()
    for seed, _, _, text in kept:
        (folder / f"drawn-{seed:03}.xml").write_text(text)
    print(dict(outcomes), "kept", len(kept), "in all", round(sum(one[1] for one in kept), 1), "s")
    for trait, count in sorted(seen.items(), key=str):
        if trait[0] != "steps":
            print(count, *trait)


if __name__ == "__main__":
    main(sys.argv[1])
