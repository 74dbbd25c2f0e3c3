//! What is usual in a region, held to Unicode CLDR 48.2 (2025): `supplemental/timeData.json` and
//! `supplemental/measurementData.json` of the npm package `cldr-core` (Unicode-3.0), every region.

use drawwell_core::quantity::{MassUnit, TemperatureUnit, VolumeUnit};
use drawwell_core::record::HostDefaults;

const REGIONS: &str = include_str!("cldr_regions.csv");

#[test]
fn every_region_is_read_as_cldr_says_is_usual_there() {
    let mut seen = 0;
    for row in csv::Reader::from_reader(REGIONS.as_bytes()).records() {
        let row = row.unwrap();
        let [region, hours, system, temperature] = [0, 1, 2, 3].map(|cell| row[cell].to_owned());
        let usual = HostDefaults::of_language(&format!("en-{region}"));
        if !hours.is_empty() {
            assert_eq!(usual.twelve_hours, ["h", "K", "hb", "hB"].contains(&hours.as_str()), "{region}: {hours}");
        }
        let customary = system == "US";
        assert_eq!(usual.volume == VolumeUnit::FluidOunce, customary, "{region}");
        assert_eq!(usual.mass == MassUnit::Pound, customary, "{region}");
        assert_eq!(usual.temperature == TemperatureUnit::Fahrenheit, temperature == "US", "{region}");
        seen += 1;
    }
    assert!(seen >= 250, "{seen}");
}
