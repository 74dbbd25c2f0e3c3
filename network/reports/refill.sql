-- report: refill
-- question: How fast does a breast fill again just after it was emptied, week by week?
-- unit: 0.1 mL a day, both sides
-- source: answer/refill (Daly et al., Exp Physiol 1996;81:861-875)
-- smallest: 11
-- cells: week
-- stratum: 
-- wide: p10, p90
-- picture: lines week
WITH cells AS (
  SELECT family, week, sum(rate_tenths) AS value FROM refills GROUP BY family, week
),
-- then
counted AS (
  SELECT week, value, count(*) AS n FROM cells GROUP BY week, value
),
summed AS (
  SELECT week, value,
    sum(n) OVER (PARTITION BY week ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY week) AS families
  FROM counted
)
SELECT week,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY week ORDER BY week NULLS LAST
