### Every sentence a person reads. Short, warm, plain; nothing that blames.

app-name = Drawwell

## Places

place-now = Now
place-day = Day
place-supply = Supply
place-tonight = Tonight
ready-today = Today
place-kit = Kit
place-visit = Visit
place-family = Family
back = Back
undo = Undo
undo-spoken = Undo: { $what }
redo = Redo
redo-spoken = Do again: { $what }
dismiss = Close
nothing-to-undo = There is nothing to undo.
nothing-to-redo = There is nothing to do again.

## What was done, for undo

act-start = session started
act-finish = session ended
act-letdown = letdown
act-letdown-phase = letdown phase
act-expression-phase = expression phase
act-rest = rest
act-stronger = stronger
act-softer = softer
act-faster = faster
act-slower = slower
act-hurts = it hurts
act-turned-down = turned down
act-as-last-time = set as last time
act-pain = how much it hurt
act-amount = amount
act-amounts-done = amounts
act-amounts-later = amounts for later
act-measure = how it was measured
act-add = new entry
act-enter = correction
act-clear = cleared field
act-take-out = taken out
act-bring-back = brought back
act-bring-in = file brought in
act-gap-whole = no session was missed
act-gap-hides-one = a session was missed
act-amount-right = the amount is right
act-check = check begun
act-reading = reading
act-readings-right = readings are right
act-meant-in = unit
act-trace-in = trace brought in
act-plan-moved = session moved
act-plan-skipped = session left out
act-plan-snoozed = reminder put off
act-caution-dealt = caution dealt with
act-signs-still = signs still there
act-signs-gone = signs gone
act-since-before = how it is now
act-card-in = consultant’s key taken in
act-plan-in = plan taken in
act-plan-accepted = plan accepted
act-plan-left = plan left
act-leave-out = part left out
act-take-in = part taken in

## First screen

welcome-headline = What was drawn, and how it felt.
welcome-line-record = One tap starts a session, one ends it. Amounts can wait.
welcome-line-private = Everything stays on this device. No account, no network.
welcome-line-care = It keeps a record and does sums. It does not diagnose, and your care team’s word comes first.
welcome-begin = Begin my record
welcome-look-around = Look around first
welcome-look-around-detail = with an invented family
welcome-bring-in = Bring in a record I have
looking-around = An invented family’s record.
leave-look-around = Leave

## Before a session

ready-since-last = since the last session
ready-first = nothing written down yet
ready-how = { $method } · { $sides }
start = Start
start-spoken = Start a session: { $how }
rested-spoken = { $side }: { $span } since it was last used.
rested-unknown-spoken = { $side }: not used yet.
lacking = { $count ->
    [one] One session can still get its amount.
   *[other] { $count } sessions can still get their amount.
}
open-lacking = Open it

## While a session runs

running-since = { $sides }, since { $time }
running-phase = { $phase } · { $span }
running-no-phase = running
running-spoken = { $span } so far. { $phase }.
running-now = running
finish = Finish
mark-letdown = Letdown
mark-letdown-spoken = Mark a letdown, seen or felt
mark-letdown-phase = To letdown phase
mark-letdown-phase-spoken = The pump is now in its letdown phase
mark-expression-phase = To expression
mark-expression-phase-spoken = The pump is now in its expression phase
mark-hurts = It hurts
mark-hurts-spoken = Mark that it hurts
mark-rest = Pause
mark-rest-spoken = Pause: the pump rests
mark-resume = Go on
mark-resume-spoken = Go on with expression
mark-softer = Softer
mark-softer-spoken = Less vacuum
mark-stronger = Stronger
mark-stronger-spoken = More vacuum
mark-slower = Slower
mark-slower-spoken = Fewer cycles per minute
mark-faster = Faster
mark-faster-spoken = More cycles per minute
dial-vacuum = Vacuum level
dial-vacuum-spoken = Vacuum level: { $value }
dial-vacuum-about = Vacuum level, about { $value }
dial-vacuum-about-spoken = Vacuum level: { $level }, { $said }
dial-cycles = Cycles a minute
dial-last-time = { $dial }, as last time?
dial-last-time-spoken = { $dial }. That is what it was last time. Tap it if it is the same now.
strip-last-time = last time { $value }
dial-cycles-spoken = Cycles per minute: { $value }
dial-unset = not set
pain-how-much = How much, from 1 to 10?
pain-turned-down = Turned it down
pain-turned-down-spoken = I turned the pump down because it hurt
pain-score-spoken = It hurt: { $score } out of 10
pain-unsaid = it hurt
turned-down-short = turned down
asks-ended = This session has run for { $span }. When did it end?
ended-usual = At { $time }, as usual
ended-last-mark = At { $time }, the last mark
still-running = Still going
alarm-running-title = Is the session still going?
alarm-running-text = It can be ended at the time it really ended.
no-session-running = No session is running.
no-session-running-do = Start one, or write one down afterwards in Day.

## Phases

phase-letdown = Letdown phase
phase-expression = Expression
phase-rest = Pause

## The strip

strip-nothing = Nothing was marked.
strip-spoken-length = A session of { $span }.
strip-spoken-phase = { $phase }, { $span }.
strip-spoken-no-letdown = No letdown was marked; there may have been some.
strip-spoken-letdowns = { $count ->
    [one] One letdown was marked.
   *[other] { $count } letdowns were marked.
}
strip-spoken-pains = { $count ->
    [one] It hurt once.
   *[other] It hurt { $count } times.
}
strip-spoken-turned-down = { $count ->
    [one] It was turned down once.
   *[other] It was turned down { $count } times.
}

## Amounts

amounts-title = What came?
amounts-subtitle = Draw the line up. It can wait, too.
amounts-headline = What came?
amounts-caption = { $span } long
amounts-measured = Measured
amounts-each = Each side
amounts-together = Together
amounts-done = Done
amounts-later = Later
amount-draw = draw up
amount-less = Less
amount-less-spoken = A little less, { $side }
amount-more = More
amount-more-spoken = A little more, { $side }
amount-say-unknown = Not known
amount-say-unknown-spoken = The amount is not known, { $side }
amount-say-later = Later
amount-spoken = { $side }: { $amount }.
amount-unknown = not known
amount-later = for later
amount-unsaid = not yet
amount-nothing-said = –
amount-and-unknown = { $volume } + ?
at-least = { $volume } +

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

## Kinds

kind-session = Session
kind-feed = Feed
kind-sign = Body and breast
kind-note = Note
kind-weight = Weight
kind-life_event = Change in life
kind-visit = Visit
kind-question = Question
kind-consultant = Consultant
kind-plan = Plan
kind-plan_part = Part of a plan
kind-case_family = Family
kind-caution_dealt = Caution dealt with
kind-rules = Rules
kind-child = Child
kind-pump = Pump
kind-part = Part
kind-flange = Flange
kind-gauge = Gauge
kind-check = Check with a gauge
kind-trace = Trace of pressure
kind-fit = Nipple measured
kind-rhythm = Your rhythm
kind-fixed_point = Fixed point of the day
kind-plan_change = Plan changed
kind-settings = Settings
add-session = Write down a session
add-feed = Write down a feed
add-fixed_point = Add a shift, a break, a care time or a feed
add-sign = Write down temperature or signs
add-note = Write down a note
add-visit = Write down a visit
add-question = Write down a question
add-consultant = Take in a consultant’s key
add-weight = Write down a child’s weight
add-life_event = Write down something that changed
add-child = Add a child
add-pump = Add a pump
add-part = Add a part
add-flange = Add a flange
add-gauge = Add a gauge
kinds-child = Children
kinds-pump = Pumps
kinds-part = Parts that wear
kinds-flange = Flanges
kinds-gauge = Gauges
none-child = No child is written down yet.
none-pump = No pump yet. A session can be recorded without one.
none-part = No part yet. A date here helps to tell wear later.
none-flange = No flange yet.
none-gauge = No gauge yet. It says how sure a reading is.

## Fields

