-- report: production
-- question: What is usual on each day of life, by weeks of gestation?
-- unit: 0.1 mL a day
-- source: answer/supply/day
-- smallest: 11
-- cells: born, day
-- stratum: day
-- wide: p10, p90
-- picture: lines day
WITH cells AS (
  SELECT d.family AS family,
    CASE WHEN f.gestation_days IS NULL THEN 'unknown' WHEN f.gestation_days < 196 THEN 'under 28'
      WHEN f.gestation_days < 224 THEN '28 to 31' WHEN f.gestation_days < 259 THEN '32 to 36'
      ELSE '37 and more' END AS born,
    d.day AS day, d.made_tenths AS value
  FROM days d JOIN families f ON d.family = f.family
  WHERE d.day >= 0 AND d.day <= 60 AND d.made_tenths IS NOT NULL
),
-- then
counted AS (
  SELECT born, day, value, count(*) AS n FROM cells GROUP BY born, day, value
),
summed AS (
  SELECT born, day, value,
    sum(n) OVER (PARTITION BY born, day ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY born, day) AS families
  FROM counted
)
SELECT born, day,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY born, day ORDER BY born NULLS LAST, day NULLS LAST
