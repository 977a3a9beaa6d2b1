"""Antenna kinds and ground loss of radials as C++ tables; make_tables.py calls tables(folder)."""

from make_tables import enumerator, quoted, read_rows, refuse_duplicates, table_file

METRES_PER_FOOT = 0.3048  # international foot, exact

SHAPES = "dipole inverted_v sloping_dipole sloper inverted_l vertical ground_plane loop whip".split()
CURRENT_MAXIMA = "middle base feed_and_opposite".split()

KIND_COLUMNS = ("key name status shape cut_constant_ft_mhz cut_evidence cut_source radiation_ohm feed_ohm feed_lowest_ohm"
                " feed_highest_ohm ground_ohm transformer_ratio transformer_db usual_swr feed_evidence feed_source wires supports"
                " rig_note current_maximum set_up_min pack_down_min work_evidence work_source").split()
WIRE_COLUMNS = "key name status diameter_mm mass_lb_per_1000_ft breaking_lbf evidence source".split()
TRANSFORMER_COLUMNS = "key name status ratio loss_db evidence source".split()
GRAMS_PER_METRE = 453.59237 / 304.8  # pounds for 1000 feet, exact
NEWTONS_PER_LBF = 4.4482216152605  # exact
FIELD_COLUMNS = "key radials ground_db raised_db evidence source".split()
RADIAL_COLUMNS = "key radials loss_ohm loss_lowest_ohm loss_highest_ohm evidence source".split()


def check_kind(row):
    """What a row may leave open, and the usual resistance lies within its own range."""
    whip = row.text("shape") == "whip"
    if (row.number("radiation_ohm", least=0) == 0) != whip:
        row.refuse("radiation_ohm", "must be 0 for a whip and above 0 for every other shape")
    resonant = row.number("cut_constant_ft_mhz", least=0) > 0
    if resonant and whip:
        row.refuse("cut_constant_ft_mhz", "must be 0 for a whip")
    if not resonant and row.text("shape") not in ("whip", "sloper"):
        row.refuse("cut_constant_ft_mhz", "may be 0 for a whip or a sloping wire of any length only")
    if (row.number("feed_ohm", least=0) > 0) != resonant:
        row.refuse("feed_ohm", "stands where a length is cut by rule, and only there")
    if row.number("wires", least=1) not in (1, 2):
        row.refuse("wires", "is 1 or 2")
    lowest, usual, highest = (row.number(c) for c in ("feed_lowest_ohm", "feed_ohm", "feed_highest_ohm"))
    if not lowest <= usual <= highest:
        row.refuse("feed_ohm", f"{usual:g} is not within {lowest:g} to {highest:g}")
    if row.number("supports", least=0) != int(row.number("supports")):
        row.refuse("supports", "is not a whole number")


def kind_table(folder):
    rows = read_rows(folder, "antenna-kinds.csv", KIND_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = []
    for row in rows:
        shape = row.one_of("shape", SHAPES)
        check_kind(row)
        retired = "true" if row.one_of("status", ["offered", "retired"]) == "retired" else "false"
        constant_m_mhz = row.number("cut_constant_ft_mhz") * METRES_PER_FOOT
        feed = [row.number(c) for c in ("radiation_ohm", "feed_ohm", "feed_lowest_ohm", "feed_highest_ohm", "ground_ohm")]
        feed += [row.number("transformer_ratio", least=1), row.number("transformer_db", least=0),
                 row.number("usual_swr", least=1)]
        work = [row.number(c, least=0) for c in ("set_up_min", "pack_down_min")]
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired}, Shape::{shape},",
                  f"     {constant_m_mhz!r}, {enumerator(row.evidence('cut_evidence'))},",
                  f"     {quoted(row.text('cut_source'))},",
                  f"     {', '.join(map(repr, feed))}, {enumerator(row.evidence('feed_evidence'))},",
                  f"     {quoted(row.text('feed_source'))},",
                  f"     {int(row.number('wires'))}, {int(row.number('supports'))}, {quoted(row.text('rig_note'))},",
                  f"     CurrentMaximum::{row.one_of('current_maximum', CURRENT_MAXIMA)},",
                  f"     {', '.join(map(repr, work))}, {enumerator(row.evidence('work_evidence'))},",
                  f"     {quoted(row.text('work_source'))}}},"]
    return table_file("core/antenna/kind.h", "gs::antenna", "Kind", "kinds", [], lines)


