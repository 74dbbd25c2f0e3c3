-- report: not_known
-- question: What is not known of a family, by site?
-- unit: % of a family's sessions or days
-- source: sessions and days: what is null
-- smallest: 11
-- cells: site, what
-- stratum: what
-- wide: p10, p90
-- picture: bars what
WITH cells AS (
  SELECT s.family AS family, f.site AS site, s.what AS what, s.value AS value
  FROM (
    SELECT family, 'amount' AS what, CAST(count(*) FILTER (WHERE milk_tenths IS NULL) * 100 / NULLIF(count(*), 0) AS BIGINT) AS value FROM sessions GROUP BY family
    UNION ALL
    SELECT family, 'vacuum' AS what, CAST(count(*) FILTER (WHERE vacuum_tenths IS NULL) * 100 / NULLIF(count(*), 0) AS BIGINT) AS value FROM sessions GROUP BY family
    UNION ALL
    SELECT family, 'pain' AS what, CAST(count(*) FILTER (WHERE pain IS NULL) * 100 / NULLIF(count(*), 0) AS BIGINT) AS value FROM sessions GROUP BY family
    UNION ALL
    SELECT family, 'production' AS what, CAST(count(*) FILTER (WHERE made_tenths IS NULL) * 100 / NULLIF(count(*), 0) AS BIGINT) AS value FROM days GROUP BY family
  ) s JOIN families f ON s.family = f.family
),
-- then
counted AS (
  SELECT site, what, value, count(*) AS n FROM cells GROUP BY site, what, value
),
summed AS (
  SELECT site, what, value,
    sum(n) OVER (PARTITION BY site, what ORDER BY value ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS up_to,
    sum(n) OVER (PARTITION BY site, what) AS families
  FROM counted
)
SELECT site, what,
  CAST(max(families) AS BIGINT) AS families,
  CAST(min(CASE WHEN up_to * 10 >= families THEN value END) AS BIGINT) AS p10,
  CAST(min(CASE WHEN up_to * 2 >= families THEN value END) AS BIGINT) AS p50,
  CAST(min(CASE WHEN up_to * 10 >= families * 9 THEN value END) AS BIGINT) AS p90
FROM summed GROUP BY site, what ORDER BY site NULLS LAST, what NULLS LAST
