### Which pump, before a gauge can touch it; gauges and their dates; a pump’s speed.

## Kinds

kind-wanted = What you want of a pump
wanted = What you want of a pump
kind-offered_pump = Pump on offer
kind-speed_count = Counting the speed
kinds-offered_pump = Pumps on offer
none-offered_pump = No pump added yet.
add-offered_pump = Add a pump on offer
act-tap = tap

## Fields

group-wanted = What you want
group-price = Price
group-decided = Your choice
group-calibration = Calibration
field-how-often = How often you will pump
choice-how-often-now_and_then = Now and then
choice-how-often-daily_at_work = Daily, at work
choice-how-often-nearly_all_milk = For nearly all of the milk
choice-how-often-neonatal_unit = For a child on a neonatal unit for long
field-weeks-wanted = For how many weeks
field-both-at-once = Both sides at once
field-must-run = Where it must run
choice-must-run-mains = On wall power
choice-must-run-battery = On battery
choice-must-run-in_clothes = In your clothes
field-sensitive-nipples = Sensitive nipples
field-letdown-needs-more = Letdown takes long
field-offered-how = How you would get it
choice-offered-how-new = New
choice-offered-how-second_hand = Second-hand
choice-offered-how-borrowed = Borrowed
choice-offered-how-rented = Rented
field-offered_pump-sides-at-once = Sides at once
field-offered_pump-maximum-vacuum-high = Maximum vacuum, to (or the one figure)
field-offered_pump-cycles-high = Cycle speed, to (or the one figure)
field-settings-apart = Vacuum and speed
choice-settings-apart-apart = Set separately
choice-settings-apart-together = Only set together
choice-settings-apart-vacuum_only = Only vacuum can be set
choice-settings-apart-none = Neither can be set
field-speed-steps = Steps of speed
field-speed-step = Step on the speed dial
field-stimulation-phase = Stimulation phase
field-in-clothes = Worn in your clothes
field-made-for = Made for
choice-made-for-one = One person
choice-made-for-several = Several people
field-milk-path = Way to the motor
choice-milk-path-open = Open: milk can get in
choice-milk-path-closed = Closed: milk can’t get in
field-motor-warranty = Warranty on the motor, in months
field-pump-weight = Weight of the pump
field-price = Price
field-currency = Currency
hint-currency = such as EUR or USD
field-price-for = The price is for
choice-price-for-all = All of it
choice-price-for-week = A week
choice-price-for-month = A month
field-decided = Your choice
choice-decided-chosen = This one
choice-decided-set_aside = Not this one
field-figures-are-right = The figures are right
field-serial = Serial number
field-calibrated-on = Calibrated on
field-calibration-due = Calibration due on
field-certificate = Certificate
hint-calibration-due = set by whoever owns the gauge
hint-certificate = its number, and the lab
field-trace-phase = Phase in the trace
choice-trace-phase-letdown = Stimulation alone
choice-trace-phase-expression = Expression
field-taps = Taps
field-likely-millibar = Ask about a stated maximum above
field-hospital-usual = Multi-user pump: mostly from
field-most-above = For nearly all of the milk: above
field-early-weeks = Letdown comes easiest for the first
field-stimulation-cycles-low = Cycle speed of a Stimulation phase, from
field-stimulation-cycles-high = Cycle speed of a Stimulation phase, to

## Troubles

bad-currency = A currency has three letters.
bad-currency-do = Type it as EUR, USD or GBP.
bad-due-before = A gauge can’t be due before it was calibrated.
bad-due-before-do = Check both dates.

## The page

offer-group = Before you get a pump
offer-title = Which pump
offer-subtitle = Side by side, from what their makers state
offer-lead-none = Compare pumps you may buy, borrow or rent
offer-lead = { $count ->
    [one] One pump added
   *[other] { $count } pumps side by side
}
offer-none = No pump to compare yet
offer-one = One pump so far
offer-several = { $count } pumps side by side
offer-open-wanted = What you want
offer-page = Share this as a page
offer-page-detail = A PDF, one side of A4
choice-handed-over = The page was saved.
offer-wants-nothing = You have not said what you want yet. That is fine.
offer-wants-both = Both sides at once
offer-wants-sensitive = Sensitive nipples
offer-wants-letdown = Letdown takes long
offer-weeks = { $count ->
    [one] one week
   *[other] { $count } weeks
}
offer-numbered = { $number } { $name }
offer-tick = { $number }
offer-tick-open = { $number } ?
offer-undecided = Open
offer-not-stated = Not stated.
offer-no-order = Pumps are in the order you added them. There is no score.
offer-not-known = What a maker does not state is not known. You can ask for it.
offer-more = More is not better. Most people are comfortable at { $range }, no matter how strong a pump is.
section-offer-picture = How strong each can get
section-offer-grade = The type it is sold as
section-offer-strength = Strong enough
section-offer-most-milk = For nearly all of the milk
section-offer-cycles = Cycle speed
section-offer-set-apart = Two separate settings
section-offer-stimulation = Stimulation phase
section-offer-both-at-once = Both sides at once
section-offer-runs = Where it runs
section-offer-motor = How long the motor lasts
section-offer-shared-use = Used by others
section-offer-facts = Other figures
section-offer-asks = What to ask the seller
section-offer-early = The first weeks
section-offer-pumps = The pumps
section-offer-claim = What it is sold as
section-gauges = Two gauges, one day
section-speed = Cycle speed
section-count-step = Step on the dial

