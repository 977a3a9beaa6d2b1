"""Tables of the links sky, pace and kit: usual things to carry, from kit-items.csv."""

from make_tables import enumerator, quoted, read_rows, refuse_duplicates, table_file

COLUMNS = ("key name status function weight_g works vital weight_evidence weight_source works_evidence"
           " works_source").split()


def kit_item_table(folder):
    rows = read_rows(folder, "kit-items.csv", COLUMNS)
    refuse_duplicates(rows, "key")
    lines = []
    for row in rows:
        works = row.number("works", above=0)
        if works > 1:
            row.refuse("works", "is above 1")
        retired = "true" if row.one_of("status", ["offered", "retired"]) == "retired" else "false"
        vital = "true" if row.one_of("vital", ["yes", "no"]) == "yes" else "false"
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {quoted(row.text('function'))}, {retired},",
                  f"     {row.number('weight_g', above=0)!r}, {works!r}, {vital},",
                  f"     {enumerator(row.evidence('weight_evidence'))}, {quoted(row.text('weight_source'))},",
                  f"     {enumerator(row.evidence('works_evidence'))}, {quoted(row.text('works_source'))}}},"]
    return table_file("core/kit/catalogue.h", "gs::kit", "UsualItem", "usual_items", [], lines)


def tables(folder):
    """Table files by name, for make_tables.py."""
    return {"kit_item_table.cpp": kit_item_table(folder)}
