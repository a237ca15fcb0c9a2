# SPDX-License-Identifier: GPL-3.0-or-later
"""The drawings are of one hand: two sizes of paper, two line weights a folder, round joins, and no colour that is not
a key of the theme's. What Qt's renderer cannot draw, or draws its own way, does not stand in them."""

import pathlib
import re
import xml.etree.ElementTree as tree

import house

FOLDER = "resources/drawings"
KEYS = "app/pictures/drawing_keys.cpp"
LICENCE = "<!-- SPDX-License-Identifier: GPL-3.0-or-later -->"
SVG = "{http://www.w3.org/2000/svg}"
SQUARE, STAGE = "0 0 96 96", "0 0 200 100"
# Each folder's paper and its line weights: what is seen small is drawn with a heavier pen.
HANDS = {
    "signs": (SQUARE, {4, 8}), "cautions": (SQUARE, {4, 8}), "iso": (SQUARE, {4, 8}), "ghs": (SQUARE, {4, 8}),
    "tools": (SQUARE, {1.5, 3}), "acts": (SQUARE, {1.5, 3}),
    "substrates": (STAGE, {1.5, 3}), "damages": (STAGE, {1.5, 3}), "steps": (STAGE, {0.75, 1.5}),
}
LAW = {"#101010", "#D6001C", "#FEFEFE"}  # GHS: the regulation's colours
ALLOWED = {
    "g": {"id", "fill", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin"},
    "path": {"d", "fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap"},
    "circle": {"cx", "cy", "r", "fill", "stroke", "stroke-width"},
    "rect": {"x", "y", "width", "height", "rx", "fill", "stroke", "stroke-width", "stroke-linecap"},
    "use": {"href", "transform"}, "title": set(),
}
HALF = re.compile(r"scale\((-?[\d.]+)(?: ([\d.]+))?\)")


def keys(root):
    """The colours that the program puts the theme's in place of: read where the program has them."""
    return set(re.findall(r'u"(#[0-9A-F]{6})"_s, Role::', pathlib.Path(root, KEYS).read_text(encoding="utf-8")))


def paint_problems(element, folder, colours):
    for which in ("fill", "stroke"):
        colour = element.get(which, "none")
        law = folder == "ghs" and colour in LAW
        if colour != "none" and colour not in colours and not law:
            yield f"{which} {colour} is no key of the theme"
    width = element.get("stroke-width")
    if width and float(width) not in HANDS[folder][1]:
        yield f"a line of {width}, not of {sorted(HANDS[folder][1])}"


def use_problems(element, folder, base):
    target = element.get("href", "")
    if not re.fullmatch(r"\.\./\w+/\w+\.svg", target) or not (base / folder / target).resolve().is_file():
        yield f"uses '{target}', which is not there"
    scales = {abs(float(each)) for pair in HALF.findall(element.get("transform", "")) for each in pair if each}
    if scales != ({0.5} if folder == "steps" else set()):
        yield f"'{target}' scaled by {sorted(scales)}: lines of another weight"


def element_problems(element, folder, colours, base):
    name = element.tag.removeprefix(SVG)
    if name not in ALLOWED:
        yield f"<{name}> is not of the house's hand"
        return
    for attribute in sorted(set(element.attrib) - ALLOWED[name]):
        yield f"<{name} {attribute}> is not of the house's hand"
    yield from paint_problems(element, folder, colours)
    if name == "use":
        yield from use_problems(element, folder, base)


def drawing_problems(text, folder, colours, base):
    if not text.startswith(LICENCE + "\n"):
        yield f"the first line is not '{LICENCE}'"
    try:
        root = tree.fromstring(text)
    except tree.ParseError as fault:
        yield f"cannot be read: {fault}"
        return
    if root.get("viewBox") != HANDS[folder][0] or set(root.attrib) != {"viewBox"}:
        yield f"its paper is not '{HANDS[folder][0]}' alone"
    title = root.find(SVG + "title")
    if title is None or not (title.text or "").strip() or not title.text.isascii():
        yield "has no English title"
    whole = root.findall(SVG + "g")
    if len(whole) != 1 or any(whole[0].get(each) != "round" for each in ("stroke-linejoin", "stroke-linecap")):
        yield "is not one group with round joins and ends"
    frames = [each.get("id") for each in root.iter(SVG + "g") if each.get("id")]
    if frames != [f"frame{number}" for number in range(1, len(frames) + 1)] or len(frames) == 1:
        yield f"its frames {frames} are not frame1, frame2 and so on"
    for element in list(root.iter())[1:]:
        yield from element_problems(element, folder, colours, base)


def problems(root):
    base = pathlib.Path(root, FOLDER)
    colours = keys(root)
    used = set()
    for path, name in house.files(root):
        if not name.startswith(FOLDER + "/"):
            continue
        folder = path.parent.name
        if path.suffix != ".svg" or folder not in HANDS or path.parent.parent != base:
            yield f"{name}: no drawing of a folder of drawings"
            continue
        text = path.read_text(encoding="utf-8")
        used.update(re.findall(r"\.\./tools/(\w+)\.svg", text))
        for each in drawing_problems(text, folder, colours, base):
            yield f"{name}: {each}"
    for tool in sorted((base / "tools").glob("*.svg")):
        if tool.stem not in used:
            yield f"{FOLDER}/tools/{tool.name}: no step uses it"


if __name__ == "__main__":
    house.main(problems)
