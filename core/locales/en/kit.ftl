### Pumps, gauges and flanges.

## Kit and family

kit-subtitle = What you pump with
kit-intro = Your pump’s own manual comes first. What you add here makes a gauge check more useful later.
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
pump-trace = Import a vacuum trace
pump-details = Details
pump-not-checked = Not checked yet
pump-not-checked-caption = Check it with a gauge to see what each level pulls, in mmHg.
pump-in-short = { $date }: { $said }
pump-defers = Your pump’s manual and your consultant’s advice come first.
side-one-port = One port
side-each = Left and right
dial-left = L
dial-right = R
dial-legend = Wedge: nine times out of ten, the true pull is inside it.
dial-spoken = { $side }: { $value }, likely { $range }.
dial-spoken-range = Compared with { $range }.
dial-readings-spoken = { $count ->
    [one] One reading, { $last }.
   *[other] { $count } readings, the last { $last }.
}
limit-from = { $low } or more
limit-to = up to { $high }
limits-maker = { $range }, from its maker
limits-personal = { $range }, usual for a personal-use pump
limits-hospital = { $range }, usual for a multi-user pump
limits-any = { $range }, good for any pump
verdict-meets-maker = Within its maker’s range
verdict-meets-grade = As strong as pumps of this type usually are
verdict-meets-any = Within the good range for any pump
verdict-below-maker = Below its maker’s range
verdict-below-grade = Weaker than pumps of this type usually are
verdict-below-any = Below the good range for any pump
verdict-above-maker = Above its maker’s range
verdict-above-grade = Stronger than pumps of this type usually are
verdict-above-any = Above the good range for any pump
verdict-cannot-tell = Can’t tell with this gauge
verdict-needs = Can’t tell yet: { $more ->
    [one] one more reading
   *[other] { $more } more readings
} of a side needed
verdict-gauge-unknown = Can’t tell: we don’t know how far off the gauge may be
verdict-end-of-span = Can’t tell: the gauge was at its end
verdict-asks = A question first
side-range = { $side } { $range }
side-value = { $side } { $value }
checked-on = read on { $date }
chance-meets = { $side }: { $chance } sure it is in range ({ $range }).
chance-below = { $side }: { $chance } sure it is below range ({ $range }).
chance-above = { $side }: { $chance } sure it is above range ({ $range }).
settles-readings = { $more ->
    [one] One more reading of each side
   *[other] { $more } more readings of each side
} would give an answer, if they come out like these.
settles-gauge = A gauge of class { $class } with the same scale would give an answer.
settles-neither = The pump is right at the limit. More readings or a finer gauge would not give an answer.
sides-alike = The readings show no difference between left and right.
sides-left-more = Left pulls about { $by } more than right ({ $range }).
sides-right-more = Right pulls about { $by } more than left ({ $range }).
still-good = It is still in the good range for any pump, { $range }.
hand-exemption = This manual pump reads above { $limit }. In the United States, manual pumps up to there need no premarket notification (21 CFR 884.5150). That is a limit for paperwork, not for safety.
not-delivered = Set to { $set }, read { $read }. They are more than { $limit } apart, so the pump did not give the vacuum it was set to.
height = Air pressure here is { $share }% of sea level. At sea level, some pumps would read about { $level }. Nothing was changed.
gauge-wrong-by = The gauge may be off by { $error } either way. Its { $count } readings agree to within about { $spread }.
gauge-not-named = The gauge used was not logged.
connected-dead-headed = Measured straight on the gauge. With a flange at the breast it is lower.
connected-with-flange = Measured with the flange in use.
connected-unsaid = How the gauge was connected was not logged. Straight on the gauge it reads higher than at the breast.
parts-then = Parts in use then: { $names }.
ran-on-battery = Measured while running on battery.
asks-kilopascal = { $read } is low for a highest level. Was it kPa? That would be { $meant }.
meant-kilopascal = It was kPa
readings-are-right = It is right
asks-far-apart = These readings of the same spot are far apart: { $range }. Is one mistyped?
asks-look = Check it
section-levels = What each level pulls
section-wear = Over time
section-checks = Checks
section-traces = Traces
section-parts = Its parts
section-years = Age and use
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
life-before = A personal-use motor lasts about { $from } to { $to } months (common practice).
life-within = A personal-use motor lasts about { $from } to { $to } months (common practice). Yours is at that age now.
life-beyond = A personal-use motor lasts about { $from } to { $to } months (common practice). Yours has run longer than most.
warranty-until = Warranty until { $date }.
warranty-was-until = The warranty ended on { $date }.
levels-from-check = From the check on { $date }. Sessions from that day on show their levels in mmHg or kPa.
levels-new-part = Since then you have new parts ({ $names }). A level may pull differently now. A new check will show.
levels-outside = Levels below the lowest and above the highest reading are not known.
level-read = about { $value } ({ $range })
level-between = about { $value } ({ $range }), between measured levels
levels-in-figures = In figures
level-in-figures = { $level }: { $value } ({ $low } to { $high })
level-in-figures-between = { $level }: { $value } ({ $low } to { $high }), between
levels-legend = Filled: measured. Open: between measured levels. Line: nine times out of ten, the true pull is on it.
levels-spoken = From level { $first }, about { $low }, to level { $last }, about { $high }.
wear-legend = Round: left. Square: right. Line through a mark: how far off the gauge may be. Dashed: if the trend goes on.
wear-spoken = { $count } points from { $from } to { $to }.
wear-came-back = { $side }: { $by } more on { $date }, after a new part ({ $part }). So it was the part.
wear-falls = { $side }: about { $by } less each month ({ $low } to { $high }), from { $checks } checks.
wear-rises = { $side }: about { $by } more each month ({ $low } to { $high }), from { $checks } checks.
wear-no-slope = { $side }: no clear change ({ $low } to { $high } a month), from { $checks } checks.
wear-fell-within = { $side }: { $by } less than on { $date }. That may just be the gauge, which can be off by { $error }.
wear-fell-beyond = { $side }: { $by } less than on { $date }. That is more than the gauge can be off by ({ $error }).
wear-try-parts = Try new valves and membranes first, then check again.
wear-not-the-part = It did not come back with a new part ({ $part }). It may be the motor. Its maker or your consultant can check it.
wear-left-out = { $count ->
    [one] One check was done in a different way and is not compared with these.
   *[other] { $count } checks were done in a different way and are not compared with these.
}
forecast-needs = { $side }: to say when it would reach its lower limit, { $more ->
    [one] one more check is
   *[other] { $more } more checks are
} needed.
forecast-not-falling = { $side }: it is not getting weaker.
forecast-reached = { $side }: it is at its lower limit now.
forecast-not-in-sight = { $side }: at this rate, not within ten years.
forecast-between = { $side }: at this rate it reaches its lower limit between { $soonest } and { $latest } (eight times out of ten).
forecast-not-before = { $side }: at this rate it reaches its lower limit not before { $soonest }. We can’t say yet how much later.

