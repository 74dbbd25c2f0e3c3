### The visit sheet.

## The visit sheet

sheet-heading = Visit sheet
sheet-open = See the visit sheet
sheet-open-detail = One or two pages for your consultant, just as they will see them
sheet-intro = This is the page you share. Remove anything you like.
sheet-intro-nothing = Only the sources are on it for now. What you log, or put back, appears here by itself.
sheet-spoken = Visit sheet, { $span }. { $count ->
    [one] One part is on it.
   *[other] { $count } parts are on it.
}
sheet-hand-over = Share the sheet
sheet-hand-over-detail = A PDF, { $paper }
sheet-handed-over = The sheet was saved.
sheet-leave-out = Remove
sheet-leave-out-spoken = Remove: { $part }
sheet-take-in = Put back
sheet-take-in-spoken = Put back: { $part }
sheet-is-out = Removed. It is not on the page.
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
sheet-section-observed = How much was logged
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
sheet-section-left-out = Removed
sheet-section-sources = Sources
sheet-span = { $from } to { $to }
sheet-span-visit = Since the visit of { $from }, to { $to }
sheet-made = Made { $date }, { $time }
sheet-version = Drawwell { $version }. Every figure comes from what the parent logged. Nine times out of ten, the range includes the true figure.
sheet-foot = This is not a diagnosis. Local guidance and licensed care come first.
sheet-footer = Drawwell visit sheet. Not a diagnosis.
sheet-page = Page
sheet-undrawn = { $sign } marks letters that this page has no type for.
sheet-nothing = Nothing was logged in these days.
sheet-left-out = Removed by the parent: { $parts }.
sheet-of = { $some } of { $all }
sheet-from-to = { $low } to { $high }
sheet-days-complete = days with enough logged
sheet-observed = of the time logged
sheet-sessions = sessions with expressing
sheet-amounts-unknown = amounts not known
sheet-doubtful = of gaps may hide a session
sheet-sessions-a-day = Milk removals a day, median
sheet-minutes-a-day = Expressing a day, median
sheet-letdowns = Letdowns a session, median
sheet-letdowns-noted = noted in { $count } of { $all }
sheet-nipple = Nipple width
sheet-nipple-on = Measured { $date }
sheet-fit-signs = { $side }: { $signs }
sheet-fit-none = { $side }: checked, no signs seen
sheet-fit-none-at-all = checked, no signs seen
sheet-seen-by = Seen by
sheet-seen-on = On
sheet-longest-gap = Longest gap of a day, median
sheet-longest-of-all = The longest
sheet-days-beyond = Days with more than { $limit }
sheet-born-at = born at { $weeks } weeks and { $days } days
sheet-corrected = corrected age { $age }; { $born }
sheet-born-on = Born { $date }
sheet-born-on-weighing = Born { $date }, { $weight }
sheet-birth-weight = { $weight } at birth
sheet-gain = { $gain } a day over { $days ->
    [one] one day
   *[other] { $days } days
}
sheet-weight-on = { $weight } on { $date }
sheet-at = { $date }, { $time }
sheet-and-more = And { $count } more
sheet-and-earlier = And { $count } earlier
sheet-sign-times = { $sign } ({ $count })
sheet-caution-over = Over
sheet-pain-sessions = Sessions and feeds that hurt
sheet-pain-most = Highest
sheet-pain-middle = Median
sheet-pain-scores = { $count ->
    [one] of one score
   *[other] of { $count } scores
}
sheet-pain-unsaid = It hurt, no score given
sheet-pain-rest = { $count ->
    [0] Pain was noted in every session.
    [one] Pain was not noted in one session. That does not mean there was none.
   *[other] Pain was not noted in { $count } sessions. That does not mean there was none.
}
sheet-pain-legend = Pain scores, 0 to 10. Round: left. Square: right. Diamond: both or not noted.
sheet-pain-spoken = { $count ->
    [one] One pain score: { $high } out of 10.
   *[other] { $count } pain scores, from { $low } to { $high } out of 10.
}
sheet-score = { $score } out of 10
sheet-turned-down = Turned down for it
sheet-pump-phase = { $pump }, { $phase }
sheet-level = Level { $level }
sheet-level-of = Level { $level } of { $of }
sheet-vacuum-shown = the pump shows { $vacuum }
sheet-settings-unsaid = { $pump }: settings were not noted in { $count } of { $all } sessions.
sheet-came-into-use = Started using { $name }
sheet-out-of-use = Stopped using { $name }
sheet-plan-part = Consultant’s plan: { $part }
sheet-plan-accepted = Accepted. { $said }
sheet-plan-left = Declined. { $said }
sheet-plan-by-hand = Plan changed by hand
sheet-plan-changes = { $moved } moved, { $left_out } skipped
sheet-source = { $source }, { $year }
sheet-source-from-memory = { $source }, { $year }, from memory
sheet-set-anew = Changed for this family
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
