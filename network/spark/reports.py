"""Every report of a store by Apache Spark, from the same SQL texts over the same Parquet files, and
held to the CSV files that the program wrote: reports.py STORE REPORTS [MASTER]."""

import csv
import json
import pathlib
import sys

from pyspark.sql import SparkSession

WIDE = 50
store, told_in = (pathlib.Path(word).resolve() for word in sys.argv[1:3])
master = sys.argv[3] if len(sys.argv) > 3 else "local[2]"
texts = pathlib.Path(__file__).resolve().parent.parent / "reports"

spark = (
    SparkSession.builder.master(master)
    .appName("drawwell-network")
    .config("spark.sql.ansi.enabled", "true")
    .config("spark.sql.session.timeZone", "UTC")
    .config("spark.sql.shuffle.partitions", "4")
    .config("spark.ui.enabled", "false")
    .getOrCreate()
)
spark.sparkContext.setLogLevel("ERROR")

manifests = [
    json.loads(max(bucket.glob("*.json")).read_text())
    for bucket in sorted((store / "manifest" / "network_version=1").iterdir())
]
for name in sorted({name for manifest in manifests for name in manifest["tables"]}):
    paths = [str(store / part["path"]) for manifest in manifests for part in manifest["tables"].get(name, [])]
    spark.read.parquet(*paths).createOrReplaceTempView(name)

for text in sorted(texts.glob("*.sql")):
    sql = text.read_text()
    head = dict(line[3:].split(": ", 1) for line in sql.splitlines() if line.startswith("-- ") and ": " in line)
    columns = head["cells"].split(", ")
    rows = {tuple(str(row[column]) for column in columns): row for row in spark.sql(sql).collect()}
    with open(told_in / f"{text.stem}.csv", newline="") as file:
        told = list(csv.DictReader(file))
    assert len(told) == len(rows), f"{text.stem}: {len(rows)} cells, told {len(told)}"
    seen = 0
    for row in told:
        found = rows[tuple(row[column] for column in columns)]
        if row["suppressed"] in ("small", "with_small"):
            continue
        seen += 1
        for column in set(row) - set(columns) - {"suppressed"}:
            if column in ("p10", "p90") and found["families"] < WIDE:
                assert row[column] == "", f"{text.stem}: a spread of {found['families']}"
            else:
                assert row[column] == str(found[column]), f"{text.stem} {row}: Spark {found[column]}"
    print(f"{text.stem:<11} {len(rows):>5} cells, {seen:>5} told, equal on Spark {spark.version}")
spark.stop()
