//! Files that are no trace, or a strange one: what is said of each, and that nothing stops.

use std::fmt::Write;
use std::io::{BufReader, Cursor, Read};
use std::process::Command;

use drawwell_core::answer::trace::{
    findings, AsRead, CannotTell, Findings, Pattern, Samples, Seconds, TimeUnit, TraceFile,
};
use drawwell_core::quantity::{Quantity, SpeedUnit, VacuumUnit};
use drawwell_core::screen::words_of_trouble;
use drawwell_core::share::trace_file::read;
use drawwell_core::text::Texts;
use drawwell_core::trouble::Trouble;
use proptest::prelude::*;

fn taken(bytes: impl AsRef<[u8]>) -> Result<TraceFile, Trouble> {
    read(&mut Cursor::new(bytes.as_ref()))
}

/// Sixty cycles a minute up to 200, fifty samples a second, for so many seconds.
fn pressure(at: f64) -> f64 {
    100.0 - 100.0 * (std::f64::consts::TAU * at).cos()
}

fn rows(seconds: u32, row: impl Fn(f64, f64) -> String) -> String {
    (0..=seconds * 50).map(|at| f64::from(at) / 50.0).fold(String::new(), |mut text, at| {
        writeln!(text, "{}", row(at, pressure(at))).unwrap();
        text
    })
}

fn good() -> String {
    format!("time (s),pressure (mmHg)\n{}", rows(20, |at, p| format!("{at:.2},{p:.2}")))
}

fn said(trouble: &Trouble) -> (String, String) {
    let texts = Texts::new("en");
    for key in [trouble.key.to_owned(), format!("{}-do", trouble.key)] {
        assert!(texts.has(&key), "{key} is said in no words");
    }
    let locale = drawwell_tests::place::sentences();
    let sentence = |key: &str| {
        let start = format!("{key} = ");
        locale.lines().find_map(|line| line.strip_prefix(&start)).unwrap().to_owned()
    };
    let names = sentence(trouble.key);
    for (name, _) in &trouble.needs {
        assert!(names.contains(&format!("${name} ")), "{}: {name} is given and not said", trouble.key);
    }
    let (says, does) = words_of_trouble(&texts, trouble);
    assert!(!says.contains('{'), "{says}: something was not given");
    (says, does)
}

fn refused(text: impl AsRef<[u8]>, key: &str) -> String {
    let trouble = taken(text).expect_err(key);
    assert_eq!(trouble.key, key);
    said(&trouble).0
}

fn rate(file: &TraceFile) -> f64 {
    findings(file).unwrap().overall.rate.unwrap().value.in_unit(SpeedUnit::PerMinute)
}

/// That a file is the good trace, however it is written.
fn as_good(text: impl AsRef<[u8]>) -> TraceFile {
    let file = taken(text).unwrap();
    let found = findings(&file).unwrap();
    assert!((rate(&file) - 60.0).abs() < 0.3, "{}", rate(&file));
    assert!((found.overall.peak.usual.get() - 200.0).abs() < 1.0, "{:?}", found.overall.peak);
    assert!((found.duration.get() - 20.0).abs() < 0.05, "{:?}", found.duration);
    file
}

#[test]
fn what_is_no_trace_is_told_and_what_to_do() {
    refused("", "bad-trace-no-rows");
    refused("\n\n\r\n", "bad-trace-no-rows");
    refused("time,pressure\n", "bad-trace-no-rows");
    refused("Dear all,\nthe pump was fine.\n", "bad-trace-no-rows");
    refused(rows(20, |_, p| format!("{p:.2}")), "bad-trace-no-rows");
    refused(vec![0xff; 100_000], "bad-trace-no-rows");
    refused("time,pressure\n0.0,12\n", "bad-trace-one-sample");
    refused("time,pressure\n0.0,12\nend of file\n", "bad-trace-one-sample");
    refused(rows(2, |at, p| format!("{at:.2},{p:.2}")), "bad-trace-short");
    refused(rows(20, |at, _| format!("{at:.2},43.1")), "bad-trace-constant");
    refused(rows(20, |at, p| format!("{at:.2},{p:.0},{}", 3)).replace('.', ","), "bad-trace-commas");
}

