"""The visit sheet read back by poppler: what stands on it, in which order, on which paper."""

import subprocess
from datetime import datetime
from pathlib import Path

import pytest
from drawwell import Clock, Drawwell, Event, Export, Opening, Paper, Place

from PIL import Image, ImageChops

from conftest import BERLIN

DEMO = Path(__file__).parents[2] / "demo-data" / "family.jsonl"
LAST_DAY = datetime(2026, 8, 14, 12, 40, tzinfo=BERLIN)
NOW = Clock(unix_milliseconds=round(LAST_DAY.timestamp() * 1000), zone="Europe/Berlin")
A4, LETTER = "595.276 x 841.89 pts (A4)", "612 x 792 pts (letter)"


def read(program, *words):
    return subprocess.run([program, *words], capture_output=True, check=True, encoding="utf-8", errors="replace").stdout


def text(sheet):
    """In the order it is read aloud in, runs of blanks as one."""
    return " ".join(read("pdftotext", "-raw", str(sheet), "-").split())


def facts(sheet):
    lines = (line.split(":", 1) for line in read("pdfinfo", str(sheet)).splitlines())
    return {name: value.strip() for name, value in lines}


@pytest.fixture
def family(tmp_path):
    record = Drawwell.open(str(tmp_path / "family.drawwell"), Opening(device="python", language="en", look_around=False), NOW)
    record.import_file(str(DEMO), NOW)
    return record


@pytest.fixture
def set_sheet(tmp_path):
    def set_it(record, paper=Paper.A4, name="sheet.pdf"):
        record.export(Export.SHEET(paper=paper), str(tmp_path / name), NOW)
        return tmp_path / name

    return set_it


def test_the_figures_are_read_back_in_the_order_of_the_screen(family, set_sheet):
    said = text(set_sheet(family))
    sheet = family.show(Place.SHEET(), NOW).sheet
    place = 0
    for section in (section for part in sheet.parts for section in part.sections):
        place = said.index(section.title, place)
        here = place
        wanted = [section.headline, section.figure, section.caption, *section.lines]
        wanted += [word for row in section.rows for word in (row.label, row.value, *row.note.split("\n"))]
        for words in filter(None, wanted):
            assert " ".join(words.split()) in said[here:], f"{section.key}: {words}"
    assert said.index(sheet.foot, place) > place


@pytest.mark.parametrize("paper, size", [(Paper.A4, A4), (Paper.LETTER, LETTER)])
def test_it_is_tagged_and_titled_on_its_paper_and_no_longer_than_two_pages(family, set_sheet, paper, size):
    found = facts(set_sheet(family, paper))
    assert found["Tagged"] == "yes"
    assert found["Title"] == "Visit sheet, Since the visit of 17 July 2026, to 14 August 2026"
    assert found["Page size"] == size
    assert int(found["Pages"]) <= 2


def test_the_invented_family_fits_on_one_page(family, set_sheet):
    assert facts(set_sheet(family))["Pages"] == "1"


def test_each_picture_is_told_in_words_to_who_does_not_see_it(family, set_sheet):
    sheet = family.show(Place.SHEET(), NOW).sheet
    tags = " ".join(read("pdfinfo", "-struct-text", str(set_sheet(family))).split())
    sections = [section for part in sheet.parts for section in part.sections]
    pictures = [picture for section in sections for picture in (section.weeks, section.plot) if picture]
    assert len(pictures) >= 3
    assert tags.count("Figure") >= len(pictures)


def test_the_same_record_at_the_same_moment_gives_the_same_bytes(family, set_sheet):
    first, second = set_sheet(family, name="one.pdf"), set_sheet(family, name="two.pdf")
    assert first.read_bytes() == second.read_bytes()


@pytest.mark.parametrize("typed", ['#eval("1") *a* _b_ $x$ <c> @d [ ] \\ //', "Zo\u00eb \u041c\u0430\u0440\u0438\u044f", "O\u2019Neill & S\u00f8n"])
def test_a_name_comes_out_as_it_was_typed(family, set_sheet, typed):
    family.update(Event.ENTER(id="settings", field="sheet_name", typed=typed), NOW)
    assert typed in text(set_sheet(family))


def test_three_hundred_signs_stay_on_the_page(family, set_sheet):
    family.update(Event.ENTER(id="settings", field="sheet_name", typed="Wolkenstein" * 27), NOW)
    sheet = set_sheet(family)
    boxes = read("pdftotext", "-bbox", str(sheet), "-")
    edges = [float(line.split('xMax="')[1].split('"')[0]) for line in boxes.splitlines() if "<word" in line]
    assert max(edges) <= 595.3
    assert int(facts(sheet)["Pages"]) <= 2


def test_signs_without_letters_are_stood_for_and_that_is_said(family, set_sheet):
    assert "marks letters" not in text(set_sheet(family))
    family.update(Event.ENTER(id="settings", field="sheet_name", typed="\u7f8e\u54b2 \U0001f37c"), NOW)
    assert "marks letters" in text(set_sheet(family))


def test_what_is_left_out_is_not_in_the_file(family, set_sheet):
    family.update(Event.LEAVE_OUT(part="kit", out=True), NOW)
    assert "Heron Within" not in text(set_sheet(family))
    assert "Pump check" not in text(set_sheet(family))


def test_an_empty_record_makes_a_quiet_page(open_record, present, tmp_path):
    record = open_record()
    record.export(Export.SHEET(paper=Paper.A4), str(tmp_path / "empty.pdf"), present.clock())
    said = text(tmp_path / "empty.pdf")
    assert said.startswith("Visit sheet ")
    assert "This is not a diagnosis. Local guidance and licensed care come first." in said
    assert facts(tmp_path / "empty.pdf")["Pages"] == "1"


def test_the_picture_on_the_pages_is_that_of_the_sheet_as_it_is_set_now(family, set_sheet, tmp_path):
    """`cargo xtask pictures --docs` makes it anew."""
    sheet = set_sheet(family)
    subprocess.run(["pdftoppm", "-png", "-r", "110", "-singlefile", str(sheet), str(tmp_path / "now")], check=True)
    shown = Image.open(DEMO.parents[1] / "docs" / "pictures" / "visit-sheet.png").convert("L")
    now = Image.open(tmp_path / "now.png").convert("L")
    assert shown.size == now.size
    # A line that moves or a word that changes is some hundred dots; softer edges are none.
    differ = sum(count for step, count in enumerate(ImageChops.difference(shown, now).histogram()) if step > 96)
    assert differ < 40, f"{differ} dots differ"
