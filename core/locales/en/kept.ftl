### Milk that is kept: the shelf, containers, rules, cleaning.

## Kinds

kind-container = Bottle of milk
kinds-container = Bottles of milk
none-container = No bottles noted.
add-container = Note a bottle
kind-milk_event = What happened to a bottle
kind-keeping = Rules for kept milk
keeping = Rules for kept milk
kind-cleaning = Parts cleaned

## Forms

group-kept = The bottle
group-keeping = Which rules
group-unit-keeping = Your unit’s rules
group-care = Care

## Fields

field-kept-in = Where
field-room-temperature = Room temperature
field-label = Label
field-container = Bottle
field-happened = What happened
field-taken = How much
field-thrown-out = Why
field-cleaned = How
field-keeping-rules = Rules to use
field-remind-of-milk = Remind me a day before milk needs using
field-unit-name = Name of the unit
field-unit-year = Year of its rules
field-unit-room = In the room
field-unit-cooler = In a cooler
field-unit-fridge = In the fridge
field-unit-freezer = Months in the freezer
field-unit-deep-freezer = Months in a deep freezer
field-unit-thawed = Thawed, in the fridge
field-unit-warmed = Warmed
field-unit-after-feed = After a feed
field-in-hospital = In hospital now
field-weak-defences = A doctor said their defences are weak
choice-kept-in-room = Room
choice-kept-in-cooler = Cooler with ice
choice-kept-in-fridge = Fridge
choice-kept-in-freezer = Freezer
choice-kept-in-deep_freezer = Deep freezer
choice-happened-moved = Moved
choice-happened-thawing = Starting to thaw
choice-happened-thawed = Fully thawed
choice-happened-warmed = Warmed
choice-happened-begun = Feed started
choice-happened-feed_ended = Feed ended
choice-happened-given = Given
choice-happened-given_away = Given away
choice-happened-thrown_out = Thrown out
choice-happened-lost_in_power_cut = Lost in a power cut
choice-thrown-out-past_its_time = Past its time
choice-thrown-out-left_over = Left over
choice-thrown-out-smelled_off = Smelled off
choice-thrown-out-spilled = Spilled
choice-thrown-out-other = Another reason
choice-keeping-rules-home_2017 = Home rules
choice-keeping-rules-older_2010 = Older home rules
choice-keeping-rules-unit = Your unit’s rules
choice-cleaned-washed = Washed
choice-cleaned-sanitised = Sanitised

## The shelf

kept-title = Kept milk
kept-subtitle = What you have, and how long it keeps
kept-nothing = No kept milk
kept-how-to-begin = After a session, tap where the milk goes. It then shows up here.
kept-headline = Milk to use
kept-caption = In { $bottles ->
    [one] one bottle
   *[other] { $bottles } bottles
}.
kept-caption-partly = In { $bottles ->
    [one] one bottle
   *[other] { $bottles } bottles
}. The amount in { $unknown } is not known and not in the sum.
kept-in-short = { $amount } in { $bottles ->
    [one] one bottle
   *[other] { $bottles } bottles
}
kept-open = Open kept milk
kept-name = Bottle { $label }
kept-no-label = Bottle without a label
kept-amount-unknown = amount not known
kept-somewhere = Place not known
kept-row = { $name }: { $amount }
kept-more = and { $more } more
kept-legend = Each bottle is as full as it is. Dots: use within a day. Crossed out: past its time.
kept-spoken = From the front: { $each }.
kept-spoken-one = { $name } with { $amount }
section-shelf = Your shelf
kept-when = { $date }, { $time }
kept-until = Good until: { $when }
kept-best-until = Best by { $when }, fine until { $acceptable }
kept-past-best = Best before { $when }, still fine until { $acceptable }
kept-until-feed-goes-on = Good until: { $when }, counted from when the feed started
kept-past = Past its time since: { $when }
kept-lapsed-before = Past its time before it was moved, since: { $when }
kept-place-unknown = Note where it is, to see how long it keeps
kept-too-warm = The room is warmer than the rules cover
kept-not-in-the-rules = Your rules do not cover this
kept-still-thawing = Its time starts once it is fully thawed
kept-frozen-again = Frozen again after thawing: please do not use it
kept-units-rules = Ask your unit how long it keeps
kept-clock-room = Counted from when it was pumped, in the room.
kept-clock-cooler = Counted from when it went into the cooler.
kept-clock-fridge = Counted from when it was pumped, in the fridge.
kept-clock-freezer = Counted in months from when it was pumped.
kept-clock-deep-freezer = Counted in months from when it was pumped.
kept-clock-thawed = Counted from when it was fully thawed.
kept-clock-warmed = Counted from when it was warm or back in the room.
kept-clock-after-feed = Counted from the end of the feed.
kept-thawing = { $place }, thawing
kept-thawed = { $place }, thawed
kept-lapse-this-week = { $bottles ->
    [one] One bottle needs
   *[other] { $bottles } bottles need
} using within a week. The first: { $when }.
kept-lapses-today = { $bottles ->
    [one] A bottle is
   *[other] { $bottles } bottles are
} best used within a day: { $amount }.
kept-lapses-today-partly = { $bottles ->
    [one] A bottle is
   *[other] { $bottles } bottles are
} best used within a day. Not every amount is known.
kept-lasts = { $amount } frozen is enough for about { $days } days ({ $low } to { $high }), going by what babies of that age drink.
kept-lasts-unknown = { $amount } is frozen. To see for how many days, it takes a birth date under Family, and an age that studies cover.
kept-two-labels = Two bottles have label { $label }. Please give one a new label.
kept-past-their-time = { $bottles ->
    [one] One bottle is
   *[other] { $bottles } bottles are
} past the time in the rules.
kept-past-what-now = By these rules it is past its time. If you are not sure, ask your consultant or unit.
kept-note-the-end = Tap Feed ended when the feed is over.
kept-odd-in-future = This was pumped in the future, going by the clock. Please check the time.
kept-odd-before-expressed = Something happened to it before it was pumped. Please check the times.
kept-odd-thawed-before-frozen = It thawed but was never frozen. Please check what is noted below.
kept-odd-frozen-again = It was frozen again after it thawed.
kept-odd-after-gone = Something was noted after it was empty. Please check below.
kept-odd-taken-twice = { $amount } more came out than went in. It may be noted on two phones.