#[test]
fn times_that_do_not_run_on_are_told_with_their_line() {
    let one = rows(20, |at, p| format!("{at:.2},{p:.2}"));
    let told = refused(format!("{one}{one}"), "bad-trace-back");
    assert!(told.contains("1002"), "{told}: a second recording begins there");
    // Every time in milliseconds from half on, and then a single one.
    let half =
        rows(20, |at, p| if at < 10.0 { format!("{at:.2},{p:.2}") } else { format!("{:.0},{p:.2}", at * 1000.0) });
    let told = refused(half, "bad-trace-mixed");
    assert!(told.contains("501") || told.contains("502"), "{told}");
    let back =
        rows(20, |at, p| if at > 10.0 { format!("{at:.2},{p:.2}") } else { format!("{:.0},{p:.2}", at * 1000.0) });
    let told = refused(back, "bad-trace-mixed");
    assert!(told.contains("502"), "{told}");
    let single = rows(20, |at, p| if at == 7.0 { format!("7000,{p:.2}") } else { format!("{at:.2},{p:.2}") });
    let told = refused(single, "bad-trace-mixed");
    assert!(told.contains("351"), "{told}");
    // A clock that stands.
    let still = (0..20_000).fold(String::from("0,0\n1,5\n"), |text, at| text + &format!("2,{}\n", at % 7));
    let told = refused(still, "bad-trace-still");
    assert!(told.contains("5003"), "{told}");
}

#[test]
fn seconds_and_milliseconds_mixed_up_are_asked_about() {
    let milliseconds = |over: &str| rows(20, |at, p| format!("{:.0},{p:.2}", at * 1000.0)).replacen("", over, 1);
    let told = refused(milliseconds("time (s),pressure (mmHg)\n"), "bad-trace-steps");
    assert!(told.contains("20"), "{told}");
    let seconds = rows(20, |at, p| format!("{at:.2},{p:.2}"));
    refused(format!("time (ms),pressure\n{seconds}"), "bad-trace-short");
    // Where nothing is said, the unit is taken in which cycles can be seen, and that is noted.
    let file = as_good(milliseconds(""));
    assert_eq!(file.notes.time_unit_assumed, Some(TimeUnit::Millisecond));
    let file = as_good(milliseconds("time (ms),pressure (mmHg)\n"));
    assert_eq!((file.notes.time_unit_assumed, file.unit), (None, Some(VacuumUnit::MillimeterOfMercury)));
    assert_eq!(as_good(seconds).notes.time_unit_assumed, Some(TimeUnit::Second));
    refused((0..100).fold(String::new(), |text, at| text + &format!("{at},{}\n", at % 7)), "bad-trace-steps");
}

#[test]
fn longer_than_a_day_is_told() {
    let day = |rows: u32| {
        (0..rows).fold(String::from("s,p\n"), |text, at| text + &format!("{:.1},{}\n", f64::from(at) * 0.4, at % 9))
    };
    assert!(taken(day(215_000)).is_ok());
    refused(day(217_000), "bad-trace-long");
    let gap = good() + "99999,5\n";
    refused(gap, "bad-trace-long");
}