## Found

offer-line = { $found }. { $says }
offer-found-fits = Fits
offer-found-partly = Fits in part
offer-found-does-not = Does not fit
offer-found-cannot-tell = Can’t tell
offer-found-not-stated = Not stated

## Rules

offer-rule-grade = Multi-user pumps reach { $hospital } or more, mostly { $usual }. Personal-use pumps reach { $personal }.
offer-stated-rule = { $good } is good for any pump. Below { $weak } the motor is weaker.
offer-stated-grade-rule = Pumps of that type reach { $range }.
offer-rule-most-milk = For nearly all of the milk, or a long stay on a unit: above { $above }.
offer-rule-cycles = Most pumps run at { $range }.
offer-rule-set-apart = It is best to set vacuum and speed separately. Each person needs a different pair.
offer-rule-sensitive = With sensitive nipples, try slower and with less vacuum.
offer-rule-stimulation = A Stimulation phase is fast and light. It helps to start a letdown.
offer-rule-both = You want both sides at once.
offer-rule-runs = You want: { $runs }.
offer-rule-motor = A personal-use motor lasts about { $from } to { $to } months. You plan for { $weeks }.
offer-rule-shared-use = A pump for one person is for that person alone. In a pump to share, milk can’t get to the motor.

## What is said of each

offer-ask-first = A question about its figures comes first.
offer-by-hand = Your hand sets that.
offer-no-claim = Its type is not stated.
offer-hospital-for-one = Called multi-user, but made for one person.
offer-claim-hand = A manual pump. Your hand sets the pull.
offer-claim-yes = Called { $grade }, states { $figures }.
offer-claim-partly = Called { $grade }, but only part of { $figures } gets there.
offer-claim-no = Called { $grade }, but states { $figures }.
offer-claim-open = Called { $grade }, states { $figures }, but not up to what.
offer-claim-not-stated = Called { $grade }, but states no vacuum.
offer-no-vacuum = No vacuum is stated.
offer-beyond = States { $figures }. That is more than any pump needs. More is not better.
offer-below = States { $figures }: below what is good for any pump.
offer-weak = States { $figures }: a weaker motor. It is enough for some in the first weeks.
offer-weak-in-part = States { $figures }: in part a weaker motor.
offer-weak-daily = Used daily, it works harder and wears out sooner.
offer-open-above = States { $figures }, but not up to what.
offer-good = States { $figures }: good for any pump.
offer-most-yes = States { $figures }.
offer-most-partly = Only part of { $figures } is above { $above }.
offer-most-no = States { $figures }, which is not above { $above }.
offer-cycles-all = { $figures }: all of the usual speeds.
offer-cycles-some = { $figures }: some of the usual speeds.
offer-cycles-none = { $figures }: none of the usual speeds.
offer-cycles-one-end = Only { $figures } is stated. The other end is not.
offer-stimulation-yes = It has one.
offer-stimulation-no = It has none.
offer-both-yes = It can.
offer-both-no = One side only.
offer-runs-yes = It does.
offer-runs-no = It does not.
offer-motor-one = Made for one person.
offer-motor-several = Made for many. There is no usual figure for its motor.
offer-motor-unknown = It is not stated for whom it is made.
offer-motor-used = Ask how many hours it has run.
offer-warranty = Its warranty: { $months } months.
offer-warranty-covers = Its warranty of { $months } months covers that.
offer-warranty-does-not = Its warranty of { $months } months ends before.
offer-shared-for-one = Made for one person. Milk of others may be inside, and nobody knows how long it ran.
offer-shared-open = Milk can get to its motor. It can’t be cleaned for you.
offer-shared-for-several = Made to share. Use your own new parts.
offer-shared-unknown = Not stated whether it is made to share.
offer-speed-steps = { $count ->
    [one] one speed
   *[other] { $count } speeds
}
offer-fact-warranty = { $months } months of warranty
offer-price-week = { $price } a week
offer-price-month = { $price } a month

## Asked

