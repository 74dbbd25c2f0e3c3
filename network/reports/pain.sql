-- report: pain
-- question: How often does it hurt, by vacuum and how wide the flange is?
-- unit: % of a family's settings that were not comfortable
-- source: answer/comfort/used; bands: common practice, no source
-- smallest: 11
-- cells: vacuum, fit
-- stratum: vacuum
-- wide: p10, p90
-- picture: bars vacuum
WITH cells AS (
  SELECT family, vacuum, fit,
    CAST(sum(CASE WHEN comfortable = 0 THEN 1 ELSE 0 END) * 100 / NULLIF(count(*), 0) AS BIGINT) AS value
  FROM (
    SELECT family, comfortable,
      CASE WHEN vacuum_tenths IS NULL THEN 'unknown' WHEN vacuum_tenths < 1000 THEN 'under 100 mmHg' WHEN vacuum_tenths < 1500 THEN '100 to 149 mmHg' WHEN vacuum_tenths < 2000 THEN '150 to 199 mmHg' WHEN vacuum_tenths < 2500 THEN '200 to 249 mmHg' ELSE '250 mmHg and more' END AS vacuum,
      CASE WHEN flange_over_tenths IS NULL THEN 'unknown' WHEN flange_over_tenths < 0 THEN 'narrower than the nipple' WHEN flange_over_tenths < 20 THEN 'under 2 mm wider' WHEN flange_over_tenths < 40 THEN '2 to 4 mm wider' ELSE '4 mm wider and more' END AS fit
    FROM comfort
  ) c GROUP BY family, vacuum, fit
),
-- then
counted AS (
  SELECT vacuum, fit, value, count(*) AS n FROM cells GROUP BY vacuum, fit, value
),
summed AS (
  SELECT vacuum, fit, value,
    sum(n) OVER (PARTITION BY vacuum, fit ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY vacuum, fit) AS families
  FROM counted
)
SELECT vacuum, fit,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY vacuum, fit ORDER BY vacuum NULLS LAST, fit NULLS LAST