#[test]
fn pressures_that_cannot_be_are_told() {
    let of = |unit: &str, write: &dyn Fn(f64) -> f64| {
        format!("time (s),pressure ({unit})\n{}", rows(20, |at, p| format!("{at:.2},{:.3}", write(p))))
    };
    for (unit, factor, air) in
        [("hPa", 1.33322, 1013.25), ("mmHg", 1.0, 760.0), ("kPa", 0.133_322, 101.325), ("cmH2O", 1.359_51, 1033.2)]
    {
        refused(of(unit, &|p| air - p * factor), "bad-trace-absolute");
    }
    refused(rows(20, |at, p| format!("{at:.2},{:.2}", 1013.0 - p)), "bad-trace-absolute");
    let told = refused(of("kPa", &|p| -p), "bad-trace-beyond");
    assert!(told.contains("-200") || told.contains("200"), "{told}");
    refused(of("mmHg", &|p| p * 4.6), "bad-trace-beyond");
    assert!(taken(of("mmHg", &|p| p * 4.4)).is_ok(), "880 mmHg is not beyond the bound of 900");
    assert!(taken(of("mbar", &|p| p * 4.6)).is_ok(), "920 mbar are 690 mmHg");
    for other in ["psi", "inHg", "bar", "Pa"] {
        let told = refused(of(other, &|p| p / 50.0), "bad-trace-unit");
        assert!(told.to_lowercase().contains(&other.to_lowercase()), "{told}");
    }
    // 26 "mmHg" is what 26 kPa look like: the trace is read, and who shows it asks.
    let small = taken(of("mmHg", &|p| p * 0.13)).unwrap();
    assert!((findings(&small).unwrap().overall.highest.get() - 26.0).abs() < 0.1);
}

#[test]
fn rows_of_text_are_passed_over_and_counted() {
    let with = rows(20, |at, p| match at {
        3.0 => "level 7".to_owned(),
        at if at == 4.0 => format!("{at:.2},OL"),
        5.0 => "# the consultant spoke".to_owned(),
        at if at == 6.0 => format!("{at:.2},inf"),
        at if at == 7.0 => format!("{at:.2},NaN"),
        8.0 => String::new(),
        at => format!("{at:.2},{p:.2}"),
    });
    let file = as_good(format!("Gauge 4, made 2019\n\ntime,vacuum\n{with}"));
    assert_eq!(file.notes.passed_over.get(), 4);
    assert_eq!(file.notes.first_passed_over.map(|line| line.get()), Some(3 + 151));
    assert_eq!(file.notes.rows.get(), 1001 - 6);
    assert_eq!(file.notes.dropouts.get(), 0, "one row is no gap");
}

