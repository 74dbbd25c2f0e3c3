"""Labels for kept milk: read back by poppler, and their codes by zbar (ISO/IEC 18004)."""

import re
import subprocess
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from drawwell import Export, LabelPaper, Place

PAPERS = {
    LabelPaper.A4_OF24: (210.0, 297.0),
    LabelPaper.A4_OF65: (210.0, 297.0),
    LabelPaper.LETTER_OF30: (215.9, 279.4),
    LabelPaper.STRIP: (62.0, 29.0),
}


@pytest.fixture
def family(open_record, present, pytestconfig):
    present.at = datetime(2026, 8, 14, 12, 40, tzinfo=ZoneInfo("Europe/Berlin"))
    record = open_record("labels")
    record.import_file(str(pytestconfig.rootpath / "demo-data/family.jsonl"), present.clock())
    return record


def read(*command: str) -> str:
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def labels(record, present, folder, paper):
    pdf = folder / "labels.pdf"
    record.export(Export.LABELS(on=paper, container=""), str(pdf), present.clock())
    return pdf


@pytest.mark.parametrize("paper", PAPERS, ids=lambda paper: paper.name)
def test_every_code_on_every_paper_is_read_and_names_its_bottle(family, present, tmp_path, paper):
    pdf = labels(family, present, tmp_path, paper)
    read("pdftoppm", "-png", "-r", "600", str(pdf), str(tmp_path / "page"))
    pages = [str(page) for page in sorted(tmp_path.glob("page*.png"))]
    codes = read("zbarimg", "--quiet", "--raw", *pages).split()
    sections = family.show(Place.KEPT(), present.clock()).findings.sections
    rows = [row.title for section in sections if section.key.startswith("kept-") for row in section.rows]
    kept = [found.group(1) for row in rows if (found := re.match(r"Bottle (\d+):", row))]
    assert len(codes) == len(kept) == 15
    assert {f"drawwell:bottle?id=bottle%2D{label}" for label in kept} == set(codes)


@pytest.mark.parametrize("paper", PAPERS, ids=lambda paper: paper.name)
def test_a_page_is_as_large_as_its_paper(family, present, tmp_path, paper):
    said = read("pdfinfo", str(labels(family, present, tmp_path, paper)))
    width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", said).groups())
    points = 72 / 25.4
    assert (width, height) == pytest.approx(tuple(side * points for side in PAPERS[paper]), abs=0.1)


def test_a_label_is_read_on_another_day_and_says_dates(family, present, tmp_path):
    said = read("pdftotext", "-raw", str(labels(family, present, tmp_path, LabelPaper.A4_OF24)), "-")
    assert "Best by 1 February 2027" in said
    for word in ("Today", "Tomorrow", "Yesterday"):
        assert word not in said
