#!/usr/bin/env python3
"""Turns the catalogues beside this script into C++ tables: make_tables.py OUT_DIR (or --list for their names)

Writes OUT_DIR/cable_table.cpp, OUT_DIR/limit_table.cpp and the tables of each tables_<link>.py. A row that is not complete is refused on stderr with its
file, row (line in the file) and column, and nothing is written. Python's standard library only.
"""

import csv
import importlib
import math
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent

# From the best to the weakest; the C++ enumerators have an underscore for the space.
EVIDENCE = ["seen", "second hand", "memory", "practice"]

CABLE_COLUMNS = ("key name status z0_ohm velocity_factor law k0 k1 k2 lowest_mhz highest_mhz mass_g_per_m"
                 " diameter_mm fit_note loss_evidence loss_source body_evidence body_source rating_w_db_per_100m"
                 " working_vrms rating_evidence rating_source").split()
POINT_COLUMNS = "key frequency_mhz attenuation_db_per_100m half_step_db_per_100m evidence source".split()
LIMIT_COLUMNS = "key limit ease over evidence source".split()

# The amateur bands that the laws are judged on: 160 m to 6 m.
JUDGED_FROM_MHZ, JUDGED_TO_MHZ = 1.8, 54.0


class Refused(Exception):
    """What is wrong, in words that name file, row and column."""


class Row:
    """One line of a catalogue that knows where it stands."""

    def __init__(self, file, line, cells):
        self.file, self.line, self.cells = file, line, cells

    def refuse(self, column, why):
        raise Refused(f"{self.file}, row {self.line}, column {column}: {why}")

    def text(self, column):
        value = self.cells[column].strip()
        if not value:
            self.refuse(column, "is empty")
        return value

    def number(self, column, least=-math.inf, above=-math.inf):
        text = self.text(column)
        try:
            value = float(text)
        except ValueError:
            value = math.nan
        if not math.isfinite(value) or "_" in text:
            self.refuse(column, f"'{text}' is not a number")
        if value < least or value <= above:
            self.refuse(column, f"{text} is out of range")
        return value

    def one_of(self, column, choices):
        value = self.text(column)
        if value not in choices:
            self.refuse(column, f"'{value}' is none of: {', '.join(choices)}")
        return value

    def evidence(self, column):
        return self.one_of(column, EVIDENCE)


def read_rows(folder, name, columns):
    """Rows of a CSV file; its header must be exactly `columns`."""
    path = folder / name
    try:
        handle = open(path, newline="", encoding="utf-8")
    except OSError as error:
        raise Refused(f"{name}: cannot be read ({error.strerror})") from error
    with handle:
        reader = csv.reader(handle, strict=True)
        header = next(reader, [])
        if header != columns:
            wrong = next((c for c in columns if c not in header), None) or next(
                (c for c in header if c not in columns), "order of the columns")
            raise Refused(f"{name}, row 1, column {wrong}: the header must read {','.join(columns)}")
        rows = []
        for cells in reader:
            if len(cells) != len(columns):
                where = columns[min(len(cells), len(columns) - 1)]
                raise Refused(f"{name}, row {reader.line_num}, column {where}: "
                              f"{len(cells)} cells where {len(columns)} belong")
            rows.append(Row(name, reader.line_num, dict(zip(columns, cells))))
        return rows


def refuse_duplicates(rows, *columns):
    seen = {}
    for row in rows:
        key = tuple(row.text(c) if c == "key" else row.number(c) for c in columns)
        if key in seen:
            row.refuse(columns[-1], f"'{row.text(columns[-1])}' stands already in row {seen[key]}")
        seen[key] = row.line


def quoted(text):
    """A C++ string literal of the UTF-8 text."""
    parts = []
    for byte in text.encode("utf-8"):
        char = chr(byte)
        if char in '"\\':
            parts.append("\\" + char)
        elif 32 <= byte < 127:
            parts.append(char)
        else:
            parts.append(f"\\{byte:03o}")
    return '"' + "".join(parts) + '"'


def enumerator(evidence):
    return "Evidence::" + evidence.replace(" ", "_")


def table_file(header, namespace, row_type, name, arrays, lines):
    """A C++ file that defines std::span<const row_type> namespace::name()."""
    array = "k" + name.capitalize()
    return "\n".join(["// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.",
                      f'#include "{header}"', "", f"namespace {namespace} {{", "namespace {", "", *arrays, "",
                      f"constexpr {row_type} {array}[] = {{", *lines, "};", "", "}  // namespace", "",
                      f"std::span<const {row_type}> {name}() {{ return {array}; }}", "",
                      f"}}  // namespace {namespace}", ""])


def worst_fit_pct(row, points):
    """Largest departure of the row's law from its own points within the judged bands, in percent."""
    k0, k1, k2 = (row.number(k, least=0) for k in ("k0", "k1", "k2"))
    worst = -1.0
    for point in points:
        f = point.number("frequency_mhz", above=0)
        if JUDGED_FROM_MHZ <= f <= JUDGED_TO_MHZ:
            published = point.number("attenuation_db_per_100m", above=0)
            worst = max(worst, 100 * abs((k0 + k1 * math.sqrt(f) + k2 * f) / published - 1))
    if worst < 0:
        row.refuse("key", f"no point between {JUDGED_FROM_MHZ} and {JUDGED_TO_MHZ} MHz tests this law")
    return worst


