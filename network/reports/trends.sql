-- report: trends
-- question: How many hold, rise or fall, by weeks of gestation?
-- unit: families
-- source: answer/supply/course (Theil 1950, Sen 1968)
-- smallest: 11
-- cells: born, heading
-- stratum: born
-- wide: 
-- picture: bars born
WITH cells AS (
  SELECT t.family AS family,
    CASE WHEN f.gestation_days IS NULL THEN 'unknown' WHEN f.gestation_days < 196 THEN 'under 28'
      WHEN f.gestation_days < 224 THEN '28 to 31' WHEN f.gestation_days < 259 THEN '32 to 36'
      ELSE '37 and more' END AS born,
    t.heading AS heading
  FROM trends t JOIN families f ON t.family = f.family
),
-- then
counted AS (
  SELECT born, heading, CAST(count(*) AS BIGINT) AS families FROM cells GROUP BY born, heading
)
SELECT born, heading, families FROM counted ORDER BY born NULLS LAST, heading NULLS LAST
