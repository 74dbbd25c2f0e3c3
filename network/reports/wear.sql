-- report: wear
-- question: How do pumps of one grade wear?
-- unit: 0.1 mmHg a month
-- source: answer/pump/wear; of each family the side that falls fastest
-- smallest: 11
-- cells: grade
-- stratum: 
-- wide: p10, p90
-- picture: bars grade
WITH cells AS (
  SELECT family, grade, min(wear_tenths) AS value
  FROM checks WHERE wear_tenths IS NOT NULL GROUP BY family, grade
),
-- then
counted AS (
  SELECT grade, value, count(*) AS n FROM cells GROUP BY grade, value
),
summed AS (
  SELECT grade, value,
    sum(n) OVER (PARTITION BY grade ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY grade) AS families
  FROM counted
)
SELECT grade,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY grade ORDER BY grade NULLS LAST
