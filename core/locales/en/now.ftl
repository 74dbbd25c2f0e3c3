### The first screen: before a session, while it runs, and after it.

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