#[test]
fn it_does_not_matter_how_the_rows_are_written() {
    let plain = as_good(good());
    let ways: Vec<(&str, String)> = vec![
        ("byte order mark", format!("\u{feff}{}", good())),
        ("line ends of another system", good().replace('\n', "\r\n")),
        ("no last line end", good().trim_end().to_owned()),
        (
            "semicolons and commas",
            format!("Zeit [s];Druck [mmHg]\n{}", rows(20, |at, p| format!("{at:.2};{p:.2}").replace('.', ","))),
        ),
        (
            "tabs and commas",
            format!("t (s)\tp (mmHg)\n{}", rows(20, |at, p| format!("{at:.2}\t{p:.2}").replace('.', ","))),
        ),
        ("spaces", format!("time (s)   pressure (mmHg)\n{}", rows(20, |at, p| format!("{at:8.2}   {p:8.2}")))),
        (
            "quotes",
            format!(
                "\"time (s)\",\"pressure (mmHg)\"\n{}",
                rows(20, |at, p| format!("\"{at:.2}\",\"{p:.2}\"").replace('.', ","))
            ),
        ),
        ("pressure first", format!("pressure (mmHg),time (s)\n{}", rows(20, |at, p| format!("{p:.2},{at:.2}")))),
        (
            "a number before",
            format!("no,time (s),room,p (mmHg)\n{}", rows(20, |at, p| format!("{:.0},{at:.2},21.5,{p:.2}", at * 50.0))),
        ),
        (
            "units in a line of their own",
            format!("time,pressure\ns,mmHg\n{}", rows(20, |at, p| format!("{at:.2},{p:.2}"))),
        ),
        (
            "a comment as a heading",
            format!("# pressure log\n# time (s),pressure (mmHg)\n{}", rows(20, |at, p| format!("{at:.2},{p:.2}"))),
        ),
        ("the unit beside each", format!("time (s);p;unit\n{}", rows(20, |at, p| format!("{at:.2};{p:.2};mmHg")))),
        ("vacuum below zero", format!("time (s),pressure (mmHg)\n{}", rows(20, |at, p| format!("{at:.2},{:.2}", -p)))),
        ("minutes", format!("time (min),pressure (mmHg)\n{}", rows(20, |at, p| format!("{:.7},{p:.2}", at / 60.0)))),
        ("clock", format!("time,pressure (mmHg)\n{}", rows(20, |at, p| format!("23:59:{:05.2},{p:.2}", at + 30.0)))),
        (
            "minutes of the clock",
            format!("time,pressure (mmHg)\n{}", rows(20, |at, p| format!("{:02}:{:05.2},{p:.2}", 7, at + 30.0))),
        ),
        (
            "dates",
            format!(
                "time,pressure (mmHg)\n{}",
                rows(20, |at, p| format!("2026-03-01T07:40:{:05.2}+01:00,{p:.2}", at + 30.0))
            ),
        ),
        (
            "a date in a cell of its own",
            format!(
                "date,time,pressure (mmHg)\n{}",
                rows(20, |at, p| format!("01.03.2026,07:40:{:05.2},{p:.2}", at + 30.0))
            ),
        ),
        (
            "afternoon",
            format!(
                "time,pressure (mmHg)\n{}",
                rows(20, |at, p| format!("3/1/2026 11:40:{:05.2} PM,{p:.2}", at + 30.0))
            ),
        ),
        (
            "seconds since 1970",
            format!("time (s),pressure (mmHg)\n{}", rows(20, |at, p| format!("{:.2},{p:.2}", at + 1_772_000_000.0))),
        ),
    ];
    for (way, text) in ways {
        println!("{way}");
        let file = as_good(&text);
        assert_eq!(file.unit, Some(VacuumUnit::MillimeterOfMercury), "{way}");
        assert_eq!(file.notes.sign_turned, way == "vacuum below zero", "{way}");
        assert_eq!(file.notes.passed_over.get(), 0, "{way}");
        assert_eq!(file.notes.rows, plain.notes.rows, "{way}");
        let apart = file.samples.values().iter().zip(plain.samples.values()).map(|(a, b)| (a - b).abs());
        assert!(apart.fold(0.0, f32::max) < 0.6, "{way}");
    }
    let wide: Vec<u8> = good().encode_utf16().flat_map(u16::to_le_bytes).collect();
    as_good([&[0xff, 0xfe][..], &wide].concat());
    let latin =
        [b"zeit (s),druck (mmHg),\xb0C\n".to_vec(), rows(20, |at, p| format!("{at:.2},{p:.2},21")).into_bytes()];
    as_good(latin.concat());
}

#[test]
fn past_midnight_and_whole_seconds() {
    let midnight = format!(
        "time,pressure (mmHg)\n{}",
        rows(20, |at, p| {
            let at = (at * 100.0).round() as u64 + 100 * (86_400 - 10);
            let (second, part) = (at / 100 % 86_400, at % 100);
            format!("{:02}:{:02}:{:02}.{part:02},{p:.2}", second / 3600, second / 60 % 60, second % 60)
        })
    );
    as_good(midnight);
    // A clock that counts whole seconds, and begins within one.
    let whole = rows(21, |at, p| format!("07:40:{:02},{p:.2}", (at + 10.36) as u32));
    let file = taken(format!("time,p (mmHg)\n{whole}")).unwrap();
    assert!(file.notes.times_spread);
    assert!((rate(&file) - 60.0).abs() < 0.3, "{}", rate(&file));
}

