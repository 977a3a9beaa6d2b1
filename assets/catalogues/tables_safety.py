"""The tables of the safety and rules links: tables(folder) gives their C++ files by name. Python's standard library only."""

from make_tables import enumerator, quoted, read_rows, refuse_duplicates, table_file

REGIONS = {"1": 1, "2": 2, "3": 4}
CLASSES = {"extra": 1, "advanced": 2, "general": 4, "technician": 8, "novice": 16}
CAUTION_WHEN = ["always", "battery", "mast", "tree", "vehicle"]


def mask(row, column, bits):
    """The bits of a cell that lists several words."""
    value = 0
    for word in row.text(column).split():
        if word not in bits:
            row.refuse(column, f"'{word}' is none of: {', '.join(bits)}")
        value |= bits[word]
    return value


def span(row, low="low_mhz", high="high_mhz"):
    least, most = row.number(low, least=0), row.number(high, least=0)
    if most <= least:
        row.refuse(high, f"{most:g} is not above {least:g}")
    return [repr(least), repr(most)]


def flag(row, column):
    return "true" if row.one_of(column, ["yes", "no"]) == "yes" else "false"


def proof(row):
    return f"{enumerator(row.evidence('evidence'))}, {quoted(row.text('source'))}"


def table(folder, file, columns, header, namespace, row_type, name, cells):
    """One C++ table; `cells` turns a row into its C++ values before evidence and source."""
    columns = ("key " + columns + " evidence source").split()
    rows = read_rows(folder, file, columns)
    refuse_duplicates(rows, "key")
    lines = [f"    {{{quoted(row.text('key'))}, {', '.join(cells(row))},\n     {proof(row)}}}," for row in rows]
    return table_file(header, namespace, row_type, name, [], lines)


def exposure(row):
    numbers = [row.number(c) for c in ("e_v_per_m", "e_power", "h_a_per_m", "h_power", "s_w_per_m2", "s_power")]
    if min(numbers[0], numbers[2]) <= 0:
        row.refuse("e_v_per_m", "a field limit must be above 0")
    rest = [row.number("averaging_min", above=0), row.number("peak_e_v_per_m", least=0),
            row.number("peak_h_a_per_m", least=0)]
    return ["Rule::" + row.one_of("rule", ["us", "icnirp", "germany"]),
            "Audience::" + {"public": "passer_by", "operator": "radio_operator"}[
                row.one_of("audience", ["public", "operator"])],
            *span(row, "from_mhz", "to_mhz"), *map(repr, numbers + rest)]


def exemption(row):
    return [*span(row, "from_mhz", "to_mhz"), repr(row.number("erp_w_per_m2", above=0)),
            repr(row.number("frequency_power"))]


def duty(row):
    value = row.number("duty", above=0)
    if value > 1:
        row.refuse("duty", "is above 1")
    return [quoted(row.text("name")), repr(value)]


def loop(row):
    return [repr(row.number(c, above=0)) for c in ("frequency_mhz", "operator_m", "public_m")]


def clearance(row):
    return [quoted(row.text("name")), repr(row.number("clearance_m", above=0))]


def caution(row):
    kind = row.one_of("kind", ["look", "do", "know"])
    asks = [row.cells[column].strip() for column in ("ask", "clear", "trouble")]
    if any(asks) != all(asks) or (kind == "look") != all(asks):
        row.refuse("ask", "what must be looked at has a question with two answers, and nothing else has")
    return ["Caution::Kind::" + kind.replace("do", "act"),
            "Caution::When::" + row.one_of("when", CAUTION_WHEN), quoted(row.text("name")),
            quoted(row.cells["mark"].strip()), quoted(row.text("sheets")), quoted(row.text("brief")),
            *(quoted(text) for text in asks), quoted(row.text("words"))]


def band_segment(row):
    return [quoted(row.text("band")), str(mask(row, "regions", REGIONS)), str(mask(row, "classes", CLASSES)), *span(row)]


def emission_segment(row):
    return [*span(row), "Kind::" + row.one_of("kind", ["phone", "data"]), repr(row.number("widest_khz", least=0)),
            str(mask(row, "regions", REGIONS)),
            "Newcomers::" + row.one_of("newcomers", ["as_others", "cw_only", "ssb_only"]), flag(row, "fm"),
            flag(row, "upper_only")]


def fixed_channel(row):
    return [quoted(row.text("band")), *(repr(row.number(c, above=0)) for c in ("centre_mhz", "upper_dial_mhz", "widest_khz"))]


def power_cap(row):
    return [*span(row), repr(row.number("limit_w", above=0)),
            "true" if row.one_of("measure", ["pep", "erp"]) == "erp" else "false", str(mask(row, "regions", REGIONS)),
            str(mask(row, "classes", CLASSES))]


def mode_width(row):
    return [quoted(row.text("name")), "Kind::" + row.one_of("kind", ["phone", "data", "cw"]),
            "Place::" + row.one_of("place", ["upper", "lower", "centred", "by_band"]), repr(row.number("width_khz", above=0))]


def tables(folder):
    exposure_h, safety = "core/safety/exposure_limits.h", "gs::safety"
    bands_h, rules = "core/rules/bands.h", "gs::rules"
    parts = [
        ("exposure-limits.csv", "rule audience from_mhz to_mhz e_v_per_m e_power h_a_per_m h_power s_w_per_m2 s_power"
         " averaging_min peak_e_v_per_m peak_h_a_per_m", exposure_h, safety, "ExposureLimit", "exposure_limits", exposure),
        ("exemption-thresholds.csv", "from_mhz to_mhz erp_w_per_m2 frequency_power", exposure_h, safety,
         "ExemptionThreshold", "exemption_thresholds", exemption),
        ("exposure-duties.csv", "name duty", "core/safety/average_power.h", safety, "ExposureDuty", "exposure_duties", duty),
        ("loop-distances.csv", "frequency_mhz operator_m public_m", "core/safety/small_antenna.h", safety, "LoopDistance",
         "loop_distances", loop),
        ("line-clearances.csv", "name clearance_m", "core/safety/overhead.h", safety, "LineClearance", "line_clearances",
         clearance),
        ("cautions.csv", "kind when name mark sheets brief ask clear trouble words", "core/safety/caution.h", safety, "Caution", "cautions", caution),
        ("band-segments.csv", "band regions classes low_mhz high_mhz", bands_h, rules, "BandSegment", "band_segments",
         band_segment),
        ("emission-segments.csv", "low_mhz high_mhz kind widest_khz regions newcomers fm upper_only", bands_h, rules,
         "EmissionSegment", "emission_segments", emission_segment),
        ("fixed-channels.csv", "band centre_mhz upper_dial_mhz widest_khz", bands_h, rules, "FixedChannel",
         "fixed_channels", fixed_channel),
        ("power-caps.csv", "low_mhz high_mhz limit_w measure regions classes", bands_h, rules, "PowerCap", "power_caps",
         power_cap),
        ("mode-widths.csv", "name kind place width_khz", bands_h, rules, "ModeWidth", "mode_widths", mode_width),
    ]
    files = {}
    for file, columns, header, namespace, row_type, name, cells in parts:
        text = table(folder, file, columns, header, namespace, row_type, name, cells)
        stem = name[:-3] + "y" if name.endswith("ies") else name.removesuffix("s")
        files[stem + "_table.cpp"] = text
    return files
