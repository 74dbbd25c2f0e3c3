-- report: follow_up
-- question: How long are families followed, and who has fallen silent, by site?
-- unit: families
-- source: families, follow_up
-- smallest: 11
-- cells: site, followed, silent
-- stratum: site
-- wide: 
-- picture: bars followed
WITH cells AS (
  SELECT u.family AS family, f.site AS site,
    CASE WHEN u.last_day IS NULL THEN 'unknown' WHEN u.last_day < 14 THEN 'under 14 days' WHEN u.last_day < 28 THEN '14 to 27 days' WHEN u.last_day < 56 THEN '28 to 55 days' ELSE '56 days and more' END AS followed,
    CASE WHEN u.ends_by_plan = 1 THEN 'ends by plan' WHEN u.silent_days IS NULL THEN 'no session' WHEN u.silent_days < 7 THEN 'no' ELSE '7 days and more' END AS silent
  FROM follow_up u JOIN families f ON u.family = f.family
),
-- then
counted AS (
  SELECT site, followed, silent, CAST(count(*) AS BIGINT) AS families FROM cells GROUP BY site, followed, silent
)
SELECT site, followed, silent, families FROM counted ORDER BY site NULLS LAST, followed NULLS LAST, silent NULLS LAST
