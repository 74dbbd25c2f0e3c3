//! `drawwell-network`: take in, report, and what is needed around them.

#![forbid(unsafe_code)]

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use drawwell_core::private_file;
use drawwell_core::time::Instant;
use drawwell_core::trouble::{Kind as TroubleKind, Trouble};
use drawwell_network::invented;
use drawwell_network::pseudonym::NetworkKey;
use drawwell_network::report::engine::Engine;
use drawwell_network::report::written::{write, As};
use drawwell_network::report::{publish, Report, Rule};
use drawwell_network::store::objects::Objects;
use drawwell_network::store::Store;
use drawwell_network::table::{package, TABLES};
use drawwell_network::take_in::{self, TakeIn};
use drawwell_network::trouble::Stop;

const HELP: &str = "\
drawwell-network key FILE                       make the network's key: once, and kept by the network
drawwell-network take-in STORE --key FILE --site NAME FROM…
      FROM: a desk's folder, a family file, a record in the exchange form, or a folder of them
      --scope network|research    what families must have said yes to (a new store: network)
      --buckets N                 parts of a new store (64)
drawwell-network report NAME STORE --out FILE   FILE ends in .csv, .parquet, .jsonl or .svg
      --rule cms|nhs              which cells are small (cms: under 11)
drawwell-network report --list                  the reports, and what each answers
drawwell-network report NAME STORE --explain    how it is worked out, from how many files and bytes
drawwell-network verify STORE                   read everything back, held to what was written
drawwell-network tables [--json]                every table and column
drawwell-network invent FOLDER FAMILIES [SEED]  an invented network, with what is true of it

--at UNIX_MILLISECONDS takes another present than the clock's.
SQL of one's own is not run: that it shows nobody could not be proved.
";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match run(words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(stop) => {
            eprintln!("{stop}");
            ExitCode::FAILURE
        }
    }
}

/// What was typed, its options taken out.
struct Words(Vec<String>);

impl Words {
    fn option(&mut self, name: &str) -> Result<Option<String>, Stop> {
        let Some(at) = self.0.iter().position(|word| word == name) else { return Ok(None) };
        self.0.remove(at);
        if at < self.0.len() {
            Ok(Some(self.0.remove(at)))
        } else {
            Err(Stop::refused(format!("{name} says nothing")))
        }
    }

    fn flag(&mut self, name: &str) -> bool {
        let at = self.0.iter().position(|word| word == name);
        at.map(|at| self.0.remove(at)).is_some()
    }

    fn number<N: std::str::FromStr>(text: &str) -> Result<N, Stop> {
        text.parse().map_err(|_| Stop::refused(format!("{text} is no number")))
    }
}

fn run(words: Vec<String>) -> Result<(), Stop> {
    let mut words = Words(words);
    let now = match words.option("--at")? {
        Some(at) => Instant::from_unix_milliseconds(Words::number(&at)?),
        None => clock()?,
    };
    if words.flag("--sql") {
        return Err(Stop::refused("SQL of one's own is not run: that it shows nobody could not be proved"));
    }
    let command = if words.0.is_empty() { String::new() } else { words.0.remove(0) };
    match command.as_str() {
        "key" => key(&words),
        "take-in" => take(words, now),
        "report" => report(words, now),
        "verify" => verify(&words),
        "tables" => tables(words),
        "invent" => invent(&words),
        "" | "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(())
        }
        other => Err(Stop::refused(format!("there is no command {other}\n\n{HELP}"))),
    }
}

fn clock() -> Result<Instant, Stop> {
    let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH);
    let milliseconds = since.ok().and_then(|since| i64::try_from(since.as_millis()).ok());
    milliseconds.map(Instant::from_unix_milliseconds).ok_or_else(|| Stop::refused("the clock is before 1970"))
}

fn key(words: &Words) -> Result<(), Stop> {
    let [file] = words.0.as_slice() else { return Err(Stop::refused(HELP)) };
    NetworkKey::make(Path::new(file))?;
    println!("{file} holds the network's key. Without it no family can be taken in or out again.");
    Ok(())
}

