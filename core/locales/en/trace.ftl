### Vacuum traces.

## Kit: traces

trace-on = Trace on { $date }
trace-no-file = No file yet
trace-no-file-caption = A digital manometer saves time and pressure in a file (CSV). Thirty seconds show a pattern. A whole session shows where it changes.
trace-other-way = Read by a different version
trace-other-way-caption = We can’t show these findings here. Import the file again to see them.
trace-pick = Choose its file
trace-spread = { $usual } ({ $low } to { $high })
trace-caption = Peak vacuum { $peak }, baseline { $rest }, over { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}.
trace-caption-part = Peak vacuum { $peak }, baseline { $rest }, over { $cycles ->
    [one] one
   *[other] { $cycles }
} of { $all } cycles.
trace-lost = The pull dropped from { $before } to { $after } within { $seconds ->
    [one] a second
   *[other] { $seconds } seconds
}, at { $at }
trace-lost-again = The pull dropped { $count } times. This was the first.
trace-lost-do = Was it turned down, or did the flange let air in? If not, check tubing, valve and membrane before the motor.
trace-within-maker = Within its maker’s { $low } to { $high } cycles per minute
trace-slower-maker = Slower than its maker’s { $low } to { $high } cycles per minute
trace-faster-maker = Faster than its maker’s { $low } to { $high } cycles per minute
trace-within-usual = Within the usual { $low } to { $high } cycles per minute
trace-slower-usual = Slower than the usual { $low } to { $high } cycles per minute
trace-faster-usual = Faster than the usual { $low } to { $high } cycles per minute
trace-no-one-rate = The speed changes, so there is no single rate
trace-one-pattern = One pattern all the way through.
trace-two-patterns = Two patterns: fast and light, then slow and strong. The first change is at { $at }.
trace-changes = The pattern changes, first at { $at }. The trace does not show which part is Stimulation and which is Expression.
trace-at-vacuum = { $percent }% of each cycle is spent at full vacuum.
trace-rise-release = It takes { $rise } s to rise and { $release } s to let go (from 10% to 90%).
trace-none-missed = No cycle is missed or weak.
trace-missed-weak = { $missed }% of the cycles are missed, { $weak }% are weak.
trace-stops = { $count ->
    [one] It stopped once.
   *[other] It stopped { $count } times.
}
trace-sinks = Peak vacuum drops by { $by } each minute ({ $range }).
trace-rises = Peak vacuum rises by { $by } each minute ({ $range }).
trace-sinks-short = drops by { $by } each minute
trace-rises-short = rises by { $by } each minute
trace-rest-rises = Baseline vacuum rose by { $by } over the trace ({ $range }), but peak vacuum did not. The pump lets go less and less.
trace-zero-up = The gauge’s zero moved up by { $by } ({ $range }). Vacuum is measured from it.
trace-zero-down = The gauge’s zero moved down by { $by } ({ $range }). Vacuum is measured from it.
trace-steady = Peak vacuum stayed steady.
trace-leak = When vacuum should stay up, it drops by { $by } ({ $low } to { $high }). That is a slow leak.
trace-no-leak = When vacuum should stay up, it does. No leak shows.
trace-noise = The trace’s own noise is about { $noise }.
trace-no-noise = The trace has almost no noise of its own.
trace-offset-still = Before the first cycle the gauge read { $off }, not zero. Nothing was corrected.
trace-offset-above = The trace goes { $off } above air pressure, so the gauge’s zero may be off. Nothing was corrected.
trace-clipped = It is flat at { $at } for { $percent }% of the time. The gauge may end there, and the pump may pull more.
trace-spikes = { $count ->
    [one] One reading is far from all the others. It was not used.
   *[other] { $count } readings are far from all the others. They were not used.
}
trace-fastest = The gauge took { $readings } readings a second. It can’t show more than { $rate }.
trace-dropouts = { $count ->
    [one] Readings are missing once,
   *[other] Readings are missing { $count } times,
} { $seconds } s in total. That time was not used.
trace-unread = For { $seconds } s the pressure moved without a clear cycle. The gauge may be too slow for that part.
trace-passed-over = { $count ->
    [one] We could not read one row, line { $line }.
   *[other] We could not read { $count } rows, the first in line { $line }.
}
trace-sign-turned = The file has vacuum as a minus figure. Here it is shown as how far below air pressure it is.
trace-time-seconds = The file does not name its time unit. We used seconds.
trace-time-milliseconds = The file does not name its time unit. We used milliseconds.
trace-time-microseconds = The file does not name its time unit. We used microseconds.
trace-time-minutes = The file does not name its time unit. We used minutes.
trace-times-spread = Several rows share a time. They were spread evenly.
trace-stretch = Part
trace-segment = { $phase }, { $from } to { $to }
trace-peak = peak { $peak }
trace-rest = baseline { $rest }
trace-legend = The band goes from the lowest to the highest vacuum, in the order it ran.
trace-close-legend = A few cycles from the middle, close up.
trace-close-spoken = { $seconds } seconds from the middle, close up.
trace-spoken = { $seconds } seconds, { $cycles ->
    [one] one cycle
   *[other] { $cycles } cycles
}, up to { $highest }.
section-trace-picture = Whole trace
section-trace-close = Close up
section-trace-shows = What it shows
section-trace-phases = Its phases
section-trace-set-up = How it was measured
asks-trace-unit = The file does not name its unit. Which one is it?
bad-trace-no-cycles = Nothing in this file goes up and down like a pump.
bad-trace-no-cycles-do = Check that the pump was running. Another column may have the pressure.
bad-trace-few-cycles = There are too few cycles in this file.
bad-trace-few-cycles-do = Record for a minute while the pump runs, and export that.
bad-trace-slow = The readings are too far apart for the pump’s cycles.
bad-trace-slow-do = Set the gauge to record ten times a second or more.