field-started = Started
field-ended = Ended
field-at = Time
field-amount = Amount
field-amount-left = Left
field-amount-right = Right
field-amount-together = Together
field-weight-before = Child’s weight before
field-weight-after = Child’s weight after
field-child = Child
field-method = Method
field-sides = Sides
field-pump = Pump
field-flange-left = Flange, left
field-flange-right = Flange, right
field-where = Where
field-hands-on = Hands on the breast while pumping
field-letdowns = Letdowns seen or felt
field-letdown-felt = Letdown
field-pain-left-letdown = Pain left, letdown phase
field-pain-left-expression = Pain left, expression
field-pain-right-letdown = Pain right, letdown phase
field-pain-right-expression = Pain right, expression
field-turned-down = Times turned down for discomfort
field-level-letdown = Level, letdown phase
field-vacuum-letdown = Vacuum set, letdown phase
field-cycles-letdown = Cycles, letdown phase
field-level-expression = Level, expression
field-vacuum-expression = Vacuum set, expression
field-cycles-expression = Cycles, expression
field-level = Level
field-vacuum = Vacuum
field-cycles = Cycles
field-score = Pain
field-note = Note
field-text = Note
field-way = Given by
field-milk = Milk
field-temperature = Temperature
field-redness = Redness
field-heat = Heat
field-lump = Lump
field-swelling = Swelling
field-nipple-damage = Damaged nipple
field-breast-fever = Fever with signs at the breast
field-fever-after-birth = Fever alone, after a birth
field-fever-later = Fever alone, later on
field-after-birth = “After a birth” lasts
field-fever-with-place = Fever with a red, hot or painful place
field-no-better-after = No better after
field-signs-together = A temperature and a sign are read together within
field-signs-hold = What was written down stands for
field-severe-pain = Severe pain begins at
field-pain-rise = Pain that rises within a session by
field-pain-sessions = Sessions after each other with severe pain
field-pain-often = Pain in most sessions begins at
field-pain-often-in = In at least so many sessions
field-pain-often-of = Out of the latest
field-breast-pain-high = Severe pain in the breast begins at
field-engorged-from = Both breasts swollen: usual from day
field-engorged-to = Both breasts swollen: usual up to day
field-blood-lasts = Blood from one side, longer than
field-pump-far-below = A pump is far below its range by
field-look-after-gap = Nothing written down for
field-visit-ahead = A visit is said ahead by
field-shivering = Shivering
field-painful-place = A painful place
field-breast-pain = How much the breast hurts
field-pus = Pus from the nipple
field-blood = Blood from the nipple
field-spreading-redness = Redness that spreads fast
field-dark-skin = Skin newly purple or black
field-pain-beyond-what-is-seen = Pain far beyond what can be seen
field-fainting = Fainting
field-confusion = Confusion
field-severe-weakness = Severe weakness
field-short-of-breath = Short of breath
field-keeps-vomiting = Vomiting that does not stop
field-chest-pain = Chest pain or a racing heart
field-seizure = A seizure
field-lasting-headache = A headache that does not go away
field-trouble-seeing = Trouble seeing
field-heavy-bleeding = Heavy bleeding
field-severe-belly-pain = Severe belly pain
field-swollen-leg = One leg swollen, red or painful
field-swollen-face-or-hands = Face or hands very swollen
field-thoughts-of-harm = Thoughts of harming yourself or your child
field-since-before = Since it was last written down
choice-since-before-better = Better
choice-since-before-same = The same
choice-since-before-worse = Worse
field-question = Question
field-answered = Answered
field-taken-in = Key taken in on
field-good-until = Can be accepted until
field-plan-words = Words to the family
field-plan-part = About
choice-plan-part-setting = A setting
choice-plan-part-rhythm = How often, and sleep
choice-plan-part-aim = An aim
choice-plan-part-check = A check to make
choice-plan-part-visit = When to meet again
choice-plan-part-rule = A rule set anew
choice-plan-part-words = A word
field-use-or-try = Use it, or try it
choice-use-or-try-use = Use it
choice-use-or-try-try = Try it
field-pump-name = Pump, by its name
field-plan-phase = Phase
choice-plan-phase-letdown = Letdown
choice-plan-phase-expression = Expression
field-lasts = For so long
field-plan-check = To check
choice-plan-check-pump = The pump
choice-plan-check-flange = The flange
choice-plan-check-weight = The child’s weight
choice-plan-check-temperature = Temperature
choice-plan-check-pain = Pain
field-check-by = By
field-visit-at = To meet again
field-rule = Rule
field-rule-value = Set to
field-words = Words
field-next-visit = Next visit
field-sheet-name = Name on the visit sheet
field-emergency-call = Emergency number
field-today-call = Your midwife or doctor
field-out-of-hours-call = Out-of-hours service
field-paper = Paper of the visit sheet
choice-paper-a4 = A4
choice-paper-letter = Letter
field-name = Name
field-birth = Born on
field-gestation-weeks = Weeks of gestation at birth
field-gestation-days = and days
field-sex = Sex, for growth tables
field-birth-weight = Weight at birth
field-grade = Grade
field-power = Power
field-levels = Levels on its dial
field-in-use-since = In use since
field-maximum-vacuum-low = Maximum vacuum, from
field-maximum-vacuum-high = Maximum vacuum, to
field-cycles-low = Cycles, from
field-cycles-high = Cycles, to
field-part = Part
field-until = In use until
field-warranty-until = Warranty until
field-gauge = Gauge
field-span = Reads from 0 to
field-reads-in = Unit on its face
field-accuracy-class = Accuracy class
field-greatest-error = Greatest error its maker states
field-resolution = Smallest step that can be read
field-connected = How the gauge is connected
field-flange = Flange in use
field-ran-on = Pump runs on
field-sides-at-once = Drawn at once
field-set-vacuum = Vacuum the pump says it is set to
field-altitude = Height above the sea
field-air-pressure = Pressure of the air
field-unit = Unit in the file
field-readings = Readings
field-findings = What was found
field-readings-are-right = The readings are right
field-unit-is-right = The unit is right
field-next-level = Level read next
field-next-side = Side read next
field-nipple-left-before = Left, before expressing
field-nipple-left-after = Left, after
field-nipple-right-before = Right, before expressing
field-nipple-right-after = Right, after
field-areola-drawn-in = Areola drawn in
field-rubbing = Nipple rubs
field-marked-nipple = Nipple pale or marked afterwards
field-only-at-highest = Milk only at the highest vacuum
field-flange-sizes = Sizes in stock
field-personal-low = Personal grade: reaches this
field-personal-high = Personal grade: usually up to
field-hospital-low = Hospital grade: reaches this
field-hospital-high = Hospital grade: usually up to
field-good-low = Held good for any pump, from
field-good-high = Held good for any pump, to
field-hand-exemption = A hand pump above this carries a note on 21 CFR 884.5150
field-verdict-chance = A verdict is given from this chance on
field-set-apart = Applied and set vacuum may differ by this
field-readings-apart = Readings further apart than this are asked about
field-likely-kilopascal = A highest reading below this is asked about
field-life-from = A personal grade motor lasts, from
field-life-to = A personal grade motor lasts, to
field-usual-cycles-low = Usual cycles, from
field-usual-cycles-high = Usual cycles, to
field-gap-least = Flange wider than the nipple by at least
field-gap-most = Flange wider than the nipple by at most
field-comes-with-low = Pumps come with a flange of, from
field-comes-with-high = Pumps come with a flange of, to
field-measure-again = Measure a nipple again after
field-size = Size
field-side = Side
field-hand = Hand that holds the phone
field-palette = Palette
field-hour-clock = Clock
field-volume-unit = Volume
field-vacuum-unit = Vacuum
field-temperature-unit = Temperature
field-mass-unit = Weight
field-day-start = Hour at which a day begins
field-zone = Time zone
field-marks = Marks
field-id = Id
field-fact = Fact
field-taken-out = Taken out
field-device = Device
field-weight = Weight
field-what = What changed
field-fixed_point-what = What it is
field-fixed_point-until = Until
field-sessions-a-day = Sessions a day
field-longest-interval = Longest gap
field-shortest-interval = Shortest gap
field-sleep-from = Sleep may begin
field-sleep-until = Sleep is over
field-sleep-stretch = One sleep as long as
field-night-sessions = Sessions in that time, at least
field-reminders = Reminders
field-night-reminders = Reminders while you sleep
field-lead-time = Time to set up
field-block-at = It begins
field-block-sessions = Short sessions in it
field-block-express = Each takes
field-block-rest = Rest between them
field-fewer-from = First day with one fewer
field-fewer-every = Another falls away after so many days
field-fewer-until = So many stay
field-from = From
field-days = On
field-on = Only on this date
field-session-in = A session then
field-longest-gap = Longest gap where none is set
field-longest-gap-early = The same in the first days
field-early-days = How long the first days are
field-least-sessions = Fewer sessions a day are noted
field-least-sessions-early = Fewer sessions a day are noted, in the first days
field-asleep-again = Until asleep again
field-usual-length = Length of a session where none is written down
field-catches-up = After a delay, no closer than this share of an even gap
field-late-after = A session is late after
field-highest-rate = Highest published rate of one breast
field-aim = Aim for a day, set with your consultant
field-drop-seen = Notice of a drop, seen
field-gap-before = Gap before
field-amount-is-right = The amount is right
field-complete-day = A day counts when so much of it was observed
field-bears-doubt = No level is told when more gaps than this are in doubt
field-least-complete = Nor when fewer days than this are complete while many gaps are in doubt
field-band-a-week = A slope within this, up or down a week, is of no importance
field-watched-day = The watch looks at a day when so much of it was observed
field-watch-reference = A drop is told when it is at least so many times what days differ by
field-watch-decision = And when it is so many times likelier than no drop
field-fever = A temperature from here on is listed beside a change
field-volume-day = Day of life on which a volume after a preterm birth is judged
field-volume-reached = Volume that is reached from here on
field-volume-between = Lower edge of the band below it
field-need-a-kilogram = A child’s need for each kilogram of weight
field-intake-from = No intake is told before day
field-preterm-below = Born before so many completed weeks is preterm

hint-date = such as 2026-03-01
hint-zone = as the device is set, or a name such as Europe/Berlin
hint-letdown-felt = Not felt does not mean there was none.
hint-name = a name of your own
hint-day-start = 0 is midnight
hint-length-of-time = hours and minutes, such as 3:30
hint-longest-interval = from the end of one session to the end of the next
hint-sleep-stretch = as far as the longest gap lets it
hint-fewer-from = days as 2026-03-01
hint-block-at = such as 20:00, the same each day
hint-span = many pump gauges end at 450 mmHg
hint-accuracy-class = stands on the face, such as Cl. 1.6
hint-greatest-error = where there is no class
hint-flange-sizes = such as 15 17 19 21
hint-set-vacuum = only where the pump shows a vacuum
hint-altitude = shown, never used to correct
hint-nipple-left-before = in mm

## Choices

choice-method-electric_pump = Electric pump
choice-method-hand_pump = Hand pump
choice-method-by_hand = By hand
choice-method-at_breast = At the breast
choice-method-unsaid = Session
choice-what-medicine = A medicine
choice-what-illness = Illness
choice-what-periods_back = Periods are back
choice-what-back_to_work = Back to work
choice-what-journey = A journey
choice-what-solid_food = Solid food began
choice-what-shift = Shift at work
choice-what-break = Break
choice-what-care_time = Care time on the unit
choice-what-feed = Feed
choice-days-every_day = every day
choice-days-monday_to_friday = Monday to Friday
choice-days-saturday_sunday = Saturday and Sunday
choice-days-monday = Mondays
choice-days-tuesday = Tuesdays
choice-days-wednesday = Wednesdays
choice-days-thursday = Thursdays
choice-days-friday = Fridays
choice-days-saturday = Saturdays
choice-days-sunday = Sundays
choice-session-in-in_it = Is to be in it
choice-session-in-not_in_it = Cannot be in it
choice-session-in-either = Does not matter
choice-reminders-sound = With a sound
choice-reminders-quiet = Quietly
choice-reminders-none = None
choice-night-reminders-sound = With a sound
choice-night-reminders-quiet = Quietly
choice-night-reminders-none = None
choice-what-other = Something else
choice-gap-before-whole = No session was missed
choice-gap-before-missed = A session was missed
choice-sides-left = Left
choice-sides-right = Right
choice-sides-both = Both
choice-side-left = Left
choice-side-right = Right
choice-side-both = Both
choice-where-home = Home
choice-where-work = Work
choice-where-neonatal_unit = Neonatal unit
choice-where-on_the_way = On the way
choice-letdown-felt-seen_or_felt = Seen or felt
choice-letdown-felt-not_felt = Not felt
choice-breast-left = left
choice-breast-right = right
choice-breast-both = both
choice-breast-neither = neither
choice-way-bottle = Bottle
choice-way-tube = Tube
choice-way-cup = Cup
choice-way-spoon_or_syringe = Spoon or syringe
choice-milk-own_fresh = Own milk, fresh
choice-milk-own_stored = Own milk, stored
choice-milk-donor = Donor milk
choice-milk-formula = Formula
choice-sex-girl = Girl
choice-sex-boy = Boy
choice-grade-personal = Personal grade
choice-grade-hospital = Hospital grade
choice-grade-hand = Hand pump
choice-power-mains = Mains
choice-power-battery = Battery
choice-power-both = Mains and battery
choice-part-valve = Valve
choice-part-membrane = Membrane
choice-part-tubing = Tubing
choice-part-connector = Connector
choice-part-bottle_seal = Bottle seal
choice-part-other = Another part
choice-reads-in-mmHg = mmHg
choice-reads-in-kPa = kPa
choice-reads-in-mbar = mbar
choice-reads-in-cmH2O = cmH₂O
choice-unit-mmHg = mmHg
choice-unit-kPa = kPa
choice-unit-mbar = mbar
choice-unit-cmH2O = cmH₂O
choice-accuracy-class-01 = 0.1
choice-accuracy-class-025 = 0.25
choice-accuracy-class-06 = 0.6
choice-accuracy-class-1 = 1
choice-accuracy-class-16 = 1.6
choice-accuracy-class-25 = 2.5
choice-accuracy-class-4 = 4
choice-connected-dead_headed = Closed, on the gauge alone
choice-connected-with_flange = With the flange in use
choice-ran-on-mains = Mains
choice-ran-on-battery = Battery
choice-sides-at-once-one = One side
choice-sides-at-once-both = Both sides
choice-next-side-left = Left
choice-next-side-right = Right
choice-next-side-both = One port
choice-hand-right = Right hand
choice-hand-left = Left hand
choice-palette-as_device = As the device
choice-palette-light = Light
choice-palette-night = Night
choice-hour-clock-24 = 24 hours
choice-hour-clock-12 = 12 hours
choice-volume-unit-mL = mL
choice-volume-unit-foz_us = fl oz
choice-vacuum-unit-mmHg = mmHg
choice-vacuum-unit-kPa = kPa
choice-temperature-unit-Cel = °C
choice-temperature-unit-degF = °F
choice-mass-unit-g = g
choice-mass-unit-kg = kg
choice-mass-unit-lb_av = lb

## Kit and family

kit-subtitle = What you pump with
kit-intro = The pump’s own manual comes first. What you write here lets a gauge check say more later.
flange-of-size = Flange { $size }
levels = { $count ->
    [one] one level
   *[other] { $count } levels
}
range = { $low } to { $high } { $unit }
since-date = since { $date }
born-on = born { $date }
born-at = at { $weeks } weeks and { $days } days
row-spoken = { $title }. { $detail }
## Cautions