#[test]
fn what_does_not_move_as_a_pump_does_is_not_told() {
    let every = |step: f64, move_: fn(u32) -> f32| {
        let mut file = as_good(good());
        file.samples = Samples::new(Seconds::new(step), (0..1000).map(move_).collect()).unwrap();
        findings(&file)
    };
    let of = |move_| every(0.02, move_);
    assert_eq!(of(|_| 40.0).unwrap_err(), CannotTell::NoCycles);
    assert_eq!(of(|at| at as f32).unwrap_err(), CannotTell::NoCycles);
    assert_eq!(of(|at| (at as f32 / 1000.0).sin()).unwrap_err(), CannotTell::NoCycles);
    // Noise alone, from a linear congruential generator.
    let noise = |at: u32| (at.wrapping_mul(1_664_525).wrapping_add(1_013_904_223) >> 8) as f32 / (1 << 24) as f32;
    assert_eq!(of(noise).unwrap_err(), CannotTell::NoCycles);
    assert_eq!(of(|at| if at % 450 > 200 { 100.0 } else { 0.0 }).unwrap_err(), CannotTell::TooFewCycles);
    assert_eq!(every(0.1, |at| [10.0, 120.0, 220.0, 90.0][at as usize % 4]).unwrap_err(), CannotTell::SampledTooSlowly);
    assert_eq!(of(|_| f32::NAN).unwrap_err(), CannotTell::NoCycles);
    let mut file = as_good(good());
    file.samples = Samples::new(Seconds::new(0.02), Vec::new()).unwrap();
    assert_eq!(findings(&file).unwrap_err(), CannotTell::NoCycles);
}

#[test]
fn a_pattern_too_fast_for_the_gauge_is_not_passed_over_in_silence() {
    // Ten readings a second: 20 s at 200 a minute, three readings a cycle, then 40 s at 50.
    let values = (0..600).map(|at| {
        let (rate, height) = if at < 200 { (200.0, 120.0) } else { (50.0, 240.0) };
        (height * (1.0 - (std::f64::consts::TAU * f64::from(at) * rate / 600.0).cos()) / 2.0) as f32
    });
    let mut file = as_good(good());
    file.samples = Samples::new(Seconds::new(0.1), values.collect()).unwrap();
    let found = findings(&file).unwrap();
    assert!((rate(&file) - 50.0).abs() < 0.5, "{}", rate(&file));
    assert!((found.unread.get() - 20.0).abs() <= 2.5, "{:?}", found.unread);
}

#[test]
fn however_often_the_pattern_changes_the_findings_stay_small() {
    let mut phase = 0.0;
    let values = (0..60 * 50 * 40).map(|at| {
        let slow = at / 1000 % 2 == 1;
        phase += if slow { 50.0 } else { 110.0 } / 3000.0;
        let height = if slow { 233.171_7 } else { 101.313_1 };
        (height * (1.0 - (std::f64::consts::TAU * phase).cos()) / 2.0) as f32
    });
    let mut file = as_good(good());
    file.samples = Samples::new(Seconds::new(0.02), values.collect()).unwrap();
    let found = findings(&file).unwrap();
    assert!((10..=20).contains(&found.segments.len()), "{}", found.segments.len());
    assert_eq!(found.pattern, Pattern::LetdownAndExpression);
    let kept = found.to_json().to_string();
    assert!(kept.len() < 30_000, "{}", kept.len());
    assert_eq!(Findings::from_json(&serde_json::from_str(&kept).unwrap()), Some(found));
}

#[test]
fn a_line_without_end_and_a_file_that_cannot_be_read_further() {
    // 64 MB in one line, then a trace.
    let long = std::io::repeat(b'7').take(64 << 20);
    let text = format!("\n{}", good());
    let file = read(&mut BufReader::new(long.chain(Cursor::new(text)))).unwrap();
    assert_eq!(file.notes.rows.get(), 1001);
    struct Torn;
    impl Read for Torn {
        fn read(&mut self, _: &mut [u8]) -> std::io::Result<usize> {
            Err(std::io::Error::other("pulled out"))
        }
    }
    let torn = read(&mut BufReader::new(Cursor::new(good()).chain(Torn))).unwrap_err();
    assert_eq!(torn.key, "trouble-cannot-read-file");
}

