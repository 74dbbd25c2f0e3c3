### How much is made, and whether it stays the same.

## Two spans of days

compare-open = Compare two periods
compare-open-detail = Since the last visit, or a week, with the same time before
compare-page = Compare
compare-since-visit = Since the last visit
compare-span = { $from } to { $until }
compare-against = compared with { $span }
compare-title = Then and now
compare-no-cause = Two things can change at the same time without one causing the other.
compare-two = { $now }; before: { $before }
compare-level = Milk a day
compare-more = More or less a day
compare-difference = { $value } (between { $low } and { $high })
compare-cannot-tell = Can’t tell yet
compare-needs-days = can’t tell yet, { $days } more days needed
compare-too-much-missing = can’t tell, too many sessions may be missing
compare-gap = Longest gap on one side
compare-pain = Highest pain logged
compare-pain-score = { $score } out of 10
compare-unknown = not known
compare-nothing = No milk was logged yet.

## Supply

supply-subtitle = How much you make, and how it changes
supply-nothing = Nothing to show yet
supply-first-days = Day by day
supply-first-days-caption = In the first two weeks your milk is coming in. Each day is shown by itself.
supply-first-days-why = It is still going up, so an average would mislead.
supply-day-of-life = { $date }, day { $day }
supply-first-day = { $date }: about { $production }
supply-first-day-open = { $date }: not enough was logged
supply-nothing-caption = Your supply shows here once sessions have amounts. Three full days are enough to start.
supply-holding = Steady
supply-rising = Rising
supply-falling = Falling
supply-cannot-tell = Can’t tell yet
supply-figure = about { $production } a day
supply-range = { $low } to { $high }
supply-caption = { $range }, from { $complete ->
    [one] one
   *[other] { $complete }
} of { $days } days.
supply-caption-all = { $range }, from { $days } days.
supply-caption-since = { $range }, from { $complete ->
    [one] one
   *[other] { $complete }
} of { $days } days since { $date }.
supply-less-since = Less since about { $date }
supply-more-since = More since about { $date }
supply-before = Before that, about { $before } a day.
supply-since-then = Since then: { $word }. { $line }
supply-began = It began about { $date } ({ $earliest } to { $latest }).
supply-come-to = The amount above is for today, not for the whole time.
supply-rests-on-quiet = This assumes no session between { $from } and { $until }.
supply-hides-one = The session between { $from } and { $until } isn’t logged, so you make more than this.
supply-needs-days = { $complete ->
    [0] No day has enough logged yet.
    [one] One day has enough logged so far.
   *[other] { $complete } days have enough logged so far.
} { $more ->
    [one] One more is needed.
   *[other] { $more } more are needed.
}
supply-too-much-missing = Too many sessions may be missing from these days to say how much you made.
supply-course-needs = To show a trend, { $more ->
    [one] one more day with enough logged is
   *[other] { $more } more days with enough logged are
} needed.
supply-observed = Your log covers { $percent }% of the time. A day counts once { $least }% of it is logged. The rest is left blank, not counted as zero.
supply-changed-within = It changed during this time. See when below.
supply-more = More about your supply
supply-more-detail = What changed, left and right, by the hour
supply-weeks-legend = Bars: milk made each day. Hatched: nothing logged. Dots: milk collected that day. Line: the trend.
supply-hours-legend = Bars: the median of your days. Thin lines: where half of your days are.
supply-line-holding = Steady: within { $band }% a week either way.
supply-line-rising = Each week about { $drift } a day more ({ $least } to { $most }).
supply-line-falling = Each week about { $drift } a day less ({ $least } to { $most }).
supply-line-between = Each week between { $low } and { $high } a day.
supply-span = Over
supply-span-days = { $days } days
supply-span-all = All
supply-aim-short = goal
supply-side-unknown = not measured separately often enough
supply-side-spoken = { $side }: { $figure } a day. { $word }.
supply-parts = By part of the day
supply-part = about { $rate } · { $word }
by-the-hour = { $volume } an hour
part-of-day-night = Night, 0 to 6
part-of-day-morning = Morning, 6 to 12
part-of-day-afternoon = Afternoon, 12 to 18
part-of-day-evening = Evening, 18 to 24
supply-hours = By the hour
supply-hours-spoken = You make most at about { $most_hour }, { $most }. You make least at about { $least_hour }, { $least }.
supply-weeks-spoken-days = { $bars } days, { $counted } of them with enough logged.
supply-weeks-spoken-weeks = { $bars } weeks, { $counted } of them with days that have enough logged.
supply-weeks-spoken-range = From { $least } on { $least_day } to { $most } on { $most_day }.
supply-weeks-spoken-course = The trend goes from { $from } to { $to } a day.
supply-weeks-change = It last changed about { $date }.
supply-change-more = About { $size } a day more since { $date }
supply-change-less = About { $size } a day less since { $date }
supply-change-between = Some time from { $from } to { $to }.
supply-change-detail = { $least } to { $most }. { $when }
supply-beside = What else changed then. It does not show the cause:
supply-beside-none = Nothing else was logged for those days.
beside-pump = You started using { $name }, a pump
beside-part = You started using { $name }, a pump part
beside-flange = You started using { $name }
beside-fever = Fever
beside-fewer = Fewer sessions a day
beside-more = More sessions a day
beside-longer-gap = A longer gap on one side
beside-shorter-gap = A shorter gap on one side
beside-setting = A different usual level
beside-counts = { $before } before, { $after } after
beside-spans = { $before } before, { $after } after
supply-against = Compared with
supply-now-share = Now { $percent }% of that.
supply-best = Your own best two weeks
supply-best-detail = { $production } a day, from { $date }. { $now }
supply-aim = Your goal
supply-set-aim = Set a goal
supply-aim-detail = { $production } a day. { $now } { $when }
supply-aim-met = You are there.
supply-aim-between = With this trend, between { $soonest } and { $latest }.
supply-aim-not-before = With this trend, not before { $soonest }. We can’t say yet how much later.
supply-aim-not-on-this-course = This trend does not lead there now.
supply-aim-cannot-tell = We can’t say yet when.
supply-intake-title = { $count ->
    [one] Intake in studies
   *[other] Intake in studies, { $count } children
}
supply-intake = About { $production } a day.
supply-intake-by-weight = Going by weight, { $production }.
supply-intake-share = You make { $now }% of the main figure, and { $least } to { $most }% of the range that children take ({ $range }).
supply-intake-no-range = Children of this age differ too much to give a percentage.
supply-intake-needs-birth = Please add the birth date of { $names }.
supply-intake-needs-weight = Please add a recent weight for { $names }.
supply-intake-too-young = Too early for { $names }. What a child takes changes by the hour until day { $day }.
supply-intake-by-age = For children born at term, by age (Rios-Leyvraz and Yao 2023).
supply-intake-by-corrected-age = By corrected age (Rios-Leyvraz and Yao 2023).
supply-intake-by-rule = Worked out with { $each } per kilogram a day, a usual feeding rule up to the due date, or your unit’s figure. Your unit’s own figure comes first.
supply-volume = { $name }: milk on day { $day }
supply-volume-too-early = Day { $age } is too early to compare.
supply-volume-unknown = Not enough was logged that day to say.
supply-volume-reached = { $volume } that day, within a band from studies of { $reached } or more.
supply-volume-between = { $volume } that day, within a band from studies of { $between } to { $reached }. Ask your unit before drawing conclusions.
supply-volume-below = { $volume } that day. A band from studies is { $between } to { $reached }. Ask your unit before drawing conclusions.
supply-volume-source = From families of children born under 1500 g: { $reached } or more (Hoban 2018; Mago-Shah 2023 says more than). The lower figure is from memory. The band may not fit a child who was heavier. Your unit’s own figure comes first.
supply-drop = Since about { $date }, less milk than usual for you: { $now } a day, { $before } before. Your consultant may want to know.
asks-missing = Was there a session between { $from } and { $until }? Until you say, that time stays blank.
asks-missing-add = Log it
gap-is-whole = No session
asks-amount = { $time }: is { $amount } right? It’s unusual for you, so it isn’t counted yet.
amount-is-right = Yes, it’s right
asks-quiet = Do you have a session between { $from } and { $until }? None was logged in the last two weeks.
quiet-is-whole = No, none
quiet-hides-one = Yes, not logged
asks-overlap = Sessions that ended at { $first } and { $second } overlap. Only the first counts until you say.
asks-double = Sessions that ended at { $first } and { $second } may be the same one, logged twice. They count as one until you say.
double-is-one = Same one: remove the second
double-is-two = Two sessions
asks-amount-open = Check it
supply-figures = The figures behind
supply-figures-subtitle = For anyone who wants to check
supply-figures-intro = Each figure has a range. Nine in ten such ranges include the true figure. Days without enough logged are not counted.
figures-of-both = Both sides
figures-of-left = Left
figures-of-right = Right
figures-of-night = Night, scaled to 24 h
figures-of-morning = Morning, scaled to 24 h
figures-of-afternoon = Afternoon, scaled to 24 h
figures-of-evening = Evening, scaled to 24 h
figures-rests-on = Based on
figures-rests-on-detail = { $complete } of { $days } days have enough logged; { $observed }% of the time is logged; { $doubtful }% of gaps may hide a session
figures-level = A day
figures-value = { $value } ({ $range })
figures-slope = Slope, a day each week (Theil–Sen)
figures-slope-detail = { $value } ({ $low } to { $high }), { $points } points
figures-percent = As a share
figures-percent-detail = { $value }% ({ $low } to { $high }%)
figures-trend = Trend test (Mann–Kendall, Hamed–Rao)
figures-trend-detail = S { $s }, tau { $tau }, p { $p }, variance × { $inflation }
figures-changes = Changes of level (PELT)
figures-change-detail = { $from } to { $to }: { $size } ({ $low } to { $high }), { $percent }%
figures-days = Day by day
figures-day = { $made } made, { $observed }% logged; { $clock } collected that day; { $emptyings } milk removals, longest gap on one side { $gap }
figures-day-left-out = Not counted: { $made }, { $observed }% logged; { $clock } collected that day; { $emptyings } milk removals
figures-day-left-out-gap = Not counted: { $made }, { $observed }% logged; { $clock } collected that day; { $emptyings } milk removals, longest gap on one side { $gap }
figures-rules = Rules
rules = Rules behind the answers
rules-detail = each with its source; your consultant can change them
rule-shipped = Default: { $value }. { $source }, { $year }.
rule-shipped-from-memory = Default: { $value }. { $source }, { $year }, from memory.
date-short = { $day } { $month }
