//! What the page and the data package say is what is written.

use std::fs;
use std::path::Path;

use drawwell_network::report::{Report, REPORTS};
use drawwell_network::store::file;
use drawwell_network::table::{package, Holds, TABLES};
use serde_json::Value;

use crate::shared::Network;

fn page() -> String {
    fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("../docs/network.md")).unwrap()
}

#[test]
fn the_page_has_every_table_and_column_as_they_are() {
    let page = page();
    let (_, rest) = page.split_once("<!-- tables -->\n").unwrap();
    let (tables, _) = rest.split_once("<!-- end of tables -->").unwrap();
    assert_eq!(tables.trim(), package::page().trim(), "drawwell-network tables prints it");
}

#[test]
fn the_page_names_every_report() {
    let page = page();
    for report in Report::all().unwrap() {
        assert!(page.contains(&format!("`{}`", report.name)) && page.contains(report.question), "{}", report.name);
    }
    assert_eq!(REPORTS.len(), 10);
}

#[test]
fn the_package_in_a_store_is_what_its_files_hold() {
    let network = Network::shared();
    let text = fs::read(network.folder.path().join("store/datapackage.json")).unwrap();
    let package: Value = serde_json::from_slice(&text).unwrap();
    let resources = package["resources"].as_array().unwrap();
    assert_eq!(resources.len(), TABLES.len());
    for (resource, table) in resources.iter().zip(TABLES) {
        let schema = file::schema(table);
        let fields = resource["schema"]["fields"].as_array().unwrap();
        assert_eq!(fields.len(), schema.fields().len());
        for ((said, written), column) in fields.iter().zip(schema.fields()).zip(table.columns) {
            assert_eq!(said["name"], written.name().as_str());
            assert_eq!(said["type"], if column.holds == Holds::Whole { "integer" } else { "string" });
            assert_eq!(said["constraints"]["required"], !written.is_nullable());
        }
        let lies = network.folder.path().join("store").join(resource["path"].as_str().unwrap());
        assert!(lies.is_dir() || table.name == "refused", "{}", lies.display());
    }
}
