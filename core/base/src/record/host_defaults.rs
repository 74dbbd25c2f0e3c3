//! What holds where a person chose no unit and no clock: the usual of the region that the host
//! is set to. It is only how things are read, and never written down.
//!
//! Regions: Unicode CLDR 48.2 (2025), `supplemental/measurementData.json` and
//! `supplemental/timeData.json`, which `tests/published` reads again.

use crate::quantity::{MassUnit, TemperatureUnit, VolumeUnit};

/// The usual of a region.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HostDefaults {
    /// Hours as 1 to 12 with am and pm.
    pub twelve_hours: bool,
    /// The unit of volumes.
    pub volume: VolumeUnit,
    /// The unit of temperatures.
    pub temperature: TemperatureUnit,
    /// The unit of masses.
    pub mass: MassUnit,
}

/// Regions that measure by the system of the United States: CLDR's measurement system `US`.
pub const CUSTOMARY: [&str; 2] = ["LR", "US"];

/// Regions that read temperatures in degrees Fahrenheit: CLDR's category `temperature`, and its
/// measurement system `US` where that says nothing else.
pub const FAHRENHEIT: [&str; 6] = ["BS", "BZ", "KY", "PR", "PW", "US"];

/// Regions whose preferred hours are 1 to 12: CLDR's `_preferred` of `h`, `K`, `hb` or `hB`.
pub const TWELVE_HOURS: [&str; 104] = [
    "AE", "AG", "AL", "AR", "AS", "AU", "BB", "BD", "BH", "BM", "BN", "BO", "BS", "BT", "CA", "CL", "CO", "CR", "CU",
    "CY", "DJ", "DM", "DO", "DZ", "EC", "EG", "EH", "ER", "ET", "FJ", "FM", "GD", "GH", "GM", "GR", "GT", "GU", "GY",
    "HK", "HN", "IN", "IQ", "JM", "JO", "KH", "KI", "KN", "KP", "KR", "KW", "KY", "LB", "LC", "LR", "LS", "LY", "MH",
    "MO", "MP", "MR", "MW", "MX", "MY", "NA", "NI", "NZ", "OM", "PA", "PE", "PG", "PH", "PK", "PR", "PS", "PW", "PY",
    "QA", "SA", "SB", "SD", "SG", "SL", "SO", "SS", "SV", "SY", "SZ", "TC", "TD", "TN", "TO", "TT", "TW", "UM", "US",
    "UY", "VC", "VE", "VG", "VI", "VU", "WS", "YE", "ZM",
];

impl HostDefaults {
    /// Metric, with hours from 0 to 23.
    pub const METRIC: Self = Self {
        twelve_hours: false,
        volume: VolumeUnit::Milliliter,
        temperature: TemperatureUnit::Celsius,
        mass: MassUnit::Gram,
    };

    /// By a language tag of BCP 47, such as `en-US` or `en-GB-u-hc-h12`: its region, and the
    /// hours that the host itself is set to where the tag says so (`hc`).
    pub fn of_language(tag: &str) -> Self {
        let parts: Vec<String> = tag.split(['-', '_']).map(str::to_ascii_lowercase).collect();
        let extension = parts.iter().position(|part| part.len() == 1).unwrap_or(parts.len());
        let is_region = |part: &&String| part.len() == 2 && part.chars().all(|c| c.is_ascii_alphabetic());
        let region = parts.iter().take(extension).skip(1).find(is_region).map(|part| part.to_ascii_uppercase());
        let within = |regions: &[&str]| region.as_deref().is_some_and(|region| regions.contains(&region));
        let hours = parts.iter().skip(extension).skip_while(|part| *part != "hc").nth(1).map(String::as_str);
        Self {
            twelve_hours: match hours {
                Some("h11" | "h12") => true,
                Some("h23" | "h24") => false,
                _ => within(&TWELVE_HOURS),
            },
            volume: if within(&CUSTOMARY) { VolumeUnit::FluidOunce } else { VolumeUnit::Milliliter },
            temperature: if within(&FAHRENHEIT) { TemperatureUnit::Fahrenheit } else { TemperatureUnit::Celsius },
            mass: if within(&CUSTOMARY) { MassUnit::Pound } else { MassUnit::Gram },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tag_says_its_region_and_the_hours_the_host_is_set_to() {
        let of = HostDefaults::of_language;
        assert_eq!(of("en"), HostDefaults::METRIC);
        assert_eq!(of(""), HostDefaults::METRIC);
        assert_eq!(of("de-DE"), HostDefaults::METRIC);
        assert_eq!(of("en-US").volume, VolumeUnit::FluidOunce);
        assert!(of("en-US").twelve_hours);
        assert!(!of("en-US-u-hc-h23").twelve_hours, "as the host is set");
        assert!(of("en-GB-u-hc-h12").twelve_hours);
        assert_eq!(of("en-GB").temperature, TemperatureUnit::Celsius);
        assert_eq!(of("es_PR").temperature, TemperatureUnit::Fahrenheit);
        assert_eq!(of("zh-Hans-CN"), HostDefaults::METRIC, "a script is no region");
        assert_eq!(of("en-u-rg-uszzzz"), HostDefaults::METRIC, "what stands in an extension is no region");
    }
}