urgency-now = Get emergency care now
urgency-today = Please call your midwife or doctor today
urgency-soon = Please have a doctor look at this soon
urgency-consultant = Please tell your consultant
caution-line = { $asks }: { $what }
caution-line-waits = Still open since { $when }: { $what }. What came of it?
caution-and-more = { $what }. And { $count } more.
caution-open = Look
caution-page = Needs a look
cautions-page = Needs a look
cautions-intro = From what you wrote down. Each one says what was seen and where its limit comes from.
cautions-none = Nothing you wrote down meets a limit that Drawwell knows. That is no all-clear.
cautions-earlier = Before, and what came of it
cautions-earlier-open = See what came of earlier ones
caution-over = Nothing here now
caution-over-detail = Nothing you wrote down lately asks for this.
caution-dealt-detail = Tap what happened. It comes back if you write down something new.
caution-until-then = Until help is there
caution-came-of-it = What came of it?
caution-waits = Still open
caution-waits-do = If it is still there, act on it now:
caution-waits-since = Written down { $when }. Nobody wrote down what came of it.
caution-became-dealt = Dealt with { $when }
caution-became-dealt-how = Dealt with { $when }. { $how }
caution-became-answered = No longer so: { $fact }
caution-became-out-of-date = Out of date since { $when }. Nothing more was written down.
choice-dealt-how-emergency_team = An emergency team saw me
choice-dealt-how-doctor_or_midwife = A doctor or midwife saw me
choice-dealt-how-advice_by_phone = I got advice by phone
choice-dealt-how-consultant_knows = My consultant knows
choice-dealt-how-nobody_needed = It turned out to be nothing
field-dealt-how = What came of it
signs-gone = It is no longer there
signs-still = It is still there
asks-since-before = You wrote down: { $what }. How is it now?
call-emergency-call = Call emergency: { $number }
call-today-call = Call your midwife or doctor: { $number }
call-out-of-hours-call = Call the out-of-hours service: { $number }
call-set-number = Set the number to call
caution-seen = What was seen
caution-sources = Where this comes from
caution-source = { $source } ({ $year }).
caution-source-from-memory = { $source } ({ $year }, written down from memory).
caution-not-reviewed = Not yet reviewed by a clinician.
caution-rule = { $value }. { $source }
caution-rule-set = { $value }, as your consultant set it. As it comes: { $source }
caution-comes-first = Local guidance, and whoever treats you, come first. If you feel worse before then, do not wait.
caution-open-supply = Open Supply
caution-open-pump = Open this pump
caution-open-fit = Look at the flange
caution-today-at = today at { $time }
caution-day-at = { $date } at { $time }
caution-fact = { $what }, { $when }
caution-sign-at = { $sign }, { $side }
caution-on-left = left
caution-on-right = right
caution-on-both = both sides
caution-not-there = No { $sign }
caution-better = Better
caution-entry = More was written down
caution-session = The session { $when }
caution-no-word-since = Written down { $when }, and nothing since
caution-since = Since { $when }: still there after { $span }, and not better
caution-pain-rose = Session { $when }: pain went from { $from } to { $to } of 10
caution-pain-high = Session { $when }: pain { $score } of 10 at its end
caution-pain-in = Pain of { $score } or more in { $some } of the last { $of } sessions, up to { $when }
caution-hurts-in = It hurt, or the pump was turned down, in { $some } of the last { $of } sessions, up to { $when }
caution-pull = Checked { $when }: it pulled { $pull }; its range begins at { $low }
caution-emergency = { $signs }
caution-emergency-bare = a sign that cannot wait
caution-emergency-do = Call emergency services now, or have someone take you there.
caution-harm = { $signs }
caution-harm-bare = thoughts of harm
caution-harm-do = Call emergency services or a crisis line now and tell them. It can be treated, and you are not alone with it.
caution-breast-fever = a fever of { $temperature }, and signs at the breast
caution-breast-fever-bare = fever, and signs at the breast
caution-breast-fever-do = Someone should examine you today.
caution-fever-with-place = a fever of { $temperature }, and a red, hot or painful place
caution-fever-with-place-bare = fever, and a red, hot or painful place
caution-fever-with-place-do = Someone should examine you today.
caution-fever = a fever of { $temperature }
caution-fever-bare = a fever
caution-fever-do = Someone should find out today where it comes from. Say how long ago you gave birth.
caution-fever-over = a fever that is over
caution-fever-over-do = Tell your consultant that you had it, even if you feel well again.
caution-shivering = shivering
caution-shivering-do = Someone should examine you today.
caution-pus = pus from the nipple
caution-pus-do = Someone should look at it today.
caution-blood = blood from the nipple
caution-blood-do = Your consultant can help find the cause. If it goes on for more than a week from one side, a doctor should look at it.
caution-blood-lasts = blood from one nipple for more than a week
caution-blood-lasts-do = A doctor should look at it, even if it does not hurt.
caution-engorgement = both breasts swollen in the first days
caution-engorgement-do = Both breasts often swell when milk comes in. Your consultant can show you what helps.
caution-nipple-damage = a damaged nipple
caution-nipple-damage-do = Your consultant can look for the cause: the flange, the vacuum, how your child feeds.
caution-breast-pain = severe pain in the breast
caution-breast-pain-do = Your consultant can look at it with you. If it gets worse, do not wait for her.
caution-no-word = { $signs }
caution-no-word-bare = signs at the breast
caution-no-word-do = Say whether it is better, the same or worse.
caution-no-better = { $signs }, and not better
caution-no-better-bare = signs at the breast that do not get better
caution-no-better-do = Someone should examine you today.
caution-pain-stays-high = severe pain while expressing
caution-pain-stays-high-do = Expressing should not hurt. Turn the vacuum down until it does not, and have the flange looked at.
caution-pain-often = pain in most sessions
caution-pain-often-do = Expressing should not hurt. Turn the vacuum down until it does not, and have the flange looked at.
caution-hurts-often = sessions that hurt, or were turned down
caution-hurts-often-do = Expressing should not hurt. Turn the vacuum down until it does not, and have the flange looked at.
caution-pain-rises = pain that rises during a session
caution-pain-rises-do = Turn the vacuum down as soon as it hurts, and have the flange looked at.
caution-supply-drop = less milk than before
caution-supply-drop-do = It is more than the days usually differ. Your consultant can look at what else changed then.
caution-pump-far-below = { $name } pulls far below its range
caution-pump-far-below-do = A worn valve or membrane is the usual reason. Let the pump be checked before you change its setting; its manual comes first.
advice-no-driving = Do not drive yourself.
advice-stay-with-somebody = Stay with someone you trust until help is there.
advice-out-of-hours = If nobody answers today, call the out-of-hours service or go to an emergency department.
advice-usual-rhythm = Keep to your usual rhythm until you have asked.
advice-milk-can-be-given = Your milk can usually still be given. On a neonatal unit, ask first.
advice-ask-about-milk = Ask whether this milk may be given.
not-a-diagnosis = This is not a diagnosis.

## Plans

plan-from = A plan from { $name }
plan-from-nobody = A plan from your consultant
plan-made = Made { $date }
plan-nothing-holds = Nothing of it holds until you accept it. You can take some of it and leave the rest.
plan-all-answered = Everything in it is answered.
plan-defers = If something in it does not suit you, or hurts, leave it and tell her. The pump’s manual and the unit’s own rules come first.
plan-accept-all = Accept all of it
plan-accept = Accept
plan-leave = Leave
plan-is-accepted = You accepted this.
plan-is-left = You left this.
plan-stays = { $what }: { $after }, as it is now
plan-changes = { $what }: { $before } now, { $after } then
plan-sets = { $what }: { $after }
plan-check-by = { $what }, by { $date }
plan-setting-use = A setting to use
plan-setting-try = A setting to try
plan-level = level { $level }
plan-lasts = for { $span }
plan-higher = That is stronger than you used last on this pump. Turn it down as soon as it hurts.
plan-hurt = It hurt at { $setting } on { $date }. Turn it down as soon as it hurts.
plan-hurt-there = It hurt at { $setting } on { $date }.
plan-pump-unknown = The record has no pump called { $pump }. A level on one pump is not a level on another, so this can’t be compared.
plan-pump-not-named = No pump is named. A level on one pump is not a level on another, so this can’t be compared.
plan-this-pump = this pump
plan-never-used = The record does not say what was used on { $pump } before, so this can’t be compared.
plan-beyond-range = { $pump } is made for at most { $most }.
plan-beyond-levels = { $pump } has { $levels } levels.
plan-higher-there = stronger than the record shows was used last
plan-waits = { $from } waits for your answer.
plan-open = Look at it
plan-parts-wait = { $count ->
    [one] one part waits
   *[other] { $count } parts wait
}
plans-title = Plans
plan-writing = A plan you are writing
plan-writing-for = A plan for { $name }
plan-part-for = For { $name }
plan-writing-detail = It is signed with your key and sealed for this family. What it changes, the parent sees and accepts or leaves.
plan-not-sent = Not sent yet
plan-sent = Sent { $date }, { $time }
plan-words = Words
plan-parts = Parts
plan-stands-now = { $value } now
plan-said = { $what }: { $value }
plan-part-nothing = Says nothing yet
plan-rules-title = Which rule
plan-rules-intro = A plan can set each of these anew. It holds in the family’s record once the parent accepts it.
plan-rules-stands = Now { $value } in this family’s record. { $shipped }
plan-rules-none = No rule chosen yet
plan-rules-choose = Choose a rule
plan-rules-another = Choose another rule
send-plan = Send it
send-plan-detail = A signed and sealed file for this family
plan-handed-over = The plan is written.
plan-empty = This plan says nothing yet.
plan-empty-do = Add a part, or words to the family.
plan-part-empty = Part { $number } of this plan says nothing yet.
plan-part-empty-do = Fill it in, or take it out.
plan-no-key = This family’s key is not known.
plan-no-key-do = Ask the family to share its record once with your card.
plan-not-one = This is not a plan.
plan-not-one-do = Ask your consultant for it again.
plan-line = Line { $line } of this plan can’t be read.
plan-line-do = Ask your consultant to send it again. Nothing of it was taken in.
plan-rule = Line { $line } of this plan sets a rule that is not known, or beyond its bounds.
bad-rule = No rule of this name can be set by a plan.
bad-rule-do = Choose one from the list.
plan-rule-do = Ask your consultant to send it again. Nothing of it was taken in.
plan-for-another = This plan is for another family.
plan-for-another-do = Tell your consultant. Nothing of it was taken in.
plan-out-of-date = This plan could be accepted until { $date }.
plan-out-of-date-do = Ask your consultant for a new one.
plan-older = A newer plan from her is here already.
plan-older-do = Nothing of the older one was taken in.
plan-ahead = This plan is dated more than a day ahead.
plan-ahead-do = Ask your consultant to set her clock right and send it again. Nothing of it was taken in.
plan-not-compared = This plan may be hers, but you have not compared the words yet.
plan-not-compared-do = Open her page under Visit, read the words to each other, and then open the plan again.
plan-other-content = A plan with the same number but other content is here.
plan-other-content-do = Ask your consultant which one holds. Nothing was changed.
plan-accepted-before = You had accepted: { $said }
plan-left-before = You had left: { $said }

## The consultant's desk

caseload-title = Families
caseload-count = { $count ->
    [one] One family
   *[other] { $count } families
}
caseload-needs-a-look = Needs a look first
caseload-others = Nothing asks for a look
caseload-none = No family has shared a record yet. Hand your card on, and open what comes back.
caseload-pick = Open a file
caseload-pick-detail = Sealed or plain, or drag it here
caseload-menu = Files
caseload-watch = Watch a folder for new files…
caseload-leave-folder = Stop watching “{ $folder }”
caseload-desk = Your desk
caseload-waits = { $count ->
    [one] A file waits for its passphrase
   *[other] { $count } files wait for their passphrases
}
caseload-waits-detail = Sealed with words that the family tells you
caseload-desk-detail = Card, gauges, pumps, flanges
as-of = As it was shared { $date }, { $time }. Only to be read.
case-notes = Notes, next visit, plan
case-notes-detail = What you keep of this family
case-no-name = No name yet
case-shared = As shared { $date }, { $time }
case-never-shared = Never shared
case-subtitle = What you keep of this family
case-open = Open its record
write-plan = Write a plan
remove-family = Remove for good
remove-family-detail = Says first what goes and what remains
removing-caption = This family goes from this machine for good.
removing-record = Its record, and all copies of it here
removing-written = What you wrote of it: notes, the next visit, plans
removing-files = Files that came or went, wherever you saved them
removing-family = The family’s own record on its phone
removing-do = Remove it
reason-cannot-be-read = The record here can’t be read; open its file again
reason-now = Emergency
reason-today = Today
reason-soon = Soon
reason-consultant = For you
reason-caution = { $urgency }: { $what }
reason-was = { $what }: { $became }
reason-pump-below = { $pump } pulls below its range
reason-gap = Nothing written down since { $date }: { $span }
reason-visit-today = Visit today
reason-visit-tomorrow = Visit tomorrow
reason-visit-on = Visit on { $date }
reason-visit-past = Visit was due { $date }
desk-title = Your desk
desk-subtitle = Kept once, used for every family
desk-intro = A pump or gauge of the same name in a family’s record takes its range from here where its own says none.
desk-own = You
desk-stock = Stock, units, rules
desk-rules = When a family needs a look
desk-rules-detail = A gap in the record, a visit that is near
own-card = Your card
own-card-detail = Hand it to a family once
own-card-how = The family scans this with the phone’s camera, or takes the line. Then read the words to each other.
own-card-spoken = A code that holds your public keys. The line below says the same.
own-words = Words to compare
own-line = The same as a line
own-name = Name on it
own-name-none = Set your name
desk-settings = Flanges in stock, units, look
desk-settings-detail = Sizes that you can offer
trouble-only-read = This is a family’s own record. It can only be read here.
trouble-only-read-do = Write it in a plan instead.
trouble-invented = This is the invented family’s record, and it was left as it is.
trouble-invented-do = Go back to your own record, then open the file or scan the code again.
trouble-only-on-a-desk = That belongs to the consultant’s program.
trouble-only-on-a-desk-do = Nothing was changed.
trouble-cannot-erase = Some of it could not be removed.
trouble-cannot-erase-do = Close other programs that have it open, and try again.

