"""Tables of the link kit: usual things to carry, and what an outing needs."""

from make_tables import enumerator, quoted, read_rows, refuse_duplicates, table_file

ITEM_COLUMNS = ("key name status function weight_g volume_l set_up_min works vital charge lever amount styles weight_evidence"
                " weight_source works_evidence works_source").split()
NEED_COLUMNS = "key name grade words evidence source".split()
STYLES = {"car": 1, "carry": 2, "backpack": 4}


def yes(row, column):
    return "true" if row.one_of(column, ["yes", "no"]) == "yes" else "false"


def styles(row):
    mask = 0
    for word in row.cells["styles"].split():
        if word not in STYLES:
            row.refuse("styles", f"{word!r} is not one of: {', '.join(STYLES)}")
        mask |= STYLES[word]
    return str(mask)


def kit_item_table(folder):
    rows = read_rows(folder, "kit-items.csv", ITEM_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = []
    for row in rows:
        works = row.number("works", above=0)
        if works > 1:
            row.refuse("works", "is above 1")
        lever = row.cells["lever"].strip()
        amount = row.number("amount", least=0)
        if (lever == "") != (amount == 0):
            row.refuse("amount", "goes with a lever, and a lever with an amount")
        retired = "true" if row.one_of("status", ["offered", "retired"]) == "retired" else "false"
        lines += [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, {quoted(row.text('function'))}, {retired},",
                  f"     {row.number('weight_g', above=0)!r}, {row.number('volume_l', above=0)!r},",
                  f"     {row.number('set_up_min', least=0)!r}, {works!r}, {yes(row, 'vital')}, {yes(row, 'charge')},",
                  f"     {quoted(lever)}, {amount!r}, {styles(row)},",
                  f"     {enumerator(row.evidence('weight_evidence'))}, {quoted(row.text('weight_source'))},",
                  f"     {enumerator(row.evidence('works_evidence'))}, {quoted(row.text('works_source'))}}},"]
    return table_file("core/kit/catalogue.h", "gs::kit", "UsualItem", "usual_items", [], lines)


def need_table(folder):
    rows = read_rows(folder, "kit-needs.csv", NEED_COLUMNS)
    refuse_duplicates(rows, "key")
    lines = [f"    {{{quoted(row.text('key'))}, {quoted(row.text('name'))}, "
             f"Need::Grade::{row.one_of('grade', ['vital', 'wise', 'safety'])}, {quoted(row.text('words'))}, "
             f"{enumerator(row.evidence('evidence'))}, {quoted(row.text('source'))}}}," for row in rows]
    return table_file("core/kit/need.h", "gs::kit", "Need", "needs", [], lines)


def tables(folder):
    """Table files by name, for make_tables.py."""
    return {"kit_item_table.cpp": kit_item_table(folder), "kit_need_table.cpp": need_table(folder)}
