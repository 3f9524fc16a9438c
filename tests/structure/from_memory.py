#!/usr/bin/env python3
"""Every file of the engine whose comments or clauses say "from memory" has a row in engine/review/memory/values.cpp,
and every row names a file that still says so. Prints what does not fit."""
import re
import sys
from pathlib import Path

root = Path(sys.argv[1]) / "engine"
rooms = ["resistance", "demand", "checks", "catalog", "model", "review"]
tables = sorted(root.glob("review/memory/*"))
about_the_table = {path.relative_to(root).as_posix() for path in tables} | {"review/review.cpp"}

said = re.compile(r"\b(?:from|by)\s+(?://+\s*)?memory\b|\(memory\)|, memory\)|//\s*memory\b")
rows = set()
for table in tables:
    rows |= set(re.findall(r'\{"([a-z_/0-9]+\.(?:h|cpp))"', table.read_text()))

saying = set()
for room in rooms:
    for path in sorted((root / room).rglob("*")):
        name = path.relative_to(root).as_posix()
        if path.suffix in (".h", ".cpp") and name not in about_the_table and said.search(path.read_text()):
            saying.add(name)

status = 0
for name in sorted(saying - rows):
    print(f"engine/{name}: says \"from memory\", and no row of review/memory/values lists it")
    status = 1
for name in sorted(rows - saying):
    print(f"engine/{name}: has a row in review/memory/values, and says \"from memory\" nowhere")
    status = 1
sys.exit(status)
