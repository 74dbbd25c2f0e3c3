### Pumps, gauges and flanges.

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
