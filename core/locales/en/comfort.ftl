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
choice-search-ended-nothing_hurt = Nothing hurt
choice-search-ended-all_hurt = The lowest setting hurt
choice-search-ended-pain_rose = Pain rose, and the pump rested
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