def radial_table(folder):
    rows = read_rows(folder, "radials.csv", RADIAL_COLUMNS)
    refuse_duplicates(rows, "key")
    lines, before = [], None
    for row in rows:
        number, loss = row.number("radials", above=0), row.number("loss_ohm", above=0)
        lowest, highest = row.number("loss_lowest_ohm", least=0), row.number("loss_highest_ohm", above=0)
        if not lowest <= loss <= highest:
            row.refuse("loss_ohm", f"{loss:g} is not within {lowest:g} to {highest:g}")
        if before and not (number > before[0] and loss <= before[1]):
            row.refuse("radials", "rows go up in number and never up in loss")
        before = number, loss
        lines += [f"    {{{number!r}, {loss!r}, {lowest!r}, {highest!r}, {enumerator(row.evidence('evidence'))},",
                  f"     {quoted(row.text('source'))}}},"]
    return table_file("core/antenna/radials.h", "gs::antenna", "RadialRow", "radials", [], lines)


def radial_field_table(folder):
    rows = read_rows(folder, "radials-field.csv", FIELD_COLUMNS)
    refuse_duplicates(rows, "key")
    lines, before = [], None
    for row in rows:
        number = row.number("radials", above=0)
        gains = [row.number(c) for c in ("ground_db", "raised_db")]
        if before and not (number > before[0] and gains[0] >= before[1][0] and gains[1] >= before[1][1]):
            row.refuse("radials", "rows go up in number and never down in field")
        before = number, gains
        lines += [f"    {{{number!r}, {gains[0]!r}, {gains[1]!r}, {enumerator(row.evidence('evidence'))},",
                  f"     {quoted(row.text('source'))}}},"]
    return table_file("core/antenna/radials.h", "gs::antenna", "RadialFieldRow", "radial_fields", [], lines)


def retired(row):
    return "true" if row.one_of("status", ["offered", "retired"]) == "retired" else "false"


def wire_table(folder):
    rows = read_rows(folder, "antenna-wires.csv", WIRE_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = []
    for row in rows:
        mass = row.number("mass_lb_per_1000_ft", above=0) * GRAMS_PER_METRE
        breaking = row.number("breaking_lbf", above=0) * NEWTONS_PER_LBF
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired(row)},",
                  f"     {row.number('diameter_mm', above=0)!r}, {mass!r}, {breaking!r}, {enumerator(row.evidence('evidence'))},",
                  f"     {quoted(row.text('source'))}}},"]
    return table_file("core/antenna/wires.h", "gs::antenna", "WireRow", "wires", [], lines)


def transformer_table(folder):
    rows = read_rows(folder, "antenna-transformers.csv", TRANSFORMER_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = []
    for row in rows:
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {retired(row)},",
                  f"     {row.number('ratio', least=1)!r}, {row.number('loss_db', least=0)!r}, {enumerator(row.evidence('evidence'))},",
                  f"     {quoted(row.text('source'))}}},"]
    return table_file("core/antenna/wires.h", "gs::antenna", "TransformerRow", "transformers", [], lines)


def tables(folder):
    """{file name: C++ text}; a row that is not complete is refused with its file, row and column."""
    return {"antenna_kind_table.cpp": kind_table(folder), "radial_table.cpp": radial_table(folder),
            "radial_field_table.cpp": radial_field_table(folder),
            "antenna_wire_table.cpp": wire_table(folder), "antenna_transformer_table.cpp": transformer_table(folder)}