check-needs-gauge = No gauge added yet. Without one we can’t say how far off a reading may be.
check-on = Check on { $date }
check-headline = { $side }, { $level }: reading { $number } of { $of }
check-all-read = All readings done
at-left = the left side
at-right = the right side
at-one-port = the pump’s one port
check-step-connect = Connect the gauge to { $where }.
check-step-connect-closed = Connect the gauge to { $where }, sealed, without a flange.
check-step-connect-flange = Connect the gauge to { $where }, with the flange in use.
check-step-again = Stop the pump, let the needle drop, and start it again.
check-step-level = Set the pump to { $level }.
check-step-wait = Wait until the needle stops climbing. That takes about ten cycles.
check-step-read = Read the peak and log it.
check-step-enough = Three readings a side are enough to say how sure they are.
check-step-levels = Choose another level below to see what it pulls.
check-reading = The gauge in { $unit }: { $side }, { $level }
check-near = Close to the last readings
check-near-spoken = Log { $value }
check-readings = Readings
check-no-readings = None yet.
check-correct = Correct or add
check-correct-detail = readings, height above sea level, air pressure, a note
check-done = See the result
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
fit-not-measured-caption = Measure your nipple before expressing, in mm, straight across at its base. Then you see which sizes to try.
fit-measure = Measure
fit-headline = Sizes to try
fit-side-figure = { $side } { $sizes }
fit-caption = Your nipple’s width plus { $least } to { $most } mm. Advice varies within that.
fit-comes-with = Pumps come with { $low } or { $high } mm. Most people need a smaller size (common practice). Your nipple’s width counts, not the size of your breast.
fit-no-verdict = This shows what to try, not what is right. Your comfort decides, with your consultant’s help.
fit-sides-differ = Left and right differ. Measure both once more, and try each side by itself.
fit-measure-again = Measure again from { $date } on. Nipples change in the first weeks.
fit-measure-again-now = It is time to measure again (since { $date }).
fit-measured = { $diameter } wide: try { $from } to { $to }.
fit-in-stock = In stock: { $sizes } mm. Start with the smallest that does not rub.
fit-none-in-stock = No size in stock fits. The nearest is { $nearest }.
fit-no-stock = You have not added the sizes in stock yet.
fit-grew = It was { $by } wider after expressing.
fit-shrank = It was { $by } narrower after expressing.
fit-in-use-within = Your flange, { $size }, is in this range.
fit-in-use-smaller = Your flange, { $size }, is smaller than these.
fit-in-use-larger = Your flange, { $size }, is larger than these.
fit-try-smaller = The flange may be too big. Try one size smaller and see if this eases.
fit-try-larger = The flange may be too small. Try one size larger and see if this eases.
fit-try-other = This may mean another size, or less vacuum. Try less vacuum first.
fit-not-seen = Checked, and not seen
fit-signs-open = Signs
fit-signs-open-detail = Not checked yet: areola pulled into the tunnel, rubbing, a blanched or marked nipple, milk only at the highest vacuum.
