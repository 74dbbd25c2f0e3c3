### Traces of pressure.

## Kit: traces

trace-on = Trace on { $date }
trace-no-file = No file yet
trace-no-file-caption = A digital manometer writes time and pressure into a file (CSV). Thirty seconds show a pattern; a whole session shows where it changes.
trace-other-way = Found by another version
trace-other-way-caption = What was found in this trace cannot be read here. Its file, brought in again, can.
trace-pick = Choose its file
trace-spread = { $usual } ({ $low } to { $high })
trace-caption = Highest of a cycle { $peak }, resting { $rest }, over { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}.
trace-caption-part = Highest of a cycle { $peak }, resting { $rest }, over { $cycles ->
    [one] one
   *[other] { $cycles }
} of { $all } cycles.
trace-lost = Its pull fell from { $before } to { $after } within { $seconds ->
    [one] a second
   *[other] { $seconds } seconds
}, at { $at }
trace-lost-again = Its pull fell { $count } times; this was the first.
trace-lost-do = Was it turned down, or did the flange let air in? If not, look at tubing, valve and membrane before the motor.
trace-within-maker = Within its maker’s { $low } to { $high } cycles a minute
trace-slower-maker = Slower than its maker’s { $low } to { $high } cycles a minute
trace-faster-maker = Faster than its maker’s { $low } to { $high } cycles a minute
trace-within-usual = Within the usual { $low } to { $high } cycles a minute
trace-slower-usual = Slower than the usual { $low } to { $high } cycles a minute
trace-faster-usual = Faster than the usual { $low } to { $high } cycles a minute
trace-no-one-rate = It changes: there is no one rate
trace-one-pattern = One pattern all along.
trace-two-patterns = Two patterns: fast and light, then slow and strong. It first changes at { $at }.
trace-changes = The pattern changes, first at { $at }; which is letdown and which expression does not show.
trace-at-vacuum = { $percent } % of each cycle is spent at its vacuum.
trace-rise-release = It rises in { $rise } s and lets go in { $release } s (from a tenth to nine tenths).
trace-none-missed = No cycle is missed or weak.
trace-missed-weak = { $missed } % of the cycles are missed, { $weak } % are weak.
trace-stops = { $count ->
    [one] It stood still once.
   *[other] It stood still { $count } times.
}
trace-sinks = The highest vacuum sinks by { $by } each minute ({ $range }).
trace-rises = The highest vacuum rises by { $by } each minute ({ $range }).
trace-sinks-short = sinks by { $by } a minute
trace-rises-short = rises by { $by } a minute
trace-rest-rises = Over the trace the resting vacuum rose by { $by } ({ $range }), and the highest did not: it lets go less and less.
trace-zero-up = The gauge’s zero moved up by { $by } ({ $range }): vacuum is reckoned from it.
trace-zero-down = The gauge’s zero moved down by { $by } ({ $range }): vacuum is reckoned from it.
trace-steady = The highest vacuum neither rises nor sinks that could be told.
trace-leak = While it is held, vacuum sinks by { $by } ({ $low } to { $high }): a slow leak.
trace-no-leak = While it is held, vacuum does not sink that could be told.
trace-noise = The trace’s own noise is about { $noise }.
trace-no-noise = The trace has next to no noise of its own.
trace-offset-still = Before the first cycle the gauge stood at { $off }, not at zero. Nothing was taken off.
trace-offset-above = The trace goes above the air’s pressure by { $off }: the gauge’s zero may be off. Nothing was corrected.
trace-clipped = It is flat at { $at } for { $percent } % of the time: the gauge may end there, and the pump may pull more.
trace-spikes = { $count ->
    [one] One reading stands far out of the rest. It was left out.
   *[other] { $count } readings stand far out of the rest. They were left out.
}
trace-fastest = The gauge took { $readings } readings a second: cycles faster than { $rate } cannot be told from this file.
trace-dropouts = { $count ->
    [one] Once readings are missing,
   *[other] { $count } times readings are missing,
} { $seconds } s in all. They were left out.
trace-unread = For { $seconds } s the pressure moved without a cycle that could be told: the gauge may be too slow for that part.
trace-passed-over = { $count ->
    [one] One row could not be read, line { $line }.
   *[other] { $count } rows could not be read, the first in line { $line }.
}
trace-sign-turned = In the file vacuum stands below zero; here it is shown as so much below the air.
trace-time-seconds = The file does not say the unit of its times; they were taken as seconds.
trace-time-milliseconds = The file does not say the unit of its times; they were taken as milliseconds.
trace-time-microseconds = The file does not say the unit of its times; they were taken as microseconds.
trace-time-minutes = The file does not say the unit of its times; they were taken as minutes.
trace-times-spread = Several rows share a time; they were spread evenly.
trace-stretch = Stretch
trace-segment = { $phase }, { $from } to { $to }
trace-peak = highest { $peak }
trace-rest = resting { $rest }
trace-legend = Between lowest and highest vacuum, from left to right as it ran.
trace-close-legend = A few cycles from the middle, close up.
trace-close-spoken = { $seconds } seconds from its middle, close up.
trace-spoken = { $seconds } seconds, { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}, up to { $highest }.
section-trace-picture = As it ran
section-trace-close = Close up
section-trace-shows = What it shows
section-trace-phases = Its phases
section-trace-set-up = How it was taken
asks-trace-unit = The file does not say its unit. In which one is it?
bad-trace-no-cycles = Nothing in this file goes up and down as a pump does.
bad-trace-no-cycles-do = Look whether the pump was running, and whether another column holds the pressure.
bad-trace-few-cycles = There are too few cycles in this file.
bad-trace-few-cycles-do = Let the gauge record for a minute while the pump runs, and export that.
bad-trace-slow = The readings lie too far apart for the pump’s cycles.
bad-trace-slow-do = Let the gauge record ten times a second or more.

