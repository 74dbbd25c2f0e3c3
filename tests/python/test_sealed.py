"""A sealed record opened by SQLCipher's own library, and read by nothing else."""

import json
import os
import sqlite3
import subprocess
from pathlib import Path

import pytest
from drawwell import Drawwell, Event, Opening, Trouble, TroubleKind, new_key
from sqlcipher3 import dbapi2 as sqlcipher

DEMO_DATA = Path(__file__).parents[2] / "demo-data"
NOTE = "Nobody else shall read this."


@pytest.fixture
def key():
    return new_key("en")


@pytest.fixture
def open_sealed(tmp_path, present):
    path = tmp_path / "record.drawwell"

    def open_it(key):
        return Drawwell.open(str(path), Opening(device="python", language="en", look_around=False), present.clock(), key)

    return path, open_it


def with_the_key(path, key):
    store = sqlcipher.connect(str(path))
    store.execute(f"PRAGMA key = \"x'{key.hex()}'\"")
    return store


def test_a_second_program_reads_the_same_changes_with_the_key(open_sealed, key, present):
    path, open_it = open_sealed
    record = open_it(key)
    record.import_file(str(DEMO_DATA / "family.jsonl"), present.clock())
    record.maintain(present.clock())
    del record
    said = {}
    for file in [path, *path.parent.glob("*.backup-*")]:
        store = with_the_key(file, key)
        assert store.execute("PRAGMA cipher_integrity_check").fetchall() == []
        assert store.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        said[file.name] = store.execute("SELECT count(*), sum(crc) FROM change").fetchone()
        assert said[file.name][0] > 1000
    assert len(said) == 2 and len(set(said.values())) == 1, said


def test_without_the_key_nothing_is_read(open_sealed, key):
    path, open_it = open_sealed
    open_it(key)
    with pytest.raises(sqlite3.DatabaseError):
        sqlite3.connect(path).execute("SELECT count(*) FROM change")
    with pytest.raises(sqlcipher.DatabaseError):
        with_the_key(path, os.urandom(32)).execute("SELECT count(*) FROM change")


@pytest.mark.parametrize("wrong", [None, bytes(32)])
def test_another_key_or_none_is_told_and_the_file_stays(open_sealed, key, wrong):
    path, open_it = open_sealed
    open_it(key)
    before = path.read_bytes()
    with pytest.raises(Trouble) as told:
        open_it(wrong)
    assert told.value.kind == TroubleKind.LOCKED
    assert path.read_bytes() == before
    open_it(key)


def test_the_runner_takes_the_key_from_a_file_or_a_variable(tmp_path, key):
    runner, path, kept = os.environ["DRAWWELL_HEADLESS"], tmp_path / "record.drawwell", tmp_path / "key"
    kept.write_text(key.hex() + "\n")
    at = ["--journal", str(path), "--at", "2026-05-09T14:20:00+02:00", "--zone", "Europe/Berlin"]

    def run(*arguments, **variables):
        return subprocess.run([runner, *at, *arguments], capture_output=True, env={**os.environ, **variables})

    assert run("--key-file", str(kept), "show", "now").returncode == 0
    assert not path.read_bytes().startswith(b"SQLite format 3")
    assert run("show", "now", DRAWWELL_KEY=key.hex()).returncode == 0
    refused = run("show", "now")
    assert refused.returncode == 1 and json.loads(refused.stderr)["Told"]["kind"] == "Locked"
    assert run("show", "now", DRAWWELL_KEY="no key").returncode == 1
