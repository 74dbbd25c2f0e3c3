-- report: first_week
-- question: Do many sessions by day 5, and by night, go with more milk on day 14?
-- unit: 0.1 mL a day
-- source: answer/supply/day; sessions that ended between midnight and six are by night
-- smallest: 11
-- cells: by_day_5, by_night
-- stratum: by_night
-- wide: p10, p90
-- picture: bars by_day_5
WITH cells AS (
  SELECT w.family AS family,
    CASE WHEN w.sessions < 15 THEN 'under 15' WHEN w.sessions < 25 THEN '15 to 24' WHEN w.sessions < 35 THEN '25 to 34' ELSE '35 and more' END AS by_day_5,
    CASE WHEN w.night > 0 THEN 'yes' ELSE 'no' END AS by_night,
    d.made_tenths AS value
  FROM (
    SELECT family, sum(sessions) AS sessions, sum(night_sessions) AS night
    FROM days WHERE day >= 0 AND day <= 5 GROUP BY family
  ) w JOIN days d ON d.family = w.family
  WHERE d.day = 14 AND d.made_tenths IS NOT NULL
),
-- then
counted AS (
  SELECT by_day_5, by_night, value, count(*) AS n FROM cells GROUP BY by_day_5, by_night, value
),
summed AS (
  SELECT by_day_5, by_night, value,
    sum(n) OVER (PARTITION BY by_day_5, by_night ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY by_day_5, by_night) AS families
  FROM counted
)
SELECT by_day_5, by_night,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY by_day_5, by_night ORDER BY by_day_5 NULLS LAST, by_night NULLS LAST