def check_cable(row, points):
    """What ties a row to its points: tested range, and evidence no better than the points' weakest."""
    frequencies = [p.number("frequency_mhz", above=0) for p in points]
    for column, edge in (("lowest_mhz", min(frequencies)), ("highest_mhz", max(frequencies))):
        if row.number(column, above=0) != edge:
            row.refuse(column, f"the law is tested by points as far as {edge:g} MHz")
    if row.one_of("law", ["maker", "fit"]) == "fit":
        weakest = max((p.evidence("evidence") for p in points), key=EVIDENCE.index)
        if row.evidence("loss_evidence") != weakest:
            row.refuse("loss_evidence", f"the points of this row rest on: {weakest}")


def cable_table(folder):
    rows = read_rows(folder, "cables.csv", CABLE_COLUMNS)
    points = read_rows(folder, "cable-points.csv", POINT_COLUMNS)
    refuse_duplicates(rows, "key")
    refuse_duplicates(points, "key", "frequency_mhz")
    points_of = {row.text("key"): [] for row in rows}
    for point in points:
        if point.text("key") not in points_of:
            point.refuse("key", f"'{point.text('key')}' is no cable of cables.csv")
        points_of[point.text("key")].append(point)

    arrays, lines = [], []
    for index, row in enumerate(rows):
        own = points_of[row.text("key")]
        if not own:
            row.refuse("key", "has no points in cable-points.csv")
        check_cable(row, own)
        arrays.append(f"constexpr CablePoint kPoints{index}[] = {{")
        for point in own:
            numbers = [point.number(c, above=0) for c in POINT_COLUMNS[1:4]]
            evidence = enumerator(point.evidence("evidence"))
            arrays.append(f"    {{{', '.join(map(repr, numbers))}, {evidence},\n"
                          f"     {quoted(point.text('source'))}}},")
        arrays.append("};")
        velocity = row.number("velocity_factor", above=0)
        if velocity > 1:
            row.refuse("velocity_factor", "is above 1")
        numbers = [row.number("z0_ohm", above=0), velocity]
        numbers += [row.number(c, least=0) for c in ("k0", "k1", "k2", "lowest_mhz", "highest_mhz",
                                                     "mass_g_per_m", "diameter_mm")]
        numbers.append(worst_fit_pct(row, own))
        ratings = [row.number(c, least=0) for c in ("rating_w_db_per_100m", "working_vrms")]
        rated = any(ratings)  # without a rating there is nothing to have a source for
        rating_evidence = enumerator(row.evidence("rating_evidence")) if rated else "Evidence::practice"
        rating_source = row.text("rating_source") if rated else ""
        retired = "true" if row.one_of("status", ["offered", "retired"]) == "retired" else "false"
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired}, "
                  f"{', '.join(map(repr, numbers))},",
                  f"     {quoted(row.cells['fit_note'].strip())},",
                  f"     {enumerator(row.evidence('loss_evidence'))}, {quoted(row.text('loss_source'))},",
                  f"     {enumerator(row.evidence('body_evidence'))}, {quoted(row.text('body_source'))},",
                  f"     {ratings[0]!r}, {ratings[1]!r}, {rating_evidence}, {quoted(rating_source)}, kPoints{index}}},"]
    return table_file("core/feedline/cable.h", "gs::feedline", "Cable", "cables", arrays, lines)


def limit_table(folder):
    rows = read_rows(folder, "limits.csv", LIMIT_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = [f"    {{{quoted(row.text('key'))}, {row.number('limit')!r}, {row.number('ease')!r}, "
             f"{quoted(row.cells['over'].strip())}, {enumerator(row.evidence('evidence'))},\n     {quoted(row.text('source'))}}}," for row in rows]
    return table_file("core/outing/table.h", "gs", "Limit", "limits", [], lines)


def all_tables(folder):
    """File name -> text of every table: this script's own, and those of the tables_<link>.py beside it."""
    texts = {"cable_table.cpp": cable_table(folder), "limit_table.cpp": limit_table(folder)}
    sys.path.insert(0, str(HERE))
    sys.modules.setdefault("make_tables", sys.modules[__name__])  # the modules borrow from the script that runs
    for module in sorted(HERE.glob("tables_*.py")):
        texts.update(importlib.import_module(module.stem).tables(folder))
    return texts


def make(folder, out):
    """Reads everything before it writes anything; leaves a file alone whose text has not changed."""
    texts = all_tables(folder)
    out.mkdir(parents=True, exist_ok=True)
    for name, text in texts.items():
        path = out / name
        if not path.exists() or path.read_text(encoding="utf-8") != text:
            path.write_text(text, encoding="utf-8")


def main():
    if len(sys.argv) != 2:
        sys.exit("usage: make_tables.py OUT_DIR")
    try:
        if sys.argv[1] == "--list":
            print(";".join(sorted(all_tables(HERE))))
        else:
            make(HERE, pathlib.Path(sys.argv[1]))
    except (Refused, csv.Error, UnicodeDecodeError) as trouble:
        sys.exit(f"make_tables.py: {trouble}")


if __name__ == "__main__":
    main()
