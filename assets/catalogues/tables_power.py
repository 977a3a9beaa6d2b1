"""Battery and radio catalogues to C++ tables; called by make_tables.py. Python's standard library only."""

from make_tables import enumerator, quoted, read_rows, refuse_duplicates, table_file

STATUSES = ["offered", "retired"]
PACK_NUMBERS = "cells nominal_v empty_v usual_reserve_pct quick_mohm_ah slow_mohm_ah fixed_mohm most_discharge_a_per_ah".split()
CHARGE_NUMBERS = ("charge_from_c gentle_below_c gentle_charge_a_per_ah most_charge_a_per_ah charge_factor"
                  " charge_tail_h").split()
CHEMISTRY_COLUMNS = ("key name status cells nominal_v empty_v pack_evidence pack_source usual_reserve_pct"
                     " reserve_evidence reserve_source quick_mohm_ah slow_mohm_ah fixed_mohm resistance_evidence"
                     " resistance_source most_discharge_a_per_ah discharge_evidence discharge_source charge_from_c"
                     " gentle_below_c gentle_charge_a_per_ah most_charge_a_per_ah charge_factor charge_tail_h"
                     " charge_evidence charge_source").split()
CURVE_COLUMNS = "key curve x y evidence source".split()
WELL_NUMBERS = "capacity_per_label rate_per_h share full_v slope_v bend_v".split()
SPREAD_NUMBERS = ("capacity_low capacity_high resistance_low resistance_high resting_low_v"
                  " resting_high_v").split()
CURVES = ["resting_v", "capacity_at_c", "capacity_at_rate", "resistance_at_c"]
WELLS_STAND_FOR = ("resting_v", "capacity_at_rate")  # with wells these two would be a second law
# What a curve does as x grows: a fuller pack stands higher, a harder load gets less, a warmer pack resists less.
RISES = {"resting_v": 1, "capacity_at_c": 1, "capacity_at_rate": -1, "resistance_at_c": -1}
MODE_COLUMNS = ("key name status average_power_share power_evidence power_source current_share current_evidence"
                " current_source").split()
WIRE_COLUMNS = "key name status gauge carries_a evidence source".split()
CLASS_COLUMNS = "key full_power_w receive_a keyed_idle_a full_power_a evidence source".split()


def retired(row):
    return "true" if row.one_of("status", STATUSES) == "retired" else "false"


def said(row, stem):
    """Evidence and source of one group of columns."""
    start = stem + "_" if stem else ""
    return f"{enumerator(row.evidence(start + 'evidence'))}, {quoted(row.text(start + 'source'))}"


def numbers(row, columns):
    return ", ".join(repr(row.number(c)) for c in columns)


def share(row, column):
    value = row.number(column, above=0)
    if value > 1:
        row.refuse(column, "is above 1")
    return value


def curve_points(rows, name):
    """One curve's points as C++; x must grow and y must go the curve's way."""
    if not rows:
        return None
    lines, last = [], None
    for row in rows:
        x, y = row.number("x"), row.number("y", above=0)
        if last is not None and x <= last[0]:
            row.refuse("x", "must grow from point to point")
        if last is not None and (y - last[1]) * RISES[name] < 0:
            row.refuse("y", f"{name} turns back here")
        last = (x, y)
        lines.append(f"    {{{x!r}, {y!r}, {said(row, '')}}},")
    return lines


def wells_of(row, wells):
    """The chemistry's kinetic law as C++ array, or None where charge is counted."""
    own = [w for w in wells if w.text("key") == row.text("key")]
    if not own:
        return None
    for column in WELL_NUMBERS:
        own[0].number(column, above=0)
    if own[0].number("share") >= 1:
        own[0].refuse("share", "is not below 1: that is plain counting")
    return f"{{{numbers(own[0], WELL_NUMBERS)}, {said(own[0], '')}}}"


def spread_of(row, spreads):
    own = [s for s in spreads if s.text("key") == row.text("key")]
    if not own:
        row.refuse("key", "has no row in battery-spread.csv")
    for low, high, middle in (("capacity_low", "capacity_high", 1), ("resistance_low", "resistance_high", 1),
                              ("resting_low_v", "resting_high_v", 0)):
        if not own[0].number(low) <= middle <= own[0].number(high):
            own[0].refuse(low, f"{low} to {high} does not hold {middle}")
    return f"{{{numbers(own[0], SPREAD_NUMBERS)}, {said(own[0], '')}}}"


