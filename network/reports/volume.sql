-- report: volume
-- question: How many come to volume: 500 mL on day 14, 650 g on day 21?
-- unit: families
-- source: 500 mL on day 14: Hoban et al., Breastfeed Med 2018;13:352-360 (from memory); 650 g on day 21, at 1.03 g/mL: common practice, no source
-- smallest: 11
-- cells: target, born, reached
-- stratum: target, born
-- wide: 
-- picture: bars born
WITH cells AS (
  SELECT d.family AS family,
    CASE WHEN d.day = 14 THEN '500 mL on day 14' ELSE '650 g on day 21' END AS target,
    CASE WHEN f.gestation_days IS NULL THEN 'unknown' WHEN f.gestation_days < 196 THEN 'under 28'
      WHEN f.gestation_days < 224 THEN '28 to 31' WHEN f.gestation_days < 259 THEN '32 to 36'
      ELSE '37 and more' END AS born,
    CASE WHEN d.made_tenths >= CASE WHEN d.day = 14 THEN 5000 ELSE 6311 END THEN 'yes' ELSE 'no' END AS reached
  FROM days d JOIN families f ON d.family = f.family
  WHERE (d.day = 14 OR d.day = 21) AND d.made_tenths IS NOT NULL
),
-- then
counted AS (
  SELECT target, born, reached, CAST(count(*) AS BIGINT) AS families FROM cells GROUP BY target, born, reached
)
SELECT target, born, reached, families FROM counted ORDER BY target NULLS LAST, born NULLS LAST, reached NULLS LAST