offer-asks-kilopascal = { $name }: { $read } is low for a maximum. Is it in kPa? That would be { $meant }.
offer-asks-millibar = { $name }: { $read } is more than pumps reach. Is it in mbar? That would be { $meant }.
offer-meant-millibar = It is mbar
offer-asks-currency = { $name }: in which currency is the price?
offer-ask-highest-vacuum = How strong is its vacuum at most, in mmHg?
offer-ask-up-to-which = Up to which vacuum does it go?
offer-ask-cycles = How many cycles per minute does it run, from and to?
offer-ask-set-apart = Can you set vacuum and speed separately?
offer-ask-stimulation = Does it have a Stimulation phase?
offer-ask-both-at-once = Can it pump both sides at once?
offer-ask-power = What does it run on?
offer-ask-in-clothes = Can you wear it in your clothes?
offer-ask-made-for = Is it made for one person, or to share?
offer-ask-milk-path = Can milk get to the motor?
offer-ask-hours-run = How many hours has it run?
offer-ask-warranty = How long is the warranty on its motor?

## The first weeks

offer-early-now = Until { $date }, letdown comes easiest. A weaker pump may be enough until then.
offer-early-over = Letdown came easiest until { $date }. A pump that was enough then may not be enough now.
offer-early-any = { $count ->
    [one] In the first week
   *[other] In the first { $count } weeks
}, letdown comes easiest. A weaker pump may be enough then.
offer-early-look = Later, look for this: letdown takes longer, less milk comes, or milk comes only at the top level. Tell your consultant.
offer-early-source = That is common practice, without a source.

## The picture and the page

offer-band-weak = { $range }: weaker motor
offer-band-personal = { $range }: personal-use
offer-band-hospital = { $range }: multi-user
offer-legend = Line: from the lowest to the highest stated, its middle marked. Open: no upper end stated. With a ?: nothing stated.
offer-spoken = { $name }: { $figures }.
offer-more-pumps = { $count ->
    [one] One more pump is in the record.
   *[other] { $count } more pumps are in the record.
}
offer-wanted-title = What you want, and what each states
offer-page-rules = About this page
offer-page-source = All rules here are common practice, without a source. All figures are the makers’ own. No gauge has checked them.
offer-page-footer = Drawwell: which pump. Not a diagnosis, and no advice on a maker.
offer-on-sheet = { $name } { $figures }
offer-not-as-called = { $figures }, called { $grade }
offer-as-typed = { $typed } ({ $read })
offer-unstated = nothing stated
offer-more-on-sheet = { $count ->
    [one] one more
   *[other] { $count } more
}
offer-choosing = Choosing a pump
pump-not-checked-stated = { $said } · { $stated }
offer-check-agrees = { $side }: the check agrees. It reaches { $low }.
offer-check-says-no = { $side }: the check says no. It does not reach { $low }.
offer-check-cannot-tell = { $side }: the check can’t tell if it reaches { $low }.

## Gauges

verdict-past-due = { $said }, if the gauge still reads right
gauge-past-due = The gauge’s calibration was due on { $date }. After that, don’t rely on the class on its face.
gauge-due = due { $date }
gauge-was-due = was due { $date }
gauges-agree = { $side }: { $one } and { $other } are { $by } apart. Both can be right: they may differ by { $allowed }.
gauges-differ = { $side }: { $one } and { $other } are { $by } apart. That is more than they may differ ({ $allowed }).
gauges-which = One pump can’t show which of two gauges is off. A calibration can.

## Speed

speed-apart = Vacuum and speed: { $how }.
speed-dial = { $count ->
    [one] Its speed has one step.
   *[other] Its speed has { $count } steps.
}
speed-step = Step { $step }
speed-by-trace = { $rate } ({ $range }), from a trace
speed-counted = { $rate } ({ $range }), counted
speed-count = Count its speed
count-begin = Tap along with the pump
count-begin-do = Tap once as each cycle starts, for { $cycles } cycles.
count-needs = { $more ->
    [one] One more tap
   *[other] { $more } more taps
}
count-needs-do = Keep going. More taps make it more exact.
count-uneven = A tap was missed or doubled
count-uneven-do = Start again, and tap once for each cycle.
count-range = Nine times out of ten, the true speed is { $range }.
count-tap = Tap
count-again = Start again
count-how = Set the pump to one step, let it run, and tap as the pull starts.

## Traces

trace-within-stimulation = Within the usual { $low } to { $high } cycles per minute of a Stimulation phase
trace-slower-stimulation = Slower than the usual { $low } to { $high } cycles per minute of a Stimulation phase
trace-faster-stimulation = Faster than the usual { $low } to { $high } cycles per minute of a Stimulation phase
trace-perhaps-stimulation = As fast as a Stimulation phase: { $low } to { $high } cycles per minute
asks-trace-phase = Does this trace show the Stimulation phase alone?
