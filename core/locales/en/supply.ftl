### How much is made, and whether that holds.

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
asks-overlap = Sessions that ended at { $first } and { $second } overlap. Only the first counts until you say.
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
