//! What the fuzzer kept: every input that once took a reader where none had been before,
//! and every one that once broke it. `fuzz/README.md` says how they were found.

use drawwell_tests::fuzzed::READERS;
use drawwell_tests::place;

#[test]
fn every_reader_holds_what_it_must_for_every_input_that_was_kept() {
    for (name, reader) in READERS {
        let kept = place::corpus(name);
        let mut tried = 0;
        for file in std::fs::read_dir(&kept).unwrap_or_else(|_| panic!("{name} has kept inputs")) {
            reader(&std::fs::read(file.unwrap().path()).unwrap());
            tried += 1;
        }
        assert!(tried > 0, "{name}");
    }
}

#[test]
fn every_reader_has_a_target_and_every_target_a_reader() {
    let mut targets: Vec<String> = std::fs::read_dir(place::fuzz_targets())
        .unwrap()
        .map(|file| file.unwrap().path().file_stem().unwrap().to_string_lossy().into_owned())
        .collect();
    targets.sort();
    let mut readers: Vec<&str> = READERS.iter().map(|(name, _)| *name).collect();
    readers.sort_unstable();
    assert_eq!(targets, readers);
}
