### Comfort: searches, trials, and the rules they go by.

## Kinds

kind-search = Search for a comfortable setting
kind-trial = Two ways compared
mark-comfortable = Comfortable

## Forms

group-search = The search
group-trial = The comparison
group-comfort-rules = How comfort is judged

## Fields

field-searched = Searched for
field-search-side = Side
field-search-phase = Phase
field-beyond = Above what was comfortable before
field-search-ended = How it ended
field-way-a = Way A
field-way-b = Way B
field-differs = They differ in
field-trial-design = How they are compared
field-outcome = What decides
field-trial-sessions = Sessions planned
field-trial-ended = How it ended
choice-searched-vacuum = A comfortable vacuum
choice-searched-speed = A speed
choice-search-side-left = Left
choice-search-side-right = Right
choice-search-side-both = Both
choice-search-phase-letdown = Letdown phase
choice-search-phase-expression = Expression
choice-search-ended-found = A comfortable setting was found
choice-search-ended-as_planned = The highest setting of the plan was comfortable
choice-search-ended-nothing_hurt = Nothing hurt
choice-search-ended-all_hurt = The lowest setting hurt
choice-search-ended-pain_rose = Pain rose, and the pump rested
choice-search-ended-letdown_came = The letdown came
choice-search-ended-no_letdown = No letdown came
choice-search-ended-stopped = Stopped by hand
choice-differs-vacuum = Vacuum
choice-differs-speed = Speed
choice-differs-flange = Flange
choice-differs-pump = Pump
choice-differs-hands_on = Hands on the breast
choice-differs-other = Something else
choice-trial-design-sides = A side each, swapped by the draw
choice-trial-design-sessions = A session each, in drawn order
choice-outcome-amount = Amount
choice-outcome-time_to_most = Time to 80% of the milk
choice-outcome-pain = Pain
choice-outcome-letdown = Time to the first letdown
choice-trial-ended-finished = All planned sessions were done
choice-trial-ended-settled = The answer was clear before
choice-trial-ended-pain_rose = Pain rose
choice-trial-ended-caution = A caution came up
choice-trial-ended-changed = It was changed, and a new one began
choice-trial-ended-stopped = Stopped by hand

## Rules

field-comfortable-low = Most people express comfortably from
field-comfortable-high = Most people express comfortably up to
field-discomfort-from = Discomfort begins at
field-discomfort-rare = Discomfort is rare up to
field-comfort-sessions = Sessions needed to work out a comfortable vacuum
field-search-step = A search goes up by
field-search-speed-step = A search for a speed goes up by
field-search-pain = A search rests at pain of
field-milk-sessions = Sessions needed to compare milk with vacuum
field-milk-matters = A difference in milk matters from
field-pain-matters = A difference in pain matters from
field-minutes-matter = A difference in time matters from
field-trial-false = Chance of a wrong answer of a trial
field-trial-planned = Sessions planned for a trial
field-trial-pain-rise = A trial stops when pain rises by
field-suspect-in = Look at the flange: at the top level in
field-suspect-of = Out of the latest
field-stimulation-low = A letdown phase lasts from
field-stimulation-high = A letdown phase lasts up to
field-expression-low = An expression phase lasts from
field-expression-high = An expression phase lasts up to
field-letdowns-low = Letdowns in a session from
field-letdowns-high = Letdowns in a session up to

## Comfort

