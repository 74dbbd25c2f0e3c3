-- report: checks
-- question: How many pumps do not meet their range at their latest check?
-- unit: families
-- source: answer/pump/verdict (JCGM 106); of each family and grade the worst
-- smallest: 11
-- cells: grade, verdict
-- stratum: grade
-- wide: 
-- picture: bars grade
WITH cells AS (
  SELECT family, grade,
    CASE WHEN sum(CASE WHEN verdict = 'below' THEN 1 ELSE 0 END) > 0 THEN 'below'
      WHEN sum(CASE WHEN verdict = 'above' THEN 1 ELSE 0 END) > 0 THEN 'above'
      WHEN sum(CASE WHEN verdict = 'cannot_tell' THEN 1 ELSE 0 END) > 0 THEN 'cannot_tell'
      ELSE 'meets' END AS verdict
  FROM checks WHERE latest = 1 GROUP BY family, grade
),
-- then
counted AS (
  SELECT grade, verdict, CAST(count(*) AS BIGINT) AS families FROM cells GROUP BY grade, verdict
)
SELECT grade, verdict, families FROM counted ORDER BY grade NULLS LAST, verdict NULLS LAST
