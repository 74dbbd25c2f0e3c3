//! HL7 FHIR R4 and the codes in it. What a validator can't judge stands here: that each
//! LOINC code is the one we mean, and that nothing unknown became a number.
//! `tests/fhir` holds the same files to HL7's validator.

use std::collections::{BTreeMap, BTreeSet};

use drawwell_core::share::health_record::{LOINC, OWN};
use drawwell_core::share::parts::SharePart;
use drawwell_core::share::spreadsheet::{self, Table};
use drawwell_tests::handed_over::{health_record, health_records, units, EVERY_KIND, PAGE};
use serde_json::Value;

/// Every LOINC code that we write, looked up by hand.
const CODES: &[(&str, &str)] = &[
    // "Body temperature": hl7.org/fhir/R4/bodytemp.html, which also asks for Cel or [degF].
    ("8310-5", "Body temperature"),
    // "Body weight": hl7.org/fhir/R4/bodyweight.html; g, kg or [lb_av].
    ("29463-7", "Body weight"),
    // "Pain severity - 0-10 verbal numeric rating [Score] - Reported", {score}: as HL7
    // Europe's and HL7 Belgium's FHIR guides use it.
    ("72514-3", "Pain severity, 0 to 10, as reported"),
    // "Represents whether the patient is currently breastfeeding": Starter FHIR
    // Implementation Guide 1.0.1, build.fhir.org/ig/jembi/Starter-FHIR-IG, the profile
    // breastfeeding-status-observation, from LOINC 2.81.
    ("63895-7", "Breastfeeding status"),
    // One of its two answers there: "Currently breastfeeding".
    ("LA29252-6", "Currently breastfeeding"),
];

fn every_kind() -> Value {
    serde_json::from_slice(&health_record(EVERY_KIND.as_bytes(), &[], Some(PAGE)).unwrap()).unwrap()
}

fn resources(bundle: &Value) -> Vec<&Value> {
    bundle["entry"].as_array().unwrap().iter().map(|entry| &entry["resource"]).collect()
}

fn observations<'b>(bundle: &'b Value, code: &str) -> Vec<&'b Value> {
    resources(bundle).into_iter().filter(|r| r["code"]["coding"][0]["code"] == code).collect()
}

/// Every object in a value that has this key.
fn having<'v>(value: &'v Value, key: &str, found: &mut Vec<&'v Value>) {
    match value {
        Value::Object(map) => {
            if map.contains_key(key) {
                found.push(value);
            }
            map.values().for_each(|inner| having(inner, key, found));
        }
        Value::Array(all) => all.iter().for_each(|inner| having(inner, key, found)),
        _ => {}
    }
}

#[test]
fn every_loinc_code_is_one_of_those_looked_up_and_each_is_written() {
    let bundle = every_kind();
    let mut concepts = Vec::new();
    having(&bundle, "coding", &mut concepts);
    let written: BTreeSet<(&str, &str)> = concepts
        .iter()
        .filter(|concept| concept["coding"][0]["system"] == LOINC)
        .map(|concept| (concept["coding"][0]["code"].as_str().unwrap(), concept["text"].as_str().unwrap()))
        .collect();
    assert_eq!(written, CODES.iter().copied().collect());
}

#[test]
fn every_code_of_our_own_is_in_the_code_system_once_with_its_words() {
    let bundle = every_kind();
    let system = *resources(&bundle).last().unwrap();
    assert_eq!((system["resourceType"].as_str(), system["url"].as_str()), (Some("CodeSystem"), Some(OWN)));
    let concepts = system["concept"].as_array().unwrap();
    let known: BTreeMap<&str, &str> =
        concepts.iter().map(|c| (c["code"].as_str().unwrap(), c["display"].as_str().unwrap())).collect();
    assert_eq!(known.len(), concepts.len());
    assert!(known.values().all(|words| !words.contains('\u{27e8}')), "{known:?}");
    let mut codings = Vec::new();
    having(&bundle, "system", &mut codings);
    for coding in codings.iter().filter(|coding| coding["system"] == OWN) {
        let code = coding["code"].as_str().unwrap();
        assert_eq!(known.get(code).copied(), coding["display"].as_str(), "{code}");
    }
}

// UCUM: `tests/ucum` holds this list to an independent library.
#[test]
fn every_unit_that_is_written_is_in_the_list_that_is_held_to_ucum() {
    let listed = units();
    let listed: BTreeSet<&str> = listed.iter().map(|unit| unit["unit"].as_str().unwrap()).collect();
    for (name, file) in health_records().unwrap() {
        let file: Value = serde_json::from_slice(&file).unwrap();
        let mut quantities = Vec::new();
        having(&file, "unit", &mut quantities);
        for quantity in quantities {
            assert_eq!(quantity["system"], "http://unitsofmeasure.org", "{name}");
            assert!(listed.contains(quantity["code"].as_str().unwrap()), "{name}: {quantity}");
        }
    }
    let texts = drawwell_core::text::Texts::new("en");
    for table in Table::ALL {
        let schema = spreadsheet::schema(*table, &Default::default(), &texts);
        for field in schema["fields"].as_array().unwrap() {
            assert!(!field["title"].as_str().unwrap().contains('\u{27e8}'), "{}: {field}", table.name());
            assert!(field["unit"].is_null() || listed.contains(field["unit"].as_str().unwrap()), "{field}");
        }
    }
}

