// Every unit we write is a UCUM code, and one of them is as much of the canonical unit
// as `@lhncbc/ucum-lhc` says. node check.mjs units.json
import { readFileSync } from "node:fs";
import ucum from "@lhncbc/ucum-lhc";

const utils = ucum.UcumLhcUtils.getInstance();
const relative = 1e-9;
const wrong = [];

if (utils.validateUnitString("cupful").status === "valid") {
  wrong.push("the library takes a unit that is none");
}
const units = JSON.parse(readFileSync(process.argv[2], "utf8"));
for (const { unit, value, in: canonical, is } of units) {
  const told = utils.validateUnitString(unit);
  // A code that is only understood after it was put right is not one.
  if (told.status !== "valid" || told.ucumCode !== unit) {
    wrong.push(`${unit}: ${told.status} ${told.msg ?? ""}`);
    continue;
  }
  if (unit === canonical) {
    continue;
  }
  const said = utils.convertUnitTo(unit, value, canonical);
  if (said.status !== "succeeded" || Math.abs(said.toVal - is) > relative * Math.abs(is)) {
    wrong.push(`${value} ${unit}: we say ${is} ${canonical}, the library ${said.toVal} ${said.msg ?? ""}`);
  }
}
for (const line of wrong) {
  console.error(line);
}
console.log(`${units.length} units, ${wrong.length} wrong`);
process.exit(units.length > 20 && wrong.length === 0 ? 0 : 1);