## Two spans of days

compare-open = Two spans beside each other
compare-open-detail = Since the last visit, or a week, against as long before
compare-page = Beside each other
compare-since-visit = Since the last visit
compare-span = { $from } to { $until }
compare-against = against { $span }
compare-title = Then and now
compare-no-cause = What differs beside the days is not said to be the cause.
compare-two = { $now }; before: { $before }
compare-level = Milk a day
compare-more = More or less a day
compare-difference = { $value } (between { $low } and { $high })
compare-cannot-tell = Can’t tell yet
compare-needs-days = can’t tell yet, { $days } more complete days
compare-too-much-missing = can’t tell, too many sessions seem to be missing
compare-gap = Longest gap on one side
compare-pain = Highest pain written down
compare-pain-score = { $score } of 10
compare-unknown = not known
compare-nothing = Nothing was collected yet.

## Visit

visit-subtitle = What your consultant gets, and what comes back
share-title = Share with your consultant
consultants-none = Take in your consultant’s key once, and what you share can be read by nobody else.
consultant-row = Share, and the words to compare
open-sharing = Take in a key, or use a passphrase
open-sharing-detail = From her QR code, or the line she sent you
sharing-page = Share sealed
sealed-page = A sealed file
group-card = Her key
group-by-passphrase = Or a passphrase
group-sealed = It is sealed with a passphrase
field-card = The line from her code
hint-card = Scan her code with a phone’s own camera, or paste the line she sent you here. It begins with drawwell:consultant.
done-card = Take her key in
field-seal-passphrase = Passphrase
hint-seal-passphrase = Tell it to her by voice. Nobody can open the file without it, you included.
done-seal-passphrase = Seal the record with it
field-open-passphrase = Passphrase
hint-open-passphrase = The one you were told
done-open-passphrase = Open it
leave-sealed = Leave this file
leave-sealed-detail = The file itself stays where it is
consultant-words = Do these words match hers?
consultant-words-same = You compared these words
consultant-compare = Read them to each other, on the phone or at the visit. If even one differs, it is not her key.
consultant-compared = You said that they were the same. Compare them again whenever you like.
words-same = The words are the same
words-differ = They differ, or not now
words-differ-detail = Nothing is kept. You can open her card again at any time.
asked-card = A consultant’s card
asked-card-changed = A consultant of this name is here already, with other keys. A new phone or program is a good reason, but ask her. Her old keys are taken out once the new words are the same; undo brings them back.
asked-phone = Another phone of your family
asked-phone-compare = Open this page’s card on the other phone and compare the words. If even one differs, it is not your other phone’s.
asked-file = A file to bring in
asked-phones = Bring in what another phone of your family wrote down?
asked-plain = Bring in what this file says?
asked-new = { $count ->
    [one] One new entry
   *[other] { $count } new entries
}
asked-other = { $count ->
    [one] One entry says something else then
   *[other] { $count } entries say something else then
}
asked-out = { $count ->
    [one] One entry is taken out
   *[other] { $count } entries are taken out
}
asked-undo = Nothing is brought in before you say so, and undo takes all of it back.
asked-settled = It would also set
asked-clears = { $what }: { $before } now, nothing then
asked-dealt = { $count ->
    [one] That a caution was dealt with
   *[other] That { $count } cautions were dealt with
}
asked-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
asked-take = Bring it in
asked-leave = Leave it
asked-nothing = Nothing waits for an answer.
asked-nothing-do = Open the file again.
phone-known = From now on you can bring in what that phone hands over.
phone-card = This phone’s card
phone-card-detail = For another phone of your family
phone-card-how = Scan this with the other phone’s camera, or take the line there. Then compare the words. Do the same the other way round.
seal-with-words = Seal with: { $words }
seal-with-words-detail = Made up for this file. Write it down or tell it by voice; it is not kept.
consultant-not-compared = You have not compared the words with her yet.
consultant-not-compared-do = Open her page, read the words to each other, and say that they are the same.
share-what-goes = What you leave out on the visit sheet is left out here, too. It is sealed for her alone, and goes by whatever you use: mail, messenger, cable.
not-a-diagnosis-share = What is shared is not a diagnosis. Local guidance and licensed care come first.
share-with = Share with her
share-with-detail = A sealed file that only she can open
consultant-details = Name, note, take out
family-handed-over = The sealed file is written.
bad-card = That is not a consultant’s key.
bad-card-do = Take the whole line that begins with drawwell:consultant, or scan her code again.
bad-card-key = That key is damaged.
bad-card-key-do = Ask for the line again; no letter may be missing.
bad-sealing-key = There is no key to seal for.
bad-sealing-key-do = Take in her key again.
bad-own-keys = The keys of this device can’t be read.
bad-own-keys-do = Restore the record from a backup, or ask for new files to be sealed for a new key.
bad-passphrase-empty = There is no passphrase yet.
bad-passphrase-empty-do = Take the words that are offered, or type some that only you two know.
bad-passphrase-weak = That passphrase is too easy to find out.
bad-passphrase-weak-do = Take the words that are offered, or type at least { $least } characters, { $different } of them different.
sealed-other-key = This file is sealed for another key.
sealed-other-key-do = Ask for it to be sealed for this device.
sealed-wrong-passphrase = That is not its passphrase.
sealed-wrong-passphrase-do = Look at upper and lower case, and try again.
sealed-cut = This sealed file is cut short or changed on its way.
sealed-cut-do = Ask for it again. Nothing of it was taken in.
sealed-too-much-work = Opening this file would take too long on purpose.
sealed-too-much-work-do = Ask for it to be sealed again with this app.
sealed-too-long = This file is far longer than any record.
sealed-too-long-do = Nothing of it was taken in. Ask whether it is the right one.
sealed-not-ours = This sealed file holds something else.
sealed-not-ours-do = Ask whether it is the right one.
sealed-newer = This file is sealed in a way that this version does not know.
sealed-newer-do = Update the app, then try again.
sealed-nothing-waits = No file waits for a passphrase.
sealed-nothing-waits-do = Choose the file again.
signed-not-readable = This is not a signed file.
signed-not-readable-do = Ask for it again.
signed-by-a-stranger = This plan is not from a consultant whose key you took in.
signed-by-a-stranger-do = Take in her key first, or ask from whom it is. Nothing of it was taken in.
signed-not-as-it-was = This file was changed after it was signed.
signed-not-as-it-was-do = Ask for it again. Nothing of it was taken in.
family-file-not-one = This is not a family’s record.
family-file-not-one-do = Ask whether it is the right file. Nothing of it was taken in.
family-file-line = Line { $line } of this record can’t be read.
family-file-line-do = Ask for the file again. Nothing of it was taken in.
family-file-limits = This record holds more of something than any family’s does.
family-file-limits-do = Ask whether it is the right file. Nothing of it was taken in.
family-file-ahead = This file is dated more than a day ahead.
family-file-ahead-do = Set the clock right on the device it comes from, and ask for it again. Nothing of it was taken in.
family-file-unsigned = Nobody signed this file.
family-file-unsigned-do = Ask for it to be shared again with the newest version. Nothing of it was taken in.
family-file-stranger = This file is not from a phone of your family that you know.
family-file-stranger-do = Compare the other phone’s card first: Visit, then sharing. Nothing of it was taken in.
family-file-other = Some entries in this file did not fit what is here and were left. Ask the family whether a phone was set up from a copy.
family-key-changed = This file is signed with another key than this family’s.
family-key-changed-do = Ask the family by voice whether they changed phones. If they did, remove the family here and take its record in anew. Nothing of it was taken in.
desk-unsealed = A file in the watched folder was not sealed.
desk-unsealed-do = Open it by hand if you know where it comes from. Nothing of it was taken in.
sealed-too-many-wait = { $count } files wait for their passphrases already.
sealed-too-many-wait-do = Open or leave some of them first.
family-file-of-another = This is another family’s record.
family-file-of-another-do = It can only be opened in the consultant’s program, or on a phone whose record is still empty.
open-tables = Tables
open-tables-detail = For a spreadsheet, one file each
tables-page = Tables
tables-intro = Plain CSV. What you leave out on the visit sheet is left out here, too. What is shared is not a diagnosis.
tables-one-by-one = One by one
table-all = All tables in one file
table-all-detail = A zip, with what each column holds beside them
table-sessions = Sessions
table-marks = What was marked in sessions
table-feeds = Feeds
table-signs = Temperature and signs
table-weights = Weights
table-checks = Checks of pumps
table-readings = Readings of the checks
table-fits = Nipples measured
table-life-events = Changes in life
table-notes = Notes
table-questions = Questions
table-children = Children
table-pumps = Pumps
table-parts = Parts that wear
table-flanges = Flanges
table-gauges = Gauges
open-erasing = Erase from this device
open-erasing-detail = Says first what goes and what remains
erasing-page = Erase the record
erasing-headline = This cannot be undone
erasing-caption = Everything written down on this device goes for good.
erasing-goes = What goes
erasing-goes-record = The record with everything in it, and its keys
erasing-goes-backups = { $count ->
    [one] One copy that was made beside it
   *[other] { $count } copies that were made beside it
}
erasing-goes-aside = Files that were set aside because they were damaged
erasing-remains = What remains
erasing-remains-files = Files you handed out or saved: sheets, tables, calendars, sealed records
erasing-remains-consultant = What your consultant has. Ask her to remove it, too.
erasing-remains-backup = Copies that this device’s own backup may have made
erasing-first = If you want to keep it, hand the whole record out first.
erase-record = Erase it
record-erased = The record is erased from this device.
visit-files = Files for other programs
visit-family = Children, settings, your record
visit-family-detail = Who it is about, how it looks, where it is kept
visit-last = Last visit
visit-next = Next visit
visits-title = Visits
visits-none = No visit is written down yet.
questions-title = Questions for the visit
questions-none = Whatever you want to ask can wait here.
hand-over-health-record = Health record
hand-over-health-record-detail = HL7 FHIR R4, for a clinic’s own program
family-subtitle = Children, settings, your record
settings = Settings
settings-detail = { $volume } · { $vacuum } · { $temperature } · { $hand }
record-here = Where it lies
record-here-detail = On this device only. Nothing is sent anywhere.
backup = Safety copy
backup-made = made { $span } ago, beside the record
backup-none = none yet; the first one makes itself
hand-over-record = Take a copy out
hand-over-record-detail = the whole record, as a file
pick-record = Bring a file in
pick-record-detail = from another phone, or a copy
record-handed-over = The file was written.
about-care = Not a diagnosis
about-care-detail = Drawwell keeps a record and does sums. It never urges more vacuum. Your care team, the pump’s manual and the unit’s own rules come first. If you feel ill or worried, ask them.
about-zones = Clock changes
about-zones-detail = Drawwell carries the world’s clock changes as they were known in release { $release } of the IANA time zone data. Where the clock of this device shows another hour now, the device’s hour is taken.
read-only = The record can be read, but nothing can be written down: the disk is full or may not be written. Free some space or allow writing, then close the app and open it again.
clock-ahead = Another device’s clock was { $span } ahead. Please set it right.

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

