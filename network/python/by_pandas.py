"""Every report of a store, worked out anew by pandas and NumPy from the Parquet files, and held to
the CSV files that the program wrote: by_pandas.py STORE REPORTS."""

import json
import pathlib
import sys

import numpy
import pandas
import pyarrow.parquet

SMALLEST, WIDE = 11, 50
store, reports = map(pathlib.Path, sys.argv[1:3])


def table(name):
    """The files that the manifests name, as pyarrow reads them; every row of them counted."""
    parts = []
    for bucket in sorted((store / "manifest" / "network_version=1").iterdir()):
        manifest = json.loads(max(bucket.glob("*.json")).read_text())
        for part in manifest["tables"].get(name, []):
            read = pyarrow.parquet.read_table(store / part["path"], partitioning=None)
            assert read.num_rows == part["rows"], part["path"]
            parts.append(read.to_pandas())
    return pandas.concat(parts, ignore_index=True)


families = table("families").set_index("family")
days, sessions, checks = table("days"), table("sessions"), table("checks")


def band(values, edges, names, unknown="unknown"):
    """Left-closed bands; what is not known is a band of its own."""
    cut = pandas.cut(values, [-numpy.inf, *edges, numpy.inf], right=False, labels=names)
    return cut.astype(object).where(values.notna(), unknown)


born = band(families.gestation_days, [196, 224, 259], ["under 28", "28 to 31", "32 to 36", "37 and more"])


def production():
    of = days[days.day.between(0, 60) & days.made_tenths.notna()]
    return of.assign(born=of.family.map(born), value=of.made_tenths)


def volume():
    of = days[days.day.isin([14, 21]) & days.made_tenths.notna()]
    least = of.day.map({14: 5000, 21: 6311})
    return of.assign(
        target=of.day.map({14: "500 mL on day 14", 21: "650 g on day 21"}),
        born=of.family.map(born),
        reached=numpy.where(of.made_tenths >= least, "yes", "no"),
    )


def first_week():
    week = days[days.day.between(0, 5)].groupby("family")[["sessions", "night_sessions"]].sum()
    of = days[(days.day == 14) & days.made_tenths.notna()].set_index("family")[["made_tenths"]].join(week, how="inner")
    return of.reset_index().assign(
        by_day_5=band(of.sessions, [15, 25, 35], ["under 15", "15 to 24", "25 to 34", "35 and more"]).values,
        by_night=numpy.where(of.night_sessions > 0, "yes", "no"),
        value=of.made_tenths.values,
    )


def trends():
    of = table("trends")
    return of.assign(born=of.family.map(born))


def not_known():
    parts = []
    for of, what, column in [
        (sessions, "amount", "milk_tenths"),
        (sessions, "vacuum", "vacuum_tenths"),
        (sessions, "pain", "pain"),
        (days, "production", "made_tenths"),
    ]:
        counted = of[column].isna().groupby(of.family).agg(["sum", "size"])
        parts.append(pandas.DataFrame({"what": what, "value": counted["sum"] * 100 // counted["size"]}).reset_index())
    of = pandas.concat(parts)
    return of.assign(site=of.family.map(families.site))


def wear():
    of = checks[checks.wear_tenths.notna()]
    return of.groupby(["family", "grade"]).wear_tenths.min().rename("value").reset_index()


def worst(verdicts):
    return next(word for word in ["below", "above", "cannot_tell", "meets"] if word in set(verdicts))


def checked():
    of = checks[checks.latest == 1]
    return of.groupby(["family", "grade"]).verdict.agg(worst).reset_index()


def pain():
    of = table("comfort")
    of = of.assign(
        vacuum=band(
            of.vacuum_tenths,
            [1000, 1500, 2000, 2500],
            ["under 100 mmHg", "100 to 149 mmHg", "150 to 199 mmHg", "200 to 249 mmHg", "250 mmHg and more"],
        ),
        fit=band(
            of.flange_over_tenths,
            [0, 20, 40],
            ["narrower than the nipple", "under 2 mm wider", "2 to 4 mm wider", "4 mm wider and more"],
        ),
    )
    counted = (1 - of.comfortable).groupby([of.family, of.vacuum, of.fit]).agg(["sum", "size"])
    return (counted["sum"] * 100 // counted["size"]).rename("value").reset_index()


def refill():
    return table("refills").groupby(["family", "week"]).rate_tenths.sum().rename("value").reset_index()


def follow_up():
    of = table("follow_up")
    followed = band(of.last_day, [14, 28, 56], ["under 14 days", "14 to 27 days", "28 to 55 days", "56 days and more"])
    silent = band(of.silent_days, [7], ["no", "7 days and more"], "no session")
    return of.assign(
        site=of.family.map(families.site),
        followed=followed,
        silent=silent.where(of.ends_by_plan == 0, "ends by plan"),
    )


CELLS = {
    "production": (production, ["born", "day"]),
    "volume": (volume, ["target", "born", "reached"]),
    "first_week": (first_week, ["by_day_5", "by_night"]),
    "trends": (trends, ["born", "heading"]),
    "not_known": (not_known, ["site", "what"]),
    "wear": (wear, ["grade"]),
    "checks": (checked, ["grade", "verdict"]),
    "pain": (pain, ["vacuum", "fit"]),
    "refill": (refill, ["week"]),
    "follow_up": (follow_up, ["site", "followed", "silent"]),
}

for name, (cells, columns) in CELLS.items():
    told = pandas.read_csv(reports / f"{name}.csv", dtype={column: str for column in columns})
    told = told.set_index([told[column].astype(str) for column in columns])
    of = cells()
    for column in columns:
        of[column] = of[column].map(lambda cell: str(int(cell)) if isinstance(cell, float) else str(cell))
    groups = of.groupby(columns)
    assert len(groups) == len(told), f"{name}: {len(groups)} cells, told {len(told)}"
    seen = 0
    for cell, rows in groups:
        row = told.loc[cell if len(columns) > 1 else cell[0]]
        row = row.iloc[0] if isinstance(row, pandas.DataFrame) else row
        count = rows.family.nunique()
        assert count == len(rows), f"{name} {cell}: a family stands twice"
        hidden = row.suppressed in ("small", "with_small")
        assert (count < SMALLEST) == (row.suppressed == "small"), f"{name} {cell}: {count} families, {row.suppressed}"
        if hidden:
            assert pandas.isna(row.families), f"{name} {cell}: hidden, and says {row.families}"
            continue
        assert row.families == count, f"{name} {cell}: {row.families} families, pandas {count}"
        seen += 1
        for column, share in {"p10": 0.1, "p50": 0.5, "p90": 0.9}.items():
            if column not in told.columns:
                continue
            if column != "p50" and count < WIDE:
                assert pandas.isna(row[column]), f"{name} {cell}: a spread of {count}"
                continue
            value = numpy.percentile(rows.value.to_numpy("int64"), 100 * share, method="inverted_cdf")
            assert row[column] == value, f"{name} {cell} {column}: {row[column]}, NumPy {value}"
    print(f"{name:<11} {len(groups):>5} cells, {seen:>5} told, equal")