comfort-group = Comfort
comfort-title = Comfortable vacuum
comfort-subtitle = What gives milk without pain
comfort-headline = Comfortable up to about
comfort-cannot-tell = Can’t tell yet
comfort-at-least = at least { $setting }
comfort-caption = From { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
} in eight weeks. The ranges are below.
comfort-nothing-said = Set the pump by hand and say how it feels, in about { $sessions } sessions. Then this page can show what is comfortable.
comfort-of = { $side }, { $phase }
comfort-rests-on = From { $sessions ->
    [one] one session that says
   *[other] { $sessions } sessions that say
} a setting and how it felt.
comfort-level = level { $level }
comfort-levels = levels { $low } to { $high }
comfort-ceiling = It rarely hurts up to about { $setting }. Likely range: { $range }.
comfort-rare-up-to = It rarely hurt up to { $setting }, the most that was comfortable. There is no need to try more.
comfort-not-rare-from = It often hurt at { $setting }, the lowest in use.
comfort-change-today = Pain is a reason to change something today. Your consultant can help.
comfort-never-varied = The pump was always set about the same. So we can’t tell where it gets too much.
comfort-offer-search = A search can show it. While you pump, open this page and start one. You can stop at any time.
comfort-needs = It takes { $more ->
    [one] one more session
   *[other] { $more } more sessions
} in which you set the pump by hand and say how it feels.
comfort-weeks-to = Four weeks to { $date }
comfort-value = { $setting } ({ $range })
comfort-in-short = { $side }: likely { $range }, from { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}
sheet-section-comfort = Comfort
comfort-less-is-as-good = Less vacuum is just fine when it is comfortable.
comfort-pain-is-a-reason = Pain is a reason to change something today.
comfort-silent = { $sessions ->
    [one] One session does
   *[other] { $sessions } sessions do
} not say how it felt. We do not take that for comfortable.
comfort-band = usual
comfort-band-said = Most people pump in comfort at { $range } (common practice). It is only there to compare. It is not something to reach.
comfort-kent = Kent and others (2008) found 190.7 ± 8.8 mmHg in 23 people. The ± is likely a standard error. So it is no range to be in.
comfort-how = Settings that were only kept from last time do not count.
comfort-was-comfortable = comfortable
comfort-was-not = it hurt
comfort-legend = Each dot is a session: filled if comfortable, open if it hurt. Line: about where it begins to hurt, with its likely range. Dashes: how often it hurts.
comfort-picture-spoken = { $comfortable } dots are comfortable, { $hurt } hurt.
comfort-open-letdown = How soon milk lets down
comfort-open-kit = Pumps and flanges
section-comfort-background = What is usual
section-comfort-milk = Milk and vacuum

## The flange first

flange-first = Level { $top } of { $top } in most sessions: look at the flange before the vacuum.
flange-first-beside = It was so in { $at } of the last { $of }. A worn valve or a weak pump can do this too (common practice).

## Milk and vacuum

milk-rises = About { $share } more came at your higher settings, likely { $low } to { $high }.
milk-no-sign-of-more = No sign that more vacuum brings more milk ({ $low } to { $high }).
milk-less-at-higher = Less came at the higher settings: about { $share } less ({ $low } to { $high }). Less vacuum may bring more.
milk-never-varied = The pump was always set about the same, so we can’t tell whether more vacuum brings more.
milk-needs = Can’t tell yet whether more vacuum brings more milk. It takes about { $more ->
    [one] one more session
   *[other] { $more } more sessions
}.
milk-drawn = The settings were drawn by chance, so this is fair.
milk-chosen = You chose the settings yourself, so this may mislead. To know, compare two ways in drawn order.
milk-stronger-after-less = The pump was often set higher after less milk came. So this may mislead. To know, compare two ways in drawn order.
milk-rests-on = From { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}, each set against what comes after such a gap.
milk-above-ceiling = { $sessions ->
    [one] One session was
   *[other] { $sessions } sessions were
} above what is comfortable, and not counted.
milk-legend = More or less milk than at the middle setting, with its likely range.
milk-spoken = From { $first }, { $low }, to { $last }, { $high }, beside the middle setting.

## A plan

choice-plan-part-search = A search for comfort
choice-plan-part-trial = Two ways to compare
choice-use-or-try-at_most = Go no higher than this
group-plan-trial = The comparison
plan-setting-at-most = A setting to stay below
plan-search-how = While you pump, open Comfortable vacuum in Kit and start a search. You can stop at any time.
plan-above-comfortable = This is above what has been comfortable for you, about { $setting }. Less is fine too.
plan-above-comfortable-there = above what was comfortable, about { $setting }

