### The night ahead.

## Tonight

tonight-next = Next session
tonight-next-feed = Next, a feed
tonight-next-on = { $what }, { $day }
tomorrow = tomorrow
tonight-was-planned = Planned for
tonight-in = in { $span }
tonight-now = now
tonight-ago = { $span } ago
tonight-late = Start when you are ready. The later times have moved.
tonight-running = A session is running
tonight-running-since = For { $span } so far. The next times are set when it ends.
tonight-how-many = How many sessions a day?
tonight-how-many-detail = Choose what you agreed with your consultant. The night is planned around it. You can change it any time.
tonight-none = No session is planned
tonight-none-detail = If your breasts are full or hurt, express a little. Your comfort comes before the plan.
tonight-frame-alone = Nothing logged yet. These times come from your settings and get better with each session.
tonight-silence = Nothing logged for { $span }, so the plan starts again from now.
tonight-ask-reminders = Would you like a reminder before each session?
alarms-inexact = Your phone may delay reminders by a few minutes.
alarms-not-shown = Notifications are off. Turn them on in your phone’s settings to see reminders.
tonight-block = Power pumping

plan-earlier = Earlier
plan-earlier-detail = 15 min
plan-earlier-spoken = Plan the { $time } session 15 minutes earlier
plan-later = Later
plan-later-detail = 15 min
plan-later-spoken = Plan the { $time } session 15 minutes later
plan-snooze = Remind me
plan-snooze-detail = in 10 min
plan-snooze-spoken = Remind me of the { $time } session in 10 minutes
plan-skip = Skip
plan-skip-detail = this one
plan-skip-spoken = Skip the { $time } session

why-late = It was planned for earlier.
why-by-hand = You moved it here.
why-stands = You set this time: { $what }.
why-block = You set power pumping for this time.
why-keeps-longest = Without it you’d go { $without }. Your limit is { $longest }.
why-in-the-night = { $count ->
    [one] You asked for one session in the night.
   *[other] You asked for { $count } sessions in the night.
}
why-before-sleep = Right before bed, so you can sleep longer.
why-on-waking = For when you wake up.
why-evenly = Spaced evenly between sessions.

gives-way-longest = { $from } to { $until } is { $by } over your longest gap of { $longest }. No session fits in between.
gives-way-shortest = { $from } to { $until } is { $by } under your shortest gap.
gives-way-sleep = Your longest sleep can be { $longest }. With the rest of your plan, { $wished } does not fit.
gives-way-night = { $planned } planned in the night. You asked for { $asked }.
gives-way-fewer = { $planned } sessions fit into the next day. You wanted { $wished }. Your sleep and your gaps come first.
gives-way-more = { $planned } sessions in the next day, not { $wished }. Your longest gap needs them.
gives-way-point = { $what } at { $time }: no session fits into it.

night-legend = Pins: sessions. Blocks: sleep.
night-legend-water = Pins: sessions. Blocks: sleep. Curve: about how much milk has built up.
night-legend-opens = What the picture shows
night-spoken = The night from { $from } to { $until }. { $slept } of sleep, the longest { $longest }. { $count } sessions, counted from two hours before it to two hours after.
night-figure-sleep = Your sleep
night-figure-sleep-detail = longest { $longest }
night-figure-milk = Milk by morning
night-figure-milk-detail = { $range }, by { $time }, from the { $from } session on
night-figure-milk-since-drop = This uses the days since about { $date }, when less milk came.
night-figure-wakings = In the night
night-figure-wakings-detail = sessions to come
night-figure-spoken = { $title }: { $figure }, { $detail }

times = Times to come
times-next-day = { $time }, { $date }

