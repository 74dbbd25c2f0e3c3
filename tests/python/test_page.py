"""What the page on the exchange form says in words and in Python is so."""

import re
from pathlib import Path

DEMO_DATA = Path(__file__).parents[2] / "demo-data"


def blocks(language):
    page = (DEMO_DATA / "README.md").read_text(encoding="utf-8")
    return re.findall(rf"^```{language}\n(.*?)^```$", page, re.MULTILINE | re.DOTALL)


def test_the_report_reads_as_the_page_shows_it(open_record, present, tmp_path):
    given, reported = blocks("text")
    file = tmp_path / "given.jsonl"
    file.write_text(given, encoding="utf-8")
    groups = open_record().import_file(str(file), present.clock()).screen.list.groups
    rows = [row for group in groups for row in group.rows]
    assert [": ".join(filter(None, (row.title, row.detail))) for row in rows] == reported.splitlines()


def test_the_program_on_the_page_runs(monkeypatch, capsys):
    (program,) = blocks("python")
    monkeypatch.chdir(DEMO_DATA)
    exec(compile(program, "README.md", "exec"), {})
    assert re.fullmatch(r"\d+\.\d L in \d+ facts\n", capsys.readouterr().out)