/// Rows of the bad input: 2 h 46 min at a thousand a second, sixty cycles a minute.
const LONG: u32 = 10_000_000;

#[test]
fn ten_million_rows_take_less_than_a_hundred_megabytes() {
    let done = Command::new(env!("CARGO_BIN_EXE_long-trace")).arg(LONG.to_string()).output().unwrap();
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let said = String::from_utf8(done.stdout).unwrap();
    let figures: Vec<f64> = said.split_whitespace().map(|figure| figure.parse().unwrap()).collect();
    let [rows, seconds, kilobytes, cycles] = figures[..] else { panic!("{said}") };
    println!("{rows} rows in {seconds} s, {kilobytes} kB");
    assert_eq!([rows, cycles], [f64::from(LONG), f64::from(LONG) / 1000.0]);
    assert!(kilobytes > 0.0 && kilobytes < 100_000.0, "{kilobytes} kB");
}

/// The findings of a trace in figures that may be compared.
fn figures(found: &Findings) -> Vec<f64> {
    let of = &found.overall;
    let mut all = vec![
        f64::from(of.count.get()),
        f64::from(of.missed.get()),
        of.weak_share.fraction(),
        of.rate.map_or(0.0, |rate| rate.value.in_unit(SpeedUnit::PerMinute)),
        of.at_vacuum.map_or(0.0, |share| share.fraction()),
        of.rise.map_or(0.0, Seconds::get),
        of.release.map_or(0.0, Seconds::get),
        found.duration.get(),
        found.segments.len() as f64,
    ];
    all.extend(found.switches.iter().map(|at| at.get()));
    all
}

fn pressures(found: &Findings) -> Vec<f64> {
    let of = &found.overall;
    let as_read = [of.peak.usual, of.peak.low, of.peak.high, of.rest.usual, of.highest, found.noise].map(AsRead::get);
    let changes = [of.peak_drift.map_or(0.0, |drift| drift.value.get()), of.leak.map_or(0.0, |leak| leak.value.get())];
    as_read.into_iter().chain(changes).collect()
}

fn same(a: &[f64], b: &[f64], scale: f64, within: f64) {
    assert_eq!(a.len(), b.len());
    let largest = a.iter().fold(1e-9_f64, |most, value| most.max(value.abs()));
    for (a, b) in a.iter().zip(b) {
        assert!((a * scale - b).abs() <= within * largest * scale, "{a} times {scale} is not {b}");
    }
}

/// A session by chance: rate, height, resting vacuum, noise, and whether it has a second pattern.
fn sessions() -> impl Strategy<Value = Vec<f64>> {
    (40.0..120.0_f64, 80.0..300.0_f64, 0.0..30.0_f64, 0.0..3.0_f64, any::<bool>(), any::<u32>()).prop_map(
        |(rate, height, rest, noise, second, seed)| {
            let mut chance = seed;
            let mut phase = 0.0;
            (0..1500)
                .map(|at| {
                    chance = chance.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                    let slower = second && at > 700;
                    phase += if slower { 0.5 } else { 1.0 } * rate / 60.0 / 50.0;
                    let height = if slower { 1.6 } else { 1.0 } * height;
                    let wave = (1.0 - (std::f64::consts::TAU * phase).cos()) / 2.0;
                    rest + height * wave + noise * (f64::from(chance >> 8) / f64::from(1 << 24) - 0.5)
                })
                .collect()
        },
    )
}