## What cannot be taken

bad-moment = { $field }: this is not a moment that can be read.
bad-moment-do = Write the time with its offset and zone, such as 2026-03-01T07:40:00+01:00 and Europe/Berlin.
bad-time = { $field }: this is not a time of day.
bad-time-do = Write it like 7:40 or 19:40.
bad-date = { $field }: this is not a date.
bad-date-do = Write it like 2026-03-01.
bad-phone = { $field }: this is not a number that can be called.
bad-phone-do = Figures, with spaces if you like, such as 0123 456 789.
bad-text = { $field }: this is not text.
bad-text-do = Write words.
bad-text-long = { $field }: this is longer than { $most } characters.
bad-text-long-do = Please shorten it, or make two notes of it.
bad-choice = { $field }: this is none of the choices.
bad-choice-do = Choose one of: { $words }.
bad-flag = { $field }: this is neither yes nor no.
bad-flag-do = Choose yes or no.
bad-number = { $field }: this is not a number.
bad-number-do = Write figures, such as 60 or 62.5.
bad-number-ambiguous = { $field }: this number can be read in two ways.
bad-number-ambiguous-do = Write it without a mark between thousands, such as 1000 or 62.5.
bad-unit = { $field }: this unit does not fit here.
bad-unit-do = Leave the unit out, or write one that fits.
bad-range = { $field }: this lies outside { $least } to { $most } { $unit }.
bad-range-do = Please look at the figures and the unit again.
bad-amount = { $field }: this is not an amount.
bad-amount-do = Write a volume, “unknown” or “later”.
bad-quantity = { $field }: figure and unit do not go together.
bad-quantity-do = Write a figure with a unit that fits.
bad-zone = { $field }: no time zone of this name is known.
bad-zone-do = Write a name such as Europe/Berlin.
bad-reference = { $field }: this points to nothing.
bad-reference-do = Choose one of the list.
bad-mark = This mark of the session cannot be read.
bad-mark-do = Take it out, or write it anew.
bad-field = { $field }: there is no such field here.
bad-field-do = Choose a field of the form.
bad-clear = { $field }: this cannot be left empty.
bad-clear-do = Write something else in it, or take the entry out.
bad-future = { $field }: this lies in the future.
bad-future-do = Please look at the date and time again.
bad-ends-before = { $field }: the session would end before it started.
bad-ends-before-do = Move the start first, or write a later end.
bad-too-long = { $field }: the session would be longer than { $hours } hours.
bad-too-long-do = Please look at the dates of start and end.
bad-level = { $field }: the pump has { $most } levels.
bad-level-do = Write a level that is on the dial, or correct the pump in Kit.
bad-order = { $field }: the lower figure is above the upper one.
bad-order-do = Swap them, or correct one.
bad-range-centimeters = { $field }: { $typed } lies outside { $least } to { $most } mm. Was it { $typed } cm, which is { $meant } mm?
bad-range-centimeters-do = Write { $meant }, or { $typed } cm.
bad-sizes = { $field }: these are not sizes.
bad-sizes-do = Write figures in mm with a space between, such as 15 17 19.
bad-findings = { $field }: this is not what was found in a trace.
bad-findings-do = Bring the trace’s file in again.
bad-reading = This reading cannot be read.
bad-reading-do = Take it out, or write it anew.
bad-beyond-span = { $field }: the gauge ends at { $most } { $unit }.
bad-beyond-span-do = Please look at the figure, or correct the gauge in Kit.
bad-beyond-air = { $field }: no vacuum can be more than the air presses with there, { $most } { $unit }.
bad-beyond-air-do = Please look at the figure and its unit, and at height and air pressure.
bad-span = { $field }: this is not a length of time.
bad-span-do = Write hours and minutes, such as 3:30, or 90 min.
bad-span-range = { $field }: this lies outside { $least } to { $most } (hours and minutes).
bad-span-range-do = Please look at the hours and minutes again.
bad-sleep-window = { $field }: sleep would be { $hours } hours long; { $most } is the most that leaves a day to express in.
bad-sleep-window-do = Please look at both times: was one meant for the morning?
bad-not-planned = This session is not planned any more.
bad-not-planned-do = Look at Tonight again: the times have moved.
bad-plan-past = The session would lie in the past.
bad-plan-past-do = Leave it out, or start it now.
bad-no-plan = There is no plan yet.
bad-no-plan-do = Choose in Tonight how many sessions a day.

## Trouble with the record

trouble-busy = Another program has the record open.
trouble-busy-do = Close it there and try again. Nothing was changed.
trouble-read-only = The record may not be written here.
trouble-read-only-do = Allow writing to its folder, then close the app and open it again. Nothing was changed.
trouble-full = There is no room left on this device.
trouble-full-do = Free some space and try again. What was written down before is safe.
trouble-disk = The disk did not take what was to be written.
trouble-disk-do = Try again. If it happens again, take a copy of the record out.
trouble-newer = This record was written by a newer version of Drawwell.
trouble-newer-do = Install the newer version. The record was not touched.
trouble-newer-file = This file was written by a newer version of Drawwell.
trouble-newer-file-do = Install the newer version to bring it in. Nothing was changed.
trouble-damaged = The record’s file is damaged.
trouble-damaged-do = Close Drawwell and open it again: what can be read is kept, and the damaged file is set aside.
trouble-damaged-mended = The record’s file was damaged. It was set aside, and what could be read was kept.
trouble-damaged-mended-do = Please look whether the last entries are there.
salvaged = The record’s file was damaged. { $kept } changes were read from it and { $backup } more from a safety copy. The damaged file is kept as { $name }.
trouble-not-a-record = This file is not a Drawwell record.
trouble-not-a-record-do = Choose another file. It was not touched.
trouble-cannot-open = The record cannot be opened there.
trouble-cannot-open-do = Look whether the folder is there and may be written to.
trouble-cannot-read-file = The file cannot be read.
trouble-cannot-read-file-do = Look whether it is still there, or pick another.
trouble-no-press = This build can’t set the visit sheet.
trouble-no-press-do = Use the app, or a build with its press.
trouble-not-set = The visit sheet could not be set. Your record is as it was.
trouble-not-set-do = Leave a part out and try again, or hand over the record instead.
trouble-cannot-write-file = The file cannot be written there.
trouble-cannot-write-file-do = Choose another place, or free some space.
trouble-device-name = The device’s name cannot be used.
trouble-device-name-do = It is made of letters and figures, at most 32.
trouble-no-such-record = This entry is not there.
trouble-no-such-record-do = Go back and look at the day again.
trouble-not-kept = This could not be written down.
trouble-not-kept-do = Close the app and open it again, then try once more. What was written down before is safe.
trouble-no-file = That is not a file.
trouble-no-file-do = Choose a file, not a folder or a device.
trouble-onto-a-record = A record lies there already.
trouble-onto-a-record-do = Choose another name or folder. It was not touched.
trouble-fault = Something in Drawwell went wrong.
trouble-fault-do = Try again. What was written down before is safe.
trouble-table = Drawwell can't read its own rules: { $file }, line { $line } ({ $why }).
trouble-table-do = Your record was not touched. Install Drawwell again, or go back to the version before.

## Figures

quantity = { $figure } { $unit }
unit-mL = mL
unit-fozus = fl oz
unit-mmHg = mmHg
unit-kPa = kPa
unit-min = a minute
unit-g = g
unit-kg = kg
unit-lbav = lb
unit-ozav = oz
unit-Cel = °C
unit-degF = °F
unit-mm = mm
unit-cm = cm
unit-mbar = mbar
unit-cmH2O = cmH₂O
unit-hPa = hPa
unit-m = m
unit-fti = ft
unit-mo = months
unit-mmHgmo = mmHg a month
unit-kPamo = kPa a month
unit-mmHgs = mmHg a second
unit-kPas = kPa a second
chance = { $percent } %
chance-most = more than 99 %
chance-least = less than 1 %
month-year = { $month } { $year }
until-date = until { $date }
unit-mLd = mL a day
unit-mLkgd = mL for each kilogram
unit-d = days
unit-h = h
unit-minutes = min
unit-mLh = mL an hour
unit-wk = weeks
unit-score = of 10
clock-am = { $time } am
clock-pm = { $time } pm
span-minutes = { $minutes } min
span-hours = { $hours } h
span-hours-minutes = { $hours } h { $minutes }
span-days = { $days ->
    [one] one day
   *[other] { $days } days
}
date-long = { $weekday } { $day } { $month }
date-plain = { $day } { $month } { $year }
weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

## Supply

