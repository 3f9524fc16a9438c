#!/usr/bin/python3
"""Changes one constant, comparison or sign at a time and asks whether a test notices.

mutate.py BUILD [--sample N] [--seed K] [--tests test_resistance,test_checks] [--batch B] FILE...

BUILD is a build folder in which the named programs of tests are built and pass; FILE a source of engine/, or a folder of
them. No source is touched: each mutant is compiled from a copy, and each program linked anew with it, B of them in one
run of ninja. A program's cases whose file has the mutated file's name run first. Prints one line a mutant and the share
that was caught. Those that survive for a reason stand in survivors.md.
"""
import argparse
import json
import pathlib
import posixpath
import random
import re
import shlex
import subprocess
import sys
import tempfile

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
            if value == 0.0 or (whole and re.search(r"[\[<]\s*$", code[:found.start()])):
                continue  # nothing at all (its comparison is changed instead), or an index
            other = str(int(value) + 1) if whole else repr(value * 1.07)
            yield row, found.start(), found.end(), other
        for pattern, others in ((COMPARISON, OTHER_COMPARISON), (SIGN, OTHER_SIGN)):
            for found in pattern.finditer(code):
                if pattern is COMPARISON and re.search(r"(include|vector|optional|map|span|variant|cast)$", code[:found.start()]):
                    continue
                yield row, found.start(1), found.end(1), others[found.group(1)]


class Build:
    """How BUILD compiles each source and links each program."""

    def __init__(self, folder, tests):
        self.folder = folder.resolve()
        entries = json.loads((folder / "compile_commands.json").read_text(encoding="utf-8"))
        self.compiled = {one["file"]: (one["command"], re.search(r" -o (\S+)", one["command"])[1]) for one in entries}
        self.links = {test: self.link_of(test) for test in tests}

    def link_of(self, test):
        listed = subprocess.run(["ninja", "-C", self.folder, "-t", "commands", f"tests/{test}"],
                                capture_output=True, text=True, check=True).stdout.splitlines()
        return next(part for part in listed[-1].split(" && ") if f"-o tests/{test}" in part)

    def compile(self, source, copy, output):
        command, made = self.compiled[str(source.resolve())]
        return command.replace(f"-o {made}", f"-o {output}").replace(f"-c {source.resolve()}", f"-c {copy}")

    def link(self, test, source, made, output):
        """With the mutant in the original object's place, or before the library that holds it."""
        original = self.compiled[str(source.resolve())][1]
        words = [str(made) if posixpath.normpath(word) == original else word for word in shlex.split(self.links[test])]
        words[words.index(f"tests/{test}")] = str(output)
        if str(made) not in words:
            words.insert(words.index("-o"), str(made))
        return shlex.join(words)


def mutated(path, mutant):
    """The source's text with this change; None: as it is."""
    if mutant is None:
        return path.read_text(encoding="utf-8")
    row, start, end, other = mutant
    lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
    lines[row] = lines[row][:start] + other + lines[row][end:]
    return "".join(lines)


def build_batch(build, batch, scratch):
    """Compiles and links every mutant of the batch; what does not compile leaves no program behind."""
    rules = ["rule run", "  command = cd " + str(build.folder) + " && $do"]
    for number, (path, mutant) in enumerate(batch):
        copy, made = scratch / f"{number}.cpp", scratch / f"{number}.o"
        copy.write_text(mutated(path, mutant), encoding="utf-8")
        rules += [f"build {made}: run {copy}", "  do = " + build.compile(path, copy, made).replace("$", "$$")]
        for test in build.links:
            program = scratch / f"{number}-{test}"
            rules += [f"build {program}: run {made}", "  do = " + build.link(test, path, made, program).replace("$", "$$")]
    (scratch / "build.ninja").write_text("\n".join(rules) + "\n", encoding="utf-8")
    subprocess.run(["ninja", "-C", scratch, "-k", "0"], stdout=subprocess.DEVNULL, check=False)


def passes(program, *cases):
    try:
        ran = subprocess.run([program, "-a", "--filenames-as-tags", *cases], stdout=subprocess.DEVNULL,
                             stderr=subprocess.DEVNULL, timeout=900)
    except subprocess.TimeoutExpired:
        return False
    return ran.returncode == 0


def fate(path, programs):
    if not all(program.exists() for program in programs):
        return "does not build"
    for cases in ([f"[#{path.stem}]"], []):
        if not all(passes(program, *cases) for program in programs):
            return "caught"
    return "survives"


def require_sound(build, files):
    """What is unchanged must pass, linked the same way, or nothing that is caught means anything."""
    with tempfile.TemporaryDirectory() as folder:
        scratch = pathlib.Path(folder)
        build_batch(build, [(files[0], None)], scratch)
        if fate(files[0], [scratch / f"0-{test}" for test in build.links]) != "survives":
            sys.exit(f"{files[0]} as it stands does not build, or its tests fail")


def report(path, mutant, result):
    row, start, end, other = mutant
    line = path.read_text(encoding="utf-8").splitlines()[row]
    print(f"{result}: {path}:{row + 1}:{start + 1}: {line[start:end]} -> {other} in: {line.strip()}", flush=True)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("build", type=pathlib.Path)
    parser.add_argument("files", type=pathlib.Path, nargs="+")
    parser.add_argument("--sample", type=int, default=0, help="that many of all mutants, drawn at random; 0: all")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--tests", default="test_resistance,test_checks")
    parser.add_argument("--batch", type=int, default=16, help="mutants built in one run of ninja")
    chosen = parser.parse_args()
    build = Build(chosen.build, chosen.tests.split(","))
    files = sorted(one for path in chosen.files for one in (path.rglob("*.cpp") if path.is_dir() else [path]))
    mutants = [(path, mutant) for path in files for mutant in mutants_of(path)]
    if chosen.sample and chosen.sample < len(mutants):
        mutants = sorted(random.Random(chosen.seed).sample(mutants, chosen.sample))
    require_sound(build, files)
    count = {"caught": 0, "survives": 0, "does not build": 0}
    for first in range(0, len(mutants), chosen.batch):
        batch = mutants[first:first + chosen.batch]
        with tempfile.TemporaryDirectory() as folder:
            scratch = pathlib.Path(folder)
            build_batch(build, batch, scratch)
            for number, (path, mutant) in enumerate(batch):
                result = fate(path, [scratch / f"{number}-{test}" for test in build.links])
                count[result] += 1
                report(path, mutant, result)
    decided = count["caught"] + count["survives"]
    print(f"{count['caught']} of {decided} caught ({100.0 * count['caught'] / max(decided, 1):.1f} %); "
          f"{count['does not build']} did not build")


if __name__ == "__main__":
    main()