fn text_of(values: &[f64], from: f64, sign: f64) -> String {
    values.iter().enumerate().fold("time (s),pressure (mmHg)\n".to_owned(), |mut text, (at, value)| {
        writeln!(text, "{:.2},{:.3}", from + at as f64 / 50.0, sign * value).unwrap();
        text
    })
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn twice_the_pressure_is_twice_the_findings(values in sessions(), power in -4_i32..=4) {
        let scale = 2_f64.powi(power);
        let file = taken(text_of(&values, 0.0, 1.0)).unwrap();
        let times = |scale: f64| {
            let scaled: Vec<f32> = file.samples.values().iter().map(|value| value * scale as f32).collect();
            findings(&TraceFile { samples: Samples::new(file.samples.step(), scaled).unwrap(), ..file.clone() }).unwrap()
        };
        let (one, other) = (times(1.0), times(scale));
        same(&figures(&one), &figures(&other), 1.0, 1e-5);
        same(&pressures(&one), &pressures(&other), scale, 1e-5);
    }

    #[test]
    fn a_turned_sign_changes_nothing_but_that_it_is_said(values in sessions()) {
        let one = findings(&taken(text_of(&values, 0.0, 1.0)).unwrap()).unwrap();
        let mut other = findings(&taken(text_of(&values, 0.0, -1.0)).unwrap()).unwrap();
        prop_assert!(!one.notes.sign_turned && other.notes.sign_turned);
        other.notes.sign_turned = false;
        prop_assert_eq!(one, other);
    }

    // Seconds since 1970 leave a step 0.2 µs open; about once in three thousand that moves a cycle over a
    // threshold. Up to some weeks it moves none.
    #[test]
    fn when_it_began_changes_nothing(values in sessions(), from in 0_u32..2_000_000) {
        let one = findings(&taken(text_of(&values, 0.0, 1.0)).unwrap()).unwrap();
        let other = findings(&taken(text_of(&values, f64::from(from), 1.0)).unwrap()).unwrap();
        same(&figures(&one), &figures(&other), 1.0, 1e-4);
        same(&pressures(&one), &pressures(&other), 1.0, 1e-3);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn any_bytes_are_read_or_refused_in_words(bytes in proptest::collection::vec(any::<u8>(), 0..4000)) {
        if let Err(trouble) = taken(&bytes) {
            said(&trouble);
        }
    }

    #[test]
    fn any_figures_are_read_or_refused_in_words(
        rows in proptest::collection::vec(("[-+0-9.,:;eE \t\"T]{0,12}", "[-+0-9.,eE\"]{0,8}"), 0..200),
        between in prop::sample::select(vec![",", ";", "\t", " "]),
    ) {
        let text: String = rows.iter().map(|(at, pressure)| format!("{at}{between}{pressure}\n")).collect();
        match taken(&text) {
            Ok(file) => drop(findings(&file)),
            Err(trouble) => drop(said(&trouble)),
        }
    }

    #[test]
    fn any_trace_that_was_damaged_is_read_or_refused_in_words(
        damage in proptest::collection::vec((any::<prop::sample::Index>(), any::<u8>(), 0..3_u8), 1..40),
    ) {
        let mut bytes = good().into_bytes();
        for (at, byte, how) in damage {
            let at = at.index(bytes.len());
            match how {
                0 => bytes[at] = byte,
                1 => bytes.insert(at, byte),
                _ => drop(bytes.remove(at)),
            }
        }
        match taken(&bytes) {
            Ok(file) => drop(findings(&file).map(|found| {
                assert!(found.to_json().to_string().len() < 30_000);
                assert_eq!(Findings::from_json(&found.to_json()), Some(found));
            })),
            Err(trouble) => drop(said(&trouble)),
        }
    }

    #[test]
    fn any_samples_give_findings_that_can_be_kept(
        values in proptest::collection::vec(prop_oneof![-1e6_f32..1e6, Just(f32::NAN), Just(0.0_f32)], 0..300),
        step in 1e-3..0.5_f64,
    ) {
        let mut file = taken(good()).unwrap();
        file.samples = Samples::new(Seconds::new(step), values).unwrap();
        if let Ok(found) = findings(&file) {
            prop_assert_eq!(Findings::from_json(&found.to_json()), Some(found));
        }
    }
}