## A container

kept-expressed = Pumped: { $when }
kept-is-gone = This bottle is empty
kept-correct = Correct this bottle
kept-give-all = Given, all of it
kept-give-some = Given, { $amount }
kept-moved-to = Moved: { $place }
section-kept-give = Give it
section-kept-move = Move it
section-kept-state = Thaw and warm
section-kept-out = Not used
section-kept-history = What happened
keep-label = Keep in
keep-kept = It is in
keep-spoken = All of it into one bottle: { $place }
keep-pour = { $bottle }
keep-pour-spoken = All of it into { $bottle }

## What to use first

kept-use-first = What to use first
kept-use-first-detail = For the amount you need
kept-use-first-subtitle = What needs using first, with the least left over
use-first-bottles = { $bottles ->
    [one] Use this bottle
   *[other] Use these { $bottles } bottles
}
use-first-over = { $amount } is left over.
use-first-exact = Nothing is left over.
use-first-not-enough = That is all there is.
use-first-how = The bottle that needs using first is always in it. The others are picked so that the least is left over.
section-wished = How much you need
section-use-these = Use these

## Rules

section-kept-rules = Rules
kept-by-rules-of = { $name }: { $source }, { $year }
kept-by-rules-year = { $name }, { $year }
kept-by-rules-source = { $name }: { $source }
kept-by-rules = { $name }
kept-source-from-memory = { $source }, from memory
kept-units-rules-not-entered = Your unit’s rules are not entered yet.
kept-unit-goes-before = For your baby, your unit’s rules come first.
kept-steps-back-hospital = Your baby is in hospital, so your unit’s rules apply. Ask for them and enter them under Rules.
kept-steps-back-preterm = Your baby came early, so your unit’s rules apply. Ask for them and enter them under Rules.
kept-steps-back-defences = Home rules are not made for a baby with weak defences. Ask your doctor or unit, and enter their rules.
kept-sources-differ = Sources differ. One set of rules is used as a whole, and none are mixed.
kept-defers = What your consultant, doctor or unit says comes first.
kept-choose-rules = Choose or enter rules
kept-set = Room { $room }, fridge { $fridge }, freezer { $freezer }
kept-months = { $months ->
    [one] one month
   *[other] { $months } months
}
kept-not-said = not said

## Cleaning

section-cleaning = Clean parts
cleaning-each-time = After each use: rinse, wash in hot soapy water in a bowl of their own, and let them dry in the air.
cleaning-boil = To sanitise: take the parts apart and boil them for 5 minutes (CDC). Check your pump’s manual first.
cleaning-daily = For your baby’s age or health: sanitise once a day.
cleaning-defers = Your unit’s rules come first.
cleaning-done = Today at { $time }
cleaning-not-yet = Not yet today

kept-reminder-title = Kept milk
kept-reminder-text = A bottle needs using by tomorrow.

## Labels

section-labels = Print labels
labels-title = Labels for kept milk
labels-how = Scan the code with your phone’s camera to open the bottle.
labels-a4-24 = A4, 24 on a page
labels-a4-65 = A4, 65 on a page
labels-letter-30 = Letter, 30 on a page
labels-strip = Single strips
labels-code = Code that opens { $name }
labels-handed-over = Labels saved.
bad-bottle = No bottle with this code is noted here.
bad-bottle-do = It may be in another family’s record, or on another phone.

## Acts

act-keep-milk = milk kept
act-pour-into = milk poured together
act-milk = bottle
act-cleaned = parts cleaned

## Trouble

bad-nothing-to-keep = { $field }: there is no milk left to keep from this session.
bad-nothing-to-keep-do = Enter the amount first. Or look whether it is in a bottle already.
bad-pour = This milk can’t go into that bottle: it was frozen, or it is empty.
bad-pour-do = Use a new bottle.
bad-pour-unknown = It is not known how much is in that bottle.
bad-pour-unknown-do = Enter its amount first. Or use a new bottle.
bad-frozen-again = Thawed milk is not frozen again.
bad-frozen-again-do = Keep it in the fridge and use it within the time shown.
bad-not-frozen = Only frozen milk can thaw, and this is not frozen.
bad-not-frozen-do = If it was frozen, note that first under Move it.
bad-milk-gone = This bottle is empty already.
bad-milk-gone-do = Look below at what happened to it. You can undo the last tap.
bad-more-than-there-is = There is less than that in the bottle.
bad-more-than-there-is-do = Choose a smaller amount, or all of it.