## Traces

bad-trace-no-rows = No row in this file has a time and a pressure.
bad-trace-no-rows-do = Export the trace as text (CSV) with one column of times and one of pressures.
bad-trace-one-sample = There is only one reading in this file.
bad-trace-one-sample-do = Record for a minute while the pump runs, and export that.
bad-trace-short = The trace is { $seconds } seconds long. That is too short to show a pattern.
bad-trace-short-do = Record for a minute. If it was longer, check that the times match the unit above them.
bad-trace-long = The trace is longer than 24 hours.
bad-trace-long-do = Export one session by itself. Check that the times match the unit above them.
bad-trace-constant = The pressure stays at { $value } the whole time.
bad-trace-constant-do = Check that the tube was connected and the pump was running. Another column may have the pressure.
bad-trace-steps = The readings are { $step } seconds apart. That is too far apart to see a cycle.
bad-trace-steps-do = If the times are milliseconds, put (ms) above them. If not, set the gauge to record ten times a second or more.
bad-trace-back = The times go backward in line { $line }.
bad-trace-back-do = Keep one recording in a file, in the order it was made.
bad-trace-mixed = From line { $line } on, the times seem to use another unit. Seconds and milliseconds are mixed.
bad-trace-mixed-do = Export the times in one unit, and put (s) or (ms) above them.
bad-trace-still = The time does not move on in line { $line }.
bad-trace-still-do = Export the trace with times that include parts of a second.
bad-trace-commas = We can’t tell if the commas in this file separate columns or decimals.
bad-trace-commas-do = Export it with semicolons or tabs between the columns, or with decimal points.
bad-trace-unit = The pressure is in { $unit }, which we can’t read in a trace.
bad-trace-unit-do = Export it in mmHg, kPa, cmH₂O, mbar or hPa.
bad-trace-absolute = This seems to be absolute pressure. It stays near air pressure and never comes near zero.
bad-trace-absolute-do = Set the gauge to zero in the open air. Then it shows how far the pressure is below the air (gauge pressure).
bad-trace-beyond = Line { $line } has { $value }, which is more than air pressure allows.
bad-trace-beyond-do = Check that the unit above the column is the gauge’s own. You can delete a single wrong row.
