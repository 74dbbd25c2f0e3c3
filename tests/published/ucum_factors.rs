//! UCUM, ucum-essence.xml v2.2 (revision 2024-06-17): factors of the units we
//! read and write. The worked values are those of check-values 7.1 and 9.1.

use drawwell_core::quantity::{
    Mass, MassUnit, Quantity, Temperature, TemperatureUnit, Unit, Vacuum, VacuumUnit, Volume, VolumeUnit,
};
use proptest::prelude::*;

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * b.abs().max(f64::MIN_POSITIVE)
}

#[test]
fn millimetre_of_mercury_is_133_322_pascal() {
    // UCUM: m[Hg] = 133.3220 kPa, so mm[Hg] = 133.322 Pa exactly.
    for (mmhg, kpa) in [
        (50.0, 6.666_1),
        (100.0, 13.332_2),
        (150.0, 19.998_3),
        (200.0, 26.664_4),
        (250.0, 33.330_5),
        (300.0, 39.996_6),
        (350.0, 46.662_7),
    ] {
        let vacuum = Vacuum::of(mmhg, VacuumUnit::MillimeterOfMercury);
        assert!(close(vacuum.in_unit(VacuumUnit::Kilopascal), kpa, 1e-9), "{mmhg} mmHg");
    }
}

#[test]
fn conventional_and_ucum_millimetre_of_mercury_agree_to_one_in_a_hundred_thousand() {
    // NIST: 133.322387415 Pa. The published tables: 20 kPa is 150.0123 mmHg, 40 kPa 300.0246.
    for (kpa, mmhg) in [(20.0, 150.0123), (25.0, 187.5154), (40.0, 300.0246), (60.0, 450.0369)] {
        let vacuum = Vacuum::of(kpa, VacuumUnit::Kilopascal);
        assert!(close(vacuum.canonical(), mmhg, 1e-5), "{kpa} kPa");
    }
}

#[test]
fn mean_comfortable_vacuum_in_kilopascal() {
    // Kent et al. 2008, doi:10.1089/bfm.2007.0028: 190.7 mmHg, here only as arithmetic.
    let vacuum = Vacuum::of(190.7, VacuumUnit::MillimeterOfMercury);
    assert!((vacuum.in_unit(VacuumUnit::Kilopascal) - 25.424_51).abs() < 1e-4);
}

#[test]
fn us_fluid_ounce_is_231_cubic_inches_over_128() {
    let cubic_inch = 2.54_f64.powi(3);
    assert!(close(Volume::of(1.0, VolumeUnit::FluidOunce).canonical(), 231.0 * cubic_inch / 128.0, 1e-12));
    // 118.5 mL = 4.0070 fl oz (check-values 9.1); a label's "30 mL an ounce" is not used.
    let volume = Volume::of(118.5, VolumeUnit::Milliliter);
    assert!((volume.in_unit(VolumeUnit::FluidOunce) - 4.0070).abs() < 5e-5);
}

#[test]
fn pound_and_ounce_are_avoirdupois() {
    assert!(close(Mass::of(1.0, MassUnit::Pound).canonical(), 453.592_37, 1e-12));
    assert!(close(Mass::of(1.0, MassUnit::Ounce).canonical(), 28.349_523_125, 1e-12));
    assert!(close(Mass::of(16.0, MassUnit::Ounce).canonical(), Mass::of(1.0, MassUnit::Pound).canonical(), 1e-12));
}

#[test]
fn fahrenheit_is_affine() {
    // ABM Clinical Protocol #4 (2014): 38.5 degrees Celsius is 101.3 Fahrenheit.
    let fever = Temperature::of(101.3, TemperatureUnit::Fahrenheit);
    assert!((fever.canonical() - 38.5).abs() < 1e-9);
    assert!((Temperature::of(32.0, TemperatureUnit::Fahrenheit).canonical()).abs() < 1e-9);
    assert!((Temperature::of(37.0, TemperatureUnit::Celsius).in_unit(TemperatureUnit::Fahrenheit) - 98.6).abs() < 1e-9);
}

#[test]
fn every_unit_is_found_by_its_code_and_no_other() {
    fn each<U: Unit>() {
        for unit in U::ALL {
            assert_eq!(U::from_ucum(unit.ucum()), Some(*unit));
        }
        assert_eq!(U::from_ucum("[foz_br]"), None);
    }
    each::<VolumeUnit>();
    each::<VacuumUnit>();
    each::<MassUnit>();
    each::<TemperatureUnit>();
}

proptest! {
    #[test]
    fn there_and_back_again(value in -1e4..1e4_f64) {
        for unit in TemperatureUnit::ALL {
            let back = Temperature::of(value, *unit).in_unit(*unit);
            prop_assert!((back - value).abs() < 1e-8);
        }
        for unit in VacuumUnit::ALL {
            prop_assert!((Vacuum::of(value, *unit).in_unit(*unit) - value).abs() < 1e-8);
        }
    }
}
