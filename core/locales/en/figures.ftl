### Figures, units and dates.

## Figures

quantity = { $figure } { $unit }
unit-mL = mL
unit-fozus = fl oz
unit-mmHg = mmHg
unit-kPa = kPa
unit-min = cycles per minute
unit-g = g
unit-kg = kg
unit-lbav = lb
unit-ozav = oz
unit-Cel = °C
unit-degF = °F
unit-mm = mm
unit-cm = cm
unit-mbar = mbar
unit-cmH2O = cmH₂O
unit-hPa = hPa
unit-m = m
unit-fti = ft
unit-mo = months
unit-mmHgmo = mmHg a month
unit-kPamo = kPa a month
unit-mmHgs = mmHg a second
unit-kPas = kPa a second
chance = { $percent }%
chance-most = more than 99%
chance-least = less than 1%
month-year = { $month } { $year }
until-date = until { $date }
unit-mLd = mL a day
unit-mLkgd = mL per kg a day
unit-d = days
unit-h = h
unit-minutes = min
unit-mLh = mL an hour
unit-wk = weeks
unit-score = out of 10
clock-am = { $time } am
clock-pm = { $time } pm
span-minutes = { $minutes } min
span-hours = { $hours } h
span-hours-minutes = { $hours } h { $minutes } min
span-days = { $days ->
    [one] one day
   *[other] { $days } days
}
date-long = { $weekday } { $day } { $month }
date-plain = { $day } { $month } { $year }
weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
