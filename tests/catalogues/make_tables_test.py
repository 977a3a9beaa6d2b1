#!/usr/bin/env python3
"""assets/catalogues/make_tables.py refuses what is not complete and names file, row and column.

Run: python3 tests/catalogues/make_tables_test.py (standard library only).
"""

import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

CATALOGUES = pathlib.Path(__file__).resolve().parents[2] / "assets" / "catalogues"


class MakeTables(unittest.TestCase):
    def setUp(self):
        self.dir = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.dir)
        for file in CATALOGUES.glob("*"):
            if file.is_file():
                shutil.copy(file, self.dir)
        self.out = self.dir / "out"

    def run_it(self):
        return subprocess.run([sys.executable, str(self.dir / "make_tables.py"), str(self.out)], text=True,
                              capture_output=True, check=False)

    def edit(self, name, old, new):
        path = self.dir / name
        text = path.read_text(encoding="utf-8")
        self.assertIn(old, text)
        path.write_text(text.replace(old, new, 1), encoding="utf-8")

    def refused(self, *words):
        run = self.run_it()
        self.assertNotEqual(run.returncode, 0)
        self.assertNotIn("Traceback", run.stderr)
        self.assertEqual(len(run.stderr.strip().splitlines()), 1, run.stderr)
        for word in words:
            self.assertIn(word, run.stderr)
        self.assertFalse(self.out.exists(), "nothing may be written when a row is refused")

    def test_writes_both_tables_and_leaves_unchanged_ones_alone(self):
        self.assertEqual(self.run_it().returncode, 0)
        cable, limit = self.out / "cable_table.cpp", self.out / "limit_table.cpp"
        self.assertIn("std::span<const Cable> cables()", cable.read_text())
        self.assertIn("std::span<const Limit> limits()", limit.read_text())
        before = cable.stat().st_mtime_ns
        self.assertEqual(self.run_it().returncode, 0)
        self.assertEqual(cable.stat().st_mtime_ns, before)

    def test_retired_row_stays_and_odd_characters_survive(self):
        self.edit("cables.csv", "rg316,RG-316,offered", 'rg316,"RG ""316"" \u2126\\",retired')
        self.assertEqual(self.run_it().returncode, 0)
        self.assertIn(r'{"rg316", "RG \"316\" \342\204\246\\", true,', (self.out / "cable_table.cpp").read_text())

    def test_missing_source(self):
        path = self.dir / "limits.csv"
        path.write_text("key,limit,ease,over,evidence,source\nfeedline.arrives_pct,50,70,,practice, \n", encoding="utf-8")
        self.refused("limits.csv", "row 2", "column source")

    def test_missing_loss_source(self):
        self.edit("cables.csv", "memory,Belden 8262; fit to the points of this row,", "memory,,")
        self.refused("cables.csv", "row 5", "loss_source")

    def test_missing_evidence_of_a_point(self):
        self.edit("cable-points.csv", "rg174,10,10.8268,0.164042,memory,", "rg174,10,10.8268,0.164042,,")
        self.refused("cable-points.csv", "row 3", "evidence")

    def test_unknown_evidence(self):
        self.edit("limits.csv", "3,2,,practice", "3,2,,hearsay")
        self.refused("limits.csv", "row 3", "evidence", "hearsay")

    def test_evidence_better_than_the_points(self):
        self.edit("cables.csv", "memory,Belden 8262", "seen,Belden 8262")
        self.refused("cables.csv", "row 5", "loss_evidence", "memory")

    def test_duplicate_keys(self):
        for name, row, old, new in (("cables.csv", 6, "\nrg58c_lossier,", "\nrg58c,"),
                                    ("limits.csv", 3, "\nfeedline.swr_at_radio", "\nfeedline.arrives_pct")):
            with self.subTest(name):
                self.setUp()
                self.edit(name, old, new)
                self.refused(name, f"row {row}", "column key", "stands already")

    def test_duplicate_point(self):
        self.edit("cable-points.csv", "rg174,50,", "rg174,10,")
        self.refused("cable-points.csv", "row 4", "frequency_mhz")

    def test_not_a_number(self):
        for bad in ("fifty", "nan", "inf", "1_000", "0x10", "5,0"):
            with self.subTest(bad):
                self.setUp()
                self.edit("cables.csv", "rg174,RG-174,offered,50,", f'rg174,RG-174,offered,"{bad}",')
                self.refused("cables.csv", "row 2", "z0_ohm", "not a number")

    def test_negative_constant(self):
        self.edit("cables.csv", "fit,0,1.30365", "fit,0,-1.30365")
        self.refused("cables.csv", "column k1", "out of range")

    def test_unknown_key_in_points(self):
        self.edit("cable-points.csv", "rg174,1,", "rg147,1,")
        self.refused("cable-points.csv", "row 2", "column key", "rg147")

    def test_range_not_tested_by_points(self):
        self.edit("cables.csv", ",30,220,", ",1,220,")
        self.refused("cables.csv", "lowest_mhz", "30")

    def test_wrong_header_and_short_row(self):
        self.edit("limits.csv", "key,limit", "key,bound")
        self.refused("limits.csv", "row 1", "limit")
        self.setUp()
        self.edit("limits.csv", "feedline.swr_at_radio,3,", "feedline.swr_at_radio,")
        self.refused("limits.csv", "row 3", "5 cells")

    def test_missing_file(self):
        (self.dir / "limits.csv").unlink()
        self.refused("limits.csv")

    def test_usage(self):
        run = subprocess.run([sys.executable, str(self.dir / "make_tables.py")], text=True, capture_output=True,
                             check=False)
        self.assertIn("OUT_DIR", run.stderr)
        self.assertNotEqual(run.returncode, 0)


if __name__ == "__main__":
    unittest.main()