fn take(mut words: Words, now: Instant) -> Result<(), Stop> {
    let key = words.option("--key")?.ok_or_else(|| Stop::refused("which key? --key FILE"))?;
    let site = words.option("--site")?.ok_or_else(|| Stop::refused("which site? --site NAME"))?;
    let scope = words.option("--scope")?;
    let buckets = words.option("--buckets")?.map(|text| Words::number(&text)).transpose()?;
    let Some((store, from)) = words.0.split_first().filter(|(_, from)| !from.is_empty()) else {
        return Err(Stop::refused(HELP));
    };
    let key = NetworkKey::read(Path::new(&key))?;
    let objects = Objects::in_folder(Path::new(store))?;
    let there = Store::open(objects.clone()).ok();
    let scope = scope.or_else(|| there.as_ref().map(|there| there.scope().to_owned()));
    let store = Store::create(objects, &key, scope.as_deref().unwrap_or("network"), buckets.unwrap_or(64))?;
    let named: Vec<PathBuf> = from.iter().map(PathBuf::from).collect();
    let progress = |done: usize, all: usize| {
        if done.is_multiple_of(100) || done == all {
            eprint!("\r{done} of {all} files");
        }
    };
    let summary = take_in::run(&store, TakeIn { key: &key, site: &site, now }, &named, &progress)?;
    eprintln!();
    println!("counted     {:>8}", summary.counted);
    println!("unchanged   {:>8}", summary.unchanged);
    println!("older       {:>8}   a later copy is there", summary.older);
    println!("no yes      {:>8}   not taken in", summary.no_consent);
    println!("withdrawn   {:>8}   read back: no row of them is left", summary.withdrawn);
    println!("refused     {:>8}   could not be read", summary.refused);
    Ok(())
}

fn report(mut words: Words, now: Instant) -> Result<(), Stop> {
    if words.flag("--list") {
        for report in Report::all()? {
            println!("{:<11} {}\n            {}; from {}", report.name, report.question, report.unit, report.source);
        }
        return Ok(());
    }
    let out = words.option("--out")?;
    let rule = words.option("--rule")?.unwrap_or_else(|| Rule::CMS.name.to_owned());
    let rule =
        Rule::named(&rule).ok_or_else(|| Stop::refused(format!("there is no rule {rule}; there are cms, nhs")))?;
    let explain = words.flag("--explain");
    let [name, folder] = words.0.as_slice() else { return Err(Stop::refused(HELP)) };
    let report = Report::named(name)?;
    let store = Store::in_folder(Path::new(folder))?;
    if explain {
        println!("{}", Engine::over(&store)?.explain(&report.sql())?);
        return Ok(());
    }
    let out = out.ok_or_else(|| Stop::refused("where to? --out FILE"))?;
    let how = As::by_ending(&out).ok_or_else(|| Stop::refused("a file ends in .csv, .parquet, .jsonl or .svg"))?;
    let gone = take_in::forget_ended(&store, take_in::today(now))?;
    if gone > 0 {
        eprintln!("{gone} families whose yes has ended were taken out");
    }
    let published = publish(&store, &report, &rule)?;
    let bytes = write(&report, &published, how)?;
    private_file::whole_or_not(Path::new(&out), |file| {
        file.write_all(&bytes).map_err(|_| Trouble::new(TroubleKind::Full, "trouble-cannot-write-file"))
    })?;
    println!("{}: {} rows by the rule {}", out, published.rows.len(), rule.name);
    Ok(())
}

fn verify(words: &Words) -> Result<(), Stop> {
    let [folder] = words.0.as_slice() else { return Err(Stop::refused(HELP)) };
    let store = Store::in_folder(Path::new(folder))?;
    let mut rows = vec![0_u64; TABLES.len()];
    for bucket in 0..store.buckets() {
        let held = store.read(bucket)?;
        for (rows, table) in rows.iter_mut().zip(TABLES) {
            *rows += held.rows.get(table.name).map_or(0, |rows| rows.len() as u64);
        }
    }
    for (rows, table) in rows.iter().zip(TABLES) {
        println!("{:<10} {rows:>10} rows as they were written", table.name);
    }
    Ok(())
}

fn tables(mut words: Words) -> Result<(), Stop> {
    if words.flag("--json") {
        println!("{:#}", package::package());
    } else {
        print!("{}", package::page());
    }
    Ok(())
}

fn invent(words: &Words) -> Result<(), Stop> {
    let (folder, families, seed) = match words.0.as_slice() {
        [folder, families] => (folder, families, "1"),
        [folder, families, seed] => (folder, families, seed.as_str()),
        _ => return Err(Stop::refused(HELP)),
    };
    let all = invented::write(Path::new(folder), Words::number(seed)?, Words::number(families)?)?;
    println!("{folder}: {} families, and what is true of them in truth.jsonl", all.len());
    println!("their present is --at {}", invented::present().unix_milliseconds());
    Ok(())
}