plan-ceiling-passed = Your plan says to go no higher than { $setting } here. Less is just as good.
plan-ceiling-open = Open the plan
plan-ceiling-kept = Since { $date }: { $within ->
    [one] one session
   *[other] { $within } sessions
} at or below it, { $above } above. Not known in { $unknown }.
plan-ceiling-unknown = Since { $date } no session says a setting to compare.
plan-search-done = { $searches ->
    [0] No search since { $date } yet.
    [one] One search since { $date }.
   *[other] { $searches } searches since { $date }.
}

## A change that was no trial

section-comfort-changed = Before and after a change
changed-weaker = This is weaker than comparing in drawn order. Whatever else changed then is in it too.
changed-on = { $names }, from { $date }
changed-amount = Milk of a session
changed-amount-by = { $by } ({ $share }, likely { $low } to { $high }), from { $before } sessions before and { $after } after
changed-pain = Pain
changed-pain-by = { $by } (likely { $low } to { $high }), from { $before } sessions before and { $after } after
changed-letdown = Time to the first letdown
changed-letdown-by = { $by } (likely { $low } to { $high }), from { $before } sessions before and { $after } after
changed-beside-fact = { $what } ({ $detail })
changed-beside = Also changed then: { $names }.
changed-beside-none = Nothing else is noted for those days.

## Letdown

letdown-title = Letdown
letdown-subtitle = How soon milk lets down
letdown-headline = Time to the first letdown
letdown-caption = Likely { $low } to { $high }, from { $sessions } sessions with one marked in four weeks.
letdown-caption-few = From { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
} with one marked in four weeks: too few for a range.
letdown-none-marked = No letdown was marked in four weeks. Tap Letdown when you see or feel one.
letdown-number = Usually { $number ->
    [one] one letdown
   *[other] { $number } letdowns
} in a session, from { $sessions ->
    [one] one session that says so
   *[other] { $sessions } sessions that say so
}.
letdown-later = It comes about { $by } later than four weeks before ({ $low } to { $high }).
letdown-sooner = It comes about { $by } sooner than four weeks before ({ $low } to { $high }).
letdown-no-sign = No sign that it comes sooner or later than four weeks before.
letdown-later-unknown = Too few are marked to compare with four weeks before.
letdown-not-marked = { $sessions ->
    [one] One session has
   *[other] { $sessions } sessions have
} none marked. That does not mean there was none.
letdown-hours = { $from } to { $until }
letdown-usual-phases = Common practice: { $stimulationlow } to { $stimulationhigh } min in Stimulation, then { $expressionlow } to { $expressionhigh } min in Expression.
letdown-usual-number = Most sessions have { $low } to { $high } letdowns (common practice). Yours may be different, and that is fine.
letdown-not-felt = Many people do not feel a letdown.
letdown-offer-search = Which speed brings it sooner? Start a search here while the pump is in Stimulation. First note your pump’s speeds in Kit.
section-letdown-by = By setting, place and hour

## A search

search-start = Find a comfortable setting
search-start-speed = Find the speed that brings a letdown
search-try = Try { $setting }
search-back-to = Back to { $setting }
search-at = Now at { $setting }
search-how-is-it = At { $setting }: how is it?
search-hurts = It hurts
search-stop = Stop the search
search-found = { $setting } is comfortable, and the next one was not. The search is over.
search-as-before = { $setting } is as much as was comfortable before. There is no need for more.
search-nothing-hurt = Nothing hurt up to { $setting }. There is no need for more.
search-all-hurt = The lowest setting hurt. Please stop for now, and look at the flange. Your consultant can help.
search-rest = The pain is rising. Let the pump rest. Pain is a reason to change something today.
search-nothing-to-try = This pump has no settings to search.
search-as-planned = { $setting } is as high as your plan goes, and it is comfortable. The search is over.
search-letdown-came = At { $setting } the letdown came. The search is over.
search-speed = { $speed } a minute
search-speed-try = Try { $setting }, at a comfortable vacuum
search-speed-how-is-it = At { $setting }: letdown?
search-no-letdown-yet = Not yet
search-no-letdown = No letdown up to { $setting }. Faster may not help. Carry on with the one you like best.
search-speed-all-hurt = The slowest speed hurt. Please stop for now. Your consultant can help.
search-beyond = Search above it, if you want to

