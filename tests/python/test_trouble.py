"""Bad input through the surface: a kind, a field, and what to do."""

import pytest
from drawwell import Clock, Drawwell, Event, Opening, Trouble, TroubleKind


def test_a_field_that_is_typed_wrong_is_named(open_record, present):
    record = open_record()
    record.update(Event.ADD(kind="session", days_back=0), present.clock())
    form = record.here(present.clock()).form
    with pytest.raises(Trouble.Told) as told:
        record.update(Event.ENTER(id=form.id, field="amount_left", typed="-5"), present.clock())
    assert told.value.kind == TroubleKind.BAD_INPUT
    assert told.value.field == "amount_left"
    assert told.value.what and told.value.what_to_do


def test_a_file_that_is_not_there_is_missing(open_record, present, tmp_path):
    with pytest.raises(Trouble.Told) as told:
        open_record().import_file(str(tmp_path / "nothing.jsonl"), present.clock())
    assert told.value.kind == TroubleKind.MISSING


def test_a_folder_that_is_not_there_is_missing(present, tmp_path):
    opening = Opening(device="python", language="en", look_around=False)
    with pytest.raises(Trouble.Told) as told:
        Drawwell.open(str(tmp_path / "no" / "folder" / "record.drawwell"), opening, present.clock())
    assert told.value.kind == TroubleKind.MISSING


def test_a_zone_that_is_not_known_keeps_the_tap_and_says_so(open_record, present):
    record = open_record()
    somewhere = Clock(unix_milliseconds=present.clock().unix_milliseconds, zone="Nowhere/At_All")
    screen = record.update(Event.START(), somewhere).screen
    assert screen.is_running(), "the tap is kept"
    assert "zone-unknown" in [notice.key for notice in screen.frame.notices]
