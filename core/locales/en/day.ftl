### The day, and an entry of it.

## The day

today = Today
yesterday = Yesterday
days-ago = { $days } days ago
day-earlier = Day before
day-later = Day after
day-figure-none = –
day-caption-none = No session written down.
day-figure-unknown = ?
day-caption-unknown = { $sessions }, no amount known yet.
day-caption = { $sessions }, all amounts known.
day-caption-partly = { $sessions }. { $unknown ->
    [one] One amount is not known and not in the sum.
   *[other] { $unknown } amounts are not known and not in the sum.
}
sessions = { $count ->
    [one] One session
   *[other] { $count } sessions
}
side-left = Left
side-right = Right
side-together = Together
side-unknown = { $count ->
    [one] one not known
   *[other] { $count } not known
}
day-empty = Nothing is written down on this day. That may be right, or something may be missing.
day-picture-spoken = { $count ->
    [0] No session along the day.
    [one] One session along the day.
   *[other] { $count } sessions along the day.
}
session-detail = { $sides } · { $length }
length-unknown = length not known
weighed = { $mass } by weight
not-weighed = not weighed
sign-on-side = { $sign } ({ $side })
sign-not-there = Not there: { $signs }
sign-breast-pain = Breast pain { $value } of 10
open-spoken = { $what }. Open.
taken-out = Taken out
bring-back = Bring back
bring-back-spoken = Bring back: { $what }
take-out = Take out of the record
take-out-detail = It can be brought back.
is-taken-out = This was taken out. It counts nowhere and can be brought back.
care-overlap = overlaps another
care-overlap-long = This session and another on the same side overlap in time. Both are kept.
open-overlap = Open the other
care-late-edit = Changed on another device after it was taken out here.
care-two-values = { $field } was changed on two devices. The later change is shown; the other is kept.

## An entry

entry-when = { $date }, { $time }
field-spoken = { $field }: { $value }
field-says-nothing = nothing said
clear = Clear
clear-spoken = Clear { $field }
step-less = Less
step-less-spoken = Less: { $field }
step-more = More
step-more-spoken = More: { $field }
date-of = Date ({ $field })
in-zone = { $zone }
take-mark-out = Take out
take-mark-out-spoken = Take out this mark: { $what }
mark-pain = It hurt
mark-pain-score = It hurt: { $score } of 10
mark-on-side = { $what } · { $side }
setting-level = Level { $level }
yes = Yes
no = No
time-skipped = The clock skipped that time; the next one that exists was taken.
time-twice = That time came twice that night; the first was taken.
clock-went-back = The clock was set back during the session. Please look at when it ended.
zone-unknown = This device names a time zone that is not known here. Please choose one in Family, Settings.

group-when = When
group-amount = Amount
group-weighing = Weighing
group-how = How
group-letdown = Letdown
group-comfort = Comfort
group-setting = Setting
group-note = Note
group-marks = As it ran
group-body = Body
group-at-once = Is any of this there?
field-at-once = Tap what is; a second tap takes it back
group-breast = Breast
group-who = Who
group-what = What
group-maker = What the maker states
group-look = Look
group-units = Units
group-time = Time
group-settings = Settings
group-aims = Aims
group-supply-rules = How supply is reckoned
group-volume-rules = What supply is held against
group-kit-rules = How pumps are judged
group-fit-rules = How flanges are chosen
group-night-rules = How the night is planned
group-caution-rules = When somebody is to look
group-caseload-rules = When a family needs a look
group-rhythm = Sessions
group-sleep = Sleep
group-reminders = Reminders
group-block = A block of repeated short sessions
group-ending = Fewer and fewer, when expressing is to end
group-time-of-day = Time of day
group-kit = Flanges in stock
group-plan-words = In your own words
group-plan-part = What it is about
group-plan-check = To be checked
group-plan-visit = To meet again
group-plan-rule = A rule set anew
group-sharing = What is shared
group-calls = Numbers to call
group-question = Question
group-gauge = The gauge
group-air = The air
group-file = The file
group-nipple = Nipple, straight across at its base
group-record = The record
group-about = Care
