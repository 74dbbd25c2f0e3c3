### The night ahead.

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
