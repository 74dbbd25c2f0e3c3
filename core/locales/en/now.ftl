### The first screen: before a session, while it runs, and after it.

## First screen

welcome-headline = What came, and how it felt.
welcome-line-record = One tap starts a session. One tap ends it. Amounts can wait.
welcome-line-private = Everything stays on this device. No account, no network.
welcome-line-care = Drawwell keeps a log and does the sums. It does not diagnose. Your care team’s advice comes first.
welcome-begin = Start my record
welcome-look-around = Look around first
welcome-look-around-detail = with an invented family
welcome-bring-in = Import a record I have
looking-around = This is an invented family’s record.
leave-look-around = Leave

## Before a session

ready-since-last = since the last session
ready-first = nothing logged yet
ready-how = { $sides } · { $how }
start = Start
start-spoken = Start a session: { $how }
rested-spoken = { $side }: last used { $span } ago.
rested-unknown-spoken = { $side }: not used yet.
lacking = { $count ->
    [one] One session has no amount yet.
   *[other] { $count } sessions have no amount yet.
}
open-lacking = Add

## While a session runs

running-since = { $sides }, since { $time }
running-phase = { $phase } · { $span }
running-no-phase = running
running-of = { $caption } · of { $span }
strip-key-vacuum = Line: vacuum
strip-key-cycles = Dashes: speed
strip-key-letdown = Flag: letdown
strip-key-pain = Dot below: pain
running-spoken = { $span } so far. { $phase }.
running-now = running
finish = Finish
mark-letdown = Letdown
mark-letdown-spoken = Log a letdown, seen or felt
mark-letdown-phase = Stimulation
mark-letdown-phase-spoken = The pump is now in Stimulation, its letdown phase
mark-expression-phase = Expression
mark-expression-phase-spoken = The pump is now in Expression
mark-hurts = It hurts
mark-hurts-spoken = Log that it hurts
mark-change-side = Change side
mark-change-side-detail = to { $side }
mark-change-side-spoken = Change side: go on with { $side }
mark-other-side = Changed side
mark-rest = Pause
mark-rest-spoken = Pause: the pump is off for now
mark-resume = Resume
mark-resume-spoken = Resume Expression
mark-softer = Softer
mark-softer-spoken = Softer: less vacuum
mark-stronger = Stronger
mark-stronger-spoken = Stronger: more vacuum
mark-slower = Slower
mark-slower-spoken = Slower: fewer cycles per minute
mark-faster = Faster
mark-faster-spoken = Faster: more cycles per minute
dial-vacuum = Vacuum level
dial-vacuum-spoken = Vacuum level: { $value }
dial-vacuum-about = Vacuum level
    about { $value }
dial-vacuum-about-spoken = Vacuum level: { $level }, { $said }
dial-cycles = Cycles per minute
dial-last-time = { $dial }
    same as last time?
dial-last-time-spoken = { $dial }. This is from last time. Tap it if it is the same now.
strip-last-time = last time { $value }
dial-cycles-spoken = Cycles per minute: { $value }
dial-unset = not set
pain-down-label = Pump
pain-side-label = Side
pain-label = How much, 0 to 10
pain-turned-down = Turned it down
pain-turned-down-spoken = I turned the pump down because it hurt
pain-score-spoken = Pain { $score }, on a scale of 0 to 10
pain-unsaid = it hurt
turned-down-short = turned down
asks-ended = This session has been running for { $span }. When did it end?
ended-usual = At { $time }, my usual length
ended-last-mark = At { $time }, my last tap
still-running = Still going
alarm-running-title = Is your session still going?
alarm-running-text = You can end it at the time it really ended.
no-session-running = No session is running.
no-session-running-do = Start one, or log a past one in Day.

## Phases

phase-letdown = Stimulation
phase-expression = Expression
phase-rest = Pause

## The strip

strip-nothing = Nothing was logged during the session.
strip-spoken-length = A session of { $span }.
strip-spoken-phase = { $phase }, { $span }.
strip-spoken-no-letdown = No letdown was logged. There may have been some.
strip-spoken-letdowns = { $count ->
    [one] One letdown was logged.
   *[other] { $count } letdowns were logged.
}
strip-spoken-pains = { $count ->
    [one] It hurt once.
   *[other] It hurt { $count } times.
}
strip-spoken-turned-down = { $count ->
    [one] The pump was turned down once.
   *[other] The pump was turned down { $count } times.
}

## Amounts

amounts-title = What came?
amounts-subtitle = Drag the line up. You can do this later, too.
amounts-headline = What came?
amounts-caption = { $span } long
amounts-caption-unknown = Length not known
amounts-measured = Measured
amounts-each = Each side
amounts-together = Together
amounts-done = Done
amounts-later = Later
amount-draw = drag up
amount-less = Less
amount-less-spoken = A little less, { $side }
amount-less-fine = Less
amount-less-fine-spoken = A tiny bit less, { $side }
amount-more = More
amount-more-fine = More
amount-more-fine-spoken = A tiny bit more, { $side }
amount-type-spoken = Type the amount, { $side }
amount-more-spoken = A little more, { $side }
amount-say-unknown = Don’t know
amount-say-unknown-spoken = I don’t know the amount, { $side }
amount-say-later = Later
amount-spoken = { $side }: { $amount }.
amount-unknown = not known
amount-later = for later
amount-unsaid = not yet
amount-nothing-said = –
amount-and-unknown = { $volume } + ?
at-least = at least { $volume }

## What people do most

just-pumped = I just pumped
just-pumped-spoken = Log a session that is already over
set-up-spoken = Next session: { $how }. Tap to change it.
set-up-spoken-open = Next session: { $how }. Tap to close the choices.
today-nothing = nothing logged yet
today-line = { $figure } · { $sessions }
today-unknown = { $sessions }, { $unknown ->
    [one] one amount missing
   *[other] { $unknown } amounts missing
}
today-spoken = Open today: { $line }
ready-settings = Settings
ready-settings-spoken = Open settings: units, clock and more
pumped-ended = When did you finish?
pumped-ended-now = Just now
pumped-ended-ago = { $span } ago
pumped-ended-earlier = Earlier
pumped-lasted = How long did it take?
pumped-lasted-unknown = Don’t know

## After the first screen

starting-title = A few questions
starting-subtitle = You can skip any of them and change them later.
starting-skip = Skip
starting-units = How do you measure milk?
starting-units-line = You can type the other unit at any time, too.
starting-unit-mL = Milliliters (mL)
starting-unit-fozus = Fluid ounces (oz)
starting-birth = When was your child born?
starting-birth-line = The first days are shown day by day, and some signs mean more after a birth.
starting-birth-earlier = Earlier
starting-sessions = How many sessions a day have you agreed on?
starting-sessions-line = Tonight spaces them through the day. Skip this if you have not agreed on a number.

## The first session

lead-ready = Tap Start when you begin. You can leave everything else for later.
lead-running = Tap what happens, when it happens. Tap Finish at the end.
lead-amounts = Drag the water up to what came, or tap the figure to type it.
