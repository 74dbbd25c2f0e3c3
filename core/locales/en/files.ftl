### Files that come in, and files for other programs.

## Bringing a file in

report-title = File brought in
report-intro = What could be taken was taken; undo takes it back as a whole.
report-group-taken = Taken
report-group-wrong = { $count ->
    [one] One line was not taken
   *[other] { $count } lines were not taken
}
report-taken = { $count ->
    [0] Nothing new was in it.
    [one] One entry was new or changed.
   *[other] { $count } entries were new or changed.
}
report-unchanged = { $count ->
    [one] One entry said nothing new.
   *[other] { $count } entries said nothing new.
}
report-kept-back = { $count ->
    [one] One thing was left, since it is this record’s own
   *[other] { $count } things were left, since they are this record’s own
}
report-other = { $count ->
    [one] One change did not fit what is here and was left
   *[other] { $count } changes did not fit what is here and were left
}
report-erased = { $count ->
    [one] One change was about something you erased, and was left out
   *[other] { $count } changes were about something you erased, and were left out
}
report-ahead = { $count ->
    [one] One change is dated more than a day ahead and was left for then
   *[other] { $count } changes are dated more than a day ahead and were left for then
}
report-line = Line { $line }
report-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}

line-not-json = The line is not whole, or not JSON (at character { $column }).
line-not-json-do = If the file was cut off, bring in a whole copy.
line-not-object = The line is not one JSON object.
line-not-object-do = Each line holds one object with “fact” and “id”.
line-no-fact = The line does not say what it is: “fact” is missing.
line-no-fact-do = Add “fact”, such as “session”.
line-unknown-fact = The line is of a kind that this version does not know.
line-unknown-fact-do = A newer version may know it.
line-bad-id = “id” is missing, or has characters other than letters, figures and . _ : -
line-bad-id-do = Give each entry its own id.
line-reserved = { $field } is not a name a line may use.
line-reserved-do = Use another name.
line-other-kind = An entry of another kind has this id.
line-other-kind-do = Give each entry its own id.
line-not-utf8 = The line is not in UTF-8.
line-not-utf8-do = Save the file as UTF-8 and bring it in again.
line-only-when-empty = Consultants and plans come in from an unsigned file only while the record is empty.
line-only-when-empty-do = Take in her card, or ask her for the plan again.
line-too-long = The line is longer than any entry can be.
line-too-long-do = Each entry stands on a line of its own.

## Files for other programs

csv-id = Id
csv-member = Which of them
csv-zone = Time zone (IANA)
csv-said = Whether the amount is known
csv-name = Name
csv-lasted = How long it lasted
csv-pain-highest = Highest pain that was said (0 to 10)
table-handed-over = The table was written.
health-record-handed-over = The health record was written.

code-system = Drawwell: what has no code elsewhere
code-expressed-milk = Volume of milk expressed
code-expressed-milk-left = Volume of milk expressed, left breast
code-expressed-milk-right = Volume of milk expressed, right breast
code-feed-at-breast = Feed at the breast
code-milk-given = Volume of milk given to the child
code-breast-signs = Signs at the breast and of the body
code-nipple-fit = Nipples measured, and how the flange fits
code-pump-vacuum = Highest vacuum of the pump by a gauge, below ambient
code-life-event = What changed in life
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
code-some-child = A child; which one was not said
field-does = What was marked
field-phase = Phase
field-for-discomfort = Turned down because it hurt
field-set = Vacuum that the pump says is set

bad-file-health-record = This is a health record (HL7 FHIR). Drawwell writes those for others and does not read them.
bad-file-health-record-do = Bring in a record of Drawwell, or a trace. Nothing was changed.
bad-file-own-table = This is the table of { $table } that Drawwell writes for spreadsheets. It does not hold all of a record.
bad-file-own-table-do = Bring in the copy of the whole record instead. Nothing was changed.
bad-file-store = This is the file a record lives in, not a copy of it to hand on.
bad-file-store-do = On the device it comes from, take a copy out in Family and bring that in. Nothing was changed.
bad-file-calendar = This is a calendar.
bad-file-calendar-do = Open it with your calendar. To bring in a record, choose a copy of one. Nothing was changed.
bad-file-sealed = This file is sealed.
bad-file-sealed-do = Open it where the key to it is. Nothing was changed.
bad-file-page = This is a document to read or print (PDF).
bad-file-page-do = Bring in a record of Drawwell, or a trace. Nothing was changed.
bad-file-picture = This is a picture.
bad-file-picture-do = Bring in a record of Drawwell, or a trace. Nothing was changed.
bad-file-packed = This is a packed file, or a document of an office program.
bad-file-packed-do = Unpack it first, or save a trace as CSV, and bring that in. Nothing was changed.
bad-file-markup = This is a page of the web, or XML.
bad-file-markup-do = Bring in a record of Drawwell, or a trace. Nothing was changed.
bad-file-other-json = This is JSON of another program: there is no fact of Drawwell at its beginning.
bad-file-other-json-do = Bring in a record of Drawwell, or a trace. Nothing was changed.
bad-file-unknown = This is neither a record of Drawwell nor a trace.
bad-file-unknown-do = Choose another file. Nothing was changed.
