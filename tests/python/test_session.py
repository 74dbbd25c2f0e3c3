"""A session through the surface, as a notebook would do it."""

from drawwell import Deed, Event, Part, Place


def day(record, present):
    screen = record.show(Place.DAY(days_back=0), present.clock())
    assert screen.is_day()
    return screen.day


def test_a_session_is_started_marked_ended_and_stands_in_the_day(open_record, present):
    record = open_record()
    screen = record.update(Event.START(), present.clock()).screen
    assert screen.is_running()

    record.update(Event.MARK(deed=Deed.LETDOWN), present.passes(minutes=2))
    screen = record.update(Event.MARK(deed=Deed.EXPRESSION_PHASE), present.passes(seconds=5)).screen
    assert len(screen.running.strip.bands) == 2
    assert len(screen.running.strip.notches) == 1

    screen = record.update(Event.FINISH(), present.passes(minutes=15)).screen
    assert screen.is_amounts()
    session = screen.amounts.session
    for part in (Part.LEFT, Part.RIGHT):
        column = next(column for column in screen.amounts.columns if column.column.part == part)
        read = min(column.readings, key=lambda reading: abs(reading.at - 0.5))
        drawn = Event.DRAW_AMOUNT(session=session, part=part, typed=read.typed, unit=column.unit)
        screen = record.update(drawn, present.clock()).screen
    texts = [column.column.text for column in screen.amounts.columns]
    assert all("mL" in text for text in texts), texts
    record.update(Event.AMOUNTS_DONE(session=session), present.clock())

    today = day(record, present)
    assert [entry.id for entry in today.entries] == [session]
    assert "mL" in today.figure
    assert today.picture.spoken


def test_what_was_answered_is_there_when_it_is_opened_again(open_record, present):
    record = open_record()
    record.update(Event.START(), present.clock())
    del record
    present.passes(minutes=7)
    screen = open_record().here(present.clock())
    assert screen.is_running(), "the session still runs"
    assert screen.running.figure.startswith("07:"), screen.running.figure


def test_undo_takes_a_session_out_and_redo_brings_it_back(open_record, present):
    record = open_record()
    record.update(Event.START(), present.clock())
    record.update(Event.FINISH(), present.passes(minutes=10))
    before = day(record, present).entries
    record.update(Event.UNDO(), present.clock())
    record.update(Event.UNDO(), present.clock())
    assert day(record, present).entries == []
    record.update(Event.REDO(), present.clock())
    record.update(Event.REDO(), present.clock())
    assert [entry.id for entry in day(record, present).entries] == [entry.id for entry in before]
