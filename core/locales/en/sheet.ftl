### The visit sheet.

## The visit sheet

sheet-heading = Visit sheet
sheet-open = See the visit sheet
sheet-open-detail = One or two pages for your consultant, as they go out
sheet-intro = This is what goes out. Leave out whatever you like.
sheet-intro-nothing = Nothing is on it yet but its sources. What you write down, or take in again, comes here by itself.
sheet-spoken = Visit sheet, { $span }. { $count ->
    [one] One part goes out.
   *[other] { $count } parts go out.
}
sheet-hand-over = Hand over the sheet
sheet-hand-over-detail = A PDF, { $paper }
sheet-handed-over = The sheet was handed over.
sheet-leave-out = Leave out
sheet-leave-out-spoken = Leave out: { $part }
sheet-take-in = Take in again
sheet-take-in-spoken = Take in again: { $part }
sheet-is-out = Left out. It is not on the page.
sheet-part-who = Name
sheet-part-child = Child
sheet-part-supply = Milk
sheet-part-sessions = Sessions and nights
sheet-part-comfort = Pain and settings
sheet-part-kit = Pump and kit
sheet-part-body = Cautions, temperature and signs
sheet-part-changes = What changed
sheet-part-questions = Questions
sheet-part-notes = Notes in your own words
sheet-section-who = Name
sheet-section-child = Child
sheet-section-observed = How much was observed
sheet-section-supply = Supply
sheet-section-rhythm = Sessions and gaps
sheet-section-nights = Nights
sheet-section-pain = Pain
sheet-section-settings = Settings used
sheet-section-pump = Pump check
sheet-section-kit = Kit in use
sheet-section-cautions = Cautions
sheet-section-signs = Temperature and signs
sheet-section-changes = What changed
sheet-section-questions = Questions
sheet-section-notes = Notes, in the parent’s words
sheet-section-left-out = Left out
sheet-section-sources = What this rests on
sheet-span = { $from } to { $to }
sheet-span-visit = Since the visit of { $from }, to { $to }
sheet-made = Made { $date }, { $time }
sheet-version = Drawwell { $version }. Every figure is worked out from what the parent wrote down. A range holds the truth nine times in ten.
sheet-foot = This is not a diagnosis. Local guidance and licensed care come first.
sheet-footer = Drawwell visit sheet. Not a diagnosis.
sheet-page = Page
sheet-undrawn = The sign { $sign } stands for letters that this page has no type for.
sheet-nothing = Nothing was written down in these days.
sheet-left-out = Left out by the parent: { $parts }.
sheet-of = { $some } of { $all }
sheet-from-to = { $low } to { $high }
sheet-days-complete = days complete
sheet-observed = of the time observed
sheet-sessions = sessions with expressing
sheet-amounts-unknown = amounts not known
sheet-doubtful = of gaps in doubt
sheet-sessions-a-day = Sessions and feeds at the breast, a day
sheet-longest-gap = Longest gap of a day, whichever side
sheet-longest-of-all = The longest
sheet-days-beyond = Days with more than { $limit }
sheet-born-at = born at { $weeks } weeks and { $days } days
sheet-corrected = corrected { $age }; { $born }
sheet-weight-on = { $weight } on { $date }
sheet-at = { $date }, { $time }
sheet-and-more = And { $count } more
sheet-and-earlier = And { $count } earlier
sheet-sign-times = { $sign } ({ $count })
sheet-caution-over = Over
sheet-pain-sessions = Sessions and feeds that hurt
sheet-pain-most = Most
sheet-pain-middle = In the middle
sheet-pain-scores = { $count ->
    [one] of one score
   *[other] of { $count } scores
}
sheet-pain-unsaid = It hurt, how much not said
sheet-pain-rest = { $count ->
    [0] Something was said of pain in every session.
    [one] In one session nothing was said of pain: that is not none.
   *[other] In { $count } sessions nothing was said of pain: that is not none.
}
sheet-pain-legend = Scores as they were said, 0 to 10. Round: left. Square: right. Diamond: both, or not said.
sheet-pain-spoken = { $count ->
    [one] One score of pain: { $high } of 10.
   *[other] { $count } scores of pain, from { $low } to { $high } of 10.
}
sheet-score = { $score } of 10
sheet-turned-down = Turned down for it
sheet-pump-phase = { $pump }, { $phase }
sheet-level = Level { $level }
sheet-vacuum-shown = the pump shows { $vacuum }
sheet-settings-unsaid = { $pump }: in { $count } of { $all } sessions nobody said what was set.
sheet-came-into-use = { $name } came into use
sheet-out-of-use = { $name } was put away
sheet-plan-part = Consultant’s plan: { $part }
sheet-plan-accepted = Accepted. { $said }
sheet-plan-left = Left as it was. { $said }
sheet-plan-by-hand = Schedule changed by hand
sheet-plan-changes = { $moved } moved, { $left_out } left out
sheet-source = { $source }, { $year }
sheet-source-from-memory = { $source }, { $year }, from memory
sheet-set-anew = Set anew for this family
sheet-rule = { $rule } { $value }
sheet-intake = published intake
sheet-intake-by-weight = the same by weight
sheet-intake-range = how far children differ
age-weeks = { $weeks ->
    [one] one week
   *[other] { $weeks } weeks
}{ $days ->
    [0] {""}
    [one] {" "}and one day
   *[other] {" "}and { $days } days
}
age-months = { $months } months
age-years = { $years } years
age-not-yet-due = { $days ->
    [one] one day before the due date
   *[other] { $days } days before the due date
}