// FHIR R4, Observation: obs-6, dataAbsentReason stands only where there is no value.
#[test]
fn an_amount_that_nobody_knows_has_a_reason_and_no_value() {
    let bundle = every_kind();
    let told: Vec<(Value, Value)> = observations(&bundle, "expressed-milk")
        .into_iter()
        .map(|milk| match milk["component"].as_array() {
            Some(parts) if parts[0]["code"]["coding"][0]["code"] == "expressed-milk-left" => {
                (said(&parts[0]), said(&parts[1]))
            }
            _ => (said(milk), Value::Null),
        })
        .collect();
    let text = |word: &str| Value::from(word);
    assert_eq!(
        told,
        [
            (Value::from(62.5), text("unknown")),
            // 2.5 fl oz, as typed: 2.5 × 29.5735295625 mL (UCUM), to four places.
            (Value::from(73.9338), Value::Null),
            (text("temp-unknown"), Value::Null),
            // Nothing came, and that is known.
            (Value::from(0.0), Value::Null),
            (text("unknown"), text("unknown")),
        ]
    );
    let given: Vec<Value> = observations(&bundle, "milk-given").into_iter().map(said).collect();
    assert_eq!(given, [Value::from(45.0), text("unknown"), text("unknown")]);
}

fn said(part: &Value) -> Value {
    match (&part["valueQuantity"]["value"], &part["dataAbsentReason"]["coding"][0]["code"]) {
        (Value::Null, reason) => reason.clone(),
        (value, reason) => {
            assert!(reason.is_null(), "obs-6: {part}");
            assert_eq!(part["valueQuantity"]["code"], "mL");
            value.clone()
        }
    }
}

#[test]
fn what_still_runs_was_taken_out_or_says_nothing_is_not_in_it() {
    let bundle = every_kind();
    // s8 runs, s9 was taken out; b3 says nothing, and b2 nothing but a temperature.
    assert_eq!(observations(&bundle, "expressed-milk").len(), 5);
    assert_eq!(observations(&bundle, "feed-at-breast").len(), 2);
    assert_eq!(observations(&bundle, "breast-signs").len(), 2);
    assert_eq!(observations(&bundle, "8310-5").len(), 2);
}

#[test]
fn a_pump_that_is_gone_leaves_its_reading_without_a_name_for_it() {
    let bundle = every_kind();
    let readings = observations(&bundle, "pump-vacuum");
    assert_eq!(readings.len(), 4);
    assert!(readings.iter().filter(|reading| reading["subject"].is_null()).count() == 1);
    let ids: BTreeSet<&str> =
        bundle["entry"].as_array().unwrap().iter().map(|entry| entry["fullUrl"].as_str().unwrap()).collect();
    let mut references = Vec::new();
    having(&bundle, "reference", &mut references);
    for reference in references {
        assert!(ids.contains(reference["reference"].as_str().unwrap()), "{reference}");
    }
}

#[test]
fn of_two_children_none_is_guessed() {
    let bundle = every_kind();
    let weights = observations(&bundle, "29463-7");
    assert!(weights[0]["subject"]["reference"].is_string());
    assert_eq!(weights[1]["subject"]["display"], "A child; which one was not noted");
    let one = r#"{"fact":"child","id":"c"}
{"fact":"weight","id":"w","at":{"at":"2026-08-10T09:00:00+02:00","zone":"Europe/Berlin"},"weight":{"value":3000,"unit":"g"}}"#;
    let bundle: Value = serde_json::from_slice(&health_record(one.as_bytes(), &[], None).unwrap()).unwrap();
    assert!(observations(&bundle, "29463-7")[0]["subject"]["reference"].is_string(), "the only one there is");
}

#[test]
fn what_is_left_out_is_not_in_it_and_an_amount_is_said_to_be_left_out() {
    for part in SharePart::ALL {
        let file = String::from_utf8(health_record(EVERY_KIND.as_bytes(), &[*part], Some(PAGE)).unwrap()).unwrap();
        let gone: &[&str] = match part {
            SharePart::Who => &["Ruth"],
            SharePart::Child => &["Siskin", "Wren", "birthDate", "29463-7"],
            SharePart::Supply => &["62.5", "73.9338", "temp-unknown"],
            SharePart::Sessions => &["2026-08-10T07:00:00", "effectivePeriod", "63895-7"],
            SharePart::Comfort => &["level-expression\",\"display\":\"Level, Expression\",\"system\"", "m5"],
            SharePart::Kit => &["Marl", "Bourdon", "\"Device\"", "15.5"],
            SharePart::Body => &["8310-5", "38.5"],
            SharePart::Changes => &["Ten days", "what-medicine\",\"display\":\"A medicine\",\"system\""],
            SharePart::Questions => &["what about the night"],
            SharePart::Notes => &["Cold room", "555", "-sore", "Ten days", "1+1"],
        };
        for word in gone {
            assert!(!file.contains(word), "without {}: {word}", part.name());
        }
        assert_eq!(file.contains("masked"), *part == SharePart::Supply, "{}", part.name());
    }
}

#[test]
fn the_same_record_gives_the_same_bytes_and_keeps_its_ids() {
    let (one, other) = (health_records().unwrap(), health_records().unwrap());
    assert!(one == other);
    let with_more = format!("{EVERY_KIND}{{\"fact\":\"pump\",\"id\":\"p0\",\"name\":\"Another\"}}\n");
    let ids = |file: &[u8]| -> BTreeSet<String> {
        let bundle: Value = serde_json::from_slice(file).unwrap();
        resources(&bundle).iter().map(|r| r["id"].as_str().unwrap().to_owned()).collect()
    };
    let before = ids(&health_record(EVERY_KIND.as_bytes(), &[], None).unwrap());
    let after = ids(&health_record(with_more.as_bytes(), &[], None).unwrap());
    assert_eq!((after.difference(&before).count(), before.difference(&after).count()), (1, 0));
    assert_eq!(before.len(), resources(&every_kind()).len() - 1, "each has its own, and the sheet one more");
}
