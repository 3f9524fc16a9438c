#!/usr/bin/python3
"""Changes one constant, comparison or sign at a time and asks whether a test notices.

mutate.py BUILD [--sample N] [--seed K] [--tests test_resistance,test_checks] FILE...

BUILD is a configured build folder (the debug preset); FILE a source of engine/resistance or engine/checks, or a folder of
them. Each mutant is built and the named programs of tests are run; the source is put back whatever happens. Prints one line
a mutant and the share that was caught. Those that survive for a reason stand in survivors.md.
"""
import argparse
import pathlib
import random
import re
import subprocess
import sys

NUMBER = re.compile(r"(?<![\w.\"'])(\d+\.\d*(?:e[-+]?\d+)?|\d+)(?![\w.\"'])")
COMPARISON = re.compile(r" (<=|>=|<|>) ")
SIGN = re.compile(r"(?<=[\w)\]]) ([-+*/]) (?=[\w(])")
OTHER_COMPARISON = {"<": ">=", ">": "<=", "<=": ">", ">=": "<"}
OTHER_SIGN = {"+": "-", "-": "+", "*": "/", "/": "*"}
SKIPPED = re.compile(r"^\s*(//|#|using |namespace |template|case |static_assert)|phrase\(|Citation\{|RegisterCheck|RegisterFinding")


def code_of(line):
    """The line without its comment and with its texts blanked out, place for place."""
    line = re.sub(r'"(?:[^"\\]|\\.)*"', lambda text: '"' + "_" * (len(text.group()) - 2) + '"', line)
    return line.split("//")[0]


def mutants_of(path):
    for row, line in enumerate(path.read_text(encoding="utf-8").splitlines()):
        code = code_of(line)
        if SKIPPED.search(line):
            continue
        for found in NUMBER.finditer(code):
            value = float(found.group())
            whole = "." not in found.group()
            if whole and (re.search(r"[\[<]\s*$", code[:found.start()]) or value in (0.0,)):
                continue  # an index, or nothing at all
            other = str(int(value) + 1) if whole else repr(value * 1.07 if value else 0.07)
            yield row, found.start(), found.end(), other
        for pattern, others in ((COMPARISON, OTHER_COMPARISON), (SIGN, OTHER_SIGN)):
            for found in pattern.finditer(code):
                if pattern is COMPARISON and re.search(r"(include|vector|optional|map|span|variant|cast)$", code[:found.start()]):
                    continue
                yield row, found.start(1), found.end(1), others[found.group(1)]


def runs(command):
    try:
        return subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=900).returncode == 0
    except subprocess.TimeoutExpired:
        return False


def fate(path, text, mutant, build, tests):
    row, start, end, other = mutant
    lines = text.splitlines(keepends=True)
    lines[row] = lines[row][:start] + other + lines[row][end:]
    path.write_text("".join(lines), encoding="utf-8")
    if not runs(["ninja", "-C", str(build), *tests]):
        return "does not build"
    return "survives" if all(runs([str(build / "tests" / test), "-a"]) for test in tests) else "caught"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("build", type=pathlib.Path)
    parser.add_argument("files", type=pathlib.Path, nargs="+")
    parser.add_argument("--sample", type=int, default=0, help="that many of all mutants, drawn at random; 0: all")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--tests", default="test_resistance,test_checks")
    chosen = parser.parse_args()
    tests = chosen.tests.split(",")
    files = sorted(one for path in chosen.files for one in (path.rglob("*.cpp") if path.is_dir() else [path]))
    mutants = [(path, mutant) for path in files for mutant in mutants_of(path)]
    if chosen.sample and chosen.sample < len(mutants):
        mutants = sorted(random.Random(chosen.seed).sample(mutants, chosen.sample))
    if not runs(["ninja", "-C", str(chosen.build), *tests]):
        sys.exit("the sources as they stand do not build")
    count = {"caught": 0, "survives": 0, "does not build": 0}
    for path, mutant in mutants:
        text = path.read_text(encoding="utf-8")
        try:
            result = fate(path, text, mutant, chosen.build, tests)
        finally:
            path.write_text(text, encoding="utf-8")
        count[result] += 1
        row, start, end, other = mutant
        line = text.splitlines()[row]
        print(f"{result}: {path}:{row + 1}: {line[start:end]} -> {other} in: {line.strip()}", flush=True)
    decided = count["caught"] + count["survives"]
    print(f"{count['caught']} of {decided} caught ({100.0 * count['caught'] / max(decided, 1):.1f} %); "
          f"{count['does not build']} did not build")


main()