supply-subtitle = How much is made, and whether it holds
supply-nothing = Nothing to tell yet
supply-first-days = Day by day
supply-first-days-caption = In the first two weeks milk is coming in. Each day is shown by itself.
supply-first-days-why = It is still increasing, so an average would mislead.
supply-day-of-life = { $date }, day { $day }
supply-first-day = { $date }: about { $production }
supply-first-day-open = { $date }: not enough was written down
supply-nothing-caption = Supply shows here once sessions have their amounts. Three whole days are enough to begin.
supply-holding = Holding
supply-rising = Rising
supply-falling = Falling
supply-cannot-tell = Can’t tell yet
supply-figure = about { $production } a day
supply-range = { $low } to { $high }
supply-caption = { $range }, from { $complete ->
    [one] one complete day
   *[other] { $complete } complete days
} of { $days }.
supply-caption-since = { $range }, from { $complete ->
    [one] one complete day
   *[other] { $complete } complete days
} of { $days } since { $date }.
supply-less-since = Less since about { $date }
supply-more-since = More since about { $date }
supply-before = Before that about { $before } a day.
supply-since-then = Since then: { $word }. { $line }
supply-began = It began about { $date } ({ $earliest } to { $latest }).
supply-come-to = The amount above is for today, not for the whole time.
supply-rests-on-quiet = This assumes no session between { $from } and { $until }.
supply-hides-one = The session between { $from } and { $until } isn’t logged, so more is made than this.
supply-needs-days = { $complete ->
    [0] No day is complete enough yet.
    [one] One day is complete so far.
   *[other] { $complete } days are complete so far.
} { $more ->
    [one] One more is needed.
   *[other] { $more } more are needed.
}
supply-too-much-missing = Too many sessions seem to be missing in these days to say how much was made.
supply-course-needs = For its course { $more ->
    [one] one more complete day is
   *[other] { $more } more complete days are
} needed.
supply-observed = { $percent } % of the time was written down; the rest is left open, not counted as nothing.
supply-changed-within = It changed within these days; when is said below the picture.
supply-weeks-legend = Hatched: not observed. Dot: what was collected by the clock. Thick line: the course, in its range.
supply-hours-legend = Bar: the middle of the days. Thin line: where half of them lie.
supply-line-holding = Within { $band } % a week, up or down.
supply-line-rising = Each week about { $drift } a day more ({ $least } to { $most }).
supply-line-falling = Each week about { $drift } a day less ({ $least } to { $most }).
supply-line-between = Each week between { $low } and { $high } a day.
supply-span = Over
supply-span-days = { $days } days
supply-span-all = All
supply-aim-short = aim
supply-side-unknown = not measured apart often enough
supply-side-spoken = { $side }: { $figure } a day. { $word }.
supply-parts = By part of the day
supply-part = about { $rate } · { $word }
by-the-hour = { $volume } an hour
part-of-day-night = Night, 0 to 6
part-of-day-morning = Morning, 6 to 12
part-of-day-afternoon = Afternoon, 12 to 18
part-of-day-evening = Evening, 18 to 24
supply-hours = By the hour
supply-hours-spoken = Most is made about { $most_hour }, { $most }; least about { $least_hour }, { $least }.
supply-weeks-spoken-days = { $bars } days, { $counted } of them complete.
supply-weeks-spoken-weeks = { $bars } weeks, { $counted } of them with complete days.
supply-weeks-spoken-range = From { $least } on { $least_day } to { $most } on { $most_day }.
supply-weeks-spoken-course = The course goes from { $from } to { $to } a day.
supply-weeks-change = It last changed about { $date }.
supply-change-more = About { $size } a day more since { $date }
supply-change-less = About { $size } a day less since { $date }
supply-change-between = Some time from { $from } to { $to }.
supply-change-detail = { $least } to { $most }. { $when }
supply-beside = What else changed then; not that it was the cause:
supply-beside-none = Nothing else was written down for those days.
beside-pump = { $name }, a pump, came into use
beside-part = { $name }, a part, came into use
beside-flange = { $name } came into use
beside-fever = Fever
beside-fewer = Fewer sessions a day
beside-more = More sessions a day
beside-longer-gap = A longer gap on one side
beside-shorter-gap = A shorter gap on one side
beside-setting = Another usual level
beside-counts = { $before } before, { $after } after
beside-spans = { $before } before, { $after } after
supply-against = Held against
supply-now-share = Now { $percent } % of it.
supply-best = Your own best two weeks
supply-best-detail = { $production } a day, from { $date }. { $now }
supply-aim = Your aim
supply-set-aim = Set an aim
supply-aim-detail = { $production } a day. { $now } { $when }
supply-aim-met = It is met.
supply-aim-between = On this course between { $soonest } and { $latest }.
supply-aim-not-before = On this course not before { $soonest }; how much later can’t be told.
supply-aim-not-on-this-course = Not on this course.
supply-aim-cannot-tell = When can’t be told yet.
supply-intake-title = { $count ->
    [one] Published intake
   *[other] Published intake of { $count } children
}
supply-intake = About { $production } a day.
supply-intake-by-weight = By weight { $production }.
supply-intake-share = Children take { $range }. You make { $now } % of it ({ $least } to { $most } %).
supply-intake-no-range = Children differ too much at this age for a share.
supply-intake-needs-birth = For { $names } the birth date is needed.
supply-intake-needs-weight = For { $names } a recent weight is needed.
supply-intake-too-young = Too early for { $names }: what a child takes changes by the hour until day { $day }.
supply-intake-by-age = For term births, by age (Rios-Leyvraz and Yao 2023).
supply-intake-by-corrected-age = By age from the due date (Rios-Leyvraz and Yao 2023).
supply-intake-by-rule = { $each } for each kilogram: a feeding convention up to the day a child is due, or what your unit set. Your unit’s own figure comes first.
supply-volume = { $name }: volume on day { $day }
supply-volume-too-early = Day { $age } is too early to judge.
supply-volume-unknown = That day was not observed well enough to tell.
supply-volume-reached = It was { $volume }: at or above { $reached }.
supply-volume-between = It was { $volume }: between { $between } and { $reached }.
supply-volume-below = It was { $volume }: below { $between }.
supply-volume-source = From mothers of children born at less than 1500 g: { $reached } or more (Hoban 2018; Mago-Shah 2023 says more than). The band below is from memory. It may not fit a child who was heavier. Your unit’s own measure comes first.
supply-drop = Since about { $date } less milk than your usual: { $now } a day, before { $before }. Your consultant may want to know.
asks-missing = Between { $from } and { $until } a session may not be written down. Until it is clear, that time is left open.
asks-missing-add = Write it down
gap-is-whole = None was missed
asks-amount = At { $time }: is { $amount } right? It is far from the usual, and left out until it is clear.
amount-is-right = It is right
asks-quiet = Is there a session between { $from } and { $until }? None was logged in the last two weeks.
quiet-is-whole = No, none
quiet-hides-one = Yes, not logged
asks-double = Sessions that ended at { $first } and { $second } may be one, written down twice. It counts once until that is clear.
double-is-one = One: take the second out
double-is-two = They are two
asks-amount-open = Look at it
supply-figures = The figures behind
supply-figures-subtitle = For those who want to check
supply-figures-intro = Each figure with its range: nine in ten such ranges hold the truth. Days that are not complete are left out.
figures-of-both = Both sides
figures-of-left = Left
figures-of-right = Right
figures-of-night = Night, as if for 24 h
figures-of-morning = Morning, as if for 24 h
figures-of-afternoon = Afternoon, as if for 24 h
figures-of-evening = Evening, as if for 24 h
figures-rests-on = Rests on
figures-rests-on-detail = { $complete } complete of { $days } days; { $observed } % observed; { $doubtful } % of gaps in doubt
figures-level = A day
figures-value = { $value } ({ $range })
figures-slope = Slope, a day each week (Theil–Sen)
figures-slope-detail = { $value } ({ $low } to { $high }), { $points } points
figures-percent = The same in per cent
figures-percent-detail = { $value } % ({ $low } to { $high } %)
figures-trend = Trend test (Mann–Kendall, Hamed–Rao)
figures-trend-detail = S { $s }, tau { $tau }, p { $p }, variance × { $inflation }
figures-changes = Changes of level (PELT)
figures-change-detail = { $from } to { $to }: { $size } ({ $low } to { $high }), { $percent } %
figures-days = Day by day
figures-day = { $made } made, { $observed } % observed; { $clock } by the clock; { $emptyings } emptyings, longest gap on one side { $gap }
figures-day-left-out = Left out: { $made }, { $observed } % observed; { $clock } by the clock; { $emptyings } emptyings
figures-day-left-out-gap = Left out: { $made }, { $observed } % observed; { $clock } by the clock; { $emptyings } emptyings, longest gap on one side { $gap }
figures-rules = Rules
rules = Rules it goes by
rules-detail = each with its source; your consultant may change them
rule-shipped = As shipped: { $value }. { $source }, { $year }.
rule-shipped-from-memory = As shipped: { $value }. { $source }, { $year }, from memory.
date-short = { $day } { $month }

## Kit: pumps and gauges

fit-open = Which flange to try
fit-due = time to measure again
gauge-span = 0 to { $span }
gauge-class = class { $class }
pump-check = Check it with a gauge
pump-trace = Bring in a trace
pump-details = Details
pump-not-checked = Not checked yet
pump-not-checked-caption = A gauge tells what it pulls. Until then a level on its dial has no mmHg.
pump-in-short = { $date }: { $said }
pump-defers = The pump’s manual, and what your consultant says, come first.
side-one-port = One port
dial-left = L
dial-right = R
dial-legend = Wedge: where the truth lies nine times in ten.
dial-spoken = { $side }: { $value }, somewhere in { $range }.
dial-spoken-range = Held against { $range }.
dial-readings-spoken = { $count ->
    [one] One reading, { $last }.
   *[other] { $count } readings, the last { $last }.
}
limit-from = { $low } or more
limit-to = up to { $high }
limits-maker = { $range }, as its maker states
limits-personal = { $range }, usual for personal grade
limits-hospital = { $range }, usual for hospital grade
limits-any = { $range }, held good for any pump
verdict-meets-maker = Meets its maker’s range
verdict-meets-grade = Reaches what its grade usually does
verdict-meets-any = Within what is held good
verdict-below-maker = Below its maker’s range
verdict-below-grade = Below what its grade usually reaches
verdict-below-any = Below what is held good
verdict-above-maker = Above its maker’s range
verdict-above-grade = Above what its grade usually reaches
verdict-above-any = Above what is held good
verdict-cannot-tell = Can’t tell with this gauge
verdict-needs = Can’t tell yet: { $more ->
    [one] one more reading
   *[other] { $more } more readings
} of a side
verdict-gauge-unknown = Can’t tell: how far the gauge may be wrong is not known
verdict-end-of-span = Can’t tell: the gauge stood at its end
verdict-asks = A question first
side-range = { $side } { $range }
side-value = { $side } { $value }
checked-on = read on { $date }
chance-meets = { $side }: { $chance } likely within { $range }.
chance-below = { $side }: { $chance } likely below { $range }.
chance-above = { $side }: { $chance } likely above { $range }.
settles-readings = { $more ->
    [one] One more reading of each side
   *[other] { $more } more readings of each side
} would tell, if they come out like these.
settles-gauge = A gauge of class { $class } with the same span would tell.
settles-neither = It stands right at the limit: neither more readings nor a finer gauge would tell.
sides-alike = Left and right do not differ by more than readings do.
sides-left-more = Left pulls about { $by } more than right ({ $range }).
sides-right-more = Right pulls about { $by } more than left ({ $range }).
still-good = It still lies in what is held good for any pump, { $range }.
hand-exemption = A hand pump above { $limit }: in the United States 21 CFR 884.5150 frees hand pumps of a premarket notification only up to there. That is a limit of paperwork, not of safety.
not-delivered = Set to { $set }, read { $read }: more than { $limit } apart, so the vacuum that was set was not delivered.
height = The air pressed with { $air } hPa, { $share } % of that at sea level. A pump that holds a share of the air’s pressure and reads { $read } here would read { $level } at the sea; one that holds its vacuum would not. Nothing was corrected.
gauge-wrong-by = The gauge may be wrong by { $error } either way. { $count } readings, which repeat to within about { $spread }.
gauge-not-named = Which gauge it was, was not written down.
connected-dead-headed = Read closed, on the gauge alone: with a flange at the breast it is lower.
connected-with-flange = Read with the flange in use.
connected-unsaid = How the gauge was connected was not written down; closed it reads higher than at the breast.
parts-then = Parts in use then: { $names }.
ran-on-battery = Read while it ran on its battery.
asks-kilopascal = { $read } is little for a highest level. Was it kPa? That would be { $meant }.
meant-kilopascal = It was kPa
readings-are-right = It is right
asks-far-apart = These readings of one place lie far apart: { $range }. Is one mistyped?
asks-look = Look at it
section-levels = What its levels pull
section-wear = Over time
section-checks = Checks
section-traces = Traces
section-parts = Its parts
section-years = Its years
section-stock = Sizes in stock
section-measured = Measured
section-fit-left = Left
section-fit-right = Right
readings-count = { $count ->
    [1] one reading
   *[other] { $count } readings
}
ran = Ran { $hours } h in { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}
ran-at-least = Ran at least { $hours } h in { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}, some of unknown length
pump-age = In use since { $date }, { $months ->
    [one] one month
   *[other] { $months } months
}.
life-before = A personal grade motor lasts about { $from } to { $to } months (common practice).
life-within = A personal grade motor lasts about { $from } to { $to } months (common practice): it is in those years now.
life-beyond = A personal grade motor lasts about { $from } to { $to } months (common practice): it has run longer than most.
warranty-until = Warranty until { $date }.
warranty-was-until = The warranty ended on { $date }.
levels-from-check = From the check on { $date }. Sessions from that day on show their levels in this.
levels-new-part = Since then something is new ({ $names }): a level may pull differently now. A new check would tell.
levels-outside = Levels below the lowest and above the highest that were read are not known.
level-read = about { $value } ({ $range })
level-between = about { $value } ({ $range }), between levels read
levels-in-figures = In figures
level-in-figures = { $level }: { $value } ({ $low } to { $high })
level-in-figures-between = { $level }: { $value } ({ $low } to { $high }), between
levels-legend = Filled: read. Open: between levels that were read. Line: where the truth lies nine times in ten.
levels-spoken = From level { $first }, about { $low }, to level { $last }, about { $high }.
wear-legend = Round: left. Square: right. Line through a sign: the gauge’s error. Dashed: if it goes on so.
wear-spoken = { $count } points from { $from } to { $to }.
wear-came-back = { $side }: { $by } more on { $date }, after a new part ({ $part }). So it was the part.
wear-falls = { $side }: about { $by } less each month ({ $low } to { $high }), from { $checks } checks.
wear-rises = { $side }: about { $by } more each month ({ $low } to { $high }), from { $checks } checks.
wear-no-slope = { $side }: no slope that can be told from none ({ $low } to { $high } a month), from { $checks } checks.
wear-fell-within = { $side }: { $by } less than on { $date }. That is within what the gauge may be wrong by ({ $error }).
wear-fell-beyond = { $side }: { $by } less than on { $date }. That is more than the gauge may be wrong by ({ $error }).
wear-try-parts = Try new valves and membranes first, then check again.
wear-not-the-part = It did not come back with a new part ({ $part }): it may be the motor. Its maker or your consultant can look at it.
wear-left-out = { $count ->
    [one] One check was done in another way and is not held against these.
   *[other] { $count } checks were done in another way and are not held against these.
}
forecast-needs = { $side }: when the lower limit would be reached needs { $more ->
    [one] one more check
   *[other] { $more } more checks
}.
forecast-not-falling = { $side }: it does not fall.
forecast-reached = { $side }: it stands at its lower limit now.
forecast-not-in-sight = { $side }: at this rate not within ten years.
forecast-between = { $side }: at this rate it reaches its lower limit between { $soonest } and { $latest } (eight times in ten).
forecast-not-before = { $side }: at this rate it reaches its lower limit not before { $soonest }; how much later can’t be told.

