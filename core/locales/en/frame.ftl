### What surrounds every screen, and what was done, for undo.

app-name = Drawwell

## Places

place-now = Now
place-supply = Supply
place-tonight = Tonight
ready-today = Today
place-kit = Kit
place-visit = Visit
place-family = Family
back = Back
undo = Undo
undo-spoken = Undo: { $what }
redo = Redo
redo-spoken = Redo: { $what }
dismiss = Close
nothing-to-undo = There is nothing to undo.
nothing-to-redo = There is nothing to redo.

## What was done, for undo

act-start = session started
act-other-side = side changed
act-finish = session ended
act-letdown = letdown
act-letdown-phase = Stimulation
act-expression-phase = Expression
act-rest = pause
act-stronger = stronger
act-softer = softer
act-faster = faster
act-slower = slower
act-hurts = it hurts
act-turned-down = turned down
act-as-last-time = same as last time
act-pain = how much it hurt
act-amount = amount
act-amounts-done = amounts
act-amounts-later = amounts for later
act-measure = how it was measured
act-add = new entry
act-enter = correction
act-clear = field cleared
act-take-out = entry removed
act-bring-back = entry restored
act-bring-in = file imported
act-gap-whole = no session missed
act-gap-hides-one = a session missed
act-amount-right = amount confirmed
act-check = check started
act-reading = reading
act-readings-right = readings confirmed
act-meant-in = unit
act-trace-in = trace imported
act-plan-moved = session moved
act-plan-skipped = session skipped
act-plan-snoozed = reminder delayed
act-caution-dealt = caution dealt with
act-signs-still = signs still there
act-signs-gone = signs gone
act-since-before = how it is now
act-give-consent = yes to being counted
act-withdraw-consent = your yes taken back
act-card-in = consultant’s key added
act-plan-in = plan imported
act-plan-accepted = plan accepted
act-plan-left = plan declined
act-leave-out = part removed
act-take-in = part put back

## What a word means

term-vacuum-ask = What is vacuum?
term-vacuum-is = Vacuum is how hard the pump pulls. It rises and falls with each cycle.
term-letdown-ask = What is a letdown?
term-letdown-is = A letdown is when your milk starts to flow. In one study there were about four in 15 minutes of pumping.
term-flange-ask = What is a flange?
term-flange-is = The flange is the funnel on your breast, with a tunnel for the nipple. Its size is the width of that tunnel, in mm.
term-mmhg-ask = What is mmHg?
term-mmhg-is = mmHg is a unit for vacuum, from the days of mercury gauges. 100 mmHg is about 13.3 kPa.
term-corrected-age-ask = What is corrected age?
term-corrected-age-is = Corrected age counts from the day a child was due. It is used for children born early, up to the age of three.
term-range-ask = What is a range?
term-range-is = A range says how far off a figure may be. Nine times out of ten, the true figure is inside it.
term-source = { $source }, { $year }
term-source-from-memory = { $source }, { $year } (from memory)
term-common-practice = Common practice, no source