night-choices = What a change would mean
night-choices-now = With this plan, your longest sleep is { $longest }.
night-choice-sleep = One sleep of { $sleep }
night-choice-one-more = One more session in the night, longest sleep { $longest }
night-choice-less = About { $volume } less a day ({ $range }).
night-choice-more = About { $volume } more a day ({ $range }).
night-choice-no-difference = Your log shows no clear difference ({ $range } less a day).
night-choice-cannot-tell = Can’t tell yet. Your log has too few gaps this long.
night-choice-cannot = Does not fit. With your longest gap of { $limit }, the most is { $longest }.

refill = How your milk builds up
refill-needs = Can’t tell yet. This needs { $count } sessions with an amount from each side.
refill-rate = { $rate } right after a session ({ $low } to { $high }).
refill-rate-roughly = Roughly { $rate } right after a session ({ $low } to { $high }).
refill-flattens = Then it slows, and levels off at about { $level } ({ $range }).
refill-no-sign = It does not seem to slow for up to { $gap }.
refill-cannot-tell = We can’t tell yet if it slows. That needs gaps of different lengths, some over { $gap }.
refill-rests-on = From { $count } sessions in { $days } days.
refill-outside = { $side }: this is more than the { $highest } found in a study for one breast. Please check the times and amounts.
refill-published = Studies: 0 to 56 mL an hour from one breast, steady for about 6 h (Daly 1996). In preterm families, milk levels off from about 7 h (Lai 2020).

nights = Past nights
nights-none = No past nights to show yet.
nights-longest = { $nights ->
    [one] Longest gap in one night: { $longest }.
   *[other] Longest gap in { $nights } nights: usually about { $middle }, at most { $longest }.
}
nights-within = { $within } of { $nights } were within { $limit }.
nights-unknown = { $nights ->
    [one] One night does not have enough logged to know.
   *[other] { $nights } nights do not have enough logged to know.
}
nights-limit = within { $limit }
nights-legend = Each mark: the longest gap of one night. Band: the longest gap set.
nights-spoken = { $nights } nights, each with its longest gap. The median is { $middle }.

tonight-set = Your settings
tonight-set-line = Your consultant’s advice and your unit’s rules come before this plan.
rhythm = Your schedule
rhythm-sessions = { $count } sessions a day ({ $origin }).
rhythm-longest = Longest gap { $longest } ({ $origin }).
rhythm-sleep = Sleep between { $from } and { $until } ({ $origin }).
rhythm-few = One study of preterm families suggests at least { $least } a day (Lai 2020). Your consultant knows what suits you.
rhythm-few-early = The usual advice for the first two weeks is { $least } to 12 a day (from memory). Your consultant knows what suits you.
rhythm-birth-unknown = There is no birth date yet, so the plan uses the shorter gap of the first days.
set-birth = Add the birth date
origin-set = set
origin-as-done = from your log
origin-rule = from a rule
origin-start = a starting value
fixed-point-when = { $from } to { $until }, { $days }
sessions-a-day-spoken = { $count } sessions a day
hand-over-calendar = Export to a calendar
hand-over-calendar-detail = A file with the plan. Import it again and it replaces the old plan.

evidence = What studies say about how often
evidence-differs = Studies differ, and each looked at different families. The number is for you and your consultant to choose.
evidence-five = Five or more, with gaps of no more than 7 h. No clear gain beyond five (25 preterm families).
evidence-five-hundred-minutes = Five or more, and over 100 minutes a day in total (32 preterm families).
evidence-six = Six or more did better than fewer (30 parents who only express).
evidence-eight = Eight or more.
evidence-source = { $source }, { $year }
evidence-source-from-memory = { $source } (from memory)

reminder-set-up = Session at { $time }
reminder-set-up-text = Time to get ready.
reminder-due = It is { $time }: time for a session
reminder-due-text = Open Drawwell to start.
reminder-late = Your { $time } session
reminder-late-text = Start when you are ready. You can skip it, too.
calendar-name = Drawwell: sessions
calendar-session = Session
calendar-alarm = Time for a session
calendar-note = Planned by Drawwell. The plan changes as you log. Export it again to bring your calendar up to date.
calendar-handed-over = The plan was saved as a calendar file.