## Traces

bad-trace-no-rows = There is no row with a time and a pressure in this file.
bad-trace-no-rows-do = Export the trace as text (CSV) with one column of times and one of pressures.
bad-trace-one-sample = There is only one reading in this file.
bad-trace-one-sample-do = Let the gauge record for a minute while the pump runs, and export that.
bad-trace-short = The trace is { $seconds } seconds long: no pattern shows in that.
bad-trace-short-do = Record for a minute. If it was longer, look whether the times are in the unit that stands over them.
bad-trace-long = The trace is longer than 24 hours.
bad-trace-long-do = Export one session by itself, and look whether the times are in the unit that stands over them.
bad-trace-constant = The pressure stays at { $value } all along.
bad-trace-constant-do = Look whether the tube was connected and the pump running, or whether another column holds the pressure.
bad-trace-steps = The readings lie { $step } seconds apart: no cycle can be seen in that.
bad-trace-steps-do = If the times are milliseconds, write (ms) over them. Else let the gauge record ten times a second or more.
bad-trace-back = The times run back in line { $line }.
bad-trace-back-do = Keep one recording in a file, in the order in which it was made.
bad-trace-mixed = From line { $line } on, the times seem to be in another unit: seconds and milliseconds are mixed.
bad-trace-mixed-do = Export the times in one unit, and write (s) or (ms) over them.
bad-trace-still = The time stands still in line { $line }.
bad-trace-still-do = Export the trace with times that count parts of a second.
bad-trace-commas = The commas in this file may part columns, or whole numbers from their decimals.
bad-trace-commas-do = Export it with semicolons or tabs between the columns, or with decimal points.
bad-trace-unit = The pressure is in { $unit }, which traces are not read in.
bad-trace-unit-do = Export it in mmHg, kPa, cmH₂O, mbar or hPa.
bad-trace-absolute = This seems to be absolute pressure: it stays near that of the air and never comes near zero.
bad-trace-absolute-do = Set the gauge to zero in the open air, so that it shows pressure below the air around (gauge pressure).
bad-trace-beyond = Line { $line } holds { $value }, which is more than the air around can give.
bad-trace-beyond-do = Look whether the unit over the column is the gauge’s own. A single wrong row can be taken out.