bad-search-plan = { $field }: your plan has a limit, and it is not known what your pump’s levels pull.
bad-search-plan-do = Check the pump with a gauge in Kit first. Or ask your consultant for a limit as a level.

## What has come so far

so-far-first = How much have you got so far, in all?
so-far-last = How much so far, in all? At { $at } it was { $amount }.
so-far-spoken = { $amount } so far
mark-so-far = { $amount } so far
act-so-far = amount so far
bad-so-far = { $field }: it was more than that before.
bad-so-far-do = If the earlier one was wrong, undo it first. Or set it right on the session’s page in Day.
bad-trial-sides = { $field }: both sides let down together, so a side each can’t be compared by time.
bad-trial-sides-do = Choose a session each, or let another thing decide.

## Two ways compared

kinds-trial = Two ways compared
add-trial = Compare two ways
trial-way = { $letter } ({ $name })
trial-title = { $a } and { $b }
trial-on-the-left = { $way } on the left
trial-next = Next: { $way }.
trial-open = Open the comparison
trial-runs = going on
trial-not-begun = Not begun yet
trial-not-begun-caption = Choose two ways and what decides. Then begin.
trial-how = Chance decides which way comes first. So neither has the better days.
trial-outcome-first = What decides is chosen first, so nobody picks it by the result.
trial-begin = Begin
trial-begin-detail = The order is drawn now, and kept.
trial-choose-first = First choose both ways, how they are compared and what decides.
trial-stop = Stop comparing
trial-better = { $way } comes out better
trial-no-difference = No difference that matters
trial-cannot-tell = Can’t tell which is better
trial-caption-milk = A less B: likely { $low } to { $high } (about { $share }), from { $pairs ->
    [one] one pair
   *[other] { $pairs } pairs
} of sessions.
trial-caption = A less B: likely { $low } to { $high }, from { $pairs ->
    [one] one pair
   *[other] { $pairs } pairs
} of sessions.
trial-caption-few = { $pairs ->
    [0] No pair of sessions
    [one] One pair of sessions
   *[other] { $pairs } pairs of sessions
} so far. That is too few for a range.
trial-minutes = { $minutes } min
trial-points = { $points } out of 10
trial-decides = What decides: { $outcome }.
trial-done-of = { $done } of { $planned } planned sessions are done.
trial-more = About { $more ->
    [one] one more session
   *[other] { $more } more sessions
} would show a difference that matters, four times out of five.
trial-not-followed = { $sessions ->
    [one] One session was
   *[other] { $sessions } sessions were
} not done as drawn. They count the way they were done.
trial-unknown-sessions = Of { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
} nobody noted how it was done. They do not count.
trial-adjusted = Amounts are set against what comes after such a gap.
trial-early = You may look at any time. The range allows for that.
trial-stops = It stops at once if pain rises or a warning comes up.
trial-session = { $number }, on { $date }
trial-as-drawn = { $way }, as drawn
trial-not-as-drawn = { $way }. Drawn was { $drawn }.
trial-not-known = { $drawn } was drawn. How it was done is not known.
trial-nap = NAP, A above B
trial-tau = Tau
trial-p = p, by drawing again, for one look
trial-plain = A less B as measured, gaps not counted
trial-this-session = Chance says: { $way }. How is it done?
trial-do-as-drawn = As drawn
trial-neither = Neither
trial-has-ended = A comparison is over. In Kit you can see why.
section-trial-order = Sessions so far
section-trial-figures = For consultants
bad-trial-unchosen = { $field }: please choose this first.
bad-trial-unchosen-do = Open the comparison in Kit and choose it there.
act-start-search = search started
act-search-at = setting of the search
act-stop-search = search stopped
act-comfortable = comfortable
act-begin-trial = comparison begun
act-trial-done = how it was done
act-stop-trial = comparison stopped
