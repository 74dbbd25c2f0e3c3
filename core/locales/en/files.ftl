### Files that come in, and files for other programs.

## Importing a file

report-title = File imported
report-intro = We imported what we could. You can undo all of it at once.
report-group-taken = Imported
report-group-wrong = { $count ->
    [one] One line was not imported
   *[other] { $count } lines were not imported
}
report-taken = { $count ->
    [0] There was nothing new in it.
    [one] One entry was new or changed.
   *[other] { $count } entries were new or changed.
}
report-unchanged = { $count ->
    [one] One entry was already here.
   *[other] { $count } entries were already here.
}
report-kept-back = { $count ->
    [one] One thing was not imported, because this record has its own
   *[other] { $count } things were not imported, because this record has its own
}
report-other = { $count ->
    [one] One change did not match and was not imported
   *[other] { $count } changes did not match and were not imported
}
report-erased = { $count ->
    [one] One change was about something you erased, and was not imported
   *[other] { $count } changes were about something you erased, and were not imported
}
report-ahead = { $count ->
    [one] One change is dated more than a day ahead and waits until then
   *[other] { $count } changes are dated more than a day ahead and wait until then
}
report-line = Line { $line }
report-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}

line-not-json = The line is incomplete, or not JSON (at character { $column }).
line-not-json-do = If the file was cut off, import a complete copy.
line-not-object = The line is not one JSON object.
line-not-object-do = Each line needs one object with “fact” and “id”.
line-no-fact = The line does not say what it is: “fact” is missing.
line-no-fact-do = Add “fact”, such as “session”.
line-unknown-fact = This version does not know this kind of line.
line-unknown-fact-do = A newer version may know it.
line-bad-id = “id” is missing, or has characters other than letters, digits and . _ : -
line-bad-id-do = Give each entry its own id.
line-reserved = { $field } is not a name a line may use.
line-reserved-do = Use another name.
line-other-kind = An entry of another kind has this id.
line-other-kind-do = Give each entry its own id.
line-not-utf8 = The line is not in UTF-8.
line-not-utf8-do = Save the file as UTF-8 and import it again.
line-only-when-empty = An unsigned file can add consultants and plans only while the record is empty.
line-only-when-empty-do = Add your consultant’s card, or ask for the plan again.
line-too-long = The line is longer than any entry can be.
line-too-long-do = Put each entry on its own line.

## Files for other programs

csv-id = Id
csv-member = Which one
csv-zone = Time zone (IANA)
csv-said = Whether the amount is known
csv-name = Name
csv-lasted = How long it lasted
csv-pain-highest = Highest pain logged (0 to 10)
table-handed-over = The table was saved.
health-record-handed-over = The health record was saved.

code-system = Drawwell: what has no code elsewhere
code-expressed-milk = Volume of milk expressed
code-expressed-milk-left = Volume of milk expressed, left breast
code-expressed-milk-right = Volume of milk expressed, right breast
code-feed-at-breast = Feed at the breast
code-milk-given = Volume of milk given to the child
code-breast-signs = Signs at the breast and of the body
code-nipple-fit = Nipple measurement and flange fit
code-pump-vacuum = Peak vacuum of the pump by a gauge, below ambient
code-life-event = Life change
code-note = Note
code-question = Question for the consultant
code-birth = The child at birth
code-phase = Phase of the session
code-pump = Breast pump
code-gauge = Vacuum gauge
code-visit-sheet = Visit sheet
code-temperature = Body temperature
code-weight = Body weight
code-pain = Pain severity, 0 to 10, as reported
code-feeding = Breastfeeding status
code-feeding-now = Currently breastfeeding
code-some-child = A child; which one was not noted
field-does = What was logged
field-phase = Phase
field-for-discomfort = Turned down because it hurt
field-carried = Kept from last time, by nobody
field-set = Vacuum set, as the pump shows it

bad-file-health-record = This is a health record (HL7 FHIR). Drawwell writes those for others and does not read them.
bad-file-health-record-do = Import a Drawwell record or a vacuum trace. Nothing was changed.
bad-file-own-table = This is the table of { $table } that Drawwell writes for spreadsheets. It does not have the whole record.
bad-file-own-table-do = Import the copy of the whole record instead. Nothing was changed.
bad-file-store = This is a record’s own file, not a copy to share.
bad-file-store-do = On the device it comes from, export a copy in Family and import that. Nothing was changed.
bad-file-calendar = This is a calendar.
bad-file-calendar-do = Open it with your calendar. To import a record, choose a copy of one. Nothing was changed.
bad-file-sealed = This file is sealed.
bad-file-sealed-do = Open it where its key is. Nothing was changed.
bad-file-page = This is a document to read or print (PDF).
bad-file-page-do = Import a Drawwell record or a vacuum trace. Nothing was changed.
bad-file-picture = This is a picture.
bad-file-picture-do = Import a Drawwell record or a vacuum trace. Nothing was changed.
bad-file-packed = This is a zipped file, or an office document.
bad-file-packed-do = Unzip it first, or save a trace as CSV, and import that. Nothing was changed.
bad-file-markup = This is a web page, or XML.
bad-file-markup-do = Import a Drawwell record or a vacuum trace. Nothing was changed.
bad-file-other-json = This is JSON from another program. It does not start with a Drawwell fact.
bad-file-other-json-do = Import a Drawwell record or a vacuum trace. Nothing was changed.
bad-file-unknown = This is not a Drawwell record or a vacuum trace.
bad-file-unknown-do = Choose another file. Nothing was changed.
