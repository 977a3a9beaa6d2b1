"""The house rules that a machine can check: who may include whom, file sizes, rows without a source, the top level."""
import csv
import pathlib
import re
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
LINKS = ["battery", "radio", "feedline", "antenna", "sky", "pace", "safety", "kit", "rules"]
TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "core", "app", "web", "tests", "assets", "docs"}
MOST_LINES, MEDIAN_LINES = 600, 200


def ours():
    listed = subprocess.run(["git", "ls-files", "--cached", "--others", "--exclude-standard"], cwd=ROOT, capture_output=True, text=True)
    names = listed.stdout.split("\n") if listed.returncode == 0 else [str(p.relative_to(ROOT)) for p in ROOT.rglob("*")]
    return [ROOT / name for name in names if name and (ROOT / name).is_file() and not name.startswith("build/")]


def includes(path):
    return re.findall(r'^\s*#\s*include\s*["<]([^">]+)[">]', path.read_text(encoding="utf-8"), re.M)


def may_include(path, target):
    """Why this include breaks the one-way rule app -> core/outing -> core/<link> -> core/units, or ''."""
    parts = path.relative_to(ROOT).parts
    if parts[0] != "core":
        return ""
    if target.startswith("app/") or "imgui" in target.lower() or target.startswith("GLFW"):
        return "core knows no screen"
    if "nlohmann" in target and parts[-1] != "archive_json.cpp":
        return "the JSON library lives in the archive alone"
    folder = parts[1] if len(parts) > 2 else ""
    hit = re.match(r"core/([^/]+)/", target)
    if folder in LINKS and hit and hit.group(1) != folder:
        return "a link knows no other folder than its own"
    if folder == "" and hit:
        return "units and evidence know no folder"
    return ""


def broken_includes(files):
    found = []
    for path in files:
        if path.suffix not in {".h", ".cpp"}:
            continue
        for target in includes(path):
            if why := may_include(path, target):
                found.append(f"{path.relative_to(ROOT)} includes {target}: {why}")
    return found


def long_files(files):
    code = [p for p in files if p.suffix in {".h", ".cpp", ".js", ".mjs", ".py"} and p.relative_to(ROOT).parts[0] in {"core", "app", "web", "tests"}]
    sizes = sorted((len(p.read_text(encoding="utf-8").splitlines()), str(p.relative_to(ROOT))) for p in code)
    found = [f"{name}: {lines} lines" for lines, name in sizes if lines > MOST_LINES]
    median = sizes[len(sizes) // 2][0]
    print(f"{len(sizes)} code files, median {median} lines, longest {sizes[-1][1]} with {sizes[-1][0]}")
    if median > MEDIAN_LINES:
        found.append(f"median of {median} lines")
    return found


def rows_without_source():
    found, rows = [], 0
    for path in sorted((ROOT / "assets/catalogues").glob("*.csv")):
        with path.open(encoding="utf-8", newline="") as file:
            for number, row in enumerate(csv.DictReader(file), start=2):
                rows += 1
                for column, value in row.items():
                    if (column.endswith("source") or column.endswith("evidence")) and not (value or "").strip():
                        found.append(f"{path.name}:{number}: {column} is empty")
                if not any(c.endswith("source") for c in row) or not any(c.endswith("evidence") for c in row):
                    found.append(f"{path.name}:{number}: no source or evidence column")
    print(f"{rows} catalogue rows")
    return found


def wrong_top_level(files):
    tops = {p.relative_to(ROOT).parts[0] for p in files}
    return [f"top level: {name}" for name in sorted(tops - TOP) if not name.startswith(".")]


def self_check():
    """The include rule catches what it is for."""
    link = ROOT / "core/feedline/x.cpp"
    assert may_include(link, "core/radio/fold_back.h") and may_include(link, "core/outing/plan.h")
    assert may_include(ROOT / "core/outing/x.cpp", "app/shell.h") and may_include(ROOT / "core/outing/x.cpp", "nlohmann/json.hpp")
    assert not may_include(link, "core/feedline/line.h") and not may_include(link, "core/units.h")
    assert not may_include(ROOT / "core/outing/x.cpp", "core/radio/fold_back.h")


if __name__ == "__main__":
    self_check()
    everything = ours()
    trouble = broken_includes(everything) + long_files(everything) + rows_without_source() + wrong_top_level(everything)
    for line in trouble:
        print(line, file=sys.stderr)
    print("house: " + ("in order" if not trouble else f"{len(trouble)} things to mend"))
    sys.exit(1 if trouble else 0)
