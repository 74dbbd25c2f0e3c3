### The day, and an entry of it.

## The day

today = Today
yesterday = Yesterday
days-ago = { $days } days ago
day-earlier = Day before
day-later = Day after
day-choice-spoken = { $day }. Opens other days.
day-choice-spoken-open = { $day }. Closes the other days.
day-week-back = A week before
day-week-back-spoken = A week before: { $day }
day-weeks-back = Four weeks before
day-weeks-back-spoken = Four weeks before: { $day }
day-week-on = A week after
day-week-on-spoken = A week after: { $day }
day-figure-none = –
day-caption-none = No session logged.
day-figure-unknown = ?
day-caption-unknown = { $sessions }, no amount known yet.
day-caption = { $sessions }, all amounts known.
day-caption-partly = { $sessions }, { $unknown ->
    [one] one amount not known
   *[other] { $unknown } amounts not known
}. The total is at least this.
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
day-empty = Nothing logged on this day. That may be right, or something may be missing.
day-picture-spoken = { $count ->
    [0] No session on this day.
    [one] One session on this day.
   *[other] { $count } sessions on this day.
}
session-detail = { $sides } · { $length }
session-sides = Left { $left } · Right { $right }
length-unknown = length not known
weighed = { $mass } by weight
not-weighed = not weighed
sign-on-side = { $sign } ({ $side })
sign-not-there = Not there: { $signs }
sign-breast-pain = Breast pain { $value } out of 10
open-spoken = { $what }. Open.
taken-out = Removed
bring-back = Restore
bring-back-spoken = Restore: { $what }
take-out = Remove from the record
take-out-detail = You can restore it later.
is-taken-out = You removed this. It isn’t counted anywhere. You can restore it.
care-overlap = overlaps another
care-overlap-long = This session and another on the same side overlap in time. Both are kept.
open-overlap = Open the other
care-late-edit = Changed on another device after it was removed here.
care-two-values = { $field } was changed on two devices. You see the later change. The other is kept.

## An entry

entry-when = { $date }, { $time }
field-spoken = { $field }: { $value }
field-says-nothing = empty
clear = Clear
clear-spoken = Clear { $field }
step-less = Less
step-less-spoken = Less: { $field }
step-more = More
step-more-spoken = More: { $field }
date-of = Date ({ $field })
in-zone = { $zone }
take-mark-out = Remove
take-mark-out-spoken = Remove: { $what }
mark-pain = It hurt
mark-pain-score = It hurt: { $score } out of 10
mark-on-side = { $what } · { $side }
setting-level = Level { $level }
yes = Yes
no = No
time-skipped = The clock skipped that time. The next time that exists was used.
time-twice = That time came twice that night. The first one was used.
clock-went-back = The clock was set back during the session. Please check when it ended.
zone-unknown = We don’t know this device’s time zone. Please choose one in Family, Settings.

group-when = When
group-amount = Amount
group-weighing = Weighed feed
group-how = How
group-letdown = Letdown
group-comfort = Comfort
group-setting = Setting
group-note = Note
group-marks = As it happened
group-body = Body
group-at-once = Do you have any of these?
field-at-once = Tap any that apply. Tap again to clear.
group-breast = Breast
group-who = Who
group-what = What
group-maker = From the maker
group-look = Look
group-units = Units
group-time = Time
group-settings = Settings
group-aims = Goals
group-supply-rules = How supply is worked out
group-volume-rules = What supply is compared with
group-kit-rules = How pumps are checked
group-fit-rules = How flanges are chosen
group-night-rules = How the night is planned
group-caution-rules = When to get something checked
group-caseload-rules = When a family needs a look
group-rhythm = Sessions
group-sleep = Sleep
group-reminders = Reminders
group-block = Power pumping
group-ending = Weaning from the pump
group-time-of-day = Time of day
group-kit = Flanges in stock
group-plan-words = In your own words
group-plan-part = What it is about
group-plan-check = What to check
group-plan-visit = When to meet next
group-plan-rule = A rule to change
group-consent = Counted with other families
group-sharing = What you share
group-calls = Numbers to call
group-question = Question
group-gauge = The gauge
group-air = Air pressure
group-file = The file
group-nipple = Nipple, straight across at its base
group-record = Your record
group-about = Care
