"""Tables and their Table Schemas, read by frictionless, and by Python's own csv."""

import csv
import io
import json
import zipfile
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from conftest import Present
from drawwell import Event, Export
from frictionless import Package, Resource, Schema, system

TABLES = [
    "sessions", "marks", "feeds", "signs", "weights", "checks", "readings", "fits", "life-events", "notes",
    "questions", "children", "pumps", "parts", "flanges", "gauges", "searches", "trials", "containers",
    "milk-events", "cleanings",
]


@pytest.fixture(params=["demo-data/family.jsonl", "tests/fixtures/every-kind.jsonl"])
def record(request, open_record, present, pytestconfig):
    present.at = datetime(2026, 8, 14, 12, 40, tzinfo=ZoneInfo("Europe/Berlin"))
    opened = open_record(request.param.replace("/", "-"))
    opened.import_file(str(pytestconfig.rootpath / request.param), present.clock())
    return opened


def write(record, present: Present, folder, table: str):
    file, schema = folder / f"{table}.csv", folder / f"{table}.schema.json"
    record.export(Export.TABLE(table=table), str(file), present.clock())
    record.export(Export.TABLE_SCHEMA(table=table), str(schema), present.clock())
    return file, schema


def wrong_in(file, schema) -> list[str]:
    with system.use_context(trusted=True):
        report = Resource(path=str(file), schema=Schema.from_descriptor(str(schema))).validate()
        return [error.type for task in report.tasks for error in task.errors]


@pytest.mark.parametrize("table", TABLES)
def test_a_table_holds_what_its_schema_says(record, present, tmp_path, table):
    assert wrong_in(*write(record, present, tmp_path, table)) == []


def test_all_tables_in_one_file_are_the_tables_one_by_one(record, present, tmp_path):
    record.export(Export.TABLES(), str(tmp_path / "tables.zip"), present.clock())
    with zipfile.ZipFile(tmp_path / "tables.zip") as package:
        names = package.namelist()
        assert package.testzip() is None
        assert sorted(names) == sorted([f"{table}.csv" for table in TABLES] + ["datapackage.json"])
        for table in TABLES:
            file, _ = write(record, present, tmp_path, table)
            assert package.read(f"{table}.csv") == file.read_bytes()
    with system.use_context(trusted=True):
        report = Package(str(tmp_path / "tables.zip")).validate()
    assert len(report.tasks) == len(TABLES)
    assert [error.message for task in report.tasks for error in task.errors] == []


def test_what_is_left_out_is_in_no_table_of_the_package(record, present, tmp_path):
    record.update(Event.LEAVE_OUT(part="questions", out=True), present.clock())
    record.export(Export.TABLES(), str(tmp_path / "tables.zip"), present.clock())
    with zipfile.ZipFile(tmp_path / "tables.zip") as package:
        assert "questions.csv" not in package.namelist()
        described = json.loads(package.read("datapackage.json"))
    assert "questions" not in [resource["name"] for resource in described["resources"]]


def test_frictionless_minds_when_a_table_is_wrong(record, present, tmp_path):
    file, schema = write(record, present, tmp_path, "feeds")
    text = file.read_bytes().decode("utf-8-sig")
    first = text.split("\r\n")[1]
    for change, told in [
        (first.replace(",known,", ",perhaps,", 1), "constraint-error"),
        (first.replace("T", " at ", 1), "type-error"),
        (first + ",more", "extra-cell"),
        (first[first.index(","):], "constraint-error"),
    ]:
        file.write_bytes(text.replace(first, change).encode())
        assert told in wrong_in(file, schema), change


def test_no_cell_of_text_can_be_run(record, present, tmp_path):
    for table in TABLES:
        file, schema = write(record, present, tmp_path, table)
        kinds = [field["type"] for field in json.loads(schema.read_text())["fields"]]
        rows = list(csv.reader(io.StringIO(file.read_bytes().decode("utf-8-sig"), newline="")))
        for row in rows[1:]:
            assert len(row) == len(kinds)
            for cell, kind in zip(row, kinds):
                if kind in ("number", "integer"):
                    assert cell == "" or float(cell) is not None
                else:
                    assert not cell.startswith(("=", "+", "-", "@", "\t", "\r"))


def test_frictionless_reads_the_figures_and_no_zero_for_what_is_unknown(record, present, tmp_path):
    file, schema = write(record, present, tmp_path, "sessions")
    with system.use_context(trusted=True):
        rows = Resource(path=str(file), schema=Schema.from_descriptor(str(schema))).read_rows()
    assert rows
    for row in rows:
        for part in ["left", "right", "together"]:
            known = row[f"amount_{part}_said"] == "known"
            assert (row[f"amount_{part}_ml"] is not None) == known, row["id"]


def test_what_was_left_out_is_left_out(record, present, tmp_path):
    record.update(Event.LEAVE_OUT(part="notes", out=True), present.clock())
    for table in TABLES:
        file, schema = write(record, present, tmp_path, table)
        assert wrong_in(file, schema) == []
        assert "note" not in file.read_bytes().decode("utf-8-sig").split("\r\n")[0].split(",")