def chemistry_table(folder):
    rows = read_rows(folder, "chemistries.csv", CHEMISTRY_COLUMNS)
    points = read_rows(folder, "battery-curves.csv", CURVE_COLUMNS)
    wells = read_rows(folder, "battery-wells.csv", ["key", *WELL_NUMBERS, "evidence", "source"])
    spreads = read_rows(folder, "battery-spread.csv", ["key", *SPREAD_NUMBERS, "evidence", "source"])
    keys = [row.text("key") for row in rows]
    for one_a_key in (rows, wells, spreads):
        refuse_duplicates(one_a_key, "key")
    for other in (*points, *wells, *spreads):
        other.one_of("key", keys)
    for point in points:
        point.one_of("curve", CURVES)
    arrays, lines = [], []
    for index, row in enumerate(rows):
        names = []
        law = wells_of(row, wells)
        for curve in CURVES:
            own = [p for p in points if p.text("key") == row.text("key") and p.text("curve") == curve]
            if law and curve in WELLS_STAND_FOR:
                if own:
                    own[0].refuse("curve", "says again what battery-wells.csv says")
                names.append("{}")
                continue
            body = curve_points(own, curve)
            if body is None:
                row.refuse("key", f"has no {curve} in battery-curves.csv")
            if curve == "resting_v" and (own[0].number("x") != 0 or own[-1].number("x") != 100):
                row.refuse("key", "its resting_v must run from 0 to 100")
            name = f"k{curve.title().replace('_', '')}{index}"
            names.append(name)
            arrays += [f"constexpr CurvePoint {name}[] = {{", *body, "};"]
        if law:
            arrays.append(f"constexpr KineticLaw kKineticLaw{index} = {law};")
            law = f"&kKineticLaw{index}"
        for column in PACK_NUMBERS + CHARGE_NUMBERS:
            if column not in ("charge_from_c", "gentle_below_c"):
                row.number(column, least=0)
        if row.number("usual_reserve_pct") >= 100:
            row.refuse("usual_reserve_pct", "leaves nothing")
        for column in ("nominal_v", "quick_mohm_ah", "most_discharge_a_per_ah", "most_charge_a_per_ah"):
            row.number(column, above=0)
        row.number("charge_factor", least=1)
        row.number("gentle_below_c", least=row.number("charge_from_c"))
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired(row)},",
                  f"     {numbers(row, PACK_NUMBERS)},", f"     {numbers(row, CHARGE_NUMBERS)},",
                  *(f"     {said(row, stem)}," for stem in ("pack", "reserve", "resistance", "discharge", "charge")),
                  f"     {', '.join(names)}, {law or 'nullptr'},", f"     {spread_of(row, spreads)}}},"]
    return table_file("core/battery/chemistry.h", "gs::battery", "Chemistry", "chemistries", arrays, lines)


def mode_table(folder):
    rows = read_rows(folder, "modes.csv", MODE_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired(row)},\n"
             f"     {share(row, 'average_power_share')!r}, {said(row, 'power')},\n"
             f"     {share(row, 'current_share')!r}, {said(row, 'current')}}}," for row in rows]
    return table_file("core/radio/mode.h", "gs::radio", "Mode", "modes", [], lines)


def wire_table(folder):
    """From the thinnest to the thickest: the search for the thinnest that will do relies on it."""
    rows = read_rows(folder, "wires.csv", WIRE_COLUMNS)
    refuse_duplicates(rows, "key")
    for one, next_one in zip(rows, rows[1:]):
        if next_one.number("gauge") >= one.number("gauge"):
            next_one.refuse("gauge", "must fall from row to row")
        if next_one.number("carries_a") < one.number("carries_a"):
            next_one.refuse("carries_a", "a thicker wire carries no less")
    lines = [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired(row)}, "
             f"{int(row.number('gauge', least=0))}, {row.number('carries_a', above=0)!r}, {said(row, '')}}},"
             for row in rows]
    return table_file("core/radio/lead.h", "gs::radio", "Wire", "wires", [], lines)


def class_table(folder):
    rows = read_rows(folder, "radio-classes.csv", CLASS_COLUMNS)
    refuse_duplicates(rows, "key")
    for one, next_one in zip(rows, rows[1:]):
        for column in CLASS_COLUMNS[1:5]:
            if next_one.number(column) <= one.number(column):
                next_one.refuse(column, "must grow with power")
    for row in rows:
        if row.number("keyed_idle_a") >= row.number("full_power_a"):
            row.refuse("keyed_idle_a", "is not below full_power_a")
    lines = [f"    {{{quoted(row.text('key'))}, "
             f"{', '.join(repr(row.number(c, above=0)) for c in CLASS_COLUMNS[1:5])}, {said(row, '')}}}," for row in rows]
    return table_file("core/radio/current.h", "gs::radio", "RadioClass", "radio_classes", [], lines)


def tables(folder):
    """File name to text, for make_tables.py."""
    return {"chemistry_table.cpp": chemistry_table(folder), "mode_table.cpp": mode_table(folder),
            "wire_table.cpp": wire_table(folder), "radio_class_table.cpp": class_table(folder)}