check-needs-gauge = No gauge is written down. Without one it can’t be said how sure a reading is.
check-on = Check on { $date }
check-headline = { $side }, { $level }: reading { $number } of { $of }
check-all-read = All is read
at-left = the left side
at-right = the right side
at-one-port = the pump’s one port
check-step-connect = Connect the gauge to { $where }.
check-step-connect-closed = Connect the gauge to { $where }, closed, without a flange.
check-step-connect-flange = Connect the gauge to { $where }, with the flange in use.
check-step-again = Stop the pump, let the needle fall, and start it again.
check-step-level = Set the pump to { $level }.
check-step-wait = Wait until the needle climbs no higher, about ten cycles.
check-step-read = Read its highest, and write it down.
check-step-enough = Three readings of each side are enough to say how sure they are.
check-step-levels = Choose another level below to learn what it pulls.
check-reading = The gauge in { $unit }: { $side }, { $level }
check-near = Near what was read before
check-near-spoken = Write down { $value }
check-readings = Readings
check-no-readings = None yet.
check-correct = Correct or add
check-correct-detail = readings, height above the sea, air, a note
check-done = What it says
level-highest = Highest
level-highest-of = highest level ({ $level })
level-one = level { $level }
the-highest = its highest level
the-highest-of = its highest level ({ $level })
reading-label = { $side }, { $level }
reading-set = set to { $set }

## Kit: traces

trace-on = Trace on { $date }
trace-no-file = No file yet
trace-no-file-caption = A digital manometer writes time and pressure into a file (CSV). Thirty seconds show a pattern; a whole session shows where it changes.
trace-other-way = Found by another version
trace-other-way-caption = What was found in this trace cannot be read here. Its file, brought in again, can.
trace-pick = Choose its file
trace-spread = { $usual } ({ $low } to { $high })
trace-caption = Highest of a cycle { $peak }, resting { $rest }, over { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}.
trace-caption-part = Highest of a cycle { $peak }, resting { $rest }, over { $cycles ->
    [one] one
   *[other] { $cycles }
} of { $all } cycles.
trace-lost = Its pull fell from { $before } to { $after } within { $seconds ->
    [one] a second
   *[other] { $seconds } seconds
}, at { $at }
trace-lost-again = Its pull fell { $count } times; this was the first.
trace-lost-do = Was it turned down, or did the flange let air in? If not, look at tubing, valve and membrane before the motor.
trace-within-maker = Within its maker’s { $low } to { $high } cycles a minute
trace-slower-maker = Slower than its maker’s { $low } to { $high } cycles a minute
trace-faster-maker = Faster than its maker’s { $low } to { $high } cycles a minute
trace-within-usual = Within the usual { $low } to { $high } cycles a minute
trace-slower-usual = Slower than the usual { $low } to { $high } cycles a minute
trace-faster-usual = Faster than the usual { $low } to { $high } cycles a minute
trace-no-one-rate = It changes: there is no one rate
trace-one-pattern = One pattern all along.
trace-two-patterns = Two patterns: fast and light, then slow and strong. It first changes at { $at }.
trace-changes = The pattern changes, first at { $at }; which is letdown and which expression does not show.
trace-at-vacuum = { $percent } % of each cycle is spent at its vacuum.
trace-rise-release = It rises in { $rise } s and lets go in { $release } s (from a tenth to nine tenths).
trace-none-missed = No cycle is missed or weak.
trace-missed-weak = { $missed } % of the cycles are missed, { $weak } % are weak.
trace-stops = { $count ->
    [one] It stood still once.
   *[other] It stood still { $count } times.
}
trace-sinks = The highest vacuum sinks by { $by } each minute ({ $range }).
trace-rises = The highest vacuum rises by { $by } each minute ({ $range }).
trace-sinks-short = sinks by { $by } a minute
trace-rises-short = rises by { $by } a minute
trace-rest-rises = Over the trace the resting vacuum rose by { $by } ({ $range }), and the highest did not: it lets go less and less.
trace-zero-up = The gauge’s zero moved up by { $by } ({ $range }): vacuum is reckoned from it.
trace-zero-down = The gauge’s zero moved down by { $by } ({ $range }): vacuum is reckoned from it.
trace-steady = The highest vacuum neither rises nor sinks that could be told.
trace-leak = While it is held, vacuum sinks by { $by } ({ $low } to { $high }): a slow leak.
trace-no-leak = While it is held, vacuum does not sink that could be told.
trace-noise = The trace’s own noise is about { $noise }.
trace-no-noise = The trace has next to no noise of its own.
trace-offset-still = Before the first cycle the gauge stood at { $off }, not at zero. Nothing was taken off.
trace-offset-above = The trace goes above the air’s pressure by { $off }: the gauge’s zero may be off. Nothing was corrected.
trace-clipped = It is flat at { $at } for { $percent } % of the time: the gauge may end there, and the pump may pull more.
trace-spikes = { $count ->
    [one] One reading stands far out of the rest. It was left out.
   *[other] { $count } readings stand far out of the rest. They were left out.
}
trace-fastest = The gauge took { $readings } readings a second: cycles faster than { $rate } cannot be told from this file.
trace-dropouts = { $count ->
    [one] Once readings are missing,
   *[other] { $count } times readings are missing,
} { $seconds } s in all. They were left out.
trace-unread = For { $seconds } s the pressure moved without a cycle that could be told: the gauge may be too slow for that part.
trace-passed-over = { $count ->
    [one] One row could not be read, line { $line }.
   *[other] { $count } rows could not be read, the first in line { $line }.
}
trace-sign-turned = In the file vacuum stands below zero; here it is shown as so much below the air.
trace-time-seconds = The file does not say the unit of its times; they were taken as seconds.
trace-time-milliseconds = The file does not say the unit of its times; they were taken as milliseconds.
trace-time-microseconds = The file does not say the unit of its times; they were taken as microseconds.
trace-time-minutes = The file does not say the unit of its times; they were taken as minutes.
trace-times-spread = Several rows share a time; they were spread evenly.
trace-stretch = Stretch
trace-segment = { $phase }, { $from } to { $to }
trace-peak = highest { $peak }
trace-rest = resting { $rest }
trace-legend = Between lowest and highest vacuum, from left to right as it ran.
trace-close-legend = A few cycles from the middle, close up.
trace-close-spoken = { $seconds } seconds from its middle, close up.
trace-spoken = { $seconds } seconds, { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}, up to { $highest }.
section-trace-picture = As it ran
section-trace-close = Close up
section-trace-shows = What it shows
section-trace-phases = Its phases
section-trace-set-up = How it was taken
asks-trace-unit = The file does not say its unit. In which one is it?
bad-trace-no-cycles = Nothing in this file goes up and down as a pump does.
bad-trace-no-cycles-do = Look whether the pump was running, and whether another column holds the pressure.
bad-trace-few-cycles = There are too few cycles in this file.
bad-trace-few-cycles-do = Let the gauge record for a minute while the pump runs, and export that.
bad-trace-slow = The readings lie too far apart for the pump’s cycles.
bad-trace-slow-do = Let the gauge record ten times a second or more.

## Kit: flanges

fit-title = Flange
fit-subtitle = What to try, and what to look for
fit-not-measured = Not measured yet
fit-not-measured-caption = The nipple’s diameter before expressing, in mm, straight across at its base, gives the sizes to try.
fit-measure = Measure
fit-headline = Sizes to try
fit-side-figure = { $side } { $sizes }
fit-caption = The nipple’s diameter and { $least } to { $most } mm more. Advice differs between those two.
fit-comes-with = Pumps come with { $low } or { $high } mm; most people need smaller (common practice). It is the nipple that counts, not the breast.
fit-no-verdict = This says what to try, not what is right. Comfort decides, and your consultant’s eye.
fit-sides-differ = Left and right differ: measure both once more, and try each side by itself.
fit-measure-again = Measure again from { $date } on: nipples change in the first weeks.
fit-measure-again-now = It is time to measure again (since { $date }).
fit-measured = { $diameter } across: { $from } to { $to }.
fit-in-stock = In stock: { $sizes } mm. Begin with the smallest that does not rub.
fit-none-in-stock = None in stock lies within; the nearest is { $nearest }.
fit-no-stock = Which sizes are in stock is not written down.
fit-grew = It was { $by } wider after expressing.
fit-shrank = It was { $by } narrower after expressing.
fit-in-use-within = The flange in use, { $size }, lies within.
fit-in-use-smaller = The flange in use, { $size }, is smaller than these.
fit-in-use-larger = The flange in use, { $size }, is larger than these.
fit-try-smaller = Speaks for a smaller flange. Look whether it is less with one size down.
fit-try-larger = Speaks for a larger flange. Look whether it is gone with one size up.
fit-try-other = Speaks for another size, or for less vacuum. Try less vacuum first.
fit-not-seen = Looked for and not seen
fit-signs-open = Signs
fit-signs-open-detail = Nobody has looked yet: areola drawn in, rubbing, a pale or marked nipple, milk only at the highest vacuum.

## Traces

bad-trace-no-rows = There is no row with a time and a pressure in this file.
bad-trace-no-rows-do = Export the trace as text (CSV) with one column of times and one of pressures.
bad-trace-one-sample = There is only one reading in this file.
bad-trace-one-sample-do = Let the gauge record for a minute while the pump runs, and export that.
bad-trace-short = The trace is { $seconds } seconds long: no pattern shows in that.
bad-trace-short-do = Record for a minute. If it was longer, look whether the times are in the unit that stands over them.
bad-trace-long = The trace is longer than 24 hours.
bad-trace-long-do = Export one session by itself, and look whether the times are in the unit that stands over them.
bad-trace-constant = The pressure stays at { $value } all along.
bad-trace-constant-do = Look whether the tube was connected and the pump running, or whether another column holds the pressure.
bad-trace-steps = The readings lie { $step } seconds apart: no cycle can be seen in that.
bad-trace-steps-do = If the times are milliseconds, write (ms) over them. Else let the gauge record ten times a second or more.
bad-trace-back = The times run back in line { $line }.
bad-trace-back-do = Keep one recording in a file, in the order in which it was made.
bad-trace-mixed = From line { $line } on, the times seem to be in another unit: seconds and milliseconds are mixed.
bad-trace-mixed-do = Export the times in one unit, and write (s) or (ms) over them.
bad-trace-still = The time stands still in line { $line }.
bad-trace-still-do = Export the trace with times that count parts of a second.
bad-trace-commas = The commas in this file may part columns, or whole numbers from their decimals.
bad-trace-commas-do = Export it with semicolons or tabs between the columns, or with decimal points.
bad-trace-unit = The pressure is in { $unit }, which traces are not read in.
bad-trace-unit-do = Export it in mmHg, kPa, cmH₂O, mbar or hPa.
bad-trace-absolute = This seems to be absolute pressure: it stays near that of the air and never comes near zero.
bad-trace-absolute-do = Set the gauge to zero in the open air, so that it shows pressure below the air around (gauge pressure).
bad-trace-beyond = Line { $line } holds { $value }, which is more than the air around can give.
bad-trace-beyond-do = Look whether the unit over the column is the gauge’s own. A single wrong row can be taken out.

## Tonight

tonight-next = Next session
tonight-next-feed = Next, a feed
tonight-was-planned = Was planned for
tonight-in = in { $span }
tonight-now = now
tonight-ago = { $span } ago
tonight-late = When you are ready. The rest has moved along.
tonight-running = A session is running
tonight-running-since = For { $span }. The times after it are set when it ends.
tonight-how-many = How many sessions a day?
tonight-how-many-detail = Choose what you agreed on with your consultant. The night is planned from it, and you can change it at any time.
tonight-none = No session is planned
tonight-none-detail = If your breasts are full or hurt, express a little: comfort goes before the plan.
tonight-frame-alone = Nothing is written down yet. These times follow from what is set alone; they fit better with each session.
tonight-silence = Nothing was written down for { $span }. What was in between is not known; the times begin from now.
tonight-ask-reminders = Shall this device remind you of the next session?
alarms-inexact = This device lets no one call on the minute. Reminders may come some minutes late.
alarms-not-shown = This device does not show what Drawwell says. Reminders will not be seen until that is allowed in its settings.
tonight-block = Repeated short sessions

