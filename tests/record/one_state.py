#!/usr/bin/python3
"""one_state.py FILE...: gives each base detail one push of 200 lb all round and one stiffness of bed and anchors.

What a building code asks, how wide a range of stiffness is argued, and what a check makes of a force may change for good
reasons; the forces from one push at one stiffness may not. Run once on the demo details and on what make_details.py kept.
"""
import pathlib
import random
import re
import sys

LOADS = '<loads directions="all-round"><concentrated push="200 lbf"/></loads>'


def one_state(text, draw):
    bed, anchor = round(10 ** draw.uniform(3.6, 4.8)), round(10 ** draw.uniform(4.3, 5.3))
    fixed = f'<fixed-stiffness bed="{bed} psi/in" anchor="{anchor} lbf/in" reason="one of a range, for comparison"/>'
    text = re.sub(r'<guard height="([^"]*)"[^>]*/>', r'<guard height="\1" occupancy="one-and-two-family"/>', text, count=1)
    for dropped in (r"\s*<loads.*?</loads>", r"\s*<loads[^>]*/>", r"\s*<remarks.*?</remarks>", r"\s*<fixed-stiffness[^>]*/>"):
        text = re.sub(dropped, "", text, flags=re.DOTALL)
    basis = re.search(r"<basis([^>]*?)/?>", text)
    text = re.sub(r"\s*<basis[^>]*/>|\s*<basis.*?</basis>", "", text, flags=re.DOTALL)
    attributes = basis.group(1) if basis else ""
    return text.replace("</base-detail>", f"  {LOADS}\n  <basis{attributes}>{fixed}</basis>\n</base-detail>")


for name in sys.argv[1:]:
    path = pathlib.Path(name)
    path.write_text(one_state(path.read_text(encoding="utf-8"), random.Random(path.stem)), encoding="utf-8")
