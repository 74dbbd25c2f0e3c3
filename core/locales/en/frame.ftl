### What stands around every screen, and what was done, for undo.

app-name = Drawwell

## Places

place-now = Now
place-day = Day
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
redo-spoken = Do again: { $what }
dismiss = Close
nothing-to-undo = There is nothing to undo.
nothing-to-redo = There is nothing to do again.

## What was done, for undo

act-start = session started
act-finish = session ended
act-letdown = letdown
act-letdown-phase = letdown phase
act-expression-phase = expression phase
act-rest = rest
act-stronger = stronger
act-softer = softer
act-faster = faster
act-slower = slower
act-hurts = it hurts
act-turned-down = turned down
act-as-last-time = set as last time
act-pain = how much it hurt
act-amount = amount
act-amounts-done = amounts
act-amounts-later = amounts for later
act-measure = how it was measured
act-add = new entry
act-enter = correction
act-clear = cleared field
act-take-out = taken out
act-bring-back = brought back
act-bring-in = file brought in
act-gap-whole = no session was missed
act-gap-hides-one = a session was missed
act-amount-right = the amount is right
act-check = check begun
act-reading = reading
act-readings-right = readings are right
act-meant-in = unit
act-trace-in = trace brought in
act-plan-moved = session moved
act-plan-skipped = session left out
act-plan-snoozed = reminder put off
act-caution-dealt = caution dealt with
act-signs-still = signs still there
act-signs-gone = signs gone
act-since-before = how it is now
act-card-in = consultant’s key taken in
act-plan-in = plan taken in
act-plan-accepted = plan accepted
act-plan-left = plan left
act-leave-out = part left out
act-take-in = part taken in