plan-earlier = Earlier
plan-earlier-detail = 15 min
plan-earlier-spoken = Plan the session of { $time } 15 minutes earlier
plan-later = Later
plan-later-detail = 15 min
plan-later-spoken = Plan the session of { $time } 15 minutes later
plan-snooze = In a while
plan-snooze-detail = 10 min
plan-snooze-spoken = Remind of the session of { $time } again in 10 minutes
plan-skip = Leave out
plan-skip-detail = this one
plan-skip-spoken = Leave the session of { $time } out

why-late = It was planned earlier.
why-by-hand = You moved it here.
why-stands = { $what }.
why-block = Repeated short sessions are set for this time.
why-keeps-longest = Else the gap would be { $without }; the longest is { $longest }.
why-in-the-night = { $count ->
    [one] One session in the night is asked for.
   *[other] { $count } sessions in the night are asked for.
}
why-before-sleep = Just before sleep, so that the sleep is long.
why-on-waking = On waking.
why-evenly = Evenly between its neighbours.

gives-way-longest = From { $from } to { $until } is { $by } more than the longest gap of { $longest }: nothing can be in between.
gives-way-shortest = From { $from } to { $until } is { $by } less than the shortest gap that is set.
gives-way-sleep = The longest sleep is { $longest }; { $wished } does not fit with the rest.
gives-way-night = { $planned } in the night; { $asked } were asked for.
gives-way-fewer = { $planned } sessions fit into the next day; { $wished } were wished for. Sleep and the gaps that are set go first.
gives-way-more = { $planned } sessions in the next day instead of { $wished }: the longest gap asks for it.
gives-way-point = { $what } at { $time }: no session fits into it.

night-legend = Pegs: sessions. Bands: sleep.
night-legend-water = Pegs: sessions. Bands: sleep. The line: about what the breasts hold, with its range.
night-spoken = The night from { $from } to { $until }: { $slept } of sleep, the longest { $longest }; { $count } sessions from two hours before it to two hours after.
night-figure-sleep = Sleep left
night-figure-sleep-detail = longest { $longest }
night-figure-milk = Milk by morning
night-figure-milk-detail = { $range }, by { $time }, counted from the session at { $from }
night-figure-milk-since-drop = It rests on the days since about { $date }, when less came.
night-figure-wakings = In the night
night-figure-wakings-detail = sessions to come
night-figure-spoken = { $title }: { $figure }, { $detail }

times = The times to come
times-next-day = { $time }, { $date }

night-choices = What a choice costs
night-choices-now = As planned, the longest sleep is { $longest }.
night-choice-sleep = One sleep of { $sleep }
night-choice-one-more = One session more in the night, the longest sleep then { $longest }
night-choice-less = About { $volume } less a day ({ $range }).
night-choice-more = About { $volume } more a day ({ $range }).
night-choice-no-difference = No difference that the record can show ({ $range } less a day).
night-choice-cannot-tell = Can’t tell yet: the record holds too few gaps this long.
night-choice-cannot = Does not fit: { $longest } is the most, with a longest gap of { $limit }.

refill = How milk comes back
refill-needs = Can’t tell yet. It takes { $count } sessions with their amounts from each side.
refill-rate = { $rate } just after a session ({ $low } to { $high }).
refill-rate-roughly = Roughly { $rate } just after a session ({ $low } to { $high }).
refill-flattens = It slows, and levels off at about { $level } ({ $range }).
refill-no-sign = No sign of slowing up to { $gap }.
refill-cannot-tell = Whether it slows can’t be told yet: that takes more gaps of different lengths, and longer than { $gap }.
refill-rests-on = From { $count } sessions in { $days } days.
refill-outside = { $side }: this is above the { $highest } that were published for one breast. Times and amounts may be worth a look.
refill-published = Published: 0 to 56 mL an hour for one breast, straight to about 6 h (Daly 1996); for mothers of preterm children, volumes level off from about 7 h (Lai 2020).

nights = Nights that were
nights-none = Nothing to look back on yet.
nights-longest = { $nights ->
    [one] In one night the longest gap was { $longest }.
   *[other] In { $nights } nights the longest gap was mostly about { $middle }; once { $longest }.
}
nights-within = { $within } of { $nights } were within { $limit }.
nights-unknown = { $nights ->
    [one] Of one night not enough is written down to know.
   *[other] Of { $nights } nights not enough is written down to know.
}
nights-limit = within { $limit }
nights-legend = A sign a night: its longest gap. The band: the longest gap that is set.
nights-spoken = { $nights } nights, each with its longest gap; the middle one { $middle }.

tonight-set = What is set
tonight-set-line = Your consultant’s word and your unit’s rules go before any of this.
rhythm = Your rhythm
rhythm-sessions = { $count } sessions a day ({ $origin }).
rhythm-longest = Longest gap { $longest } ({ $origin }).
rhythm-sleep = Sleep between { $from } and { $until } ({ $origin }).
rhythm-few = Fewer than { $least } a day. For mothers of preterm children Lai 2020 recommend at least { $least }. Your consultant knows what is right for you.
rhythm-few-early = Fewer than { $least } a day. In the first two weeks { $least } to 12 is the usual advice (from memory). Your consultant knows what is right for you.
rhythm-birth-unknown = No birth date is written down, so the shorter gap of the first days is kept.
set-birth = Add the birth date
origin-set = set
origin-as-done = as you do it
origin-rule = from a rule
origin-start = a starting value
fixed-point-when = { $from } to { $until }, { $days }
sessions-a-day-spoken = { $count } sessions a day
hand-over-calendar = Into a calendar
hand-over-calendar-detail = The plan as a file. Taken in again, it replaces the one before.

evidence = How often: what studies say
evidence-differs = They differ, and each looked at other mothers. The number is for you and your consultant.
evidence-five = Five or more recommended: beyond five no clear gain, gaps of no more than 7 h (25 mothers of preterm children)
evidence-five-hundred-minutes = Five or more, and over 100 minutes a day in all (32 mothers of preterm children)
evidence-six = Six or more did better than fewer (30 mothers expressing only)
evidence-eight = Eight or more
evidence-source = { $source }, { $year }
evidence-source-from-memory = { $source }; from memory

reminder-set-up = Session at { $time }
reminder-set-up-text = Time to get things ready.
reminder-due = It is { $time }: time for a session
reminder-due-text = One tap starts it.
reminder-late = The session of { $time }
reminder-late-text = When you are ready. It can also be left out.
calendar-name = Drawwell: sessions
calendar-session = Session
calendar-alarm = Time for a session
calendar-note = Planned by Drawwell. The plan moves with what is done; take the file in again for the present one.
calendar-handed-over = The plan is written as a calendar file.

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
## The visit sheet

sheet-heading = Visit sheet
sheet-open = See the visit sheet
sheet-open-detail = One or two pages for your consultant, as they go out
sheet-intro = This is what goes out. Leave out whatever you like.
sheet-intro-nothing = Nothing is on it yet but its sources. What you write down, or take in again, comes here by itself.
sheet-spoken = Visit sheet, { $span }. { $count ->
    [one] One part goes out.
   *[other] { $count } parts go out.
}
sheet-hand-over = Hand over the sheet
sheet-hand-over-detail = A PDF, { $paper }
sheet-handed-over = The sheet was handed over.
sheet-leave-out = Leave out
sheet-leave-out-spoken = Leave out: { $part }
sheet-take-in = Take in again
sheet-take-in-spoken = Take in again: { $part }
sheet-is-out = Left out. It is not on the page.
sheet-part-who = Name
sheet-part-child = Child
sheet-part-supply = Milk
sheet-part-sessions = Sessions and nights
sheet-part-comfort = Pain and settings
sheet-part-kit = Pump and kit
sheet-part-body = Cautions, temperature and signs
sheet-part-changes = What changed
sheet-part-questions = Questions
sheet-part-notes = Notes in your own words
sheet-section-who = Name
sheet-section-child = Child
sheet-section-observed = How much was observed
sheet-section-supply = Supply
sheet-section-rhythm = Sessions and gaps
sheet-section-nights = Nights
sheet-section-pain = Pain
sheet-section-settings = Settings used
sheet-section-pump = Pump check
sheet-section-kit = Kit in use
sheet-section-cautions = Cautions
sheet-section-signs = Temperature and signs
sheet-section-changes = What changed
sheet-section-questions = Questions
sheet-section-notes = Notes, in the parent’s words
sheet-section-left-out = Left out
sheet-section-sources = What this rests on
sheet-span = { $from } to { $to }
sheet-span-visit = Since the visit of { $from }, to { $to }
sheet-made = Made { $date }, { $time }
sheet-version = Drawwell { $version }. Every figure is worked out from what the parent wrote down. A range holds the truth nine times in ten.
sheet-foot = This is not a diagnosis. Local guidance and licensed care come first.
sheet-footer = Drawwell visit sheet. Not a diagnosis.
sheet-page = Page
sheet-undrawn = The sign { $sign } stands for letters that this page has no type for.
sheet-nothing = Nothing was written down in these days.
sheet-left-out = Left out by the parent: { $parts }.
sheet-of = { $some } of { $all }
sheet-from-to = { $low } to { $high }
sheet-days-complete = days complete
sheet-observed = of the time observed
sheet-sessions = sessions with expressing
sheet-amounts-unknown = amounts not known
sheet-doubtful = of gaps in doubt
sheet-sessions-a-day = Sessions and feeds at the breast, a day
sheet-longest-gap = Longest gap of a day, whichever side
sheet-longest-of-all = The longest
sheet-days-beyond = Days with more than { $limit }
sheet-born-at = born at { $weeks } weeks and { $days } days
sheet-corrected = corrected { $age }; { $born }
sheet-weight-on = { $weight } on { $date }
sheet-at = { $date }, { $time }
sheet-and-more = And { $count } more
sheet-and-earlier = And { $count } earlier
sheet-sign-times = { $sign } ({ $count })
sheet-caution-over = Over
sheet-pain-sessions = Sessions and feeds that hurt
sheet-pain-most = Most
sheet-pain-middle = In the middle
sheet-pain-scores = { $count ->
    [one] of one score
   *[other] of { $count } scores
}
sheet-pain-unsaid = It hurt, how much not said
sheet-pain-rest = { $count ->
    [0] Something was said of pain in every session.
    [one] In one session nothing was said of pain: that is not none.
   *[other] In { $count } sessions nothing was said of pain: that is not none.
}
sheet-pain-legend = Scores as they were said, 0 to 10. Round: left. Square: right. Diamond: both, or not said.
sheet-pain-spoken = { $count ->
    [one] One score of pain: { $high } of 10.
   *[other] { $count } scores of pain, from { $low } to { $high } of 10.
}
sheet-score = { $score } of 10
sheet-turned-down = Turned down for it
sheet-pump-phase = { $pump }, { $phase }
sheet-level = Level { $level }
sheet-vacuum-shown = the pump shows { $vacuum }
sheet-settings-unsaid = { $pump }: in { $count } of { $all } sessions nobody said what was set.
sheet-came-into-use = { $name } came into use
sheet-out-of-use = { $name } was put away
sheet-plan-part = Consultant’s plan: { $part }
sheet-plan-accepted = Accepted. { $said }
sheet-plan-left = Left as it was. { $said }
sheet-plan-by-hand = Schedule changed by hand
sheet-plan-changes = { $moved } moved, { $left_out } left out
sheet-source = { $source }, { $year }
sheet-source-from-memory = { $source }, { $year }, from memory
sheet-set-anew = Set anew for this family
sheet-rule = { $rule } { $value }
sheet-intake = published intake
sheet-intake-by-weight = the same by weight
sheet-intake-range = how far children differ
age-weeks = { $weeks ->
    [one] one week
   *[other] { $weeks } weeks
}{ $days ->
    [0] {""}
    [one] {" "}and one day
   *[other] {" "}and { $days } days
}
age-months = { $months } months
age-years = { $years } years
age-not-yet-due = { $days ->
    [one] one day before the due date
   *[other] { $days } days before the due date
}
